import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import * as units from '../src/units/index.ts';

const conversions = new Map(Object.entries(units).filter(([name]) => /^\w+To[A-Z]/.test(name)) as [string, (x: number) => number][]);

const PAIRS: readonly (readonly [string, string])[] = [
  ['lbToKg', 'kgToLb'],
  ['ozToKg', 'kgToOz'],
  ['inchToM', 'mToInch'],
  ['footToM', 'mToFoot'],
  ['usGallonToL', 'lToUsGallon'],
  ['usQuartToL', 'lToUsQuart'],
  ['usPintToL', 'lToUsPint'],
  ['usCupToL', 'lToUsCup'],
  ['usFlOzToL', 'lToUsFlOz'],
  ['imperialGallonToL', 'lToImperialGallon'],
  ['imperialQuartToL', 'lToImperialQuart'],
  ['imperialPintToL', 'lToImperialPint'],
  ['fahrenheitToC', 'cToFahrenheit'],
  ['btuToJ', 'jToBtu'],
  ['rValueToM2KPerW', 'm2KPerWToRValue'],
  ['btuInchToWPerMK', 'wPerMKToBtuInch'],
  ['lbPerUsGallonToKgPerM3', 'kgPerM3ToLbPerUsGallon'],
  ['lbPerImperialGallonToKgPerM3', 'kgPerM3ToLbPerImperialGallon'],
];

test.each(PAIRS)('%s and %s undo each other', (there, back) => {
  const [to, from] = [conversions.get(there)!, conversions.get(back)!];
  fc.assert(
    fc.property(fc.double({ min: -1e6, max: 1e6, noNaN: true }), (x) => {
      // within: sixteen digits, twice rounded, and 32 added in between
      expect(Math.abs(from(to(x)) - x)).toBeLessThanOrEqual(1e-12 * (Math.abs(x) + 100));
    }),
  );
});

test('every conversion has its way back', () => {
  expect([...conversions.keys()].sort()).toEqual(PAIRS.flat().sort());
});

describe('dates', () => {
  /** Day by day from 1 January 1900 by the Gregorian rule alone, as one would with a wall calendar. */
  function* calendar(): Generator<readonly [string, number]> {
    const two = (n: number) => String(n).padStart(2, '0');
    let day = -25567;
    for (let year = 1900; year <= 2199; year++) {
      const leap = (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0;
      const lengths = [31, leap ? 29 : 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];
      for (const [month, length] of lengths.entries()) {
        for (let d = 1; d <= length; d++) yield [`${year}-${two(month + 1)}-${two(d)}`, day++];
      }
    }
  }

  test('every day of 300 years has the number a counted calendar gives it, and its date back', () => {
    let days = 0;
    for (const [iso, day] of calendar()) {
      if (units.epochDayOf(iso) !== day || units.isoDateOf(day) !== iso)
        throw new Error(`${iso}: ${units.epochDayOf(iso)}, counted ${day}`);
      days++;
    }
    expect(days).toBe(300 * 365 + 73);
  });

  test('agrees with the clock library of the machine', () => {
    fc.assert(
      fc.property(fc.integer({ min: -25567, max: 84005 }), (day) => {
        expect(units.isoDateOf(day)).toBe(new Date(day * 86400000).toISOString().slice(0, 10));
      }),
    );
  });

  test.each([
    '1900-02-29',
    '2100-02-29',
    '2026-02-29',
    '2026-04-31',
    '2026-13-01',
    '2026-00-10',
    '2026-1-1',
    '1899-12-31',
    '2200-01-01',
    '14.9.2026',
    '',
    '2026-09-14T12:00',
  ])('refuses %s, which is no date of the calendar here', (text) => expect(units.epochDayOf(text)).toBeNull());

  test.each(['2000-02-29', '2024-02-29', '2028-02-29'])('accepts the leap day %s', (text) => expect(units.epochDayOf(text)).not.toBeNull());
});
