import { axeFindings, expect, expectNoSideways, goTo, type ModesSet, openDemo, screens, setModes, settle, test } from './app.ts';

// Axe finds nothing on any screen in any mode, and nothing has to be scrolled sideways.

const MODES: readonly (readonly [string, ModesSet])[] = [
  ['light', { theme: 'light' }],
  ['dark', { theme: 'dark' }],
  ['sun', { theme: 'sun' }],
  ['mitten keys, left hand', { keys: 'mitten', hand: 'left' }],
  ['text at 200 %', { text: 200 }],
];
const DESK = { width: 1280, height: 800 };

for (const [name, modes] of MODES) {
  test(`axe finds nothing on any screen: ${name}`, async ({ page, site }) => {
    test.setTimeout(180_000);
    await openDemo(page, site);
    await setModes(page, modes);
    const found: string[] = [];
    for (const screen of screens()) {
      await goTo(page, screen.path);
      await settle(page);
      found.push(...(await axeFindings(page)).map((line) => `${screen.name}: ${line}`));
      await expectNoSideways(page, screen.name);
    }
    expect(found).toEqual([]);
  });
}

test('axe finds nothing on any screen at a desk, dark as the system is', async ({ page, site }) => {
  test.setTimeout(180_000);
  await page.setViewportSize(DESK);
  await page.emulateMedia({ colorScheme: 'dark', reducedMotion: 'reduce' });
  await openDemo(page, site);
  const found: string[] = [];
  for (const screen of screens()) {
    await goTo(page, screen.path);
    await settle(page);
    found.push(...(await axeFindings(page)).map((line) => `${screen.name}: ${line}`));
    await expectNoSideways(page, screen.name);
  }
  expect(found).toEqual([]);
});

test('the colours follow the system unless one was chosen', async ({ page, site }) => {
  const ink = () => page.evaluate(() => getComputedStyle(document.body).color);
  await page.emulateMedia({ colorScheme: 'light' });
  await openDemo(page, site);
  const light = await ink();
  await page.emulateMedia({ colorScheme: 'dark' });
  const dark = await ink();
  expect(dark).not.toBe(light);
  await setModes(page, { theme: 'light' });
  expect(await ink()).toBe(light);
});

test('a keyboard reaches the content past the header, and the focus can be seen', async ({ page, site }) => {
  await page.setViewportSize(DESK);
  await openDemo(page, site, '/keep');
  await page.keyboard.press('Tab');
  const skip = page.getByRole('button', { name: 'To the content' });
  await expect(skip).toBeFocused();
  await expect(skip).toBeInViewport();
  await page.keyboard.press('Enter');
  await page.keyboard.press('Tab');
  const outline = await page.evaluate(() => {
    const focused = document.activeElement as HTMLElement;
    const style = getComputedStyle(focused);
    return {
      inside: document.getElementById('content')?.contains(focused) ?? false,
      drawn: style.outlineStyle !== 'none' || style.boxShadow !== 'none',
    };
  });
  expect(outline).toEqual({ inside: true, drawn: true });
});
