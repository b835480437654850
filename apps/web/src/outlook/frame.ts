import type { ColonyOutlook, YardDates } from '@winterheft/core';
import { type Axis, axisOf, xOf } from '../verdict/axis.ts';

/** Columns of the chart [px], for a width and a size of text. */
export interface Columns {
  readonly left: number;
  readonly right: number;
  /** Left edges of the columns at the desk; null on a phone. */
  readonly desk: { readonly later: number; readonly chances: number; readonly next: number } | null;
  /** Right edge of the column above or below need. */
  readonly aboveEnd: number;
}

/** Width the point of an open end takes beyond the axis. */
export const POINT = 7;

export function columnsOf(
  width: number,
  { scale, wide, sun }: { readonly scale: number; readonly wide: boolean; readonly sun: boolean },
): Columns {
  if (wide) {
    const letter = sun ? 1.25 * scale : scale;
    const next = width - 250 * letter;
    const aboveEnd = next - 14 * letter;
    const chances = aboveEnd - 80 * letter;
    return { left: 74 * letter, right: chances - 86 * scale, desk: { later: chances - 74 * scale, chances, next }, aboveEnd };
  }
  const left = (sun ? 76 : 54) * scale;
  return { left, right: Math.max(left + 80, width - (sun ? 62 : 50) * scale), desk: null, aboveEnd: width };
}

export interface Forage {
  /** Middle days of the yards shown, earliest first; yards whose days agree share one. */
  readonly days: readonly string[];
  readonly p10: string | null;
  readonly p90: string | null;
}

/** First forage of the yards shown. Days later than the axis are left out. */
export function forageOf(dates: readonly YardDates[], to: string): Forage {
  const odds = dates.map((yard) => yard.dates['firstForage']).filter((one) => one !== undefined);
  const within = (day: string | null): day is string => day !== null && day <= to;
  const days = [...new Set(odds.map((one) => one.p50).filter(within))].sort();
  const starts = odds.map((one) => one.p10).filter(within);
  const ends = odds.map((one) => (within(one.p90) ? one.p90 : to));
  return { days, p10: starts.sort()[0] ?? null, p90: starts.length === 0 ? null : (ends.sort().at(-1) ?? null) };
}

/** Figures stand over the needles where the quiet part of most rows is too short to hold them. */
export function needsTwoLines(lines: readonly ColonyOutlook[], axis: Axis, figuresWidth: number): boolean {
  const firsts = lines
    .map((line) => line.cases?.[0])
    .filter((day) => typeof day === 'string')
    .map((day) => xOf(axis, day))
    .sort((a, b) => a - b);
  const early = firsts[Math.floor(firsts.length / 4)];
  return early !== undefined && early - axis.left < figuresWidth;
}

export function axisFor(columns: Columns, made: { readonly from: string; readonly to: string }): Axis {
  return axisOf(made.from, made.to, { left: columns.left, right: columns.right });
}
