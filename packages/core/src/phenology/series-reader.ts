import { phenologyParameters } from '../tables/parameters-phenology.gen.ts';
import { monthOfIndex, yearIndexOf } from '../weather/index.ts';

/** One year's daily means without gaps. */
export interface DailySeries {
  /** [degC] days, oldest first; may be a view of one member of a drawn ensemble. */
  readonly meanC: Float64Array;
  /** Epoch day of the first value. */
  readonly fromDay: number;
}

/** Epoch days, both inclusive. */
export interface DayWindow {
  readonly from: number;
  readonly to: number;
}

/** Looks into a series by epoch day. A first event needs the window's beginning, a last one the whole of it. */
export interface SeriesReader {
  meanC(d: number): number;
  maxC(d: number): number;
  minC(d: number): number;
  first(window: DayWindow, is: (d: number) => boolean): number | null;
  last(window: DayWindow, is: (d: number) => boolean): number | null;
  /** First day of the first run of `settledDays` days. */
  firstSpell(window: DayWindow, is: (d: number) => boolean): number | null;
  /** Last day of the last run of `settledDays` days or more. */
  lastSpell(window: DayWindow, is: (d: number) => boolean): number | null;
}

/**
 * Reads dates from daily means; a day's extremes are its mean plus and minus half of the month's usual range.
 *
 * rangeC      mean daily maximum minus minimum by month, from January [degC]
 * returns     epoch days; null where the series does not reach far enough or the event does not come
 */
export function readerOf(series: DailySeries, rangeC: readonly number[]): SeriesReader {
  const end = series.fromDay + series.meanC.length - 1;
  const meanC = (d: number) => series.meanC[d - series.fromDay]!;
  const halfRange = (d: number) => rangeC[monthOfIndex(yearIndexOf(d))]! / 2;
  const starts = (window: DayWindow) => series.fromDay <= window.from;
  const covers = (window: DayWindow) => starts(window) && end >= window.to;
  return {
    meanC,
    maxC: (d) => meanC(d) + halfRange(d),
    minC: (d) => meanC(d) - halfRange(d),
    first(window, is) {
      if (!starts(window)) return null;
      for (let d = window.from; d <= Math.min(window.to, end); d++) if (is(d)) return d;
      return null;
    },
    last(window, is) {
      if (!covers(window)) return null;
      for (let d = window.to; d >= window.from; d--) if (is(d)) return d;
      return null;
    },
    firstSpell(window, is) {
      if (!starts(window)) return null;
      let run = 0;
      for (let d = window.from; d <= Math.min(window.to, end); d++) {
        run = is(d) ? run + 1 : 0;
        if (run >= phenologyParameters.settledDays.value) return d - run + 1;
      }
      return null;
    },
    lastSpell(window, is) {
      if (!covers(window)) return null;
      let run = 0;
      for (let d = window.to; d >= window.from; d--) {
        run = is(d) ? run + 1 : 0;
        if (run >= phenologyParameters.settledDays.value) return d + run - 1;
      }
      return null;
    },
  };
}
