import { expect, test, vi } from 'vitest';
import { ensureBrowser, findBrowser } from '../ensure-browser.mjs';

/** A machine on which only these programs stand. */
const machine = (programs, env = {}) => ({
  env,
  home: '/home/ines',
  isProgram: (path) => programs.includes(path),
  list: (folder) => programs.filter((path) => path.startsWith(`${folder}/`)).map((path) => path.slice(folder.length + 1).split('/')[0]),
});

const SHELL = '/home/ines/.cache/ms-playwright/chromium_headless_shell-1228/chrome-linux/headless_shell';

test.each([
  ['the one that is named', ['/opt/c', SHELL], { CHROMIUM_PATH: '/opt/c' }, '/opt/c'],
  ['a download of the test runner before that of the system', [SHELL, '/usr/bin/chromium'], { PATH: '/usr/bin' }, SHELL],
  ['one of the system', ['/usr/bin/google-chrome'], { PATH: '/bin:/usr/bin' }, '/usr/bin/google-chrome'],
  ['one that is not on the path', ['/snap/bin/chromium'], { PATH: '/bin' }, '/snap/bin/chromium'],
  ['none', [], { PATH: '/bin' }, null],
])('%s', (_rule, programs, env, found) => {
  expect(findBrowser(machine(programs, env))).toBe(found);
});

test('nothing is installed where one stands', () => {
  const install = vi.fn();
  expect(ensureBrowser(machine([SHELL]), [install])).toBe(SHELL);
  expect(install).not.toHaveBeenCalled();
});

test('where there is none, the second way is gone when the first did not help', () => {
  const programs = [];
  const first = vi.fn();
  const second = vi.fn(() => programs.push(SHELL));
  expect(ensureBrowser(machine(programs), [first, second])).toBe(SHELL);
  expect(first).toHaveBeenCalledOnce();
});

test.each([
  ['none and none to be had', {}, /^No Chromium was found .*CHROMIUM_PATH/],
  ['a path that leads nowhere', { CHROMIUM_PATH: '/nowhere' }, /^CHROMIUM_PATH is "\/nowhere"; there is no program/],
])('%s: a sentence, and nothing thrown', (_rule, env, says) => {
  const error = vi.spyOn(console, 'error').mockImplementation(() => undefined);
  expect(ensureBrowser(machine([], env), [() => undefined])).toBe(null);
  expect(error.mock.lastCall?.[0]).toMatch(says);
  error.mockRestore();
});

test('SKIP_BROWSER_INSTALL=1 installs nothing', () => {
  const install = vi.fn();
  const error = vi.spyOn(console, 'error').mockImplementation(() => undefined);
  expect(ensureBrowser(machine([], { SKIP_BROWSER_INSTALL: '1' }), [install])).toBe(null);
  expect(install).not.toHaveBeenCalled();
  error.mockRestore();
});
