import { expect, expectNoAxe, expectNoSideways, goTo, openDemo, test } from './app.ts';

test('from a colony one tap to every hive and lot its combs touched, with what the law of the place decides', async ({ page, site }) => {
  await openDemo(page, site, '/colony/colony-a2');
  await page.getByRole('link', { name: 'Trace its combs and bees' }).click();
  // the demo's lot "clover" was made of combs of A2
  await expect(page.getByText('lot clover made of combs of A2')).toBeVisible();
  await expect(page.getByText(/call the inspector/)).toBeVisible();
  await expectNoAxe(page);
  await expectNoSideways(page);
  await goTo(page, '/trace/colony/colony-b1');
  // B2 was split off B1
  await expect(page.getByText('B2 split off B1')).toBeVisible();
  await page.getByRole('link', { name: /^B2/ }).click();
  await expect(page).toHaveURL(/#\/colony\/colony-b2/);
});
