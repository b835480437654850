import { AIR_DEW_POINT_C, AIR_PRESSURE_PA, AIR_RH, AIR_TEMP_C, AIR_VAPOUR_PA, matterParameters } from '@winterheft/core';
import * as z from 'zod';

const within = ({ low, high }: { readonly low: number; readonly high: number }) => z.number().min(low).max(high);

export const input = z.strictObject({
  tempC: within(AIR_TEMP_C).describe('temperature [°C]'),
  pressurePa: within(AIR_PRESSURE_PA).default(matterParameters.standardPressurePa.value).describe('air pressure [Pa]'),
  rhFrac: within(AIR_RH)
    .optional()
    .describe('relative humidity over liquid water, as stations and sensors give it below freezing too, 0 to 1; one of four'),
  rhIceFrac: within({ low: AIR_RH.low, high: 2 }).optional().describe('relative humidity over ice, at 0 °C and below; can pass 1'),
  dewPointC: within(AIR_DEW_POINT_C).optional().describe('dew point over water, not above tempC [°C]'),
  vapourPa: within(AIR_VAPOUR_PA).optional().describe('partial pressure of the vapour [Pa]'),
});

export const output = z.strictObject({
  vapourPa: z.number().describe('partial pressure of the vapour [Pa]'),
  saturationWaterPa: z.number().describe('saturation over liquid water, supercooled below 0 °C [Pa]'),
  saturationIcePa: z.number().nullable().describe('saturation over ice [Pa]; null above 0.01 °C'),
  dewPointC: z.number().describe('where dew would form [°C]'),
  frostPointC: z.number().nullable().describe('where frost would form [°C]; null where dew comes first'),
  humidityRatio: z.number().describe('water to dry air by mass; ideal gas, about 0.5 % low'),
  densityKgPerM3: z.number().describe('of the moist air [kg/m³]'),
  rhFrac: z.number().describe('relative humidity over water'),
  rhIceFrac: z.number().nullable().describe('relative humidity over ice; null above 0.01 °C'),
});

export const example = { tempC: -20, rhFrac: 0.8 };
