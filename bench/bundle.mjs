// Bundles a TypeScript entry of the repository into .cache and imports it: benches and studies run the code as it stands.
import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { build } from 'rolldown';

export const root = fileURLToPath(new URL('..', import.meta.url));
export const cache = join(root, '.cache');

/** `as` tells apart bundles of one entry that several processes make at once. */
export async function importTs(entry, as = '') {
  mkdirSync(cache, { recursive: true });
  const file = join(cache, `${entry.replace(/[^a-z0-9]+/gi, '-')}${as}.mjs`);
  await build({
    input: join(root, entry),
    platform: 'node',
    external: ['highs'],
    logLevel: 'silent',
    output: { file, format: 'esm', codeSplitting: false },
  });
  return import(`${pathToFileURL(file).href}?${Date.now()}`);
}
