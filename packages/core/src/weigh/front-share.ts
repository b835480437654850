import { weighParameters } from '../tables/parameters-weigh.gen.ts';

export interface FrontShare {
  readonly frontShareFrac: number;
  /** Standard deviation for the next hive, what the keeper's hives differ by included. */
  readonly sdFrac: number;
  /** How many hives of the keeper's own it rests on. */
  readonly hives: number;
}

/**
 * The share of the weight that front edges of this keeper's hives bear, learnt where both edges were read.
 *
 * Use it for hives read at one edge only. With no such hives it is the default; every one pulls it toward the keeper's own.
 *
 * weighed     front share and total [kg] of each hive read at both edges
 * equation    regression of front load on total through the origin (b = sum s W^2 / sum W^2), then
 *             shrunk: mean = (m0/v0 + n b/t^2) / (1/v0 + n/t^2), variance for the next hive = 1/(1/v0 + n/t^2) + t^2,
 *             t^2 = spread between hives, its default counting for some hives
 * source      [own-judgement-weigh] for the default's spreads, [half-rule] for its middle
 * checked     weigh.test.ts: recovers a known share, shrinks, gets narrower
 */
export function learnFrontShare(weighed: readonly { readonly frontShareFrac: number; readonly totalKg: number }[]): FrontShare {
  const p = weighParameters;
  const defaultVar = p.frontShareKeeperSdFrac.value ** 2;
  const squares = weighed.reduce((sum, hive) => sum + hive.totalKg ** 2, 0);
  const slope = weighed.length === 0 ? 0 : weighed.reduce((sum, hive) => sum + hive.frontShareFrac * hive.totalKg ** 2, 0) / squares;
  const spread = weighed.reduce((sum, hive) => sum + (hive.frontShareFrac - slope) ** 2, 0);
  const hiveVar = pooledVariance(p.frontShareHiveSdFrac.value ** 2, spread, weighed.length);
  return { ...shrunk({ mean: p.frontShareFrac.value, variance: defaultVar }, slope, hiveVar, weighed.length), hives: weighed.length };
}

/** Variance between hives: the default's, counting for `spreadPriorDegrees` hives, pooled with the squares about the keeper's own mean. */
export function pooledVariance(defaultVariance: number, squaresAboutMean: number, hives: number): number {
  const degrees = weighParameters.spreadPriorDegrees.value;
  return (degrees * defaultVariance + squaresAboutMean) / (degrees + Math.max(0, hives - 1));
}

function shrunk(prior: { mean: number; variance: number }, ownMean: number, hiveVariance: number, hives: number) {
  const precision = 1 / prior.variance + hives / hiveVariance;
  const mean = (prior.mean / prior.variance + (hives * ownMean) / hiveVariance) / precision;
  return { frontShareFrac: mean, sdFrac: Math.sqrt(1 / precision + hiveVariance) };
}
