import { mkdirSync, rmSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { setTimeout as wait } from 'node:timers/promises';
import { root } from './steps.mjs';

/** A build that was killed leaves its lock behind; no build takes this long. */
const STALE_MS = 180_000;
export const cache = join(root, '.cache');

/** Runs one build of this name at a time, also among several programs. */
export async function withLock(name, run) {
  const lock = join(cache, `${name}.lock`);
  mkdirSync(cache, { recursive: true });
  for (;;) {
    try {
      mkdirSync(lock);
      break;
    } catch (error) {
      if (error.code !== 'EEXIST') throw error;
      const since = statSync(lock, { throwIfNoEntry: false })?.mtimeMs ?? Date.now();
      if (Date.now() - since > STALE_MS) rmSync(lock, { recursive: true, force: true });
      else await wait(200);
    }
  }
  try {
    return await run();
  } finally {
    rmSync(lock, { recursive: true, force: true });
  }
}
