import fc from 'fast-check';
import { expect, test } from 'vitest';
import { keyOf, normalAt } from '../src/chance/index.ts';
import { bendOfSkew, bentCorrelation, bentRaw, bentShape } from '../src/weather/skew.ts';

const skews = fc.double({ min: -0.85, max: 0.85, noNaN: true });
const bent = (skew: number) => {
  const { bend, centre, perUnit } = bentShape(bendOfSkew(skew));
  return (z: number) => (bend === 0 ? z : (bentRaw(z, bend) - centre) * perUnit);
};

test('the bent deviate rises with the straight one, whatever the skewness, and a positive skew is the mirror of a negative', () => {
  fc.assert(
    fc.property(skews, fc.double({ min: -6, max: 6, noNaN: true }), (skew, z) => {
      const g = bent(skew);
      expect(g(z + 0.01)).toBeGreaterThanOrEqual(g(z));
      expect(bent(-skew)(-z)).toBeCloseTo(-g(z), 6);
    }),
  );
});

test('drawn numbers have mean 0, sd 1 and the skewness asked for; the cold tail is hardly longer than the normal one', () => {
  const key = keyOf(1, 'skew', 'test');
  const n = 40_000;
  for (const skew of [-0.8, -0.5, 0, 0.6]) {
    const g = bent(skew);
    const y = Array.from({ length: n }, (_, i) => g(normalAt(key, i, 0)));
    const mean = y.reduce((sum, v) => sum + v, 0) / n;
    const sd = Math.sqrt(y.reduce((sum, v) => sum + (v - mean) ** 2, 0) / n);
    // within four sampling errors of 40,000 draws: 0.02, 0.014 and about 0.06
    expect(Math.abs(mean)).toBeLessThan(0.02);
    expect(Math.abs(sd - 1)).toBeLessThan(0.014);
    expect(Math.abs(y.reduce((sum, v) => sum + ((v - mean) / sd) ** 3, 0) / n - skew)).toBeLessThan(0.06);
  }
  // three sd of the straight deviate: a log-normal of skewness -0.6 would be at -3.9
  expect(bent(-0.6)(-3)).toBeGreaterThan(-3.35);
});

test('the correlation of bent deviates is that of drawn ones, 1 with itself and 0 of independent ones', () => {
  const [a, b] = [bentShape(bendOfSkew(-0.7)), bentShape(bendOfSkew(0.4))];
  expect(bentCorrelation(0, a, b)).toBe(0);
  expect(bentCorrelation(1, a, a)).toBeCloseTo(1, 9);
  const [ga, gb] = [bent(-0.7), bent(0.4)];
  const key = keyOf(2, 'skew', 'pairs');
  const n = 40_000;
  let sum = 0;
  for (let i = 0; i < n; i++) {
    const z = normalAt(key, i, 0);
    sum += ga(z) * gb(0.6 * z + 0.8 * normalAt(key, i, 1));
  }
  // sampling error of a correlation near 0.6 over 40,000 pairs: 0.004, four of them
  expect(Math.abs(sum / n - bentCorrelation(0.6, a, b))).toBeLessThan(0.016);
});
