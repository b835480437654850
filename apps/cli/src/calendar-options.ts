import { type CalendarEvent, calendarFile, good, type Result } from '@winterheft/core';
import { english, type Fault } from '@winterheft/words';
import type { Command, Options } from './command.ts';
import { wholeOption } from './option-values.ts';

export const CALENDAR_OPTIONS: NonNullable<Command['options']> = [
  ['--ics', 'print a calendar file (iCalendar) instead; a later one replaces its entries'],
  ['--alarm <days>', 'with --ics: a reminder so many days before'],
];
const ALARM_DAYS = { low: 0, high: 60 };

/**
 * The calendar file asked for, stamped with noon of a day so that the same input gives the same bytes; null: not asked for.
 *
 * `day` is the day the answer is made for.
 */
export function calendarText(
  options: Options,
  of: { readonly name: string; readonly day: string; readonly events: () => readonly CalendarEvent[] },
): Result<string | null, Fault> {
  const alarm = options.alarm === undefined ? good(null) : wholeOption('--alarm', options.alarm, ALARM_DAYS);
  if (!alarm.ok || options.ics !== true) return alarm.ok ? good(null) : alarm;
  return good(
    calendarFile(of.events(), { name: english.season.calendar.name(of.name), stamp: `${of.day}T12:00:00Z`, alarmDays: alarm.value }),
  );
}
