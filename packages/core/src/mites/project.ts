import { keyOf, normalAt, normalQuantile, uniformAt } from '../chance/index.ts';
import { mitesParameters } from '../tables/parameters-mites.gen.ts';
import { type LevelGrid, levelAt } from './level-grid.ts';
import { dayOfYearIn, yearOf } from './levels.ts';

/** A treatment as it acts on the level: a share of the mites, drawn between its bounds, over the days it is in. */
export interface TreatmentAct {
  readonly fromDay: number;
  readonly toDay: number;
  readonly effectLowFrac: number;
  readonly effectHighFrac: number;
}

export interface ProjectInput {
  /** Level on the first day. */
  readonly start: LevelGrid;
  readonly fromDay: number;
  readonly toDay: number;
  readonly seed: number;
  /** Whose: the colony. */
  readonly entity: string;
  /** Whose neighbours: the yard. */
  readonly yard: string;
  readonly members: number;
  /** Bees the mites brought in are spread over. */
  readonly bees: number;
  /** First day without brood, by member of the yard. */
  readonly broodEndDays: Float64Array;
  readonly treatments?: readonly TreatmentAct[] | undefined;
}

/** Levels in mites per bee, members x days, row after row. */
export interface Projection {
  readonly levels: Float64Array;
  readonly fromDay: number;
  readonly days: number;
  readonly members: number;
}

/**
 * The level of one colony over the coming days, untreated but for the treatments given: one row per case.
 *
 * Growth while there is brood, at a rate of the colony's own; mites brought in by bees of other colonies from the end of July to
 * mid-November, at a rate of the yard's; none of either without brood but what is brought in.
 *
 * equation    L(d+1) = L(d) 2^(1/doubling) (1 - kill(d)) + invasion(d)/bees; doubling drawn in two halves of a log-normal round its
 *             middle, invasion log-normal, kill spread evenly in the logarithm over the days of a treatment
 * valid       the share of the bees that carry a mite. Mites leaving the last brood raise it once in autumn; that jump is not in it
 * throws      RangeError where the span is empty or longer than 400 days
 * source      [mite-growth], [frey-2014], effects `data/treatments.csv`
 * checked     checks/mites.ts (days to 3 %), mites-growth.test.ts
 */
export function projectLevels(input: ProjectInput): Projection {
  const { fromDay, toDay, members, seed } = input;
  const days = toDay - fromDay + 1;
  if (!(Number.isInteger(days) && days >= 1 && days <= 400)) throw new RangeError(`projectLevels: span is ${days} days, must be 1 to 400`);
  const startKey = keyOf(seed, 'mites-start', input.entity);
  const growthKey = keyOf(seed, 'mites-growth', input.entity);
  const invasionKey = keyOf(seed, 'mites-invasion', input.yard);
  const effectKey = keyOf(seed, 'mites-effect', input.entity);
  const isInvasion = invasionDays(fromDay, days);
  const treatments = input.treatments ?? [];
  const levels = new Float64Array(members * days);
  for (let member = 0; member < members; member++) {
    const rate = Math.LN2 / doublingDaysAt(normalAt(growthKey, member, 0));
    const brought = invasionAt(normalAt(invasionKey, member, 0)) / input.bees;
    const kills = treatments.map((one, i) => dailyKill(one, uniformAt(effectKey, member, i)));
    const broodEnd = input.broodEndDays[member]!;
    let level = levelAt(input.start, uniformAt(startKey, member, 0));
    levels[member * days] = level;
    for (let d = 1; d < days; d++) {
      const day = fromDay + d;
      let log = day <= broodEnd ? rate : 0;
      for (const kill of kills) if (day > kill.after && day <= kill.until) log += kill.log;
      level = Math.min(MOST, level * Math.exp(log) + (isInvasion[d] === 1 ? brought : 0));
      levels[member * days + d] = level;
    }
  }
  return { levels, fromDay, days, members };
}

/** More mites on the bees than bees is beyond anything a wash can mean. */
const MOST = 1;

/** Doubling time with its middle and its 5 % and 95 % bounds as published: two halves of a log-normal. */
function doublingDaysAt(z: number): number {
  const { value, low, high } = mitesParameters.doublingDays;
  const logSd = Math.log(z < 0 ? value / low : high / value) / normalQuantile(0.95);
  return value * Math.exp(z * logSd);
}

function invasionAt(z: number): number {
  const { value, low, high } = mitesParameters.invasionMitesPerDay;
  return value * Math.exp((z * Math.log(high / low)) / (2 * normalQuantile(0.95)));
}

function invasionDays(fromDay: number, days: number): Uint8Array {
  const { invasionFromDayOfYear, invasionToDayOfYear } = mitesParameters;
  return Uint8Array.from({ length: days }, (_, d) => {
    const year = yearOf(fromDay + d);
    const [first, last] = [dayOfYearIn(year, invasionFromDayOfYear.value), dayOfYearIn(year, invasionToDayOfYear.value)];
    return fromDay + d >= first && fromDay + d <= last ? 1 : 0;
  });
}

/** The share killed as a daily logarithm; the first day it acts is the one after it went in. */
function dailyKill(act: TreatmentAct, u: number): { readonly after: number; readonly until: number; readonly log: number } {
  const effect = Math.min(0.9999, act.effectLowFrac + u * (act.effectHighFrac - act.effectLowFrac));
  const until = Math.max(act.toDay, act.fromDay + 1);
  return { after: act.fromDay, until, log: Math.log1p(-effect) / (until - act.fromDay) };
}

/** The levels of all members on a day, sorted. */
export function levelsOnDay(projection: Projection, day: number): Float64Array {
  const { levels, fromDay, days, members } = projection;
  const d = Math.min(days - 1, Math.max(0, day - fromDay));
  return Float64Array.from({ length: members }, (_, member) => levels[member * days + d]!).sort();
}

/** Value that a share of sorted values stays at or below: nearest rank. */
export function shareAt(sorted: Float64Array, share: number): number {
  return sorted[Math.min(sorted.length - 1, Math.max(0, Math.ceil(share * sorted.length) - 1))]!;
}

/** Share of sorted values above a level. */
export function shareAbove(sorted: Float64Array, level: number): number {
  let above = 0;
  for (let i = sorted.length - 1; i >= 0 && sorted[i]! > level; i--) above++;
  return above / sorted.length;
}
