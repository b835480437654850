import { SEASON_DATES, type SeasonDate } from './site-dates.ts';
import type { SeasonTask, TaskCode, TaskState } from './task-types.ts';
import type { YardSeasonDates } from './yard-seasons.ts';

/** A line of the year's sheet for the wall: a date of the season, or the last day of a task. */
export type YearRow = {
  readonly yard: string;
  readonly p10: string | null;
  readonly p50: string;
  readonly p90: string | null;
} & (
  | { readonly kind: 'date'; readonly code: SeasonDate; readonly own: boolean }
  | {
      readonly kind: 'task';
      readonly code: TaskCode;
      readonly from: string | null;
      readonly state: TaskState;
      readonly colonies: number;
      readonly hoursNeeded: number;
    }
);

/**
 * A year in the order of its days: dates that half the years have, and every task with a last day.
 *
 * Tasks finished or given up stay in, with their state, so that the sheet can strike them through.
 */
export function yearRows(seasons: readonly YardSeasonDates[], tasks: readonly SeasonTask[]): readonly YearRow[] {
  const rows: YearRow[] = [];
  for (const season of seasons) {
    for (const code of SEASON_DATES) {
      const { p10, p50, p90 } = season.dates[code];
      if (p50 === null) continue;
      rows.push({ yard: season.yard, kind: 'date', code, p10, p50, p90, own: season.own.some(({ name }) => name === code) });
    }
  }
  for (const task of tasks) {
    const { p10, p50, p90 } = task.lastDay;
    if (p50 === null) continue;
    rows.push({
      yard: task.yard,
      kind: 'task',
      code: task.code,
      p10,
      p50,
      p90,
      from: task.from,
      state: task.state,
      colonies: task.colonies.length,
      hoursNeeded: task.hoursNeeded,
    });
  }
  return rows.sort((a, b) => compare(a.p50, b.p50) || compare(a.kind, b.kind) || compare(a.code, b.code) || compare(a.yard, b.yard));
}

const compare = (a: string, b: string) => (a < b ? -1 : a > b ? 1 : 0);
