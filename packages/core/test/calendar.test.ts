import ICAL from 'ical.js';
import { describe, expect, test } from 'vitest';
import { type CalendarEvent, calendarFile } from '../src/season/index.ts';

const STAMP = '2026-09-18T12:00:00Z';
const NAMES = 'Bienenstände Süd; Reihe 1, 2 und 3 \\ hinten — '.repeat(5);

const one: CalendarEvent = { uid: 'a-feed-2026@winterheft', from: '2026-09-25', to: '2026-09-25', summary: 'Feed', description: 'Why.' };
const hard: CalendarEvent = {
  uid: 'b-unite-2026@winterheft',
  from: '2028-02-28',
  to: '2028-02-29',
  summary: `Unite; ${NAMES}`,
  description: `First line\nsecond, with 🐝 and "quotes"\r\n${NAMES}`,
};

/** Read back by a parser of somebody else: the properties of every entry. */
function read(text: string) {
  const calendar = new ICAL.Component(ICAL.parse(text) as unknown[] as ConstructorParameters<typeof ICAL.Component>[0]);
  return calendar.getAllSubcomponents('vevent').map((entry) => {
    const event = new ICAL.Event(entry);
    return {
      uid: event.uid,
      summary: event.summary,
      description: event.description,
      start: event.startDate.toString(),
      end: event.endDate.toString(),
      isDate: event.startDate.isDate,
      sequence: event.sequence,
      status: String(entry.getFirstPropertyValue('status')),
      stamp: String(entry.getFirstPropertyValue('dtstamp')),
      alarms: entry.getAllSubcomponents('valarm').map((alarm) => String(alarm.getFirstPropertyValue('trigger'))),
    };
  });
}

describe('a calendar file', () => {
  test('read back by another parser every entry is what was put in: whole days, the end the day after', () => {
    const [first, second] = read(calendarFile([one, hard], { name: 'Home; yard, "1"', stamp: STAMP }));
    expect(first).toEqual({
      uid: one.uid,
      summary: 'Feed',
      description: 'Why.',
      start: '2026-09-25',
      end: '2026-09-26',
      isDate: true,
      sequence: first!.sequence,
      status: 'CONFIRMED',
      stamp: '2026-09-18T12:00:00Z',
      alarms: [],
    });
    expect(second!.summary).toBe(hard.summary);
    expect(second!.description).toBe(hard.description.replaceAll('\r\n', '\n'));
    expect([second!.start, second!.end]).toEqual(['2028-02-28', '2028-03-01']);
  });

  test('no line is longer than 75 octets, every line ends in CR LF, no letter is cut', () => {
    const text = calendarFile([hard], { name: NAMES, stamp: STAMP });
    expect(text.endsWith('\r\n')).toBe(true);
    for (const line of text.slice(0, -2).split('\r\n')) {
      expect(line).not.toMatch(/[\r\n]/);
      expect(new TextEncoder().encode(line).length).toBeLessThanOrEqual(75);
      expect(line).toBe(new TextDecoder().decode(new TextEncoder().encode(line)));
    }
    expect(text.replaceAll('\r\n ', '')).toContain('🐝');
  });

  test('a later file of the same thing has the same id and a higher sequence: a re-import replaces', () => {
    const at = (stamp: string) => read(calendarFile([one], { name: 'Home', stamp }))[0]!;
    const [before, after] = [at('2026-09-18T12:00:00Z'), at('2026-09-18T12:01:00.250Z')];
    expect(after.uid).toBe(before.uid);
    expect(after.sequence).toBeGreaterThan(before.sequence);
    expect(at('2199-12-31T23:59:00Z').sequence).toBeLessThan(2 ** 31);
  });

  test('reminders come where they are asked for, and not with what is given up', () => {
    const text = calendarFile([one, { ...hard, cancelled: true }], { name: 'Home', stamp: STAMP, alarmDays: 3 });
    expect(read(text).map(({ alarms, status }) => [alarms, status])).toEqual([
      [['-P3D'], 'CONFIRMED'],
      [[], 'CANCELLED'],
    ]);
    expect(read(calendarFile([one], { name: 'Home', stamp: STAMP, alarmDays: 0 }))[0]!.alarms).toEqual(['PT0S']);
  });

  test('control characters a keeper pasted do not break the file', () => {
    const [entry] = read(calendarFile([{ ...one, summary: 'a\u0000b\u001bc\td' }], { name: '', stamp: STAMP }));
    expect(entry!.summary).toBe('abc\td');
  });

  test('no date, no stamp, or an end before the beginning: refused', () => {
    const of = { name: '', stamp: STAMP };
    expect(() => calendarFile([{ ...one, from: '2026-02-30', to: '2026-02-30' }], of)).toThrow(RangeError);
    expect(() => calendarFile([{ ...one, to: '2026-09-24' }], of)).toThrow(RangeError);
    for (const stamp of ['2026-09-18', '2026-09-18T25:00:00Z', '2026-09-18T12:00:00+02:00', ''])
      expect(() => calendarFile([one], { ...of, stamp }), stamp).toThrow(RangeError);
  });
});
