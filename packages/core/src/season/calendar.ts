import { epochDayOf, isoDateOf } from '../units/index.ts';

/** One entry of a calendar file: whole days. */
export interface CalendarEvent {
  /** The same in every file for the same thing, so that a later file replaces it. */
  readonly uid: string;
  /** First and last day, both inclusive [ISO date]. */
  readonly from: string;
  readonly to: string;
  readonly summary: string;
  readonly description: string;
  /** Done or given up: a calendar that takes the file in strikes it. */
  readonly cancelled?: boolean | undefined;
}

/** Octets of a line before its break. Source: [rfc-5545] 3.1. */
const LINE_OCTETS = 75;
/** Sequence numbers count minutes from here, so that a later file always has a higher one. */
const SEQUENCE_FROM = '2020-01-01';

/**
 * A calendar file of whole-day entries.
 *
 * Importing a later file of the same things replaces them: ids stay, the sequence number rises with the stamp. An entry that is no
 * longer in a later file stays in the keeper's calendar: hand it over as cancelled instead.
 *
 * events   in any order; dates that exist, `to` not before `from`
 * stamp    moment the file is made, `2026-09-18T12:00:00Z` with or without fractions of a second
 * alarm    days before the first day at which the calendar reminds; null: no reminder
 * returns  text with CRLF line ends
 * throws   RangeError for a date or a stamp that is none, or a last day before the first
 * source   [rfc-5545]
 * checked  calendar.test.ts: read back by a library of its own
 */
export function calendarFile(
  events: readonly CalendarEvent[],
  of: { readonly name: string; readonly stamp: string; readonly alarmDays?: number | null | undefined },
): string {
  const stamp = stampOf(of.stamp);
  const lines = [
    'BEGIN:VCALENDAR',
    'VERSION:2.0',
    'PRODID:-//Winterheft//season//EN',
    'CALSCALE:GREGORIAN',
    'METHOD:PUBLISH',
    `X-WR-CALNAME:${escaped(of.name)}`,
    ...events.flatMap((event) => eventLines(event, { stamp, alarmDays: of.alarmDays ?? null })),
    'END:VCALENDAR',
  ];
  return lines.map((line) => `${folded(line)}\r\n`).join('');
}

function eventLines(event: CalendarEvent, of: { stamp: Stamp; alarmDays: number | null }): readonly string[] {
  const [from, to] = [dayOf(event.from), dayOf(event.to)];
  if (to < from) throw new RangeError(`calendarFile: to is ${event.to}, must not be before from, ${event.from}`);
  const alarm =
    of.alarmDays === null || event.cancelled === true
      ? []
      : [
          'BEGIN:VALARM',
          'ACTION:DISPLAY',
          `DESCRIPTION:${escaped(event.summary)}`,
          `TRIGGER:${of.alarmDays === 0 ? 'PT0S' : `-P${of.alarmDays}D`}`,
          'END:VALARM',
        ];
  return [
    'BEGIN:VEVENT',
    `UID:${escaped(event.uid)}`,
    `DTSTAMP:${of.stamp.text}`,
    `SEQUENCE:${of.stamp.sequence}`,
    `DTSTART;VALUE=DATE:${dateText(from)}`,
    `DTEND;VALUE=DATE:${dateText(to + 1)}`,
    `SUMMARY:${escaped(event.summary)}`,
    ...(event.description === '' ? [] : [`DESCRIPTION:${escaped(event.description)}`]),
    'TRANSP:TRANSPARENT',
    `STATUS:${event.cancelled === true ? 'CANCELLED' : 'CONFIRMED'}`,
    ...alarm,
    'END:VEVENT',
  ];
}

interface Stamp {
  readonly text: string;
  readonly sequence: number;
}

function stampOf(stamp: string): Stamp {
  const match = /^(\d{4}-\d{2}-\d{2})T([01]\d|2[0-3]):([0-5]\d):([0-5]\d)(?:\.\d+)?Z$/.exec(stamp);
  const day = match === null ? null : epochDayOf(match[1]!);
  if (match === null || day === null)
    throw new RangeError(`calendarFile: stamp is "${stamp}", must be an instant such as 2026-09-18T12:00:00Z`);
  const minutes = (day - epochDayOf(SEQUENCE_FROM)!) * 1440 + Number(match[2]) * 60 + Number(match[3]);
  return { text: `${dateText(day)}T${match[2]}${match[3]}${match[4]}Z`, sequence: Math.max(0, minutes) };
}

function dayOf(iso: string): number {
  const day = epochDayOf(iso);
  if (day === null) throw new RangeError(`calendarFile: "${iso}" is no calendar date`);
  return day;
}

const dateText = (day: number) => isoDateOf(day).replaceAll('-', '');

/** Backslash, semicolon, comma and line breaks; other control characters cannot stand in a calendar file and are left out. */
function escaped(text: string): string {
  return text
    .replaceAll('\\', '\\\\')
    .replaceAll(';', '\\;')
    .replaceAll(',', '\\,')
    .replace(/\r\n|\r|\n/g, '\\n')
    .replace(/\p{Cc}/gu, (control) => (control === '\t' ? control : ''));
}

/** Breaks a line after 75 octets of UTF-8, never inside a character; what follows begins with a space, which counts. */
function folded(line: string): string {
  let text = '';
  let octets = 0;
  for (const character of line) {
    const size = octetsOf(character);
    if (octets + size > LINE_OCTETS) {
      text += '\r\n ';
      octets = 1;
    }
    text += character;
    octets += size;
  }
  return text;
}

function octetsOf(character: string): number {
  const code = character.codePointAt(0)!;
  return code < 0x80 ? 1 : code < 0x800 ? 2 : code < 0x10000 ? 3 : 4;
}
