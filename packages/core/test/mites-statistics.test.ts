import betaQuantile from '@stdlib/stats-base-dists-beta-quantile';
import fc from 'fast-check';
import jstat from 'jstat';
import { describe, expect, test } from 'vitest';
import {
  betaGrid,
  binomialAtMost,
  boardCount,
  chanceAbove,
  levelAt,
  meanLevel,
  poolYard,
  tellApart,
  treatmentEffect,
  wash,
} from '../src/mites/index.ts';

const counts = fc.integer({ min: 20, max: 900 }).chain((n) => fc.tuple(fc.integer({ min: 0, max: Math.min(n, 120) }), fc.constant(n)));

describe('chances', () => {
  test('a belief on points agrees with a second library’s quantiles', () => {
    fc.assert(
      fc.property(counts, fc.double({ min: 0.03, max: 0.97, noNaN: true }), ([k, n], u) => {
        const grid = betaGrid({ a: k + 0.5, b: n - k + 0.5 });
        const exact = betaQuantile(u, k + 0.5, n - k + 0.5);
        // within: the points lie 0.04 % apart at 2 % and the belief runs straight between them
        expect(Math.abs(levelAt(grid, u) - exact)).toBeLessThan(2e-4 + 0.01 * exact);
        expect(Math.abs(chanceAbove(grid, levelAt(grid, u)) - (1 - u))).toBeLessThan(1e-9);
      }),
      { numRuns: 150 },
    );
  });

  test('the chance falls with the level and rises with the mites', () => {
    const chance = (mites: number, level: number) => {
      const answer = wash({ bees: 300, mites, thresholdFrac: level });
      return answer.ok ? answer.value.chanceAboveFrac! : Number.NaN;
    };
    for (const mites of [0, 3, 6, 12]) expect(chance(mites, 0.03)).toBeLessThan(chance(mites, 0.02));
    for (const level of [0.01, 0.02]) for (const mites of [0, 1, 5]) expect(chance(mites + 1, level)).toBeGreaterThan(chance(mites, level));
  });

  test('twelve bees: the interval is shown, the decision withheld', () => {
    const answer = wash({ bees: 12, mites: 1, thresholdFrac: 0.02 });
    expect(answer).toMatchObject({ ok: true, value: { decision: 'withheld', notes: ['few-bees'] } });
    expect(answer.ok && answer.value.highFrac > 0.3 && answer.value.lowFrac < 0.01).toBe(true);
  });

  test('a hundred and seven of three hundred is asked back with ten and seven', () => {
    expect(wash({ bees: 300, mites: 107 })).toMatchObject({ ok: true, value: { notes: ['higher-than-published'], insteadMites: [10, 7] } });
  });

  test('a sugar roll stands higher and wider than the same counts by alcohol', () => {
    const of = (method: 'alcohol' | 'sugar') => {
      const answer = wash({ bees: 300, mites: 6, method });
      if (!answer.ok) throw new Error('refused');
      return answer.value;
    };
    expect(of('sugar').rateFrac / of('alcohol').rateFrac).toBeCloseTo(1 / 0.93, 10);
    expect(of('sugar').highFrac).toBeGreaterThan(of('alcohol').highFrac);
    expect(of('sugar').lowFrac).toBeLessThanOrEqual(of('alcohol').lowFrac);
  });
});

describe('telling two levels apart', () => {
  test('the sample found keeps both chances, by a second library, and a smaller one does not', () => {
    const answer = tellApart({ lowFrac: 0.02, highFrac: 0.05 });
    if (!answer.ok) throw new Error('refused');
    const { bees, mitesFrom, chanceFrac, wrongFrac } = answer.value;
    // P(X >= k) = I_p(k, n - k + 1)
    const atLeast = (k: number, n: number, p: number) => jstat.beta.cdf(p, k, n - k + 1);
    expect(atLeast(mitesFrom, bees, 0.05)).toBeCloseTo(chanceFrac, 9);
    expect(atLeast(mitesFrom, bees, 0.02)).toBeCloseTo(wrongFrac, 9);
    expect(chanceFrac).toBeGreaterThanOrEqual(0.8);
    expect(wrongFrac).toBeLessThanOrEqual(0.05);
    for (let c = 1; c <= mitesFrom; c++)
      for (let n = c; n < bees; n++) {
        const holds = 1 - binomialAtMost(c - 1, n, 0.05) >= 0.8 && 1 - binomialAtMost(c - 1, n, 0.02) <= 0.05;
        if (holds) throw new Error(`${c} of ${n} would do`);
      }
  });

  test('levels closer together take more bees and more colonies', () => {
    const bees = (highFrac: number) => {
      const answer = tellApart({ lowFrac: 0.01, highFrac });
      return answer.ok ? [answer.value.bees, answer.value.colonies] : [];
    };
    const [far, near] = [bees(0.04), bees(0.02)];
    expect(near[0]!).toBeGreaterThan(far[0]!);
    expect(near[1]!).toBeGreaterThan(far[1]!);
    expect(tellApart({ lowFrac: 0.03, highFrac: 0.01 })).toMatchObject({ ok: false, error: { why: 'low-below-high' } });
    expect(tellApart({ lowFrac: 0.1, highFrac: 0.1001 })).toMatchObject({ ok: false, error: { why: 'levels-too-close' } });
  });

  test('the sum of terms agrees with the incomplete beta', () => {
    fc.assert(
      fc.property(counts, fc.double({ min: 0.001, max: 0.2, noNaN: true }), ([k, n], p) => {
        // within: where the second library's iteration stops
        if (k < n) expect(Math.abs(binomialAtMost(k, n, p) - (1 - jstat.beta.cdf(p, k + 1, n - k)))).toBeLessThan(1e-6);
      }),
      { numRuns: 150 },
    );
  });
});

describe('a yard pooled', () => {
  const yard = [
    { id: 'a', mites: 0, bees: 300 },
    { id: 'b', mites: 3, bees: 300 },
    { id: 'c', mites: 12, bees: 300 },
  ];

  test('colonies are drawn to each other and keep their order', () => {
    const pooled = poolYard(yard);
    const means = yard.map(({ id }) => meanLevel(pooled.washed.get(id)!));
    const alone = yard.map(({ mites }) => meanLevel(betaGrid({ a: mites + 0.5, b: 300.5 - mites })));
    expect(means[0]!).toBeGreaterThan(alone[0]!);
    expect(means[2]!).toBeLessThan(alone[2]!);
    expect(means[0]!).toBeLessThan(means[1]!);
    expect(means[1]!).toBeLessThan(means[2]!);
  });

  test('one not washed is known less well than one that was, and better with more colonies washed', () => {
    const width = (grid: ReturnType<typeof betaGrid>) => levelAt(grid, 0.95) - levelAt(grid, 0.05);
    const few = poolYard(yard.slice(1, 2));
    const many = poolYard(Array.from({ length: 12 }, (_, i) => ({ id: `${i}`, mites: 3, bees: 300 })));
    expect(width(few.notWashed)).toBeGreaterThan(width(few.washed.get('b')!));
    expect(width(many.notWashed)).toBeLessThan(width(few.notWashed));
    expect(width(many.mean)).toBeLessThan(width(few.mean));
  });

  test('alike beyond doubt it is one big sample, unlike beyond doubt each stands alone', () => {
    const at = (s: number) => poolYard(yard, { logConcentration: (x) => -0.5 * (Math.log(x / s) / 0.1) ** 2 });
    // within: the last point of the concentration is 5,000 bees, not infinitely many
    expect(meanLevel(at(5000).washed.get('a')!)).toBeCloseTo(15.5 / 901, 2);
    expect(Math.abs(meanLevel(at(1).washed.get('c')!) - 12.5 / 301)).toBeLessThan(0.002);
  });

  test('throws for no wash and for more mites than bees', () => {
    expect(() => poolYard([])).toThrow(RangeError);
    expect(() => poolYard([{ id: 'a', mites: 4, bees: 3 }])).toThrow(RangeError);
  });
});

describe('what a treatment did', () => {
  const of = (before: number, after: number) =>
    treatmentEffect({
      before: { mites: before, bees: 1200, date: '2026-08-01' },
      after: { mites: after, bees: 1200, date: '2026-08-28' },
      nature: 'organic',
    });

  test('passed, failed, not told, nothing to judge by', () => {
    expect(of(200, 5)).toMatchObject({ ok: true, value: { verdict: 'passed' } });
    expect(of(60, 30)).toMatchObject({ ok: true, value: { verdict: 'failed' } });
    expect(of(10, 1)).toMatchObject({ ok: true, value: { verdict: 'not-told' } });
    expect(of(0, 0)).toMatchObject({ ok: true, value: { verdict: 'nothing-before' } });
  });

  test('the interval holds the effect, and untreated colonies that grew raise it', () => {
    const alone = of(60, 10);
    const against = treatmentEffect({
      before: { mites: 60, bees: 1200, date: '2026-08-01' },
      after: { mites: 10, bees: 1200, date: '2026-08-28' },
      control: { before: { mites: 30, bees: 1200 }, after: { mites: 60, bees: 1200 } },
      nature: 'organic',
    });
    if (!alone.ok || !against.ok) throw new Error('refused');
    for (const { value } of [alone, against]) {
      expect(value.lowFrac).toBeLessThan(value.effectFrac);
      expect(value.highFrac).toBeGreaterThan(value.effectFrac);
    }
    expect(against.value.effectFrac).toBeCloseTo(1 - 10 / 120, 10);
    expect(against.value.effectFrac).toBeGreaterThan(alone.value.effectFrac);
  });

  test('dates out of order, more mites than bees, half a mite: said', () => {
    const before = { mites: 10, bees: 300, date: '2026-08-20' };
    const base = { before, nature: 'organic' as const };
    expect(treatmentEffect({ ...base, after: { mites: 1, bees: 300, date: '2026-08-01' } })).toMatchObject({
      ok: false,
      error: { kind: 'date-order' },
    });
    expect(treatmentEffect({ ...base, after: { mites: 400, bees: 300, date: '2026-09-01' } })).toMatchObject({
      ok: false,
      error: { field: 'after.mites' },
    });
    expect(treatmentEffect({ ...base, after: { mites: 1.5, bees: 300, date: '2026-09-01' } })).toMatchObject({
      ok: false,
      error: { why: 'not-whole' },
    });
    expect(treatmentEffect({ ...base, after: { mites: 1, bees: 300, date: '2026-02-30' } })).toMatchObject({
      ok: false,
      error: { kind: 'not-a-date' },
    });
  });
});

describe('a board', () => {
  test('without days it is said, and it is never a share of the bees', () => {
    const count = { date: '2026-07-20', mites: 60, brood: 'brood' } as unknown as Parameters<typeof boardCount>[0];
    expect(boardCount(count)).toMatchObject({ ok: false, error: { kind: 'missing', field: 'days' } });
    const answer = boardCount({ date: '2026-07-20', mites: 60, days: 5, brood: 'brood' });
    expect(answer).toMatchObject({ ok: true, value: { perDay: 12, verdict: 'treat', mitesInColony: 1800 } });
    expect(Object.keys(answer.ok ? answer.value : {}).some((name) => name.endsWith('Frac'))).toBe(false);
  });

  test('without brood in summer there is no rule and no factor', () => {
    expect(boardCount({ date: '2026-07-20', mites: 60, days: 5, brood: 'little' })).toMatchObject({
      ok: true,
      value: { verdict: 'no-rule', mitesInColony: null, rule: null },
    });
  });
});
