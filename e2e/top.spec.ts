import { readFile } from 'node:fs/promises';
import { expect, expectNoAxe, expectNoSideways, openDemo, setModes, test } from './app.ts';

test('a colder day outside cools every face of the top', async ({ page, site }) => {
  await openDemo(page, site, '/top');
  const lid = page.locator('.top-table').first().locator('tbody tr').last().locator('td').first();
  const slider = page.getByRole('slider', { name: /Outside/ });
  await slider.fill('0');
  const warm = Number.parseFloat(((await lid.textContent()) ?? '').replace('−', '-'));
  await slider.fill('-30');
  await expect.poll(async () => Number.parseFloat(((await lid.textContent()) ?? '').replace('−', '-'))).toBeLessThan(warm - 10);
  await expectNoSideways(page);
});

test('the four tops stand beside each other with what each does, and none is called best', async ({ page, site }) => {
  test.slow();
  await openDemo(page, site, '/top');
  const rows = page.locator('.compare tbody tr');
  await expect(rows).toHaveCount(4, { timeout: 60_000 });
  for (const name of ['Vented box', 'Sealed foam', 'Box and foam', 'Bare lid']) await expect(rows.filter({ hasText: name })).toHaveCount(1);
  await expect(page.locator('main')).not.toContainText(/best|recommend/i);
  for (const theme of ['light', 'dark', 'sun'] as const) {
    await setModes(page, { theme });
    await expect(page.locator('.section')).toBeVisible();
    await expectNoAxe(page);
  }
});

test('the list follows hives and stock, and is saved as CSV', async ({ page, site }) => {
  await openDemo(page, site, '/kit');
  await page.getByLabel('Hives', { exact: true }).fill('10');
  await page.getByLabel('mesh: in the shed').fill('4');
  await expect(page.locator('.kit-line').filter({ hasText: 'mesh' })).toContainText('need 10, 6 more');
  await page.getByLabel('mesh: price of one').fill('20');
  await expect(page.getByRole('heading', { level: 1 })).toContainText('from');
  const saving = page.waitForEvent('download');
  await page.getByRole('button', { name: 'CSV file' }).click();
  const text = await readFile(await (await saving).path(), 'utf8');
  expect(text.split(/\r?\n/)[0]).toMatch(/^item,material,lengthM/);
  expect(text).toMatch(/^mesh,.*,10,4,6,pieces,/m);
  await page.getByRole('radio', { name: 'Cooked', exact: true }).check();
  await expect(page.getByText(/Boiling sugar is far hotter/)).toBeVisible();
  await expect(page.getByText(/No vinegar, lemon juice/)).toBeVisible();
  await expectNoAxe(page);
  await expectNoSideways(page);
});
