export { winterParameters } from '../tables/parameters-winter.gen.ts';
export { fanOf, type Judged, judgeColony, type PreparedColony, prepareColony, type StoresFan, sharesOf } from './colony.ts';
export { type DoubtShares, doubtCauses } from './doubt.ts';
export type { DrawInput, LevelBelief, Pins } from './draws.ts';
export { type StoresDoubt, storesErrors } from './judge.ts';
export type { ColonyRun } from './kernel.ts';
export { KNOT_DAYS, makeRun, runOutIndex } from './outcome.ts';
export { levelAfter, outlook } from './outlook.ts';
export { OUTLOOK_RANGES } from './outlook-input.ts';
export type { DateSpread, OutlookAnswer, OutlookInput } from './outlook-types.ts';
export { levelPrior, type OwnRule } from './own-rule.ts';
export { type WinterName, type WinterValues, winterValues } from './parameters.ts';
export type { Spread } from './quantiles.ts';
export type { YardSeason } from './season.ts';
export {
  TOP_FORECAST_MEMBERS,
  TOP_FORECAST_TOPS,
  type TopChoice,
  type TopForecast,
  type TopForecastAnswer,
  type TopForecastInput,
  topForecast,
} from './top-forecast.ts';
export {
  WHAT_IF_MEMBERS,
  WHAT_IF_RANGES,
  type WhatIfAnswer,
  type WhatIfChanges,
  type WhatIfRun,
  whatIfJudged,
  whatIfRun,
} from './what-if.ts';
export { drawSeason, type SeasonSpan } from './yard-season.ts';
