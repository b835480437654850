export type { Clash } from './clashes.ts';
export { foldHolding } from './fold.ts';
export { type Trace, type TracePoint, type TraceStep, traceOf } from './trace.ts';
export type {
  AdoptedPlan,
  Build,
  Colony,
  Fact,
  Happening,
  Hive,
  Holding,
  InHand,
  Lot,
  PartCount,
  ShutTick,
  Stand,
  Treatment,
  Weighing,
  Yard,
} from './types.ts';
export { winterOf, winterSpan } from './winter-name.ts';
