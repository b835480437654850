// Compiles data/**/*.csv into typed modules under packages/core/src/tables. `--check` compares instead of writing.
// The data are the truth; the modules are committed so that a browser build needs no file access.
import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { parseCsv } from './csv.mjs';
import { compilers } from './table-compilers.mjs';

const root = fileURLToPath(new URL('..', import.meta.url));
const out = join(root, 'packages/core/src/tables');
const camel = (name) => name.replace(/-([a-z])/g, (_, c) => c.toUpperCase());

/** Every generated module as [file, text]. */
export function generated() {
  const files = [];
  for (const file of readdirSync(join(root, 'data/parameters'))
    .filter((f) => f.endsWith('.csv'))
    .sort()) {
    const stem = basename(file, '.csv');
    const rows = parseCsv(readFileSync(join(root, 'data/parameters', file), 'utf8'), `data/parameters/${file}`);
    const body = rows.map((r) => {
      for (const column of ['value', 'low', 'high']) {
        if (!Number.isFinite(Number(r[column])) || r[column] === '') throw new Error(`${file}: ${r.name}: ${column} is "${r[column]}"`);
      }
      if (!(Number(r.low) <= Number(r.value) && Number(r.value) <= Number(r.high)))
        throw new Error(`${file}: ${r.name}: value outside low..high`);
      const s = (key) => JSON.stringify(r[key]);
      return `  ${r.name}: { value: ${Number(r.value)}, unit: ${s('unit')}, low: ${Number(r.low)}, high: ${Number(r.high)}, distribution: ${s('distribution')}, source: ${s('source')}, mark: ${s('mark')}, note: ${s('note')} },`;
    });
    files.push([
      `parameters-${stem}.gen.ts`,
      `// Made by scripts/compile-tables.mjs from data/parameters/${file}. Do not edit.\nimport type { Parameter } from './types.ts';\n\nexport const ${camel(stem)}Parameters = {\n${body.join('\n')}\n} satisfies Record<string, Parameter>;\n`,
    ]);
  }
  for (const { source, target, compile } of compilers) {
    files.push([target, compile(parseCsv(readFileSync(join(root, source), 'utf8'), source), source)]);
  }
  return files;
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  mkdirSync(out, { recursive: true });
  let stale = 0;
  for (const [file, text] of generated()) {
    const path = join(out, file);
    if (process.argv.includes('--check')) {
      let old = '';
      try {
        old = readFileSync(path, 'utf8');
      } catch {
        // a module that does not exist yet is stale
      }
      if (old !== text) {
        console.error(`stale: packages/core/src/tables/${file} (run npm run tables)`);
        stale++;
      }
    } else writeFileSync(path, text);
  }
  if (stale > 0) process.exitCode = 1;
}
