// Builds the app into apps/web/dist: a folder for any static https host, at any path. A stamp lets a second run skip what is done; `--force` builds anyway.
import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { existsSync, readdirSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { cache, withLock } from './lib/build-lock.mjs';
import { root } from './lib/steps.mjs';
import { checkWeb } from './lib/web-size.mjs';

export const webDist = join(root, 'apps/web/dist');
const stamp = join(cache, 'web.stamp');
const FOLDERS = [
  'packages/core/src',
  'packages/words/src',
  'packages/solver/src',
  'apps/web/src',
  'apps/web/public',
  'data/places',
  'demo',
];
const FILES = [
  'package-lock.json',
  'scripts/build-web.mjs',
  'scripts/lib/content-policy.mjs',
  'apps/web/index.html',
  'apps/web/vite.config.ts',
];

function sourceHash() {
  const hash = createHash('sha256');
  const files = FOLDERS.flatMap((folder) =>
    readdirSync(join(root, folder), { recursive: true, withFileTypes: true })
      .filter((entry) => entry.isFile())
      .map((entry) => join(entry.parentPath, entry.name)),
  );
  for (const file of [...files, ...FILES.map((name) => join(root, name))].sort())
    hash.update(`${file}\0`).update(readFileSync(file)).update('\0');
  return hash.digest('hex');
}

/** Builds when a source changed; true when it did. The finished folder takes the place of the old one at once. */
export function buildWeb({ force = false } = {}) {
  return withLock('web', () => {
    const now = sourceHash();
    if (!force && existsSync(join(webDist, 'index.html')) && existsSync(stamp) && readFileSync(stamp, 'utf8') === now) return false;
    const next = join(cache, 'web-next');
    const vite = join(root, 'node_modules/vite/bin/vite.js');
    const run = spawnSync(process.execPath, [vite, 'build', '--outDir', next, '--emptyOutDir', '--logLevel', 'warn'], {
      cwd: join(root, 'apps/web'),
      stdio: ['ignore', 2, 2],
      env: { ...process.env, NODE_ENV: 'production', NO_COLOR: '1' },
    });
    if (run.status !== 0) throw new Error('the app was not built: what vite said stands above');
    const old = join(cache, 'web-old');
    rmSync(old, { recursive: true, force: true });
    if (existsSync(webDist)) renameSync(webDist, old);
    renameSync(next, webDist);
    rmSync(old, { recursive: true, force: true });
    writeFileSync(stamp, now);
    return true;
  });
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const built = await buildWeb({ force: process.argv.includes('--force') });
  console.log(built ? 'apps/web/dist was built' : 'apps/web/dist is as its sources are');
  const { lines, faults } = checkWeb(webDist);
  for (const line of lines) console.log(line);
  for (const fault of faults) console.error(fault);
  process.exitCode = faults.length > 0 ? 1 : 0;
}
