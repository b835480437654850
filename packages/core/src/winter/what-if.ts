import { epochDayOfParts, partsOf } from '../units/index.ts';
import { datesOf, type Judged, type PreparedColony } from './colony.ts';
import { drawAppetite, drawColony, type LevelBelief } from './draws.ts';
import { judge } from './judge.ts';
import type { ColonyDraws } from './kernel.ts';
import { type ColonyOutcome, makeRun, outcomeOf } from './outcome.ts';
import type { YardSeason } from './season.ts';

/** What is asked instead of what is believed. A field left out changes nothing. */
export interface WhatIfChanges {
  readonly certaintyFrac?: number | undefined;
  /** Spring comes so many days later: from 1 March on the weather is that of so many days before. */
  readonly laterSpringDays?: number | undefined;
  /** The hive's conductance times this: 0.5 is twice the insulation. */
  readonly conductanceTimes?: number | undefined;
  readonly earlierBroodDays?: number | undefined;
  /** What the keeper's colonies eat against the model, for the own rule on or off. */
  readonly level?: LevelBelief | undefined;
}

export type WhatIfAnswer = Pick<Judged, 'needKg' | 'holdFrac' | 'runOut'>;

/** Limits of the changes; beyond them the answer would be about another place or another animal. */
export const WHAT_IF_RANGES = {
  certaintyFrac: { low: 0.5, high: 0.995 },
  laterSpringDays: { low: 0, high: 45 },
  conductanceTimes: { low: 0.2, high: 3 },
  earlierBroodDays: { low: -30, high: 45 },
} as const;

/** So many of the members answer while a slider moves. */
export const WHAT_IF_MEMBERS = 200;

/** A colony's curve with something changed, on the first of its own members. Equal curves and changes need one only. */
export interface WhatIfRun {
  readonly prepared: PreparedColony;
  readonly outcome: ColonyOutcome;
  readonly factor: Float64Array;
  readonly changes: WhatIfChanges;
}

/**
 * Runs a colony with something changed: the same weather and luck as its forecast. A change of certainty or of the level alone runs no model.
 *
 * members     how many of the forecast's, 1 to all
 * throws      RangeError where a change lies outside WHAT_IF_RANGES
 */
export function whatIfRun(prepared: PreparedColony, members: number, changes: WhatIfChanges = {}): WhatIfRun {
  checkRanges(changes);
  const n = Math.min(members, prepared.season.members);
  const { values, draw } = prepared;
  const { laterSpringDays: later = 0, conductanceTimes = 1, earlierBroodDays: earlier = 0 } = changes;
  const factor = changes.level === undefined ? prepared.factor : drawAppetite(draw, changes.level);
  const of = { prepared, factor: factor.subarray(0, n), changes };
  if (later === 0 && conductanceTimes === 1 && earlier === 0) return { ...of, outcome: firstOutcome(prepared.outcome, n) };
  const season = withLaterSpring(firstOf(prepared.season, n), later);
  const colony = firstDraws(drawColony(draw), n);
  const moved = earlier === 0 ? colony : { ...colony, broodStart: colony.broodStart.map((day) => day - earlier) };
  const setting = { hiveWPerK: prepared.hiveWPerK * conductanceTimes, values };
  return { ...of, outcome: outcomeOf(season, moved, setting, makeRun(season)) };
}

/**
 * Need and chance of a colony that holds so much, from a run with something changed; `errors` are those of all members, from `storesErrors`.
 * With nothing changed and all members: what `judgeColony` says.
 */
export function whatIfJudged(
  { prepared, outcome, factor, changes }: WhatIfRun,
  of: { readonly storesKg: number | null; readonly errors: Float64Array; readonly certaintyFrac: number },
): WhatIfAnswer {
  const errors = of.errors.subarray(0, outcome.members);
  const certaintyFrac = changes.certaintyFrac ?? of.certaintyFrac;
  const verdict = judge({ outcome, factor, errors, storesKg: of.storesKg, reserveKg: prepared.values.reserveKg, certaintyFrac });
  return {
    needKg: verdict.needKg,
    holdFrac: verdict.holdFrac,
    runOut: verdict.runOutIndex === null ? null : datesOf(verdict.runOutIndex, prepared.season.fromDay),
  };
}

function checkRanges(changes: WhatIfChanges): void {
  for (const [name, { low, high }] of Object.entries(WHAT_IF_RANGES)) {
    const value = changes[name as keyof typeof WHAT_IF_RANGES];
    if (value !== undefined && !(value >= low && value <= high)) {
      throw new RangeError(`whatIfRun: ${name} is ${value}, must be ${low} to ${high}`);
    }
  }
}

/** Views of the first members: nothing is copied. */
function firstOf(season: YardSeason, members: number): YardSeason {
  const cells = season.rows === 1 ? season.days : members * season.days;
  const { tempC, basalWPerKg, warmWPerKg, flightIndex, forageIndex, spellStart, spellDays } = season;
  return {
    ...season,
    members,
    rows: season.rows === 1 ? 1 : members,
    tempC: tempC.subarray(0, cells),
    basalWPerKg: basalWPerKg.subarray(0, cells),
    warmWPerKg: warmWPerKg.subarray(0, cells),
    flightIndex: flightIndex.subarray(0, members),
    forageIndex: forageIndex.subarray(0, members),
    spellStart: spellStart.subarray(0, members),
    spellDays: spellDays.subarray(0, members),
  };
}

function firstOutcome(outcome: ColonyOutcome, members: number): ColonyOutcome {
  const { knots, toForageKg, broodlessKg, toMedianForageKg, spellKg, beesAtEnd, cumulativeKg } = outcome;
  return {
    ...outcome,
    members,
    toForageKg: toForageKg.subarray(0, members),
    broodlessKg: broodlessKg.subarray(0, members),
    toMedianForageKg: toMedianForageKg.subarray(0, members),
    spellKg: spellKg.subarray(0, members),
    beesAtEnd: beesAtEnd.subarray(0, members),
    cumulativeKg: cumulativeKg.subarray(0, members * knots),
  };
}

function firstDraws(draws: ColonyDraws, members: number): ColonyDraws {
  const { bees, winterDeath, springDeath, broodStart, broodScale } = draws;
  const first = (values: Float64Array) => values.subarray(0, members);
  return {
    bees: first(bees),
    winterDeath: first(winterDeath),
    springDeath: first(springDeath),
    broodStart: first(broodStart),
    broodScale: first(broodScale),
  };
}

/** From 1 March (or the first day, if later) every day is as it was so many days before, and flight and forage come so much later. */
function withLaterSpring(season: YardSeason, later: number): YardSeason {
  if (later === 0) return season;
  const { days, rows, fromDay } = season;
  const from = Math.max(0, firstOfMarch(fromDay) - fromDay);
  const shifted = (values: Float64Array) => {
    const moved = Float64Array.from(values);
    for (let row = 0; row < rows; row++) {
      for (let d = days - 1; d >= from; d--) moved[row * days + d] = values[row * days + Math.max(0, d - later)]!;
    }
    return moved;
  };
  const index = (values: Int32Array) => values.map((d) => (d >= from ? Math.min(days, d + later) : d));
  return {
    ...season,
    tempC: shifted(season.tempC),
    basalWPerKg: shifted(season.basalWPerKg),
    warmWPerKg: shifted(season.warmWPerKg),
    flightIndex: index(season.flightIndex),
    forageIndex: index(season.forageIndex),
  };
}

function firstOfMarch(day: number): number {
  const { year, month } = partsOf(day);
  return epochDayOfParts(month <= 6 ? year : year + 1, 3, 1);
}
