import { mitesParameters } from '../tables/parameters-mites.gen.ts';

export interface GrowthRange {
  readonly slow: number;
  readonly mid: number;
  readonly fast: number;
}

/**
 * By how much mites per bee multiply while there is brood and nothing is done.
 *
 * days        ahead, 0 to 200 [days]
 * returns     factors for the slow, middle and fast published doubling times; no single rate is right, and bees drifting in from
 *             collapsing colonies come on top in autumn
 * equation    2^(days / doubling days)
 * valid       brood in the colony, number of bees constant
 * throws      RangeError outside that
 * source      [mite-growth]
 * checked     checks/wash.ts
 */
export function miteGrowth(days: number): GrowthRange {
  if (!(days >= 0 && days <= 200)) throw new RangeError(`miteGrowth: days is ${days}, must be 0 to 200`);
  const factor = (doublingDays: number) => 2 ** (days / doublingDays);
  const { doublingSlowDays, doublingDays, doublingFastDays } = mitesParameters;
  return { slow: factor(doublingSlowDays.value), mid: factor(doublingDays.value), fast: factor(doublingFastDays.value) };
}
