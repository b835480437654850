import {
  densityInAirKgPerM3,
  matterParameters,
  type SyrupAnswer,
  type SyrupInput,
  saturationFrac,
  saturationTempC,
  sucroseDensityKgPerM3,
  syrup,
} from '../src/matter/index.ts';
import {
  imperialGallonToL,
  imperialPintToL,
  kgPerM3ToLbPerUsGallon,
  kgToLb,
  lbToKg,
  lToUsGallon,
  lToUsPint,
  usCupToL,
  usGallonToL,
  usQuartToL,
} from '../src/units/index.ts';
import { answerOf, type Check, row } from './check.ts';

const made = (input: SyrupInput): SyrupAnswer => answerOf(syrup(input));
const TWO_TO_ONE = { ratio: '2:1', basis: 'mass' } as const;
/** Water as the recipes' measures hold it, at kitchen temperature. */
export const WATER_KG_PER_L = 0.9982;

/** [mass percent, kg/m3] at 20 °C. */
const CRC: readonly (readonly [number, number])[] = [
  [5, 1017.8],
  [10, 1038.1],
  [15, 1059.2],
  [20, 1081.0],
  [24, 1099.0],
  [30, 1127.0],
  [34, 1146.4],
  [40, 1176.5],
  [42, 1186.8],
  [44, 1197.2],
  [46, 1207.9],
  [50, 1229.5],
  [52, 1240.6],
  [54, 1251.8],
  [56, 1263.2],
  [58, 1274.7],
  [60, 1286.4],
  [62, 1298.3],
  [64, 1310.3],
  [66, 1322.4],
  [68, 1334.8],
  [70, 1347.2],
];
/** [mass percent, lb per US gallon in air, source]. */
const PER_GALLON: readonly (readonly [number, number, string, Check['mark']])[] = [
  [0, 8.322, 'chen-1992', 'READ'],
  [1, 8.354, 'chen-1992', 'READ'],
  [2, 8.387, 'chen-1992', 'READ'],
  [3, 8.419, 'chen-1992', 'READ'],
  [4, 8.452, 'chen-1992', 'READ'],
  [5, 8.486, 'chen-1992', 'READ'],
  [66, 11.027, 'maple-program', 'READ-2'],
  [66.5, 11.053, 'maple-program', 'READ-2'],
  [66.9, 11.073, 'maple-program', 'READ-2'],
];
/** [°C, mass percent at saturation]. */
const PLANT: readonly (readonly [number, number])[] = [
  [0, 64.44],
  [20, 66.74],
  [40, 70.22],
  [60, 74.32],
  [80, 78.74],
];
const ANTOKOLSKAYA: readonly (readonly [number, number])[] = [
  [0, 179.2],
  [10, 190.5],
  [20, 203.9],
  [30, 219.9],
  [40, 238.1],
];

const tables: readonly Check[] = [
  ...CRC.map(([percent, expected]) => ({
    name: `density of a sugar solution of ${percent} % at 20 °C`,
    unit: 'kg/m3',
    expected,
    within: expected * 0.0005,
    why: 'the two tables themselves differ by up to 0.02 %; printed to 0.1',
    source: 'crc-sucrose',
    mark: 'READ' as const,
    ours: () => sucroseDensityKgPerM3(percent / 100, 20),
  })),
  ...PER_GALLON.map(([percent, expected, source, mark]) => ({
    name: `weight of a US gallon in air at ${percent} %`,
    unit: 'lb/US gal',
    expected,
    within: expected * 0.0003,
    why: 'buoyancy convention and rounding of the calculator',
    source,
    mark,
    ours: () => kgPerM3ToLbPerUsGallon(densityInAirKgPerM3(sucroseDensityKgPerM3(percent / 100, 20))),
  })),
  ...PLANT.map(([tempC, expected]) => ({
    name: `sugar in a saturated solution at ${tempC} °C`,
    unit: '%',
    expected,
    within: 0.15,
    why: 'published tables differ by 0.4 in the middle; this one is the nearest',
    source: 'sugar-plant-table',
    mark: 'READ' as const,
    ours: () => saturationFrac(tempC) * 100,
  })),
  ...ANTOKOLSKAYA.map(([tempC, grams]) => ({
    name: `sugar that dissolves in 100 g of water at ${tempC} °C`,
    unit: 'g',
    expected: grams,
    within: grams * 0.024,
    why: 'spread between published tables near saturation: half a percentage point of strength is up to 2.4 % of this ratio',
    source: 'herzfeld-table',
    mark: 'READ' as const,
    ours: () => (100 * saturationFrac(tempC)) / (1 - saturationFrac(tempC)),
  })),
];

const solutions: readonly Check[] = [
  row(
    '2:1 is saturated where Charles says',
    '°C',
    20.5,
    0.1,
    'read off to a tenth',
    'charles-1960',
    'COMPUTED',
    () => saturationTempC(2 / 3, 'charles')!,
  ),
  row(
    '2:1 is saturated where the old handbook table says',
    '°C',
    [16, 17.3],
    0,
    'the table rises 0.15 %-points a degree and its 15 °C row is disputed',
    'herzfeld-table',
    'COMPUTED',
    () => saturationTempC(2 / 3, 'herzfeld')!,
  ),
  row(
    '2:1 is saturated close to room temperature',
    '°C',
    20,
    1,
    'said as a round figure: "saturated at 20 °C at 67 %"',
    'vavrinecz-1962',
    'READ',
    () => made({ ...TWO_TO_ONE, sugarKg: 1 }).saturationTempC!,
  ),
  row(
    '10 kg sugar and 5 L water',
    'L',
    [11, 12],
    0,
    'published as a range',
    'syrup-volume-wiki',
    'READ',
    () => made({ sugarKg: 10, waterKg: 5 * WATER_KG_PER_L }).volumeL,
  ),
  row(
    '10 kg sugar and 10 L water',
    'L',
    [16, 17],
    0,
    'published as a range',
    'syrup-volume-wiki',
    'READ',
    () => made({ sugarKg: 10, waterKg: 10 * WATER_KG_PER_L }).volumeL,
  ),
  row(
    '1 kg sugar and 0.7 L water',
    'L',
    1.3,
    0.05,
    'half the last printed digit',
    'swedish-feed',
    'READ',
    () => made({ sugarKg: 1, waterKg: 0.7 * WATER_KG_PER_L }).volumeL,
  ),
  row(
    '10 lb sugar and 10 lb water make about so many US pints',
    'US pt',
    15,
    0.75,
    'published as "about"',
    'club-syrup-pages',
    'READ',
    () => lToUsPint(made({ sugarKg: lbToKg(10), waterKg: lbToKg(10) }).volumeL),
  ),
  row('16 cups sugar and 16 cups water', 'US gal', 1.5, 0.05, 'half the last printed digit', 'club-syrup-pages', 'READ', () =>
    lToUsGallon(made({ ratio: '1:1', basis: 'volume', sugarKg: 16 * usCupToL(1) * matterParameters.sugarKgPerL.value }).volumeL),
  ),
  row(
    '8 lb sugar and a US gallon of water make over a gallon and a half',
    'US gal',
    [1.5, 1.7],
    0,
    '"over a gallon and a half", so not near two',
    'club-syrup-pages',
    'READ',
    () => lToUsGallon(made({ sugarKg: lbToKg(8), waterKg: usGallonToL(1) * WATER_KG_PER_L }).volumeL),
  ),
  row(
    'sugar in an imperial gallon of 2:1',
    'kg',
    4,
    0.05,
    'whole kilograms printed for 4.5 L; 8 to 9 lb',
    'club-syrup-pages',
    'READ',
    () => made({ ...TWO_TO_ONE, volumeL: imperialGallonToL(1) }).sugarKg,
  ),
  row(
    '2 lb to the imperial pint is the metric 1 kg to 0.63 L',
    'kg/kg',
    1 / 0.63,
    0.02,
    'the metric figure is rounded to 10 mL',
    'yield-divide-by-eight-tenths',
    'READ',
    () => {
      const british = made({ sugarKg: lbToKg(2), waterKg: imperialPintToL(1) * WATER_KG_PER_L });
      return british.sugarKg / british.waterKg;
    },
  ),
  row('an imperial gallon of 2:1 weighs', 'lb', 13.29, 0.01, 'density rounded to 0.001 kg/L there', 'icumsa-sps4', 'ARITHMETIC', () =>
    kgToLb(made({ ...TWO_TO_ONE, volumeL: imperialGallonToL(1) }).massKg),
  ),
  row('a US gallon of 2:1 weighs', 'lb', 11.07, 0.01, 'density rounded to 0.001 kg/L there', 'icumsa-sps4', 'ARITHMETIC', () =>
    kgToLb(made({ ...TWO_TO_ONE, volumeL: usGallonToL(1) }).massKg),
  ),
  row(
    'sugar in an imperial gallon of 2:1 in pounds',
    'lb',
    8.86,
    0.01,
    'half the last digit of the density used',
    'icumsa-sps4',
    'ARITHMETIC',
    () => kgToLb(made({ ...TWO_TO_ONE, volumeL: imperialGallonToL(1) }).sugarKg),
  ),
  row('sugar in a US gallon of 2:1', 'lb', 7.38, 0.01, 'half the last digit of the density used', 'icumsa-sps4', 'ARITHMETIC', () =>
    kgToLb(made({ ...TWO_TO_ONE, volumeL: usGallonToL(1) }).sugarKg),
  ),
  row(
    'syrup in a US quart of 2:1',
    'kg',
    1.2556,
    0.0005,
    'the handbook density is 0.02 % lower',
    'crc-sucrose',
    'COMPUTED',
    () => made({ ...TWO_TO_ONE, volumeL: usQuartToL(1) }).massKg,
  ),
  row(
    '2:1 at the temperature taken without being told',
    'kg/m3',
    1326.5,
    0.7,
    '0.05 %; the handbook stands at 20 °C',
    'crc-sucrose',
    'READ',
    () => made({ ...TWO_TO_ONE, sugarKg: 1 }).densityKgPerM3,
  ),
  row(
    'equal volumes are so much sugar to water by weight',
    'kg/kg',
    0.85,
    0.005,
    'half the last printed digit',
    'sugar-cup',
    'READ',
    () => {
      const { sugarKg, waterKg } = made({ ratio: '1:1', basis: 'volume', sugarKg: 1 });
      return sugarKg / waterKg;
    },
  ),
  row(
    'sugar poured loose',
    'kg/L',
    0.849,
    0.02,
    'two kitchens and a bulk table differ by 2 %',
    'bulk-table',
    'MEMORY',
    () => matterParameters.sugarKgPerL.value,
  ),
];

export const sugarChecks: readonly Check[] = [...tables, ...solutions];
