// What the built app weighs, and whether everything it may need without a signal is in the list of the service worker.
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';

/** The first script of the page with everything it imports at once, in kB (1,000 bytes) after gzip. */
const ENTRY_KB = 160;

const kB = (bytes) => `${(bytes / 1000).toFixed(1)} kB`;

/** Lines to print, and what is wrong. */
export function checkWeb(dist) {
  const html = readFileSync(join(dist, 'index.html'), 'utf8');
  const sizes = (name) => {
    const bytes = readFileSync(join(dist, name));
    return { raw: bytes.length, gzip: gzipSync(bytes, { level: 9 }).length };
  };
  const first = [...html.matchAll(/(?:src|href)="\.?\/?([^"]+\.js)"/g)].map((match) => match[1]);
  const entry = first.reduce((sum, name) => sum + sizes(name).gzip, 0);
  const assets = readdirSync(join(dist, 'assets')).map((name) => `assets/${name}`);
  const solver = assets.filter((name) => name.endsWith('.wasm'));
  const sw = readFileSync(join(dist, 'sw.js'), 'utf8');
  // .woff stands behind .woff2 for browsers too old to run the app at all.
  const missing = assets.filter((name) => !sw.includes(name) && !name.endsWith('.woff'));
  const total = assets.reduce((sum, name) => sum + sizes(name).raw, 0);
  const lines = [
    `entry script ${kB(entry)} gzip in ${first.length} files (at most ${ENTRY_KB} kB)`,
    ...solver.map((name) => `${name.replace(/-[\w-]{8}\./, '.')} ${kB(sizes(name).raw)}, ${kB(sizes(name).gzip)} gzip, loaded apart`),
    `${assets.length} files, ${kB(total)}, kept for use without a signal`,
  ];
  const faults = [];
  if (first.length === 0) faults.push('index.html loads no script');
  if (entry > ENTRY_KB * 1000) faults.push(`the entry script is ${kB(entry)} gzip; allowed are ${ENTRY_KB} kB`);
  if (solver.length === 0) faults.push('the solver (a .wasm file) is not in the build');
  if (missing.length > 0) faults.push(`the service worker does not keep ${missing.join(', ')}`);
  if (/<script(?![^>]*\bsrc=)[^>]*>|\son\w+=|\sstyle=|<style/i.test(html))
    faults.push('index.html has script or style inside, which its policy refuses');
  return { lines, faults };
}
