// data/thresholds.csv and data/treatments.csv: one row per level and per form of an active ingredient; empty cells become null.
const MARKS = ['READ', 'READ-2', 'DERIVED', 'COMPUTED', 'MEMORY', 'PRACTICE', 'JUDGEMENT'];
const USES = ['DEFAULT', 'RANGE', 'NOTE'];
const LEVEL_NUMBERS = ['warn', 'treat', 'never', 'safe', 'mitesPerFall'];
const TREATMENT_NUMBERS = [
  'tempLowC',
  'tempHighC',
  'stopHighC',
  'stopDays',
  'durationDays',
  'durationLowDays',
  'durationHighDays',
  'effectLowFrac',
  'effectHighFrac',
  'effectBroodLowFrac',
  'effectBroodHighFrac',
  'leastBroodFrames',
];

function oneOf(where, column, text, allowed) {
  if (!allowed.includes(text)) throw new Error(`${where}: ${column} is "${text}", must be one of ${allowed.join(', ')}`);
}

function figure(where, column, text) {
  if (text === '') return 'null';
  if (!Number.isFinite(Number(text))) throw new Error(`${where}: ${column} is "${text}"`);
  return String(Number(text));
}

function rowsOf(rows, source, numbers, lists, check) {
  const seen = new Set();
  return rows.map((row) => {
    const where = `${source}: ${row.key}`;
    if (seen.has(row.key)) throw new Error(`${where}: listed twice`);
    seen.add(row.key);
    oneOf(where, 'mark', row.mark, MARKS);
    check(row, where);
    const cells = Object.entries(row).map(([column, text]) => {
      if (numbers.includes(column)) return `${column}: ${figure(where, column, text)}`;
      if (lists.includes(column)) return `${column}: ${JSON.stringify(text.split(';').filter((item) => item !== ''))}`;
      return `${column}: ${JSON.stringify(text)}`;
    });
    return `  { ${cells.join(', ')} },`;
  });
}

export function compileLevels(rows, source) {
  const body = rowsOf(rows, source, LEVEL_NUMBERS, [], (row, where) => {
    oneOf(where, 'method', row.method, ['wash', 'board']);
    oneOf(where, 'brood', row.brood, ['any', 'brood', 'little']);
    oneOf(where, 'colony', row.colony, ['any', 'production', 'young']);
    for (const column of ['from', 'to'])
      if (!/^\d{2}-\d{2}$/.test(row[column])) throw new Error(`${where}: ${column} is "${row[column]}", must be month-day`);
    if (row.method === 'wash' && row.warn === '') throw new Error(`${where}: a wash needs warn`);
    if (!(Number(row.treat) > 0 && Number(row.warn) <= Number(row.treat)))
      throw new Error(`${where}: treat must be above 0, warn at most treat`);
  });
  return `// Made by scripts/compile-tables.mjs from ${source}. Do not edit.\nimport type { MiteLevel } from './mites.ts';\n\nexport const MITE_LEVELS: MiteLevel[] = [\n${body.join('\n')}\n];\n`;
}

export function compileTreatments(rows, source) {
  const body = rowsOf(rows, source, TREATMENT_NUMBERS, ['cautions'], (row, where) => {
    oneOf(where, 'use', row.use, USES);
    oneOf(where, 'nature', row.nature, ['organic', 'synthetic']);
    oneOf(where, 'brood', row.brood, ['any', 'broodless']);
    oneOf(where, 'supersOn', row.supersOn, ['no', 'label']);
    oneOf(where, 'tempBasis', row.tempBasis, ['none', 'day-high', 'day-mean']);
    oneOf(where, 'effectMark', row.effectMark, MARKS);
    if (row.use === 'DEFAULT' && (row.mark === 'MEMORY' || row.effectMark === 'MEMORY'))
      throw new Error(`${where}: a row from memory decides nothing`);
    if (/acid$/.test(row.active) && !['acid-gloves', 'goggles', 'eyes-15-min'].every((code) => row.cautions.split(';').includes(code)))
      throw new Error(`${where}: an acid needs its gloves, goggles and first aid`);
  });
  return `// Made by scripts/compile-tables.mjs from ${source}. Do not edit.\nimport type { MiteTreatment } from './mites.ts';\n\nexport const MITE_TREATMENTS: MiteTreatment[] = [\n${body.join('\n')}\n];\n`;
}
