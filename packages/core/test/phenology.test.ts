import { describe, expect, test } from 'vitest';
import {
  degreeDays,
  drawForageSums,
  firstFlightDays,
  firstForageDays,
  SEASON_NAMES,
  seasonDates,
  seasonDistribution,
  weather,
} from '../src/phenology/index.ts';
import { epochDayOf } from '../src/units/dates.ts';
import { type Climate, climateForPlace, drawWeather, places, withoutSpread } from '../src/weather/index.ts';

const climateOf = (place: string): Climate => {
  const climate = climateForPlace(place);
  if (!climate.ok) throw new Error(place);
  return climate.value;
};
const thePas = climateOf('The Pas MB');
const day = (iso: string): number => epochDayOf(iso)!;
const daysBetween = (a: string | null, b: string | null): number => day(a!) - day(b!);

describe('dates of one series', () => {
  const fromDay = day('2026-07-01');
  const days = day('2027-07-31') - fromDay + 1;
  const temps = drawWeather(thePas, { seed: 2, entity: 'yard', fromDay, toDay: fromDay + days - 1, members: 40 });
  const seriesOf = (member: number) => ({ meanC: temps.subarray(member * days, (member + 1) * days), fromDay });

  test('the ensemble functions give each member the dates its own series gives', () => {
    const sums = drawForageSums({ seed: 2, entity: 'yard', members: 40 });
    const forage = firstForageDays({ tempsC: temps, fromDay, days }, sums);
    const flight = firstFlightDays({ tempsC: temps, fromDay, days }, thePas.rangeC);
    for (let member = 0; member < 40; member++) {
      const dates = seasonDates(seriesOf(member), { rangeC: thePas.rangeC, forageSumCd: sums[member]! });
      expect(forage[member]).toBe(dates.firstForage);
      expect(flight[member]).toBe(dates.firstFlight);
    }
  });

  test('one row of weather serves all members, and alike sums give alike dates', () => {
    const row = temps.slice(0, days);
    const sums = new Float64Array(10).fill(182);
    const forage = firstForageDays({ tempsC: row, fromDay, days }, sums);
    expect(new Set(forage).size).toBe(1);
    expect(() => firstForageDays({ tempsC: temps, fromDay, days }, sums)).toThrow(RangeError);
  });

  test('a heat sum that is not reached has no date', () => {
    const cold = new Float64Array(200).fill(-5);
    expect(firstForageDays({ tempsC: cold, fromDay, days: 200 }, Float64Array.of(182))[0]).toBe(Number.POSITIVE_INFINITY);
    expect(firstFlightDays({ tempsC: cold, fromDay, days: 200 }, thePas.rangeC)[0]).toBe(Number.POSITIVE_INFINITY);
  });

  test('a series that does not reach far enough has no date rather than a wrong one', () => {
    const short = { meanC: temps.subarray(0, 100), fromDay };
    const dates = seasonDates(short, { rangeC: thePas.rangeC });
    expect(dates.lastFeedingDay).toBeNull();
    expect(dates.lastFrost).toBeNull();
    expect(dates.firstForage).toBeNull();
    const late = { meanC: temps.subarray(days - 120, days), fromDay: fromDay + days - 120 };
    expect(seasonDates(late, { rangeC: thePas.rangeC }).firstForage).toBeNull();
    expect(seasonDates(late, { rangeC: thePas.rangeC }).clusterDay).toBeNull();
  });

  test("the keeper's own dates overrule", () => {
    const own = { firstForage: day('2027-05-20'), lastFeedingDay: day('2026-09-25') };
    const dates = seasonDates(seriesOf(0), { rangeC: thePas.rangeC, own });
    expect(dates.firstForage).toBe(own.firstForage);
    expect(dates.lastFeedingDay).toBe(own.lastFeedingDay);
    const odds = seasonDistribution(thePas, { seed: 1, year: 2026, members: 50, own });
    expect(odds.firstForage).toEqual({ p10: '2027-05-20', p50: '2027-05-20', p90: '2027-05-20' });
  });

  test('a warmer year feeds later, forages earlier and freezes less, day by day', () => {
    for (let member = 0; member < 40; member++) {
      const base = seriesOf(member);
      const warm = { fromDay, meanC: base.meanC.map((value) => value + 1.5) };
      const [cool, mild] = [base, warm].map((series) => seasonDates(series, { rangeC: thePas.rangeC }));
      expect(mild!.lastFeedingDay!).toBeGreaterThanOrEqual(cool!.lastFeedingDay!);
      expect(mild!.clusterDay!).toBeGreaterThanOrEqual(cool!.clusterDay!);
      expect(mild!.firstForage!).toBeLessThan(cool!.firstForage!);
      expect(mild!.firstPollen!).toBeLessThan(cool!.firstPollen!);
      expect(mild!.firstFlight!).toBeLessThanOrEqual(cool!.firstFlight!);
      expect(mild!.lastFrost!).toBeLessThanOrEqual(cool!.lastFrost!);
      expect(mild!.firstFrost!).toBeGreaterThanOrEqual(cool!.firstFrost!);
    }
  });

  test('heat counted by another method is never less than by averages', () => {
    for (let i = 0; i < 500; i++) {
      const [minC, range, baseC] = [-20 + (i % 37), 1 + (i % 19), (i % 13) - 1];
      const average = degreeDays(minC + range, minC, baseC);
      for (const method of ['reset', 'four-case', 'single-sine'] as const) {
        expect(degreeDays(minC + range, minC, baseC, method)).toBeGreaterThanOrEqual(average - 1e-9);
      }
    }
    expect(() => degreeDays(1, 2, 0)).toThrow(RangeError);
    expect(() => degreeDays(Number.NaN, 2, 0)).toThrow(RangeError);
  });
});

describe('dates of a climate', () => {
  test('without spread of weather only the heat sums and the brood start have width', () => {
    const odds = seasonDistribution(withoutSpread(thePas), { seed: 1, year: 2026, members: 200 });
    for (const name of SEASON_NAMES) {
      if (name === 'firstForage' || name === 'firstPollen') expect(odds[name].p10).not.toBe(odds[name].p90);
      else expect(odds[name].p10).toBe(odds[name].p90);
    }
  });

  test('the year has its order', () => {
    for (const place of ['The Pas MB', 'Winnipeg MB', 'Montreal QC', 'Fargo ND', 'Syracuse NY']) {
      const odds = seasonDistribution(climateOf(place), { seed: 1, year: 2026, members: 300 });
      const order = [odds.lastFeedingDay, odds.broodlessTo, odds.firstFlight, odds.firstPollen, odds.firstForage].map((one) => one.p50!);
      expect([...order].sort(), place).toEqual(order);
      for (const one of Object.values(odds))
        expect([one.p10, one.p50, one.p90].map(String)).toEqual([one.p10, one.p50, one.p90].map(String).sort());
    }
  });

  // Published of an Alberta foothills record, 2003-2024 [DAILY-SPREAD]: median last frost 21 May (28 Apr - 8 Jun), first 16 Sep (1 Sep - 4 Oct).
  // Calgary lies at the foot of the same hills; a place's own nights differ, so within 10 days for the middle and 14 for the ends.
  test('frost at the foot of the Alberta foothills comes and goes as recorded there', () => {
    const answer = weather({ place: 'Calgary AB', year: 2001 });
    if (!answer.ok) throw new Error(answer.error.kind);
    const { lastFrost, firstFrost } = answer.value;
    expect(Math.abs(daysBetween(lastFrost.p50, '2001-05-21'))).toBeLessThanOrEqual(10);
    expect(Math.abs(daysBetween(lastFrost.p5, '2001-04-28'))).toBeLessThanOrEqual(14);
    expect(Math.abs(daysBetween(lastFrost.p95, '2001-06-08'))).toBeLessThanOrEqual(14);
    expect(Math.abs(daysBetween(firstFrost.p50, '2001-09-16'))).toBeLessThanOrEqual(10);
    expect(Math.abs(daysBetween(firstFrost.p5, '2001-09-01'))).toBeLessThanOrEqual(14);
    expect(Math.abs(daysBetween(firstFrost.p95, '2001-10-04'))).toBeLessThanOrEqual(14);
  });
});

describe('weather of a place', () => {
  test('a place of the table has normals and no daily record', () => {
    const answer = weather({ place: 'the pas' });
    if (!answer.ok) throw new Error(answer.error.kind);
    const { station, days, missingDays, rejected, winters, monthlyMeanC, sources } = answer.value;
    expect({ station, days, missingDays, rejected, winters }).toEqual({
      station: 'The Pas MB',
      days: 0,
      missingDays: 0,
      rejected: [],
      winters: 0,
    });
    expect(monthlyMeanC).toEqual([-18.8, -16.2, -9, 0.7, 8.4, 15, 18.4, 17.1, 11.1, 3.1, -7.2, -15.8]); // normals 1991-2020 [ECCC-WMO9120]
    expect(sources[0]).toMatchObject({ period: '1991-2020', source: 'ECCC-WMO9120', mark: 'READ' });
  });

  test('every place of the list answers', () => {
    for (const { place } of places()) expect(weather({ place, members: 20 }).ok, place).toBe(true);
  });

  test.each([
    [{ place: 'rochester' }, { kind: 'unknown-choice', choices: ['Rochester MN', 'Rochester NY'] }],
    [{ place: '' }, { kind: 'missing', field: 'place' }],
    [
      { place: 'The Pas MB', year: 1800 },
      { kind: 'out-of-range', field: 'year' },
    ],
    [
      { place: 'The Pas MB', members: 20.5 },
      { kind: 'implausible', field: 'members' },
    ],
    [
      { place: 'The Pas MB', seed: Number.NaN },
      { kind: 'not-a-number', field: 'seed' },
    ],
  ])('%j is refused', (input, error) => {
    expect(weather(input)).toMatchObject({ ok: false, error });
  });

  test('the same question has the same answer', () => {
    expect(weather({ place: 'Fargo ND', seed: 4 })).toEqual(weather({ place: 'Fargo ND', seed: 4 }));
  });
});
