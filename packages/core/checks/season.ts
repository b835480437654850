import { sunDay, warmHours } from '../src/phenology/index.ts';
import { season, sizeOf } from '../src/season/index.ts';
import { epochDayOf } from '../src/units/dates.ts';
import { answerOf, type Check } from './check.ts';

/** Latitude, longitude, date; sunrise, noon and sunset in minutes after midnight UTC of the date, printed by suncalc 2.0.2. */
const SUN = [
  [64.8378, -147.7164, '2024-12-21', 1198.64, 1309.38, 1420.14],
  [64.8378, -147.7164, '2024-06-20', 657.49, 1312.66, 1967.83],
  [51.4779, 0, '2024-03-20', 361.79, 727.31, 1093.84],
  [49.8951, -97.1384, '2024-12-21', 864.32, 1107.0, 1349.69],
  [49.8951, -97.1384, '2024-06-20', 619.69, 1110.32, 1600.95],
  [53.5461, -113.4938, '2024-10-15', 842.42, 1159.58, 1475.83],
  [50.5, 30.5, '2013-03-05', 273.52, 609.48, 946.33],
  [53.825, -101.253, '2026-09-18', 743.95, 1119.06, 1493.06],
  [60.4, 25, '2026-11-11', 369.83, 604.02, 837.4],
  [43.7, 142.4, '2027-02-02', -133.22, 164.02, 461.77],
  [62.03, 129.7, '2030-05-05', -303.08, 197.96, 701.01],
  [45, -75, '1995-07-01', 556.9, 1023.79, 1490.45],
  [66, -20, '2026-12-21', 714.81, 798.11, 881.39],
] as const;

const sun: readonly Check[] = SUN.flatMap(([latDeg, lonDeg, date, ...times]) =>
  (['riseMinute', 'noonMinute', 'setMinute'] as const).map((name, i) => ({
    name: `${{ riseMinute: 'sunrise', noonMinute: 'noon', setMinute: 'sunset' }[name]} at ${latDeg}, ${lonDeg} on ${date}`,
    unit: 'min',
    expected: times[i]!,
    within: name === 'noonMinute' ? 0.3 : latDeg > 65 ? 1 : 0.15,
    why: 'two algorithms of the same accuracy; the library finds noon to a quarter of a minute, and near the circle the sun rises slowly',
    source: 'suncalc',
    mark: 'COMPUTED',
    ours: () => sunDay(latDeg, lonDeg, epochDayOf(date)!)[name] ?? Number.NaN,
  })),
);

const atWinnipeg = (name: 'requeenBy' | 'ownQueenBy'): number => {
  const answer = answerOf(season({ place: 'Winnipeg MB', lat: 50, year: 2026, members: 20 }));
  return epochDayOf(answer[name].p50!)!;
};

/** Frames, then by how many rules of the trade so many frames are too few. */
const tooFew = (frames: number) => sizeOf(frames * 1900, 'there').rules.filter(({ stands }) => stands === 'below').length;
const RULES = [
  ['Queensland', 6, 6, 'size-queensland'],
  ['late-fall', 6, 7, 'size-late-fall'],
  ['high-Colorado', 4, 4, 'size-colorado'],
  ['Oregon', 5, 7, 'size-oregon'],
  ['Minnesota', 10, 10, 'size-minnesota'],
  ['Ontario', 7, 8, 'size-ontario'],
  ['queenless', 7, 8, 'queenless-hold'],
] as const;
const sizes: readonly Check[] = RULES.flatMap(([where, low, high, source]) =>
  (['lowFrames', 'highFrames'] as const).map((end, i) => ({
    name: `frames of bees asked by the rule of ${where}, ${i === 0 ? 'least' : 'most'}`,
    unit: 'frames',
    expected: [low, high][i]!,
    within: 0,
    why: 'as printed',
    source,
    mark: 'READ' as const,
    ours: () => sizeOf(10_000, where === 'queenless' ? 'absent' : 'there').rules.find((rule) => rule.where === where)?.[end] ?? Number.NaN,
  })),
);

export const seasonChecks: readonly Check[] = [
  ...sun,
  ...sizes,
  {
    name: 'day of 21 December at Fairbanks as printed in an almanac, 3 h 42 min',
    unit: 'h',
    expected: 3.7,
    within: 1 / 60,
    why: 'printed to the minute',
    source: 'fairbanks-day',
    mark: 'READ',
    ours: () => sunDay(64.8378, -147.7164, epochDayOf('2012-12-21')!).hours,
  },
  {
    name: 'a sine about its middle is above it for half the day',
    unit: 'h',
    expected: 12,
    within: 1e-9,
    why: 'exact',
    source: 'BASKERVILLE-1969',
    mark: 'ARITHMETIC',
    ours: () => warmHours(20, 0, { aboveC: 10, daylightHours: 24 }),
  },
  {
    name: 'a sine is above three quarters of its span for a third of the day',
    unit: 'h',
    expected: 8,
    within: 1e-9,
    why: 'exact: the sine of 30 degrees is a half',
    source: 'BASKERVILLE-1969',
    mark: 'ARITHMETIC',
    ours: () => warmHours(20, 0, { aboveC: 15, daylightHours: 24 }),
  },
  {
    name: 'a mated queen put in until 28 August at 50 degrees north: winter bees until 25 September, 21 days of brood, a week until she lays',
    unit: 'd',
    expected: epochDayOf('2026-08-28')!,
    within: 1,
    why: 'a day more or less of brood',
    source: 'worker-21-days',
    mark: 'DERIVED',
    ours: () => atWinnipeg('requeenBy'),
  },
  {
    name: 'a queen of their own until 7 August at 50 degrees north: 16 days to the queen, about 12 until she lays, 21 days of brood',
    unit: 'd',
    expected: epochDayOf('2026-08-07')!,
    within: 2,
    why: 'a day more or less of brood and of queen',
    source: 'queen-16-days',
    mark: 'DERIVED',
    ours: () => atWinnipeg('ownQueenBy'),
  },
  {
    name: '10,000 bees cover so many deep frames',
    unit: 'frames',
    expected: 10_000 / 1900,
    within: 0.05,
    why: 'told to a tenth of a frame',
    source: 'kauffeld-1975',
    mark: 'READ',
    ours: () => sizeOf(10_000, 'there').frames,
  },
  {
    name: 'rules of the trade for which six and a half frames are too few: Minnesota and Ontario',
    unit: 'rules',
    expected: 2,
    within: 0,
    why: 'counted by hand from the printed sizes',
    source: 'size-minnesota',
    mark: 'READ',
    ours: () => tooFew(6.5),
  },
];
