import {
  btuInchToWPerMK,
  btuToJ,
  fahrenheitToC,
  footToM,
  imperialGallonToL,
  imperialPintToL,
  imperialQuartToL,
  inchToM,
  kgToLb,
  lbPerImperialGallonToKgPerM3,
  lbPerUsGallonToKgPerM3,
  lbToKg,
  ozToKg,
  rValueToM2KPerW,
  usCupToL,
  usFlOzToL,
  usGallonToL,
  usPintToL,
  usQuartToL,
} from '../src/units/index.ts';
import type { Check } from './check.ts';

const HB44 = 'nist-hb44';
const exact = (name: string, unit: string, expected: number, ours: () => number, source = HB44, mark: Check['mark'] = 'READ'): Check => ({
  name,
  unit,
  expected,
  within: Math.abs(expected) * 1e-12,
  why: 'exact by definition; rounding of the computer only',
  source,
  mark,
  ours,
});
const printed = (
  name: string,
  unit: string,
  expected: number,
  within: number,
  source: string,
  mark: Check['mark'],
  ours: () => number,
): Check => ({
  name,
  unit,
  expected,
  within,
  why: 'the last printed digits, rounded or cut off',
  source,
  mark,
  ours,
});
/** Sums of published pounds, printed there in whole or hundredths of pounds. */
const arithmetic = (name: string, expected: number, within: number, source: string, ours: () => number): Check => ({
  name,
  unit: 'kg',
  expected,
  within,
  why: 'published pounds, printed kilograms to one digit',
  source,
  mark: 'ARITHMETIC',
  ours,
});

export const unitsChecks: readonly Check[] = [
  exact('a pound', 'kg', 0.45359237, () => lbToKg(1)),
  exact('an ounce', 'kg', 0.028349523125, () => ozToKg(1)),
  exact('an inch', 'm', 0.0254, () => inchToM(1)),
  exact('a foot', 'm', 0.3048, () => footToM(1)),
  exact('a US gallon', 'L', 3.785411784, () => usGallonToL(1)),
  exact('a US liquid quart', 'L', 0.946352946, () => usQuartToL(1)),
  exact('a US liquid pint', 'L', 0.473176473, () => usPintToL(1)),
  exact('a US measuring cup', 'L', 0.2365882365, () => usCupToL(1)),
  exact('a US fluid ounce', 'L', 0.0295735295625, () => usFlOzToL(1)),
  exact('an imperial gallon', 'L', 4.54609, () => imperialGallonToL(1), 'wma-1985'),
  exact('an imperial quart', 'L', 1.1365225, () => imperialQuartToL(1), 'wma-1985'),
  exact('an imperial pint', 'L', 0.56826125, () => imperialPintToL(1), 'wma-1985'),
  printed('a British thermal unit', 'J', 1055.05585262, 5e-9, 'gnu-units', 'COMPUTED', () => btuToJ(1)),
  printed('one of R-value', 'm2 K/W', 0.1761102, 5e-8, 'nist-sp811', 'MEMORY', () => rValueToM2KPerW(1)),
  printed('one of R-value, more digits', 'm2 K/W', 0.17611018, 5e-9, 'gnu-units', 'COMPUTED', () => rValueToM2KPerW(1)),
  printed('conductivity of one Btu inch', 'W/(m K)', 0.14422789, 5e-9, 'gnu-units', 'COMPUTED', () => btuInchToWPerMK(1)),
  printed('a pound in a US gallon', 'kg/m3', 119.826427, 5e-7, 'gnu-units', 'COMPUTED', () => lbPerUsGallonToKgPerM3(1)),
  printed('a pound in an imperial gallon', 'kg/m3', 99.7763, 1e-4, HB44, 'READ', () => lbPerImperialGallonToKgPerM3(1)),
  exact('Fahrenheit and Celsius meet', '°C', -40, () => fahrenheitToC(-40), 'nist-sp811', 'MEMORY'),
  exact('boiling water on both scales', '°C', 100, () => fahrenheitToC(212), 'nist-sp811', 'MEMORY'),
  {
    ...arithmetic('parts of a hive of two deep boxes and a medium add up to the printed sum in pounds', 55.34, 0.025, 'gross-bounds', () =>
      kgToLb([8.5, 1.75, 10.25, 13.69, 13.69, 3.38, 4.06].reduce((sum, lb) => sum + lbToKg(lb), 0)),
    ),
    unit: 'lb',
    why: 'the printed parts add to 55.32, the printed sum is 55.34: seven figures rounded to a hundredth',
  },
  arithmetic('two deep boxes without the medium weigh the printed kilograms', 20.4, 0.1, 'gross-bounds', () => lbToKg(55.34 - 10.25)),
  arithmetic('double hive: gross less stores is everything else', 29.5, 0.05, 'capa-targets', () => lbToKg(135) - lbToKg(70)),
  arithmetic('single hive: gross less stores is everything else', 18.1, 0.05, 'capa-targets', () => lbToKg(95) - lbToKg(55)),
  {
    ...arithmetic('a deep frame where ten hold the published stores', 7, 1e-9, 'capa-targets', () => kgToLb(lbToKg(70) / 10)),
    unit: 'lb',
  },
  {
    ...arithmetic('a medium frame where fifteen hold the same', 4.67, 0.005, 'capa-targets', () => kgToLb(lbToKg(70) / 15)),
    unit: 'lb',
  },
  {
    ...arithmetic('a shallow frame where eighteen hold the same', 3.89, 0.005, 'capa-targets', () => kgToLb(lbToKg(70) / 18)),
    unit: 'lb',
  },
  {
    ...arithmetic('British brood frames for the published stores', 9, 1e-9, 'yield-divide-by-eight-tenths', () => lbToKg(45) / lbToKg(5)),
    unit: 'frames',
  },
  {
    ...arithmetic('medium frames for sixty pounds', 15, 1e-9, 'capa-targets', () => lbToKg(60) / lbToKg(4)),
    unit: 'frames',
  },
];
