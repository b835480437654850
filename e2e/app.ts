import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { fileURLToPath } from 'node:url';
import { type BrowserContext, test as base, expect, type Page } from '@playwright/test';
import { type BrowserProcess, startBrowserProcess } from './browser-process.ts';
import { Site } from './site.ts';

export { expect } from '@playwright/test';
export type { Site } from './site.ts';

interface Fixtures {
  /** The built app on a server of this test's own. */
  readonly site: Site;
  /**
   * What a page has complained of: errors nobody caught, refusals by the content policy, files that are missing, errors written to the console.
   * A test fails where something is left in it at its end; a test that causes faults on purpose looks at them and empties it.
   */
  readonly faults: string[];
  /** A browser as a process of its own with a profile on disk, to be killed and opened again. */
  readonly browserProcess: (profile?: string) => Promise<BrowserProcess>;
}

export const test = base.extend<Fixtures>({
  site: async ({ browserName: _ }, use) => {
    const site = new Site();
    await site.start();
    await use(site);
    await site.stop();
  },
  faults: [
    async ({ context }, use) => {
      const faults: string[] = [];
      watch(context, faults);
      await use(faults);
      expect(faults, 'faults of the pages').toEqual([]);
    },
    { auto: true },
  ],
  browserProcess: async ({ browserName: _ }, use, info) => {
    const running: BrowserProcess[] = [];
    await use(async (profile = info.outputPath('profile')) => {
      const started = await startBrowserProcess(profile);
      running.push(started);
      return started;
    });
    for (const started of running) await started.kill();
  },
});

function watch(context: BrowserContext, faults: string[]): void {
  const follow = (page: Page) => {
    page.on('pageerror', (error) => faults.push(`${error.name}: ${error.message}`));
    page.on('console', (message) => {
      // A server that is dead on purpose is told by the browser as an error of the network.
      if (message.type() === 'error' && !/net::ERR_/.test(message.text())) faults.push(message.text());
    });
  };
  for (const page of context.pages()) follow(page);
  context.on('page', follow);
}

/** Opens the app on an empty storage; `path` is the route after `#`. */
export async function openEmpty(page: Page, site: Site, path = '/'): Promise<void> {
  await page.goto(`${site.address}#${path}`);
  await expect(page.locator('main').first()).toBeVisible();
}

/** Opens the demo holding (26 colonies in two yards) and goes to a route. Ends when the journal has been read. */
export async function openDemo(page: Page, site: Site, path = '/places'): Promise<void> {
  await page.goto(`${site.address}#/places`);
  await page.evaluate(() => sessionStorage.setItem('winterheft-demo', '1'));
  await page.reload();
  await expect(page.locator('.header-copied')).toContainText('all copied', { timeout: 20_000 });
  if (path !== '/places') await goTo(page, path);
}

/** The demo holding's journal as a file on disk. */
export const demoJournal = fileURLToPath(new URL('../demo/journal.jsonl', import.meta.url));

/** Takes a journal file into the open app through Keep. */
export async function takeJournal(page: Page, file = demoJournal): Promise<void> {
  await goTo(page, '/keep');
  await page.locator('input[type=file]').setInputFiles(file);
  await page.getByRole('button', { name: /^Add \d+ records?$/ }).click();
  await expect(page.getByText(/^\d+ records? added\.$/)).toBeVisible({ timeout: 30_000 });
}

/** Writes one record through Settings: the certainty that is asked for. */
export async function writeRecord(page: Page): Promise<void> {
  await goTo(page, '/settings');
  const choices = page.locator('input[name=certainty]');
  await choices.first().waitFor();
  const free = await choices.evaluateAll((all) => all.findIndex((one) => !(one as HTMLInputElement).checked));
  await choices.nth(free).evaluate((one) => (one as HTMLInputElement).click());
}

/** How many records the header says have no copy. */
export async function expectUncopied(page: Page, records: number): Promise<void> {
  await expect(page.locator('.header-copied')).toContainText(records === 0 ? 'all copied' : `${records} not copied`);
}

/** A plan of a whole holding may be computed before a screen stands, on a machine that does other things too. */
const PLAN_MS = 45_000;

/** A screen stands, and none of the words that take the place of one that broke. */
export async function expectScreen(page: Page, name: string): Promise<void> {
  await expect(page.locator('main').first(), name).toBeVisible({ timeout: PLAN_MS });
  await expect(page.locator('.broken'), name).toHaveCount(0);
}

/** Until nothing is waited for: the words that stand in while a screen loads or computes are gone. */
export async function settle(page: Page): Promise<void> {
  await expect(page.locator('.waiting')).toHaveCount(0, { timeout: PLAN_MS });
}

/** Goes to a route of an open app without loading it again. */
export async function goTo(page: Page, path: string): Promise<void> {
  await page.evaluate((hash) => {
    location.hash = hash;
  }, `#${path}`);
  await expect(page.locator('main').first()).toBeVisible({ timeout: PLAN_MS });
}

/** Waits until the service worker has everything it keeps, so that the server may die. */
export async function waitUntilKept(page: Page): Promise<void> {
  await page.evaluate(() => navigator.serviceWorker.ready);
  await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
}

export interface ModesSet {
  readonly theme?: 'system' | 'light' | 'dark' | 'sun';
  readonly keys?: 'glove' | 'mitten';
  readonly hand?: 'right' | 'left';
  readonly text?: 100 | 125 | 150 | 200;
  readonly units?: 'metric' | 'us' | 'ca';
}

/** Sets modes as the settings screen stores them, and loads the page again. */
export async function setModes(page: Page, modes: ModesSet): Promise<void> {
  await page.evaluate((set) => {
    const old = JSON.parse(localStorage.getItem('winterheft-modes') ?? '{}');
    localStorage.setItem('winterheft-modes', JSON.stringify({ ...old, ...set }));
  }, modes);
  await page.reload();
  await expect(page.locator('main').first()).toBeVisible();
}

const axeSource = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
const RULES = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];

/**
 * What axe finds on the page as it stands, one line for each element; a test expects none.
 * The window is made as tall as the page meanwhile: what the bar below covers in the middle of scrolling is no small target.
 */
export async function axeFindings(page: Page): Promise<readonly string[]> {
  const size = page.viewportSize();
  // A drawing that fills the window grows with it; a few turns are enough.
  for (let turn = 0; size !== null && turn < 5; turn++) {
    const [content = 0, shown = 0] = await page.evaluate(() => [document.documentElement.scrollHeight, window.innerHeight]);
    if (content <= shown) break;
    await page.setViewportSize({ width: size.width, height: content });
    await page.waitForTimeout(100);
  }
  const findings = await runAxe(page);
  if (size !== null) await page.setViewportSize(size);
  return findings;
}

async function runAxe(page: Page): Promise<readonly string[]> {
  const isThere = await page.evaluate(() => 'axe' in window);
  if (!isThere) await page.evaluate(axeSource);
  return page.evaluate(async (rules) => {
    interface Finding {
      readonly id: string;
      readonly nodes: readonly { readonly target: readonly unknown[]; readonly failureSummary?: string }[];
    }
    const { axe } = window as unknown as {
      axe: { run(root: Document, options: unknown): Promise<{ violations: Finding[]; passes: Finding[] }> };
    };
    const { violations, passes } = await axe.run(document, { runOnly: rules });
    if (passes.length === 0) return ['axe looked at nothing'];
    return violations.flatMap(({ id, nodes }) =>
      nodes.map((node) => `${id}: ${node.target.join(' ')}: ${(node.failureSummary ?? '').replace(/\s+/g, ' ')}`),
    );
  }, RULES);
}

export async function expectNoAxe(page: Page, where = page.url()): Promise<void> {
  expect(await axeFindings(page), `axe at ${where}`).toEqual([]);
}

/** Scrolling sideways is never needed, whatever the size of the text. */
export async function expectNoSideways(page: Page, where = page.url()): Promise<void> {
  const [content, window] = await page.evaluate(() => [document.documentElement.scrollWidth, document.documentElement.clientWidth]);
  expect(content, `width of the content at ${where}`).toBeLessThanOrEqual((window ?? 0) + 1);
}

/** Every screen of app/places.ts as a route, patterns filled in for the demo holding. */
export function screens(): readonly { readonly name: string; readonly path: string }[] {
  const text = readFileSync(new URL('../apps/web/src/app/places.ts', import.meta.url), 'utf8');
  const found = [...text.matchAll(/\bplace\(\s*'([\w-]+)',\s*'([^']+)'/g)].map((match) => ({
    name: match[1] as string,
    path: match[2] as string,
  }));
  if (found.length === 0) throw new Error('no screen was found in app/places.ts');
  return [...found.map(({ name, path }) => ({ name, path: filled(path) })), { name: 'places', path: '/places' }];
}

/** Parts of a route that name something, as the demo holding has it. */
const NAMES: Readonly<Record<string, string>> = {
  colony: 'colony-b4',
  kind: 'colony',
  id: 'colony-a2',
  hive: 'hive-b4',
  yard: 'yard-mill',
  label: 'B4',
};

function filled(pattern: string): string {
  return pattern.replace(/\/:(\w+)(\?)?/g, (_part, name: string, optional?: string) => {
    const value = NAMES[name];
    if (value !== undefined) return `/${value}`;
    if (optional !== undefined) return '';
    throw new Error(`${pattern}: say in e2e/app.ts what :${name} is in the demo holding`);
  });
}
