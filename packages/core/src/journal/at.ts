import { epochDayOf } from '../units/index.ts';
import { isoDate, type Of, object, pattern } from './shape.ts';

const clockTime = pattern('time', /^([01]\d|2[0-3]):[0-5]\d$/);
const zoneOffset = pattern('zone', /^[+-](0\d|1[0-4]):[0-5]\d$/);

/** When something happened in the yard: local date, and where known local time and offset from UTC. */
export const at = object({ date: isoDate }, { time: clockTime, zone: zoneOffset });
export type At = Of<typeof at>;

/** Local epoch day of `at`. */
export function dayOf(when: At): number {
  const day = epochDayOf(when.date);
  if (day === null) throw new RangeError(`dayOf: date is "${when.date}", must be a calendar date from 1900 to 2199`);
  return day;
}

/**
 * The instant of `at`, for ordering what happened.
 *
 * returns     minutes since 1970-01-01T00:00Z; a date without a time counts as local noon, one without a zone as +00:00
 */
export function minuteOf(when: At): number {
  return dayOf(when) * 1440 + minutesOf(when.time ?? '12:00') - (when.zone === undefined ? 0 : zoneMinutesOf(when.zone));
}

function minutesOf(clock: string): number {
  return Number(clock.slice(0, 2)) * 60 + Number(clock.slice(3, 5));
}

function zoneMinutesOf(zone: string): number {
  const minutes = minutesOf(zone.slice(1));
  return zone.startsWith('-') ? -minutes : minutes;
}

/** Code unit order, the same on every machine and in every language. */
export function compareText(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
