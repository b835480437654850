import type { Page } from '@playwright/test';
import { expect, expectNoAxe, expectNoSideways, goTo, openDemo, setModes, test } from './app.ts';

// The plan before the walk, the walk with its ticks, what is in hand, a stop passed by, planning again.

const PLAN_MS = 90_000;
const start = (page: Page) => page.getByRole('button', { name: 'Start the walk' });
const here = (page: Page) => page.locator('.stop-here');
const bar = (page: Page) => page.locator('.in-hand');

async function startWalk(page: Page): Promise<void> {
  await expect(start(page)).toBeEnabled({ timeout: PLAN_MS });
  await start(page).click();
  await expect(here(page)).toBeVisible();
}

/** Answers every look with clean. */
async function looksClean(page: Page): Promise<void> {
  const clean = here(page).getByRole('button', { name: 'clean', exact: true });
  while (await clean.isVisible()) {
    const before = await page.locator('.stop-done').count();
    await clean.click();
    await expect.poll(() => page.locator('.stop-done').count()).toBe(before + 1);
  }
}

async function done(page: Page): Promise<void> {
  const before = await page.locator('.stop-done').count();
  await here(page).getByRole('button', { name: 'Done', exact: true }).click();
  await expect.poll(() => page.locator('.stop-done').count()).toBe(before + 1);
}

const inHandNow = async (page: Page) => ((await bar(page).isVisible()) ? ((await bar(page).textContent()) ?? '') : '');
/** The bar's file is fetched when there is something in hand for the first time: it is given a moment. */
const inHand = async (page: Page) => {
  await bar(page)
    .waitFor({ timeout: 1000 })
    .catch(() => undefined);
  return inHandNow(page);
};

test.describe.configure({ timeout: 240_000 });

test('the walk: looks first, combs in hand on every screen, everything there again after a reload', async ({ page, site }) => {
  await openDemo(page, site, '/provision');
  await expect(page.getByRole('heading', { level: 1 })).toHaveText(/covers/, { timeout: PLAN_MS });
  await startWalk(page);
  await expect(bar(page)).toBeHidden();
  // a look has three answers, each at least 52 px high
  for (const name of ['clean', 'signs', 'not today']) {
    const box = await here(page).getByRole('button', { name, exact: true }).boundingBox();
    expect(box?.height ?? 0).toBeGreaterThanOrEqual(52);
  }
  await looksClean(page);
  while ((await inHand(page)) === '') await done(page);
  await expect(here(page)).toContainText('Find the queen');
  const held = await inHand(page);
  expect(held).toMatch(/\d+ capped and \d+ light in hand/);
  await goTo(page, '/keep');
  await expect.poll(() => inHandNow(page)).toBe(held);
  await bar(page).click();
  await expect(here(page)).toBeVisible();
  const ticked = await page.locator('.stop-done').count();
  await page.reload();
  await expect(here(page)).toBeVisible();
  expect(await page.locator('.stop-done').count()).toBe(ticked);
  await expect.poll(() => inHandNow(page)).toBe(held);
});

test('a tick taken back leaves the hand as it was', async ({ page, site }) => {
  await openDemo(page, site, '/provision');
  await startWalk(page);
  await looksClean(page);
  await done(page);
  const before = await inHand(page);
  const place = await here(page).locator('.stop-place').textContent();
  await done(page);
  expect(await here(page).locator('.stop-place').textContent()).not.toBe(place);
  await page
    .locator('.stop-done')
    .last()
    .getByRole('button', { name: /^Take back/ })
    .click();
  await expect(here(page).locator('.stop-place')).toHaveText(place ?? '');
  await expect.poll(() => inHandNow(page)).toBe(before);
});

test('passed by, the walk is planned anew from what is in hand, and says what changes; plan again waits for the keeper', async ({
  page,
  site,
}) => {
  await openDemo(page, site, '/provision');
  await startWalk(page);
  await looksClean(page);
  while ((await inHand(page)) === '' || !(await here(page).getByRole('button', { name: 'Pass by' }).isVisible())) await done(page);
  const held = await inHand(page);
  const place = (await here(page).locator('.stop-place').textContent()) ?? '';
  await here(page).getByRole('button', { name: 'Pass by' }).click();
  await expect(page.locator('.changes')).toContainText(`${place} was passed by`, { timeout: PLAN_MS });
  expect((await inHand(page)).replace(/now.*/, '')).toBe(held.replace(/now.*/, ''));
  await page.getByRole('button', { name: 'Plan again' }).click();
  const take = page.getByRole('button', { name: 'Walk by this plan' });
  await expect(take).toBeEnabled({ timeout: PLAN_MS });
  await page.getByRole('button', { name: 'Keep the old one' }).click();
  await expect(page.locator('.changes')).toContainText(`${place} was passed by`);
  await page.getByRole('button', { name: 'Plan again' }).click();
  await take.click({ timeout: PLAN_MS });
  await expect(page.locator('.changes')).toContainText('Planned again', { timeout: PLAN_MS });
});

test('signs of disease take a colony out of the walk and the plan made anew says who waits', async ({ page, site }) => {
  await openDemo(page, site, '/provision');
  await startWalk(page);
  const place = (await here(page).locator('.stop-place').textContent()) ?? '';
  await here(page).getByRole('button', { name: 'signs', exact: true }).click();
  await expect(page.locator('.changes')).toContainText(`${place} gives and gets no comb`, { timeout: PLAN_MS });
  await expect(page.locator('.stop', { hasText: 'Swap' }).locator('.stop-place', { hasText: new RegExp(`^${place}$`) })).toHaveCount(0);
  await page.reload();
  await expect(page.locator('.changes')).toContainText(`${place} gives and gets no comb`);
});

const MODES = [
  ['light', { theme: 'light' }],
  ['dark', { theme: 'dark' }],
  ['sun', { theme: 'sun' }],
  ['text at 200 %', { text: 200 }],
] as const;
for (const [name, modes] of MODES) {
  test(`axe finds nothing on the plan, the walk and the bank, and nothing is scrolled sideways: ${name}`, async ({ page, site }) => {
    await openDemo(page, site);
    await setModes(page, modes);
    await goTo(page, '/provision');
    await expect(start(page)).toBeEnabled({ timeout: PLAN_MS });
    await expectNoAxe(page);
    await startWalk(page);
    await expectNoAxe(page);
    await looksClean(page);
    while ((await inHand(page)) === '') await done(page);
    await expectNoAxe(page);
    await expectNoSideways(page);
    await goTo(page, '/bank');
    await page.getByRole('button', { name: 'Add a lot' }).click();
    await expectNoAxe(page);
    await expectNoSideways(page);
  });
}

test('a lot is written down, refused where it cannot be, counted again and kept', async ({ page, site }) => {
  await openDemo(page, site, '/bank');
  await page.getByRole('button', { name: 'Add a lot' }).click();
  await page.getByLabel('Name of the lot').fill('clover');
  await page.getByLabel('How many combs').fill('4');
  await page.getByLabel('One comb with its frame').fill('75');
  await page.getByRole('button', { name: 'Record' }).click();
  await expect(page.getByText('There is a lot clover already.')).toBeVisible();
  await expect(page.getByText(/Allowed:/)).toBeVisible();
  // what is half typed is there after a reload
  await page.reload();
  await page.getByRole('button', { name: 'Add a lot' }).click();
  await expect(page.getByLabel('How many combs')).toHaveValue('4');
  await page.getByLabel('Name of the lot').fill('aster-1');
  await page.getByLabel('One comb with its frame').fill('7,5');
  await page.getByRole('button', { name: 'Record' }).click();
  const row = page.locator('.lot', { hasText: 'aster-1' });
  await expect(row).toContainText('4 deep');
  await expect(row).toContainText('not given on');
  await row.getByRole('button', { name: /Count/ }).click();
  await page.getByLabel('Combs in lot aster-1 now').fill('3');
  await row.getByRole('button', { name: 'Record' }).click();
  await expect(row).toContainText('3 deep');
  await page.reload();
  await expect(row).toContainText('3 deep');
});

test('what there is to feed with is asked for where the plan reckons with it, and the plan follows', async ({ page, site }) => {
  await openDemo(page, site, '/provision');
  await expect(start(page)).toBeEnabled({ timeout: PLAN_MS });
  const asked = page.locator('.plan-feed');
  await expect(asked).toContainText('Sugar on hand');
  if ((await asked.getAttribute('open')) === null) await asked.locator('summary').click();
  await expectNoAxe(page);
  const sugar = asked.getByLabel('Sugar on hand');
  await sugar.fill('33');
  await asked.getByRole('button', { name: 'Write it down' }).click();
  await expect(asked.locator('summary')).toContainText('Sugar on hand: 33');
  await expect(start(page)).toBeEnabled({ timeout: PLAN_MS });
});

test('the bar says where the keeper stands: after a stop that was done ahead, not at the look that was passed over', async ({
  page,
  site,
}) => {
  await openDemo(page, site, '/provision');
  await startWalk(page);
  const look = await here(page).textContent();
  // The combs of the shed wait for no look.
  const load = page.locator('.stops > li').filter({ hasText: /Load \d+/ });
  await load.getByRole('button').first().click();
  await load.getByRole('button', { name: 'Done', exact: true }).click();
  await expect(bar(page)).toBeVisible({ timeout: PLAN_MS });
  await expect(bar(page)).toContainText(/now B4/);
  expect(look).toContain('Look at the brood');
  await expect(here(page)).not.toContainText('Look at the brood');
});
