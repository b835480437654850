/** How a day's heat above a base is read from its extremes. */
export type HeatMethod = 'average' | 'reset' | 'four-case' | 'single-sine';

/**
 * Degree days of one day above a base temperature.
 *
 * Published sums hold only with the method they were counted by; the bloom sums used here are counted by `average`.
 *
 * maxC, minC  extremes of the day [degC], max not below min
 * returns     [degC d], 0 or more
 * equation    average: max(0, (max + min)/2 - base); reset: extremes below the base are raised to it first;
 *             four-case: (max - base)/2 - (base - min)/4 with the base between min and mean, (max - base)/4 with it between mean and max;
 *             single sine: ((M - base)(pi/2 - th) + a cos th)/pi, th = asin((base - M)/a), M mean and a half the range
 * throws      RangeError where max is below min, NaN included
 * source      [MCMASTER-1997], [MET-FOUR-CASE], [BASKERVILLE-1969]
 * checked     checks/phenology.ts: seven worked days by all four
 */
export function degreeDays(maxC: number, minC: number, baseC: number, method: HeatMethod = 'average'): number {
  if (!(maxC >= minC)) throw new RangeError(`degreeDays: maxC is ${maxC} degC, must not be below minC, ${minC} degC`);
  const mean = (maxC + minC) / 2;
  if (method === 'average' || minC >= baseC) return Math.max(0, mean - baseC);
  if (maxC <= baseC) return 0;
  switch (method) {
    case 'reset':
      return (maxC - baseC) / 2;
    case 'four-case':
      return mean > baseC ? (maxC - baseC) / 2 - (baseC - minC) / 4 : (maxC - baseC) / 4;
    case 'single-sine': {
      const a = (maxC - minC) / 2;
      const theta = Math.asin((baseC - mean) / a);
      return ((mean - baseC) * (Math.PI / 2 - theta) + a * Math.cos(theta)) / Math.PI;
    }
  }
}
