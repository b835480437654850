// Bundles the command into apps/cli/dist, so that `npx winterheft` works right after an install.
// A stamp over everything that goes in lets a second run skip what is done; `--force` builds anyway.
import { createHash } from 'node:crypto';
import { existsSync, readdirSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { cache, withLock } from './lib/build-lock.mjs';
import { root } from './lib/steps.mjs';

const dist = join(root, 'apps/cli/dist');
const stamp = join(dist, '.stamp');
const SOURCES = ['packages/core/src', 'packages/words/src', 'packages/solver/src', 'apps/cli/src'];
const FILES = ['package-lock.json', 'scripts/build-cli.mjs'];

function sourceHash() {
  const hash = createHash('sha256');
  const files = SOURCES.flatMap((folder) =>
    existsSync(join(root, folder))
      ? readdirSync(join(root, folder), { recursive: true })
          .filter((name) => name.endsWith('.ts'))
          .map((name) => join(folder, name))
      : [],
  );
  for (const file of [...files, ...FILES].sort())
    hash
      .update(file)
      .update('\0')
      .update(readFileSync(join(root, file)))
      .update('\0');
  return hash.digest('hex');
}

/** Builds when a source changed; true when it did. The finished folder takes the place of the old one at once. */
export function buildCli({ force = false } = {}) {
  return withLock('cli', async () => {
    const now = sourceHash();
    if (!force && existsSync(stamp) && readFileSync(stamp, 'utf8') === now) return false;
    const { rolldown } = await import('rolldown');
    const bundle = await rolldown({
      input: { main: join(root, 'apps/cli/src/main.ts') },
      platform: 'node',
      external: ['highs'],
      logLevel: 'warn',
    });
    const [next, old] = [join(cache, 'cli-next'), join(cache, 'cli-old')];
    for (const folder of [next, old]) rmSync(folder, { recursive: true, force: true });
    await bundle.write({ dir: next, format: 'esm', entryFileNames: '[name].mjs', chunkFileNames: '[name].mjs' });
    await bundle.close();
    writeFileSync(join(next, '.stamp'), now);
    if (existsSync(dist)) renameSync(dist, old);
    renameSync(next, dist);
    rmSync(old, { recursive: true, force: true });
    return true;
  });
}

if (process.argv[1] === fileURLToPath(import.meta.url)) await buildCli({ force: process.argv.includes('--force') });
