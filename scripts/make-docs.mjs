// Makes docs/sources.md from data/ and docs/checks.md from the checks. `--check` compares instead of writing.
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { importTs } from '../bench/bundle.mjs';
import { parseCsv } from './csv.mjs';

const root = fileURLToPath(new URL('..', import.meta.url));
const MARKS = {
  READ: 'seen in the source or a stored copy of it',
  'READ-2': 'seen second-hand, in a text that quotes it',
  DERIVED: 'arithmetic on figures that were read',
  COMPUTED: 'run with a reference library',
  MEMORY: 'recalled, not verified',
  PRACTICE: 'common practice, no source',
  JUDGEMENT: 'ours, with the reason in the note',
  ARITHMETIC: 'follows by arithmetic: it shows that the formula was typed in rightly, not that nature agrees',
};

const csvFiles = (folder) =>
  readdirSync(join(root, folder))
    .filter((name) => name.endsWith('.csv'))
    .sort();
const rowsOf = (path) => parseCsv(readFileSync(join(root, path), 'utf8'), path);
const cell = (text) => String(text).replaceAll('|', '\\|').replaceAll('\n', ' ').trim() || '–';
const table = (head, rows) =>
  [`| ${head.join(' | ')} |`, `|${head.map(() => '---').join('|')}|`, ...rows.map((row) => `| ${row.map(cell).join(' | ')} |`)].join('\n');
const markList = (marks) => marks.map((mark) => `**${mark}** ${MARKS[mark]}`).join('; ');

/** Every data file that carries sources, with its rows. */
function sourcedTables() {
  const tables = csvFiles('data/parameters').map((name) => ({ path: `data/parameters/${name}`, rows: rowsOf(`data/parameters/${name}`) }));
  for (const entry of readdirSync(join(root, 'data'), { recursive: true }).map(String).sort()) {
    if (!entry.endsWith('.csv') || entry.startsWith('parameters') || entry.startsWith('sources')) continue;
    const rows = rowsOf(join('data', entry));
    if (rows.length > 0 && 'source' in rows[0]) tables.push({ path: `data/${entry.replaceAll('\\', '/')}`, rows });
  }
  return tables;
}

/** The page of sources, and every key that is used without a row or defined twice in different words. */
export function sourcesPage() {
  const faults = [];
  const sourceByKey = new Map();
  for (const name of csvFiles('data/sources')) {
    for (const row of rowsOf(`data/sources/${name}`)) {
      const known = sourceByKey.get(row.key);
      if (!known) sourceByKey.set(row.key, { ...row, files: [basename(name, '.csv')] });
      else known.files.push(basename(name, '.csv'));
      if (!Object.hasOwn(MARKS, row.mark))
        faults.push(`data/sources/${name}: ${row.key}: mark "${row.mark}" is none of ${Object.keys(MARKS).join(', ')}`);
      for (const column of ['citation', 'where', 'terms'])
        if (row[column].trim() === '') faults.push(`data/sources/${name}: ${row.key}: ${column} is empty`);
    }
  }
  const usesByKey = new Map();
  const tables = sourcedTables();
  for (const { path, rows } of tables) {
    for (const row of rows) {
      for (const key of row.source.split(/[;+]\s*/)) {
        if (!sourceByKey.has(key.trim()))
          faults.push(`${path}: ${row.name ?? row.key ?? Object.values(row)[0]}: source "${key}" has no row in data/sources`);
        usesByKey.set(key.trim(), [...(usesByKey.get(key.trim()) ?? []), row.name ?? row.key ?? Object.values(row)[0]]);
      }
    }
  }
  const keys = [...sourceByKey.keys()].sort();
  const uses = (key) => {
    const names = usesByKey.get(key) ?? [];
    return names.length > 6 ? `${names.slice(0, 6).join(', ')} and ${names.length - 6} more` : names.join(', ') || 'checks only';
  };
  const parameters = tables.filter(({ path }) => path.startsWith('data/parameters/'));
  const text = `# Sources

Made by \`scripts/make-docs.mjs\` from \`data/\`. Do not edit.

Marks: ${markList(['READ', 'READ-2', 'DERIVED', 'COMPUTED', 'MEMORY', 'PRACTICE', 'JUDGEMENT'])}.

## Where figures come from

${table(
  ['key', 'citation', 'where', 'terms', 'mark', 'figures that rest on it'],
  keys.map((key) => {
    const row = sourceByKey.get(key);
    return [`<a id="${key}"></a>\`${key}\``, row.citation, row.where, row.terms, row.mark, uses(key)];
  }),
)}

## Every parameter

\`low\` and \`high\` are the 5 % and 95 % bounds the figure is drawn between (a *fixed* one is not drawn).

${parameters
  .map(
    ({ path, rows }) => `### ${path}

${table(
  ['name', 'value', 'low', 'high', 'unit', 'drawn', 'source', 'mark', 'note'],
  rows.map((row) => [`\`${row.name}\``, row.value, row.low, row.high, row.unit, row.distribution, row.source, row.mark, row.note]),
)}`,
  )
  .join('\n\n')}

## Other tables

${table(
  ['file', 'rows', 'sources', 'marks'],
  tables
    .filter(({ path }) => !path.startsWith('data/parameters/'))
    .map(({ path, rows }) => [
      `[${path}](../${path})`,
      rows.length,
      [...new Set(rows.map((row) => row.source))].sort().join(', '),
      [...new Set(rows.map((row) => row.mark ?? ''))].sort().join(', '),
    ]),
)}
`;
  return { text, faults };
}

const figure = (value) => (Number.isInteger(value) ? String(value) : String(Number(value.toPrecision(7))));

// Published figures that nothing here answers yet: [what, published, source, mark, what will answer].
const WAITING = [
  [
    'losses of a winter by cause: dead or empty, queen, disaster',
    '10.7 + 4.1 + 1.9 = 16.7 %, shares 64, 25 and 11 %',
    'Gray et al. 2020, Journal of Apicultural Research: survey of 35 countries, winter 2018-19; shares by division',
    'READ',
    'losses by cause, learnt from the keeper’s own records of winters',
  ],
  [
    'oxalic acid dribbled on a broodless colony of 8 and of 12 seams',
    '5 mL a seam and at most 50 mL: 40 and 50 mL',
    'German product leaflets; the label in force where the hives stand decides',
    'READ',
    'treatments with their windows and label limits; until then no dose of any acid is told',
  ],
];

/** The page that sets every published figure beside ours. */
export async function checksPage() {
  const { allChecks, checksByTopic, passes } = await importTs('packages/core/checks/index.ts');
  const sections = Object.entries(checksByTopic).map(([topic, checks]) => {
    const rows = checks.map((check) => {
      const ours = check.ours();
      const single = typeof check.expected === 'number';
      const difference = single ? figure(ours - check.expected) : '–';
      return [
        check.name,
        single ? figure(check.expected) : `${check.expected[0]} to ${check.expected[1]}`,
        figure(ours),
        difference,
        `${figure(check.within)}: ${check.why}`,
        check.unit,
        `${check.source}${check.usedForSetting ? ' (a parameter was set with this row in view: consistency, not proof)' : ''}`,
        check.mark,
        passes(check, ours) ? 'yes' : 'NO',
      ];
    });
    return `## ${topic}\n\n${table(['what', 'published', 'ours', 'difference', 'tolerance', 'unit', 'source', 'mark', 'agrees'], rows)}`;
  });
  const proof = allChecks.filter((check) => !check.usedForSetting && check.mark !== 'ARITHMETIC').length;
  return `# Published figures beside ours

Made by \`scripts/make-docs.mjs\` from \`packages/core/checks\`. Do not edit.

${allChecks.length} figures are compared; ${proof} of them are from outside and were not used to set a parameter.

Marks: ${markList(Object.keys(MARKS))}.

${sections.join('\n\n')}

## Not compared yet

Published figures kept for what is still to come: no function here answers them, and comparing them with themselves would prove nothing.

${table(['what', 'published', 'source', 'mark', 'waits for'], WAITING)}
`;
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const { text, faults } = sourcesPage();
  for (const fault of faults.slice(0, 12)) console.error(fault);
  if (faults.length > 12) console.error(`and ${faults.length - 12} more of the kind`);
  if (faults.length > 0) process.exitCode = 1;
  const pages = [
    ['docs/sources.md', text],
    ['docs/checks.md', await checksPage()],
  ];
  for (const [path, page] of pages) {
    if (!process.argv.includes('--check')) writeFileSync(join(root, path), page);
    else {
      let old = '';
      try {
        old = readFileSync(join(root, path), 'utf8');
      } catch {
        // A page that does not exist yet is stale.
      }
      if (old !== page) {
        console.error(`stale: ${path} (run node scripts/make-docs.mjs)`);
        process.exitCode = 1;
      }
    }
  }
}
