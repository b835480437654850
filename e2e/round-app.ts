import type { Page } from '@playwright/test';
import { expect, goTo } from './app.ts';

/** Taps keys of the pad, each late enough not to be taken for the bounce of the one before. */
export async function type(page: Page, text: string): Promise<void> {
  for (const key of text) {
    await page.getByRole('button', { name: key === '.' ? 'point or comma' : key, exact: true }).click();
    await page.waitForTimeout(90);
  }
}

export const front = (page: Page) => page.getByRole('button', { name: /^front edge/ });
export const rear = (page: Page) => page.getByRole('button', { name: /^rear edge/ });
export const big = (page: Page) => page.locator('.round-go');
export const verdict = (page: Page) => page.locator('.round-verdict');
export const undo = (page: Page) => page.getByRole('button', { name: 'Undo' });

export async function openRound(page: Page, hive = 'hive-b4'): Promise<void> {
  await goTo(page, `/round/${hive}`);
  await expect(verdict(page)).toBeVisible();
}
