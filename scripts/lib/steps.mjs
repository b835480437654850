// Steps that npm test and npm run check share; each prints what it does and counts what passed.
import { spawnSync } from 'node:child_process';
import { mkdirSync, readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

export const root = fileURLToPath(new URL('../..', import.meta.url));
const bin = (path) => join(root, 'node_modules', path);

/** Runs a Node program of ours or of a package; true where it ended well. */
export function node(file, ...args) {
  return spawnSync(process.execPath, [file, ...args], { cwd: root, stdio: 'inherit' }).status === 0;
}

export const lint = (...args) => node(bin('@biomejs/biome/bin/biome'), 'check', '--error-on-warnings', ...args, '.');

/**
 * Runs the tests and counts them from the report the runner writes.
 * A report that is missing, or a file that could not be loaded, counts as failed: silence is no pass.
 */
export function tests(env, ...args) {
  const report = join(root, '.cache/vitest.json');
  mkdirSync(join(root, '.cache'), { recursive: true });
  rmSync(report, { force: true });
  const run = spawnSync(
    process.execPath,
    [bin('vitest/vitest.mjs'), 'run', '--reporter=dot', '--reporter=json', `--outputFile.json=${report}`, ...args],
    {
      cwd: root,
      stdio: 'inherit',
      env: { ...process.env, NO_COLOR: '1', ...env },
    },
  );
  let counts;
  try {
    const said = JSON.parse(readFileSync(report, 'utf8'));
    counts = { passed: said.numPassedTests, failed: said.numFailedTests, skipped: said.numPendingTests + said.numTodoTests };
  } catch {
    console.error('the test runner left no report');
    return { passed: 0, failed: 1, skipped: 0 };
  }
  if (!Object.values(counts).every(Number.isInteger) || counts.passed + counts.failed === 0) return { passed: 0, failed: 1, skipped: 0 };
  return run.status !== 0 && counts.failed === 0 ? { ...counts, failed: 1 } : counts;
}

/**
 * Runs the browser tests and counts them from their report; the same rule: what left no report has failed.
 * A test that passed on a second try would be counted as failed, but none is tried twice.
 */
export function browserTests(...args) {
  const report = join(root, '.cache/e2e.json');
  rmSync(report, { force: true });
  const run = spawnSync(process.execPath, [bin('@playwright/test/cli.js'), 'test', ...args], { cwd: root, stdio: 'inherit' });
  try {
    const { expected, unexpected, flaky, skipped } = JSON.parse(readFileSync(report, 'utf8')).stats;
    const counts = { passed: expected, failed: unexpected + flaky, skipped };
    if (!Object.values(counts).every(Number.isInteger) || counts.passed + counts.failed === 0) return { passed: 0, failed: 1, skipped: 0 };
    return run.status !== 0 && counts.failed === 0 ? { ...counts, failed: 1 } : counts;
  } catch {
    console.error('the browser tests left no report');
    return { passed: 0, failed: 1, skipped: 0 };
  }
}

/** Adds steps up and prints the line that counts. */
export class Tally {
  counts = { passed: 0, failed: 0, skipped: 0 };
  failures = [];

  step(name, run) {
    const begun = Date.now();
    console.log(`\n== ${name}`);
    let result;
    try {
      result = run();
    } catch (error) {
      console.error(error);
      result = false;
    }
    const counts = typeof result === 'boolean' ? { passed: Number(result), failed: Number(!result), skipped: 0 } : result;
    for (const key of Object.keys(this.counts)) this.counts[key] += counts[key];
    if (counts.failed > 0) this.failures.push(name);
    console.log(`== ${name}: ${counts.failed > 0 ? 'FAILED' : 'passed'} (${((Date.now() - begun) / 1000).toFixed(1)} s)`);
  }

  /** The last line of all, and the exit code. */
  end() {
    if (this.failures.length > 0) console.log(`\nfailed: ${this.failures.join(', ')}`);
    const { passed, failed, skipped } = this.counts;
    console.log(`\n${passed} passed, ${failed} failed, ${skipped} skipped`);
    process.exitCode = failed > 0 ? 1 : 0;
  }
}
