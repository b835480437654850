import { type AirAnswer, type AirInput, air, iceSaturationPa, waterSaturationPa } from '../src/matter/index.ts';
import type { Check } from './check.ts';

function state(input: AirInput): AirAnswer {
  const result = air(input);
  if (!result.ok) throw new Error(`a check was refused: ${JSON.stringify(result.error)}`);
  return result.value;
}

/** [°C, Pa]: ice below zero, water above. */
const ASHRAE: readonly (readonly [number, number])[] = [
  [-20, 103.24],
  [-5, 401.74],
  [5, 872.6],
  [25, 3169.7],
  [50, 12351.3],
];
const MOIST_AIR_TABLE: readonly (readonly [number, number])[] = [
  [-40, 12.84],
  [-30, 38],
  [-25, 63.25],
  [-20, 103.2],
  [-15, 165.2],
  [-10, 259.2],
  [-5, 401.5],
  [10, 1227],
  [20, 2337],
];
/** [°C, over water by Hyland and Wexler extended below zero]. */
const SUPERCOOLED: readonly (readonly [number, number])[] = [
  [-40, 19.05],
  [-30, 51.061],
  [-20, 125.629],
  [-10, 286.564],
  [-5, 421.833],
];
/** [°C, kg/kg] at saturation, 101325 Pa. */
const HUMIDITY: readonly (readonly [number, number, number])[] = [
  [-20, 0.0006373, 0.01],
  [-5, 0.0024863, 0.006],
  [5, 0.005425, 0.006],
  [25, 0.020173, 0.006],
];

const saturationPa = (tempC: number) => (tempC < 0 ? iceSaturationPa(tempC) : waterSaturationPa(tempC));

export const airChecks: readonly Check[] = [
  ...ASHRAE.map(([tempC, expected]) => ({
    name: `saturation pressure at ${tempC} °C, over ice where it freezes`,
    unit: 'Pa',
    expected,
    within: expected * 0.0003,
    why: 'tolerance of the reference implementation’s own test, 300 ppm',
    source: 'ashrae-2017',
    mark: 'READ' as const,
    ours: () => saturationPa(tempC),
  })),
  {
    name: 'saturation pressure over ice in deepest cold',
    unit: 'Pa',
    expected: 1.08,
    within: 0.01,
    why: 'tolerance of the reference implementation’s own test',
    source: 'ashrae-2017',
    mark: 'READ',
    ours: () => iceSaturationPa(-60),
  },
  ...MOIST_AIR_TABLE.map(([tempC, expected]) => ({
    name: `saturation pressure at ${tempC} °C in a second table`,
    unit: 'Pa',
    expected,
    within: expected * 0.004,
    why: 'an engineering table, three to four digits, old formula',
    source: 'moist-air-table',
    mark: 'READ' as const,
    ours: () => saturationPa(tempC),
  })),
  ...SUPERCOOLED.map(([tempC, expected]) => ({
    name: `saturation pressure over supercooled water at ${tempC} °C`,
    unit: 'Pa',
    expected,
    within: expected * 0.01,
    why: 'formulas fitted above zero differ by up to 0.8 % at -40 °C; over ice it would be 5 to 32 % less',
    source: 'hyland-wexler-1983',
    mark: 'COMPUTED' as const,
    ours: () => waterSaturationPa(tempC),
  })),
  ...HUMIDITY.map(([tempC, expected, relative]) => ({
    name: `humidity ratio of saturated air at ${tempC} °C at the pressure taken without being told`,
    unit: 'kg/kg',
    expected,
    within: expected * relative,
    why: 'real air holds 0.5 % more than an ideal gas',
    source: 'ashrae-2017',
    mark: 'READ' as const,
    ours: () => state(tempC < 0 ? { tempC, rhIceFrac: 1 } : { tempC, rhFrac: 1 }).humidityRatio,
  })),
  {
    name: 'humidity ratio from vapour pressure at 500 m',
    unit: 'kg/kg',
    expected: 0.0213603998,
    within: 1e-6,
    why: 'tolerance of the reference implementation’s own test',
    source: 'ashrae-2017',
    mark: 'READ',
    ours: () => state({ tempC: 26, pressurePa: 95461, vapourPa: 3169.7 }).humidityRatio,
  },
  {
    name: 'dew point of air at 20 °C and 60 %',
    unit: '°C',
    expected: 12.0075,
    within: 0.01,
    why: 'two saturation formulas differ by 0.03 %, 0.005 K',
    source: 'hyland-wexler-1983',
    mark: 'COMPUTED',
    ours: () => state({ tempC: 20, rhFrac: 0.6 }).dewPointC,
  },
  {
    name: 'frost point of air at -20 °C and 80 % over ice',
    unit: '°C',
    expected: -22.3039,
    within: 0.01,
    why: 'two saturation formulas differ by 0.01 %',
    source: 'hyland-wexler-1983',
    mark: 'COMPUTED',
    ours: () => state({ tempC: -20, rhIceFrac: 0.8 }).frostPointC!,
  },
  {
    name: 'a station’s 80 % at -20 °C is nearly frost: humidity over ice',
    unit: '1',
    expected: 0.973,
    within: 0.002,
    why: 'two formulas over supercooled water differ by 0.1 %',
    source: 'hyland-wexler-1983',
    mark: 'COMPUTED',
    ours: () => state({ tempC: -20, rhFrac: 0.8 }).rhIceFrac!,
  },
  {
    name: 'volume of saturated air at 20 °C a kilogram of its dry air',
    unit: 'm3/kg',
    expected: 0.85008,
    within: 0.00005,
    why: 'ideal gas in both; saturation differs by 0.03 %',
    source: 'hyland-wexler-1983',
    mark: 'COMPUTED',
    ours: () => {
      const { humidityRatio, densityKgPerM3 } = state({ tempC: 20, rhFrac: 1 });
      return (1 + humidityRatio) / densityKgPerM3;
    },
  },
];
