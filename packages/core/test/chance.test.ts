import jstat from 'jstat';
import { describe, expect, test } from 'vitest';
import { keyOf, normalAt, normalQuantile, uniformAt } from '../src/chance/index.ts';

/** jstat's own typing in this repository names only what the product uses. */
const inverseNormal = (p: number) =>
  (jstat as unknown as { normal: { inv(p: number, mean: number, sd: number): number } }).normal.inv(p, 0, 1);

describe('standard normal quantile', () => {
  test('z(0.975) is 1.9599639845 (NIST/SEMATECH e-Handbook 1.3.6.7.1, all printed digits of the common value)', () => {
    expect(Math.abs(normalQuantile(0.975) - 1.9599639845)).toBeLessThan(5e-11);
  });

  test('agrees with jstat where that is accurate', () => {
    let compared = 0;
    for (let k = 1; k < 1000; k++) {
      // jstat's inverse error function is good to about 1e-9 in the middle
      expect(Math.abs(normalQuantile(k / 1000) - inverseNormal(k / 1000))).toBeLessThan(1e-7);
      compared++;
    }
    expect(compared).toBe(999);
  });

  test('refuses 0, 1 and what is no number', () => {
    for (const p of [0, 1, -0.1, Number.NaN]) expect(() => normalQuantile(p)).toThrow(RangeError);
  });
});

describe('keyed random numbers', () => {
  const draws = 40_000;
  // sd of the mean of n draws is 1/sqrt(n): five of them is a chance of 6 in 10 million
  const five = 5 / Math.sqrt(draws);

  test.each([
    ['members of one stream', (i: number) => normalAt(keyOf(1, 'appetite', 'a'), i, 0)],
    ['days of one member', (i: number) => normalAt(keyOf(1, 'weather', 'a'), 7, i)],
    ['entities of one stream', (i: number) => normalAt(keyOf(1, 'bees', `colony-${i}`), 0, 0)],
    ['seeds', (i: number) => normalAt(keyOf(i, 'bees', 'a'), 0, 0)],
  ])('%s: mean 0, variance 1, no correlation from one to the next', (_, at) => {
    const z = Array.from({ length: draws }, (_, i) => at(i));
    const mean = z.reduce((s, x) => s + x, 0) / draws;
    const variance = z.reduce((s, x) => s + (x - mean) ** 2, 0) / draws;
    const lag = z.slice(1).reduce((s, x, i) => s + x * z[i]!, 0) / draws;
    expect(Math.abs(mean)).toBeLessThan(five);
    expect(Math.abs(variance - 1)).toBeLessThan(five * Math.SQRT2);
    expect(Math.abs(lag)).toBeLessThan(five);
  });

  test('uniform in 100 classes by chi-square (99 degrees of freedom: above 170 once in 100,000)', () => {
    const counts = new Float64Array(100);
    const key = keyOf(20260915, 'uniform', 'x');
    for (let i = 0; i < draws; i++) counts[Math.floor(uniformAt(key, i, i % 13) * 100)]!++;
    const chi2 = counts.reduce((s, c) => s + (c - draws / 100) ** 2 / (draws / 100), 0);
    expect(chi2).toBeLessThan(170);
    expect(chi2).toBeGreaterThan(50);
  });

  test('a draw depends on its key, member and index and on nothing that was drawn before', () => {
    const key = keyOf(5, 'bees', 'colony');
    const first = normalAt(key, 3, 2);
    for (let i = 0; i < 50; i++) normalAt(keyOf(5, 'bees', `other ${i}`), i, i);
    expect(normalAt(keyOf(5, 'bees', 'colony'), 3, 2)).toBe(first);
    expect(normalAt(key, 2, 3)).not.toBe(first);
    expect(normalAt(keyOf(6, 'bees', 'colony'), 3, 2)).not.toBe(first);
  });

  test('refuses a seed that is no whole number', () => {
    expect(() => keyOf(1.5, 'a', 'b')).toThrow(/seed is 1.5/);
  });
});
