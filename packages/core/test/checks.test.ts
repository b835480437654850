import { readdirSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { allChecks, checksByTopic, passes } from '../checks/index.ts';

/** Fewer than this and something was lost on the way: the comparison must not become empty unnoticed. */
const FLOOR = 100;
const PLUMBING = ['check.ts', 'index.ts', 'coverage.ts', 'validation.ts', 'weather-classes.ts'];

describe.each(Object.entries(checksByTopic))('%s', (_topic, checks) => {
  test.each(checks.map((check) => [`${check.name} (${check.source}) [${check.mark}]`, check] as const))('%s', (_name, check) => {
    const ours = check.ours();
    const expected = typeof check.expected === 'number' ? check.expected : check.expected.join(' to ');
    expect(passes(check, ours), `ours ${ours} ${check.unit}, published ${expected} within ${check.within} (${check.why})`).toBe(true);
  });
});

test(`at least ${FLOOR} published figures are compared`, () => {
  expect(allChecks.length).toBeGreaterThanOrEqual(FLOOR);
});

test('every file of checks is among those that run', () => {
  const files = readdirSync(new URL('../checks/', import.meta.url)).filter((name) => name.endsWith('.ts') && !PLUMBING.includes(name));
  expect(Object.keys(checksByTopic).sort()).toEqual(files.map((name) => name.replace(/\.ts$/, '')).sort());
});

test('every check names its source, its unit, why its tolerance is what it is, and can fail', () => {
  for (const check of allChecks) {
    expect(check.name.trim(), 'name').not.toBe('');
    expect(check.source.trim(), check.name).not.toBe('');
    expect(check.unit.trim(), check.name).not.toBe('');
    expect(check.why.trim(), check.name).not.toBe('');
    expect(Number.isFinite(check.within) && check.within >= 0, check.name).toBe(true);
    expect(passes(check, Number.NaN), check.name).toBe(false);
    expect(passes(check, Number.POSITIVE_INFINITY), check.name).toBe(false);
  }
});

test('no two checks of a topic carry the same name', () => {
  for (const [topic, checks] of Object.entries(checksByTopic)) {
    expect(new Set(checks.map((check) => check.name)).size, topic).toBe(checks.length);
  }
});
