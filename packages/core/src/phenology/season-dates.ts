import { phenologyParameters } from '../tables/parameters-phenology.gen.ts';
import { weatherParameters } from '../tables/parameters-weather.gen.ts';
import { epochDayOfParts } from '../units/index.ts';
import { winterYearOf } from '../weather/index.ts';
import { degreeDays, type HeatMethod } from './heat-sum.ts';
import { type DailySeries, type DayWindow, readerOf, type SeriesReader } from './series-reader.ts';

/** Dates read from a series of daily means, in the order of the year. */
export const SEASON_NAMES = [
  'firstFrost',
  'guardDay',
  'lastGluingDay',
  'lastFrameDay',
  'clusterDay',
  'lastFeedingDay',
  'lastFlight',
  'coldDay',
  'cleansingFlight',
  'firstFlight',
  'firstPollen',
  'firstForage',
  'lastFrost',
] as const;
export type SeasonName = (typeof SEASON_NAMES)[number];

/** Epoch days; null where the series does not reach far enough or the event does not come. */
export type SeasonDates = Readonly<Record<SeasonName, number | null>>;

export interface SeasonRules {
  /** Mean daily maximum minus minimum by month, from January [degC]; a day's extremes are its mean plus and minus half of it. */
  readonly rangeC: readonly number[];
  /** First year of the winter asked for. Left out: the winter the series begins in. */
  readonly winterYear?: number;
  /** Heat sums of this member; left out: the published means. */
  readonly pollenSumCd?: number;
  readonly forageSumCd?: number;
  /** How the heat of a day is counted; the published sums are counted by `average`. */
  readonly heatMethod?: HeatMethod;
  /** The keeper's own dates, which overrule what is computed. */
  readonly own?: Partial<Record<SeasonName, number>>;
}

/**
 * The season's dates in one winter of daily means.
 *
 * firstFrost       first day from 15 July with a daily minimum at or below 0 degC [NWS-FROST]
 * guardDay         first day of the first spell from 1 August whose nights reach 4 degC [mouse-nights]
 * lastGluingDay    last day until 31 December that ends a spell of afternoons of 20 degC [PROPOLIS-20C]
 * lastFrameDay     last day until 31 December that ends a spell of afternoons of 15 degC [opening-limits]
 * clusterDay       first day of the first spell from 1 August whose maxima stay below 14 degC [CLUSTER-57F]
 * lastFeedingDay   last day until 31 December that ends a spell with night-day means of 10 degC or more [SYRUP-LIMIT]
 * lastFlight       last day until 31 December with a maximum of 10 degC or more [FLIGHT-KOVAC]
 * coldDay          first day of the first spell from 1 August with means below -10 degC, common practice
 * cleansingFlight  first day from 1 January with a maximum of 9 degC or more, from memory
 * firstFlight      first day from 1 February with a maximum of 10 degC or more [FLIGHT-KOVAC]
 * firstPollen      heat sum of red maple's first bloom since 1 January [OSU-MAPLE]
 * firstForage      heat sum of apple's first blossom since 1 January [NEWA-APPLE]
 * lastFrost        last day until 14 July with a daily minimum at or below 0 degC [NWS-FROST]
 *
 * A spell is `settledDays` days in a row. Daily extremes are the mean and half the month's usual range: single nights are
 * colder and warmer than that.
 */
export function seasonDates(series: DailySeries, rules: SeasonRules): SeasonDates {
  const p = phenologyParameters;
  const year = rules.winterYear ?? winterYearOf(series.fromDay);
  const frostC = weatherParameters.frostC.value;
  const newYear = epochDayOfParts(year + 1, 1, 1);
  const day = readerOf(series, rules.rangeC);
  const autumn = { from: epochDayOfParts(year, 8, 1), to: newYear - 1 };
  const spring = { from: newYear, to: frostSplit(year + 1) - 1 };
  const fromDayOfYear = (row: { readonly value: number }) => ({ from: newYear + Math.round(row.value) - 1, to: spring.to });
  const method = rules.heatMethod ?? 'average';
  return {
    firstFrost: day.first({ from: frostSplit(year), to: newYear - 1 }, (d) => day.minC(d) <= frostC),
    guardDay: day.firstSpell(autumn, (d) => day.minC(d) <= p.guardMinC.value),
    lastGluingDay: day.lastSpell(autumn, (d) => day.maxC(d) >= p.gluingMaxC.value),
    lastFrameDay: day.lastSpell(autumn, (d) => day.maxC(d) >= p.frameMinC.value),
    clusterDay: day.firstSpell(autumn, (d) => day.maxC(d) < p.clusterMaxC.value),
    lastFeedingDay: day.lastSpell(autumn, (d) => day.meanC(d) >= p.feedingMeanC.value),
    lastFlight: day.last(autumn, (d) => day.maxC(d) >= p.flightMaxC.value),
    coldDay: day.firstSpell({ from: autumn.from, to: spring.to }, (d) => day.meanC(d) < p.coldMeanC.value),
    cleansingFlight: day.first(fromDayOfYear(p.cleansingFromDayOfYear), (d) => day.maxC(d) >= p.cleansingMaxC.value),
    firstFlight: day.first(fromDayOfYear(p.flightFromDayOfYear), (d) => day.maxC(d) >= p.flightMaxC.value),
    firstPollen: heatDay(day, { ...spring, baseC: p.pollenBaseC.value, sumCd: rules.pollenSumCd ?? p.pollenSumCd.value, method }),
    firstForage: heatDay(day, { ...spring, baseC: p.forageBaseC.value, sumCd: rules.forageSumCd ?? p.forageSumCd.value, method }),
    lastFrost: day.last(spring, (d) => day.minC(d) <= frostC),
    ...rules.own,
  };
}

/** Epoch day that parts a year's last frosts from its first ones. */
function frostSplit(year: number): number {
  return epochDayOfParts(year, 1, 1) + Math.round(phenologyParameters.frostSplitDayOfYear.value) - 1;
}

function heatDay(day: SeriesReader, rule: DayWindow & { baseC: number; sumCd: number; method: HeatMethod }): number | null {
  let sum = 0;
  return day.first(rule, (d) => {
    sum += degreeDays(day.maxC(d), day.minC(d), rule.baseC, rule.method);
    return sum >= rule.sumCd;
  });
}
