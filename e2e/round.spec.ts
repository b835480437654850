import type { Page } from '@playwright/test';
import {
  expect,
  expectNoAxe,
  expectNoSideways,
  expectUncopied,
  goTo,
  openDemo,
  setModes,
  takeJournal,
  test,
  waitUntilKept,
} from './app.ts';
import { writeBigJournal } from './big-journal.ts';

/** Taps keys of the pad, each late enough not to be taken for the bounce of the one before. */
async function type(page: Page, text: string): Promise<void> {
  for (const key of text) {
    await page.getByRole('button', { name: key === '.' ? 'point or comma' : key, exact: true }).click();
    await page.waitForTimeout(90);
  }
}

const front = (page: Page) => page.getByRole('button', { name: /^front edge/ });
const rear = (page: Page) => page.getByRole('button', { name: /^rear edge/ });
const big = (page: Page) => page.locator('.round-go');
const verdict = (page: Page) => page.locator('.round-verdict');
const undo = (page: Page) => page.getByRole('button', { name: 'Undo' });

async function openRound(page: Page, hive = 'hive-b4'): Promise<void> {
  await goTo(page, `/round/${hive}`);
  await expect(verdict(page)).toBeVisible();
}

/** Width and height of everything that can be tapped. */
async function controlSizes(page: Page): Promise<readonly { readonly name: string; readonly width: number; readonly height: number }[]> {
  return page.locator('.bare :is(button, a, input, summary)').evaluateAll((all) =>
    all.map((one) => {
      const { width, height } = one.getBoundingClientRect();
      return { name: one.getAttribute('aria-label') ?? one.textContent ?? '', width, height };
    }),
  );
}

for (const [name, modes, key] of [
  ['glove', {}, { width: 130, height: 92 }],
  ['mitten', { keys: 'mitten' }, { width: 130, height: 115 }],
  ['left-handed', { hand: 'left' }, { width: 130, height: 92 }],
  ['sun and mitten, left-handed', { theme: 'sun', keys: 'mitten', hand: 'left' }, { width: 130, height: 115 }],
] as const) {
  test(`${name}: every control is at least 56 px, every number key ${key.width} by ${key.height}`, async ({ page, site }) => {
    await openDemo(page, site);
    await setModes(page, modes);
    await openRound(page);
    let measured = 0;
    const measure = async () => {
      await expectNoSideways(page);
      for (const size of await controlSizes(page)) {
        measured++;
        expect(size.width, `width of ${size.name}`).toBeGreaterThanOrEqual(56);
        expect(size.height, `height of ${size.name}`).toBeGreaterThanOrEqual(56);
      }
    };
    await measure();
    const keys = page.locator('.round-pad button');
    await expect(keys).toHaveCount(12);
    for (const box of await keys.evaluateAll((all) => all.map((one) => one.getBoundingClientRect().toJSON()))) {
      expect(box.width).toBeGreaterThanOrEqual(key.width);
      expect(box.height).toBeGreaterThanOrEqual(key.height);
      expect(box.bottom).toBeLessThanOrEqual(844);
    }
    await page.getByRole('button', { name: 'Seen inside?' }).click();
    await measure();
    await page.getByRole('button', { name: 'No scale' }).click();
    await measure();
    await page.getByRole('button', { name: /^Scale$/ }).click();
    await type(page, '515');
    await expect(page.locator('.round-choice')).toHaveCount(2);
    for (const box of await page.locator('.round-choice').all()) expect((await box.boundingBox())?.height).toBeGreaterThanOrEqual(84);
    await measure();
    await undo(page).click();
    await page.getByRole('button', { name: /All hives of the round/ }).click();
    await measure();
    await page.getByRole('button', { name: /^Back to/ }).click();
    await page.getByRole('button', { name: 'Lift safely' }).click();
    await expect(page.getByText(/Never lift alone/)).toBeVisible();
    await measure();
    expect(measured).toBeGreaterThan(70);
  });
}

test('the next key is at the right, for the left hand at the left', async ({ page, site }) => {
  await openDemo(page, site);
  await openRound(page);
  const middle = async (name: string) => {
    const box = await page.locator(name).boundingBox();
    return (box?.x ?? 0) + (box?.width ?? 0) / 2;
  };
  expect(await middle('.round-go')).toBeGreaterThan(await middle('.round-undo'));
  await setModes(page, { hand: 'left' });
  await openRound(page);
  expect(await middle('.round-go')).toBeLessThan(await middle('.round-undo'));
});

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
  await undo(page).click();
  await expect(rear(page)).toHaveAccessibleName(/nothing typed$/);
  await undo(page).click();
  await undo(page).click();
  await expect(front(page)).toHaveAccessibleName(/nothing typed$/);
  await goTo(page, '/keep');
  // The weighing and its strike: nothing was taken out of the journal.
  await expectUncopied(page, 2);
});

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

test('the same key twice within 80 ms counts once', async ({ page, site }) => {
  await openDemo(page, site);
  await openRound(page);
  await page.getByRole('button', { name: '5', exact: true }).evaluate((key) => {
    (key as HTMLButtonElement).click();
    (key as HTMLButtonElement).click();
  });
  await expect(front(page)).toHaveAccessibleName(/ 5$/);
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
  for (let i = 0; i < 3 && (await page.getByText('Every hive of the round is weighed.').count()) === 0; i++) {
    await type(page, '60');
    await big(page).click();
    await type(page, '61');
    await big(page).click();
    await page.waitForTimeout(300);
  }
  await expect(page.getByText('Every hive of the round is weighed.')).toBeVisible();
  await expect(page.locator('.round-done .note')).toContainText('Does the browser keep it?');
  await expect(page.getByRole('link', { name: 'Outlook' })).toBeVisible();
});

test('axe finds nothing on the hive, its panes, the refusal and the list', async ({ page, site }) => {
  test.slow();
  await openDemo(page, site);
  for (const theme of ['light', 'dark', 'sun'] as const) {
    await setModes(page, { theme });
    await openRound(page);
    await expectNoAxe(page, `${theme}, hive`);
    await page.getByRole('button', { name: 'Seen inside?' }).click();
    await expectNoAxe(page, `${theme}, seen`);
    await page.getByRole('button', { name: 'No scale' }).click();
    await expectNoAxe(page, `${theme}, word`);
    await page.getByRole('button', { name: /^Scale$/ }).click();
    await type(page, '515');
    await expectNoAxe(page, `${theme}, refused`);
    for (const _digit of '515') await undo(page).click();
    await page.getByRole('button', { name: /All hives of the round/ }).click();
    await expectNoAxe(page, `${theme}, list`);
  }
});

test('text at 200 % needs no scrolling sideways and loses no key', async ({ page, site }) => {
  await openDemo(page, site);
  await setModes(page, { text: 200 });
  await openRound(page);
  await type(page, '51.5');
  await expectNoSideways(page);
  await big(page).click();
  await type(page, '54');
  await expect(page.locator('.round-answer')).toHaveAttribute('data-of', '51.5/54');
});

test.describe('at a desk', () => {
  test.use({ viewport: { width: 1280, height: 800 }, isMobile: false, hasTouch: false });
  test('real fields, Enter goes on, Ctrl Z takes back, the ledger follows', async ({ page, site }) => {
    await openDemo(page, site);
    await openRound(page);
    await expect(page.locator('input[inputmode=decimal]')).toHaveCount(2);
    await page.keyboard.type('51,5');
    await page.keyboard.press('Enter');
    await page.keyboard.type('54');
    await expect(page.locator('.round-answer')).toHaveAttribute('data-of', '51.5/54');
    await expect(page.locator('.round-sum')).toBeVisible();
    await expectNoAxe(page);
    await page.keyboard.press('Enter');
    const row = page.getByRole('row').filter({ has: page.getByRole('button', { name: 'B4', exact: true }) });
    await expect(row).toContainText('51.5');
    await expect(row).toContainText(/short \d+ lb/);
    await expect(row.getByRole('cell').last()).toHaveText(/\d+ ± [\d.]+/);
    await page.keyboard.press('Control+z');
    await expect(page.locator('[data-edge=front]')).toHaveValue('51.5');
  });
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
