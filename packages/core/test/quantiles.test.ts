import fc from 'fast-check';
import { expect, test } from 'vitest';
import { quantileInPlace, quantileOfSorted, sorted } from '../src/winter/quantiles.ts';

test('a quantile found in place is that of the sorted draws, ties and infinities too', () => {
  const draw = fc.oneof(
    fc.double({ noNaN: true, min: -50, max: 50 }),
    fc.integer({ min: 0, max: 3 }),
    fc.constant(Number.POSITIVE_INFINITY),
  );
  fc.assert(
    fc.property(fc.array(draw, { minLength: 1, maxLength: 300 }), fc.double({ min: 0.001, max: 1, noNaN: true }), (draws, frac) => {
      expect(quantileInPlace(Float64Array.from(draws), frac)).toBe(quantileOfSorted(sorted(draws), frac));
    }),
    { numRuns: 500 },
  );
  expect(() => quantileInPlace(new Float64Array(0), 0.5)).toThrow(/draws/);
  expect(() => quantileInPlace(Float64Array.of(1), Number.NaN)).toThrow(/frac/);
});
