export type { Clash, Thing } from './clashes.ts';
export { foldHolding } from './fold.ts';
export type {
  AdoptedPlan,
  Build,
  Colony,
  Fact,
  Happening,
  Hive,
  Holding,
  InHand,
  KitCount,
  Lot,
  Move,
  PartCount,
  ShutTick,
  Stand,
  Stay,
  Top,
  Treatment,
  Unread,
  Weighing,
  Yard,
} from './types.ts';
export { winterOf, winterSpan } from './winter-name.ts';
