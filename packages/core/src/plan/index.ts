export { CODE_VERSION, PLAN_VERSION, type PlanTools, plan, planFrom } from './plan.ts';
export { type PreparedPlan, preparePlan } from './prepare.ts';
export type { ColonyOutlook, DateOdds, EndedColony, Plan, PlanSetting, State, StateNote, Task, YardDates } from './types.ts';
