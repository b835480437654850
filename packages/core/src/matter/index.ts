export { matterParameters } from '../tables/parameters-matter.gen.ts';
export {
  AIR_DEW_POINT_C,
  AIR_PRESSURE_PA,
  AIR_RH,
  AIR_TEMP_C,
  AIR_VAPOUR_PA,
  type AirAnswer,
  type AirInput,
  air,
} from './air.ts';
export { type BuildFacts, type BuildLine, readBuild } from './build-facts.ts';
export {
  CANDY_DEPTH_M,
  CANDY_SIDE_M,
  CANDY_SUGAR_KG,
  type CandyAnswer,
  type CandyCaution,
  candy,
} from './candy.ts';
export { ENVELOPE_RANGES, type EnvelopeOptions, hiveConductance } from './hive-envelope.ts';
export { burnHoney } from './honey.ts';
export { saturationFrac, saturationTempC } from './solubility.ts';
export { storesFromSugarKg, storesPerSugarKg, sugarForStoresKg } from './stores-from-sugar.ts';
export { densityInAirKgPerM3, SYRUP_TEMP_RANGE, sucroseDensityKgPerM3, waterDensityKgPerM3 } from './sucrose.ts';
export {
  SYRUP_AMOUNT_KG,
  SYRUP_AMOUNT_L,
  type SyrupAnswer,
  type SyrupInput,
  syrup,
} from './syrup.ts';
export { dewPointC, frostPointC, iceSaturationPa, waterSaturationPa } from './vapour.ts';
