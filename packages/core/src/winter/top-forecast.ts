import {
  hivetopParameters,
  type ShippedTop,
  shippedTop,
  type TopAnswer,
  type TopBuild,
  type TopSeasonRuns,
  top,
  topConductanceWPerK,
  topSeason,
} from '../hivetop/index.ts';
import { matterParameters } from '../matter/index.ts';
import { bad, good, inRange, type Result, under } from '../result/index.ts';
import { isoDateOf } from '../units/index.ts';
import { judgeColony, type PreparedColony, prepareColony } from './colony.ts';
import type { DrawInput } from './draws.ts';
import type { ColonyRun } from './kernel.ts';
import { makeRun } from './outcome.ts';
import { readOutlook } from './outlook-input.ts';
import type { DateSpread, OutlookInput } from './outlook-types.ts';
import { levelPrior } from './own-rule.ts';
import { winterValues } from './parameters.ts';
import { quantileOfSorted, type Spread, sorted, spreadOf } from './quantiles.ts';
import type { YardSeason } from './season.ts';
import { seasonFor } from './yard-season.ts';

/** A top to be looked at: one of the shipped ones, or the keeper's own. */
export interface TopChoice {
  readonly name: string;
  readonly shipped?: ShippedTop | undefined;
  readonly build?: TopBuild | undefined;
  /** What it costs the keeper for one hive, in their own money. */
  readonly cost?: number | undefined;
}

/** A colony and its weather as `outlook` asks them (its hive is that of each top), and the tops. */
export interface TopForecastInput extends Omit<OutlookInput, 'hive' | 'ownRule' | 'storesKg' | 'storesSdKg' | 'storesSdParts' | 'fixed'> {
  readonly tops: readonly TopChoice[];
  readonly outsideRhFrac?: number | undefined;
  readonly candyShareFrac?: number | undefined;
  /** Winters run through each top, at most `members`. */
  readonly topMembers?: number | undefined;
}

export interface TopForecast {
  readonly name: string;
  readonly needKg: number;
  readonly useKg: Spread;
  /** Need beside that of the first top named [kg]. */
  readonly needOverFirstKg: number;
  readonly conductanceWPerK: number;
  readonly waterMadeKg: Spread;
  readonly waterOutKg: Spread;
  readonly waterHeldKg: Spread;
  readonly waterFrozenKg: Spread;
  readonly waterDrippedKg: Spread;
  readonly ranDownWallsKg: Spread;
  readonly mostFrozenKg: Spread;
  /** Days on which a lid over air was wet, and on which it was frosted. */
  readonly wetLidDays: Spread;
  readonly frostLidDays: Spread;
  /** null where that share of winters never fills it; `fullFrac` is the share that does. null without an absorbent. */
  readonly absorbentFull: (DateSpread & { readonly fullFrac: number }) | null;
  /** Heat that left through the top and with the air, as honey [kg]. */
  readonly topHeatMJ: Spread;
  readonly airHeatMJ: Spread;
  readonly topHeatHoneyKg: Spread;
  /** Water a scale shows beside stores and bees, by week: in wood, fill, drops and frost [kg]. */
  readonly onScaleKg: readonly (Spread & { readonly date: string })[];
  /** Change of the hive's weight over the span with that water in it, the dead carried out after the first flight [kg]. */
  readonly scaleKg: Spread;
  readonly candyLeftKg: Spread;
  /** The top on a cold day: one in ten of the coldest month is colder. */
  readonly section: TopAnswer;
  readonly coldDayC: number;
  /** Share of days on which a foam was colder than its tests. */
  readonly coldFoamFrac: number;
  readonly cost: number | null;
}

export interface TopForecastAnswer {
  readonly tops: readonly TopForecast[];
  readonly members: number;
  readonly topMembers: number;
  readonly seed: number;
}

export const TOP_FORECAST_TOPS = { low: 1, high: 8, unit: 'tops' } as const;
export const TOP_FORECAST_MEMBERS = { low: 10, high: 1000, unit: 'winters' } as const;
const WEEK = 7;
const COLD_SHARE = 0.1;

/**
 * What tops do over the winters of the forecast: the same weather, colony and appetite through each. It compares and prescribes nothing.
 *
 * input     see TopForecastInput
 * returns   by top: need and use, where the water went, wet days, the absorbent's full day, heat through it, water on the scale
 * errors    BadInput naming the field
 * checked   top-forecast.test.ts: water and heat close in every winter; warmer tops need no more
 */
export function topForecast(input: TopForecastInput): Result<TopForecastAnswer> {
  const read = readOutlook(input);
  if (!read.ok) return read;
  const many = inRange('tops.length', input.tops.length, TOP_FORECAST_TOPS);
  if (!many.ok) return many;
  const { fromDay, days, broodFromDay, forageDay } = read.value;
  const values = winterValues(read.value.pins);
  const members = input.members ?? 1000;
  const ran = inRange('topMembers', input.topMembers ?? hivetopParameters.seasonMembers.value, TOP_FORECAST_MEMBERS);
  if (!ran.ok) return ran;
  const topMembers = Math.min(members, Math.round(ran.value));
  const seed = input.seed ?? 1;
  const yard = seasonFor(input, { fromDay, days, members, seed, forageDay, values });
  if (!yard.ok) return yard;
  const { season } = yard.value;
  const draw: DrawInput = {
    seed,
    members,
    fromDay,
    bees: input.bees,
    beesSdFrac: input.beesSdFrac ?? values.beesSdFrac,
    pins: read.value.pins,
    ...(broodFromDay === undefined ? {} : { broodFromDay }),
  };
  const run = makeRun(season);
  const tops: TopForecast[] = [];
  for (const [i, choice] of input.tops.entries()) {
    const build = buildOf(choice, i);
    if (!build.ok) return build;
    const conductance = topConductanceWPerK(build.value);
    if (!conductance.ok) return under(`tops[${i}].build`, conductance.error);
    const prepared = prepareColony({ season, draw, level: levelPrior(), hiveWPerK: conductance.value, values }, run);
    const told = forecastOne({ prepared, run, season, build: build.value, topMembers, input });
    if (!told.ok) return under(`tops[${i}].build`, told.error);
    tops.push({
      ...told.value,
      name: choice.name,
      conductanceWPerK: conductance.value,
      needOverFirstKg: told.value.needKg - (tops[0]?.needKg ?? told.value.needKg),
      cost: choice.cost ?? null,
    });
  }
  return good({ tops, members, topMembers, seed });
}

function buildOf({ shipped, build }: TopChoice, i: number): Result<TopBuild> {
  if (build !== undefined && shipped !== undefined)
    return bad({ kind: 'conflict', fields: [`tops[${i}].shipped`, `tops[${i}].build`], why: 'give-one' });
  if (build !== undefined) return good(build);
  return shipped === undefined ? bad({ kind: 'missing', field: `tops[${i}].shipped` }) : good(shippedTop(shipped));
}

function forecastOne(of: {
  prepared: PreparedColony;
  run: ColonyRun;
  season: YardSeason;
  build: TopBuild;
  topMembers: number;
  input: TopForecastInput;
}): Result<Omit<TopForecast, 'name' | 'conductanceWPerK' | 'needOverFirstKg' | 'cost'>> {
  const { prepared, run, season, build, topMembers, input } = of;
  const { days, rows } = season;
  const useKg = new Float64Array(topMembers * days);
  for (let m = 0; m < topMembers; m++) {
    for (let d = 0; d < days; d++) useKg[m * days + d] = prepared.factor[m]! * run.useKg[m * days + d]!;
  }
  const runs = topSeason(build, {
    days,
    members: topMembers,
    rows: rows === 1 ? 1 : topMembers,
    tempC: season.tempC,
    useKg,
    outsideRhFrac: input.outsideRhFrac,
    candyShareFrac: input.candyShareFrac,
  });
  if (!runs.ok) return runs;
  const coldDayC = coldDay(season);
  const middleUse = quantileOfSorted(sorted(useKg), 0.5);
  const section = top({
    ...build,
    outsideC: coldDayC,
    outsideRhFrac: input.outsideRhFrac,
    useKgPerDay: middleUse,
    windMPerS: hivetopParameters.seasonWindMPerS.value,
  });
  if (!section.ok) return section;
  const { needKg } = judgeColony(prepared, { kg: null, doubt: NO_DOUBT }, input.certaintyFrac ?? 0.95);
  const v = runs.value;
  const joulePerKg = matterParameters.honeyEnergyMJPerKg.value;
  return good({
    needKg,
    useKg: spreadOf(sumsBy(useKg, topMembers, days)),
    waterMadeKg: spreadOf(v.waterMadeKg),
    waterOutKg: spreadOf(v.waterOutKg),
    waterHeldKg: spreadOf(v.waterHeldKg),
    waterFrozenKg: spreadOf(v.waterFrozenKg),
    waterDrippedKg: spreadOf(v.waterDrippedKg),
    ranDownWallsKg: spreadOf(v.ranDownWallsKg),
    mostFrozenKg: spreadOf(v.mostFrozenKg),
    wetLidDays: spreadOf(v.wetLidDays),
    frostLidDays: spreadOf(v.frostLidDays),
    absorbentFull: v.fill === null ? null : fullDates(v, season.fromDay),
    topHeatMJ: spreadOf(v.topHeatMJ),
    airHeatMJ: spreadOf(v.airHeatMJ),
    topHeatHoneyKg: spreadOf(v.topHeatMJ.map((mj, i) => (mj + v.airHeatMJ[i]!) / joulePerKg)),
    onScaleKg: weekly(v, season.fromDay),
    scaleKg: spreadOf(scaleChange(v, { useKg, prepared, run, season })),
    candyLeftKg: spreadOf(v.candyLeftKg),
    section: section.value,
    coldDayC,
    coldFoamFrac: v.coldFoamDays / (topMembers * days),
  });
}

const NO_DOUBT = { tare: { key: 'build', sdKg: 0 }, scale: { key: 'scale', sdKg: 0 }, own: { sdKg: 0 }, beeKg: 0 };

function sumsBy(values: Float64Array, members: number, days: number): Float64Array {
  return Float64Array.from({ length: members }, (_, m) => values.subarray(m * days, (m + 1) * days).reduce((sum, kg) => sum + kg, 0));
}

/** One day in ten of the coldest thirty-day stretch, on the average of members, is as cold as this. */
function coldDay({ tempC, rows, days }: YardSeason): number {
  const span = Math.min(30, days);
  let [coldest, from] = [Number.POSITIVE_INFINITY, 0];
  for (let d = 0; d + span <= days; d++) {
    let sum = 0;
    for (let r = 0; r < rows; r++) for (let k = 0; k < span; k++) sum += tempC[r * days + d + k]!;
    if (sum < coldest) [coldest, from] = [sum, d];
  }
  const inIt: number[] = [];
  for (let r = 0; r < rows; r++) for (let k = 0; k < span; k++) inIt.push(tempC[r * days + from + k]!);
  return quantileOfSorted(sorted(inIt), COLD_SHARE);
}

function fullDates(v: TopSeasonRuns, fromDay: number): DateSpread & { fullFrac: number } {
  const { p5, p50, p95 } = spreadOf(v.absorbentFullIndex);
  const date = (index: number) => (Number.isFinite(index) ? isoDateOf(fromDay + index) : null);
  return { p5: date(p5), p50: date(p50), p95: date(p95), fullFrac: v.absorbentFullIndex.filter(Number.isFinite).length / v.members };
}

function weekly(v: TopSeasonRuns, fromDay: number): (Spread & { date: string })[] {
  const weeks: (Spread & { date: string })[] = [];
  for (let d = Math.min(WEEK, v.days) - 1; d < v.days; d += WEEK) {
    const at = Float64Array.from({ length: v.members }, (_, m) => v.onScaleKg[m * v.days + d]!);
    weeks.push({ date: isoDateOf(fromDay + d), ...spreadOf(at) });
  }
  return weeks;
}

/** Weight at the end against the beginning: what was eaten, the water still in the hive, the dead that were carried out. */
function scaleChange(
  v: TopSeasonRuns,
  { useKg, prepared, run, season }: { useKg: Float64Array; prepared: PreparedColony; run: ColonyRun; season: YardSeason },
): Float64Array {
  const eaten = sumsBy(useKg, v.members, v.days);
  return eaten.map((kg, m) => {
    const begun = prepared.draw.bees + prepared.beesOff[m]!;
    const dead = season.flightIndex[m]! < v.days ? Math.max(0, begun - run.beesAtEnd[m]!) * prepared.values.beeMassKg : 0;
    return -kg + v.onScaleKg[(m + 1) * v.days - 1]! - dead;
  });
}
