import { weatherParameters } from '../tables/parameters-weather.gen.ts';
import { MONTH_STARTS, YEAR_DAYS } from './calendar.ts';
import type { Climate } from './climate.ts';
import { type MonthMoments, monthMoments } from './moments.ts';
import { type BentShape, bendOfSkew, bentShape } from './skew.ts';
import { blendedMonths, yearlyCurve } from './yearly-curve.ts';

/**
 * Daily coefficients of the stochastic years, 365 values each, 1 January first.
 *
 * anomaly = sdC * bend(slowWeight * S + fastWeight * F);  S first order, F second order, both mean 0 and sd 1
 */
export interface WeatherModel {
  readonly meanC: Float64Array;
  readonly sdC: Float64Array;
  readonly slowPersistence: number;
  readonly slowWeight: Float64Array;
  readonly fastWeight: Float64Array;
  readonly phi1: Float64Array;
  readonly phi2: Float64Array;
  /** By day of the year; days of the same bend share theirs. */
  readonly shape: readonly BentShape[];
  readonly placeErrorSdC: number;
}

/** What is solved for, one value per month. */
interface Knobs {
  readonly variance: number[];
  readonly slowShare: number[];
  readonly fast1: number[];
  readonly fast5: number[];
}

const ROUNDS = 24;
/** Least share of the printed scatter inside a month that is left to weather once the season's slope is taken out. */
const LEAST_WEATHER_SHARE = 0.3;
const MOST_SLOW_SHARE = 0.85;
const PHI2_RANGE = { low: -0.55, high: 0.6 } as const;

/**
 * The generator of stochastic years for a climate.
 *
 * Scatter inside months, correlation from day to day, scatter of monthly means between years and skewness depend
 * on one another, so they are solved together against the exact moments of the model: variance and the slow share
 * are corrected month by month until both scatters are met, the second-order part until the correlations at 1 and 5
 * days are. Where a month asks for a correlation at 5 days that cannot go with the other figures, that one gives way.
 */
export function weatherModel(climate: Climate): WeatherModel {
  const meanC = yearlyCurve(climate.monthlyMeanC);
  const target = targets(climate, meanC);
  const shape = shapesOf(blendedMonths(climate.skew.map(bendOfSkew)));
  const knobs: Knobs = {
    variance: target.map((t) => t.variance),
    slowShare: target.map((t) => Math.min(MOST_SLOW_SHARE, t.ratio)),
    fast1: [...climate.r1],
    fast5: [...climate.r5],
  };
  let model = assemble(meanC, shape, climate.placeErrorSdC, knobs);
  if (target.every((t) => t.variance === 0)) return model;
  for (let round = 0; round < ROUNDS; round++) {
    const got = monthMoments(model);
    for (let month = 0; month < 12; month++) adjust(knobs, month, target[month]!, got[month]!, climate);
    model = assemble(meanC, shape, climate.placeErrorSdC, knobs);
  }
  return model;
}

interface Target {
  /** Variance of the daily anomaly [degC^2] and the part of it that is left in the monthly mean. */
  readonly variance: number;
  readonly ratio: number;
}

/** The printed scatter inside a month holds the season's slope and not the scatter of the month itself: take one out, put the other in. */
function targets(climate: Climate, meanC: Float64Array): readonly Target[] {
  return Array.from({ length: 12 }, (_, month) => {
    const [from, to] = [MONTH_STARTS[month]!, MONTH_STARTS[month + 1]!];
    const n = to - from;
    const middle = climate.monthlyMeanC[month]!;
    let slope = 0;
    for (let day = from; day < to; day++) slope += (meanC[day]! - middle) ** 2 / (n - 1);
    const printed = climate.dailySdC[month]! ** 2;
    const inside = Math.max(printed - slope, LEAST_WEATHER_SHARE * printed) * ((n - 1) / n);
    const between = climate.monthlySdMeanC[month]! ** 2;
    const variance = inside + between;
    return { variance, ratio: variance > 0 ? between / variance : 0 };
  });
}

function adjust(knobs: Knobs, month: number, target: Target, got: MonthMoments, climate: Climate): void {
  if (got.variance > 0) knobs.variance[month] = (knobs.variance[month]! * target.variance) / got.variance;
  const share = knobs.slowShare[month]!;
  const perSlow = share > 0.001 ? got.slowOfMean / (share * got.variance) : 0.65;
  const perFast = got.fastOfMean / ((1 - share) * got.variance);
  const bent = got.varianceOfMean / (got.slowOfMean + got.fastOfMean);
  const wanted = clamp((target.ratio / bent - perFast) / Math.max(0.1, perSlow - perFast), 0, MOST_SLOW_SHARE);
  knobs.slowShare[month] = 0.5 * (share + wanted);
  knobs.fast1[month] = clamp(knobs.fast1[month]! + (0.5 * (climate.r1[month]! - got.r1)) / (1 - share), 0, 0.95);
  const excess = target.ratio < got.varianceOfMean / got.variance && share < 0.02 ? 0.05 : 0;
  knobs.fast5[month] = clamp(knobs.fast5[month]! + (0.5 * (climate.r5[month]! - got.r5)) / (1 - share) - excess, -0.6, 0.9);
}

function assemble(meanC: Float64Array, shape: readonly BentShape[], placeErrorSdC: number, knobs: Knobs): WeatherModel {
  const second = knobs.fast1.map((r1, month) => secondOrder(r1, knobs.fast5[month]!));
  const slowShare = blendedMonths(knobs.slowShare);
  const fast1 = blendedMonths(knobs.fast1);
  const phi2 = blendedMonths(second);
  return {
    meanC,
    sdC: blendedMonths(knobs.variance.map(Math.sqrt)),
    slowPersistence: Math.exp(-1 / weatherParameters.slowTimeDays.value),
    slowWeight: slowShare.map(Math.sqrt),
    fastWeight: slowShare.map((share) => Math.sqrt(1 - share)),
    phi1: fast1.map((r1, day) => r1 * (1 - phi2[day]!)),
    phi2,
    shape,
    placeErrorSdC,
  };
}

/** Second coefficient of the second-order autoregression with correlation r1 at one day whose correlation at five days comes nearest to r5. */
function secondOrder(r1: number, r5: number): number {
  let { low, high } = PHI2_RANGE as { low: number; high: number };
  for (let i = 0; i < 30; i++) {
    const middle = (low + high) / 2;
    if (fifth(r1, middle) < r5) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

function fifth(r1: number, phi2: number): number {
  const phi1 = r1 * (1 - phi2);
  let [before, now] = [1, r1];
  for (let lag = 2; lag <= 5; lag++) [before, now] = [now, phi1 * now + phi2 * before];
  return now;
}

function shapesOf(bends: Float64Array): readonly BentShape[] {
  const known = new Map<number, BentShape>();
  return Array.from(bends, (bend) => {
    const shape = known.get(bend) ?? bentShape(bend);
    known.set(bend, shape);
    return shape;
  });
}

function clamp(value: number, low: number, high: number): number {
  return Math.min(high, Math.max(low, value));
}

/** Year-long arrays a drawing needs beside the model: the innovation that keeps the fast part at sd 1 on every day. */
export function innovations(model: WeatherModel): Float64Array {
  const sigma = new Float64Array(YEAR_DAYS);
  let last = model.phi1[0]! / (1 - model.phi2[0]!);
  for (let day = 0; day < 2 * YEAR_DAYS; day++) {
    const index = day % YEAR_DAYS;
    const [a, b] = [model.phi1[index]!, model.phi2[index]!];
    sigma[index] = Math.sqrt(Math.max(0, 1 - a * a - b * b - 2 * a * b * last));
    last = a + b * last;
  }
  return sigma;
}
