import { clopperPearson, type Interval, jeffreys, miteGrowth, wash, wilson, wilsonCorrected } from '../src/mites/index.ts';
import type { Check } from './check.ts';

const METHODS = { exact: clopperPearson, Wilson: wilson, 'Wilson corrected': wilsonCorrected, Jeffreys: jeffreys } as const;
type Row = readonly [
  method: keyof typeof METHODS,
  k: number,
  n: number,
  certainty: number,
  low: number,
  high: number,
  within: number,
  source: string,
  mark: Check['mark'],
];

const ROWS: readonly Row[] = [
  ['exact', 9, 24, 0.95, 0.1879929, 0.5940636, 5e-8, 'r-binom-test', 'READ'],
  ['exact', 1, 1497, 0.9, 3.426347e-5, 3.164954e-3, 5e-10, 'r-binom-test', 'READ'],
  ['exact', 0, 300, 0.95, 0, 0.01222097, 5e-9, 'scipy-beta', 'COMPUTED'],
  ['exact', 1, 300, 0.95, 0.00008439, 0.01843125, 5e-9, 'scipy-beta', 'COMPUTED'],
  ['exact', 3, 300, 0.95, 0.00206701, 0.02894451, 5e-9, 'scipy-beta', 'COMPUTED'],
  ['exact', 6, 300, 0.95, 0.00737416, 0.04302108, 5e-9, 'scipy-beta', 'COMPUTED'],
  ['exact', 9, 300, 0.95, 0.01380782, 0.05618355, 5e-9, 'scipy-beta', 'COMPUTED'],
  ['exact', 30, 300, 0.95, 0.06849168, 0.13967331, 5e-9, 'scipy-beta', 'COMPUTED'],
  ['exact', 9, 300, 0.9, 0.015738, 0.051766, 5e-7, 'scipy-beta', 'COMPUTED'],
  ['exact', 81, 263, 0.95, 0.2527, 0.3676, 5e-5, 'newcombe-1998', 'MEMORY'],
  ['exact', 15, 148, 0.95, 0.0578, 0.1617, 5e-5, 'newcombe-1998', 'MEMORY'],
  ['exact', 0, 20, 0.95, 0, 0.1684, 5e-5, 'newcombe-1998', 'MEMORY'],
  ['exact', 1, 29, 0.95, 0.0009, 0.1776, 5e-5, 'newcombe-1998', 'MEMORY'],
  ['Wilson', 5, 10, 0.9, 0.2692718, 0.7307282, 5e-8, 'cards-snapshot', 'READ'],
  ['Wilson', 32, 32, 0.95, 0.8928208, 1, 5e-8, 'cards-snapshot', 'READ'],
  ['Wilson', 0, 32, 0.95, 0, 0.1071792, 5e-8, 'cards-snapshot', 'READ'],
  ['Wilson', 520, 1000, 0.95, 0.4890177, 0.5508292, 5e-8, 'hmisc-binconf', 'READ'],
  ['Wilson', 81, 263, 0.95, 0.2553, 0.3662, 5e-5, 'newcombe-1998', 'MEMORY'],
  ['Wilson', 1, 29, 0.95, 0.0061, 0.1718, 5e-5, 'newcombe-1998', 'MEMORY'],
  ['Jeffreys', 3, 300, 0.95, 0.002824, 0.026444, 5e-7, 'scipy-beta', 'COMPUTED'],
  ['Jeffreys', 0, 300, 0.95, 0.000002, 0.008331, 5e-7, 'scipy-beta', 'COMPUTED'],
  ['Jeffreys', 1, 29, 0.95, 0.003746, 0.150078, 5e-7, 'scipy-beta', 'COMPUTED'],
  ['Wilson', 4, 20, 0.95, 0.080658, 0.416017, 5e-7, 'scipy-beta', 'COMPUTED'],
  ['Wilson corrected', 333, 1022, 0.98, 0.2922473, 0.3612773, 5e-8, 'r-prop-test', 'READ'],
  ['Wilson corrected', 42, 1000, 0.95, 0.03079269, 0.05685194, 5e-9, 'r-prop-test', 'READ'],
  ['Wilson corrected', 81, 263, 0.95, 0.2535, 0.3682, 5e-5, 'newcombe-1998', 'MEMORY'],
  ['Wilson corrected', 1, 29, 0.95, 0.0018, 0.1963, 5e-5, 'newcombe-1998', 'MEMORY'],
  ['Wilson corrected', 0, 300, 0.95, 0, 0.01576, 5e-7, 'scipy-beta', 'COMPUTED'],
  ['Wilson corrected', 3, 300, 0.95, 0.002586, 0.031402, 5e-7, 'scipy-beta', 'COMPUTED'],
  ['Wilson corrected', 9, 300, 0.95, 0.01471, 0.058148, 5e-7, 'scipy-beta', 'COMPUTED'],
  ['Wilson corrected', 15, 148, 0.95, 0.059778, 0.16445, 5e-7, 'scipy-beta', 'COMPUTED'],
  ['Wilson corrected', 0, 20, 0.95, 0, 0.200453, 5e-7, 'scipy-beta', 'COMPUTED'],
  ['exact', 4, 20, 0.95, 0.057334, 0.436614, 5e-7, 'scipy-beta', 'COMPUTED'],
];

const ends: readonly (keyof Interval)[] = ['low', 'high'];
const pick = (row: Row, end: keyof Interval) => (end === 'low' ? row[4] : row[5]);

function answered(bees: number, mites: number) {
  const result = wash({ bees, mites });
  if (!result.ok) throw new Error(`a check was refused: ${JSON.stringify(result.error)}`);
  return result.value;
}

export const washChecks: readonly Check[] = [
  ...ROWS.flatMap((row) =>
    ends.map((end) => ({
      name: `${row[0]} interval of ${row[1]} in ${row[2]} at ${row[3]}, its ${end} end`,
      unit: '1',
      expected: pick(row, end),
      within: row[6],
      why: 'half the last printed digit',
      source: row[7],
      mark: row[8],
      ours: () => METHODS[row[0]](row[1], row[2], row[3])[end],
    })),
  ),
  {
    name: 'nine mites on three hundred bees as a share',
    unit: '1',
    expected: 0.03,
    within: 1e-12,
    why: 'exact',
    source: 'wash-threshold-pages',
    mark: 'READ',
    ours: () => answered(300, 9).rateFrac,
  },
  {
    name: 'upper end of no mite in twenty bees at the certainty taken without being told',
    unit: '1',
    expected: 0.1684,
    within: 0.0001,
    why: 'half the last printed digit',
    source: 'newcombe-1998',
    mark: 'MEMORY',
    ours: () => answered(20, 0).highFrac,
  },
  {
    name: 'one in a hundred on the first of May, doubling monthly, on the first of August',
    unit: '1',
    expected: 0.08,
    within: 0.005,
    why: 'three months are 92 days, three doublings 90',
    source: 'wash-threshold-pages',
    mark: 'ARITHMETIC',
    ours: () => 0.01 * miteGrowth(92).mid,
  },
  ...(
    [
      ['slow', 63],
      ['mid', 48],
      ['fast', 30],
    ] as const
  ).map(([pace, days]) => ({
    name: `days from one to three in a hundred, ${pace}`,
    unit: '1',
    expected: 0.03,
    within: 0.0006,
    why: 'days printed whole: half a day is up to 1.8 %',
    source: 'mite-growth',
    mark: 'DERIVED' as const,
    ours: () => 0.01 * miteGrowth(days)[pace],
  })),
];
