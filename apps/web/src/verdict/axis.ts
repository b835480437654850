import { epochDayOf, partsOf } from '@winterheft/core';

/** A linear axis of days, drawn between two edges [px]. */
export interface Axis {
  readonly fromDay: number;
  readonly toDay: number;
  readonly left: number;
  readonly right: number;
}

export function axisOf(from: string, to: string, edges: { readonly left: number; readonly right: number }): Axis {
  return { fromDay: dayOf(from), toDay: dayOf(to), ...edges };
}

/** Epoch day of an ISO date of the plan. */
export function dayOf(iso: string): number {
  const day = epochDayOf(iso);
  if (day === null) throw new RangeError(`dayOf: "${iso}" is no date`);
  return day;
}

/** Where a date stands [px]; dates outside the axis stand outside its edges. */
export function xOf(axis: Axis, iso: string): number {
  return axis.left + ((dayOf(iso) - axis.fromDay) / (axis.toDay - axis.fromDay)) * (axis.right - axis.left);
}

export interface MonthMark {
  readonly x: number;
  /** 1 to 12. */
  readonly month: number;
  /** Has room for its name before the next mark and the edge. */
  readonly named: boolean;
}

/** First days of months on the axis. Where names would touch, every second or third is named. */
export function monthMarks(axis: Axis, nameWidth: number): readonly MonthMark[] {
  const first = partsOf(axis.fromDay);
  const starts: { readonly x: number; readonly month: number }[] = [];
  for (let n = first.year * 12 + first.month - 1; ; n++) {
    const iso = `${Math.floor(n / 12)}-${String((n % 12) + 1).padStart(2, '0')}-01`;
    const day = dayOf(iso);
    if (day > axis.toDay) break;
    if (day >= axis.fromDay) starts.push({ x: xOf(axis, iso), month: (n % 12) + 1 });
  }
  const least = Math.min(...starts.map((start, i) => (starts[i + 1]?.x ?? Number.POSITIVE_INFINITY) - start.x));
  const every = least >= nameWidth ? 1 : least * 2 >= nameWidth ? 2 : 3;
  return starts.map((start, i) => ({ ...start, named: i % every === 0 && start.x + nameWidth <= axis.right + nameWidth / 2 }));
}

export interface Needles {
  readonly tall: readonly number[];
  readonly short: readonly number[];
  /** How many of the twenty lie beyond the axis. */
  readonly later: number;
}

/** The twenty cases of a colony on the axis: those before their forage tall, the others short. */
export function needlesOf(axis: Axis, cases: readonly (string | null)[], chances: number): Needles {
  const tall: number[] = [];
  const short: number[] = [];
  let later = 0;
  for (const [i, day] of cases.entries()) {
    if (day === null || dayOf(day) > axis.toDay) later++;
    else (i < chances ? tall : short).push(xOf(axis, day));
  }
  return { tall, short, later };
}
