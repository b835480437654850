import { storesParameters } from '../tables/parameters-stores.gen.ts';
import { sdFromBounds } from './errors.ts';

/** Syrup in the combs: how long ago, and what was in it. */
export interface Fed {
  readonly daysAgo: number;
  readonly sugarKg: number;
  readonly waterKg: number;
}

/**
 * Water of recent syrup that the bees have still to dry off: it weighs, and nobody eats it.
 *
 * Mass balance: syrup brings its water, ripe stores keep the share beside their solids, the rest leaves. That rest is taken to
 * fall by the same share each day (an assumption: 5 % is left after 14 days), and syrup older than the window counts as ripe.
 *
 * fed       what was taken into the combs; sugar and water [kg], age [days]
 * returns   mass and standard deviation [kg]; the deviation is that of the drying time
 * equation  sum of (water - sugar (1 - s) / s) exp(-age / time), s solids of ripe stores; thinner than ripe only
 * checked   checks/stores.ts: a gallon of 2:1 weighs 11.07 lb and makes 9.00 lb of stores
 */
export function waterToDry(fed: readonly Fed[]): { readonly massKg: number; readonly sdKg: number } {
  const { dryingDays } = storesParameters;
  const left = (days: number) =>
    fed.reduce((sum, { daysAgo, sugarKg, waterKg }) => sum + share(daysAgo, days) * above(sugarKg, waterKg), 0);
  return { massKg: left(dryingDays.value), sdKg: sdFromBounds({ low: left(dryingDays.low), high: left(dryingDays.high) }) };
}

function above(sugarKg: number, waterKg: number): number {
  const solids = storesParameters.ripeSolidsFrac.value;
  return Math.max(0, waterKg - (sugarKg * (1 - solids)) / solids);
}

function share(daysAgo: number, dryingDays: number): number {
  return daysAgo > storesParameters.dryingWindowDays.value ? 0 : Math.exp(-daysAgo / dryingDays);
}

/** Water that goes with a mass of sugar in the usual autumn syrup [kg]. */
export function usualWaterKg(sugarKg: number): number {
  const frac = storesParameters.syrupSugarFrac.value;
  return (sugarKg * (1 - frac)) / frac;
}
