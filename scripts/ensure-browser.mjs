// Finds a Chromium for the browser tests, and gets one where there is none. `node scripts/ensure-browser.mjs` prints its path.
// CHROMIUM_PATH names one; SKIP_BROWSER_INSTALL=1 installs nothing.
import { spawnSync } from 'node:child_process';
import { accessSync, constants, readdirSync } from 'node:fs';
import { homedir } from 'node:os';
import { delimiter, join } from 'node:path';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('..', import.meta.url));
const ON_PATH = ['chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable', 'chrome'];
const ELSEWHERE = [
  '/usr/bin/chromium',
  '/snap/bin/chromium',
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
  'C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe',
];
/** Programs inside what the test runner downloads, by its folder names of several years. */
const DOWNLOADED = [
  'chrome-linux/headless_shell',
  'chrome-headless-shell-linux64/chrome-headless-shell',
  'chrome-linux/chrome',
  'chrome-linux64/chrome',
  'chrome-headless-shell-mac-arm64/chrome-headless-shell',
  'chrome-headless-shell-mac-x64/chrome-headless-shell',
  'chrome-headless-shell-win64/chrome-headless-shell.exe',
];

/** What a browser needs to know about the machine. `isProgram` and `list` are arguments so that a test can do without one. */
const THIS_MACHINE = {
  env: process.env,
  home: homedir(),
  isProgram(path) {
    try {
      accessSync(path, constants.X_OK);
      return true;
    } catch {
      return false;
    }
  },
  list(folder) {
    try {
      return readdirSync(folder);
    } catch {
      return [];
    }
  },
};

/** Path of a Chromium that stands, or null. A CHROMIUM_PATH that leads nowhere throws: whoever set it wants to know. */
export function findBrowser({ env, home, isProgram, list } = THIS_MACHINE) {
  if (env.CHROMIUM_PATH) {
    if (isProgram(env.CHROMIUM_PATH)) return env.CHROMIUM_PATH;
    throw new Error(`CHROMIUM_PATH is "${env.CHROMIUM_PATH}"; there is no program at that place`);
  }
  const stores = env.PLAYWRIGHT_BROWSERS_PATH
    ? [env.PLAYWRIGHT_BROWSERS_PATH]
    : [join(home, '.cache/ms-playwright'), join(home, 'Library/Caches/ms-playwright'), join(home, 'AppData/Local/ms-playwright')];
  const downloads = stores.flatMap((store) =>
    list(store)
      .filter((name) => name.startsWith('chromium'))
      .sort()
      .reverse()
      .flatMap((name) => DOWNLOADED.map((program) => join(store, name, program))),
  );
  const onPath = (env.PATH ?? '').split(delimiter).flatMap((folder) => ON_PATH.map((name) => join(folder, name)));
  return [...downloads, ...onPath, ...ELSEWHERE].find(isProgram) ?? null;
}

function installFromSystem() {
  if (process.getuid?.() !== 0 || spawnSync('apt-get', ['--version'], { stdio: 'ignore' }).status !== 0) return;
  console.error('installing chromium for the browser tests (apt-get) ...');
  const apt = (...args) =>
    spawnSync('apt-get', ['-o', 'DPkg::Lock::Timeout=300', '-qq', ...args], { stdio: ['ignore', 'ignore', 'inherit'], timeout: 400_000 });
  apt('update');
  apt('install', '-y', '--no-install-recommends', 'chromium', 'fonts-dejavu-core');
}

function installFromRunner() {
  console.error('downloading a headless Chromium for the browser tests ...');
  spawnSync(process.execPath, [join(root, 'node_modules/@playwright/test/cli.js'), 'install', 'chromium-headless-shell'], {
    cwd: root,
    stdio: ['ignore', 2, 2],
    timeout: 400_000,
  });
}

/** Path of a Chromium, got where there is none; null, with a sentence on what to do, where it cannot be had. */
export function ensureBrowser(machine = THIS_MACHINE, installers = [installFromSystem, installFromRunner]) {
  try {
    let path = findBrowser(machine);
    if (machine.env.SKIP_BROWSER_INSTALL !== '1') {
      for (const install of installers) {
        if (path !== null) break;
        install();
        path = findBrowser(machine);
      }
    }
    if (path === null)
      console.error(
        'No Chromium was found for the browser tests. Install Chromium or Chrome, or set CHROMIUM_PATH to the program, and run this again.',
      );
    return path;
  } catch (error) {
    console.error(error.message);
    return null;
  }
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const path = ensureBrowser();
  if (path !== null) console.log(path);
  process.exitCode = path === null ? 1 : 0;
}
