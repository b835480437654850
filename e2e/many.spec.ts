import { expect, expectNoSideways, goTo, openEmpty, takeJournal, test } from './app.ts';
import { writeBigJournal } from './big-journal.ts';

test.setTimeout(120_000);

test('500 colonies: rows and how far it is appear before all are worked out, and the screen answers meanwhile', async ({
  page,
  site,
}, info) => {
  const file = info.outputPath('many.jsonl');
  writeBigJournal(file, { colonies: 500, records: 6000, differing: true });
  // ten milliseconds more after every colony, so that the machine may be a fast one
  page.on('worker', (worker) =>
    worker.evaluate(() => {
      const later = self.setTimeout.bind(self) as (run: () => void, ms: number) => number;
      Object.assign(self, { setTimeout: (run: () => void, ms = 0) => later(run, ms + 10) });
    }),
  );
  await openEmpty(page, site);
  await takeJournal(page, file);
  await goTo(page, '/outlook');
  const since = Date.now();
  await expect(page.locator('.chart-row').first()).toBeAttached({ timeout: 30_000 });
  console.log(`first rows after ${Date.now() - since} ms: ${await page.locator('.outlook-progress').first().textContent()}`);
  const heading = page.getByRole('heading', { level: 1 });
  await expect(heading).toContainText('So far: ');
  await expect(page.locator('.outlook-progress')).toContainText(/^\d+ of 500 colonies worked out\./);
  const rows = await page.locator('.chart-row').count();
  expect(rows).toBeLessThan(500);
  // more come, and a key answers at once
  await page.getByRole('button', { name: 'Table' }).click({ timeout: 2000 });
  await expect(page.locator('.outlook-table')).toBeVisible({ timeout: 2000 });
  await page.getByRole('button', { name: 'Chart' }).click({ timeout: 2000 });
  await expect.poll(() => page.locator('.chart-row').count(), { timeout: 30_000 }).toBeGreaterThan(rows);
  await expectNoSideways(page);
});
