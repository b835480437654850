import { describe, expect, test } from 'vitest';
import { epochDayOf } from '../src/units/index.ts';
import { readStation, type StationOptions } from '../src/weather/index.ts';
import { canadaBulk, canadaOld, courseC, days, dly, dwd, epw, ghcnLong, ghcnWide, noaaC, noaaF } from './station-samples.ts';

const FROM = epochDayOf('2019-09-01')!;
const YEAR = days(FROM, 730);

function read(text: string, options?: StationOptions) {
  const answer = readStation(text, options);
  if (!answer.ok) throw new Error(JSON.stringify(answer.error));
  return answer.value;
}
const fault = (text: string, options?: StationOptions) => {
  const answer = readStation(text, options);
  return answer.ok ? null : answer.error.kind;
};

describe('every layout gives back the days that were written in it', () => {
  // within: half of what the layout's last digit leaves of a mean of two extremes
  const LAYOUTS = [
    ['ghcn-dly', dly(YEAR), 0.051],
    ['ghcn-csv', ghcnLong(YEAR), 0.051],
    ['ghcn-csv', ghcnWide(YEAR), 0.051],
    ['noaa-summaries', noaaF(YEAR), 0.34],
    ['noaa-summaries', noaaC(YEAR), 0.051],
    ['canada-daily', canadaBulk(YEAR), 0.0001],
    ['canada-daily', canadaOld(YEAR), 0.0001],
    ['dwd-daily', dwd(YEAR), 0.051],
  ] as const;
  test.each(LAYOUTS)('%s', (layout, text, within) => {
    const record = read(text);
    expect(record.layout).toBe(layout);
    expect([record.fromDay, record.toDay]).toEqual([FROM, FROM + 729]);
    expect([record.readDays, record.bridgedDays, record.missingDays, record.rejected.length]).toEqual([730, 0, 0, 0]);
    for (const day of YEAR) expect(Math.abs(record.meanC[day - FROM]! - courseC(day).mean)).toBeLessThanOrEqual(within);
    expect(record.winters).toEqual([2019, 2020]);
  });

  test('a typical year is told as one and holds no winter', () => {
    const record = read(epw(days(epochDayOf('2001-01-01')!, 365)));
    expect([record.layout, record.typical, record.winters.length, record.readDays]).toEqual(['epw', true, 0, 365]);
    expect(record.place).toEqual({ name: 'Invented Place', latDeg: 53.97, lonDeg: -101.1, elevM: 270 });
  });

  test('the places are read where a file tells them', () => {
    expect(read(canadaOld(YEAR)).place).toEqual({ name: 'INVENTED A', latDeg: 53.97, lonDeg: -101.1, elevM: 270.4 });
    expect(read(canadaBulk(YEAR)).place).toEqual({ name: 'INVENTED A', latDeg: 53.97, lonDeg: -101.1, elevM: null });
    expect(read(ghcnWide(YEAR)).place.latDeg).toBe(53.97);
  });
});

const plain = (rows: readonly string[], head = 'date,mean (C)') => [head, ...rows].join('\n');
const meanRows = (of: readonly number[], write = (c: number) => String(c)) =>
  of.map((day) => `${new Date(day * 86_400_000).toISOString().slice(0, 10)},${write(courseC(day).mean)}`);

describe('units', () => {
  test('the values tell the unit where a summer is there', () => {
    expect(read(noaaF(YEAR))).toMatchObject({ unit: 'F', unitByValues: true });
    expect(read(noaaC(YEAR))).toMatchObject({ unit: 'C', unitByValues: true });
    expect(read(canadaBulk(YEAR))).toMatchObject({ unit: 'C', unitByValues: false });
  });

  test('where both units fit, the file is refused with the question, and the keeper answers it', () => {
    // two winters of a mild place without their summers, a year and a half of days
    const winters = [2015, 2016, 2017, 2018].flatMap((year) => days(epochDayOf(`${year}-10-01`)!, 120));
    const text = plain(meanRows(winters), 'date,mean');
    expect(fault(text)).toBe('which-unit');
    // answered, it is still no whole year
    expect(fault(text, { unit: 'C' })).toBe('month-without-days');
  });

  test('Fahrenheit taken for Celsius is refused, and so is Celsius taken for Fahrenheit', () => {
    const hot = meanRows(YEAR, (c) => String(Math.round((c * 9) / 5 + 32)));
    expect(fault(plain(hot))).toBe('wrong-unit');
    expect(fault(noaaF(YEAR), { unit: 'C' })).toBe('wrong-unit');
    expect(fault(noaaC(YEAR), { unit: 'F' })).toBe('wrong-unit');
    expect(read(plain(hot, 'date,mean (°F)')).unit).toBe('F');
  });
});

describe('any table', () => {
  test.each<[string, (day: number) => string, string]>([
    [
      'semicolons, decimal commas, dotted dates',
      (d) => `${iso(d).split('-').reverse().join('.')};${String(courseC(d).mean).replace('.', ',')}`,
      'Datum;Mittel (°C)',
    ],
    ['tabs and eight digits', (d) => `${iso(d).replaceAll('-', '')}\t${courseC(d).max}\t${courseC(d).min}`, 'date\ttmaxC\ttminC'],
    [
      'month first',
      (d) => `${Number(iso(d).slice(5, 7))}/${Number(iso(d).slice(8))}/${iso(d).slice(0, 4)},${courseC(d).mean}`,
      'Date,Mean_C',
    ],
    ['a time of day behind the date', (d) => `${iso(d)}T00:00,${courseC(d).mean}`, 'time,temperature_2m_mean (°C)'],
  ])('%s', (_, row, head) => {
    const record = read(plain(YEAR.map(row), head));
    expect(record.readDays).toBe(730);
    for (const day of YEAR) expect(Math.abs(record.meanC[day - FROM]! - courseC(day).mean)).toBeLessThan(0.051);
  });

  test('dates that could be read both ways, missing columns and no table at all are refused by name', () => {
    const firsts = Array.from(
      { length: 400 },
      (_, k) => `${(k % 12) + 1}/${(Math.floor(k / 12) % 12) + 1}/${1985 + Math.floor(k / 144)},5`,
    );
    expect(fault(plain(firsts))).toBe('which-date-order');
    expect(fault('date,rain\n2020-01-01,3')).toBe('no-columns');
    expect(fault('a letter to the editor')).toBe('no-layout');
    expect(fault('{"id":"x"}')).toBe('no-layout');
    expect(fault('')).toBe('not-text');
    expect(fault('\u0089PNG\r\n\u001a\n\u0000\u0000\u0000\rIHDR')).toBe('not-text');
    expect(fault('PK\u0003\u0004\u0014\u0006\b\u0000!')).toBe('not-text');
  });

  test('a month, a summer and the southern hemisphere are refused', () => {
    expect(fault(canadaBulk(days(FROM, 30)))).toBe('too-short');
    expect(fault(plain(meanRows([2001, 2002, 2003, 2004].flatMap((y) => days(epochDayOf(`${y}-05-01`)!, 100)))))).toBe(
      'month-without-days',
    );
    const south = YEAR.map((day) => `${iso(day)},${-courseC(day).mean}`);
    expect(fault(plain(south))).toBe('southern-hemisphere');
    expect(fault(canadaBulk(YEAR).replaceAll('"53.97"', '"-43.5"'))).toBe('southern-hemisphere');
  });
});
const iso = (day: number) => new Date(day * 86_400_000).toISOString().slice(0, 10);

describe('what a real file has', () => {
  test('short gaps are bridged, long ones left open, and both are counted', () => {
    const holes = new Set([...days(FROM + 40, 5), ...days(FROM + 100, 6), FROM + 300]);
    const record = read(plain(meanRows(YEAR.filter((day) => !holes.has(day)))));
    expect([record.readDays, record.bridgedDays, record.missingDays]).toEqual([718, 6, 6]);
    expect(record.winters).toEqual([2020]);
    // a straight line between the neighbours
    const [before, after] = [record.meanC[39]!, record.meanC[45]!];
    expect(record.meanC[42]!).toBeCloseTo(before + (after - before) / 2, 10);
    expect(record.meanC[102]!).toBeNaN();
  });

  test('impossible values, repeated days, failed checks, dates that do not exist and torn lines are told by line', () => {
    const rows = meanRows(YEAR);
    const text = plain([
      ...rows.slice(0, 400),
      '2020-02-30,1',
      rows[3]!,
      '2021-08-31,99.9',
      '2021-08-31',
      'x,1',
      '2021-08-31,warm',
      ...rows.slice(400, 729),
    ]);
    const { rejected } = read(text);
    expect(rejected).toEqual([
      { line: 402, why: 'not-a-date' },
      { line: 403, why: 'repeated-day' },
      { line: 404, why: 'out-of-range' },
      { line: 405, why: 'line-too-short' },
      { line: 406, why: 'not-a-date' },
      { line: 407, why: 'not-a-number' },
    ]);
    const flagged = ghcnLong(YEAR).replace(',,,C,', ',,X,C,');
    expect(read(flagged).rejected).toEqual([{ line: 1, why: 'quality-flag' }]);
    const turned = canadaBulk(YEAR).replace(/"(-?[\d.]+)","","(-?[\d.]+)","E"/, '"1","","9","E"');
    expect(read(turned).rejected).toEqual([{ line: 2, why: 'max-below-min' }]);
  });

  test('29 February is a day of leap years only', () => {
    const record = read(plain(meanRows(YEAR)));
    expect(record.meanC[epochDayOf('2020-02-29')! - FROM]!).toBe(courseC(epochDayOf('2020-02-29')!).mean);
    expect(fault(plain(['2021-02-29,1']))).toBe('no-days');
  });

  test('the order of the days does not matter, and only the latest thirty years of a long record count', () => {
    expect(read(plain(meanRows([...YEAR].reverse())))).toEqual({ ...read(plain(meanRows(YEAR))), rejected: [] });
    const long = read(plain(meanRows(days(epochDayOf('1970-01-01')!, 18_000))));
    expect(long.winters).toHaveLength(29);
    expect(long.meanC.length).toBe(10_958);
  });
});
