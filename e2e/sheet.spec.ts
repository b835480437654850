import { expect, expectNoAxe, expectNoSideways, goTo, openDemo, openEmpty, takeJournal, test } from './app.ts';
import { writeBigJournal } from './big-journal.ts';

test.use({ viewport: { width: 1280, height: 800 }, isMobile: false, hasTouch: false });

/** Pages of a PDF as its own objects count them: ISO 32000-1, 7.7.3.3, every page object has /Type /Page. */
const pagesOf = (pdf: Buffer) => pdf.toString('latin1').match(/\/Type\s*\/Page(?![a-zA-Z])/g)?.length ?? 0;

test('26 hives print on one page of A4 and one of Letter, in black only', async ({ page, site }) => {
  await openDemo(page, site, '/sheet');
  await expect(page.getByText('1 page, A4 or Letter, black only.')).toBeVisible({ timeout: 45_000 });
  for (const format of ['A4', 'Letter'] as const) expect(pagesOf(await page.pdf({ format })), format).toBe(1);
  // a second count, of a page with too much on it, shows that counting can fail
  await page.evaluate(() =>
    document.querySelector('.papers-all')?.append(...[1, 2].map(() => document.querySelector('.paper')?.cloneNode(true) as Node)),
  );
  expect(pagesOf(await page.pdf({ format: 'A4' }))).toBe(3);
  await page.reload();
  await expect(page.getByText('1 page, A4 or Letter, black only.')).toBeVisible({ timeout: 45_000 });
  await page.emulateMedia({ media: 'print' });
  const colours = await page.evaluate(() => {
    const found = new Set<string>();
    for (const element of document.querySelectorAll('.papers, .papers *')) {
      const style = getComputedStyle(element);
      if (style.display === 'none') continue;
      found.add(style.color);
      if (element instanceof SVGElement) for (const paint of [style.fill, style.stroke]) if (paint.startsWith('rgb')) found.add(paint);
      for (const side of ['Top', 'Right', 'Bottom', 'Left'] as const)
        if (Number.parseFloat(style[`border${side}Width`]) > 0) found.add(style[`border${side}Color`]);
    }
    return [...found].sort();
  });
  expect(colours.filter((colour) => colour !== 'rgb(0, 0, 0)' && colour !== 'rgba(0, 0, 0, 0)')).toEqual([]);
  expect(colours).toContain('rgb(0, 0, 0)');
});

test('on a phone the whole page is to be seen, can be enlarged in a frame of its own, and prints in its true size', async ({
  page,
  site,
}) => {
  await page.setViewportSize({ width: 390, height: 844 });
  await openDemo(page, site, '/sheet');
  await expect(page.getByText('1 page, A4 or Letter, black only.')).toBeVisible({ timeout: 45_000 });
  const paper = page.locator('.paper');
  const right = async () => {
    const box = await paper.boundingBox();
    return (box?.x ?? 0) + (box?.width ?? 0);
  };
  expect(await right()).toBeLessThanOrEqual(390);
  await page.getByRole('button', { name: 'Enlarge' }).click();
  expect(await right()).toBeGreaterThan(390);
  await expectNoSideways(page);
  await page.getByRole('button', { name: 'Whole page' }).click();
  expect(await right()).toBeLessThanOrEqual(390);
  expect(pagesOf(await page.pdf({ format: 'A4' }))).toBe(1);
  await page.emulateMedia({ media: 'print' });
  // 188 mm as the style sheet has it, at 96 CSS pixels an inch
  expect((await paper.boundingBox())?.width).toBeCloseTo((188 / 25.4) * 96, 0);
});

test('60 hives print on three pages, each with the head and every hive on one of them', async ({ page, site }, info) => {
  const file = info.outputPath('sixty.jsonl');
  writeBigJournal(file, { colonies: 60, records: 600 });
  await openEmpty(page, site);
  await takeJournal(page, file);
  await goTo(page, '/sheet');
  await expect(page.getByText('3 pages, A4 or Letter, black only.')).toBeVisible({ timeout: 50_000 });
  for (const format of ['A4', 'Letter'] as const) expect(pagesOf(await page.pdf({ format })), format).toBe(3);
  await expect(page.locator('.papers').getByText('Date weighed')).toHaveCount(3);
  await expect(page.locator('.papers').getByText('Bench yard')).toHaveCount(3);
  const labels = await page.locator('.paper-row th').allTextContents();
  expect(labels).toEqual(Array.from({ length: 60 }, (_, i) => String(i + 1)));
});

test('a filled sheet is typed back in with the keyboard alone; refusals stand in place; undo takes it back', async ({ page, site }) => {
  await openDemo(page, site, '/sheet/enter');
  const field = (name: string) => page.getByLabel(name, { exact: true });
  await field('A1, front').focus();
  await page.keyboard.type('71,5');
  await page.keyboard.press('Enter');
  await expect(field('A1, rear')).toBeFocused();
  await page.keyboard.type('68');
  await field('A2, front').fill('675');
  await expect(page.getByText(/675 lb at the front\?/)).toBeVisible();
  await page.getByRole('button', { name: 'it is 67.5' }).click();
  await expect(field('A2, front')).toHaveValue('67.5');
  await page.reload();
  // what was typed is still there
  await expect(field('A1, front')).toHaveValue('71,5');
  const date = page.getByLabel('Date weighed');
  await date.fill('2026-09-19');
  await expect(page.getByText('Allowed: 18 Sep 2026 or earlier.')).toBeVisible();
  await expect(page.getByRole('button', { name: 'Write down 2 hives' })).toBeDisabled();
  await date.fill('2026-09-18');
  await field('A3, rear').fill('7');
  await field('A3, bees').fill('7,3');
  await page.getByRole('button', { name: 'Write down 3 hives' }).click();
  // what cannot be stays, the rest is written
  const told = page.locator('.enter-write').getByRole('status');
  await expect(told).toContainText('2 hives written down, 2 records. 1 row waits');
  await expect(page.locator('.header-copied')).toContainText('2 not copied');
  await expect(field('A1, front')).toHaveValue('');
  await expect(field('A3, bees')).toHaveValue('7,3');
  await told.getByRole('button', { name: 'Undo' }).click();
  await expect(field('A1, front')).toHaveValue('71,5');
  await expect(field('A3, bees')).toHaveValue('7,3');
  await field('A3, rear').fill('');
  await field('A3, bees').fill('');
  await page.getByRole('button', { name: 'Write down 2 hives' }).click();
  await expect(told).toContainText('2 hives written down, 2 records.');
  await goTo(page, '/sheet');
  await expect(page.locator('.papers')).toContainText('71.5', { timeout: 45_000 });
  await goTo(page, '/sheet/enter');
  await expectNoAxe(page);
  await expectNoSideways(page);
});
