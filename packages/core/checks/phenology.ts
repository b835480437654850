import {
  bloomRow,
  degreeDays,
  drawForageSums,
  drawPollenSums,
  firstFlightDays,
  firstForageDays,
  type HeatMethod,
  type SeasonName,
  seasonDates,
} from '../src/phenology/index.ts';
import { epochDayOf } from '../src/units/dates.ts';
import type { Check } from './check.ts';

const METHODS: readonly HeatMethod[] = ['average', 'reset', 'four-case', 'single-sine'];
/** Maximum, minimum, base, then degree days by the four methods in the order above [degC]. */
const WORKED = [
  [20, 4, 10, 2, 5, 3.5, 3.6265],
  [15, 1, 10, 0, 2.5, 1.25, 1.3197],
  [25, 12, 10, 8.5, 8.5, 8.5, 8.5],
  [9, -2, 10, 0, 0, 0, 0],
  [12, -6, 5, 0, 3.5, 1.75, 1.9358],
  [22, 8, 5, 10, 10, 10, 10],
  [18, 2, 8, 2, 5, 3.5, 3.6265],
] as const;

const heat: readonly Check[] = WORKED.flatMap(([maxC, minC, baseC, ...published]) =>
  METHODS.map(
    (method, i): Check => ({
      name: `degree days of a day of ${maxC} and ${minC} degC above ${baseC} degC, ${method}`,
      unit: 'degC d',
      expected: published[i]!,
      within: method === 'single-sine' ? 0.00005 : 1e-9,
      why: method === 'single-sine' ? 'half the last printed digit' : 'exact arithmetic',
      source: ['MCMASTER-1997', 'MCMASTER-1997', 'MET-FOUR-CASE', 'BASKERVILLE-1969'][i]!,
      mark: method === 'single-sine' ? 'MEMORY' : 'COMPUTED',
      ours: () => degreeDays(maxC, minC, baseC, method),
    }),
  ),
);

const day = (iso: string): number => epochDayOf(iso)!;
const FROM = day('2026-07-01');
const DAYS = day('2027-07-31') - FROM + 1;

/** A winter made by hand: a rule gives each day's mean [degC]; days and nights differ by `rangeC`. */
function handMade(meanC: (epochDay: number) => number, rangeC = 10): (name: SeasonName) => number {
  const series = { meanC: Float64Array.from({ length: DAYS }, (_, d) => meanC(FROM + d)), fromDay: FROM };
  const dates = seasonDates(series, { rangeC: Array.from({ length: 12 }, () => rangeC) });
  return (name) => dates[name] ?? Number.NaN;
}

const since = (iso: string, found: number): number => found - day(iso);
const fromApril = (warmC: number) => (d: number) => (d >= day('2027-04-01') ? warmC : -10);

/** One degree a day colder from 60 degC on 1 July. */
const falling = (perDayC: number) => (d: number) => 40 - perDayC * (d - FROM);

/** Warm spells of two, three and four days in a cold October. */
const spells = (d: number): number =>
  [
    ['2026-10-05', 4],
    ['2026-10-12', 3],
    ['2026-10-20', 2],
  ].some(([start, length]) => d >= day(start as string) && d < day(start as string) + (length as number))
    ? 12
    : 2;

const rows: readonly (readonly [
  name: string,
  unit: string,
  expected: Check['expected'],
  source: string,
  mark: Check['mark'],
  ours: () => number,
])[] = [
  [
    'April days of 61 degF until the first apple blossom, 328 degF days above 43 degF',
    'd',
    19,
    'NEWA-APPLE',
    'READ',
    () => since('2027-03-31', handMade(fromApril((61 - 32) / 1.8))('firstForage')),
  ],
  [
    'April days of 47 degF until the first apple blossom, 328 degF days above 43 degF',
    'd',
    82,
    'NEWA-APPLE',
    'READ',
    () => since('2027-03-31', forageOfMean((47 - 32) / 1.8)),
  ],
  [
    'April days of 54 degF until red maple blooms, 44 degF days above 50 degF',
    'd',
    11,
    'OSU-MAPLE',
    'READ',
    () => since('2027-03-31', handMade(fromApril((54 - 32) / 1.8))('firstPollen')),
  ],
  [
    'April days of 51 degF until red maple blooms, 44 degF days above 50 degF',
    'd',
    44,
    'OSU-MAPLE',
    'READ',
    () => since('2027-03-31', handMade(fromApril((51 - 32) / 1.8))('firstPollen')),
  ],
  [
    'syrup is taken until the night-day mean, falling by a quarter degree a day from 40 degC, goes below 10 degC',
    'd',
    120,
    'SYRUP-LIMIT',
    'READ',
    () => handMade(falling(0.25))('lastFeedingDay') - FROM,
  ],
  [
    'the last warm spell of three days closes the feeding, one of two does not',
    'd',
    14,
    'practice-phenology',
    'PRACTICE',
    () => since('2026-09-30', handMade(spells)('lastFeedingDay')),
  ],
  [
    'the cluster stands once the daily maximum, falling by a quarter degree a day from 45 degC, stays below 57 degF',
    'd',
    125,
    'CLUSTER-57F',
    'READ-2',
    () => handMade(falling(0.25))('clusterDay') - FROM,
  ],
  [
    'bees fly on the first day whose maximum, rising by a tenth of a degree a day from 0 degC on 1 February, reaches 10 degC',
    'd',
    100,
    'FLIGHT-KOVAC',
    'READ',
    () => since('2027-02-01', handMade((d) => 0.1 * (d - day('2027-02-01')) - 5)('firstFlight')),
  ],
  [
    'mouse guards: nights, falling by a quarter degree a day from 35 degC, reach the 40s degF at their low end',
    'd',
    [124, 126],
    'mouse-nights',
    'READ',
    () => handMade(falling(0.25))('guardDay') - FROM,
  ],
  [
    'propolis is sticky until afternoons, falling by a quarter degree a day from 45 degC, go below 20 degC',
    'd',
    100,
    'PROPOLIS-20C',
    'READ-2',
    () => handMade(falling(0.25))('lastGluingDay') - FROM,
  ],
  [
    'frames are lifted until afternoons, falling by a quarter degree a day from 45 degC, go below 15 degC',
    'd',
    120,
    'opening-limits',
    'READ',
    () => handMade(falling(0.25))('lastFrameDay') - FROM,
  ],
  [
    'the deep cold stays from the day the mean, falling by half a degree a day from 40 degC, is below -10 degC',
    'd',
    101,
    'practice-phenology',
    'PRACTICE',
    () => handMade(falling(0.5))('coldDay') - FROM,
  ],
  [
    'the last flight is the last day whose maximum, falling by a quarter degree a day from 45 degC, reaches 10 degC',
    'd',
    140,
    'FLIGHT-KOVAC',
    'READ',
    () => handMade(falling(0.25))('lastFlight') - FROM,
  ],
  [
    'the ensemble reads the same first flight',
    'd',
    100,
    'FLIGHT-KOVAC',
    'READ',
    () =>
      since(
        '2027-02-01',
        ensembleFlight((d) => 0.1 * (d - day('2027-02-01')) - 5),
      ),
  ],
  [
    'in a warm winter the first flight is looked for from 1 February',
    'd',
    0,
    'practice-phenology',
    'PRACTICE',
    () => since('2027-02-01', handMade(() => 12)('firstFlight')),
  ],
  [
    'where every night freezes the first frost of autumn is on 15 July',
    'd',
    0,
    'practice-phenology',
    'PRACTICE',
    () => since('2026-07-15', handMade(() => 0)('firstFrost')),
  ],
  [
    'a night at 0 degC is a freeze, one at a tenth more is not',
    'd',
    0,
    'NWS-FROST',
    'READ',
    () => since('2027-05-20', handMade((d) => (d === day('2027-05-20') ? 5 : 5.1))('lastFrost')),
  ],
];

/** One member with the mean sum of a large draw: the ensemble's own way to the forage date. */
function forageOfMean(warmC: number): number {
  const meanC = fromApril(warmC);
  const tempsC = Float64Array.from({ length: DAYS }, (_, d) => meanC(FROM + d));
  return firstForageDays({ tempsC, fromDay: FROM, days: DAYS }, Float64Array.of(meanOf(sums())))[0]!;
}

function ensembleFlight(meanC: (d: number) => number): number {
  const tempsC = Float64Array.from({ length: DAYS }, (_, d) => meanC(FROM + d));
  return firstFlightDays(
    { tempsC, fromDay: FROM, days: DAYS },
    Array.from({ length: 12 }, () => 10),
  )[0]!;
}

const MEMBERS = 20_000;
const sums = (): Float64Array => drawForageSums({ seed: 1, entity: 'check', members: MEMBERS });
const meanOf = (values: Float64Array): number => values.reduce((sum, value) => sum + value, 0) / values.length;

const sdOf = (values: Float64Array): number => {
  const mean = meanOf(values);
  return Math.sqrt(values.reduce((sum, value) => sum + (value - mean) ** 2, 0) / (values.length - 1));
};

/** Sums of the published lists in degF days, with their base [degF]. */
const LISTED = [
  ['silver-maple', 'first', 34, 50, 'OSU-MAPLE'],
  ['silver-maple', 'full', 42, 50, 'OSU-MAPLE'],
  ['red-maple', 'first', 44, 50, 'OSU-MAPLE'],
  ['speckled-alder', 'first', 52, 50, 'OSU-MAPLE'],
  ['serviceberry', 'first', 75, 50, 'OSU-LIST'],
  ['apple', 'first', 328, 43, 'NEWA-APPLE'],
  ['apple', 'full', 422, 43, 'NEWA-APPLE'],
] as const;
const blooms: readonly Check[] = LISTED.flatMap(([plant, stage, sumF, baseF, source]) => [
  {
    name: `heat sum of ${plant}, ${stage} bloom (${sumF} at base ${baseF} degF)`,
    unit: 'degC d',
    expected: sumF / 1.8,
    within: sumF > 100 ? 0.6 : 0.06,
    why: 'rounded when converted',
    source,
    mark: 'READ',
    ours: () => bloomRow(plant, stage)?.sumCd ?? Number.NaN,
  },
  {
    name: `base of the heat sum of ${plant}, ${stage} bloom (${baseF} degF)`,
    unit: 'degC',
    expected: (baseF - 32) / 1.8,
    within: 0.02,
    why: 'rounded when converted',
    source,
    mark: 'READ',
    ours: () => bloomRow(plant, stage)?.baseC ?? Number.NaN,
  },
]);

export const phenologyChecks: readonly Check[] = [
  ...heat,
  ...blooms,
  {
    name: 'heat sum to first pollen, standard deviation of the draws: first trees with pollen 34 to 52 at base 50 degF',
    unit: 'degC d',
    expected: (52 - 34) / 1.8 / (2 * 1.645),
    within: 0.1,
    why: 'rounded to whole degree days; sampling error of 20,000 draws 0.02',
    source: 'OSU-MAPLE',
    mark: 'DERIVED',
    ours: () => sdOf(drawPollenSums({ seed: 1, entity: 'check', members: MEMBERS })),
  },
  ...rows.map(
    ([name, unit, expected, source, mark, ours]): Check => ({
      name,
      unit,
      expected,
      within: 0,
      why: 'a whole day',
      source,
      mark,
      ours,
    }),
  ),
  {
    name: 'heat sum to first apple blossom, mean of the draws (328 at base 43 degF)',
    unit: 'degC d',
    expected: 328 / 1.8,
    within: 1,
    why: 'rounded to whole degree days; sampling error of 20,000 draws 0.2',
    source: 'NEWA-APPLE',
    mark: 'READ',
    ours: () => meanOf(sums()),
  },
  {
    name: 'heat sum to first apple blossom, standard deviation of the draws (51 at base 43 degF)',
    unit: 'degC d',
    expected: 51 / 1.8,
    within: 0.9,
    why: 'rounded to whole degree days; sampling error of 20,000 draws 0.14',
    source: 'NEWA-APPLE',
    mark: 'READ',
    ours: () => sdOf(sums()),
  },
];
