import { provisionParameters as p } from '../src/tables/parameters-provision.gen.ts';
import type { Check } from './check.ts';

const US_GALLON_L = 3.785411784;

export const provisionChecks: readonly Check[] = [
  {
    name: 'A strong colony takes from an inverted pail in a day',
    unit: 'L',
    expected: (2 * US_GALLON_L) / 5,
    within: 0.05,
    why: 'two gallons in five days is printed in whole numbers; ours is rounded to 0.1 L',
    source: 'cowetabeekeepers.org: 2 US gallons in 5 days',
    mark: 'READ',
    usedForSetting: true,
    ours: () => p.uptakeLPerDay.value,
  },
  {
    name: 'A thousand bees take in a day, at most',
    unit: 'L',
    expected: 0.0807 / 1.23,
    within: 0.002,
    why: 'standard error 1.6 of 80.7 mg',
    source: 'cage study: 80.7 ± 1.6 mg of 50 % syrup a bee and day, 1.23 kg/L',
    mark: 'ARITHMETIC',
    usedForSetting: true,
    ours: () => p.uptakeLPer1000BeesPerDay.value,
  },
  {
    name: 'Sugar in a ten-frame rim 38 mm deep, packed damp',
    unit: 'kg',
    expected: [6, 6.7],
    within: 0,
    why: '6.7 L at 0.9 to 1.0 kg/L',
    source: 'inside of the ten-frame box; packed density of damp sugar (from memory)',
    mark: 'ARITHMETIC',
    usedForSetting: true,
    ours: () => p.candyRimKg.value,
  },
];
