import { describe, expect, test } from 'vitest';
import { epochDayOf } from '../src/units/index.ts';
import {
  climateForPlace,
  climateFromMonthly,
  climateFromRecord,
  drawWeather,
  readStation,
  type StationRecord,
} from '../src/weather/index.ts';
import { canadaOld, courseC, days, epw } from './station-samples.ts';

function recordOf(from: string, to: string): StationRecord {
  const first = epochDayOf(from)!;
  const answer = readStation(canadaOld(days(first, epochDayOf(to)! - first + 1)));
  if (!answer.ok) throw new Error(JSON.stringify(answer.error));
  return answer.value;
}
function good<T>(answer: { ok: true; value: T } | { ok: false; error: unknown }): T {
  if (!answer.ok) throw new Error(JSON.stringify(answer.error));
  return answer.value;
}
const base = good(climateForPlace('The Pas MB'));
const winterMean = (monthly: readonly number[]) => [10, 11, 0, 1, 2].reduce((sum, month) => sum + monthly[month]! / 5, 0);

describe('a record with 8 whole winters or more', () => {
  const record = recordOf('2010-01-01', '2021-12-15');
  const climate = good(climateFromRecord(record, { base, yard: { latDeg: 53.97, lonDeg: -101.1 } }));
  const [fromDay, toDay] = [epochDayOf('2026-09-18')!, epochDayOf('2027-06-30')!];
  const members = 1000;
  const temps = drawWeather(climate, { seed: 3, entity: 'yard', fromDay, toDay, members });
  const length = toDay - fromDay + 1;

  test('becomes the ensemble: every case is one of its winters day by day, each as often as any other', () => {
    expect(record.winters).toEqual([2010, 2011, 2012, 2013, 2014, 2015, 2016, 2017, 2018, 2019, 2020]);
    const counts = new Map<number, number>();
    for (let member = 0; member < members; member++) {
      const row = temps.subarray(member * length, (member + 1) * length);
      const winter = record.winters.find((year) => {
        const there = epochDayOf(`${year}-09-18`)!;
        return [0, 50, 150].every((d) => row[d] === courseC(there + d).mean);
      });
      counts.set(winter ?? 0, (counts.get(winter ?? 0) ?? 0) + 1);
    }
    expect([...counts.keys()].sort()).toEqual(record.winters);
    // a class of cases may straddle the border of two winters
    for (const count of counts.values()) expect(Math.abs(count - members / 11)).toBeLessThan(2);
  });

  test('a day and its place are those of the calendar, in leap years too', () => {
    // 28 February and 1 March of 2027 stand beside those of leap years 2012, 2016 and 2020
    const at = epochDayOf('2027-03-01')! - fromDay;
    const marches = new Set(record.winters.map((year) => courseC(epochDayOf(`${year + 1}-03-01`)!).mean));
    for (let member = 0; member < members; member++) expect(marches.has(temps[member * length + at]!)).toBe(true);
  });

  test('says so, takes its own scatter, and the error of the distance alone', () => {
    expect(climate.notes.map(({ code }) => code)).toEqual(['own-winters', 'own-days']);
    expect(climate.placeErrorSdC).toBe(0);
    const far = good(climateFromRecord(record, { base, yard: { latDeg: 54.42, lonDeg: -101.1 } }));
    // 0.45 degrees of latitude are 50 km: the published error of one place within 100 km, 1.2 to 1.4
    expect(far.placeErrorSdC).toBeGreaterThan(1.19);
    expect(far.placeErrorSdC).toBeLessThan(1.41);
  });
});

describe('a record of fewer winters', () => {
  const record = recordOf('2018-06-01', '2021-12-15');
  const climate = good(climateFromRecord(record, { base }));

  test('moves the drawn years towards itself, not beyond, and leaves less doubt of the place', () => {
    const [table, own, moved] = [
      winterMean(base.monthlyMeanC),
      winterMean(good(climateFromRecord(record)).monthlyMeanC),
      winterMean(climate.monthlyMeanC),
    ];
    expect(Math.abs(own - table)).toBeGreaterThan(1);
    expect((moved - table) / (own - table)).toBeGreaterThan(0.3);
    expect((moved - table) / (own - table)).toBeLessThan(1);
    expect(climate.placeErrorSdC).toBeLessThan(base.placeErrorSdC);
    expect(climate.placeErrorSdC).toBeGreaterThan(0);
  });

  test('the weight is that of inverse variance', () => {
    // place 1.3 degC; three winters, whole winters scatter by 0.6 of the months' scatter: by hand
    const months = [10, 11, 0, 1, 2].reduce((sum, month) => sum + base.monthlySdMeanC[month]! / 5, 0);
    const recordVar = (0.6 * months) ** 2 / 3.2;
    const weight = 1.3 ** 2 / (1.3 ** 2 + recordVar);
    const own = winterMean(good(climateFromRecord(record)).monthlyMeanC);
    const got = (winterMean(climate.monthlyMeanC) - winterMean(base.monthlyMeanC)) / (own - winterMean(base.monthlyMeanC));
    // November is there four times, the other four months three times: 3.2 on the mean
    expect(Math.abs(got - weight)).toBeLessThan(0.01);
  });

  test('leaves means that the keeper entered alone, for the value entered wins', () => {
    const entered = good(climateFromMonthly(base.monthlyMeanC));
    expect(good(climateFromRecord(record, { base: entered })).monthlyMeanC).toEqual(entered.monthlyMeanC);
  });
});

test('what happened this winter is used as it happened, the rest is drawn', () => {
  const record = recordOf('2020-06-01', '2026-12-15');
  const climate = good(climateFromRecord(record, { base }));
  const [fromDay, toDay] = [epochDayOf('2026-10-01')!, epochDayOf('2027-04-30')!];
  const temps = drawWeather(climate, { seed: 1, entity: 'y', fromDay, toDay, members: 50 });
  const length = toDay - fromDay + 1;
  for (let member = 0; member < 50; member++) {
    for (let day = fromDay; day <= record.toDay; day++) expect(temps[member * length + day - fromDay]).toBe(courseC(day).mean);
  }
  expect(new Set(Array.from({ length: 50 }, (_, member) => temps[member * length + 100])).size).toBeGreaterThan(40);
  // an earlier winter of the same record is no past of a forecast of it: it is drawn
  const before = drawWeather(climate, { seed: 1, entity: 'y', fromDay: fromDay - 3 * 365, toDay: fromDay - 3 * 365 + 60, members: 50 });
  expect(new Set(Array.from({ length: 50 }, (_, member) => before[member * 61])).size).toBeGreaterThan(1);
});

test('a typical year gives its monthly means and no winter of its own', () => {
  const read = good(readStation(epw(days(epochDayOf('2001-01-01')!, 365))));
  const climate = good(climateFromRecord(read));
  expect(climate.own).toBeUndefined();
  expect(climate.notes).toEqual([{ code: 'typical-year' }]);
  const january = days(epochDayOf('2001-01-01')!, 31).reduce((sum, day) => sum + courseC(day).mean / 31, 0);
  expect(climate.monthlyMeanC[0]).toBeCloseTo(january, 6);
  expect(climate.monthlySdMeanC[0]).toBeGreaterThan(1);
});
