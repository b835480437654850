// Runs a TypeScript module of ours from a script: bundled into .cache, then imported.
import { mkdirSync } from 'node:fs';
import { basename, join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { rolldown } from 'rolldown';

const root = fileURLToPath(new URL('../..', import.meta.url));

/** The exports of a module given by its path from the root. */
export async function importTs(path) {
  const out = join(root, '.cache', `${basename(path, '.ts')}-${process.pid}`);
  mkdirSync(out, { recursive: true });
  const bundle = await rolldown({ input: { main: join(root, path) }, platform: 'node', external: ['highs'], logLevel: 'warn' });
  await bundle.write({ dir: out, format: 'esm', entryFileNames: '[name].mjs', chunkFileNames: '[name].mjs' });
  await bundle.close();
  return import(pathToFileURL(join(out, 'main.mjs')).href);
}
