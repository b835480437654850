import { expect, expectNoAxe, expectUncopied, goTo, openDemo, openEmpty, takeJournal, test, waitUntilKept } from './app.ts';
import { big, front, openRound, rear, type, undo } from './round-app.ts';

test('an entry in the middle of a number comes back after loading again, in the same field, and says so', async ({ page, site }) => {
  await openDemo(page, site);
  await openRound(page);
  await type(page, '51.5');
  await big(page).click();
  await type(page, '5');
  await page.reload();
  await expect(rear(page)).toHaveAccessibleName(/ 5$/);
  await expect(rear(page)).toHaveAttribute('aria-pressed', 'true');
  await expect(page.locator('.round-came-back')).toHaveText('5, not finished');
  await type(page, '4');
  await expect(page.locator('.round-came-back')).toHaveCount(0);
  await expect(page.locator('.round-answer')).toHaveAttribute('data-of', '51.5/54');
});

test('a draft older than twelve hours is offered and not gone on with by itself', async ({ page, site }) => {
  await openDemo(page, site);
  await openRound(page);
  await type(page, '51');
  await page.waitForTimeout(200);
  await page.clock.setFixedTime(Date.now() + 13 * 3_600_000);
  await page.reload();
  await expect(page.getByRole('heading', { name: /^Begun .*, not finished\.$/ })).toBeVisible();
  await expect(front(page)).toHaveAccessibleName(/nothing typed$/);
  await expect(big(page)).toHaveCount(0);
  await page.getByRole('button', { name: 'Go on with it' }).click();
  await expect(front(page)).toHaveAccessibleName(/ 51$/);
});

test('a hive left half-read stays in the walk with an open ring', async ({ page, site }) => {
  await openDemo(page, site);
  await openRound(page);
  await type(page, '51.5');
  await page.getByRole('button', { name: /All hives of the round/ }).click();
  await expect(page.getByRole('button', { name: /^B4/ })).toContainText('begun');
  await expect(page.getByRole('button', { name: /^B4/ }).locator('.state-unknown')).toBeVisible();
  await page.getByRole('button', { name: /^A1/ }).click();
  await expect(page.getByRole('button', { name: /^A1 / })).toBeVisible();
});

test('the browser is killed 50 ms after a key and opened again with the server dead: the digit is there', async ({
  site,
  browserProcess,
}) => {
  test.slow();
  const first = await browserProcess();
  const page = await first.context.newPage();
  await page.goto(site.address);
  await takeJournal(page);
  await waitUntilKept(page);
  await goTo(page, '/round/hive-b4');
  await type(page, '5');
  await page.getByRole('button', { name: '1', exact: true }).click();
  await page.waitForTimeout(50);
  await first.kill();
  await site.stop();
  const again = await (await browserProcess()).context.newPage();
  await again.goto(`${site.address}#/round`);
  await expect(again.getByRole('button', { name: /^B4 / })).toBeVisible({ timeout: 20_000 });
  await expect(front(again)).toHaveAccessibleName(/ 51$/);
});

test('a hive left before Next is told on every other screen; Keep makes it a record the plan knows, and the round can take it back', async ({
  page,
  site,
}) => {
  await openDemo(page, site);
  await openRound(page);
  await type(page, '51.5');
  await big(page).click();
  await type(page, '54');
  await goTo(page, '/outlook');
  await expect(page.getByText('B4: front 51.5, rear 54 lb, not kept yet.')).toBeVisible();
  await expectNoAxe(page);
  await page.getByRole('button', { name: 'Keep', exact: true }).click();
  await expect(page.getByText(/not kept yet/)).toHaveCount(0);
  await expectUncopied(page, 1);
  await goTo(page, '/round');
  await expect(front(page)).toContainText('last 51.5');
  await undo(page).click();
  await expect(front(page)).toHaveAccessibleName(/51\.5$/);
  await expect(rear(page)).toHaveAccessibleName(/54$/);
});

test('what is not yet a weight is told too, and only opened', async ({ page, site }) => {
  await openDemo(page, site);
  await openRound(page);
  await type(page, '5');
  await goTo(page, '/keep');
  await expect(page.getByText('B4: front 5 lb, not kept yet.')).toBeVisible();
  await page.waitForTimeout(1500);
  await expect(page.getByRole('button', { name: 'Keep', exact: true })).toHaveCount(0);
  await page.getByRole('link', { name: 'Open B4' }).click();
  await expect(front(page)).toHaveAccessibleName(/ 5$/);
});

test('the storage fills up in the middle of a round: told at the hive, the record stays in memory, and is on disk once there is room', async ({
  page,
  site,
}) => {
  await openEmpty(page, site);
  await takeJournal(page);
  await openRound(page);
  await page.evaluate(() => {
    const { add, put } = IDBObjectStore.prototype;
    const full = () => {
      throw new DOMException('The quota has been exceeded.', 'QuotaExceededError');
    };
    Object.assign(IDBObjectStore.prototype, { add: full, put: full });
    Object.assign(window, { makeRoom: () => Object.assign(IDBObjectStore.prototype, { add, put }) });
  });
  await type(page, '51.5');
  await big(page).click();
  await type(page, '54');
  await big(page).click();
  await expect(page.getByText('The storage of this device is full.')).toBeVisible();
  await page.evaluate(() => (window as unknown as { makeRoom(): void }).makeRoom());
  await page.getByRole('button', { name: 'Try again' }).click();
  await expect(page.getByText('The storage of this device is full.')).toHaveCount(0);
  await page.reload();
  await openRound(page);
  await expect(front(page)).toContainText('last 51.5');
  await expect(front(page)).toHaveAccessibleName(/nothing typed$/);
  await goTo(page, '/keep');
  await expectUncopied(page, 1);
});

test('two windows weigh at once: both hives are on record once, and each window shows both', async ({ page, context, site }) => {
  await openEmpty(page, site);
  await takeJournal(page);
  const other = await context.newPage();
  await openEmpty(other, site, '/keep');
  await openRound(page);
  await openRound(other, 'hive-b5');
  for (const window of [page, other]) {
    await type(window, '51.5');
    await big(window).click();
    await type(window, '54');
  }
  await Promise.all([big(page).click(), big(other).click()]);
  for (const window of [page, other]) {
    await goTo(window, '/keep');
    await expectUncopied(window, 2);
    for (const hive of ['hive-b4', 'hive-b5']) {
      await openRound(window, hive);
      await expect(front(window)).toContainText('last 51.5');
    }
  }
});

test('a clock set back by a year is told at the hive; what is weighed is kept, and stands in the journal under the day the clock said', async ({
  page,
  site,
}) => {
  await page.clock.setFixedTime(new Date('2026-09-20T15:00:00Z'));
  await openEmpty(page, site);
  await takeJournal(page);
  await page.clock.setFixedTime(new Date('2025-09-20T15:00:00Z'));
  await page.reload();
  await goTo(page, '/round/hive-b4');
  await expect(page.getByText(/This device says it is Sat 20 Sep 2025, but the last record is of/)).toBeVisible();
  await type(page, '51.5');
  await big(page).click();
  await type(page, '54');
  await big(page).click();
  await goTo(page, '/keep');
  await expectUncopied(page, 1);
});
