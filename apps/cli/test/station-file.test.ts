import { epochDayOf } from '@winterheft/core';
import { describe, expect, test } from 'vitest';
import { canadaOld, courseC, days, dly, noaaC, noaaF } from '../../../packages/core/test/station-samples.ts';
import { output as outlookOutput } from '../src/contracts/outlook.ts';
import { output as weatherOutput } from '../src/contracts/weather.ts';
import { looksLikeTrace, runCommand } from './run-command.ts';

const day = (iso: string) => epochDayOf(iso)!;
const DECADE = days(day('2012-01-01'), 4000);
const YEARS = days(day('2020-09-01'), 900);
const FILES: Record<string, string | Uint8Array> = {
  'decade.dly': dly(DECADE),
  'years.csv': canadaOld(YEARS),
  // an older file in Latin-1: the degree sign is one byte, and no UTF-8
  'latin.csv': Uint8Array.from(canadaOld(YEARS), (c) => (c.charCodeAt(0) < 256 ? c.charCodeAt(0) : 63)),
  // a fixed-width file that somebody named .csv
  'wrong-ending.csv': dly(YEARS),
  'month.csv': noaaC(days(day('2024-01-01'), 31)),
  'fahrenheit.csv': noaaF(YEARS),
  'celsius.csv': noaaC(YEARS),
  'south.csv': canadaOld(YEARS).replaceAll('"53.97"', '"-43.53"'),
  'winters.csv': ['date,mean', ...[2019, 2020, 2021, 2022].flatMap((y) => days(day(`${y}-11-01`), 110)).map((d) => row(d))].join('\n'),
  'leap.csv': ['date,mean (C)', ...YEARS.map((d) => row(d)), '2021-02-29,-12.0'].join('\n'),
  'picture.csv': Uint8Array.of(0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a, 0, 0, 0, 13),
  'journal.jsonl': '{"id":"x","kind":"yard"}',
  'empty.csv': '',
};
function row(d: number): string {
  return `${new Date(d * 86_400_000).toISOString().slice(0, 10)},${courseC(d).mean}`;
}
const read = async (name: string) => {
  const bytes = FILES[name];
  if (bytes === undefined) return { ok: false, error: { kind: 'no-file', name } } as const;
  return { ok: true, value: typeof bytes === 'string' ? new TextEncoder().encode(bytes) : bytes } as const;
};
const ask = (argv: readonly string[], input: string | null = null) => runCommand(argv, input, read);

describe('weather of a file', () => {
  test('is told with what was read, missing and refused', async () => {
    const ran = await ask(['weather', '--file', 'decade.dly', '--json']);
    expect(ran.code).toBe(0);
    const answer = weatherOutput.parse(JSON.parse(ran.out));
    expect(answer).toMatchObject({ station: 'CA00000000X', days: 4000, missingDays: 0, winters: 10 });
    expect(answer.file).toMatchObject({ layout: 'ghcn-dly', unit: 'tenths-C', from: '2012-01-01' });
    expect(answer.notes.map(({ code }) => code)).toContain('own-winters');
    const january = DECADE.filter((d) => new Date(d * 86_400_000).getUTCMonth() === 0);
    const mean = january.reduce((sum, d) => sum + courseC(d).mean, 0) / january.length;
    // means of months are averaged, not days: all Januaries are whole and of equal length; 0.05 for the file's tenths
    expect(Math.abs(answer.monthlyMeanC[0]! - mean)).toBeLessThan(0.06);
  });

  test('reads what is in the file, whatever its ending and its old letters', async () => {
    for (const name of ['wrong-ending.csv', 'latin.csv', 'years.csv']) {
      const ran = await ask(['weather', '--file', name, '--place', 'The Pas MB', '--json']);
      expect(ran.err).toBe('');
      expect(JSON.parse(ran.out)).toMatchObject({ days: 900, winters: 2 });
    }
  });

  test('stands in the readable table with its notes; 29 February of a common year is refused by its line', async () => {
    const ran = await ask(['weather', '--file', 'leap.csv']);
    expect(ran.code).toBe(0);
    expect(ran.out).toMatch(/Line 902 was not used: its date does not exist/);
    expect(ran.out).toMatch(/2 whole winters; from 8 on/);
  });
});

describe('outlook and plan with a file', () => {
  const colony = { bees: 16000, storesKg: 24, from: '2026-10-01', to: '2027-06-30', members: 60 };

  test('an outlook takes the record alone or on top of a place, and says so', async () => {
    const alone = await ask(['outlook', '--file', 'decade.dly', '--json'], JSON.stringify(colony));
    expect(alone.err).toBe('');
    expect(outlookOutput.parse(JSON.parse(alone.out)).climate!.notes.map(({ code }) => code)).toEqual(['own-winters', 'own-days']);
    const both = await ask(['outlook', '--file', 'years.csv', '--json'], JSON.stringify({ ...colony, place: 'The Pas MB' }));
    expect(JSON.parse(both.out).climate.notes.map(({ code }: { code: string }) => code)).toContain('own-correction');
    const two = await ask(['outlook', '--file', 'years.csv'], JSON.stringify({ ...colony, dailyMeanC: Array(273).fill(0) }));
    expect([two.code, two.out]).toEqual([2, '']);
    expect(two.err).toMatch(/dailyMeanC.*--file/);
  });

  test('a plan of a journal takes it for every yard', async () => {
    const { readFile } = await import('node:fs/promises');
    const journal = await readFile(new URL('../../../demo/journal.jsonl', import.meta.url), 'utf8');
    const ran = await ask(['plan', '-', '--today', '2026-09-18', '--members', '20', '--file', 'decade.dly', '--json'], journal);
    expect(ran.err).toBe('');
    const { dates } = JSON.parse(ran.out);
    expect(dates.length).toBeGreaterThan(0);
    for (const yard of dates) expect(yard.climate.name).toBe('CA00000000X');
  });
});

describe('a file that is none is refused in one line with exit 2', () => {
  test.each<[string, readonly string[], RegExp]>([
    ['one month of data', ['month.csv'], /330 days or more; this one holds 31/],
    ['southern dates', ['south.csv'], /north of the equator/],
    ['Fahrenheit said to be Celsius', ['fahrenheit.csv', '--unit', 'C'], /cannot: try --unit F/],
    ['Celsius said to be Fahrenheit', ['celsius.csv', '--unit', 'F'], /cannot: try --unit C/],
    ['a unit that could be both', ['winters.csv'], /°F or °C\? Say so with --unit/],
    ['a picture', ['picture.csv'], /not text/],
    ['a journal', ['journal.jsonl'], /columns named date/],
    ['an empty file', ['empty.csv'], /empty/],
    ['no file', ['nowhere.csv'], /does not exist/],
    ['another unit', ['years.csv', '--unit', 'K'], /--unit is "K"; allowed: C or F/],
  ])('%s', async (_, [name, ...rest], says) => {
    for (const argv of [['weather', '--file', name!, ...rest]]) {
      const ran = await ask(argv);
      expect([ran.code, ran.out]).toEqual([2, '']);
      expect(ran.err).toMatch(says);
      expect(ran.err.trimEnd().split('\n')).toHaveLength(1);
      expect(looksLikeTrace(ran.err), ran.err).toBe(false);
    }
  });

  test.each<[string, object, RegExp]>([
    ['no bees', { bees: 0 }, /bees is 0/],
    ['a million bees', { bees: 1_000_000 }, /bees is 1000000/],
    ['an end before the beginning', { to: '2026-09-01' }, /to is 2026-09-01/],
    ['months in Fahrenheit', { place: undefined, monthlyMeanC: [2, 8, 22, 38, 52, 62, 67, 64, 54, 40, 22, 8] }, /monthlyMeanC/],
    ['months of the south', { place: undefined, monthlyMeanC: [20, 20, 17, 14, 10, 7, 6, 7, 10, 13, 16, 19] }, /January/],
    ['days in Fahrenheit', { place: undefined, dailyMeanC: Array(273).fill(60) }, /dailyMeanC/],
  ])('outlook: %s', async (_, change, says) => {
    const input = { bees: 16000, from: '2026-10-01', to: '2027-06-30', place: 'The Pas MB', ...change };
    const ran = await ask(['outlook', '-'], JSON.stringify(input));
    expect([ran.code, ran.out]).toEqual([2, '']);
    expect(ran.err).toMatch(says);
    expect(ran.err.trimEnd().split('\n')).toHaveLength(1);
  });

  test('NaN for a number', async () => {
    const ran = await ask(['outlook', '-'], '{"bees":NaN,"from":"2026-10-01","to":"2027-06-30","place":"The Pas MB"}');
    expect([ran.code, ran.out, ran.err.trimEnd().split('\n').length]).toEqual([2, '', 1]);
  });
});
