// data/blooms.csv, data/tasks.csv and data/sizes.csv: one row per bloom, task and rule of size; empty cells become null.
const MARKS = ['READ', 'READ-2', 'DERIVED', 'COMPUTED', 'MEMORY', 'PRACTICE', 'JUDGEMENT'];

function module(rows, source, of) {
  const body = rows.map((row) => {
    const where = `${source}: ${row[of.name]}`;
    if (!MARKS.includes(row.mark)) throw new Error(`${where}: mark is "${row.mark}", must be one of ${MARKS.join(', ')}`);
    of.check?.(row, where);
    const cells = Object.entries(row).map(([column, text]) => {
      if (!of.numbers.includes(column)) return `${column}: ${of.nullable?.includes(column) && text === '' ? 'null' : JSON.stringify(text)}`;
      if (text === '') return `${column}: null`;
      if (!Number.isFinite(Number(text))) throw new Error(`${where}: ${column} is "${text}"`);
      return `${column}: ${Number(text)}`;
    });
    return `  { ${cells.join(', ')} },`;
  });
  return `// Made by scripts/compile-tables.mjs from ${source}. Do not edit.\nimport type { ${of.type} } from './season.ts';\n\nexport const ${of.list}: ${of.type}[] = [\n${body.join('\n')}\n];\n`;
}

export function compileBlooms(rows, source) {
  return module(rows, source, {
    name: 'plant',
    type: 'BloomRow',
    list: 'bloomRows',
    numbers: ['baseC', 'sumCd'],
    check(row, where) {
      if ((row.baseC === '') !== (row.sumCd === '')) throw new Error(`${where}: baseC and sumCd go together`);
    },
  });
}

export function compileTasks(rows, source) {
  return module(rows, source, {
    name: 'code',
    type: 'TaskRow',
    list: 'taskRows',
    numbers: ['fromDays', 'untilDays', 'openAboveC', 'minutesEach', 'minutesYard'],
    nullable: ['enter'],
  });
}

export function compileSizes(rows, source) {
  return module(rows, source, { name: 'where', type: 'SizeRow', list: 'sizeRows', numbers: ['lowFrames', 'highFrames'] });
}
