import { partsOf } from '../units/index.ts';

/** One month of the year over all years of a record. */
export interface RecordMonth {
  /** Mean over the years of the monthly means [degC]; NaN without years. */
  readonly meanC: number;
  /** sd of the monthly mean between years, n - 1 below; 0 for one year [degC]. */
  readonly sdMeanC: number;
  /** sd of the daily means inside a month, pooled over the years [degC]. */
  readonly sdDailyC: number;
  /** Monthly mean by year. */
  readonly years: readonly number[];
}

/** Days with a mean that make a month of one year count. */
const LEAST_DAYS = 24;

/** What a record says of each month, from January; months with few days are left out. */
export function meansByMonth(record: { readonly fromDay: number; readonly meanC: Float64Array }): readonly RecordMonth[] {
  const cells = new Map<number, { n: number; sum: number; square: number }>();
  record.meanC.forEach((value, d) => {
    if (Number.isNaN(value)) return;
    const { year, month } = partsOf(record.fromDay + d);
    const key = year * 12 + month - 1;
    const cell = cells.get(key) ?? { n: 0, sum: 0, square: 0 };
    cell.n++;
    cell.sum += value;
    cell.square += value * value;
    cells.set(key, cell);
  });
  return Array.from({ length: 12 }, (_, month) => {
    const whole = [...cells].filter(([key, cell]) => key % 12 === month && cell.n >= LEAST_DAYS).map(([, cell]) => cell);
    const years = whole.map(({ n, sum }) => sum / n);
    const meanC = years.reduce((sum, value) => sum + value, 0) / years.length;
    const between = years.reduce((sum, value) => sum + (value - meanC) ** 2, 0);
    const inside = whole.reduce((sum, { n, sum: s, square }) => sum + square - (s * s) / n, 0);
    const degrees = whole.reduce((sum, { n }) => sum + n - 1, 0);
    return {
      meanC,
      sdMeanC: years.length > 1 ? Math.sqrt(between / (years.length - 1)) : 0,
      sdDailyC: Math.sqrt(Math.max(0, inside) / degrees),
      years,
    };
  });
}
