import type { DateOdds } from '../phenology/index.ts';
import { epochDayOf, isoDateOf } from '../units/index.ts';
import { SEASON_DATES, type SeasonDate } from './site-dates.ts';
import type { DayCases } from './task-types.ts';
import type { YardSeasonDates } from './yard-seasons.ts';

/** A last day with its doubt. */
export interface LastDay {
  readonly odds: DateOdds;
  readonly cases: DayCases;
  /** A case without the day is one in which it is always still time; else one in which it is always too late. */
  readonly noneIsTime: boolean;
}

/** A date of the season as a last day, so many days before (below 0) or after it. */
export function lastDayOf(season: Pick<YardSeasonDates, 'dates' | 'cases'>, name: SeasonDate, shiftDays = 0): LastDay {
  const { p10, p50, p90 } = season.dates[name];
  return {
    odds: { p10: shifted(p10, shiftDays), p50: shifted(p50, shiftDays), p90: shifted(p90, shiftDays) },
    cases: casesShifted(season.cases[name], shiftDays),
    noneIsTime: !name.startsWith('last'),
  };
}

/** A day that is certain. */
export function fixedDay(day: number): LastDay {
  const date = isoDateOf(day);
  return { odds: { p10: date, p50: date, p90: date }, cases: Array.from({ length: 20 }, () => date), noneIsTime: false };
}

function casesShifted(cases: DayCases, days: number): DayCases {
  return cases.map((date) => shifted(date, days));
}

function shifted(date: string | null, days: number): string | null {
  return date === null ? null : isoDateOf(epochDayOf(date)! + days);
}

/** Chance that a day is not yet past, from twenty cases. */
export function stillTimeFrac(last: LastDay, today: string): number {
  return last.cases.filter((date) => (date === null ? last.noneIsTime : date >= today)).length / last.cases.length;
}

export function isSeasonDate(name: string): name is SeasonDate {
  return (SEASON_DATES as readonly string[]).includes(name);
}
