import { watchParameters } from '../tables/parameters-watch.gen.ts';
import { KNOT_DAYS, type PreparedColony, runOutIndex, storesErrors } from '../winter/index.ts';
import type { AutumnBelief } from './types.ts';

/**
 * One colony's cases as far as watching asks: what each has eaten by a day, held at first, and when it ends.
 *
 * Each case of autumn stands here once as it was drawn and, with little weight, as eating so many times as much: what nobody foresaw.
 */
export interface Cases {
  readonly count: number;
  /** Logarithm of each case's weight before anything was seen. */
  readonly logPrior: Float64Array;
  readonly waterPerHoneyFrac: number;
  /** Held on the first day [kg]. */
  readonly heldKg: Float64Array;
  /** Appetite against the model [1]. */
  readonly factor: Float64Array;
  /** Eaten before the first dependable forage, and the day index of it [kg]. */
  readonly toForageKg: Float64Array;
  readonly forageIndex: Int32Array;
  /** Day index of the end of the stores; Infinity where they outlast the run. */
  readonly endIndex: Float64Array;
  /** Eaten by the end of the day before `index`, which may be fractional [kg]. */
  eatenKg(at: number, index: number): number;
  /** Eaten by then since the last day above freezing [kg]: water of it may still hang in the hive as frost. */
  sinceThawKg(at: number, index: number): number;
  /** Dead bees carried out by then [kg]. */
  carriedOutKg(at: number, index: number): number;
}

/** Times as much as was drawn: steps close enough for a reading of a kilogram or two to fall between. */
const TIMES = [1, 0.5, 0.7, 1.4, 1.9, 2.6];

export function casesOf({ prepared, storesKg, doubt }: AutumnBelief): Cases {
  const { outcome, season, draw, values } = prepared;
  const { members } = outcome;
  const errors = storesErrors(doubt, { seed: draw.seed, beesOff: prepared.beesOff });
  const count = members * TIMES.length;
  const memberOf = (at: number) => at % members;
  const timesOf = (at: number) => TIMES[Math.floor(at / members)]!;
  const drawn = (of: ArrayLike<number>) => Float64Array.from({ length: count }, (_, at) => of[memberOf(at)]!);
  const unforeseen = watchParameters.unforeseenFrac.value;
  const heldKg = drawn(errors.map((error) => Math.max(0, storesKg + error)));
  const factor = drawn(prepared.factor).map((one, at) => one * timesOf(at));
  const endIndex = new Float64Array(count);
  for (let at = 0; at < count; at++)
    endIndex[at] = runOutIndex(outcome, memberOf(at), { usableKg: heldKg[at]! - values.reserveKg, factor: factor[at]! });
  const known = new Map<number, Int32Array>();
  const thaws = (index: number) => {
    const there = known.get(index) ?? Int32Array.from({ length: members }, (_, member) => lastThaw(prepared, member, index));
    known.set(index, there);
    return there;
  };
  const eatenKg = (at: number, index: number) => factor[at]! * cumulativeAt(prepared, memberOf(at), index);
  return {
    count,
    logPrior: Float64Array.from({ length: count }, (_, at) =>
      Math.log(timesOf(at) === 1 ? 1 - unforeseen : unforeseen / (TIMES.length - 1)),
    ),
    waterPerHoneyFrac: values.waterPerHoneyFrac,
    heldKg,
    factor,
    toForageKg: drawn(outcome.toForageKg).map((kg, at) => kg * factor[at]!),
    forageIndex: Int32Array.from({ length: count }, (_, at) => season.forageIndex[memberOf(at)]!),
    endIndex,
    eatenKg,
    sinceThawKg: (at, index) => eatenKg(at, index) - eatenKg(at, thaws(index)[memberOf(at)]!),
    carriedOutKg: (at, index) => {
      const member = memberOf(at);
      if (season.flightIndex[member]! >= index) return 0;
      const bees = draw.bees + prepared.beesOff[member]!;
      return bees * (1 - (1 - values.winterDeathFracPerDay) ** index) * values.beeMassKg;
    },
  };
}

/** Between the kept points of the curve use is taken as even [kg, appetite 1]. */
function cumulativeAt({ outcome }: PreparedColony, member: number, index: number): number {
  if (index <= 0) return 0;
  const { knots, days, cumulativeKg } = outcome;
  const at = member * knots;
  const knot = Math.min(knots - 1, Math.floor(index / KNOT_DAYS));
  const before = knot === 0 ? 0 : cumulativeKg[at + knot - 1]!;
  const dayBefore = knot * KNOT_DAYS;
  const dayAfter = Math.min((knot + 1) * KNOT_DAYS, days);
  const part = dayAfter === dayBefore ? 1 : Math.min(1, (index - dayBefore) / (dayAfter - dayBefore));
  return before + part * (cumulativeKg[at + knot]! - before);
}

function lastThaw({ season }: PreparedColony, member: number, index: number): number {
  const at = season.rows === 1 ? 0 : member * season.days;
  for (let day = Math.min(season.days, Math.floor(index)) - 1; day >= 0; day--) if (season.tempC[at + day]! > 0) return day + 1;
  return 0;
}
