import { expect, expectNoAxe, expectNoSideways, goTo, openDemo, test } from './app.ts';

test('a hive is renamed, rebuilt, moved in the walk and weighed empty; each can be taken back', async ({ page, site }) => {
  await openDemo(page, site, '/yard');
  const row = (label: string) => page.locator('.yard-row').filter({ has: page.locator('strong', { hasText: new RegExp(`^${label}$`) }) });
  const told = page.locator('.written');
  await row('A2').click();
  await page.getByLabel('Label', { exact: true }).fill('A3');
  await expect(page.getByText('A3 stands here already.')).toBeVisible();
  await page.getByLabel('Label', { exact: true }).fill('Alder');
  await page
    .locator('.yard-line', { has: page.getByLabel('Label', { exact: true }) })
    .getByRole('button')
    .click();
  await expect(told).toContainText('Now called Alder.');
  await expect(row('Alder')).toBeVisible();
  await told.getByRole('button', { name: 'Undo' }).click();
  await expect(row('A2')).toBeVisible();
  await expect(row('Alder')).toHaveCount(0);

  await page.getByRole('radio', { name: 'three mediums' }).check();
  await page.getByRole('button', { name: 'Write it down' }).last().click();
  await expect(told).toContainText('A2: build written down.');
  await expect(row('A2')).toContainText('three mediums × 10, wood');

  await page.getByRole('button', { name: 'Later in the walk' }).click();
  await expect(told).toContainText('A2 changed places with A3.');
  await expect(page.locator('.yard-row strong').nth(2)).toHaveText('A2');

  await page.getByText('Weighed empty').click();
  await page.getByLabel('Weight', { exact: true }).fill('40,5');
  await page.locator('details[open]').getByRole('button', { name: 'Write it down' }).click();
  await expect(told).toContainText('the whole hive, empty weighs 40.5 lb.');
  await expectNoAxe(page);
  await expectNoSideways(page);
});

test('a colony begins in an empty hive, is noted on, and ends; a hive with bees cannot be taken off the list', async ({ page, site }) => {
  await openDemo(page, site, '/yard');
  const told = page.locator('.written');
  const last = page.locator('.yard-row').last();
  await expect(last).toContainText('no bees');
  await last.click();
  await page.getByRole('button', { name: 'Begin a colony here' }).click();
  await expect(told).toContainText('A colony lives in C11 from today.');
  await expect(last).toContainText('one colony');
  await expect(page.getByRole('button', { name: 'Take off the list' })).toBeDisabled();
  await page.getByText('Queen, mites, treatment, signs').click();
  await page.getByLabel('Bees in the jar').fill('300');
  await page.getByLabel('Mites counted').fill('3,5');
  await expect(page.getByText('Allowed: 0 to 5000.')).toBeVisible();
  await page.getByLabel('Mites counted').fill('3');
  await page
    .locator('.yard-line', { has: page.getByLabel('Mites counted') })
    .getByRole('button')
    .click();
  await expect(told).toContainText('C11: wash written down.');
  await page.getByRole('button', { name: 'Put in' }).click();
  await expect(page.getByText(/formic acid in since/)).toBeVisible();
  await page.getByRole('button', { name: 'Taken out' }).click();
  await expect(page.getByText(/formic acid in since/)).toHaveCount(0);
  await page.getByRole('button', { name: 'silent', exact: true }).click();
  await expect(told).toContainText('C11: sign written down.');
  await expectNoAxe(page);
  await page.locator('summary', { hasText: 'End the colony' }).click();
  await page.getByRole('button', { name: 'End the colony' }).click();
  await expect(told).toContainText('The colony of C11 is ended.');
  await expect(last).toContainText('no bees');
  await page.getByRole('button', { name: 'Take off the list' }).click();
  await expect(last).toContainText('C10');
});

test('hives are added at the end of the walk; two of one label are refused', async ({ page, site }) => {
  await openDemo(page, site, '/yard');
  await page.getByRole('button', { name: 'Add hives' }).last().click();
  const labels = page.getByLabel('Labels, with commas between');
  await labels.fill('C12, c9');
  await expect(page.getByText('c9 stands here already.')).toBeVisible();
  await labels.fill('C12, C13');
  await page.locator('form.yard-editor').getByRole('button', { name: 'Add hives' }).click();
  await expect(page.locator('.written')).toContainText('2 hives added.');
  // at the end of the row that stands; C11 has no place in the walk and stays behind
  const order = page.locator('.yard-row strong');
  await expect(order.filter({ hasText: 'C13' })).toBeVisible();
  expect((await order.allTextContents()).slice(-4)).toEqual(['C10', 'C12', 'C13', 'C11']);
  await goTo(page, '/sheet/enter');
  await expect(page.getByLabel('C13, front', { exact: true })).toBeVisible();
});
