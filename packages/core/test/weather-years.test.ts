import { describe, expect, test } from 'vitest';
import { stationClimate } from '../checks/weather.ts';
import { dailyCharacters } from '../src/tables/climate-character.gen.ts';
import { epochDayOfParts } from '../src/units/dates.ts';
import { type Climate, climateForPlace, drawWeather, MONTH_STARTS, places, weatherModel } from '../src/weather/index.ts';

const mean = (values: ArrayLike<number>): number => {
  let sum = 0;
  for (let i = 0; i < values.length; i++) sum += values[i]!;
  return sum / values.length;
};
const sd = (values: readonly number[]): number => {
  const centre = mean(values);
  return Math.sqrt(values.reduce((sum, value) => sum + (value - centre) ** 2, 0) / (values.length - 1));
};
const median = (values: readonly number[]): number => {
  const sorted = [...values].sort((a, b) => a - b);
  const half = Math.floor(sorted.length / 2);
  return sorted.length % 2 === 1 ? sorted[half]! : (sorted[half - 1]! + sorted[half]!) / 2;
};

const YEARS = 2000;

/** Figures of one month over 2,000 drawn years, reckoned from the days alone. */
function monthOfYears(temps: Float64Array, month: number) {
  const [from, to] = [MONTH_STARTS[month]!, MONTH_STARTS[month + 1]!];
  const means: number[] = [];
  const sums = { n: 0, square: 0, cube: 0, lag1: 0, before1: 0, lag5: 0, before5: 0 };
  for (let year = 0; year < YEARS; year++) {
    const at = year * 370 + 5;
    means.push(mean(temps.subarray(at + from, at + to)));
    for (let d = at + from; d < at + to; d++) {
      const [x, x1, x5] = [temps[d]!, temps[d - 1]!, temps[d - 5]!];
      sums.n++;
      sums.square += x * x;
      sums.cube += x ** 3;
      sums.lag1 += x * x1;
      sums.before1 += x1 * x1;
      sums.lag5 += x * x5;
      sums.before5 += x5 * x5;
    }
  }
  const variance = sums.square / sums.n;
  return {
    sd: Math.sqrt(variance),
    sdMean: sd(means),
    r1: sums.lag1 / Math.sqrt(sums.square * sums.before1),
    r5: sums.lag5 / Math.sqrt(sums.square * sums.before5),
    skew: sums.cube / sums.n / variance ** 1.5,
  };
}

describe.each(['albertaFoothills', 'montreal'] as const)(
  '2,000 years of %s have scatter, persistence, scatter of months and skewness together',
  (name) => {
    // 27 December to 31 December of the next year of 365 days: five days of run-up for the correlations
    const fromDay = epochDayOfParts(2000, 12, 27);
    const temps = drawWeather(weatherModel(stationClimate(name)), {
      seed: 11,
      entity: name,
      fromDay,
      toDay: fromDay + 369,
      members: YEARS,
    });
    const printed = dailyCharacters[name];
    test.each(Array.from({ length: 12 }, (_, month) => month))('month %i', (month) => {
      const got = monthOfYears(temps, month);
      // within: half the last printed digit and three sampling errors of 2,000 months (1.2 % each at these correlations)
      expect(Math.abs(got.sd - printed.sdC[month]!)).toBeLessThan(0.05 + 0.036 * printed.sdC[month]!);
      // within: two hundredths, the sampling error of the printed figure itself
      expect(Math.abs(got.r1 - printed.r1[month]!)).toBeLessThan(0.025);
      // within: it gives way to the other three; the printed figure's own sampling error is about 0.1
      expect(Math.abs(got.r5 - printed.r5[month]!)).toBeLessThan(0.15);
      // The printed 2.6 degC of the foothills' January, between months of 4.8, cannot be had with its r1 of 0.84: 3.7 comes out.
      // It rests on 22 winters, whose sampling error is 15 %; docs/decisions/0004-weather-years.md says so.
      const share = name === 'albertaFoothills' && month === 0 ? 0.45 : 0.16;
      expect(Math.abs(got.sdMean / printed.sdMeanC[month]! - 1)).toBeLessThan(share);
      // within: the printed digit's half, and sampling: about 0.1 for skewness of 2,000 months of some 4 independent spells
      if (name === 'albertaFoothills') expect(Math.abs(got.skew - dailyCharacters.albertaFoothills.skew[month]!)).toBeLessThan(0.15);
    });
  },
);

/**
 * Classes of winter with what was published of them: [Nov-Mar mean from, to), sd of that mean, longest run of days at or below
 * -20 degC (median winter, longest of a record), coldest 7-day mean (median, worst of a record). Source: [DAILY-SPREAD], medians over
 * stations of 18 to 30 winters, most of them in Europe and Asia. Nothing in the generator was set by these rows.
 */
const CLASSES = [
  { from: -25, to: -18, sdC: 2.1, run: [30, 71], weekC: [-35.2, -41.2] },
  { from: -18, to: -14, sdC: 2.0, run: [15, 37], weekC: [-30.6, -37.4] },
  { from: -14, to: -10, sdC: 2.1, run: [8, 20], weekC: [-27.0, -35.8] },
  { from: -10, to: -7, sdC: 1.8, run: [4, 12], weekC: [-21.7, -30.7] },
  { from: -7, to: -4, sdC: 1.9, run: [2, 9], weekC: [-18.1, -26.8] },
  { from: -4, to: -1, sdC: 1.9, run: [0, 6], weekC: [-13.3, -22.6] },
  { from: -1, to: 3, sdC: 1.6, run: [0, 2], weekC: [-8.9, -16.3] },
] as const;

const RECORD = 25;

/** Winters of one place from October to April. */
function wintersOf(climate: Climate, years: number) {
  const fromDay = epochDayOfParts(2001, 10, 1);
  const days = 212;
  const temps = drawWeather(
    { ...climate, placeErrorSdC: 0 },
    { seed: 5, entity: climate.name, fromDay, toDay: fromDay + days - 1, members: years },
  );
  return Array.from({ length: years }, (_, year) => {
    const x = temps.subarray(year * days, (year + 1) * days);
    let [run, longest, week, coldest] = [0, 0, 0, Number.POSITIVE_INFINITY];
    let below40 = 0;
    for (let d = 0; d < days; d++) {
      run = x[d]! <= -20 ? run + 1 : 0;
      longest = Math.max(longest, run);
      if (x[d]! <= -40) below40++;
      week += x[d]! - (d >= 7 ? x[d - 7]! : 0);
      if (d >= 6) coldest = Math.min(coldest, week / 7);
    }
    return { meanC: mean(x.subarray(31, 182)), longest, weekC: coldest, below40 };
  });
}

const records = <T>(winters: readonly T[], of: (winter: T) => number, pick: (...values: number[]) => number): number => {
  const found: number[] = [];
  for (let i = 0; i + RECORD <= winters.length; i += RECORD) found.push(pick(...winters.slice(i, i + RECORD).map(of)));
  return median(found);
};

describe('2,000 winters of every class, checked and not fitted', () => {
  const DAYS_IN = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];
  const climates = places().map(({ place }) => {
    const climate = climateForPlace(place);
    if (!climate.ok) throw new Error(place);
    return climate.value;
  });
  const winterMean = (climate: Climate) =>
    [10, 11, 0, 1, 2].reduce((sum, month) => sum + (climate.monthlyMeanC[month]! * DAYS_IN[month]!) / 151, 0);

  test.each(CLASSES)('$from to $to degC', (row) => {
    const members = climates.filter((climate) => winterMean(climate) >= row.from && winterMean(climate) < row.to);
    expect(members.length).toBeGreaterThanOrEqual(7);
    const years = RECORD * Math.ceil(YEARS / members.length / RECORD);
    const of = members.map((climate) => {
      const winters = wintersOf(climate, years);
      return {
        sdC: sd(winters.map((winter) => winter.meanC)),
        run: median(winters.map((winter) => winter.longest)),
        longest: records(winters, (winter) => winter.longest, Math.max),
        weekC: median(winters.map((winter) => winter.weekC)),
        worstC: records(winters, (winter) => winter.weekC, Math.min),
      };
    });
    const got = (pick: (one: (typeof of)[number]) => number) => median(of.map(pick));
    // within a quarter: a sd of 18 to 30 winters is known to 13 to 17 %, and the stations of a class share their winters
    expect(Math.abs(got((one) => one.sdC) / row.sdC - 1)).toBeLessThan(0.25);
    // within three days or 30 %: the classes are 3 to 7 degC wide and ours hold other places
    expect(Math.abs(got((one) => one.run) - row.run[0])).toBeLessThanOrEqual(Math.max(3, 0.3 * row.run[0]));
    expect(Math.abs(got((one) => one.longest) - row.run[1])).toBeLessThanOrEqual(Math.max(3, 0.3 * row.run[1]));
    // within 2 degC; the coldest class 4: ours average 2 degC milder than its middle, the published one is Siberian
    expect(Math.abs(got((one) => one.weekC) - row.weekC[0])).toBeLessThan(row.from === -25 ? 4 : 2);
    expect(Math.abs(got((one) => one.worstC) - row.weekC[1])).toBeLessThan(row.from === -25 ? 4 : 2.5);
  });

  test.each([
    ['Winnipeg MB', 2.7],
    ['Fargo ND', 2.6],
    ['Ulaanbaatar', 2.3],
    ['Edmonton city AB', 2.2],
  ] as const)('whole winters of %s differ with an sd near the published %d degC', (place, published) => {
    const climate = climates.find((one) => one.name === place)!;
    const got = sd(wintersOf(climate, YEARS).map((winter) => winter.meanC));
    // within a quarter: 18 or 19 winters leave the printed figure uncertain by 17 %; all four come out low, see docs/decisions/0004-weather-years.md
    expect(Math.abs(got / published - 1)).toBeLessThan(0.25);
  });

  test('Fairbanks has the published few days at or below -40 degC and its coldest week', () => {
    const winters = wintersOf(climates.find((one) => one.name === 'Fairbanks AK')!, YEARS);
    // published 2.6 days, 18 winters with some 2 spells each: known to about a third
    expect(Math.abs(mean(winters.map((winter) => winter.below40)) - 2.6)).toBeLessThan(0.9);
    // published median -36.5 and worst -42.2 degC; within 3 and 3.5: one station, 18 winters
    expect(Math.abs(median(winters.map((winter) => winter.weekC)) + 36.5)).toBeLessThan(3);
    expect(Math.abs(records(winters, (winter) => winter.weekC, Math.min) + 42.2)).toBeLessThan(3.5);
  });

  test('a winter that comes once in ten years is colder than the mean by the published 2.3 degC', () => {
    const below = climates
      .filter((climate) => winterMean(climate) < 0)
      .filter((_, i) => i % 5 === 0)
      .map((climate) => {
        const means = wintersOf(climate, 200).map((winter) => winter.meanC);
        return mean(means) - [...means].sort((a, b) => a - b)[19]!;
      });
    expect(below.length).toBeGreaterThan(20);
    // within a quarter, as the sd it follows from
    expect(Math.abs(median(below) / 2.3 - 1)).toBeLessThan(0.25);
  });
});
