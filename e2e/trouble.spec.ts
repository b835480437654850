import { readFileSync } from 'node:fs';
import {
  demoJournal,
  expect,
  expectScreen,
  expectUncopied,
  goTo,
  openDemo,
  openEmpty,
  screens,
  takeJournal,
  test,
  waitUntilKept,
  writeRecord,
} from './app.ts';
import { writeBigJournal } from './big-journal.ts';

const ALL_SCREENS_MS = 240_000;

// What a browser, a device or a second window may do to us: a sentence in place, no white screen, nothing typed lost.

test('a browser that keeps nothing is told in a sentence, and what is entered can be saved as a file', async ({ page, site }) => {
  test.setTimeout(ALL_SCREENS_MS);
  await page.addInitScript(() => {
    IDBFactory.prototype.open = () => {
      throw new DOMException('The user denied permission to access the database.', 'SecurityError');
    };
  });
  await openEmpty(page, site);
  for (const { name, path } of screens()) {
    await goTo(page, path);
    await expect(page.getByText('The browser does not keep anything here').first(), name).toBeVisible();
    await expectScreen(page, name);
  }
  await takeJournal(page);
  await writeRecord(page);
  const saving = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save the file' }).first().click();
  const text = await streamText(await (await saving).createReadStream());
  expect(text).toMatch(/"kind":"setting".*certaintyFrac/);
  expect(text.trim().split('\n').length).toBe(readFileSync(demoJournal, 'utf8').trim().split('\n').length + 1);
});

test('a full storage is told; what was entered is shown, kept in memory, and written when there is room again', async ({ page, site }) => {
  await openEmpty(page, site);
  await takeJournal(page);
  await page.evaluate(() => {
    const { add, put } = IDBObjectStore.prototype;
    const full = () => {
      throw new DOMException('The quota has been exceeded.', 'QuotaExceededError');
    };
    Object.assign(IDBObjectStore.prototype, { add: full, put: full });
    Object.assign(window, { makeRoom: () => Object.assign(IDBObjectStore.prototype, { add, put }) });
  });
  await writeRecord(page);
  await expect(page.getByText('The storage of this device is full.')).toBeVisible();
  await expectUncopied(page, 1);
  await page.evaluate(() => (window as unknown as { makeRoom(): void }).makeRoom());
  await page.getByRole('button', { name: 'Try again' }).click();
  await expect(page.getByText('The storage of this device is full.')).toHaveCount(0);
  await page.reload();
  await expectUncopied(page, 1);
});

test('a real quota that a file does not fit in: told, nothing of the file lost, written when there is room', async ({
  page,
  site,
}, info) => {
  test.setTimeout(120_000);
  const file = info.outputPath('large.jsonl');
  writeBigJournal(file, { colonies: 60, records: 8000 });
  await openEmpty(page, site, '/keep');
  await waitUntilKept(page);
  const browser = await page.context().newCDPSession(page);
  const { origin } = new URL(site.address);
  const { usage } = (await browser.send('Storage.getUsageAndQuota', { origin })) as { readonly usage: number };
  await browser.send('Storage.overrideQuotaForOrigin', { origin, quotaSize: usage + 100_000 });
  await page.locator('input[type=file]').setInputFiles(file);
  await page.getByRole('button', { name: 'Add 8000 records' }).click();
  await expect(page.getByText('The storage of this device is full.')).toBeVisible({ timeout: 60_000 });
  await expect(page.getByText('8000 records on this device.')).toBeVisible({ timeout: 30_000 });
  await browser.send('Storage.overrideQuotaForOrigin', { origin });
  await page.getByRole('button', { name: 'Try again' }).click();
  await expect(page.getByText('The storage of this device is full.')).toHaveCount(0, { timeout: 30_000 });
  await page.reload();
  await expect(page.getByText('8000 records on this device.')).toBeVisible({ timeout: 30_000 });
});

test('a row of the storage that is no record is told, hides nothing else, and goes along in the file', async ({ page, site }) => {
  await openEmpty(page, site);
  await takeJournal(page);
  await page.evaluate(
    () =>
      new Promise<void>((resolve, reject) => {
        const opening = indexedDB.open('winterheft');
        opening.onerror = () => reject(opening.error);
        opening.onsuccess = () => {
          const lines = opening.result.transaction('lines', 'readwrite').objectStore('lines');
          lines.add({ key: 'unread torn', text: '{"id":"torn by the disk', from: 'here' }).onsuccess = () => {
            opening.result.close();
            resolve();
          };
        };
      }),
  );
  await page.reload();
  await goTo(page, '/keep');
  await page.getByText('1 line could not be read here; it is kept and goes along in every file.').click();
  await expect(page.getByText('{"id":"torn by the disk')).toBeVisible();
  const saving = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Copy to a file' }).click();
  expect(await streamText(await (await saving).createReadStream())).toContain('{"id":"torn by the disk');
  await goTo(page, '/outlook');
  await expect(page.locator('.chart-row').first()).toBeAttached({ timeout: 30_000 });
});

test('without workers everything is computed in the page: every screen opens', async ({ page, site, faults }) => {
  test.setTimeout(ALL_SCREENS_MS);
  await page.addInitScript(() => {
    Object.defineProperty(window, 'Worker', {
      value: class {
        constructor() {
          throw new DOMException('Workers are switched off.', 'SecurityError');
        }
      },
    });
  });
  await openDemo(page, site);
  for (const { name, path } of screens()) {
    await goTo(page, path);
    await expectScreen(page, name);
  }
  expect(faults).toEqual([]);
});

test('a worker whose file does not come is one that was refused', async ({ page, site, faults }) => {
  await page.route(/\/worker-[^/]*\.js/, (route) => route.abort());
  await openEmpty(page, site);
  await takeJournal(page);
  await expectUncopied(page, 0);
  faults.length = 0;
});

test('two windows: what one writes the other shows, and nothing is written twice', async ({ page, context, site }) => {
  await openEmpty(page, site);
  await takeJournal(page);
  const other = await context.newPage();
  await openEmpty(other, site, '/keep');
  await writeRecord(page);
  await expectUncopied(other, 1);
  await writeRecord(other);
  await expectUncopied(page, 2);
  await page.reload();
  await expectUncopied(page, 2);
});

test('a clock set back by a year is told, what is entered is kept, and counts again once the clock is mended', async ({ page, site }) => {
  await page.clock.setFixedTime(new Date('2026-09-20T15:00:00Z'));
  await openEmpty(page, site);
  await takeJournal(page);
  await writeRecord(page);
  await page.clock.setFixedTime(new Date('2025-09-20T15:00:00Z'));
  await page.reload();
  await goTo(page, '/settings');
  await expect(page.getByText(/This device says it is Sat 20 Sep 2025, but the last record is of Sun 20 Sep 2026\./)).toBeVisible();
  await writeRecord(page);
  await expectUncopied(page, 2);
  await page.clock.setFixedTime(new Date('2026-09-21T15:00:00Z'));
  await page.reload();
  await expectUncopied(page, 2);
  await goTo(page, '/settings');
  await expect(page.getByText(/This device says it is/)).toHaveCount(0);
  await expect(page.locator('input[name=certainty]:checked')).toHaveCount(1);
  const before = await page.locator('input[name=certainty]:checked').inputValue();
  await writeRecord(page);
  await expect.poll(() => page.locator('input[name=certainty]:checked').inputValue()).not.toBe(before);
});

test('an address that leads nowhere says so and leads back', async ({ page, site }) => {
  await openEmpty(page, site, '/no/such/place');
  await expect(page.getByText('There is no such place.')).toBeVisible();
  await page.getByRole('link', { name: 'To the beginning' }).click();
  await expect(page.locator('main').first()).toBeVisible();
});

test('a screen whose file does not come says so and keeps the journal within reach', async ({ page, site, faults }) => {
  await page.route(/settings-screen-[^/]*\.js/, (route) => route.abort());
  await openEmpty(page, site);
  await goTo(page, '/settings');
  await expect(page.getByRole('heading', { name: 'This screen broke.' })).toBeVisible();
  await expect(page.getByRole('button', { name: 'Save the file' })).toBeVisible();
  faults.length = 0;
});

test('the first visit needs no second: the service worker is ready while the first page is open', async ({ page, site }) => {
  await openEmpty(page, site);
  await waitUntilKept(page);
  const kept = await page.evaluate(async () => {
    const names = await caches.keys();
    const lists = await Promise.all(
      names.map(async (name) => (await (await caches.open(name)).keys()).map((request) => new URL(request.url).pathname)),
    );
    return lists.flat();
  });
  for (const name of ['index.html', 'manifest.webmanifest'])
    expect(
      kept.some((path) => path.endsWith(`/${name}`)),
      name,
    ).toBe(true);
  expect(
    kept.some((path) => /\.wasm$/.test(path)),
    'the solver',
  ).toBe(true);
});

async function streamText(stream: AsyncIterable<Buffer | string>): Promise<string> {
  let text = '';
  for await (const part of stream) text += part.toString();
  return text;
}
