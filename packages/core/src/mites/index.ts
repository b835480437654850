export { mitesParameters } from '../tables/parameters-mites.gen.ts';
export type {
  ColonyMites,
  LevelRange,
  MitesAnswer,
  MitesSetting,
  TreatmentEffect,
  WashPost,
  YardMites,
  YardTreatment,
} from './answer-types.ts';
export { BOARD_DAYS, BOARD_MITES, type BoardAnswer, type BoardInput, boardCount, poissonInterval } from './board.ts';
export { binomialAtMost, type TellApart, type TellApartInput, tellApart } from './compare.ts';
export { supersOn } from './counts.ts';
export type { DueWhat, MiteDue } from './due.ts';
export { type EfficacyAnswer, type EfficacyInput, treatmentEffect } from './efficacy.ts';
export { type GrowthRange, miteGrowth } from './growth.ts';
export { betaGrid, chanceAbove, type LevelGrid, levelAt, meanLevel } from './level-grid.ts';
export { type Brood, type LevelOnDay, type LevelStep, levelKeys, levelOn, levelStair, type OwnLevel } from './levels.ts';
export { type WinterLoss, winterLoss } from './loss.ts';
export { MITES_MEMBERS, mites } from './mites.ts';
export { type PooledCount, type PooledYard, type PoolPrior, poolYard } from './pool.ts';
export { levelsOnDay, type ProjectInput, type Projection, projectLevels, shareAbove, shareAt, type TreatmentAct } from './project.ts';
export { clopperPearson, type Interval, jeffreys, wilson, wilsonCorrected } from './proportion.ts';
export { type RecordFault, type TreatmentRecord, treatmentRecords } from './records.ts';
export { levelOnDayOf, type MiteStanding, miteStanding, type YardSeasonOfMites, yardSeasonOfMites } from './standing.ts';
export { startChances, type YardDays } from './starts.ts';
export {
  checkedLabel,
  effectRange,
  type LabelDiffers,
  labelDiffers,
  limitsOf,
  rowOfActive,
  type TreatmentLabel,
  type TreatmentLimits,
  treatmentKeys,
  treatmentRows,
} from './treatments.ts';
export { chanceAboveLevel, recoveryOf, type WashAnswer, type WashInput, type WashNote, wash, washedBees } from './wash.ts';
export { WASH_BEES, WASH_CERTAINTY, WASH_DAYS_AHEAD, WASH_METHODS, type WashMethod } from './wash-ranges.ts';
export { type BroodEnd, broodEnd, drawBroodEnd, type WinterBeeWindow, winterBeeWindow } from './window.ts';
