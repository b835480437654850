import { keyOf, uniformAt } from '../chance/index.ts';
import { isoDateOf, partsOf } from '../units/index.ts';
import { doubtShares } from './doubt.ts';
import { type DrawInput, drawAppetite, drawColony, type LevelBelief } from './draws.ts';
import { judge, type StoresDoubt, storesErrors } from './judge.ts';
import type { ColonyDraws, ColonyRun } from './kernel.ts';
import { type ColonyOutcome, KNOT_DAYS, outcomeOf } from './outcome.ts';
import type { DateSpread, OutlookAnswer } from './outlook-types.ts';
import type { WinterValues } from './parameters.ts';
import { meanOf, quantileInPlace, quantileOfSorted, type Spread, sorted, spreadOf } from './quantiles.ts';
import type { YardSeason } from './season.ts';

export interface ColonySetting {
  readonly season: YardSeason;
  readonly draw: DrawInput;
  readonly level: LevelBelief;
  readonly hiveWPerK: number;
  readonly values: WinterValues;
}

/** Everything about a colony's winter that does not depend on what it holds: made before the round, so that a weighing only subtracts. */
export interface PreparedColony extends ColonySetting {
  readonly outcome: ColonyOutcome;
  /** Appetite by member. */
  readonly factor: Float64Array;
  /** Bees drawn minus bees thought, by member. */
  readonly beesOff: Float64Array;
  readonly usage: Pick<OutlookAnswer, 'useKg' | 'dailyUseKg' | 'monthlyUseKg' | 'beesAtEnd' | 'scaleKg'>;
}

/** Runs the model once for a colony. `run` is overwritten. */
export function prepareColony(setting: ColonySetting, run: ColonyRun): PreparedColony {
  const { season, draw, values, hiveWPerK } = setting;
  const colony = drawColony(draw);
  const outcome = outcomeOf(season, colony, { hiveWPerK, values }, run);
  const factor = drawAppetite(draw, setting.level);
  return {
    ...setting,
    outcome,
    factor,
    beesOff: colony.bees.map((n) => n - draw.bees),
    usage: {
      ...usageOf(season, run, factor),
      beesAtEnd: spreadOf(outcome.beesAtEnd),
      scaleKg: scaleChange({ season, run, factor, colony, draw, values }),
    },
  };
}

export type Judged = Pick<
  OutlookAnswer,
  | 'runOut'
  | 'holdFrac'
  | 'needKg'
  | 'needParts'
  | 'contactKg'
  | 'extrapolating'
  | 'extrapolatingBecause'
  | 'winterableAlone'
  | 'lightForWinter'
  | 'hiveWPerK'
  | 'forageDate'
> & {
  /** Probability of loss at so many kilograms below the need, above what the need itself leaves. */
  readonly lossCurve: readonly { readonly shortKg: number; readonly lossFrac: number }[];
  /** Twenty run-out dates of equal chance, earliest first; null: later than the run. Null in all where nothing is known of the stores. */
  readonly cases: readonly (string | null)[] | null;
};

/** What a colony holds against what it needs. Subtraction and sorting only. */
export function judgeColony(prepared: PreparedColony, stores: { kg: number | null; doubt: StoresDoubt }, certaintyFrac: number): Judged {
  const { outcome, factor, season, draw, values } = prepared;
  const errors = storesErrors(stores.doubt, { seed: draw.seed, beesOff: prepared.beesOff });
  const verdict = judge({ outcome, factor, errors, storesKg: stores.kg, reserveKg: values.reserveKg, certaintyFrac });
  const because = extrapolations(draw.bees, season);
  return {
    runOut: verdict.runOutIndex === null ? null : datesOf(verdict.runOutIndex, season.fromDay),
    holdFrac: verdict.holdFrac,
    needKg: verdict.needKg,
    needParts: verdict.needParts,
    lossCurve: verdict.lossCurve,
    cases: verdict.caseIndex?.map((d) => dateAt(d, season.fromDay)) ?? null,
    contactKg: contactKg(outcome, factor, certaintyFrac),
    extrapolating: because.length > 0,
    extrapolatingBecause: because,
    winterableAlone: draw.bees >= values.minBeesAlone,
    lightForWinter:
      stores.kg === null || !isAutumn(season.fromDay) ? null : stores.kg + draw.bees * values.beeMassKg < values.leastWithoutWoodKg,
    hiveWPerK: prepared.hiveWPerK,
    forageDate: datesOf(
      spreadOf(Float64Array.from(season.forageIndex, (d) => (d >= season.days ? Number.POSITIVE_INFINITY : d))),
      season.fromDay,
    ),
  };
}

/** What is left of the stores at the end of every week, and at the end of the run [kg]. */
export interface StoresFan {
  /** ISO dates. */
  readonly days: readonly string[];
  /** Shares of the members that hold less; kilograms at each of `days`. */
  readonly p5: readonly number[];
  readonly p25: readonly number[];
  readonly p50: readonly number[];
  readonly p75: readonly number[];
  readonly p95: readonly number[];
}

/** The course of what a colony holds, errors of measuring and appetite drawn together; what is out of reach is counted as held. */
export function fanOf(prepared: PreparedColony, stores: { kg: number; doubt: StoresDoubt }): StoresFan {
  const { outcome, factor, season, draw } = prepared;
  const { members, knots, days } = outcome;
  const errors = storesErrors(stores.doubt, { seed: draw.seed, beesOff: prepared.beesOff });
  const left = new Float64Array(members);
  const fan = {
    days: [] as string[],
    p5: [] as number[],
    p25: [] as number[],
    p50: [] as number[],
    p75: [] as number[],
    p95: [] as number[],
  };
  for (let knot = -1; knot < knots; knot++) {
    for (let i = 0; i < members; i++) {
      const eaten = knot < 0 ? 0 : factor[i]! * outcome.cumulativeKg[i * knots + knot]!;
      left[i] = Math.max(0, stores.kg + errors[i]! - eaten);
    }
    const inOrder = sorted(left);
    fan.days.push(isoDateOf(season.fromDay + Math.min((knot + 1) * KNOT_DAYS, days - 1)));
    fan.p5.push(quantileOfSorted(inOrder, 0.05));
    fan.p25.push(quantileOfSorted(inOrder, 0.25));
    fan.p50.push(quantileOfSorted(inOrder, 0.5));
    fan.p75.push(quantileOfSorted(inOrder, 0.75));
    fan.p95.push(quantileOfSorted(inOrder, 0.95));
  }
  return fan;
}

/** August to November: what the published least weight is asked of. Later a lighter hive is a hive that has eaten. */
function isAutumn(day: number): boolean {
  const { month } = partsOf(day);
  return month >= 8 && month <= 11;
}

/** Shares of the doubt, by running the model again with each cause held. `run` is overwritten. */
export function sharesOf(prepared: PreparedColony, doubt: StoresDoubt, run: ColonyRun) {
  return doubtShares({ ...prepared, stores: doubt }, run);
}

/** Use over the span, by day and by month, in the members' own appetite. */
function usageOf(season: YardSeason, run: ColonyRun, factor: Float64Array): Pick<OutlookAnswer, 'useKg' | 'dailyUseKg' | 'monthlyUseKg'> {
  const { days, members, fromDay } = season;
  const total = new Float64Array(members);
  const day = new Float64Array(members);
  const dailyUseKg: number[] = [];
  const months = new Map<string, Float64Array>();
  for (let d = 0; d < days; d++) {
    const name = isoDateOf(fromDay + d).slice(0, 7);
    const month = months.get(name) ?? new Float64Array(members);
    months.set(name, month);
    for (let i = 0; i < members; i++) {
      const use = factor[i]! * run.useKg[i * days + d]!;
      day[i] = use;
      month[i]! += use;
      total[i]! += use;
    }
    dailyUseKg.push(quantileInPlace(day, 0.5));
  }
  return {
    useKg: { ...spreadOf(total), mean: meanOf(total) },
    dailyUseKg,
    monthlyUseKg: [...months].map(([month, values]) => ({ month, ...spreadOf(values) })),
  };
}

/**
 * What the combs at the cluster must hold [kg]: honey eaten in the longest run of days too cold to move to other combs,
 * at the asked share of members.
 */
function contactKg(outcome: ColonyOutcome, factor: Float64Array, certaintyFrac: number): number {
  return quantileOfSorted(sorted(outcome.spellKg.map((kg, i) => kg * factor[i]!)), certaintyFrac);
}

/**
 * Change of the hive's weight over the span, as a scale under it would show it [kg], negative: lighter.
 *
 * Of the water made since the last day above freezing any share may still hang in the hive as frost (one-sided: it only hides use);
 * after the first flights the dead of the winter are carried out.
 */
function scaleChange(of: {
  season: YardSeason;
  run: ColonyRun;
  factor: Float64Array;
  colony: ColonyDraws;
  draw: DrawInput;
  values: WinterValues;
}): Spread {
  const { season, run, factor, colony, values } = of;
  const { days, members, rows, tempC } = season;
  const frost = keyOf(of.draw.seed, 'frost', 'colony');
  const change = new Float64Array(members);
  for (let i = 0; i < members; i++) {
    const at = rows === 1 ? 0 : i * days;
    let eaten = 0;
    let sinceThaw = 0;
    for (let d = 0; d < days; d++) {
      const use = factor[i]! * run.useKg[i * days + d]!;
      eaten += use;
      sinceThaw = tempC[at + d]! > 0 ? 0 : sinceThaw + use;
    }
    const fewer = colony.bees[i]! - run.beesAtEnd[i]!;
    const carriedOut = season.flightIndex[i]! < days ? Math.max(0, fewer) * values.beeMassKg : 0;
    change[i] = -eaten + values.waterPerHoneyFrac * sinceThaw * uniformAt(frost, i, 0) - carriedOut;
  }
  return spreadOf(change);
}

function extrapolations(bees: number, season: YardSeason): OutlookAnswer['extrapolatingBecause'] {
  const because: OutlookAnswer['extrapolatingBecause'][number][] = [];
  // more than one day in twenty: a single cold night is no extrapolation
  if (season.unweighedColdFrac > 1 / 20) because.push('below-weighed-cold');
  if (bees < FEWEST_MEASURED) because.push('fewer-bees-than-measured');
  if (bees > MOST_MEASURED) because.push('more-bees-than-measured');
  const later = season.forageIndex.filter((d) => d >= season.days).length;
  if (later > season.members / 20) because.push('forage-after-to');
  return because;
}

/** Use by colony size has been published between these numbers [bees]. [harbo-1983] */
const FEWEST_MEASURED = 4400;
const MOST_MEASURED = 34_000;

export function datesOf(index: Spread, fromDay: number): DateSpread {
  return { p5: dateAt(index.p5, fromDay), p50: dateAt(index.p50, fromDay), p95: dateAt(index.p95, fromDay) };
}

function dateAt(index: number, fromDay: number): string | null {
  return Number.isFinite(index) ? isoDateOf(fromDay + Math.floor(index)) : null;
}
