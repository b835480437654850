import { expect, openEmpty, test } from './app.ts';
import { writeBigJournal } from './big-journal.ts';

test.setTimeout(240_000);

// time: generous against a slow machine; what it guards against is a step that grows with the square of the records
test('a journal of 100,000 records is compared, taken in, folded and copied out again', async ({ page, site }, info) => {
  const file = info.outputPath('large.jsonl');
  writeBigJournal(file, { colonies: 200, records: 100_000 });
  await openEmpty(page, site, '/keep');
  const since = Date.now();
  const passed = () => ((Date.now() - since) / 1000).toFixed(1);
  await page.locator('input[type=file]').setInputFiles(file);
  await expect(page.locator('main dd')).toHaveText(['100000', '0', '0', '0'], { timeout: 60_000 });
  console.log(`compared after ${passed()} s`);
  // the longest time in which the page answered nothing while the first worker wrote; the last of it is the whole holding coming over
  await page.evaluate(() => {
    let last = performance.now();
    const gaps = { writing: 0, all: 0 };
    setInterval(() => {
      const now = performance.now();
      gaps.all = Math.max(gaps.all, now - last);
      if (/ of 100000\./.test(document.body.textContent ?? '')) gaps.writing = Math.max(gaps.writing, now - last);
      last = now;
    }, 20);
    Object.assign(window, { gaps });
  });
  await page.getByRole('button', { name: 'Add 100000 records' }).click();
  await expect(page.getByText(/\d{4,} of 100000\./)).toBeVisible({ timeout: 60_000 });
  await expect(page.getByText('100000 records added.')).toBeVisible({ timeout: 90_000 });
  const gaps = (await page.evaluate('window.gaps')) as { readonly writing: number; readonly all: number };
  console.log(
    `added after ${passed()} s; the page was silent for at most ${gaps.writing.toFixed(0)} ms, ${gaps.all.toFixed(0)} ms at its end`,
  );
  // a finger notices a third of a second; twice that for a busy machine
  expect(gaps.writing).toBeLessThan(700);
  await page.reload();
  await expect(page.getByText('100000 records on this device.')).toBeVisible({ timeout: 60_000 });
  console.log(`opened again after ${passed()} s`);
  const [download] = await Promise.all([
    page.waitForEvent('download', { timeout: 60_000 }),
    page.getByRole('button', { name: 'Copy to a file' }).click(),
  ]);
  let bytes = 0;
  for await (const piece of await download.createReadStream()) bytes += (piece as Buffer).length;
  console.log(`copied out after ${passed()} s, ${bytes} bytes`);
  expect(bytes).toBeGreaterThan(100_000 * 100);
  // taken in once more nothing is new
  await page.locator('input[type=file]').setInputFiles(file);
  await expect(page.locator('main dd')).toHaveText(['0', '100000', '0', '0'], { timeout: 60_000 });
  await expect(page.getByText('Everything in this file is here already.')).toBeVisible();
});
