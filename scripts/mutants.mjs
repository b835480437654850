// npm run mutants [-- --quick]: moves every parameter and part by 15 % both ways, one at a time, runs the checks against published
// figures again and lists those that no check notices. Writes docs/mutants.json with the commit it ran on.
import { execFileSync } from 'node:child_process';
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { importTs, root } from '../bench/bundle.mjs';

const quick = process.argv.includes('--quick');
const core = await importTs('bench/mutants-entry.ts');
const { checksByTopic, passes, PARTS, MATERIALS, classSpreads, MITE_LEVELS, MITE_TREATMENTS, ...tables } = core;
const SOURCED = new Set(['READ', 'READ-2', 'DERIVED', 'COMPUTED']);
/** A check slower than this is asked only where the faster ones noticed nothing [ms]. */
const SLOW_MS = 20;

const timed = Object.values(checksByTopic)
  .flat()
  .map((check) => {
    const begun = performance.now();
    const holds = passes(check, check.ours());
    if (!holds) throw new Error(`mutants: "${check.name}" fails before anything was moved`);
    return { check, ms: performance.now() - begun };
  })
  .sort((a, b) => a.ms - b.ms);
const checks = quick ? timed.filter(({ ms }) => ms < SLOW_MS) : timed;

/** True where some check fails or throws with the table as it stands now. */
function noticed() {
  return checks.some(({ check }) => {
    try {
      return !passes(check, check.ours());
    } catch {
      return true;
    }
  });
}

/** Every place a figure stands: its name, its mark, and how to move it. */
function places() {
  const found = [];
  for (const [table, rows] of Object.entries(tables)) {
    for (const [name, row] of Object.entries(rows)) {
      const step = row.value === 0 ? 0.15 * (row.high - row.low) : 0.15 * row.value;
      found.push({ name: `${table}.${name}`, mark: row.mark, row, field: 'value', step });
    }
  }
  for (const part of PARTS) {
    for (const field of [
      'massKg',
      'outsideLengthM',
      'outsideWidthM',
      'heightM',
      'wallM',
      'framesFit',
      'combAreaM2',
      'cappedNetKg',
      'thicknessM',
    ]) {
      if (typeof part[field] === 'number')
        found.push({ name: `part ${part.key}.${field}`, mark: part.mark, row: part, field, step: 0.15 * part[field] });
    }
  }
  for (const material of MATERIALS) {
    for (const [field, value] of Object.entries(material)) {
      if (typeof value === 'number' && value !== 0)
        found.push({ name: `material ${material.key}.${field}`, mark: material.mark, row: material, field, step: 0.15 * value });
    }
  }
  for (const row of MITE_LEVELS) {
    for (const field of ['warn', 'treat', 'never', 'safe', 'mitesPerFall']) {
      if (typeof row[field] === 'number')
        found.push({ name: `level ${row.key}.${field}`, mark: row.mark, row, field, step: 0.15 * row[field] });
    }
  }
  // The other rows decide nothing: they are held against a label.
  for (const row of MITE_TREATMENTS.filter(({ use }) => use === 'DEFAULT')) {
    for (const [field, value] of Object.entries(row)) {
      if (typeof value !== 'number' || ['durationLowDays', 'durationHighDays', 'leastBroodFrames'].includes(field)) continue;
      const mark = field.startsWith('effect') ? row.effectMark : row.mark;
      found.push({ name: `treatment ${row.key}.${field}`, mark, row, field, step: 0.15 * value });
    }
  }
  for (const row of classSpreads) {
    for (const column of ['sdBetweenYearsC', 'sdDailyInMonthC']) {
      row[column].forEach((value, month) => {
        found.push({
          name: `climate class to ${row.januaryHighC} °C.${column}[${month}]`,
          mark: row.mark,
          row: row[column],
          field: month,
          step: 0.15 * value,
        });
      });
    }
  }
  return found;
}

/** Sourced figures that decide nothing, with the reason. */
const DECIDES_NOTHING = new Map([['part screened-floor.thicknessM', 'a mesh stops no heat and its mass is a row of its own']]);

/** A copy without its history has no commit to name. */
function commitOf() {
  try {
    return execFileSync('git', ['rev-parse', '--short', 'HEAD'], {
      cwd: root,
      encoding: 'utf8',
      stdio: ['ignore', 'pipe', 'ignore'],
    }).trim();
  } catch {
    return 'none';
  }
}

const unnoticed = [];
const all = places();
for (const { name, mark, row, field, step } of all) {
  const before = row[field];
  const missed = [];
  for (const sign of [1, -1]) {
    row[field] = before + sign * step;
    if (!noticed()) missed.push(sign > 0 ? '+' : '-');
  }
  row[field] = before;
  if (missed.length > 0) unnoticed.push({ name, mark, value: before, missed: missed.join('') });
}
const sourced = unnoticed.filter(({ mark }) => SOURCED.has(mark));
const fully = sourced.filter(({ name, missed }) => missed !== '' && !DECIDES_NOTHING.has(name));
const commit = commitOf();
console.log(
  `${all.length} figures moved by 15 % both ways against ${checks.length} published figures (commit ${commit}${quick ? ', quick' : ''})`,
);
console.log(
  `${all.length - unnoticed.length} noticed both ways; ${unnoticed.length} not, of them ${sourced.length} with a source, ${fully.length} of these deciding something`,
);
for (const { name, mark, value, missed } of unnoticed) console.log(`  ${missed.padEnd(2)} ${name} = ${value} [${mark}]`);
if (!quick)
  writeFileSync(
    join(root, 'docs/mutants.json'),
    `${JSON.stringify({ commit, figures: all.length, checks: checks.length, unnoticed }, null, 1)}\n`,
  );
if (!quick && fully.length > 0) process.exitCode = 1;
