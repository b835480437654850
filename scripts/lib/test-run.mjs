import { spawnSync } from 'node:child_process';
import { join } from 'node:path';
import { install } from './install.mjs';
import { browserTests, lint, node, root, Tally, tests } from './steps.mjs';

/** CBC is the second opinion on the provision model. Where it is not there and cannot be had, the tests that ask it say so. */
function ensureCbc() {
  const there = () => spawnSync('cbc', ['-quit'], { stdio: 'ignore' }).error === undefined;
  if (there()) return;
  if (process.getuid?.() === 0 && spawnSync('apt-get', ['--version'], { stdio: 'ignore' }).status === 0) {
    console.log('installing coinor-cbc (the outside solver some tests compare with) ...');
    const apt = (...args) =>
      spawnSync('apt-get', ['-o', 'DPkg::Lock::Timeout=300', '-qq', ...args], { stdio: ['ignore', 'ignore', 'inherit'], timeout: 240_000 });
    apt('update');
    apt('install', '-y', '--no-install-recommends', 'coinor-cbc');
  }
  if (!there()) console.log('cbc is not on this machine and could not be installed: comparisons with it are left out');
}

/** The app: built, weighed and tried in a browser. Without a browser the tests have not passed. */
export async function testApp(tally, ...args) {
  const { ensureBrowser } = await import('../ensure-browser.mjs');
  const { buildWeb, webDist } = await import('../build-web.mjs');
  const { checkWeb } = await import('./web-size.mjs');
  const built = await buildWeb().then(
    () => true,
    (error) => {
      console.error(error.message);
      return false;
    },
  );
  tally.step('build of the app', () => built);
  if (!built) return;
  tally.step('size of the app, and what it keeps for use without a signal', () => {
    const { lines, faults } = checkWeb(webDist);
    for (const line of [...lines, ...faults]) console.log(line);
    return faults.length === 0;
  });
  tally.step('a browser for the tests', () => ensureBrowser() !== null);
  tally.step('tests in the browser', () => browserTests(...args));
}

export async function testAll() {
  install(root);
  const tally = new Tally();
  ensureCbc();
  const { projects, compiles } = await import('../types.mjs');
  const { buildCli } = await import('../build-cli.mjs');
  const { brokenArrows } = await import('../check-arrows.mjs');
  const built = await buildCli().then(
    () => true,
    (error) => {
      console.error(error);
      return false;
    },
  );
  tally.step('build of the command', () => built);
  tally.step('tables are those of data/', () => node(join(root, 'scripts/compile-tables.mjs'), '--check'));
  tally.step('lint and format', () => lint());
  tally.step('folder arrows', () => {
    const { broken, modules } = brokenArrows();
    for (const line of broken) console.error(line);
    return broken.length === 0 && modules > 0;
  });
  for (const project of projects) tally.step(`types of ${project}`, () => compiles(project));
  tally.step('the demo journal is what its maker writes', () => node(join(root, 'scripts/make-demo.mjs'), '--check'));
  tally.step('documents are those of data/ and the checks', () => node(join(root, 'scripts/make-docs.mjs'), '--check'));
  tally.step('mutants, quick', () => node(join(root, 'scripts/mutants.mjs'), '--quick'));
  tally.step('the validation is that of the code', () => node(join(root, 'scripts/validate.mjs'), '--check'));
  tally.step('worth, quick', () => node(join(root, 'worth/run.mjs'), '--quick'));
  tally.step('the report of worth is that of its last run', () => node(join(root, 'worth/report.mjs'), '--check'));
  tally.step('bench, quick', () => node(join(root, 'bench/run.mjs'), '--quick'));
  tally.step('tests', () => tests({}));
  await testApp(tally);
  tally.end();
}
