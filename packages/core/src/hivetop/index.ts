export { materialKeys } from '../tables/materials.ts';
export { hivetopParameters } from '../tables/parameters-hivetop.gen.ts';
export { TOP_LAYERS, TOP_RANGES } from './read-top.ts';
export { type TopSeasonInput, type TopSeasonRuns, topSeason } from './season.ts';
export { SHIPPED_TOPS, type ShippedTop, shippedTop, topAtTemperatures, topConductanceWPerK } from './shipped.ts';
export { top } from './top.ts';
export type {
  TopAnswer,
  TopBuild,
  TopFill,
  TopHeat,
  TopInput,
  TopLayer,
  TopNote,
  TopOpening,
  TopPlace,
  TopSurface,
  TopWater,
} from './top-types.ts';
