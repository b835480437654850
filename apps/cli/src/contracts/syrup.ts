import { matterParameters, SYRUP_AMOUNT_KG, SYRUP_AMOUNT_L, SYRUP_TEMP_RANGE } from '@winterheft/core';
import * as z from 'zod';

const massKg = z.number().min(SYRUP_AMOUNT_KG.low).max(SYRUP_AMOUNT_KG.high);

export const input = z.strictObject({
  sugarKg: massKg.optional().describe('white sugar [kg]; with waterKg, or with ratio and basis'),
  waterKg: massKg.optional().describe('water [kg]; with sugarKg'),
  ratio: z
    .string()
    .regex(/^\s*\d{1,4}(\.\d{1,4})?\s*:\s*\d{1,4}(\.\d{1,4})?\s*$/)
    .optional()
    .describe('sugar to water, for example "2:1"; means nothing without basis'),
  basis: z
    .enum(['mass', 'volume'])
    .optional()
    .describe(`what the ratio counts; by volume sugar is poured loose at ${matterParameters.sugarKgPerL.value} kg/L`),
  volumeL: z
    .number()
    .min(SYRUP_AMOUNT_L.low)
    .max(SYRUP_AMOUNT_L.high)
    .optional()
    .describe('syrup wanted [L]; with ratio, instead of sugarKg'),
  tempC: z
    .number()
    .min(SYRUP_TEMP_RANGE.low)
    .max(SYRUP_TEMP_RANGE.high)
    .default(matterParameters.syrupTempC.value)
    .describe('temperature of the syrup when measured [°C]'),
});

export const output = z.strictObject({
  sugarFrac: z.number().describe('sugar by mass, 0 to 1'),
  densityKgPerM3: z.number().describe('density at tempC [kg/m³]'),
  volumeL: z.number().describe('volume at tempC [L]'),
  sugarKg: z.number().describe('sugar [kg]'),
  waterKg: z.number().describe('water [kg]'),
  massKg: z.number().describe('syrup [kg]'),
  storesKg: z
    .strictObject({
      low: z.number().describe('by the rule "7 lb from a US gallon of 2:1", thinner syrup less; plan on this [kg]'),
      mid: z.number().describe('by the one experiment, for 2:1, 3:2 and 1:1 [kg]'),
      high: z.number().describe('by the rule "sugar divided by 0.8", as if nothing were lost [kg]'),
    })
    .describe('what it becomes in the combs'),
  storesExtrapolated: z.boolean().describe('true where the strength lies outside the experiment'),
  saturationTempC: z.number().nullable().describe('colder than this it can grain [°C]; null where it never does above 0 °C'),
  saturationTempRangeC: z
    .strictObject({
      low: z.number().describe('lowest of three published relations [°C]'),
      high: z.number().describe('highest of them [°C]'),
    })
    .nullable()
    .describe('how far published solubilities differ'),
  supersaturated: z.boolean().describe('true where it can grain at tempC'),
});

export const example = { ratio: '2:1', basis: 'mass', volumeL: 10 } as const;
