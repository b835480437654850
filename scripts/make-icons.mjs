// Draws apps/web/public/icon.svg as the pictures phones ask for. They are committed, so that a build needs no browser.
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { launchBrowser } from './lib/browser.mjs';

const folder = fileURLToPath(new URL('../apps/web/public', import.meta.url));
const icon = readFileSync(join(folder, 'icon.svg'), 'utf8');
const [sky, snow] = [...icon.matchAll(/fill="(#[0-9A-F]{6})"/gi)].map((match) => match[1]);

/** Phones cut a maskable icon to a shape of their own and promise only the inner circle of 80 % across (W3C manifest, safe zone). */
const INSIDE = 0.74;
const GROUND = 73;
const level = 48 + (GROUND - 48) * INSIDE;
const inset = 48 * (1 - INSIDE);
const maskable = `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 96 96"><path d="M0 0h96v96H0z" fill="${sky}"/><path d="M0 ${level}h96V96H0z" fill="${snow}"/>
<g transform="translate(${inset} ${inset}) scale(${INSIDE})">${icon.replace(/<\/?svg[^>]*>|<title>.*?<\/title>|<rect[^>]*>/g, '')}</g></svg>`;

const PICTURES = [
  ['icon-192.png', 192, icon],
  ['icon-512.png', 512, icon],
  ['icon-maskable-512.png', 512, maskable],
  ['icon-180.png', 180, icon],
];

const browser = await launchBrowser();
for (const [name, size, svg] of PICTURES) {
  const page = await browser.newPage({ viewport: { width: size, height: size } });
  await page.setContent(`<style>body{margin:0}svg{display:block;width:${size}px;height:${size}px}</style>${svg}`);
  writeFileSync(join(folder, name), await page.screenshot());
  await page.close();
}
await browser.close();
