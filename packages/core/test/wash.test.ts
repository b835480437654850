import quantile from '@stdlib/stats-base-dists-beta-quantile';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { clopperPearson, jeffreys, miteGrowth, wash, wilson, wilsonCorrected } from '../src/mites/index.ts';

const counts = fc.integer({ min: 1, max: 1000 }).chain((n) => fc.tuple(fc.integer({ min: 0, max: n }), fc.constant(n)));
const certainty = fc.double({ min: 0.5, max: 0.999, noNaN: true });

/** Probability of at most k of n, added up term by term. */
function atMost(k: number, n: number, p: number): number {
  let [term, sum] = [(1 - p) ** n, 0];
  for (let i = 0; i <= k; i++) {
    sum += term;
    term *= ((n - i) / (i + 1)) * (p / (1 - p));
  }
  return sum;
}

describe('intervals', () => {
  test('exact and Jeffreys agree with a second library', () => {
    fc.assert(
      fc.property(counts, certainty, ([k, n], c) => {
        const tail = (1 - c) / 2;
        const exact = clopperPearson(k, n, c);
        const bayes = jeffreys(k, n, c);
        // within: 5e-8, where the iteration stops in the flattest tails; a wash is read to 1e-4
        if (k > 0) expect(Math.abs(exact.low - quantile(tail, k, n - k + 1))).toBeLessThan(5e-8);
        if (k < n) expect(Math.abs(exact.high - quantile(1 - tail, k + 1, n - k))).toBeLessThan(5e-8);
        expect(Math.abs(bayes.low - quantile(tail, k + 0.5, n - k + 0.5))).toBeLessThan(5e-8);
        expect(Math.abs(bayes.high - quantile(1 - tail, k + 0.5, n - k + 0.5))).toBeLessThan(5e-8);
      }),
      { numRuns: 300 },
    );
  });

  test('at its ends the exact interval leaves half the doubt in the binomial tails', () => {
    for (const [k, n] of [
      [1, 300],
      [3, 300],
      [9, 300],
      [30, 300],
      [4, 20],
    ] as const) {
      const { low, high } = clopperPearson(k, n, 0.95);
      expect(atMost(k, n, high)).toBeCloseTo(0.025, 8);
      expect(1 - atMost(k - 1, n, low)).toBeCloseTo(0.025, 8);
    }
  });

  test('every interval holds its own share, widens with certainty, and mirrors', () => {
    fc.assert(
      fc.property(counts, certainty, ([k, n], c) => {
        for (const method of [clopperPearson, wilson, wilsonCorrected]) {
          const { low, high } = method(k, n, c);
          expect(low).toBeLessThanOrEqual(k / n + 1e-12);
          expect(high).toBeGreaterThanOrEqual(k / n - 1e-12);
          expect(method(k, n, (1 + c) / 2).high).toBeGreaterThanOrEqual(high - 1e-12);
          expect(method(n - k, n, c).low).toBeCloseTo(1 - high, 7);
        }
      }),
      { numRuns: 300 },
    );
  });

  test('exact coverage is never below what is said, where Wilson’s is', () => {
    const covers = (method: typeof wilson, p: number, n: number) => {
      let sum = 0;
      for (let k = 0; k <= n; k++) {
        const { low, high } = method(k, n, 0.95);
        if (low <= p && p <= high) sum += atMost(k, n, p) - (k === 0 ? 0 : atMost(k - 1, n, p));
      }
      return sum;
    };
    const shares = Array.from({ length: 39 }, (_, i) => (i + 1) * 0.002);
    expect(Math.min(...shares.map((p) => covers(clopperPearson, p, 300)))).toBeGreaterThanOrEqual(0.95 - 1e-9);
    expect(Math.min(...shares.map((p) => covers(wilson, p, 300)))).toBeLessThan(0.95);
  });

  test('nothing found reaches down to nothing, everything found up to everything', () => {
    expect(clopperPearson(0, 300, 0.95).low).toBe(0);
    expect(clopperPearson(300, 300, 0.95).high).toBe(1);
    expect(wilson(32, 32, 0.95).high).toBe(1);
  });

  test.each([
    [-1, 10, 0.95],
    [11, 10, 0.95],
    [1.5, 10, 0.95],
    [0, 0, 0.95],
    [1, 10, 1],
    [1, 10, Number.NaN],
  ])('throws for %s of %s at %s', (k, n, c) => {
    for (const method of [clopperPearson, wilson, wilsonCorrected, jeffreys]) expect(() => method(k, n, c)).toThrow(RangeError);
  });
});

describe('wash', () => {
  test('a hundred bees at a true one in a hundred show no mite about one time in three', () => {
    // Source: Oliver 2020, 36 %; 0.99^100 = 0.366
    expect(atMost(0, 100, 0.01)).toBeCloseTo(0.366, 3);
  });

  test('nine in three hundred cannot tell two from five in a hundred', () => {
    const result = wash({ bees: 300, mites: 9 });
    expect(result.ok && result.value.lowFrac < 0.02 && result.value.highFrac > 0.05).toBe(true);
  });

  test('ahead: from the low end growing slowly to the high end growing fast', () => {
    const result = wash({ bees: 300, mites: 3, daysAhead: 60 });
    if (!result.ok || !result.value.aheadMitesPerBee) throw new Error('refused');
    const { low, mid, high } = result.value.aheadMitesPerBee;
    expect(mid).toBeCloseTo(0.04, 12);
    expect(low).toBeLessThan(mid);
    expect(high).toBeGreaterThan(mid);
    expect(() => miteGrowth(-1)).toThrow(RangeError);
  });

  test.each([
    [
      { bees: 300, mites: 301 },
      { kind: 'out-of-range', field: 'mites', high: 300 },
    ],
    [
      { bees: 0, mites: 0 },
      { kind: 'out-of-range', field: 'bees' },
    ],
    [
      { bees: 300, mites: -1 },
      { kind: 'out-of-range', field: 'mites' },
    ],
    [
      { bees: 300, mites: 2.5 },
      { kind: 'implausible', why: 'not-whole' },
    ],
    [
      { bees: Number.NaN, mites: 2 },
      { kind: 'not-a-number', field: 'bees' },
    ],
    [
      { bees: 300, mites: 3, certaintyFrac: 95 },
      { kind: 'out-of-range', field: 'certaintyFrac' },
    ],
    [
      { bees: 300, mites: 3, daysAhead: 400 },
      { kind: 'out-of-range', field: 'daysAhead' },
    ],
  ])('refuses %j and says why', (input, error) => expect(wash(input)).toMatchObject({ ok: false, error }));
});
