export { storesParameters } from '../tables/parameters-stores.gen.ts';
export { beesOf } from './bees.ts';
export { cappedNetKg, frameNamed } from './counted.ts';
export { grossRangeOf } from './gross-range.ts';
export { STORES_RANGES } from './read-input.ts';
export { stores } from './stores.ts';
export { partMass } from './tare.ts';
export type {
  CappedFrames,
  Measurement,
  StoresAnswer,
  StoresInput,
  StoresNote,
  Worth,
} from './types.ts';
