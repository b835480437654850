import type { Colony, Holding } from '../holding/index.ts';
import { epochDayOf, epochDayOfParts } from '../units/index.ts';
import type { SeasonDate } from './site-dates.ts';
import type { TaskFacts } from './task-types.ts';
import type { YardSeasonDates } from './yard-seasons.ts';

/** One yard on one day, as its tasks see it. */
export interface TaskContext {
  readonly holding: Holding;
  readonly facts: TaskFacts;
  readonly season: YardSeasonDates;
  readonly today: number;
  readonly todayIso: string;
  /** First year of the winter; its first day, its 1 August and the new year in it as epoch days. */
  readonly year: number;
  readonly start: number;
  readonly august: number;
  readonly newYear: number;
  /** Colonies of the yard that live in a hive, and those that died in this winter. */
  readonly living: readonly Colony[];
  readonly dead: readonly Colony[];
  readonly ids: ReadonlySet<string>;
  /** Day of a date; where that share of the years has none, beyond every day. */
  dayOf(name: SeasonDate, share?: 'p10' | 'p50' | 'p90'): number;
}

export function contextOf(
  holding: Holding,
  of: { readonly season: YardSeasonDates; readonly facts: TaskFacts; readonly today: string },
): TaskContext {
  const { season, facts } = of;
  const { year } = season;
  const here = [...holding.colonies.values()].filter(({ yard }) => yard === season.yard);
  const living = here.filter(({ ended, hive }) => ended === null && hive !== null);
  const start = epochDayOfParts(year, 6, 1);
  return {
    holding,
    facts,
    season,
    today: epochDayOf(of.today)!,
    todayIso: of.today,
    year,
    start,
    august: epochDayOfParts(year, 8, 1),
    newYear: epochDayOfParts(year + 1, 1, 1),
    living,
    dead: here.filter(({ ended }) => ended !== null && ended.how === 'died' && ended.day >= start),
    ids: new Set(living.map(({ id }) => id)),
    dayOf(name, share = 'p50') {
      const date = season.dates[name][share];
      if (date !== null) return epochDayOf(date)!;
      return name.startsWith('last') ? Number.NEGATIVE_INFINITY : Number.POSITIVE_INFINITY;
    },
  };
}
