import type { ColonyDraws, ColonyRun } from './kernel.ts';
import { runColony } from './kernel.ts';
import type { WinterValues } from './parameters.ts';
import type { YardSeason } from './season.ts';

/** Days between the kept points of the cumulative curve: a run-out date needs no more, and 200 colonies must fit a phone. */
export const KNOT_DAYS = 7;

/** One colony's winter in every member, appetite 1: what a weighing is held against, without running the model again. */
export interface ColonyOutcome {
  readonly members: number;
  readonly days: number;
  /** [kg] honey eaten before the first day of dependable forage, or by the end of the run, by member. */
  readonly toForageKg: Float64Array;
  /** [kg] the part of it eaten before brood begins. */
  readonly broodlessKg: Float64Array;
  /** [kg] eaten before the median day of forage, by member: the same with the doubt about that day taken out. */
  readonly toMedianForageKg: Float64Array;
  /** [kg] eaten in the longest run of days at or below spellTempC. */
  readonly spellKg: Float64Array;
  /** [kg] members x knots: eaten by the end of day 7, 14, ... and of the last day. */
  readonly cumulativeKg: Float32Array;
  readonly knots: number;
  /** [bees] by member. */
  readonly beesAtEnd: Float64Array;
}

/** Room for one run, to be used again and again. */
export function makeRun(season: YardSeason): ColonyRun {
  return { useKg: new Float64Array(season.members * season.days), beesAtEnd: new Float64Array(season.members) };
}

/** Runs a colony and keeps what later questions need. `run` is overwritten. */
export function outcomeOf(
  season: YardSeason,
  draws: ColonyDraws,
  setting: { hiveWPerK: number; values: WinterValues },
  run: ColonyRun,
): ColonyOutcome {
  runColony(season, draws, setting, run);
  const { members, days } = season;
  const knots = Math.ceil(days / KNOT_DAYS);
  const medianForage = medianOf(season.forageIndex);
  const outcome = {
    members,
    days,
    toForageKg: new Float64Array(members),
    broodlessKg: new Float64Array(members),
    toMedianForageKg: new Float64Array(members),
    spellKg: new Float64Array(members),
    cumulativeKg: new Float32Array(members * knots),
    knots,
    beesAtEnd: Float64Array.from(run.beesAtEnd),
  };
  for (let i = 0; i < members; i++) {
    const forage = season.forageIndex[i]!;
    const broodless = Math.min(forage, draws.broodStart[i]!);
    const spellFrom = season.spellStart[i]!;
    const spellTo = spellFrom + season.spellDays[i]!;
    let sum = 0;
    let knot = 0;
    for (let d = 0; d < days; d++) {
      const use = run.useKg[i * days + d]!;
      if (d < broodless) outcome.broodlessKg[i]! += use;
      if (d >= spellFrom && d < spellTo) outcome.spellKg[i]! += use;
      if (d === forage) outcome.toForageKg[i] = sum;
      if (d === medianForage) outcome.toMedianForageKg[i] = sum;
      sum += use;
      if ((d + 1) % KNOT_DAYS === 0 || d === days - 1) outcome.cumulativeKg[i * knots + knot++] = sum;
    }
    if (forage >= days) outcome.toForageKg[i] = sum;
    if (medianForage >= days) outcome.toMedianForageKg[i] = sum;
  }
  return outcome;
}

function medianOf(values: Int32Array): number {
  const s = Int32Array.from(values).sort();
  return s[s.length >> 1]!;
}

/**
 * Day on which a member's stores end: days since the start of the run, fractional; Infinity when they outlast it.
 *
 * usableKg   what may be eaten [kg]
 * factor     the member's appetite [1]
 */
export function runOutIndex(outcome: ColonyOutcome, member: number, stores: { usableKg: number; factor: number }): number {
  if (stores.usableKg <= 0) return 0;
  const target = stores.usableKg / stores.factor;
  const at = member * outcome.knots;
  let low = 0;
  let high = outcome.knots;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (outcome.cumulativeKg[at + middle]! > target) high = middle;
    else low = middle + 1;
  }
  if (low === outcome.knots) return Number.POSITIVE_INFINITY;
  const before = low === 0 ? 0 : outcome.cumulativeKg[at + low - 1]!;
  const after = outcome.cumulativeKg[at + low]!;
  const dayAfter = Math.min((low + 1) * KNOT_DAYS, outcome.days);
  const dayBefore = low * KNOT_DAYS;
  return dayBefore + ((dayAfter - dayBefore) * (target - before)) / (after - before);
}
