import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { climatePlaces } from '../src/tables/climate-places.gen.ts';
import { epochDayOf } from '../src/units/dates.ts';
import {
  type Climate,
  climateForPlace,
  climateFromMonthly,
  climateNear,
  drawWeather,
  MONTH_STARTS,
  nearest,
  placeErrorC,
  places,
  weatherModel,
  withoutSpread,
  yearIndexOf,
  yearlyCurve,
} from '../src/weather/index.ts';

const climateOf = (place: string): Climate => {
  const climate = climateForPlace(place);
  if (!climate.ok) throw new Error(`${place}: ${climate.error.kind}`);
  return climate.value;
};
const day = (iso: string): number => epochDayOf(iso)!;

describe('tables', () => {
  test.each([
    ['places.csv', '9a0e78d4254c38edb80787cdbcc521e8cd6005c3a2cf3c8ddb22920b5e327470'],
    ['spread.csv', 'b602e1de67c04528c6561c4aecff18a2135c37bb21b411a8b2891bb7c2af2bd2'],
  ])('data/climate/%s is the file as received: change a row and say so here', (file, sha256) => {
    const bytes = readFileSync(new URL(`../../../data/climate/${file}`, import.meta.url));
    expect(createHash('sha256').update(bytes).digest('hex')).toBe(sha256);
  });

  test('every row of places carries source, mark and terms, and the sources are listed', () => {
    const listed = readFileSync(new URL('../../../data/sources/climate.csv', import.meta.url), 'utf8');
    expect(climatePlaces.length).toBe(225);
    for (const row of climatePlaces) {
      expect(listed, row.place).toContain(`\n${row.source},`);
      expect(row.mark, row.place).toMatch(/^(READ|COMPUTED)$/);
    }
  });
});

describe('yearly curve', () => {
  test('its average over every month of every place is the monthly mean', () => {
    for (const { place, meanC } of climatePlaces) {
      const curve = yearlyCurve(meanC);
      meanC.forEach((mean, month) => {
        const days = curve.subarray(MONTH_STARTS[month]!, MONTH_STARTS[month + 1]!);
        // within: rounding of a sum of 31 doubles
        expect(days.reduce((sum, value) => sum + value, 0) / days.length, place).toBeCloseTo(mean, 9);
      });
    }
  });

  test('it reaches no more than 1.2 degC beyond the warmest and coldest month of any place', () => {
    // A cosine of amplitude 20 degC exceeds its own monthly averages by 0.23 degC at the turning points [EPSTEIN-1991]; sharper years do so by more.
    for (const { place, meanC } of climatePlaces) {
      const curve = yearlyCurve(meanC);
      expect(Math.max(...curve) - Math.max(...meanC), place).toBeLessThan(1.2);
      expect(Math.min(...meanC) - Math.min(...curve), place).toBeLessThan(1.2);
    }
  });

  test('equal months give a flat curve', () => {
    for (const value of yearlyCurve(Array.from({ length: 12 }, () => -7))) expect(value).toBeCloseTo(-7, 9);
  });
});

describe('places', () => {
  test('every listed name finds its own row', () => {
    for (const { place } of places()) expect(climateOf(place).name).toBe(place);
  });

  test.each([
    ['the pas', 'The Pas MB'],
    ['THE PAS, MB', 'The Pas MB'],
    ['Québec', 'Quebec QC'],
    ['London', 'London'],
    ['london on', 'London ON'],
    ['nternational fall', 'International Falls MN'],
    ["St. John's", 'St Johns NL'],
  ])('%s is %s', (typed, place) => {
    expect(climateOf(typed).name).toBe(place);
  });

  test('an ambiguous name lists its candidates', () => {
    expect(climateForPlace('edmonton')).toEqual({
      ok: false,
      error: { kind: 'unknown-choice', field: 'place', value: 'edmonton', choices: ['Edmonton Intl AB', 'Edmonton city AB'] },
    });
  });

  test('an unknown or empty name is refused', () => {
    expect(climateForPlace('Atlantis')).toEqual({
      ok: false,
      error: { kind: 'unknown-choice', field: 'place', value: 'Atlantis', choices: [] },
    });
    expect(climateForPlace(' . ')).toEqual({ ok: false, error: { kind: 'missing', field: 'place' } });
  });

  test('an older normal is warmed and said to be', () => {
    const climate = climateOf('Sherbrooke QC');
    expect(climate.monthlyMeanC[0]).toBeCloseTo(-11.8 + 2.0, 9); // printed mean and published difference
    expect(climate.notes).toContainEqual({ code: 'warmed', place: 'Sherbrooke QC', period: '1960-1994' });
    expect(climateOf('The Pas MB').notes.map((note) => note.code)).not.toContain('warmed');
  });

  test('a yard gets the mean of the three best, never an extreme site, with distances and the error of that choice', () => {
    const climate = climateNear(69, -138);
    if (!climate.ok) throw new Error(climate.error.kind);
    expect(climate.value.from).toHaveLength(3);
    const extreme = new Set(places().flatMap((row) => (row.extreme ? [row.place] : [])));
    expect(extreme.size).toBe(12);
    for (const { place, distanceKm } of climate.value.from) {
      expect(extreme.has(place)).toBe(false);
      expect(distanceKm).toBeGreaterThan(200);
    }
    expect(climate.value.notes.filter((note) => note.code === 'far')).toHaveLength(3);
    expect(climate.value.placeErrorSdC).toBeGreaterThan(1.8);
  });

  test('height counts: high above Calgary the choice moves to a mountain station', () => {
    const low = climateNear(51.1, -114.5, 1080);
    const high = climateNear(51.1, -114.5, 1600);
    if (!low.ok || !high.ok) throw new Error('refused');
    expect(low.value.from[0]!.place).toBe('Calgary AB');
    expect(high.value.from[0]!.place).toBe('Banff AB');
  });

  test('the choice errs as published: winter means of places left out one at a time', () => {
    const rows = climatePlaces.filter((row) => !row.note.startsWith('EXTREME SITE') && ['CA', 'US', 'JP'].includes(row.country));
    const winter = (meanC: readonly number[]) => [10, 11, 0, 1, 2].reduce((sum, month) => sum + meanC[month]! / 5, 0);
    const bands = [
      { low: 0, high: 100, squares: [] as number[] },
      { low: 100, high: 200, squares: [] as number[] },
      { low: 200, high: 400, squares: [] as number[] },
    ];
    for (const row of rows) {
      const best = nearest(
        rows.filter((other) => other !== row),
        row,
      );
      const km = best.reduce((sum, one) => sum + one.km / best.length, 0);
      const miss = winter(row.meanC) - best.reduce((sum, one) => sum + winter(one.row.meanC) / best.length, 0);
      bands.find((band) => km >= band.low && km < band.high)?.squares.push(miss ** 2);
    }
    for (const { low, high, squares } of bands) {
      expect(squares.length).toBeGreaterThan(20);
      const rms = Math.sqrt(squares.reduce((sum, square) => sum + square, 0) / squares.length);
      // within: a third; the published figure rests on 512 places, most of them elsewhere
      expect(rms / placeErrorC((low + high) / 2)).toBeGreaterThan(0.67);
      expect(rms / placeErrorC((low + high) / 2)).toBeLessThan(1.33);
    }
  });

  test.each([
    ['south', () => climateNear(-37, 145), 'southern-hemisphere'],
    ['southern means', () => climateFromMonthly([20, 20, 17, 14, 11, 8, 7, 8, 10, 13, 15, 18]), 'january-warmer-than-july'],
  ])('%s is refused with its reason', (_name, made, why) => {
    expect(made()).toMatchObject({ ok: false, error: { kind: 'implausible', why } });
  });

  test.each([
    ['eleven months', Array.from({ length: 11 }, () => 1), 'monthlyMeanC.length'],
    ['Fahrenheit', [14, 19, 32, 46, 57, 66, 70, 68, 58, 45, 32, 20], 'monthlyMeanC.3'],
    ['not a number', [0, 0, 0, 0, 0, 0, Number.NaN, 0, 0, 0, 0, 0], 'monthlyMeanC.6'],
  ])('monthly means of %s are refused', (_name, means, field) => {
    expect(climateFromMonthly(means)).toMatchObject({ ok: false, error: { field } });
  });
});

describe('drawing', () => {
  const climate = climateOf('The Pas MB');
  const model = weatherModel(climate);

  test('a member has the same weather on a day whatever span, start and number of members is asked for', () => {
    const long = drawWeather(model, { seed: 7, entity: 'yard', fromDay: day('2026-03-01'), toDay: day('2028-02-28'), members: 5 });
    const longDays = day('2028-02-28') - day('2026-03-01') + 1;
    for (const [from, to, members] of [
      ['2026-09-15', '2027-05-31', 3],
      ['2027-05-20', '2027-06-10', 5],
      ['2027-12-25', '2027-12-25', 4],
    ] as const) {
      const days = day(to) - day(from) + 1;
      const short = drawWeather(climate, { seed: 7, entity: 'yard', fromDay: day(from), toDay: day(to), members });
      for (let member = 0; member < members; member++) {
        for (let d = 0; d < days; d++) {
          expect(short[member * days + d]).toBe(long[member * longDays + d + day(from) - day('2026-03-01')]);
        }
      }
    }
  });

  test('seed, entity and member each change the weather', () => {
    const span = { seed: 7, entity: 'yard', fromDay: day('2026-11-01'), toDay: day('2026-11-30'), members: 2 };
    const first = drawWeather(model, span);
    expect(drawWeather(model, span)).toEqual(first);
    expect(drawWeather(model, { ...span, seed: 8 })[0]).not.toBe(first[0]);
    expect(drawWeather(model, { ...span, entity: 'other' })[0]).not.toBe(first[0]);
    expect(first[30]).not.toBe(first[0]);
  });

  test('two winters join on 1 June as any two days do', () => {
    const members = 2000;
    const temps = drawWeather(model, { seed: 1, entity: 'join', fromDay: day('2027-05-25'), toDay: day('2027-06-08'), members });
    const jump = (d: number) => {
      let sum = 0;
      for (let member = 0; member < members; member++) sum += (temps[member * 15 + d]! - temps[member * 15 + d - 1]!) ** 2;
      return Math.sqrt(sum / members);
    };
    // day 7 is 1 June. within: sampling error of a root mean square of 2,000 is 1.6 %, three of them for each side
    expect(jump(7) / ((jump(5) + jump(9)) / 2)).toBeGreaterThan(0.93);
    expect(jump(7) / ((jump(5) + jump(9)) / 2)).toBeLessThan(1.07);
  });

  test('without spread every member has the smooth curve to the last digit', () => {
    const flat = withoutSpread(climate);
    const fromDay = day('2026-09-01');
    const temps = drawWeather(flat, { seed: 1, entity: 'x', fromDay, toDay: fromDay + 299, members: 3 });
    const curve = yearlyCurve(climate.monthlyMeanC);
    temps.forEach((value, i) => {
      expect(value).toBe(curve[yearIndexOf(fromDay + (i % 300))]);
    });
  });

  test('the error of the place is one draw a member for the whole year, with the stated sd', () => {
    const span = { seed: 3, entity: 'yard', fromDay: day('2026-12-01'), toDay: day('2027-07-01'), members: 4000 };
    const days = span.toDay - span.fromDay + 1;
    const certain = drawWeather({ ...climate, placeErrorSdC: 0 }, span);
    const doubtful = drawWeather({ ...climate, placeErrorSdC: 1.8 }, span);
    let squares = 0;
    for (let member = 0; member < span.members; member++) {
      const error = doubtful[member * days]! - certain[member * days]!;
      expect(doubtful[(member + 1) * days - 1]! - certain[(member + 1) * days - 1]!).toBeCloseTo(error, 9);
      squares += error ** 2;
    }
    // within: three sampling errors of a sd of 4,000, 1.1 % each
    expect(Math.sqrt(squares / span.members) / 1.8).toBeCloseTo(1, 1.4);
  });

  test.each([[{ fromDay: 10, toDay: 9 }], [{ fromDay: 0, toDay: 1100 }], [{ members: 0 }], [{ members: 1.5 }], [{ fromDay: Number.NaN }]])(
    'a span of %j is a bug of the caller',
    (change) => {
      expect(() => drawWeather(model, { seed: 1, entity: 'x', fromDay: 0, toDay: 9, members: 1, ...change })).toThrow(RangeError);
    },
  );
});
