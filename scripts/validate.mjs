// npm run validate: every published row a forecast rests on, ours beside it, and the coverage of the model by itself. Writes
// docs/validation.md and docs/validation.svg. `--check` compares instead of writing and fails when they are stale.
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { importTs, root } from '../bench/bundle.mjs';
import { validationPicture } from './lib/validation-picture.mjs';

const figure = (x) => String(Number(x.toPrecision(4)));
const range = (expected) => (Array.isArray(expected) ? `${figure(expected[0])} to ${figure(expected[1])}` : figure(expected));
const percent = (share) => `${(100 * share).toFixed(1)} %`;
const cell = (text) => String(text).replaceAll('|', '\\|');
const table = (head, rows) =>
  [`| ${head.join(' | ')} |`, `|${head.map(() => '---').join('|')}|`, ...rows.map((row) => `| ${row.map(cell).join(' | ')} |`)].join('\n');

/** How far ours lies from what was published: from the nearer end of a range. */
function difference({ check, ours }) {
  const [low, high] = Array.isArray(check.expected) ? check.expected : [check.expected, check.expected];
  return ours < low ? ours - low : ours > high ? ours - high : Array.isArray(check.expected) ? 0 : ours - check.expected;
}

function rowsTable(rows) {
  return table(
    ['what', 'unit', 'published', 'ours', 'difference', 'tolerance', 'strength', 'used for setting', 'mark', 'agrees', 'source'],
    rows.map((row) => [
      row.check.name,
      row.check.unit,
      range(row.check.expected),
      figure(row.ours),
      figure(difference(row)),
      `${figure(row.check.within)}: ${row.check.why}`,
      row.strength,
      row.check.usedForSetting === true ? 'yes' : 'no',
      row.check.mark,
      row.agrees ? 'yes' : '**no**',
      row.check.source,
    ]),
  );
}

function page(rows, coverage) {
  const of = (group) => rows.filter((row) => row.group === group);
  const proof = rows.filter((row) => row.check.usedForSetting !== true);
  const missed = rows.filter((row) => !row.agrees);
  return `# The forecast against published results

Made by \`npm run validate\`. Do not edit.

${rows.length} published rows; ${proof.length} of them were not used to set a parameter, and ${proof.filter((row) => row.agrees).length} of those agree.
${missed.length === 0 ? 'Every row lies inside its tolerance.' : `Outside their tolerance: ${missed.map(({ check }) => check.name).join('; ')}.`} A row that a parameter was set by shows consistency, not proof.

![Each row's difference in tolerances](validation.svg)

## Colony and hive

${rowsTable(of('colony and hive'))}

## Winters

Nothing in the stochastic years was set by these rows. What they meet and miss is told in [decisions/0004-weather-years.md](decisions/0004-weather-years.md).

${rowsTable(of('winters'))}

## Coverage, truth drawn from the model itself

This checks the code only: a draw used twice, an error left out or a quantile off by one would show; whether bees are like the model would not. Each line is
${coverage[0].truths} truths under a seed the forecast never saw; 1,000 cases in the forecast; October to first forage.

${table(
  ['place', 'bees', 'truths', 'inside the 90 % band', 'held with the need for 19 in 20'],
  coverage.map((row) => [row.place, row.bees, row.truths, percent(row.inBandFrac), percent(row.heldFrac)]),
)}

Truths from a world that is not the model are drawn by \`npm run worth\`; see [worth](../worth/README.md).
`;
}

const core = await importTs('packages/core/checks/validation.ts', process.pid);
const rows = core.validationRows();
const coverage = core.coverageRows();
const made = { 'docs/validation.md': page(rows, coverage), 'docs/validation.svg': validationPicture(rows) };
const stale = Object.entries(made).filter(([path, text]) => {
  const file = join(root, path);
  return !existsSync(file) || readFileSync(file, 'utf8') !== text;
});
const misses = rows.filter((row) => !row.agrees).length;
const off = coverage.filter(({ inBandFrac }) => inBandFrac < 0.87 || inBandFrac > 0.93).length;
console.log(
  `validate: ${rows.length} published rows, ${misses} outside their tolerance; ${coverage.length} coverages, ${off} outside 87 to 93 %`,
);
if (process.argv.includes('--check')) {
  for (const [path] of stale) console.error(`validate: ${path} is stale: run npm run validate`);
  process.exitCode = stale.length > 0 || off > 0 ? 1 : 0;
} else {
  for (const [path, text] of stale) writeFileSync(join(root, path), text);
  process.exitCode = off > 0 ? 1 : 0;
}
