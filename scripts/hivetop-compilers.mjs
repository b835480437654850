// data/materials.csv and data/tops.csv: what a hive's top is made of, and the builds that are shipped. Empty cells are left out of a row.
const MARKS = ['READ', 'READ-2', 'DERIVED', 'COMPUTED', 'MEMORY', 'PRACTICE', 'JUDGEMENT'];
const MATERIAL_NUMBERS = new Set([
  'densityKgPerM3',
  'specificGravity',
  'wPerMK',
  'coolWPerMK',
  'coldWPerMK',
  'vapourKgPerMSPa',
  'airPathM2',
  'emittance',
  'liquidKgPerKg',
  'swellFactor',
]);
const TOP_NUMBERS = new Set(['thicknessM', 'coversFrac', 'dryKg', 'areaM2', 'heightM', 'tallM', 'count']);
const KINDS = ['wood', 'foam', 'film', 'air', 'fill', 'cloth', 'board', 'candy', 'snow'];
const ROLES = ['layer', 'opening'];

function cellsOf(row, numbers, where) {
  if (!MARKS.includes(row.mark)) throw new Error(`${where}: mark is "${row.mark}"`);
  return Object.entries(row)
    .filter(([, text]) => text !== '')
    .map(([column, text]) => {
      if (!numbers.has(column)) return `${column}: ${JSON.stringify(text)}`;
      if (!Number.isFinite(Number(text))) throw new Error(`${where}: ${column} is "${text}"`);
      return `${column}: ${Number(text)}`;
    });
}

export function compileMaterials(rows, source) {
  const seen = new Set();
  const body = rows.map((row) => {
    const where = `${source}: ${row.key}`;
    if (seen.has(row.key)) throw new Error(`${where}: listed twice`);
    seen.add(row.key);
    if (!KINDS.includes(row.kind)) throw new Error(`${where}: kind is "${row.kind}"`);
    return `  { ${cellsOf(row, MATERIAL_NUMBERS, where).join(', ')} },`;
  });
  return `// Made by scripts/compile-tables.mjs from ${source}. Do not edit.\nimport type { Material } from './materials.ts';\n\nexport const MATERIALS: Material[] = [\n${body.join('\n')}\n];\n`;
}

export function compileTops(rows, source) {
  const body = rows.map((row) => {
    const where = `${source}: ${row.top}`;
    if (!ROLES.includes(row.role)) throw new Error(`${where}: role is "${row.role}"`);
    for (const column of row.role === 'layer' ? ['material', 'thicknessM'] : ['areaM2', 'heightM', 'count']) {
      if (row[column] === '') throw new Error(`${where}: ${column} is empty`);
    }
    return `  { ${cellsOf(row, TOP_NUMBERS, where).join(', ')} },`;
  });
  return `// Made by scripts/compile-tables.mjs from ${source}. Do not edit.\nimport type { TopRow } from './materials.ts';\n\nexport const TOP_ROWS: TopRow[] = [\n${body.join('\n')}\n];\n`;
}
