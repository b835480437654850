import { expect, expectNoAxe, expectNoSideways, goTo, openEmpty, test } from './app.ts';

/** A tap is a press of a key of ours, or of one letter of the keyboard. */
test('from empty storage to the first answer in at most 14 taps', async ({ page, site }) => {
  await page.clock.setFixedTime(new Date('2026-09-18T15:00:00Z'));
  await openEmpty(page, site);
  let taps = 0;
  const tap = async (name: string | RegExp, role: 'button' | 'link' = 'button') => {
    await page.getByRole(role, { name, exact: true }).first().click();
    taps++;
  };
  const type = async (text: string) => {
    for (const letter of text) {
      await page.keyboard.press(letter);
      taps++;
    }
  };
  // the cursor stands in the field already
  await expect(page.getByLabel('Nearest town')).toBeFocused();
  await type('the p');
  await tap(/^The Pas/);
  await expect(page.getByRole('heading', { name: 'The winter these bees must cross' })).toBeVisible();
  await expect(page.getByLabel('How many hives')).toBeFocused();
  await type('9');
  await tap('Begin this yard');
  await expect(page.locator('.round-pad')).toBeVisible({ timeout: 20_000 });
  for (const key of ['6', '2']) await tap(key);
  await expect(page.locator('.round-verdict')).toContainText(/short|spare|enough/, { timeout: 20_000 });
  console.log(`taps from empty storage to the first answer: ${taps}`);
  expect(taps).toBeLessThanOrEqual(14);
});

test('everything asked can be changed: coordinates, build, labels, hooks, units, own rule; refusals stand in place', async ({
  page,
  site,
}) => {
  await openEmpty(page, site);
  await page.getByRole('button', { name: 'Type coordinates' }).click();
  await page.getByLabel('Degrees north').fill('-34');
  await page.getByLabel('Degrees east (west: minus)').fill('18,5');
  await page.getByRole('button', { name: 'Use these' }).click();
  await expect(page.getByText('This version knows northern winters only.')).toBeVisible();
  await page.getByLabel('Degrees north').fill('53,8');
  await page.getByLabel('Degrees east (west: minus)').fill('-101.2');
  await page.getByRole('button', { name: 'Use these' }).click();
  await page.getByLabel('How many hives').fill('many');
  await expect(page.getByText('Allowed: 1 to 500.')).toBeVisible();
  await page.getByLabel('How many hives').fill('3');
  await page.getByRole('button', { name: /^Labels/ }).click();
  await page.getByRole('radio', { name: 'my own' }).check();
  await page.getByLabel('One label a line, in the order you walk').fill('North\nNorth\nSouth');
  await expect(page.locator('.error').getByText('The label North stands twice.')).toBeVisible();
  await page.getByLabel('One label a line, in the order you walk').fill('North\nMiddle\nSouth');
  await page.getByRole('button', { name: /^Weighed in/ }).click();
  await page.getByRole('radio', { name: 'pounds, °C' }).check();
  await page.getByRole('button', { name: /^Hook/ }).click();
  await page.getByRole('radio', { name: 'on a board that sticks out' }).first().check();
  await page.getByRole('button', { name: /^Your rule/ }).click();
  await page.getByRole('radio', { name: 'weight of the whole hive' }).check();
  await page.getByLabel('At least').fill('120');
  await page.getByLabel('Colonies wintered by it').fill('40');
  await page.getByLabel('of them starved').fill('4');
  await expectNoAxe(page);
  await expectNoSideways(page);
  await page.reload();
  // what was typed is still there
  await expect(page.getByRole('button', { name: /^Your rule/ })).toContainText('120 lb in all');
  await page.getByRole('button', { name: 'Begin this yard' }).click();
  await expect(page.locator('.round-pad')).toBeVisible({ timeout: 20_000 });
  await expect(page.locator('main').getByText('North').first()).toBeVisible();
});

test('the demo holding is one tap away; a word in the header says what it is and leads out again', async ({ page, site }) => {
  await openEmpty(page, site);
  await page.getByRole('button', { name: 'Walk the demo yard' }).click();
  await expect(page.getByText(/\d+ of \d+/).first()).toBeVisible({ timeout: 20_000 });
  await goTo(page, '/keep');
  const lines = await page.locator('.lines').boundingBox();
  expect(lines?.height ?? 0, 'nothing above the page').toBeLessThan(4);
  await page.getByRole('button', { name: 'Demo' }).click();
  await expect(page.getByText('This is an invented holding.')).toBeVisible();
  await expectNoAxe(page);
  await page.getByRole('button', { name: 'Leave the demo' }).click();
  await expect(page.getByRole('button', { name: 'Walk the demo yard' })).toBeVisible({ timeout: 20_000 });
});
