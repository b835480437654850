export { provisionParameters } from '../tables/parameters-provision.gen.ts';
export type {
  Aim,
  CandyGift,
  LookStep,
  Move,
  ProvisionAnswer,
  RankResult,
  Reason,
  ReasonCode,
  Step,
  StepDo,
  SyrupGift,
  Uncovered,
  Uniting,
} from './answer.ts';
export type {
  BankLot,
  CombLot,
  Looked,
  LossPoint,
  Place as HivePlace,
  ProvisionColony,
  ProvisionInput,
  ProvisionPrices,
  ProvisionRules,
  Union,
} from './input.ts';
export { PROVISION_RANGES } from './limits.ts';
export { lossAt, lossCurve } from './loss-curve.ts';
export { toLp } from './lp-text.ts';
export { provision, provisionLp } from './provision.ts';
export { AUTUMN_SYRUP_SUGAR_FRAC, readProvisionInput } from './read-input.ts';
export { recheck } from './recheck.ts';
export type { EndedBy, LpModel, LpRow, LpSum, LpVariable, Solve, SolveLimits, SolveResult } from './solve.ts';
