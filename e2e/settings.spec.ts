import type { Page } from '@playwright/test';
import { expect, expectNoAxe, expectNoSideways, goTo, openDemo, openEmpty, test } from './app.ts';

test('what belongs to the device is there after loading again, without a yard', async ({ page, site }) => {
  await openEmpty(page, site, '/settings');
  await page.getByRole('radio', { name: 'sun' }).check();
  await page.getByRole('radio', { name: 'mitten' }).check();
  await page.getByRole('radio', { name: 'left' }).check();
  await page.getByRole('radio', { name: '150 %' }).check();
  await page.getByLabel('Your name in the records').fill('Ines');
  await expect.poll(() => storedName(page)).toBe('Ines');
  await page.reload();
  await expect(page.locator('html')).toHaveAttribute('data-theme', 'sun');
  await expect(page.locator('html')).toHaveAttribute('data-keys', 'mitten');
  await expect(page.locator('html')).toHaveAttribute('data-hand', 'left');
  await expect(page.getByRole('radio', { name: '150 %' })).toBeChecked();
  await expect(page.getByLabel('Your name in the records')).toHaveValue('Ines');
  await expect(page.getByText('There is no yard yet')).toBeVisible();
  await page.getByLabel('Your name in the records').fill(' ');
  await expect(page.getByText('A name is needed; until then records say Ines.')).toBeVisible();
  await expectNoAxe(page);
  await expectNoSideways(page);
});

test('what belongs to the holding is a record: written by its key, refused with what is allowed, kept while it is typed', async ({
  page,
  site,
}) => {
  await openDemo(page, site, '/settings');
  const days = page.getByLabel('A look at the brood stands for');
  await expect(days).toHaveValue('30');
  await days.fill('400');
  await expect(page.getByText('Allowed: 1 days to 365 days.')).toBeVisible();
  await days.fill('21');
  await page.reload();
  await expect(days).toHaveValue('21');
  await page.getByRole('button', { name: 'Write it down' }).click();
  await expect(page.getByRole('button', { name: 'Write it down' })).toHaveCount(0);
  await page.getByLabel('Combs may go from yard to yard').check();
  await page.getByRole('radio', { name: '99 in 100' }).check();
  await page.getByRole('radio', { name: 'kilograms, °C' }).check();
  // the international pound: 100 kg of sugar were shown as 220.5 lb
  await expect(page.getByLabel('Sugar on hand')).toHaveValue('100');
  await expect(page.locator('.header-copied')).toContainText('4 not copied');
  await goTo(page, '/keep');
  await goTo(page, '/settings');
  await expect(days).toHaveValue('21');
  await expect(page.getByLabel('Combs may go from yard to yard')).toBeChecked();
  await expect(page.getByRole('radio', { name: '99 in 100' })).toBeChecked();
  await page.getByRole('radio', { name: 'no rule' }).check();
  await page.getByRole('button', { name: 'Withdraw the rule' }).click();
  await expect(page.getByRole('button', { name: 'Withdraw the rule' })).toHaveCount(0);
  await expect(page.getByRole('radio', { name: 'no rule' })).toBeChecked();
  await expectNoAxe(page);
  await expectNoSideways(page);
});

/** The name as it is on the disk: a page loaded anew sooner than that would not have it. */
function storedName(page: Page): Promise<unknown> {
  return page.evaluate(
    () =>
      new Promise((resolve, reject) => {
        const opening = indexedDB.open('winterheft');
        opening.onerror = () => reject(opening.error);
        opening.onsuccess = () => {
          const asked = opening.result.transaction('facts').objectStore('facts').get('by');
          asked.onerror = () => reject(asked.error);
          asked.onsuccess = () => {
            opening.result.close();
            resolve(asked.result?.value);
          };
        };
      }),
  );
}
