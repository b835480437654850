/** Rows of data/deadouts.csv as a module: chances of each sign by cause. */
const CAUSES = ['starved', 'mites', 'moisture', 'queen', 'tooSmall', 'mice'];

export function compileDeadouts(rows, source) {
  const lines = rows.map((row) => {
    for (const cause of CAUSES) {
      const share = Number(row[cause]);
      if (!(share > 0 && share < 1))
        throw new RangeError(`${source}: ${row.sign}, ${cause} is "${row[cause]}", must be above 0 and below 1`);
    }
    const chances = CAUSES.map((cause) => `${cause}: ${Number(row[cause])}`).join(', ');
    return `  { sign: '${row.sign}', chances: { ${chances} }, mark: '${row.mark}', source: '${row.source}', note: ${JSON.stringify(row.note)} },`;
  });
  return `// Made by scripts/compile-tables.mjs from ${source}. Do not edit.\nimport type { Mark } from './types.ts';\n\nexport type DeathCause = ${CAUSES.map((cause) => `'${cause}'`).join(' | ')};\n\n/** Chance of finding a sign in a hive that died of each cause; the first row is how common the causes are. */\nexport interface DeadoutRow {\n  readonly sign: string;\n  readonly chances: Readonly<Record<DeathCause, number>>;\n  readonly mark: Mark;\n  readonly source: string;\n  readonly note: string;\n}\n\nexport const DEADOUTS: DeadoutRow[] = [\n${lines.join('\n')}\n];\n`;
}
