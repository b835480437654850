export { planParameters } from '../tables/parameters-plan.gen.ts';
export { type ColonyDetail, colonyDetail } from './colony-detail.ts';
export { combSource, isLightComb, type OpenGap, type Reserve, reserveForGaps } from './combs.ts';
export { type WeighingWays, waysOf } from './gross.ts';
export { CODE_VERSION, datesOf, endedColonies, linesOf, PLAN_VERSION, type PlanTools, plan, planFrom } from './plan.ts';
export { finishPlan, type OpenPlan, openPlan, type PreparedPlan, preparePlan, readyColony } from './prepare.ts';
export { type EntryJudgement, judgeEntry, type RefusedReading, type TypedEntry } from './typed.ts';
export type { ColonyOutlook, DateOdds, EndedColony, Plan, PlanSetting, State, StateNote, Task, YardDates } from './types.ts';
