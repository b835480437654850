import {
  type CalendarEvent,
  type DateOdds,
  type Holding,
  SEASON_DATES,
  type SeasonDate,
  type SeasonTask,
  type YardSeasonDates,
} from '@winterheft/core';
import type { Words } from './language.ts';
import { listed } from './text.ts';
import { dayMonth, decimals } from './units.ts';

/** So many labels stand in one entry. */
const LABELS = 30;

const isOver = (state: SeasonTask['state']) => state === 'done' || state === 'not-this-year' || state === 'over';
const capital = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);
const day = (iso: string | null, none: string) => (iso === null ? none : dayMonth(iso));

/**
 * Entries for a calendar: each date of the season on the day half the years have it, each task on the day nine years in ten still
 * allow. What is done, given up or over is handed over as cancelled, so that an older entry goes.
 *
 * Ids come from the yard's own record, so the same task of the same winter is the same entry in every file.
 */
export function calendarEvents(
  of: { readonly seasons: readonly YardSeasonDates[]; readonly tasks: readonly SeasonTask[]; readonly holding: Holding },
  words: Words,
): CalendarEvent[] {
  const several = of.seasons.length > 1;
  return of.seasons.flatMap((season) => {
    const id = of.holding.yards.get(season.yard)?.record ?? season.yard;
    const suffix = several ? ` (${season.yardName})` : '';
    const own = new Set(season.own.map(({ name }) => name));
    const tasks = of.tasks.filter(({ yard }) => yard === season.yard);
    return [
      ...dateEvents(season.dates, { id, year: season.year, suffix, own }, words),
      ...tasks.flatMap((task) => taskEvent(task, { id, year: season.year, suffix, holding: of.holding }, words)),
    ];
  });
}

/** The dates alone, for a place without a journal. */
export function dateEvents(
  dates: Readonly<Record<SeasonDate, DateOdds>>,
  of: { readonly id: string; readonly year: number; readonly suffix?: string; readonly own?: ReadonlySet<SeasonDate> },
  words: Words,
): CalendarEvent[] {
  const w = words.season;
  return SEASON_DATES.flatMap((name) => {
    const { p10, p50, p90 } = dates[name];
    if (p50 === null) return [];
    return {
      uid: `${of.id}-${name}-${of.year}@winterheft`,
      from: p50,
      to: p50,
      summary: `${capital(w.names[name])}${of.suffix ?? ''}`,
      description: of.own?.has(name) ? w.calendar.own : w.calendar.date(day(p10, w.none), day(p90, w.none)),
    };
  });
}

function taskEvent(
  task: SeasonTask,
  of: { readonly id: string; readonly year: number; readonly suffix: string; readonly holding: Holding },
  words: Words,
): CalendarEvent[] {
  const w = words.season;
  const { p10, p50, p90 } = task.lastDay;
  const on = task.state === 'put-off' ? task.putOffUntil : (p10 ?? p50);
  if (on === null) return [];
  const labels = task.hives.map((hive) => of.holding.hives.get(hive)?.label ?? hive);
  const { name, why } = w.tasks[task.code];
  return [
    {
      uid: `${of.id}-task-${task.code}-${of.year}@winterheft`,
      from: on,
      to: on,
      summary: `${name}${labels.length === 0 ? '' : `: ${w.colonies(labels.length)}`}${of.suffix}`,
      description: [
        `${capital(why)}.`,
        p10 === p90 ? w.calendar.fixed : w.calendar.task(day(p50, w.none), day(p90, w.none)),
        ...(labels.length === 0 ? [] : [w.calendar.at(listed(labels, 'and', LABELS))]),
        ...(task.hoursNeeded === 0 ? [] : [w.calendar.work(decimals(task.hoursNeeded, 1))]),
      ].join(' '),
      cancelled: isOver(task.state),
    },
  ];
}
