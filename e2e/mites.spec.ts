import { expect, expectNoAxe, expectNoSideways, expectUncopied, goTo, openDemo, test } from './app.ts';

test('a wash of 12 mites on 5 bees is refused in place; 0 of 300 shows the exact interval and is recorded', async ({ page, site }) => {
  await openDemo(page, site, '/mites/wash/colony-b4');
  await page.getByLabel('Bees', { exact: true }).fill('5');
  await page.getByLabel('Mites', { exact: true }).fill('12');
  await expect(page.getByLabel('Mites', { exact: true })).toHaveAttribute('aria-invalid', 'true');
  await expect(page.getByRole('button', { name: 'Record', exact: true })).toBeDisabled();
  await page.getByLabel('Bees', { exact: true }).fill('300');
  await page.getByLabel('Mites', { exact: true }).fill('');
  await page.getByRole('button', { name: '0', exact: true }).click();
  // 1 - 0.025^(1/300) = 1.2 in 100: Clopper and Pearson 1934, closed form at zero
  await expect(page.locator('.wash-interval')).toContainText('0.0 to 1.2');
  await expectNoAxe(page);
  await page.getByRole('button', { name: 'Record', exact: true }).click();
  await expect(page.getByText('Recorded: 0 of 300.')).toBeVisible();
  await expectUncopied(page, 1);
});

test('Mites shows both yards and the book, clean for axe and not wider than the screen', async ({ page, site }) => {
  await openDemo(page, site);
  await goTo(page, '/mites');
  await expect(page.getByRole('heading', { name: 'Treatments in the book' })).toBeVisible({ timeout: 45_000 });
  await expectNoAxe(page);
  await expectNoSideways(page);
});
