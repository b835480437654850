// Made by scripts/compile-tables.mjs from data/parameters/matter.csv. Do not edit.
import type { Parameter } from './types.ts';

export const matterParameters = {
  storesLbPerUsGallon: { value: 7, unit: "lb/US gal", low: 7, high: 9, distribution: "fixed", source: "yield-seven-pounds", mark: "READ", note: "stores one US gallon of 2:1 syrup adds; 7 is the rule as published and the one planned on; mass balance without any loss gives 9" },
  storesSugarDivisor: { value: 0.8, unit: "1", low: 0.8, high: 1, distribution: "fixed", source: "yield-divide-by-eight-tenths", mark: "READ", note: "kilograms of sugar divided by this give the honey they stand for; no loss at all; the upper of the two rules" },
  storesPerSugar2to1Frac: { value: 1.12, unit: "kg/kg", low: 0.95, high: 1.25, distribution: "normal", source: "hohenheim-1981", mark: "READ-2", note: "stores per kg of sugar fed as 2:1 syrup by mass; the only experiment read" },
  storesPerSugar3to2Frac: { value: 1.075, unit: "kg/kg", low: 0.9, high: 1.25, distribution: "normal", source: "hohenheim-1981", mark: "READ-2", note: "same for 3:2" },
  storesPerSugar1to1Frac: { value: 0.9, unit: "kg/kg", low: 0.75, high: 1.1, distribution: "normal", source: "hohenheim-1981", mark: "READ-2", note: "same for 1:1; bees spend more on drying thin syrup" },
  sugarKgPerL: { value: 0.845, unit: "kg/L", low: 0.8, high: 0.9, distribution: "normal", source: "sugar-cup", mark: "READ", note: "white granulated sugar poured into a measure: 200 g in a US cup" },
  syrupTempC: { value: 20, unit: "°C", low: 5, high: 30, distribution: "fixed", source: "crc-sucrose", mark: "READ", note: "temperature at which syrup is measured unless said otherwise; the handbook's tables stand at 20 °C" },
  honeyEnergyMJPerKg: { value: 12.72, unit: "MJ/kg", low: 12.4, high: 13, distribution: "normal", source: "usda-honey", mark: "READ", note: "food energy of honey" },
  honeyMoistureFrac: { value: 0.172, unit: "1", low: 0.148, high: 0.196, distribution: "normal", source: "white-1962", mark: "READ-2", note: "water in capped honey; standard deviation 0.0146 over United States honeys" },
  honeyCarbohydrateFrac: { value: 0.824, unit: "1", low: 0.8, high: 0.85, distribution: "normal", source: "usda-honey", mark: "READ", note: "carbohydrate in honey" },
  candyWaterPerSugarFrac: { value: 0.0976, unit: "kg/kg", low: 0.0625, high: 0.118, distribution: "fixed", source: "candy-no-cook", mark: "READ", note: "water to sugar by mass of the no-cook recipe: one and a half US cups to 8 lb; others use 1 oz to the pound and 1 cup to 4 lb" },
  candyPackedKgPerL: { value: 1.01, unit: "kg/L", low: 0.81, high: 1.22, distribution: "normal", source: "candy-block-sizes", mark: "DERIVED", note: "damp sugar packed by hand; mean of two published blocks of stated size and recipe" },
  standardPressurePa: { value: 101325, unit: "Pa", low: 84000, high: 105000, distribution: "fixed", source: "standard-atmosphere", mark: "READ", note: "air pressure where none is given; 1000 m up it is 11 % lower" },
} satisfies Record<string, Parameter>;
