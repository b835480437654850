// Installs what the lock names, once: what stands already is compared, not downloaded again.
import { spawnSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

/** True where node_modules holds every package of the lock in its version. npm leaves a list of what it installed. */
export function isInstalled(root) {
  const list = join(root, 'node_modules/.package-lock.json');
  if (!existsSync(list)) return false;
  const have = JSON.parse(readFileSync(list, 'utf8')).packages;
  const want = JSON.parse(readFileSync(join(root, 'package-lock.json'), 'utf8')).packages;
  return Object.entries(want).every(([path, entry]) => {
    if (!path.startsWith('node_modules/') || entry.optional || entry.peer || entry.devOptional) return true;
    return have[path]?.version === entry.version && existsSync(join(root, path));
  });
}

/** Runs `npm ci` where something is missing; true when it ran. Ends the program with npm's own words where it fails. */
export function install(root, { quiet = false } = {}) {
  if (isInstalled(root)) return false;
  console.error('installing what package-lock.json names (the first time takes a minute or two) ...');
  const npm = process.platform === 'win32' ? 'npm.cmd' : 'npm';
  const run = spawnSync(npm, ['ci', '--no-audit', '--no-fund', '--loglevel=error'], {
    cwd: root,
    stdio: ['ignore', quiet ? 2 : 'inherit', 'inherit'],
    shell: process.platform === 'win32',
  });
  if (run.status !== 0) {
    console.error('npm ci did not finish: what it said stands above. Is the network there?');
    process.exit(1);
  }
  return true;
}
