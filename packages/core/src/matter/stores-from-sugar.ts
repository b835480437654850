import { matterParameters } from '../tables/parameters-matter.gen.ts';
import { lbToKg, usGallonToL } from '../units/index.ts';
import { sucroseDensityKgPerM3 } from './sucrose.ts';

/** Two published rules that disagree and the one experiment between them. Plans are made on `low`. */
export interface StoresRange {
  readonly low: number;
  readonly mid: number;
  readonly high: number;
}

const TWO_TO_ONE = 2 / 3;
const THREE_TO_TWO = 3 / 5;
const ONE_TO_ONE = 1 / 2;

/**
 * Kilograms of stores a colony has after taking one kilogram of sugar as syrup.
 *
 * Use `low` to plan, show all three. Late, cold or trickled feeding does worse than any of them.
 *
 * sugarFrac   strength of the syrup, sucrose by mass, above 0 to 0.85
 * returns     low   "a US gallon of 2:1 adds 7 lb"; for other strengths in the ratio of the experiment
 *             mid   measured for 2:1, 3:2 and 1:1, straight between them; thinner than 1:1 the last slope goes on (extrapolation),
 *                   thicker than 2:1 it stays
 *             high  "sugar divided by 0.8", whatever the strength: no loss at all
 * throws      RangeError outside that, NaN included
 * source      [yield-seven-pounds], [hohenheim-1981], [yield-divide-by-eight-tenths]
 * checked     checks/sugar.ts
 */
export function storesPerSugarKg(sugarFrac: number): StoresRange {
  if (!(sugarFrac > 0 && sugarFrac <= 0.85))
    throw new RangeError(`storesPerSugarKg: sugarFrac is ${sugarFrac}, must be above 0, up to 0.85`);
  const p = matterParameters;
  const sugarPerGallonKg = (usGallonToL(1) / 1000) * sucroseDensityKgPerM3(TWO_TO_ONE, 20) * TWO_TO_ONE;
  const sevenPounds = lbToKg(p.storesLbPerUsGallon.value) / sugarPerGallonKg;
  const mid = measured(sugarFrac);
  return { low: (sevenPounds * mid) / p.storesPerSugar2to1Frac.value, mid, high: 1 / p.storesSugarDivisor.value };
}

/** Stores from an amount of sugar [kg]. */
export function storesFromSugarKg(sugarKg: number, sugarFrac: number): StoresRange {
  const { low, mid, high } = storesPerSugarKg(sugarFrac);
  return { low: sugarKg * low, mid: sugarKg * mid, high: sugarKg * high };
}

/** Sugar that gives these stores [kg]; `low` is by the low rule and so the most sugar, the amount to buy. */
export function sugarForStoresKg(storesKg: number, sugarFrac: number): StoresRange {
  const { low, mid, high } = storesPerSugarKg(sugarFrac);
  return { low: storesKg / low, mid: storesKg / mid, high: storesKg / high };
}

/** True where the experiment says nothing about this strength. */
export function isYieldExtrapolated(sugarFrac: number): boolean {
  return sugarFrac < ONE_TO_ONE - 1e-9 || sugarFrac > TWO_TO_ONE + 0.01;
}

function measured(sugarFrac: number): number {
  const two = matterParameters.storesPerSugar2to1Frac.value;
  const threeHalves = matterParameters.storesPerSugar3to2Frac.value;
  const one = matterParameters.storesPerSugar1to1Frac.value;
  if (sugarFrac >= TWO_TO_ONE) return two;
  if (sugarFrac >= THREE_TO_TWO) return threeHalves + ((two - threeHalves) * (sugarFrac - THREE_TO_TWO)) / (TWO_TO_ONE - THREE_TO_TWO);
  return one + ((threeHalves - one) * (sugarFrac - ONE_TO_ONE)) / (THREE_TO_TWO - ONE_TO_ONE);
}
