export { loadHighs } from '../packages/solver/src/index.ts';
export { USUAL_CERTAINTY } from './arms/winterheft.ts';
export { armInfos, cellsOf, compare, intervals, type KeeperRow, playKeepers, sweepOf } from './study.ts';
