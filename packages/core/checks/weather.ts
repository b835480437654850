import { normalQuantile } from '../src/chance/index.ts';
import { dailyCharacters } from '../src/tables/climate-character.gen.ts';
import { olderNormals } from '../src/tables/climate-older-normals.gen.ts';
import { climatePlaces } from '../src/tables/climate-places.gen.ts';
import { stationSpreads } from '../src/tables/climate-spread.gen.ts';
import { classSpreads } from '../src/tables/climate-spread-by-class.gen.ts';
import type { DailyCharacter } from '../src/tables/climate-types.ts';
import { weatherParameters } from '../src/tables/parameters-weather.gen.ts';
import {
  type Climate,
  choiceNotes,
  climateForPlace,
  MONTH_STARTS,
  type MonthMoments,
  monthMoments,
  persistence,
  placeErrorC,
  rangeOf,
  skewOf,
  spreadOfClass,
  unlikenessKm,
  type WeatherModel,
  weatherModel,
  yearlyCurve,
} from '../src/weather/index.ts';
import { bentRaw } from '../src/weather/skew.ts';
import type { Check } from './check.ts';

const total = (rows: readonly (readonly number[] | null)[]): number =>
  rows.flatMap((row) => row ?? []).reduce((sum, value) => sum + value, 0);
const largest = (values: readonly number[]): number => values.reduce((most, value) => Math.max(most, Math.abs(value)), 0);

const characters: readonly DailyCharacter[] = Object.values(dailyCharacters);

/** Sums over the files as received, made with exact decimals by another program; any one figure moved is noticed. */
const RECEIVED = 'decimal sums over the received table';
const totals: readonly Check[] = (
  [
    ['monthly means of all places', 'degC', 14277.5, () => total(climatePlaces.map((row) => row.meanC))],
    ['monthly maxima of all places', 'degC', 25439.1, () => total(climatePlaces.map((row) => row.maxC))],
    ['monthly minima of all places', 'degC', -2011.9, () => total(climatePlaces.map((row) => row.minC))],
    [
      'lowest temperatures of all places',
      'degC',
      -5805.6,
      () => total(climatePlaces.map((row) => (row.recordLowC === null ? null : [row.recordLowC]))),
    ],
    ['latitudes of all places', 'deg', 10542.047, () => total(climatePlaces.map((row) => [row.latDeg]))],
    ['longitudes of all places', 'deg', -17081.146, () => total(climatePlaces.map((row) => [row.lonDeg]))],
    ['heights of all places', 'm', 146850, () => total(climatePlaces.map((row) => [row.elevM]))],
    ['scatter between years of all stations', 'degC', 1810.12, () => total(stationSpreads.map((row) => row.sdBetweenYearsC))],
    ['scatter inside months of all stations', 'degC', 2989.4, () => total(stationSpreads.map((row) => row.sdDailyInMonthC))],
    ['scatter between years of all classes', 'degC', 150.8, () => total(classSpreads.map((row) => row.sdBetweenYearsC))],
    ['scatter inside months of all classes', 'degC', 284.7, () => total(classSpreads.map((row) => row.sdDailyInMonthC))],
    ['daily scatter of the two stations', 'degC', 121.6, () => total(characters.map((row) => row.sdC))],
    ['correlations at one day of the two stations', '1', 17.46, () => total(characters.map((row) => row.r1))],
    ['correlations at five days of the two stations', '1', 3.72, () => total(characters.map((row) => row.r5))],
    ['skewness of the foothills', '1', -3.9, () => total(characters.map((row) => row.skew ?? null))],
    ['scatter between years of the two stations', 'degC', 51.8, () => total(characters.map((row) => row.sdMeanC))],
    [
      'lower bounds of the classes',
      'degC',
      -92,
      () => total(classSpreads.map((row) => (row.januaryLowC === null ? null : [row.januaryLowC]))),
    ],
    ['upper bounds of the classes', 'degC', -88, () => total(classSpreads.map((row) => [row.januaryHighC]))],
  ] as const
).map(([name, unit, expected, ours]) => ({
  name: `sum of the ${name} is that of the table as received`,
  unit,
  expected,
  within: 0.0005,
  why: 'the table is copied, not rounded',
  source: RECEIVED,
  mark: 'ARITHMETIC',
  ours,
}));

/** Rows as printed; within half the last printed digit where the generator is free to meet them. */
const PRINTED = {
  albertaFoothills: {
    sdC: [9.5, 8.5, 6.9, 4.9, 4.1, 3.1, 2.8, 3.2, 4.1, 4.7, 6.6, 8.5],
    r1: [0.84, 0.85, 0.83, 0.82, 0.75, 0.71, 0.69, 0.7, 0.76, 0.8, 0.8, 0.82],
    r5: [0.16, 0.3, 0.39, 0.29, 0.15, 0.02, 0.16, 0.09, 0.19, 0.29, 0.18, 0.27],
    sdMeanC: [2.6, 4.8, 3.1, 2.2, 1.9, 0.9, 1.1, 1.2, 2.0, 2.1, 3.4, 4.8],
  },
  montreal: {
    sdC: [7.0, 6.4, 5.3, 4.0, 3.9, 3.4, 3.0, 3.2, 3.8, 4.2, 4.3, 6.2],
    r1: [0.69, 0.71, 0.71, 0.7, 0.66, 0.63, 0.67, 0.68, 0.66, 0.65, 0.64, 0.69],
    r5: [0.13, 0.16, 0.16, 0.16, 0.12, 0.01, 0.05, 0.07, 0.03, 0.08, 0.09, 0.17],
    sdMeanC: [3.0, 2.9, 2.2, 1.6, 1.6, 1.0, 0.9, 1.2, 1.4, 1.6, 1.4, 2.9],
  },
} as const;
const PRINTED_SKEW = [-0.6, -0.5, -0.7, -0.8, -0.1, 0.6, 0.2, 0, -0.2, -0.6, -0.6, -0.6];

type StationName = keyof typeof PRINTED;

/** A climate with one station's scatter round a flat curve: the rows are anomalies, so no slope of a season belongs in them. */
export function stationClimate(name: StationName): Climate {
  const row: DailyCharacter = dailyCharacters[name];
  const inside = row.sdC.map((sd, month) => {
    const days = MONTH_STARTS[month + 1]! - MONTH_STARTS[month]!;
    return Math.sqrt(((sd ** 2 - row.sdMeanC[month]! ** 2) * days) / (days - 1));
  });
  const zeros = Array.from({ length: 12 }, () => 0);
  const flat = { name, monthlyMeanC: zeros, rangeC: zeros, placeErrorSdC: 0, from: [], notes: [] };
  return { ...flat, monthlySdMeanC: row.sdMeanC, dailySdC: inside, r1: row.r1, r5: row.r5, skew: row.skew ?? zeros };
}

interface Solved {
  readonly shape: WeatherModel['shape'];
  readonly moments: readonly MonthMoments[];
}

const solved = new Map<string, Solved>();
/** Solved once for the same figures; the key holds everything that goes in. */
function solvedFor(name: StationName): Solved {
  const climate = stationClimate(name);
  const key = JSON.stringify([climate, weatherParameters.slowTimeDays.value]);
  let known = solved.get(key);
  if (known === undefined) {
    const model = weatherModel(climate);
    known = { shape: model.shape, moments: monthMoments(model) };
    solved.set(key, known);
  }
  return known;
}

const differences = (name: StationName, quantity: keyof (typeof PRINTED)['montreal'], of: (m: MonthMoments) => number): readonly number[] =>
  solvedFor(name).moments.map((moments, month) => of(moments) - PRINTED[name][quantity][month]!);

const stations: readonly Check[] = (['albertaFoothills', 'montreal'] as const).flatMap((name): Check[] => {
  const text = name === 'montreal' ? 'Montreal 1961-1994' : 'Alberta foothills 2003-2024';
  const common = { expected: 0, source: 'DAILY-SPREAD', mark: 'COMPUTED', usedForSetting: true } as const;
  return [
    {
      ...common,
      name: `${text}: largest miss of the scatter of daily anomalies in any month`,
      unit: 'degC',
      within: 0.05,
      why: 'half the last printed digit',
      ours: () => largest(differences(name, 'sdC', (m) => Math.sqrt(m.variance))),
    },
    {
      ...common,
      name: `${text}: largest miss of the correlation from day to day in any month`,
      unit: '1',
      within: 0.02,
      why: 'two hundredths: the sampling error of a correlation of 0.8 over 22 months is 0.02 to 0.03',
      ours: () => largest(differences(name, 'r1', (m) => m.r1)),
    },
    {
      ...common,
      name: `${text}: largest miss of the correlation at five days in any month`,
      unit: '1',
      within: 0.15,
      why: 'it gives way to the other three where all four cannot be had; its own sampling error over 22 to 34 months is about 0.1',
      ours: () => largest(differences(name, 'r5', (m) => m.r5)),
    },
    {
      ...common,
      name: `${text}: largest miss of the scatter of monthly means between years, January of the foothills apart`,
      unit: '1',
      within: 0.12,
      why: 'a share; 22 to 34 years leave the printed figure itself uncertain by 12 to 15 %',
      ours: () =>
        largest(
          differences(name, 'sdMeanC', (m) => Math.sqrt(m.varianceOfMean)).map((miss, month) =>
            name === 'albertaFoothills' && month === 0 ? 0 : miss / PRINTED[name].sdMeanC[month]!,
          ),
        ),
    },
  ];
});

/** Skewness of the bent deviate in the middle of a month, over 40,000 places of equal chance. */
function skewInMiddle(shape: WeatherModel['shape'], month: number): number {
  const { bend, centre, perUnit } = shape[Math.floor((MONTH_STARTS[month]! + MONTH_STARTS[month + 1]!) / 2)]!;
  const n = 40_000;
  let [mean, square, cube] = [0, 0, 0];
  for (let i = 0; i < n; i++) {
    const z = normalQuantile((i + 0.5) / n);
    const y = bend === 0 ? z : (bentRaw(z, bend) - centre) * perUnit;
    mean += y / n;
    square += (y * y) / n;
    cube += y ** 3 / n;
  }
  return (cube - 3 * mean * square + 2 * mean ** 3) / (square - mean * mean) ** 1.5;
}

const meanOfWinter = (place: string): number => {
  const climate = climateForPlace(place);
  if (!climate.ok) return Number.NaN;
  return [10, 11, 0, 1, 2].reduce((sum, month) => sum + climate.value.monthlyMeanC[month]! / 5, 0);
};

/** Two rows for one town or its edge, from different sources or stations. */
const TOWNS = [
  ['Bagotville (Saguenay) QC', 'Arvida (Saguenay) QC'],
  ['Edmonton Intl AB', 'Edmonton city AB'],
  ['Omaha Eppley NE', 'Omaha (North) NE'],
] as const;

/** Median of the Canadian rows as printed beside the table. */
const PRINTED_RANGE_CA = [9.7, 11.1, 11.7, 12.1, 12.9, 12.4, 11.9, 11.7, 11.3, 8.6, 7.8, 8.5];

const tables: readonly Check[] = [
  {
    name: 'a monthly mean lies halfway between its maximum and minimum, largest miss over all places and months',
    unit: 'degC',
    expected: 0,
    within: 0.1001,
    why: 'mean, maximum and minimum are each rounded to a tenth',
    source: 'climate table: the three columns against one another',
    mark: 'ARITHMETIC',
    ours: () =>
      largest(
        climatePlaces.flatMap((row) => (row.maxC && row.minC ? row.meanC.map((m, i) => m - (row.maxC![i]! + row.minC![i]!) / 2) : [])),
      ),
  },
  ...TOWNS.map(
    ([a, b]): Check => ({
      name: `two sources agree on the winter of one town: ${a}, ${b}`,
      unit: 'degC',
      expected: 0,
      within: 3.3,
      why: 'twice the published root mean square error of the nearest place within 100 km, 1.6 to 1.7 degC: 19 pairs in 20',
      source: 'PLACE-ERROR',
      mark: 'COMPUTED',
      ours: () => meanOfWinter(a) - meanOfWinter(b),
    }),
  ),
  {
    name: 'median range between night and day over the Canadian places, largest miss in any month',
    unit: 'degC',
    expected: 0,
    within: 0.0501,
    why: 'half the last printed digit',
    source: 'climate table, printed medians of 67 rows',
    mark: 'COMPUTED',
    ours: () => largest(rangeOf(null).rangeC.map((range, month) => range - PRINTED_RANGE_CA[month]!)),
  },
  {
    name: 'older Canadian normals are warmed in winter by the published differences, largest miss',
    unit: 'degC',
    expected: 0,
    within: 0.0001,
    why: 'copied',
    source: 'NORMALS-SHIFT',
    mark: 'COMPUTED',
    ours: () => {
      const shift = olderNormals.find((row) => row.normals === 'CANADA35')!.warmingC;
      return largest([shift[0]! - 2, shift[1]! - 1.3, shift[2]! - 0.5, shift[10]! - 0.8, shift[11]! - 2.2]);
    },
  },
  ...[3, 4, 5, 6, 7, 8, 9].map(
    (month): Check => ({
      name: `older Canadian normals are warmed in month ${month + 1} by the middle of the published half to one degree`,
      unit: 'degC',
      expected: 0.75,
      within: 0.05,
      why: 'middle of the printed 0.5 to 1',
      source: 'NORMALS-SHIFT',
      mark: 'COMPUTED',
      ours: () => olderNormals.find((row) => row.normals === 'CANADA35')!.warmingC[month]!,
    }),
  ),
  {
    name: 'mountain normals 1968-1997 are warmed by half to one degree, farthest month from the middle',
    unit: 'degC',
    expected: 0,
    within: 0.05,
    why: 'middle of the recalled 0.5 to 1',
    source: 'NORMALS-SHIFT',
    mark: 'MEMORY',
    ours: () => largest(olderNormals.find((row) => row.normals === 'COMONTHLY')!.warmingC.map((shift) => shift - 0.75)),
  },
];

const rules: readonly Check[] = [
  {
    name: 'winter days follow one another with the published correlation, mean of December to February',
    unit: '1',
    expected: [0.74, 0.84],
    within: 0,
    why: 'the printed range',
    source: 'DAILY-SPREAD',
    mark: 'COMPUTED',
    ours: () => [11, 0, 1].reduce((sum, month) => sum + persistence().r1[month]! / 3, 0),
  },
  {
    name: 'a yearly cosine keeps its monthly averages when its daily curve is higher than they are by this factor',
    unit: '1',
    expected: Math.PI / 12 / Math.sin(Math.PI / 12),
    within: 0.0005,
    why: 'the printed factor holds for months of equal length',
    source: 'EPSTEIN-1991, (pi j/12)/sin(pi j/12) for j = 1',
    mark: 'READ-2',
    ours: () => Math.max(...yearlyCurve(Array.from({ length: 12 }, (_, month) => -Math.cos((2 * Math.PI * month) / 12)))),
  },
  {
    name: 'the class of -22 to -16 degC is met at its middle: January between years',
    unit: 'degC',
    expected: 4.4,
    within: 0.05,
    why: 'half the last printed digit',
    source: 'DAILY-SPREAD',
    mark: 'COMPUTED',
    ours: () => spreadOfClass(-19).monthlySdMeanC[0]!,
  },
  ...PRINTED_SKEW.map(
    (skew, month): Check => ({
      name: `days at the foothills are skewed as printed in month ${month + 1}`,
      unit: '1',
      expected: skew,
      within: 0.02,
      why: 'neighbouring months reach in a little; half the last printed digit is 0.05',
      source: 'DAILY-SPREAD',
      mark: 'COMPUTED',
      usedForSetting: true,
      ours: () => skewInMiddle(solvedFor('albertaFoothills').shape, month),
    }),
  ),
  {
    name: 'winter days under the Siberian high are skewed the other way',
    unit: '1',
    expected: 0.2,
    within: 0.02,
    why: 'middle of the printed 0 to 0.4',
    source: 'DAILY-SPREAD',
    mark: 'COMPUTED',
    ours: () => skewOf(-31)[0]!,
  },
  {
    name: 'halfway between a mild and a Siberian January the skew is halfway',
    unit: '1',
    expected: -0.2,
    within: 0.02,
    why: 'a straight line between the two',
    source: 'DAILY-SPREAD',
    mark: 'JUDGEMENT',
    ours: () => skewOf(-21)[0]!,
  },
  {
    name: '200 m of height make a place as unlike as 100 km',
    unit: 'km',
    expected: 100,
    within: 0.001,
    why: 'km + 0.5 x m as published',
    source: 'PLACE-ERROR',
    mark: 'COMPUTED',
    ours: () => unlikenessKm(0, -200),
  },
  ...(
    [
      [50, 1.1, 1.3],
      [150, 1.8, 1.8],
      [300, 2.6, 2.6],
      [500, 4.2, 4.2],
    ] as const
  ).map(
    ([km, low, high]): Check => ({
      name: `error of the winter mean of three places ${km} km away`,
      unit: 'degC',
      expected: [low, high],
      within: 0.0501,
      why: 'half the last printed digit',
      source: 'PLACE-ERROR',
      mark: 'COMPUTED',
      ours: () => placeErrorC(km),
    }),
  ),
  {
    name: 'the coldest night lies below the coldest daily mean by',
    unit: 'degC',
    expected: 5.3,
    within: 0.05,
    why: 'half the last printed digit',
    source: 'PLACE-ERROR, median of 87 Canadian stations',
    mark: 'COMPUTED',
    ours: () => weatherParameters.coldestNightBelowC.value,
  },
  {
    name: 'error of one named place near the yard',
    unit: 'degC',
    expected: [1.2, 1.4],
    within: 0.0501,
    why: 'half the last printed digit',
    source: 'PLACE-ERROR, one place within 100 km by distance and height',
    mark: 'COMPUTED',
    ours: () => weatherParameters.namedPlaceErrorC.value,
  },
  ...(
    [
      ['nearer than 200 km and 300 m nothing is said of a place', 195, 295, 0],
      ['farther than 200 km or steeper than 300 m is said', 205, 305, 2],
    ] as const
  ).map(
    ([name, km, heightM, expected]): Check => ({
      name,
      unit: 'notes',
      expected,
      within: 0,
      why: 'a count',
      source: 'PLACE-ERROR',
      mark: 'COMPUTED',
      ours: () => choiceNotes({ row: climatePlaces[0]!, km, heightM }).length,
    }),
  ),
];

export const weatherChecks: readonly Check[] = [...totals, ...stations, ...tables, ...rules];
