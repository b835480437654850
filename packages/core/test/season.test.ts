import { describe, expect, test } from 'vitest';
import { sunDay, warmHours } from '../src/phenology/index.ts';
import { SEASON_DATES, type SeasonAnswer, type SeasonInput, season } from '../src/season/index.ts';
import { epochDayOf } from '../src/units/dates.ts';
import { climateForPlace } from '../src/weather/index.ts';

const of = (input: SeasonInput): SeasonAnswer => {
  const answer = season({ members: 100, ...input });
  if (!answer.ok) throw new Error(JSON.stringify(answer.error));
  return answer.value;
};
const refusal = (input: SeasonInput) => {
  const answer = season({ members: 20, ...input });
  return answer.ok ? null : answer.error;
};
const means = (place: string): readonly number[] => {
  const climate = climateForPlace(place);
  if (!climate.ok) throw new Error(place);
  return climate.value.monthlyMeanC;
};
const day = (iso: string | null) => (iso === null ? Number.NaN : epochDayOf(iso)!);

describe('dates of a season', () => {
  test('one year in ten never comes after half, nor half after nine in ten', () => {
    for (const place of ['The Pas MB', 'Winnipeg MB', 'Fairbanks AK', 'Montreal QC', 'Syracuse NY']) {
      const answer = of({ place });
      for (const name of SEASON_DATES) {
        const known = [answer[name].p10, answer[name].p50, answer[name].p90].filter((one) => one !== null);
        expect(known, `${place} ${name}`).toEqual([...known].sort());
      }
    }
  });

  test('two degrees warmer: every autumn date later or the same, every spring date earlier or the same', () => {
    const base = means('Winnipeg MB');
    const [cool, warm] = [0, 2].map((more) => of({ monthlyMeanC: base.map((mean) => mean + more), lat: 49.9 }));
    for (const name of [
      'firstFrost',
      'guardDay',
      'lastGluingDay',
      'lastFrameDay',
      'clusterDay',
      'lastFeedingDay',
      'lastFlight',
      'coldDay',
    ] as const)
      expect(day(warm![name].p50), name).toBeGreaterThan(day(cool![name].p50));
    for (const name of ['cleansingFlight', 'firstFlight', 'firstPollen', 'firstForage', 'lastFrost'] as const)
      expect(day(warm![name].p50), name).toBeLessThan(day(cool![name].p50));
    for (const name of ['requeenBy', 'winterBeesTo', 'mitesLow', 'broodlessFrom'] as const) expect(warm![name], name).toEqual(cool![name]);
  });

  test('farther north with the same weather: brood ends, queens and mites are due earlier, the day of midwinter is shorter', () => {
    const monthlyMeanC = means('Winnipeg MB');
    const [south, north] = [45, 58].map((lat) => of({ monthlyMeanC, lat }));
    for (const name of ['requeenBy', 'ownQueenBy', 'winterBeesFrom', 'winterBeesTo', 'mitesLow', 'broodlessFrom'] as const)
      expect(day(north![name].p50), name).toBeLessThan(day(south![name].p50));
    expect(north!.lastFrost).toEqual(south!.lastFrost);
    expect(north!.sun[1]!.dayHours).toBeLessThan(south!.sun[1]!.dayHours);
  });

  test('without a longitude the length of day is told and no sunrise', () => {
    const { sun } = of({ monthlyMeanC: means('Winnipeg MB'), lat: 50 });
    for (const line of sun) expect([line.riseUtc, line.setUtc]).toEqual([null, null]);
    expect(of({ place: 'Winnipeg MB' }).sun[1]!.riseUtc).toMatch(/^\d\d:\d\d$/);
  });

  test("the keeper's own dates overrule, and pull what hangs on them", () => {
    const answer = of({ place: 'Winnipeg MB', year: 2026, own: { firstForage: '2027-05-12', winterBeesTo: '2026-09-20' } });
    expect(answer.firstForage).toEqual({ p10: '2027-05-12', p50: '2027-05-12', p90: '2027-05-12' });
    expect(answer.winterBeesTo.p10).toBe('2026-09-20');
  });
});

describe('what cannot be a season', () => {
  test('dates out of order, of another year, of no calendar, by no name', () => {
    const own = (dates: Record<string, string>) => refusal({ place: 'Winnipeg MB', year: 2026, own: dates });
    expect(own({ firstPollen: '2027-05-20', firstForage: '2027-05-01' })).toEqual({
      kind: 'date-order',
      field: 'own.firstForage',
      value: '2027-05-01',
      notBefore: '2027-05-20',
    });
    expect(own({ firstForage: '2026-05-12' })).toEqual({
      kind: 'date-order',
      field: 'own.firstForage',
      value: '2026-05-12',
      notBefore: '2027-01-01',
      notAfter: '2027-07-14',
    });
    expect(own({ lastFeedingDay: '2027-09-25' })).toMatchObject({ kind: 'date-order', notBefore: '2026-08-01', notAfter: '2026-12-31' });
    expect(own({ lastFrost: '2027-02-30' })).toEqual({ kind: 'not-a-date', field: 'own.lastFrost', value: '2027-02-30' });
    expect(own({ swarmDay: '2027-06-01' })).toMatchObject({ kind: 'unknown-choice', field: 'own', value: 'swarmDay' });
  });

  test('south of the equator, a latitude or longitude of no globe, no place at all', () => {
    expect(refusal({ monthlyMeanC: means('Winnipeg MB'), lat: -45 })).toMatchObject({ kind: 'out-of-range', field: 'lat' });
    expect(refusal({ place: 'Winnipeg MB', lon: 200 })).toMatchObject({ kind: 'out-of-range', field: 'lon' });
    expect(refusal({ monthlyMeanC: means('Winnipeg MB') })).toEqual({ kind: 'missing', field: 'lat' });
    expect(refusal({})).toEqual({ kind: 'missing', field: 'place' });
    expect(refusal({ place: 'Winnipeg MB', members: 3 })).toMatchObject({ kind: 'out-of-range', field: 'members' });
  });

  test('beyond the polar circle it is answered, with a sun that does not rise or set, and said', () => {
    const answer = of({ monthlyMeanC: means('Fairbanks AK'), lat: 69.5, lon: 25 });
    expect(answer.notes).toContain('polar-circle');
    expect(answer.notes).toContain('window-extrapolated');
    expect(answer.sun.map(({ dayHours }) => dayHours)).toEqual([expect.any(Number), 0, expect.any(Number), 24]);
    expect(answer.sun[1]).toMatchObject({ riseUtc: null, setUtc: null });
    expect(of({ monthlyMeanC: means('Fairbanks AK'), lat: 66 }).notes).not.toContain('polar-circle');
  });

  test('a climate without frost or winter is answered without those dates, and said', () => {
    const answer = of({ monthlyMeanC: [20, 20, 21, 22, 24, 26, 27, 27, 26, 24, 22, 21], lat: 25 });
    expect(answer.notes).toEqual(expect.arrayContaining(['no-frost', 'no-winter']));
    expect([answer.firstFrost.p50, answer.clusterDay.p50, answer.coldDay.p50, answer.lastFrost.p50]).toEqual([null, null, null, null]);
  });
});

describe('the sun', () => {
  test('the day grows to midsummer and shrinks to midwinter, and rise, noon and set keep their order', () => {
    for (const [lat, lon] of [
      [43, -80],
      [54, -101],
      [60, 25],
      [65.5, 130],
    ] as const) {
      const hours = (iso: string) => sunDay(lat, lon, day(iso)).hours;
      expect(hours('2026-12-21')).toBeLessThan(hours('2027-03-20'));
      expect(hours('2027-03-20')).toBeLessThan(hours('2027-06-21'));
      for (let d = day('2026-06-01'); d < day('2027-06-01'); d += 7) {
        const { riseMinute, noonMinute, setMinute } = sunDay(lat, lon, d);
        expect(riseMinute!).toBeLessThan(noonMinute);
        expect(noonMinute).toBeLessThan(setMinute!);
      }
    }
  });

  test('a place fifteen degrees farther east sees the sun an hour earlier', () => {
    const [west, east] = [0, 15].map((lon) => sunDay(50, lon, day('2026-10-01')).riseMinute!);
    // within: the sun moves on by a part of a minute in that hour
    expect(west! - east!).toBeGreaterThan(59.9);
    expect(west! - east!).toBeLessThan(60.1);
  });

  test('warm hours fall with the limit and never exceed the daylight', () => {
    let before = 10;
    for (let aboveC = -5; aboveC <= 25; aboveC++) {
      const now = warmHours(20, 2, { aboveC, daylightHours: 10 });
      expect(now).toBeLessThanOrEqual(before);
      before = now;
    }
    expect(before).toBe(0);
    for (let max = -5; max < 30; max += 0.1) expect(warmHours(max, max - 11.4, { aboveC: max, daylightHours: 10 })).toBeCloseTo(0, 6);
    expect(() => warmHours(1, 2, { aboveC: 0, daylightHours: 10 })).toThrow(RangeError);
    expect(() => sunDay(Number.NaN, 0, 0)).toThrow(RangeError);
    expect(() => sunDay(50, 181, 0)).toThrow(RangeError);
  });
});
