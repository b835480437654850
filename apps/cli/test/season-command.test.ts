import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { good } from '@winterheft/core';
import { columnsOf } from '@winterheft/words';
import ICAL from 'ical.js';
import { describe, expect, test } from 'vitest';
import { output as seasonOutput } from '../src/contracts/season.ts';
import { output as tasksOutput } from '../src/contracts/tasks.ts';
import { looksLikeTrace, runCommand } from './run-command.ts';

const DEMO = readFileSync(fileURLToPath(new URL('../../../demo/journal.jsonl', import.meta.url)), 'utf8');
const PLACE = ['season', '--place', 'Winnipeg MB', '--year', '2026'];
const MONTHS = [-16, -13, -6, 4, 12, 17, 20, 19, 13, 5, -5, -13];

function entries(text: string) {
  const calendar = new ICAL.Component(ICAL.parse(text) as unknown[] as ConstructorParameters<typeof ICAL.Component>[0]);
  return calendar.getAllSubcomponents('vevent').map((entry) => new ICAL.Event(entry));
}

describe('season', () => {
  test('by options or by an object: the same dates, in the contract, inside 110 columns', async () => {
    const byOptions = await runCommand([...PLACE, '--json']);
    const byObject = await runCommand(['season', '-', '--json'], '{"place":"Winnipeg MB","year":2026}');
    expect([byOptions.code, byOptions.out]).toEqual([0, byObject.out]);
    expect(seasonOutput.safeParse(JSON.parse(byOptions.out)).success).toBe(true);
    const { out } = await runCommand(PLACE);
    for (const line of out.split('\n')) expect(columnsOf(line), line).toBeLessThanOrEqual(110);
    expect(out).toMatch(/last feeding day +\d+ \w+ \/ \d+ \w+ \/ \d+ \w+/);
  });

  test('as a calendar file: every date a whole day of its own, the median, with stable ids', async () => {
    const { code, out } = await runCommand([...PLACE, '--ics', '--alarm', '7']);
    expect(code).toBe(0);
    const events = entries(out);
    expect(events).toHaveLength(20);
    const { lastFeedingDay } = JSON.parse((await runCommand([...PLACE, '--json'])).out) as { lastFeedingDay: { p50: string } };
    const feeding = events.find(({ uid }) => uid === 'winnipeg-mb-lastFeedingDay-2026@winterheft')!;
    expect([feeding.startDate.toString(), feeding.startDate.isDate]).toEqual([lastFeedingDay.p50, true]);
    expect((await runCommand([...PLACE, '--ics', '--alarm', '7'])).out).toBe(out);
  });

  test.each([
    [
      'an own date of the wrong year',
      { place: 'Winnipeg MB', year: 2026, own: { firstForage: '2026-05-12' } },
      /own\.firstForage is 2026-05-12; allowed: 2027-01-01 to 2027-07-14/,
    ],
    [
      'own dates out of order',
      { place: 'Winnipeg MB', year: 2026, own: { firstPollen: '2027-05-20', firstForage: '2027-05-01' } },
      /own\.firstForage is 2027-05-01; allowed: 2027-05-20 or later/,
    ],
    ['an own date that is none', { place: 'Winnipeg MB', own: { firstForage: '2002-02-30' } }, /own\.firstForage/],
    ['a name that is none', { place: 'Winnipeg MB', own: { swarmDay: '2002-05-01' } }, /swarmDay/],
    ['an unknown place', { place: 'Atlantis' }, /Atlantis/],
    ['the southern half', { monthlyMeanC: MONTHS, lat: -45 }, /lat is -45/],
    ['months without a latitude', { monthlyMeanC: MONTHS }, /lat/],
  ] as const)('%s is refused in one line', async (_name, input, says) => {
    const { code, out, err } = await runCommand(['season', '-'], JSON.stringify(input));
    expect([code, out]).toEqual([2, '']);
    expect(err).toMatch(says);
    expect(err.trimEnd().split('\n')).toHaveLength(1);
    expect(looksLikeTrace(err)).toBe(false);
  });

  test.each([
    [['--lat', 'north'], /lat/],
    [['--lon', '181', '--place', 'Winnipeg MB'], /lon is 181/],
    [['--place', 'Winnipeg MB', '--alarm', '-1'], /--alarm is -1; allowed: 0 to 60/],
    [['--place', 'Winnipeg MB', 'file.json'], /FILE and --place/],
  ] as const)('options %j are refused in one line', async (options, says) => {
    const { code, out, err } = await runCommand(['season', ...options]);
    expect([code, out]).toEqual([2, '']);
    expect(err).toMatch(says);
  });

  test('a daily record that stops in January: what it has seen is certain, the spring is drawn, and both are said', async () => {
    const day = (d: number) => new Date(Date.UTC(2021, 0, 1 + d)).toISOString().slice(0, 10);
    const mean = (d: number) => 2 + 19 * Math.cos((2 * Math.PI * (d - 200)) / 365.25) + 4 * Math.sin(d * 1.7);
    const lines = Array.from({ length: 1481 }, (_, d) => `${day(d)},${(mean(d) - 5.5).toFixed(1)},${(mean(d) + 5.5).toFixed(1)}`);
    const file = `date,min_c,max_c\n${lines.join('\n')}\n`;
    const ran = (options: readonly string[]) =>
      runCommand(['season', '--file', 'record.csv', '--unit', 'C', ...options], null, async () => good(new TextEncoder().encode(file)));
    const { code, out } = await ran(['--lat', '52', '--lon', '-105', '--json']);
    expect(code).toBe(0);
    const answer = seasonOutput.parse(JSON.parse(out));
    expect([day(1480), answer.year]).toEqual(['2025-01-20', 2024]);
    expect(answer.lastFeedingDay.p10).toBe(answer.lastFeedingDay.p90);
    expect(answer.lastFeedingDay.p50).toMatch(/^2024-/);
    expect(answer.firstForage.p10! < answer.firstForage.p90!).toBe(true);
    expect((await ran(['--lat', '52', '--lon', '-105'])).out).toMatch(/until 2025-01-20, is taken as it happened/);
    expect(await ran([])).toMatchObject({ code: 2, out: '', err: expect.stringMatching(/lat is missing/) });
    expect((await ran(['--lat', '52', '--place', 'Winnipeg MB'])).code).toBe(0);
  });

  test('beyond the polar circle and without frost it answers and says so', async () => {
    const arctic = await runCommand(['season', '-'], JSON.stringify({ monthlyMeanC: MONTHS, lat: 69.5, lon: 25 }));
    expect(arctic.code).toBe(0);
    expect(arctic.out).toMatch(/polar circle/);
    const warm = await runCommand(
      ['season', '-'],
      JSON.stringify({ monthlyMeanC: [20, 20, 21, 22, 24, 26, 27, 27, 26, 24, 22, 21], lat: 25 }),
    );
    expect(warm.code).toBe(0);
    expect(warm.out).toMatch(/no frost/);
  });
});

describe('tasks', () => {
  const ran = (options: readonly string[], today = '2026-09-18') =>
    runCommand(['tasks', '-', '--today', today, '--members', '60', ...options], DEMO);

  test('in every season: in the contract, inside 110 columns, no dose, no trace', async () => {
    for (const today of ['2026-07-10', '2026-09-18', '2026-12-20', '2027-04-20']) {
      const { code, out, err } = await ran([], today);
      expect([code, err], today).toEqual([0, '']);
      for (const line of out.split('\n')) expect(columnsOf(line), line).toBeLessThanOrEqual(110);
      expect(looksLikeTrace(out)).toBe(false);
      expect(out).not.toMatch(/\d\s*(g|mL|ml|grams?)\b/);
    }
    const parsed = tasksOutput.safeParse(JSON.parse((await ran(['--json'])).out));
    expect(parsed.error?.issues ?? []).toEqual([]);
  });

  test('as a calendar file: ids do not change from week to week, what is done comes as cancelled', async () => {
    const [before, after] = [entries((await ran(['--ics'])).out), entries((await ran(['--ics'], '2026-09-25')).out)];
    const [first, second] = [before, after].map((events) => new Map(events.map((event) => [event.uid, event])));
    const both = [...first!.keys()].filter((uid) => second!.has(uid));
    expect(both.length).toBeGreaterThan(40);
    for (const uid of both) expect(second!.get(uid)!.sequence).toBeGreaterThan(first!.get(uid)!.sequence);
    expect(before.map(({ uid }) => uid)).toHaveLength(first!.size);
    const status = before.map((event) => String(event.component.getFirstPropertyValue('status')));
    expect(new Set(status)).toEqual(new Set(['CONFIRMED', 'CANCELLED']));
  });

  test('a journal that is none is refused', async () => {
    const { code, out, err } = await runCommand(['tasks', '-', '--today', '2026-09-18'], 'hello');
    expect([code, out]).toEqual([2, '']);
    expect(err).not.toBe('');
  });
});
