import { expect, expectNoAxe, expectNoSideways, goTo, openEmpty, takeJournal, test } from './app.ts';
import { writeWinterJournal } from './winter-journal.ts';

test('spring: two hives are counted in gloves, the dead one is read, what was learnt is taken over', async ({ page, site }, info) => {
  const file = info.outputPath('winter.jsonl');
  writeWinterJournal(file);
  await page.clock.setFixedTime(new Date('2027-05-02T10:00:00-06:00'));
  await openEmpty(page, site);
  await takeJournal(page, file);
  await goTo(page, '/spring');
  await expect(page.getByRole('heading', { name: 'Nobody has been counted yet.' })).toBeVisible({ timeout: 45_000 });
  await page.getByRole('link', { name: 'Count A1' }).click();
  const key = (name: string) => page.getByRole('button', { name, exact: true });
  await key('Alive').click();
  await key('One more').click();
  await expect(page.locator('output')).toHaveText('6');
  await key('eggs or brood').click();
  for (const box of await page.locator('.count-key').all()) expect((await box.boundingBox())?.height).toBeGreaterThanOrEqual(56);
  // half-typed entry comes back as it was
  await page.reload();
  await expect(page.locator('output')).toHaveText('6');
  await expect(key('Alive')).toHaveAttribute('aria-pressed', 'true');
  await expectNoAxe(page);
  await page.getByRole('button', { name: /^Record, next / }).click();
  await expect(page.locator('.count-head')).toContainText('A2');
  await key('Dead').click();
  await key('bees head first in cells').click();
  await key('no honey at the cluster').click();
  await expectNoAxe(page);
  await expectNoSideways(page);
  await page.getByRole('button', { name: /^Record, next / }).click();
  await goTo(page, '/spring');
  await expect(page.getByRole('heading', { name: '1 of 2 counted are alive.' })).toBeVisible({ timeout: 45_000 });
  await expect(page.getByText(/^starved in \d+ cases of 20$/)).toBeVisible();
  await page.getByRole('button', { name: 'Use them next autumn' }).click();
  await expect(page.getByText('Next autumn’s plan uses them.')).toBeVisible();
  await expectNoAxe(page);
  await expectNoSideways(page);
});
