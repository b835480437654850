import { bad, good, inRange, type Result } from '../result/index.ts';
import { matterParameters } from '../tables/parameters-matter.gen.ts';
import { dewPointC, frostPointC, iceSaturationPa, waterSaturationPa, ZERO_C_IN_K } from './vapour.ts';

/** Molar mass of water over that of dry air. Source: [ashrae-2017] eq. 20. */
const WATER_TO_AIR = 0.621945;
/** Gas constant of dry air [J/(kg K)]. Source: [ashrae-2017] eq. 1. */
const DRY_AIR_J_PER_KG_K = 287.042;

export interface AirInput {
  readonly tempC: number;
  readonly pressurePa?: number | undefined;
  /** Over liquid water, as stations and sensors report it, below freezing too. */
  readonly rhFrac?: number | undefined;
  /** Over ice; only at 0 degC and below. */
  readonly rhIceFrac?: number | undefined;
  readonly dewPointC?: number | undefined;
  readonly vapourPa?: number | undefined;
}

export interface AirAnswer {
  readonly vapourPa: number;
  readonly saturationWaterPa: number;
  /** null above 0.01 degC, where there is no ice. */
  readonly saturationIcePa: number | null;
  readonly dewPointC: number;
  /** null where dew comes before frost. */
  readonly frostPointC: number | null;
  /** Water to dry air by mass. */
  readonly humidityRatio: number;
  /** Of the moist air. */
  readonly densityKgPerM3: number;
  readonly rhFrac: number;
  readonly rhIceFrac: number | null;
}

export const AIR_TEMP_C = { low: -60, high: 55, unit: '°C' } as const;
export const AIR_PRESSURE_PA = { low: 50000, high: 110000, unit: 'Pa' } as const;
/** Drier air has no dew point worth the name. */
export const AIR_VAPOUR_PA = { low: 0.01, high: 16000, unit: 'Pa' } as const;
export const AIR_RH = { low: 0.001, high: 1, unit: 'of saturation' } as const;
export const AIR_DEW_POINT_C = { low: -100, high: 55, unit: '°C' } as const;
const ICE_UP_TO_C = 0.01;
const MEASURES = ['rhFrac', 'rhIceFrac', 'dewPointC', 'vapourPa'] as const;

/**
 * State of moist air. Saturation over water and over ice are kept apart: at -20 degC, 80 % over water is 97 % over ice.
 *
 * input       tempC, pressurePa, and one of rhFrac (over water), rhIceFrac, dewPointC, vapourPa
 * returns     pressures, points, humidity ratio, density; or what is wrong with the input
 * equation    W = 0.621945 p_v/(p - p_v); rho = p (1 + W)/(R T (1 + W/0.621945)); air taken as an ideal gas (W 0.5 % low)
 * source      [murphy-koop-2005], [ashrae-2017]
 * checked     checks/air.ts, air.test.ts against psychrolib
 */
export function air(input: AirInput): Result<AirAnswer> {
  const temp = inRange('tempC', input.tempC, AIR_TEMP_C);
  if (!temp.ok) return temp;
  const pressure = inRange('pressurePa', input.pressurePa ?? matterParameters.standardPressurePa.value, AIR_PRESSURE_PA);
  if (!pressure.ok) return pressure;
  const vapour = vapourOf(input, temp.value);
  if (!vapour.ok) return vapour;
  const saturationWaterPa = waterSaturationPa(temp.value);
  const saturationIcePa = temp.value <= ICE_UP_TO_C ? iceSaturationPa(temp.value) : null;
  const humidityRatio = (WATER_TO_AIR * vapour.value) / (pressure.value - vapour.value);
  const kelvin = temp.value + ZERO_C_IN_K;
  return good({
    vapourPa: vapour.value,
    saturationWaterPa,
    saturationIcePa,
    dewPointC: dewPointC(vapour.value),
    frostPointC: frostPointC(vapour.value),
    humidityRatio,
    densityKgPerM3: (pressure.value * (1 + humidityRatio)) / (DRY_AIR_J_PER_KG_K * kelvin * (1 + humidityRatio / WATER_TO_AIR)),
    rhFrac: vapour.value / saturationWaterPa,
    rhIceFrac: saturationIcePa === null ? null : vapour.value / saturationIcePa,
  });
}

function vapourOf(input: AirInput, tempC: number): Result<number> {
  const given = MEASURES.filter((field) => input[field] !== undefined);
  const field = given[0];
  if (field === undefined) return bad({ kind: 'missing-all', ways: MEASURES.map((measure) => [measure]) });
  if (given.length > 1) return bad({ kind: 'conflict', fields: given, why: 'one-humidity' });
  const saturationPa = waterSaturationPa(tempC);
  switch (field) {
    case 'rhFrac': {
      const rh = inRange(field, input.rhFrac, AIR_RH);
      return rh.ok ? good(rh.value * saturationPa) : rh;
    }
    case 'rhIceFrac': {
      if (tempC > ICE_UP_TO_C) return bad({ kind: 'conflict', fields: ['rhIceFrac', 'tempC'], why: 'no-ice-above-freezing' });
      const icePa = iceSaturationPa(tempC);
      // Air below freezing may hold more than ice would leave it, up to what liquid water would.
      const rhIce = inRange(field, input.rhIceFrac, { low: AIR_RH.low, high: saturationPa / icePa, unit: AIR_RH.unit });
      return rhIce.ok ? good(rhIce.value * icePa) : rhIce;
    }
    case 'dewPointC': {
      const dew = inRange(field, input.dewPointC, { ...AIR_DEW_POINT_C, high: tempC });
      return dew.ok ? good(waterSaturationPa(dew.value)) : dew;
    }
    case 'vapourPa':
      return inRange(field, input.vapourPa, { ...AIR_VAPOUR_PA, high: saturationPa });
  }
}
