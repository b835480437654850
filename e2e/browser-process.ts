import { spawn } from 'node:child_process';
import { mkdirSync, readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { setTimeout as wait } from 'node:timers/promises';
import { type BrowserContext, chromium } from '@playwright/test';
import { ensureBrowser } from '../scripts/ensure-browser.mjs';

export interface BrowserProcess {
  readonly context: BrowserContext;
  /** Ends the process and all its children at once (SIGKILL), as a dead battery would: nothing is flushed, nobody is asked. */
  kill(): Promise<void>;
}

/** Starts a browser with its profile in `folder`; starting it again with the same folder finds what was on disk. */
export async function startBrowserProcess(folder: string): Promise<BrowserProcess> {
  const program = ensureBrowser();
  if (program === null) throw new Error('no browser');
  mkdirSync(folder, { recursive: true });
  const portFile = join(folder, 'DevToolsActivePort');
  rmSync(portFile, { force: true });
  const isRoot = process.getuid?.() === 0;
  const child = spawn(
    program,
    [
      '--headless=new',
      '--remote-debugging-port=0',
      `--user-data-dir=${folder}`,
      '--no-first-run',
      '--no-default-browser-check',
      '--disable-dev-shm-usage',
      '--disable-gpu',
      '--window-size=390,844',
      ...(isRoot ? ['--no-sandbox'] : []),
      'about:blank',
    ],
    { stdio: 'ignore', detached: true },
  );
  const ended = new Promise<void>((resolve) => child.once('close', () => resolve()));
  const address = await debugAddress(portFile);
  const browser = await chromium.connectOverCDP(address);
  const context = browser.contexts()[0];
  if (context === undefined) throw new Error('the browser has no context');
  return {
    context,
    async kill() {
      try {
        process.kill(-(child.pid as number), 'SIGKILL');
      } catch {
        // It was killed before.
      }
      await ended;
      // A killed browser leaves its lock on the profile; the next one on the same machine sees that its owner is gone.
      rmSync(join(folder, 'SingletonLock'), { force: true });
    },
  };
}

/** The browser writes the port it took as the first line of a file in its profile. */
async function debugAddress(portFile: string): Promise<string> {
  for (let tries = 0; tries < 200; tries++) {
    try {
      const [port] = readFileSync(portFile, 'utf8').split('\n');
      if (port !== undefined && port !== '') return `http://127.0.0.1:${port}`;
    } catch {
      // Not written yet.
    }
    await wait(100);
  }
  throw new Error('the browser did not open its port within 20 s');
}
