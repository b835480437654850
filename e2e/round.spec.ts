import { expect, expectUncopied, goTo, openDemo, test } from './app.ts';
import { big, front, openRound, rear, type, undo, verdict } from './round-app.ts';

test('a hive is weighed: an answer with each digit, front only until the rear is in, then a record and the next hive', async ({
  page,
  site,
}) => {
  await openDemo(page, site);
  await openRound(page);
  await type(page, '51.5');
  await expect(page.locator('.round-basis')).toHaveText('front only');
  const sdOf = async () => Number((await page.locator('.round-holds').textContent())?.match(/±\s*([\d.]+)/)?.[1]);
  const one = await sdOf();
  await big(page).click();
  await expect(rear(page)).toHaveAttribute('aria-pressed', 'true');
  await type(page, '54');
  await expect(page.locator('.round-answer')).toHaveAttribute('data-of', '51.5/54');
  await expect(page.locator('.round-basis')).toHaveCount(0);
  expect(await sdOf()).toBeLessThan(one);
  await expect(verdict(page)).toHaveText(/short \d+ lb/);
  await expect(page.locator('.round-stop')).toHaveText(/stop when the front reads \d+ ± [\d.]+ lb/);
  await expect(page.locator('.round-now')).toHaveText(/^Now: /);
  await big(page).click();
  await expect(page.getByRole('button', { name: /^B4 / })).toHaveCount(0);
  await page.getByRole('button', { name: /All hives of the round/ }).click();
  await expect(page.getByRole('button', { name: /^B4/ })).toContainText('short');
  await goTo(page, '/keep');
  await expectUncopied(page, 1);
});

test('what to do now names no other hive', async ({ page, site }) => {
  await openDemo(page, site);
  await openRound(page);
  await page.getByRole('button', { name: /All hives of the round/ }).click();
  const labels = await page.locator('.round-hives-key b').allInnerTexts();
  expect(labels.length).toBe(26);
  await page.getByRole('button', { name: /^Back to/ }).click();
  for (const readings of ['35', '45', '55', '65', '90']) {
    await type(page, readings);
    await big(page).click();
    await type(page, readings);
    await expect(page.locator('.round-answer')).toHaveAttribute('data-of', `${readings}/${readings}`);
    const now = (await page.locator('.round-now').textContent()) ?? '';
    expect(now).toMatch(/^Now: (mark|leave|look|weigh)/);
    for (const label of labels) expect(now).not.toMatch(new RegExp(`\\b${label}\\b`));
    for (let i = 0; i < 5 && /\d$/.test((await front(page).textContent()) ?? ''); i++) await undo(page).click();
    await expect(front(page)).toHaveAccessibleName(/nothing typed$/);
  }
});

test('a reading out by ten is refused with both readings; Next is gone until it is settled; typing on works', async ({ page, site }) => {
  await openDemo(page, site);
  await openRound(page);
  await type(page, '51.5');
  await big(page).click();
  await type(page, '540');
  await expect(page.getByRole('heading', { name: '540 lb at the rear?' })).toBeVisible();
  await expect(big(page)).toHaveCount(0);
  await page.getByRole('button', { name: 'Delete the last digit' }).click();
  await expect(big(page)).toBeVisible();
  await type(page, '0');
  await page.getByRole('button', { name: '54.0', exact: true }).click();
  await expect(rear(page)).toHaveAccessibleName(/54\.0$/);
  await expect(big(page)).toBeVisible();
  // A figure that could still grow is asked about when it is left.
  for (const _step of ['54.0', '0', 'delete', '0', '4']) await undo(page).click();
  await expect(rear(page)).toHaveAccessibleName(/ 5$/);
  await big(page).click();
  await expect(page.getByRole('heading', { name: '5 lb at the rear?' })).toBeVisible();
  await page.getByRole('button', { name: '50', exact: true }).click();
  await expect(rear(page)).toHaveAccessibleName(/ 50$/);
});

test('undo goes back a key, a reading, a hive; the struck hive comes back as it was', async ({ page, site }) => {
  await openDemo(page, site);
  await openRound(page);
  await type(page, '51.5');
  await undo(page).click();
  await expect(front(page)).toHaveAccessibleName(/ 51\.$/);
  await type(page, '5');
  await big(page).click();
  await type(page, '54');
  await big(page).click();
  await expect(page.getByRole('button', { name: /^B4 / })).toHaveCount(0);
  await undo(page).click();
  await expect(page.getByRole('button', { name: /^B4 / })).toBeVisible();
  await expect(front(page)).toHaveAccessibleName(/51\.5$/);
  await expect(rear(page)).toHaveAccessibleName(/54$/);
  // From here on every tap takes something away that stood on the screen.
  await undo(page).click();
  await expect(rear(page)).toHaveAccessibleName(/nothing typed$/);
  await undo(page).click();
  await expect(front(page)).toHaveAccessibleName(/nothing typed$/);
  await goTo(page, '/keep');
  // The weighing and its strike: nothing was taken out of the journal.
  await expectUncopied(page, 2);
});

test('the same key twice within 80 ms counts once', async ({ page, site }) => {
  await openDemo(page, site);
  await openRound(page);
  await page.getByRole('button', { name: '5', exact: true }).evaluate((key) => {
    (key as HTMLButtonElement).click();
    (key as HTMLButtonElement).click();
  });
  await expect(front(page)).toHaveAccessibleName(/ 5$/);
});

test('what was seen inside and a word are recorded, and nothing else is asked', async ({ page, site }) => {
  await openDemo(page, site);
  await openRound(page);
  await page.getByRole('button', { name: 'No scale' }).click();
  await expect(page.getByRole('button', { name: /^light/ })).toContainText(/\d+ to \d+ lb of stores/);
  await page.getByRole('button', { name: /^light/ }).click();
  await expect(page.locator('.round-basis')).toHaveText('by hand');
  await page.getByRole('button', { name: 'Seen inside?' }).click();
  await page.getByRole('button', { name: /^more: bees/ }).click();
  await page.getByRole('button', { name: 'brood clean' }).click();
  await big(page).click();
  await expect(page.getByRole('button', { name: /^B4 / })).toHaveCount(0);
  await goTo(page, '/keep');
  await expectUncopied(page, 2);
});

test('the answer is spoken and felt in the words that stand on the screen', async ({ page, site }) => {
  await page.addInitScript(() => {
    const said: string[] = [];
    const felt: unknown[] = [];
    Object.assign(window, { said, felt });
    SpeechSynthesis.prototype.speak = (utterance) => void said.push(utterance.text);
    Navigator.prototype.vibrate = (pattern) => felt.push(pattern) > 0;
  });
  await openDemo(page, site);
  await page.evaluate(() => localStorage.setItem('winterheft-modes', JSON.stringify({ speak: true, buzz: true })));
  await page.reload();
  await openRound(page);
  await type(page, '40');
  await big(page).click();
  await type(page, '41');
  await expect(page.locator('.round-answer')).toHaveAttribute('data-of', '40/41');
  const shown = `B4 ${await verdict(page).textContent()}. ${await page.locator('.round-now').textContent()}`;
  await expect.poll(() => page.evaluate(() => (window as unknown as { said: string[] }).said.at(-1))).toBe(shown);
  await expect(page.locator('[aria-live]')).toHaveText(shown);
  const heard = await page.evaluate(() => {
    const { said, felt } = window as unknown as { said: string[]; felt: number[][] };
    return { said, felt };
  });
  expect(heard.said).toContain('front 40');
  expect(heard.felt.slice(0, 2)).toEqual([[15], [15]]);
  // Short is felt as three short buzzes.
  expect(heard.felt.at(-1)?.filter((_ms, i) => i % 2 === 0)).toEqual([80, 80, 80]);
  await type(page, '0');
  await expect.poll(() => page.evaluate(() => (window as unknown as { said: string[] }).said.at(-1))).toBe('410 lb at the rear?');
});

test('the last hive closes the round: the list says so, and what the browser answered about keeping', async ({ page, site }) => {
  await openDemo(page, site);
  await goTo(page, '/round');
  await expect(verdict(page).or(page.locator('.round-prompt'))).toBeVisible();
  const closed = page.getByText('Every hive of the round is weighed.');
  for (let i = 0; i < 3 && (await closed.count()) === 0; i++) {
    await type(page, '60');
    await big(page).click();
    await type(page, '61');
    await big(page).click();
    await expect(closed.or(page.locator('.round-pad'))).toBeVisible();
    await page.waitForTimeout(300);
  }
  await expect(closed).toBeVisible();
  await expect(page.locator('.round-done .note')).toContainText('Does the browser keep it?');
  await expect(page.getByRole('link', { name: 'Outlook' })).toBeVisible();
});

test('a hive passed over is come back to by Undo, and the one before it keeps its record', async ({ page, site }) => {
  await openDemo(page, site);
  await openRound(page);
  await type(page, '51.5');
  await big(page).click();
  await type(page, '54');
  await big(page).click();
  await expect(page.getByRole('button', { name: /^C3 / })).toBeVisible();
  await openRound(page, 'hive-a1');
  await big(page).click();
  await expect(page.getByRole('button', { name: /^C3 / })).toBeVisible();
  await undo(page).click();
  await expect(page.getByRole('button', { name: /^A1 / })).toBeVisible();
  await goTo(page, '/keep');
  await expectUncopied(page, 1);
});

test('front and rear in the field of the other are swapped by one tap', async ({ page, site }) => {
  await openDemo(page, site);
  await openRound(page);
  await type(page, '66');
  await big(page).click();
  await type(page, '46');
  await expect(page.getByText('Front and rear swapped?')).toBeVisible();
  await page.getByRole('button', { name: 'Swap them' }).click();
  await expect(front(page)).toHaveAccessibleName(/ 46$/);
  await expect(rear(page)).toHaveAccessibleName(/ 66$/);
  await expect(page.getByText('Front and rear swapped?')).toHaveCount(0);
});

test('readings typed at the wrong hive go along to the right one, and Undo brings them back', async ({ page, site }) => {
  await openDemo(page, site);
  await openRound(page);
  await type(page, '51.5');
  await page.getByRole('button', { name: /All hives of the round/ }).click();
  await page.getByRole('button', { name: 'It was not B4' }).click();
  await page.getByRole('button', { name: /^B5/ }).click();
  await expect(page.getByRole('button', { name: /^B5 / })).toBeVisible();
  await expect(front(page)).toHaveAccessibleName(/51\.5$/);
  for (const _key of '51.5') await undo(page).click();
  await undo(page).click();
  await expect(page.getByRole('button', { name: /^B4 / })).toBeVisible();
  await expect(front(page)).toHaveAccessibleName(/51\.5$/);
});

test('a weighing that is on record moves to the right hive as a correction, and Undo strikes that', async ({ page, site }) => {
  await openDemo(page, site);
  await openRound(page);
  await page.getByRole('button', { name: /All hives of the round/ }).click();
  await page.getByRole('button', { name: 'It was not B4' }).click();
  await expect(page.getByText('front 55, rear 54 lb goes along, from B4')).toBeVisible();
  await page.getByRole('button', { name: /^C3/ }).click();
  await expect(page.getByRole('button', { name: /^C3 / })).toBeVisible();
  await expect(front(page)).toContainText('last 55');
  await undo(page).click();
  await expect(page.getByRole('button', { name: /^B4 / })).toBeVisible();
  await expect(front(page)).toContainText('last 55');
  await goTo(page, '/keep');
  await expectUncopied(page, 2);
});
