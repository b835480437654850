import { phenologyParameters } from '../tables/parameters-phenology.gen.ts';
import { weatherParameters } from '../tables/parameters-weather.gen.ts';
import { epochDayOfParts } from '../units/index.ts';
import { monthOfIndex, winterYearOf, yearIndexOf } from '../weather/index.ts';
import { degreeDays, type HeatMethod } from './heat-sum.ts';

/** Dates read from a series of daily means, in the order of the year. */
export const SEASON_NAMES = [
  'firstFrost',
  'clusterDay',
  'lastFeedingDay',
  'firstFlight',
  'firstPollen',
  'firstForage',
  'lastFrost',
] as const;
export type SeasonName = (typeof SEASON_NAMES)[number];

/** Epoch days; null where the series does not reach far enough or the event does not come. */
export type SeasonDates = Readonly<Record<SeasonName, number | null>>;

/** One year's daily means without gaps. */
export interface DailySeries {
  /** [degC] days, oldest first; may be a view of one member of a drawn ensemble. */
  readonly meanC: Float64Array;
  /** Epoch day of the first value. */
  readonly fromDay: number;
}

export interface SeasonRules {
  /** Mean daily maximum minus minimum by month, from January [degC]; a day's extremes are its mean plus and minus half of it. */
  readonly rangeC: readonly number[];
  /** First year of the winter asked for. Left out: the winter the series begins in. */
  readonly winterYear?: number;
  /** Heat sum of this member; left out: the published mean. */
  readonly forageSumCd?: number;
  /** How the heat of a day is counted; the published sums are counted by `average`. */
  readonly heatMethod?: HeatMethod;
  /** The keeper's own dates, which overrule what is computed. */
  readonly own?: Partial<Record<SeasonName, number>>;
}

/**
 * The season's dates in one winter of daily means.
 *
 * firstFrost      first day from 15 July with a daily minimum at or below 0 degC [NWS-FROST]
 * clusterDay      first day of the first spell from 1 August whose maxima stay below 14 degC [CLUSTER-57F]
 * lastFeedingDay  last day until 31 December that ends a spell with night-day means of 10 degC or more [SYRUP-LIMIT]
 * firstFlight     first day from 1 February with a maximum of 10 degC or more [FLIGHT-KOVAC]
 * firstPollen     heat sum of red maple's first bloom since 1 January [OSU-MAPLE]
 * firstForage     heat sum of apple's first blossom since 1 January [NEWA-APPLE]
 * lastFrost       last day until 14 July with a daily minimum at or below 0 degC [NWS-FROST]
 *
 * A spell is `settledDays` days in a row. Daily extremes are the mean and half the month's usual range: single nights are
 * colder and warmer than that.
 */
export function seasonDates(series: DailySeries, rules: SeasonRules): SeasonDates {
  const p = phenologyParameters;
  const year = rules.winterYear ?? winterYearOf(series.fromDay);
  const frostC = weatherParameters.frostC.value;
  const split = (of: number) => epochDayOfParts(of, 1, 1) + Math.round(p.frostSplitDayOfYear.value) - 1;
  const newYear = epochDayOfParts(year + 1, 1, 1);
  const day = reader(series, rules.rangeC);
  const autumn = { from: epochDayOfParts(year, 8, 1), to: newYear - 1 };
  const spring = { from: newYear, to: split(year + 1) - 1 };
  const sum = (rule: { baseC: number; sumCd: number }) => heatDay(day, { ...rule, ...spring, method: rules.heatMethod ?? 'average' });
  return {
    firstFrost: day.first({ from: split(year), to: newYear - 1 }, (d) => day.minC(d) <= frostC),
    clusterDay: firstSpell(day, autumn, (d) => day.maxC(d) < p.clusterMaxC.value),
    lastFeedingDay: lastSpell(day, autumn, (d) => day.meanC(d) >= p.feedingMeanC.value),
    firstFlight: day.first(
      { from: newYear + Math.round(p.flightFromDayOfYear.value) - 1, to: spring.to },
      (d) => day.maxC(d) >= p.flightMaxC.value,
    ),
    firstPollen: sum({ baseC: p.pollenBaseC.value, sumCd: p.pollenSumCd.value }),
    firstForage: sum({ baseC: p.forageBaseC.value, sumCd: rules.forageSumCd ?? p.forageSumCd.value }),
    lastFrost: day.last(spring, (d) => day.minC(d) <= frostC),
    ...rules.own,
  };
}

interface Window {
  readonly from: number;
  readonly to: number;
}

/** Looks into the series by epoch day. A first event needs the window's beginning, a last one the whole of it. */
function reader(series: DailySeries, rangeC: readonly number[]) {
  const end = series.fromDay + series.meanC.length - 1;
  const meanC = (d: number) => series.meanC[d - series.fromDay]!;
  const halfRange = (d: number) => rangeC[monthOfIndex(yearIndexOf(d))]! / 2;
  return {
    end,
    starts: (window: Window) => series.fromDay <= window.from,
    covers: (window: Window) => series.fromDay <= window.from && end >= window.to,
    meanC,
    maxC: (d: number) => meanC(d) + halfRange(d),
    minC: (d: number) => meanC(d) - halfRange(d),
    first(window: Window, is: (d: number) => boolean): number | null {
      if (series.fromDay > window.from) return null;
      for (let d = window.from; d <= Math.min(window.to, end); d++) if (is(d)) return d;
      return null;
    },
    last(window: Window, is: (d: number) => boolean): number | null {
      if (series.fromDay > window.from || end < window.to) return null;
      for (let d = window.to; d >= window.from; d--) if (is(d)) return d;
      return null;
    },
  };
}

type Reader = ReturnType<typeof reader>;

/** First day of the first run of `settledDays` days. */
function firstSpell(day: Reader, window: Window, is: (d: number) => boolean): number | null {
  if (!day.starts(window)) return null;
  let run = 0;
  for (let d = window.from; d <= Math.min(window.to, day.end); d++) {
    run = is(d) ? run + 1 : 0;
    if (run >= phenologyParameters.settledDays.value) return d - run + 1;
  }
  return null;
}

/** Last day of the last run of `settledDays` days or more. */
function lastSpell(day: Reader, window: Window, is: (d: number) => boolean): number | null {
  if (!day.covers(window)) return null;
  let run = 0;
  for (let d = window.to; d >= window.from; d--) {
    run = is(d) ? run + 1 : 0;
    if (run >= phenologyParameters.settledDays.value) return d + run - 1;
  }
  return null;
}

function heatDay(day: Reader, rule: Window & { baseC: number; sumCd: number; method: HeatMethod }): number | null {
  let sum = 0;
  return day.first(rule, (d) => {
    sum += degreeDays(day.maxC(d), day.minC(d), rule.baseC, rule.method);
    return sum >= rule.sumCd;
  });
}
