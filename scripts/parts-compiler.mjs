// data/parts.csv: one row per part of a hive; empty cells are left out of the row, so a part without massKg is one whose mass follows from its size.
// The bounds of such a part stand in the file for the reader; the core works them out with the mass, and a test holds the two together.
const NUMBERS = new Set([
  'massKg',
  'low',
  'high',
  'outsideLengthM',
  'outsideWidthM',
  'heightM',
  'wallM',
  'framesFit',
  'combAreaM2',
  'cappedNetKg',
  'cappedNetLowKg',
  'cappedNetHighKg',
  'thicknessM',
  'framePlaces',
]);
const MARKS = ['READ', 'READ-2', 'DERIVED', 'COMPUTED', 'MEMORY', 'PRACTICE', 'JUDGEMENT'];
const NEEDED = {
  box: ['material', 'outsideLengthM', 'outsideWidthM', 'heightM', 'wallM', 'framesFit', 'depth'],
  frame: ['massKg', 'depth', 'state', 'combAreaM2', 'cappedNetKg', 'cappedNetLowKg', 'cappedNetHighKg'],
  floor: ['massKg', 'material', 'thicknessM'],
  'inner cover': ['massKg', 'material', 'thicknessM'],
  cover: ['material', 'thicknessM'],
  insulation: ['material', 'thicknessM'],
  rim: ['material', 'heightM', 'wallM'],
  fill: ['massKg', 'material', 'thicknessM'],
  wrap: ['massKg', 'material', 'thicknessM'],
  stand: ['massKg'],
  feeder: ['massKg'],
};

export function compileParts(rows, source) {
  const seen = new Set();
  const body = rows.map((row) => {
    const where = `${source}: ${row.key}`;
    if (seen.has(row.key)) throw new Error(`${where}: listed twice`);
    seen.add(row.key);
    if (!(row.kind in NEEDED)) throw new Error(`${where}: kind is "${row.kind}"`);
    if (!MARKS.includes(row.mark)) throw new Error(`${where}: mark is "${row.mark}"`);
    for (const column of NEEDED[row.kind]) if (row[column] === '') throw new Error(`${where}: ${column} is empty`);
    for (const column of ['low', 'high']) if (!(Number(row[column]) > 0)) throw new Error(`${where}: ${column} is "${row[column]}"`);
    if (row.massKg !== '' && !(Number(row.low) <= Number(row.massKg) && Number(row.massKg) <= Number(row.high))) {
      throw new Error(`${where}: massKg ${row.massKg} outside low ${row.low} .. high ${row.high}`);
    }
    const cells = Object.entries(row)
      .filter(([column, text]) => text !== '' && !(row.massKg === '' && (column === 'low' || column === 'high')))
      .map(([column, text]) => {
        if (!NUMBERS.has(column)) return `${column}: ${JSON.stringify(text)}`;
        if (!(Number(text) > 0)) throw new Error(`${where}: ${column} is "${text}"`);
        return `${column}: ${Number(text)}`;
      });
    return `  { ${cells.join(', ')} },`;
  });
  return `// Made by scripts/compile-tables.mjs from ${source}. Do not edit.\nimport type { Part } from './parts.ts';\n\nexport const PARTS: Part[] = [\n${body.join('\n')}\n];\n`;
}
