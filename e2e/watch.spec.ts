import type { Page } from '@playwright/test';
import { expect, expectNoAxe, expectNoSideways, goTo, openEmpty, type Site, takeJournal, test } from './app.ts';
import { WINTER_DAY, writeWinterJournal } from './winter-journal.ts';

async function openWinter(page: Page, site: Site, file: string): Promise<void> {
  writeWinterJournal(file);
  await page.clock.setFixedTime(new Date(`${WINTER_DAY}T10:00:00-06:00`));
  await openEmpty(page, site);
  await takeJournal(page, file);
  await goTo(page, '/watch');
  await expect(page.getByRole('heading', { level: 1 })).toContainText(/See \d+ this week/, { timeout: 45_000 });
}

test('the week: an order and a reason for each hive, one hive on the scale, clean in every light', async ({ page, site }, info) => {
  await openWinter(page, site, info.outputPath('winter.jsonl'));
  const b4 = page.locator('.watch-row').filter({ has: page.getByText('B4', { exact: true }) });
  await expect(b4).toContainText('short');
  await expect(page.locator('.watch-row').filter({ has: page.getByText('C8', { exact: true }) })).toContainText('Free it from its stand');
  await expect(page.locator('.watch-row').filter({ has: page.getByText('B7', { exact: true }) })).toContainText('silent on 2 Mar');
  await b4.click();
  await expect(page.getByRole('img', { name: /^B4 on / })).toBeVisible({ timeout: 20_000 });
  await expectNoAxe(page);
  await expectNoSideways(page);
});

test('signs at a hive: a key writes, a second tap and undo take back, hum and silence exclude each other, next is the next on the walk', async ({
  page,
  site,
}, info) => {
  await openWinter(page, site, info.outputPath('winter.jsonl'));
  await goTo(page, '/watch/colony-b7');
  const key = (name: string) => page.getByRole('button', { name: new RegExp(`^${name}`) });
  await expect(key('Hum')).toBeVisible();
  for (const box of await page.locator('.sign-key').all()) {
    const size = await box.boundingBox();
    expect(size?.height).toBeGreaterThanOrEqual(92);
    expect(size?.width).toBeGreaterThanOrEqual(130);
  }
  await key('Silent').click();
  await expect(key('Silent')).toHaveAttribute('aria-pressed', 'true');
  await key('Hum').click();
  await expect(key('Hum')).toHaveAttribute('aria-pressed', 'true');
  await expect(key('Silent')).toHaveAttribute('aria-pressed', 'false');
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(key('Silent')).toHaveAttribute('aria-pressed', 'true');
  await expect(key('Hum')).toHaveAttribute('aria-pressed', 'false');
  await key('Silent').click();
  await expect(key('Silent')).toHaveAttribute('aria-pressed', 'false');
  await key('Frozen down').click();
  await expect(page.getByText(/no weight is taken/)).toBeVisible();
  await expect(page.getByRole('link', { name: 'Lift, type the weight' })).toHaveCount(0);
  await expectNoAxe(page);
  await expectNoSideways(page);
  await page.getByRole('link', { name: /^Next / }).click();
  await expect(page.locator('.signs-head')).not.toContainText('B7');
});
