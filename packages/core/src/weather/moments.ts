import { MONTH_STARTS, YEAR_DAYS } from './calendar.ts';
import type { WeatherModel } from './model.ts';
import { bentCorrelation } from './skew.ts';

/** Figures of one month that follow from the model without drawing anything. */
export interface MonthMoments {
  /** Variance of the daily anomaly, averaged over the month [degC^2]. */
  readonly variance: number;
  /** Variance of the monthly mean between years, and what the slow and the fast part each add before bending [degC^2]. */
  readonly varianceOfMean: number;
  readonly slowOfMean: number;
  readonly fastOfMean: number;
  /** Standard deviation of daily means inside the month, n - 1 in the denominator, the slope of the curve included [degC]. */
  readonly sdInMonth: number;
  readonly r1: number;
  readonly r5: number;
}

/** Correlation of the fast part with itself `lag` days before, for each day of the year; row lag, 0 to `lags`. */
export function fastCorrelations(phi1: Float64Array, phi2: Float64Array, lags: number): Float64Array[] {
  const rows = Array.from({ length: lags + 1 }, () => new Float64Array(YEAR_DAYS));
  rows[0]!.fill(1);
  let last = phi1[YEAR_DAYS - 1]! / (1 - phi2[YEAR_DAYS - 1]!);
  for (let day = 0; day < 2 * YEAR_DAYS; day++) {
    const index = day % YEAR_DAYS;
    last = phi1[index]! + phi2[index]! * last;
    rows[1]![index] = last;
  }
  for (let lag = 2; lag <= lags; lag++) {
    for (let day = 0; day < YEAR_DAYS; day++) {
      const [back1, back2] = [(day + YEAR_DAYS - 1) % YEAR_DAYS, (day + YEAR_DAYS - 2) % YEAR_DAYS];
      rows[lag]![day] = phi1[day]! * rows[lag - 1]![back1]! + phi2[day]! * rows[lag - 2]![back2]!;
    }
  }
  return rows;
}

/**
 * Exact second moments of the model, month by month from January.
 *
 * The generator is solved against these, and the checks compare them with published stations; the tests draw
 * 2,000 years to show that what is drawn has them.
 */
export function monthMoments(model: WeatherModel): readonly MonthMoments[] {
  const fast = fastCorrelations(model.phi1, model.phi2, 30);
  const slowPowers = Array.from({ length: 31 }, (_, lag) => model.slowPersistence ** lag);
  const parts = (day: number, lag: number) => {
    const back = (day + YEAR_DAYS - lag) % YEAR_DAYS;
    const scale = model.sdC[day]! * model.sdC[back]!;
    const slow = model.slowWeight[day]! * model.slowWeight[back]! * slowPowers[lag]!;
    const quick = model.fastWeight[day]! * model.fastWeight[back]! * fast[lag]![day]!;
    return { slow: scale * slow, fast: scale * quick, both: scale * bentCorrelation(slow + quick, model.shape[day]!, model.shape[back]!) };
  };
  return Array.from({ length: 12 }, (_, month) => {
    const [from, to] = [MONTH_STARTS[month]!, MONTH_STARTS[month + 1]!];
    const n = to - from;
    const sum = { variance: 0, slow: 0, fast: 0, both: 0, lag1: 0, lag5: 0, back1: 0, back5: 0, curve: 0, curve2: 0 };
    for (let day = from; day < to; day++) {
      sum.variance += model.sdC[day]! ** 2;
      sum.curve += model.meanC[day]!;
      sum.lag1 += parts(day, 1).both;
      sum.lag5 += parts(day, 5).both;
      sum.back1 += model.sdC[(day + YEAR_DAYS - 1) % YEAR_DAYS]! ** 2;
      sum.back5 += model.sdC[(day + YEAR_DAYS - 5) % YEAR_DAYS]! ** 2;
      for (let lag = 0; day - lag >= from; lag++) {
        const pair = parts(day, lag);
        const times = lag === 0 ? 1 : 2;
        sum.slow += times * pair.slow;
        sum.fast += times * pair.fast;
        sum.both += times * pair.both;
      }
    }
    for (let day = from; day < to; day++) sum.curve2 += (model.meanC[day]! - sum.curve / n) ** 2;
    const varianceOfMean = sum.both / (n * n);
    return {
      variance: sum.variance / n,
      varianceOfMean,
      slowOfMean: sum.slow / (n * n),
      fastOfMean: sum.fast / (n * n),
      sdInMonth: Math.sqrt(Math.max(0, sum.variance - n * varianceOfMean + sum.curve2) / (n - 1)),
      r1: sum.variance > 0 ? sum.lag1 / Math.sqrt(sum.variance * sum.back1) : 0,
      r5: sum.variance > 0 ? sum.lag5 / Math.sqrt(sum.variance * sum.back5) : 0,
    };
  });
}
