import { readFileSync, writeFileSync } from 'node:fs';
import { demoJournal, expect, expectNoAxe, expectUncopied, goTo, openEmpty, takeJournal, test, writeRecord } from './app.ts';

const yardRows = (page: import('@playwright/test').Page) => page.locator('main .ledger-row strong');

test('storage emptied and restored from the file: 26 colonies and every record are there again', async ({ page, site }, info) => {
  await openEmpty(page, site);
  await takeJournal(page);
  await writeRecord(page);
  await goTo(page, '/keep');
  await expectUncopied(page, 1);
  const [download] = await Promise.all([page.waitForEvent('download'), page.getByRole('button', { name: 'Copy to a file' }).click()]);
  const file = info.outputPath('journal.jsonl');
  await download.saveAs(file);
  // a browser that was handed a file may not have written it: nothing counts as copied, over a restart as well
  await expect(page.getByText(`${download.suggestedFilename()} was handed to the browser on`)).toBeVisible();
  await expectUncopied(page, 1);
  await page.reload();
  await expectUncopied(page, 1);
  await page.getByRole('button', { name: 'The file is there' }).click();
  await expectUncopied(page, 0);
  await expect(page.getByText(/^All of it was copied on/)).toBeVisible();
  await expect(page.getByText('was handed to the browser')).toHaveCount(0);
  // what was taken in stands in the file line for line, and one line more
  const before = readFileSync(demoJournal, 'utf8').trim().split('\n');
  const written = readFileSync(file, 'utf8').trim().split('\n');
  expect(written).toHaveLength(before.length + 1);
  expect(before.filter((line) => !written.includes(line))).toEqual([]);

  await page.evaluate(async () => {
    localStorage.clear();
    for (const { name } of await indexedDB.databases()) if (name !== undefined) indexedDB.deleteDatabase(name);
  });
  await page.goto(`${site.address}#/begin`);
  await page.reload();
  await expect(page.getByLabel('Nearest town')).toBeVisible();

  await goTo(page, '/keep');
  await page.locator('input[type=file]').setInputFiles(file);
  await expect(page.locator('main dd')).toHaveText([String(written.length), '0', '0', '0']);
  await page.getByRole('button', { name: `Add ${written.length} records` }).click();
  await expect(page.getByText(`${written.length} records added.`)).toBeVisible();
  await goTo(page, '/outlook');
  await expect(page.getByRole('heading', { level: 1 })).toContainText(/of 25 have/, { timeout: 45_000 });
  await goTo(page, '/yard');
  await expect(yardRows(page).first()).toBeVisible();
});

test('a file that is read back counts as a copy where every record stands in it, and not where one is missing', async ({
  page,
  site,
}, info) => {
  await openEmpty(page, site);
  await takeJournal(page);
  await writeRecord(page);
  await goTo(page, '/keep');
  const [download] = await Promise.all([page.waitForEvent('download'), page.getByRole('button', { name: 'Copy to a file' }).click()]);
  const whole = info.outputPath('whole.jsonl');
  await download.saveAs(whole);
  const text = readFileSync(whole, 'utf8');
  const torn = info.outputPath('torn.jsonl');
  writeFileSync(torn, text.split('\n').slice(1).join('\n'));
  await page.locator('input[type=file]').setInputFiles(torn);
  await expect(page.getByText('Everything in this file is here already.')).toBeVisible();
  await expectUncopied(page, 1);
  await page.locator('input[type=file]').setInputFiles(whole);
  await expect(page.getByText('Every record of this device stands in this file')).toBeVisible();
  await expectUncopied(page, 0);
  await expect(page.getByText('was handed to the browser')).toHaveCount(0);
  await expectNoAxe(page);
});

test('a file that is new in part, unreadable in part and clashing in part is told in four numbers before anything is added', async ({
  page,
  site,
}, info) => {
  await openEmpty(page, site);
  await takeJournal(page);
  const lines = readFileSync(demoJournal, 'utf8').trim().split('\n');
  const hive = JSON.parse(lines.find((line) => line.includes('"label":"A1"')) as string);
  const second = { ...hive, id: '019fffff-0000-7000-8000-000000000001', body: { ...hive.body, hive: 'hive-new', label: 'A1' } };
  const file = info.outputPath('mixed.jsonl');
  writeFileSync(file, [...lines.slice(0, 10), JSON.stringify(second), '{"torn', ''].join('\n'));
  await goTo(page, '/keep');
  await page.locator('input[type=file]').setInputFiles(file);
  // two hives with one label are one clash
  await expect(page.locator('main dd')).toHaveText(['1', '10', '1', '1']);
  await expect(page.locator('main dt')).toHaveText(['new', 'known', 'not readable', 'clashing']);
  await expect(page.getByText(/two hives with one label/)).toBeVisible();
  await expectUncopied(page, 0);
  await expectNoAxe(page);
});

test('what is no journal is refused in a sentence and nothing is added', async ({ page, site }, info) => {
  await openEmpty(page, site, '/keep');
  for (const [name, text, says] of [
    ['empty.txt', '', 'This file is empty.'],
    ['letter.txt', 'Dear keeper,\nno journal here.\n', 'No line of this file is a record of a journal. Nothing was taken in.'],
  ] as const) {
    const file = info.outputPath(name);
    writeFileSync(file, text);
    await page.locator('input[type=file]').setInputFiles(file);
    await expect(page.getByText(says)).toBeVisible();
  }
  const binary = info.outputPath('picture.bin');
  writeFileSync(binary, Buffer.from([0xff, 0xd8, 0x00, 0x10, 0x00, 0x00, 0xff, 0xfe, 0x00]));
  await page.locator('input[type=file]').setInputFiles(binary);
  await expect(page.getByText('This file is not text.')).toBeVisible();
  await expect(page.getByText('0 records on this device.')).toBeVisible();
});
