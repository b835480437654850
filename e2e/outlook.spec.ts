import { readFileSync, writeFileSync } from 'node:fs';
import type { Page } from '@playwright/test';
import {
  demoJournal,
  expect,
  expectNoAxe,
  expectNoSideways,
  goTo,
  type ModesSet,
  openDemo,
  openEmpty,
  type Site,
  setModes,
  takeJournal,
  test,
} from './app.ts';

// The run-out chart and the colony behind each row.

const DESK = { width: 1280, height: 800 };
/** The day of the demo's round, for a holding that is taken in as one's own. */
const ROUND_DAY = new Date('2026-09-18T15:00:00Z');

/** Until the chart rests on all cases: nothing is being worked out any more. */
async function settled(page: Page): Promise<void> {
  await expect(page.locator('.chart-row').first()).toBeAttached({ timeout: 30_000 });
  await expect(page.locator('main [role=status]')).toHaveCount(0, { timeout: 40_000 });
}

async function openOwn(page: Page, site: Site, file = demoJournal): Promise<void> {
  await page.clock.setFixedTime(ROUND_DAY);
  await openEmpty(page, site);
  await takeJournal(page, file);
  await goTo(page, '/outlook');
  await settled(page);
}

/** The demo's journal with 34 more colonies, copies of calm ones with more on the scale. */
function sixtyColonies(path: string): string {
  const lines = readFileSync(demoJournal, 'utf8').trim().split('\n');
  const calm = ['b1', 'a8', 'c1', 'b5', 'a4', 'c10', 'c5', 'b2', 'a3', 'b3', 'b8'];
  let records = 0;
  const copies = Array.from({ length: 34 }, (_, n) => {
    const name = calm[n % calm.length];
    return lines
      .filter((line) => line.includes(`"colony-${name}"`) || line.includes(`"hive-${name}"`))
      .map((line) => {
        const record = JSON.parse(line.replaceAll(`"colony-${name}"`, `"colony-x${n}"`).replaceAll(`"hive-${name}"`, `"hive-x${n}"`));
        record.id = `01990000-0000-7000-8000-${String(++records).padStart(12, '0')}`;
        if (record.kind === 'hive') record.body = { hive: record.body.hive, label: `X${n + 1}` };
        if (record.kind === 'weighing') for (const edge of ['frontKg', 'rearKg']) if (record.body[edge]) record.body[edge] *= 1.1;
        return JSON.stringify(record);
      });
  });
  writeFileSync(path, `${[...lines, ...copies.flat()].join('\n')}\n`);
  return path;
}

interface Row {
  readonly label: string;
  readonly middle: number;
  readonly height: number;
}

/** Rows as they stand on the screen, from top to bottom. */
function rowsOf(page: Page): Promise<readonly Row[]> {
  return page.locator('.chart-rows ol > li').evaluateAll((all) =>
    all
      .map((li) => {
        const box = li.getBoundingClientRect();
        return { label: li.textContent?.split(',')[0] ?? '', middle: box.top + box.height / 2, height: box.height };
      })
      .sort((a, b) => a.middle - b.middle),
  );
}

test('26 colonies fit one view of a phone, in full rows, above the foot bar', async ({ page, site }) => {
  await openOwn(page, site);
  const rows = await rowsOf(page);
  expect(rows).toHaveLength(26);
  for (const row of rows) expect(row.height, row.label).toBeGreaterThanOrEqual(16);
  const foot = await page.locator('.outlook-foot').boundingBox();
  const body = await page.locator('.chart-body').evaluate((element) => ({
    bottom: element.getBoundingClientRect().bottom,
    hidden: element.scrollHeight - element.clientHeight,
  }));
  expect(body.bottom).toBeLessThanOrEqual(foot?.y ?? 0);
  expect(body.hidden).toBeLessThanOrEqual(1);
  expect(await page.evaluate(() => window.scrollY)).toBe(0);
  await expectNoSideways(page);
});

test('a tap anywhere in the chart takes the nearest row, and the middle of the foot bar opens it', async ({ page, site }) => {
  await openDemo(page, site, '/outlook');
  await settled(page);
  const foot = page.locator('.outlook-foot');
  const rows = (await rowsOf(page)).filter((row) => row.height > 12);
  expect(rows.length).toBeGreaterThan(8);
  for (const [row, x] of [
    [rows[3], 30],
    [rows[5], 200],
    [rows[8], 375],
  ] as const) {
    if (row === undefined) throw new Error('too few rows');
    await page.mouse.click(x, row.middle + row.height * 0.3);
    await expect(foot.locator('.num')).toHaveText(row.label);
  }
  await expect(page).toHaveURL(/#\/outlook$/);
  await foot.locator('.foot-middle').click();
  await expect(page).toHaveURL(/#\/colony\/colony-/);
  await expect(page.locator('.colony-label')).toHaveText(rows[8]?.label ?? '');
});

test('the keys of the foot bar are 66 by 74 and step row by row', async ({ page, site }) => {
  await openDemo(page, site, '/outlook');
  await settled(page);
  const labels = (await rowsOf(page)).map((row) => row.label);
  const below = page.getByRole('button', { name: 'Row below' });
  const above = page.getByRole('button', { name: 'Row above' });
  for (const key of [above, below]) {
    const box = await key.boundingBox();
    expect(box?.width).toBeGreaterThanOrEqual(66);
    expect(box?.height).toBeGreaterThanOrEqual(74);
  }
  const shown = page.locator('.outlook-foot .num');
  await expect(shown).toHaveText(labels[0] ?? '');
  await expect(above).toBeDisabled();
  await below.click();
  await below.click();
  await expect(shown).toHaveText(labels[2] ?? '');
  await above.click();
  await expect(shown).toHaveText(labels[1] ?? '');
});

test('arrows go through the rows in order of risk, Enter opens the colony', async ({ page, site }) => {
  await page.setViewportSize(DESK);
  await openDemo(page, site, '/outlook');
  await settled(page);
  const labels = (await rowsOf(page)).map((row) => row.label);
  const focused = () => page.evaluate(() => document.activeElement?.textContent?.split(',')[0]);
  await page.locator('.chart-row[tabindex="0"]').focus();
  expect(await page.locator('.chart-row[tabindex="0"]').count()).toBe(1);
  expect(await focused()).toBe(labels[0]);
  for (const label of labels.slice(1, 4)) {
    await page.keyboard.press('ArrowDown');
    expect(await focused()).toBe(label);
  }
  await page.keyboard.press('ArrowUp');
  expect(await focused()).toBe(labels[2]);
  await page.keyboard.press('End');
  expect(await focused()).toBe(labels.at(-1));
  await page.keyboard.press('Home');
  await page.keyboard.press('Enter');
  await expect(page.locator('.colony-label')).toHaveText(labels[0] ?? '');
});

test('a row is read as a sentence', async ({ page, site }) => {
  await openDemo(page, site, '/outlook');
  await settled(page);
  const chances = /\d+ chances? in \d+/.source;
  await expect(
    page.getByRole('link', {
      name: new RegExp(`^B4, Mill yard, short \\d+ pounds, ${chances} to run out before forage, from \\d+ \\w{3}\\.$`),
    }),
  ).toHaveCount(1);
  await expect(page.getByRole('link', { name: /^C3, Ridge yard, not weighed yet, needs \d+ pounds\.$/ })).toHaveCount(1);
  await expect(page.getByRole('link', { name: /^A7, Mill yard, spare \d+ pounds if its brood is clean, / })).toHaveCount(1);
});

test('the table has the same numbers as the chart, and as many needles are drawn', async ({ page, site }) => {
  await page.setViewportSize(DESK);
  await openDemo(page, site, '/outlook');
  await settled(page);
  const chart = await page.locator('.chart-rows ol > li').evaluateAll((all) =>
    all.map((li) => {
      const text = (part: string) => li.querySelector(part)?.textContent?.trim() ?? '';
      return {
        label: text('.row-label'),
        figures: text('.row-figures'),
        above: text('.row-above'),
        chances: text('.row-chances'),
        later: text('.row-later'),
      };
    }),
  );
  const needles = await page.locator('.chart-drawing > g').evaluateAll((all) =>
    all.map((g) => {
      const count = (kind: string) => (g.querySelector(kind)?.getAttribute('d') ?? '').split('M').length - 1;
      return { tall: count('.needle-tall'), short: count('.needle-short') };
    }),
  );
  await page.getByRole('button', { name: 'Table' }).click();
  const table = await page
    .locator('tbody tr')
    .evaluateAll((all) => all.map((tr) => [...tr.children].map((cell) => (cell.textContent ?? '').trim())));
  const living = table.filter((cells) => cells.length > 5);
  expect(chart.length).toBe(26);
  expect(living.map((cells) => cells[0])).toEqual(chart.map((row) => row.label));
  const known = chart.filter((row) => row.chances !== '?');
  expect(needles).toHaveLength(known.length);
  for (const [i, row] of chart.entries()) {
    const [, , , has, need, above, chances, cases] = living[i] ?? [];
    expect(above, row.label).toBe(row.above);
    expect(chances, row.label).toBe(row.chances);
    if (row.chances === '?') continue;
    expect(row.figures.startsWith(`${has} needs ${need}`), `${row.label}: ${row.figures}`).toBe(true);
    const later = Number(/(\d+) after/.exec(cases ?? '')?.[1] ?? 0);
    expect(Number(row.later || 0), row.label).toBe(later);
    const drawn = needles[known.indexOf(row)] ?? { tall: 0, short: 0 };
    expect(drawn.tall + drawn.short + later, `${row.label}: twenty cases`).toBe(20);
    expect(drawn.tall, `${row.label}: tall needles`).toBe(Number(row.chances));
  }
});

test('of 60 colonies the calm ones shrink to slivers, with their count and a key that opens them', async ({ page, site }, info) => {
  test.setTimeout(120_000);
  await openOwn(page, site, sixtyColonies(info.outputPath('sixty.jsonl')));
  // one of the sixty was never weighed
  await expect(page.locator('h1')).toContainText('of 59 have more than');
  const rows = await rowsOf(page);
  expect(rows).toHaveLength(60);
  const slivers = rows.filter((row) => row.height < 8);
  expect(slivers.length).toBeGreaterThan(20);
  for (const row of slivers) expect(row.height, row.label).toBeGreaterThanOrEqual(3);
  const counts = await page.locator('.group-count').allTextContents();
  expect(counts.reduce((sum, text) => sum + Number(text), 0)).toBe(slivers.length);
  await expectNoAxe(page);
  const axis = await page.locator('.chart-axis').boundingBox();
  await page.getByRole('button', { name: /^open every row of: spare/ }).click();
  const opened = (await rowsOf(page)).filter((row) => row.height < 8).length;
  expect(opened).toBeLessThan(slivers.length);
  await page.locator('.chart-body').evaluate((element) => element.scrollTo(0, 9999));
  expect(await page.locator('.chart-axis').boundingBox()).toEqual(axis);
});

test('a yard is chosen: its rows alone, with its own headline', async ({ page, site }) => {
  await openDemo(page, site, '/outlook');
  await settled(page);
  await page.locator('.outlook-yards label', { hasText: 'Ridge yard' }).click();
  await expect(page.getByRole('radio', { name: 'Ridge yard' })).toBeChecked();
  const labels = (await rowsOf(page)).map((row) => row.label);
  expect(labels.length).toBeGreaterThan(3);
  for (const label of labels) expect(label).toMatch(/^C\d+$/);
  // C3 was not weighed: it is told apart, never counted as safe
  await expect(page.locator('h1')).toContainText(`of ${labels.length - 1} ha`);
});

test('sun shows what asks for something in rows of at least 31 px, the rest in one sentence', async ({ page, site }) => {
  await openDemo(page, site);
  await setModes(page, { theme: 'sun' });
  await goTo(page, '/outlook');
  await settled(page);
  const rows = await rowsOf(page);
  for (const row of rows) expect(row.height, row.label).toBeGreaterThanOrEqual(31);
  const others = Number(/^\s*(\d+) others/.exec((await page.locator('.outlook-others').textContent()) ?? '')?.[1]);
  expect(rows.length + others).toBe(26);
});

const MODES: readonly (readonly [string, ModesSet])[] = [
  ['light', { theme: 'light' }],
  ['dark', { theme: 'dark' }],
  ['sun', { theme: 'sun' }],
  ['text at 200 %', { theme: 'light', text: 200 }],
];
for (const [name, modes] of MODES)
  test(`axe finds nothing on chart, table, what lies behind the keys, and colony: ${name}`, async ({ page, site }) => {
    test.setTimeout(120_000);
    await openDemo(page, site);
    await setModes(page, modes);
    await goTo(page, '/outlook');
    await settled(page);
    await page.locator('details').evaluateAll((all) => {
      for (const one of all as HTMLDetailsElement[]) one.open = true;
    });
    await expectNoAxe(page, `chart, ${name}`);
    await expectNoSideways(page, `chart, ${name}`);
    await page.getByRole('button', { name: 'Table' }).click();
    await expectNoAxe(page, `table, ${name}`);
    await expectNoSideways(page, `table, ${name}`);
    await goTo(page, '/colony/colony-b4');
    await expect(page.locator('.fan svg')).toBeVisible({ timeout: 40_000 });
    await expect(page.locator('.waiting')).toHaveCount(0, { timeout: 40_000 });
    await page.locator('details').evaluateAll((all) => {
      for (const one of all as HTMLDetailsElement[]) one.open = true;
    });
    await expectNoAxe(page, `colony, ${name}`);
    await expectNoSideways(page, `colony, ${name}`);
  });

test('parts of the need add up to it, and causes to the doubt', async ({ page, site }) => {
  await openDemo(page, site, '/colony/colony-b4');
  await expect(page.locator('.doubt tbody tr').first()).toBeVisible({ timeout: 40_000 });
  const numbers = async (where: string) => (await page.locator(where).allTextContents()).map((text) => Number.parseFloat(text));
  const need = Number(/Needs ([\d.]+) lb/.exec((await page.locator('.need h2').textContent()) ?? '')?.[1]);
  const parts = (await numbers('.need-list > div:not(.need-has-row) dd')).reduce((sum, part) => sum + part, 0);
  // Five figures rounded to a tenth: at most a quarter of a pound apart.
  expect(need).toBeGreaterThan(0);
  expect(Math.abs(parts - need)).toBeLessThanOrEqual(0.25);
  const doubt = Number(/Doubt ([\d.]+) lb/.exec((await page.locator('.doubt h2').textContent()) ?? '')?.[1]);
  const causes = (await numbers('.doubt tbody td:nth-child(2)')).reduce((sum, part) => sum + part, 0);
  expect(doubt).toBeGreaterThan(0);
  expect(Math.abs(causes - doubt)).toBeLessThanOrEqual(0.35);
});

test('Outlook, Colony and Round say the same need of a colony', async ({ page, site }) => {
  await openDemo(page, site, '/outlook');
  await settled(page);
  const needs = async (text: Promise<string | null>) => Number(/needs (\d+(?:\.\d)?)/i.exec((await text) ?? '')?.[1]);
  const inChart = await needs(page.locator('.chart-row[data-colony="colony-b4"] .row-figures').textContent());
  await goTo(page, '/colony/colony-b4');
  await expect(page.locator('.doubt tbody tr').first()).toBeVisible({ timeout: 30_000 });
  const inColony = await needs(page.locator('.colony-need h2').first().textContent());
  await goTo(page, '/round/hive-b4');
  await expect(page.locator('main')).toContainText(/needs \d+/, { timeout: 30_000 });
  const inRound = await needs(page.locator('main').textContent());
  expect(inColony).toBeGreaterThan(0);
  expect(Math.round(inColony)).toBe(inChart);
  expect(inRound).toBe(inChart);
});

test('a figure tells where it comes from, by one tap', async ({ page, site }) => {
  await openDemo(page, site, '/colony/colony-b4');
  await page.getByRole('button', { name: 'where from: What a colony eats' }).click({ timeout: 40_000 });
  const group = page.locator('#source-use');
  await expect(group).toHaveAttribute('open', '');
  await expect(group).toContainText('39 ± 13 g a day, 32 colonies');
  await expect(group).toContainText('PLOS ONE');
});

test('a weighing is withdrawn and put back; the verdict follows, nothing is erased', async ({ page, site }) => {
  test.setTimeout(120_000);
  await openDemo(page, site, '/colony/colony-b4');
  await expect(page.locator('.colony-verdict')).toContainText('short', { timeout: 40_000 });
  const weighed = page.locator('.history li', { hasText: 'weighed: front' }).first();
  const text = await weighed.locator('.history-text').textContent();
  await weighed.getByRole('button', { name: /^Withdraw:/ }).click();
  await expect(page.locator('.history s')).toHaveText(text ?? '');
  await expect(page.locator('.colony-verdict')).not.toContainText('short', { timeout: 40_000 });
  await page.getByRole('button', { name: /^Put back:/ }).click();
  await expect(page.locator('.history s')).toHaveCount(0);
  await expect(page.locator('.colony-verdict')).toContainText('short', { timeout: 40_000 });
});

test('a colony that is not there is said, with a way back', async ({ page, site }) => {
  await openDemo(page, site, '/colony/nobody');
  await expect(page.locator('h1')).toHaveText('There is no such colony.');
  await page.getByRole('link', { name: 'To the outlook' }).click();
  await settled(page);
});
