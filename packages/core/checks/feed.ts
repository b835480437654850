import {
  candy,
  type SyrupAnswer,
  type SyrupInput,
  storesFromSugarKg,
  storesPerSugarKg,
  sugarForStoresKg,
  syrup,
} from '../src/matter/index.ts';
import { inchToM, kgToLb, lbToKg, lToUsGallon, usCupToL } from '../src/units/index.ts';
import { answerOf, type Check, row } from './check.ts';
import { WATER_KG_PER_L } from './sugar.ts';

const made = (input: SyrupInput): SyrupAnswer => answerOf(syrup(input));
const TWO_TO_ONE = { ratio: '2:1', basis: 'mass' } as const;

const yields: readonly Check[] = [
  row(
    'US gallons of 2:1 for 30 lb of stores by the seven-pound rule',
    'US gal',
    4.3,
    0.05,
    'half the last printed digit',
    'yield-seven-pounds',
    'READ',
    () => lToUsGallon(made({ ...TWO_TO_ONE, sugarKg: sugarForStoresKg(lbToKg(30), 2 / 3).low }).volumeL),
  ),
  row(
    'sugar for 30 lb of stores by the seven-pound rule',
    'lb',
    31.7,
    0.1,
    'density rounded there',
    'yield-seven-pounds',
    'ARITHMETIC',
    () => kgToLb(sugarForStoresKg(lbToKg(30), 2 / 3).low),
  ),
  row(
    'honey equivalent of a kilogram of sugar',
    'kg',
    1.25,
    0.005,
    'half the last printed digit',
    'yield-divide-by-eight-tenths',
    'READ',
    () => storesFromSugarKg(1, 2 / 3).high,
  ),
  row(
    'honey equivalent of a 12.5 kg block of fondant',
    'kg',
    12,
    0.5,
    'whole kilograms printed',
    'yield-divide-by-eight-tenths',
    'READ',
    () => storesFromSugarKg(12.5 * 0.78, 2 / 3).high,
  ),
  row(
    'sugar to buy for 8 kg of stores missing',
    'kg',
    6.4,
    0.05,
    'half the last digit',
    'yield-divide-by-eight-tenths',
    'ARITHMETIC',
    () => sugarForStoresKg(20 - 12, 2 / 3).high,
  ),
  row(
    'litres of 1:0.63 that this sugar makes',
    'L',
    8.06,
    0.02,
    'density rounded there',
    'yield-divide-by-eight-tenths',
    'ARITHMETIC',
    () => made({ ratio: '1:0.63', basis: 'mass', sugarKg: 6.4 }).volumeL,
  ),
  row(
    'stores from 10 kg of sugar fed as 2:1',
    'kg',
    11.2,
    0.34,
    '3 %, the claim of the copy',
    'hohenheim-1981',
    'READ-2',
    () => storesFromSugarKg(10, 2 / 3).mid,
  ),
  row(
    'stores from 10 kg of sugar fed as 3:2',
    'kg',
    10.75,
    0.32,
    '3 %, the claim of the copy',
    'hohenheim-1981',
    'READ-2',
    () => storesFromSugarKg(10, 0.6).mid,
  ),
  row(
    'stores from 10 kg of sugar fed as 1:1',
    'kg',
    9,
    0.27,
    '3 %, the claim of the copy',
    'hohenheim-1981',
    'READ-2',
    () => storesFromSugarKg(10, 0.5).mid,
  ),
  row(
    'winter feed is at most sugar and a fifth',
    'kg/kg',
    [1, 1.2],
    0,
    'stated as an upper bound',
    'winterfutter-upper',
    'READ',
    () => storesPerSugarKg(2 / 3).mid,
  ),
];

const candies: readonly Check[] = [
  row(
    'candy for 16 lb of sugar takes so many cups of water',
    'US cups',
    3,
    0.1,
    'measured with cups',
    'candy-block-sizes',
    'READ',
    () => answerOf(candy({ sugarKg: lbToKg(16) })).waterKg / WATER_KG_PER_L / usCupToL(1),
  ),
  row(
    'candy for 8 lb of sugar takes so many cups of water',
    'US cups',
    1.5,
    0.05,
    'measured with cups',
    'candy-no-cook',
    'READ',
    () => answerOf(candy({ sugarKg: lbToKg(8) })).waterKg / WATER_KG_PER_L / usCupToL(1),
  ),
  row(
    'damp sugar packs to the mean of two published blocks',
    'kg/L',
    1.014,
    0.03,
    'the two blocks differ by a fifth each way; the mean is checked',
    'candy-block-sizes',
    'ARITHMETIC',
    () => {
      const { massKg, volumeL } = answerOf(candy({ sugarKg: 1 }));
      return massKg / volumeL;
    },
  ),
  row(
    'sugar that fills a ten-frame rim an inch and a half deep',
    'kg',
    [6, 7],
    0,
    'published as a range',
    'candy-block-sizes',
    'DERIVED',
    () => answerOf(candy({ lengthM: inchToM(18.375), widthM: inchToM(14.75), depthM: inchToM(1.5) })).sugarKg,
  ),
];

/** What feed becomes in the hive, and candy. */
export const feedChecks: readonly Check[] = [...yields, ...candies];
