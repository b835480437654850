import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { keyOf, normalAt } from '../src/chance/index.ts';
import { type Evidence, learnAppetite, learnFactor } from '../src/learn/index.ts';
import { solveWithPrior } from '../src/learn/solve.ts';

const PRIOR = { median: 1, logSd: 0.12 };
const seen = (colony: string, winter: number, logFactor: number, logSd = 0.1): Evidence => ({ colony, winter, logFactor, logSd });

describe('least squares with a prior', () => {
  it('is the textbook normal posterior for one unknown: precisions add, means by precision', () => {
    // Gelman et al., Bayesian Data Analysis, 2.5: prior N(0, 0.5), data 1.0 with sd 0.25 and 0.4 with sd 0.5
    const { mean, sd } = solveWithPrior(
      [0.5],
      [
        { of: [0], seen: 1, sd: 0.25 },
        { of: [0], seen: 0.4, sd: 0.5 },
      ],
    );
    // precisions 4, 16, 4: mean (16 + 1.6) / 24, sd 24^-1/2
    expect(mean[0]).toBeCloseTo(17.6 / 24, 12);
    expect(sd[0]).toBeCloseTo(1 / Math.sqrt(24), 12);
  });

  it('shares a sum between two unknowns by their variances', () => {
    // x + y seen as 3 without error, prior sd 1 and 2: x gets 1/5 of it, y 4/5
    const { mean } = solveWithPrior([1, 2], [{ of: [0, 1], seen: 3, sd: 1e-6 }]);
    expect(mean[0]).toBeCloseTo(0.6, 6);
    expect(mean[1]).toBeCloseTo(2.4, 6);
  });
});

describe('appetite learnt', () => {
  it('without data changes nothing', () => {
    const { level, nextWinter, colonies, winters } = learnAppetite(PRIOR, []);
    expect([level.after, nextWinter, colonies, winters]).toEqual([PRIOR, PRIOR, [], []]);
  });

  it('one odd winter cannot swing it; three winters of the same can', () => {
    const winterOf = (winter: number) => Array.from({ length: 12 }, (_, i) => seen(`c${i}`, winter, Math.log(1.5)));
    const once = learnAppetite(PRIOR, winterOf(2026)).nextWinter.median;
    const thrice = learnAppetite(PRIOR, [2024, 2025, 2026].flatMap(winterOf)).nextWinter.median;
    // all 12 colonies say 1.5: the level may take sd^2 / (sd^2 + year^2 + ...) of it, 0.0144 / 0.0276 at most
    expect(once).toBeLessThan(1.5 ** (0.0144 / (0.0144 + 0.01)));
    expect(thrice).toBeGreaterThan(once);
    expect(thrice).toBeLessThan(1.5);
  });

  it('a colony that eats much every winter keeps it to itself', () => {
    const calm = [2024, 2025, 2026].flatMap((winter) => Array.from({ length: 10 }, (_, i) => seen(`c${i}`, winter, 0)));
    const { level, colonies } = learnAppetite(PRIOR, [...calm, ...[2024, 2025, 2026].map((winter) => seen('big', winter, 0.4))]);
    expect(colonies.find(({ colony }) => colony === 'big')!.after.median).toBeGreaterThan(1.2);
    expect(level.after.median).toBeLessThan(1.04);
  });

  it('finds a level of 1.2 in made-up winters within two of its own sd, and is never surer than the winters let it be', () => {
    const key = keyOf(11, 'winters', 'learn');
    const evidence = Array.from({ length: 8 }, (_, w) =>
      Array.from({ length: 12 }, (_, i) =>
        seen(
          `c${i}`,
          2018 + w,
          Math.log(1.2) + 0.1 * normalAt(key, w, 0) + 0.16 * normalAt(key, 100 + i, 0) + 0.1 * normalAt(key, w, 1 + i),
        ),
      ),
    ).flat();
    const { level, nextWinter } = learnAppetite({ median: 1, logSd: 0.5 }, evidence);
    expect(Math.abs(Math.log(level.after.median) - Math.log(1.2))).toBeLessThan(2 * level.after.logSd);
    expect(nextWinter.logSd).toBeGreaterThan(0.1);
  });

  it('does not depend on the order in which winters came in', () => {
    const evidence = [seen('a', 2025, 0.1), seen('b', 2025, -0.2), seen('a', 2026, 0.3)];
    fc.assert(
      fc.property(fc.shuffledSubarray(evidence, { minLength: 3 }), (shuffled) => {
        expect(learnAppetite(PRIOR, shuffled).level.after.median).toBeCloseTo(learnAppetite(PRIOR, evidence).level.after.median, 12);
      }),
    );
  });
});

describe('a single factor', () => {
  it('adds precisions on the scale of logarithms; without data nothing changes', () => {
    const before = { median: 1.1, logSd: 0.2 };
    const after = learnFactor(before, [{ ratio: 1.4, logSd: 0.1 }]);
    // precisions 25 and 100: the logarithm moves by 100 / 125 of the way
    expect(Math.log(after.median)).toBeCloseTo(Math.log(1.1) + 0.8 * Math.log(1.4 / 1.1), 12);
    expect(after.logSd).toBeCloseTo(1 / Math.sqrt(125), 12);
    expect(learnFactor(before, [])).toBe(before);
  });
});
