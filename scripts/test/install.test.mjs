import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { isInstalled } from '../lib/install.mjs';

let root;
beforeEach(() => {
  root = mkdtempSync(join(tmpdir(), 'install-'));
});
afterEach(() => rmSync(root, { recursive: true }));

const lock = (packages) =>
  writeFileSync(join(root, 'package-lock.json'), JSON.stringify({ packages: { '': { name: 'root' }, ...packages } }));
const installed = (packages) => {
  mkdirSync(join(root, 'node_modules'), { recursive: true });
  for (const path of Object.keys(packages)) mkdirSync(join(root, path), { recursive: true });
  writeFileSync(join(root, 'node_modules/.package-lock.json'), JSON.stringify({ packages }));
};

test('nothing installed', () => {
  lock({ 'node_modules/a': { version: '1.0.0' } });
  expect(isInstalled(root)).toBe(false);
});

test('all of it installed; builds for other machines are not missed', () => {
  lock({ 'node_modules/a': { version: '1.0.0' }, 'node_modules/a-windows': { version: '1.0.0', optional: true } });
  installed({ 'node_modules/a': { version: '1.0.0' } });
  expect(isInstalled(root)).toBe(true);
});

test('an older version, or a folder deleted by hand', () => {
  lock({ 'node_modules/a': { version: '1.1.0' } });
  installed({ 'node_modules/a': { version: '1.0.0' } });
  expect(isInstalled(root)).toBe(false);
  installed({ 'node_modules/a': { version: '1.1.0' } });
  expect(isInstalled(root)).toBe(true);
  rmSync(join(root, 'node_modules/a'), { recursive: true });
  expect(isInstalled(root)).toBe(false);
});
