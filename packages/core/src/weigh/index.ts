export { weighParameters } from '../tables/parameters-weigh.gen.ts';
export { type FrontShare, learnFrontShare } from './front-share.ts';
export {
  FRONT_SHARE_SD,
  GEOMETRY_RANGES,
  type HeftAnswer,
  type HeftInput,
  heft,
  READING_SCATTER_KG,
  readingsToStopAt,
  SCALE_CALIBRATION,
  SCALE_STEP_KG,
  standardShareSdFrac,
} from './heft.ts';
export {
  type Edge,
  edgeReadingKg,
  fromBothEdges,
  fromOneEdgeKg,
  type LeverGeometry,
  readingOfShareKg,
  standardGeometry,
} from './lever.ts';
export { type KgRange, plausibleEdgeRange, plausibleGrossRange, plausibleShareRange, tenfoldCandidatesKg } from './plausible.ts';
export {
  bothEdgesError,
  oneEdgeError,
  sdOf,
  standardScale,
} from './reading-error.ts';
export { HEFT_WORDS, type HeftWord, wordWeight } from './words.ts';
