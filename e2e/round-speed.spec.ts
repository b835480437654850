import { expect, goTo, takeJournal, test } from './app.ts';
import { writeBigJournal } from './big-journal.ts';
import { big, front, type, verdict } from './round-app.ts';

/** Answers that are measured, and how long the slowest but two may take [ms]: 95 of 100 within a second. */
const ANSWERS = 50;
const ANSWER_MS = 1000;

test('60 colonies, 20,000 records, a processor throttled six times: an answer is painted within a second of its digit', async ({
  page,
  site,
}, info) => {
  test.setTimeout(300_000);
  const file = info.outputPath('big.jsonl');
  writeBigJournal(file, { colonies: 60, records: 20_000 });
  await page.goto(site.address);
  await takeJournal(page, file);
  await goTo(page, '/round');
  await expect(verdict(page)).toBeVisible({ timeout: 60_000 });
  const devtools = await page.context().newCDPSession(page);
  await devtools.send('Emulation.setCPUThrottlingRate', { rate: 6 });
  await page.evaluate(() => {
    const times: number[] = [];
    Object.assign(window, { times });
    let at = 0;
    addEventListener('click', (event) => (at = event.timeStamp), true);
    new MutationObserver((changes) => {
      const answered = changes.some(({ target }) => (target as HTMLElement).dataset['of'] !== undefined);
      if (!answered) return;
      const began = at;
      // After the next frame, and what it paints, is done.
      requestAnimationFrame(() => setTimeout(() => times.push(performance.now() - began)));
    }).observe(document.body, { subtree: true, attributes: true, attributeFilter: ['data-of'] });
  });
  const taken: number[] = [];
  const answer = async (of: string) => {
    await expect(page.locator('.round-answer')).toHaveAttribute('data-of', of, { timeout: 30_000 });
    await page.waitForTimeout(120);
    taken.push((await page.evaluate(() => (window as unknown as { times: number[] }).times.at(-1))) ?? Number.NaN);
  };
  for (let hive = 0; taken.length < ANSWERS; hive++) {
    const [a, b] = [String(50 + (hive % 10)), String(52 + (hive % 7))];
    await type(page, a);
    await answer(`${a}/`);
    await big(page).click();
    await type(page, b);
    await answer(`${a}/${b}`);
    await big(page).click();
    await expect(front(page)).toHaveAccessibleName(/nothing typed$/);
  }
  const sorted = taken.toSorted((a, b) => a - b);
  const p95 = sorted[Math.ceil(0.95 * ANSWERS) - 1] as number;
  const figures = [sorted[ANSWERS / 2] as number, p95, sorted.at(-1) as number].map(Math.round).join(', ');
  info.annotations.push({ type: 'answers [ms]: median, 95 %, slowest', description: figures });
  expect(sorted.every((ms) => ms > 0)).toBe(true);
  expect(p95).toBeLessThanOrEqual(ANSWER_MS);
});
