// Cold start without a server: the app with the demo holding's journal in its storage, against an empty page of the same libraries with the same
// kind of service worker and one worker that reads a database as well. Each start is a new browser process with the profile of one earlier visit;
// the server is dead. Measured from the beginning of the navigation. Ratio of the medians, runs in turn.
import { spawnSync } from 'node:child_process';
import { cpSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { chromium } from '@playwright/test';
import { buildWeb, webDist } from '../scripts/build-web.mjs';
import { ensureBrowser } from '../scripts/ensure-browser.mjs';
import { sandboxArgs } from '../scripts/lib/browser.mjs';
import { listen, readSite, siteHandler } from '../scripts/lib/site.mjs';
import { cache, root } from './bundle.mjs';

const AIM = 1.5;
/** A screen that shows the journal: its heading stands when all records have been read and folded. */
const SCREEN = '#/keep';

/** What has to be in the document; of the empty page the frame is `main`, the heading what its worker has answered. */
const MARKS = { frame: '.frame, main', screen: 'main h1' };

export async function benchStart({ repeats }) {
  const executablePath = ensureBrowser();
  if (executablePath === null) throw new Error('bench: cold start needs a browser');
  await buildWeb();
  const folder = mkdtempSync(join(tmpdir(), 'winterheft-start-'));
  const launch = (name) => chromium.launchPersistentContext(join(folder, name), { executablePath, args: sandboxArgs });
  try {
    const pages = [
      { name: 'app', address: await visit(launch, 'app', webDist, takeJournal) },
      { name: 'empty', address: await visit(launch, 'empty', buildEmpty(), async () => undefined) },
    ];
    const starts = { app: [], empty: [] };
    // The first start of each fills the caches of the operating system and is not counted.
    for (let run = 0; run <= repeats; run++)
      for (const { name, address } of pages) {
        const times = await start(launch, name, `${address}${SCREEN}`);
        if (run > 0) starts[name].push(times);
      }
    return [row('frame', starts), row('screen', starts)];
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

const SAYS = { frame: 'until the frame with its keys stands', screen: 'until the screen shows the journal' };

function row(what, { app, empty }) {
  const [ours, theirs] = [app.map((times) => times[what]), empty.map((times) => times[what])];
  const told = (all) => `${median(all).toFixed(0)} ms (${Math.min(...all).toFixed(0)} to ${Math.max(...all).toFixed(0)})`;
  return {
    name: `cold start without a server, ${SAYS[what]}`,
    ratio: median(ours) / median(theirs),
    aim: AIM,
    text: `app ${told(ours)}, empty page ${told(theirs)}, ${ours.length} starts of each`,
  };
}

function buildEmpty() {
  const source = join(cache, 'empty-app');
  cpSync(join(root, 'bench/empty-app'), source, { recursive: true });
  cpSync(join(root, 'apps/web/public'), join(source, 'public'), { recursive: true });
  const vite = join(root, 'node_modules/vite/bin/vite.js');
  const run = spawnSync(
    process.execPath,
    [vite, 'build', source, '--config', join(root, 'apps/web/vite.config.ts'), '--outDir', 'dist', '--emptyOutDir', '--logLevel', 'error'],
    { cwd: root, stdio: ['ignore', 2, 2], env: { ...process.env, NODE_ENV: 'production' } },
  );
  if (run.status !== 0) throw new Error('bench: the empty page was not built');
  return join(source, 'dist');
}

/** One visit with the server alive, until everything is kept; gives the address, at which nothing answers any more. */
async function visit(launch, name, dist, prepare) {
  const server = await listen(siteHandler(readSite(dist)), 0);
  const address = `http://localhost:${server.address().port}/`;
  const context = await launch(name);
  const page = await context.newPage();
  await page.goto(`${address}${SCREEN}`);
  await page.locator('main h1').waitFor();
  await page.evaluate(() => navigator.serviceWorker.ready);
  await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
  await prepare(page);
  await context.close();
  server.closeAllConnections();
  await new Promise((resolve) => server.close(resolve));
  return address;
}

async function takeJournal(page) {
  await page.locator('input[type=file]').setInputFiles(join(root, 'demo/journal.jsonl'));
  await page.getByRole('button', { name: /^Add \d+ records?$/ }).click();
  await page.getByText(/^\d+ records? added\.$/).waitFor();
}

/** Milliseconds from the beginning of the navigation to the frame of the display after the app's frame, and after the heading, came. */
async function start(launch, name, address) {
  const context = await launch(name);
  try {
    const page = await context.newPage();
    await page.addInitScript((marks) => {
      window.stoodAtMs = {};
      const watch = new MutationObserver(() => {
        for (const [what, selector] of Object.entries(marks)) {
          if (what in window.stoodAtMs || document.querySelector(selector) === null) continue;
          window.stoodAtMs[what] = null;
          requestAnimationFrame(() => {
            window.stoodAtMs[what] = performance.now();
          });
        }
      });
      watch.observe(document, { childList: true, subtree: true });
    }, MARKS);
    await page.goto(address);
    await page.waitForFunction(() => window.stoodAtMs.screen > 0 && window.stoodAtMs.frame > 0);
    return await page.evaluate(() => window.stoodAtMs);
  } finally {
    await context.close();
  }
}

function median(values) {
  const sorted = [...values].sort((a, b) => a - b);
  const middle = sorted.length >> 1;
  return sorted.length % 2 === 1 ? sorted[middle] : (sorted[middle - 1] + sorted[middle]) / 2;
}
