import type { Page } from '@playwright/test';
import { expect, expectNoAxe, expectNoSideways, goTo, openDemo, test } from './app.ts';
import { front, openRound, type, undo } from './round-app.ts';

/** A camera that shows a grey picture, and a reader of codes that reads in it what `seeTag` says. */
async function withCamera(page: Page): Promise<void> {
  await page.addInitScript(() => {
    const seen: { text: string | null; torch: boolean; tracks: MediaStreamTrack[] } = { text: null, torch: false, tracks: [] };
    class Reader {
      static getSupportedFormats = async () => ['qr_code'];
      detect = async () => (seen.text === null ? [] : [{ rawValue: seen.text }]);
    }
    Object.assign(window, { BarcodeDetector: Reader, seen });
    navigator.mediaDevices.getUserMedia = async () => {
      const canvas = document.createElement('canvas');
      canvas.getContext('2d')?.fillRect(0, 0, 8, 8);
      const stream = canvas.captureStream(10);
      const [track] = stream.getVideoTracks() as [MediaStreamTrack];
      seen.tracks.push(track);
      Object.assign(track, {
        getCapabilities: () => ({ torch: true }),
        applyConstraints: async (of: { advanced: { torch: boolean }[] }) => {
          seen.torch = of.advanced[0]?.torch === true;
        },
      });
      return stream;
    };
  });
}

const seeTag = (page: Page, text: string | null) =>
  page.evaluate((value) => {
    (window as unknown as { seen: { text: string | null } }).seen.text = value;
  }, text);
const openCameras = (page: Page) =>
  page.evaluate(
    () =>
      (window as unknown as { seen: { tracks: MediaStreamTrack[] } }).seen.tracks.filter(({ readyState }) => readyState === 'live').length,
  );
const scanKey = (page: Page) => page.getByRole('button', { name: 'Read a tag' });

test('a tag leads to its hive and the camera is closed at the first read', async ({ page, site }) => {
  await withCamera(page);
  await openDemo(page, site);
  await openRound(page);
  await scanKey(page).click();
  await expect(page.getByRole('heading', { name: 'Hold the tag in the picture' })).toBeVisible();
  await expectNoAxe(page);
  const light = page.getByRole('button', { name: 'Light' });
  expect((await light.boundingBox())?.height).toBeGreaterThanOrEqual(64);
  await light.click();
  await expect(light).toHaveAttribute('aria-pressed', 'true');
  await seeTag(page, 'YARD-MILL/HIVE-B7');
  await expect(page.getByRole('button', { name: /^B7 / })).toBeVisible();
  await expect.poll(() => openCameras(page)).toBe(0);
  await seeTag(page, null);
});

test('a tag of another yard is named and not followed; what is no tag of ours is said to be none', async ({ page, site }) => {
  await withCamera(page);
  await openDemo(page, site);
  await openRound(page);
  await scanKey(page).click();
  await seeTag(page, 'YARD-RIDGE/HIVE-C1');
  await expect(page.getByText('That tag is C1 of Ridge yard, not of this yard.')).toBeVisible();
  await seeTag(page, 'https://example.org');
  await page.getByRole('button', { name: 'Read another tag' }).click();
  await expect(page.getByText('That is no tag of a hive in this round.')).toBeVisible();
  await expect.poll(() => openCameras(page)).toBe(0);
  await page.getByRole('button', { name: 'Back to B4' }).click();
  await expect(page.getByRole('button', { name: /^B4 / })).toBeVisible();
});

test('the right tag after typing at the wrong hive takes the readings along', async ({ page, site }) => {
  await withCamera(page);
  await openDemo(page, site);
  await openRound(page);
  await type(page, '51.5');
  await scanKey(page).click();
  await seeTag(page, 'YARD-MILL/HIVE-B5');
  await expect(page.getByText('That tag is B5. front 51.5 lb was typed at B4.')).toBeVisible();
  await page.getByRole('button', { name: 'It was B5: move it there' }).click();
  await expect(page.getByRole('button', { name: /^B5 / })).toBeVisible();
  await expect(front(page)).toHaveAccessibleName(/51\.5$/);
  for (const _step of ['5', '.', '1', '5', 'the move']) await undo(page).click();
  await expect(page.getByRole('button', { name: /^B4 / })).toBeVisible();
});

test('a camera that is refused is told, with the other way; without a reader of codes there is no key', async ({ page, context, site }) => {
  await withCamera(page);
  await page.addInitScript(() => {
    navigator.mediaDevices.getUserMedia = async () => {
      throw new DOMException('Permission denied', 'NotAllowedError');
    };
  });
  await openDemo(page, site);
  await openRound(page);
  await scanKey(page).click();
  await expect(page.getByText('This browser does not let us use the camera.')).toBeVisible();
  await page.getByRole('button', { name: 'Back to B4' }).click();
  const plain = await context.newPage();
  await plain.addInitScript(() => Reflect.deleteProperty(window, 'BarcodeDetector'));
  await openDemo(plain, site);
  await openRound(plain);
  await expect(scanKey(plain)).toHaveCount(0);
});

test('every hive has a tag of at least 40 mm that prints without anything else', async ({ page, site }) => {
  await openDemo(page, site);
  await goTo(page, '/yard');
  await page.getByRole('link', { name: 'Print tags for the hives' }).click();
  await expect(page.getByRole('img', { name: /^Code of / })).toHaveCount(26);
  await expectNoSideways(page);
  await expectNoAxe(page);
  await page.getByRole('radio', { name: 'Ridge yard' }).click();
  await expect(page.getByRole('img', { name: /^Code of / })).toHaveCount(10);
  await page.emulateMedia({ media: 'print' });
  for (const part of ['.header', '.bar-below', '.tags-keys']) await expect(page.locator(part)).not.toBeVisible();
  const [width, modules] = await page
    .locator('.tag-code')
    .first()
    .evaluate((code) => [code.getBoundingClientRect().width, (code as SVGSVGElement).viewBox.baseVal.width]);
  // 96 px to the inch; the code is what is left of the picture without its white rim of four modules.
  expect(((width as number) * ((modules as number) - 8)) / (modules as number) / (96 / 25.4)).toBeGreaterThanOrEqual(40);
  // Version 2: 25 modules (ISO/IEC 18004).
  expect(modules).toBe(33);
});
