/// <reference path="./jstat.d.ts" />
import jstat from 'jstat';
import { normalQuantile } from '../chance/index.ts';

export interface Interval {
  readonly low: number;
  readonly high: number;
}

/**
 * Exact interval for a proportion from k of n: never covers the truth less often than it says.
 *
 * k, n        whole, 0 <= k <= n, n at least 1
 * certainty   two-sided, between 0 and 1
 * returns     [0, high] for k = 0 and [low, 1] for k = n, the other side still at half the doubt
 * equation    low = beta quantile((1-c)/2; k, n-k+1), high = beta quantile((1+c)/2; k+1, n-k)
 * throws      RangeError outside that
 * source      [clopper-pearson-1934]; valid where every bee is an independent draw: mites crowd, so the truth is wider
 * checked     checks/wash.ts; wash.test.ts against a second library
 */
export function clopperPearson(k: number, n: number, certainty: number): Interval {
  requireCounts('clopperPearson', k, n, certainty);
  const tail = (1 - certainty) / 2;
  return {
    low: k === 0 ? 0 : jstat.beta.inv(tail, k, n - k + 1),
    high: k === n ? 1 : jstat.beta.inv(1 - tail, k + 1, n - k),
  };
}

/**
 * Score interval: about right on average, too short for some true values. Shown beside the exact one, not instead.
 *
 * equation    (k + z^2/2 +- z sqrt(k(n-k)/n + z^2/4)) / (n + z^2); cut to 0 and 1, which rounding can pass by 1e-16
 * source      Wilson 1927, as in [newcombe-1998]
 */
export function wilson(k: number, n: number, certainty: number): Interval {
  requireCounts('wilson', k, n, certainty);
  const z = normalQuantile((1 + certainty) / 2);
  const middle = k + z ** 2 / 2;
  const half = z * Math.sqrt((k * (n - k)) / n + z ** 2 / 4);
  return { low: Math.max(0, (middle - half) / (n + z ** 2)), high: Math.min(1, (middle + half) / (n + z ** 2)) };
}

/**
 * Score interval with continuity correction: wider than the plain one, for counts come whole.
 *
 * equation    low = (2k + z^2 - 1 - z sqrt(z^2 - 2 - 1/n + 4k(n-k+1)/n)) / (2(n + z^2)), high the same of n - k taken from 1;
 *             0 for k = 0, 1 for k = n
 * source      [newcombe-1998], his method 4
 */
export function wilsonCorrected(k: number, n: number, certainty: number): Interval {
  requireCounts('wilsonCorrected', k, n, certainty);
  const z = normalQuantile((1 + certainty) / 2);
  const lowOf = (k: number) =>
    k === 0 ? 0 : Math.max(0, (2 * k + z ** 2 - 1 - z * Math.sqrt(z ** 2 - 2 - 1 / n + (4 * k * (n - k + 1)) / n)) / (2 * (n + z ** 2)));
  return { low: lowOf(k), high: 1 - lowOf(n - k) };
}

/**
 * Equal-tailed interval of the posterior under Jeffreys' prior, beta(k + 1/2, n - k + 1/2), with no correction at k = 0 and k = n.
 *
 * source      Brown, Cai and DasGupta 2001, Statistical Science 16:101 (from memory)
 */
export function jeffreys(k: number, n: number, certainty: number): Interval {
  requireCounts('jeffreys', k, n, certainty);
  const tail = (1 - certainty) / 2;
  return { low: jstat.beta.inv(tail, k + 0.5, n - k + 0.5), high: jstat.beta.inv(1 - tail, k + 0.5, n - k + 0.5) };
}

function requireCounts(name: string, k: number, n: number, certainty: number): void {
  if (!(Number.isInteger(n) && n >= 1)) throw new RangeError(`${name}: n is ${n}, must be a whole number from 1`);
  if (!(Number.isInteger(k) && k >= 0 && k <= n)) throw new RangeError(`${name}: k is ${k}, must be a whole number from 0 to n = ${n}`);
  if (!(certainty > 0 && certainty < 1)) throw new RangeError(`${name}: certainty is ${certainty}, must lie between 0 and 1`);
}
