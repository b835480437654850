// Remakes the pictures of the README from the demo holding: docs/screens/*.png. `npm run screenshots`.
import { mkdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { buildWeb, webDist } from './build-web.mjs';
import { launchBrowser } from './lib/browser.mjs';
import { listen, readSite, siteHandler } from './lib/site.mjs';
import { root } from './lib/steps.mjs';

const PHONE = { viewport: { width: 390, height: 844 }, deviceScaleFactor: 2, isMobile: true, hasTouch: true };
const DESK = { viewport: { width: 1280, height: 800 }, deviceScaleFactor: 1.5 };
/** What a route names: a colony with something to tell, short, weighed and looked at, and its hive. */
const NAMES = { colony: 'colony-b4', hive: 'hive-b4' };
const PICTURES = [
  { file: 'round-phone', place: 'round', as: PHONE, prepare: typeReadings },
  { file: 'outlook-phone', place: 'outlook', as: PHONE },
  { file: 'colony-phone', place: 'colony', as: PHONE },
  { file: 'provision-phone', place: 'provision', as: PHONE },
  { file: 'sheet-phone', place: 'sheet', as: PHONE },
  { file: 'outlook-desk', place: 'outlook', as: DESK },
];
/** Readings as on the journal's last day, typed with the app's own keys; each late enough not to be taken for a bounce of the one before. */
async function typeReadings(page) {
  for (const reading of ['54.5', '53.5']) {
    for (const key of reading) {
      await page.getByRole('button', { name: key === '.' ? 'point or comma' : key, exact: true }).click();
      await page.waitForTimeout(120);
    }
    if (reading === '54.5') await page.locator('.round-go').click();
  }
  await page.locator('.round-answer[data-of="54.5/53.5"]').waitFor();
}

/** What stands where a screen is still loading or computing. */
const WAITING = '.waiting, [aria-busy=true]';
const PATIENCE_MS = 120_000;

/** The route of a screen, as app/places.ts has it. */
function routeOf(place) {
  const list = readFileSync(join(root, 'apps/web/src/app/places.ts'), 'utf8');
  const path = new RegExp(`\\bplace\\(\\s*'${place}',\\s*'([^']+)'`).exec(list)?.[1];
  if (path === undefined) throw new Error(`make-screenshots: app/places.ts has no screen ${place}`);
  return path.replace(/:(\w+)\??/, (_part, name) => NAMES[name]);
}

const folder = join(root, 'docs/screens');
mkdirSync(folder, { recursive: true });
await buildWeb();
const server = await listen(siteHandler(readSite(webDist)), 0);
const address = `http://localhost:${server.address().port}/`;
const browser = await launchBrowser();
try {
  for (const { file, place, as, prepare } of PICTURES) {
    const context = await browser.newContext({ ...as, locale: 'en-CA', colorScheme: 'light', reducedMotion: 'reduce' });
    const page = await context.newPage();
    await page.goto(`${address}#/places`);
    await page.evaluate(() => sessionStorage.setItem('winterheft-demo', '1'));
    await page.reload();
    await page.locator('.header-copied').getByText('all copied').waitFor({ timeout: PATIENCE_MS });
    await page.evaluate((path) => {
      location.hash = `#${path}`;
    }, routeOf(place));
    await page.locator('main').first().waitFor();
    await page.waitForFunction((waiting) => document.querySelector(waiting) === null, WAITING, { timeout: PATIENCE_MS });
    await prepare?.(page);
    await page.evaluate(() => document.fonts.ready);
    await page.waitForLoadState('networkidle');
    await page.screenshot({ path: join(folder, `${file}.png`) });
    console.log(`docs/screens/${file}.png`);
    await context.close();
  }
} finally {
  await browser.close();
  await new Promise((resolve) => server.close(resolve));
}
