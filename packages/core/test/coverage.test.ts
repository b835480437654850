import { describe, expect, test } from 'vitest';
import { coverageCases, coverageOfModel } from '../checks/coverage.ts';

/** Checks the code only: truth and forecast come from the same model, under other seeds. */
describe('truths drawn from the model lie in the 90 % band 87 to 93 times in a hundred', () => {
  const TRUTHS = 2000;
  test.each(coverageCases.filter((_, i) => i % 2 === 0))('$bees bees at $place', (one) => {
    const { inBandFrac, heldFrac } = coverageOfModel(one, { members: 1000, truths: TRUTHS });
    expect(inBandFrac).toBeGreaterThanOrEqual(0.87);
    expect(inBandFrac).toBeLessThanOrEqual(0.93);
    // 19 in 20; 2,000 truths and a quantile of 1,000 cases: one sd is 0.008, three of them
    expect(Math.abs(heldFrac - 0.95)).toBeLessThan(0.025);
  });
});
