import { type CandyGift, framePart, type OpenGap, type SyrupGift, type Uniting } from '@winterheft/core';
import type { Flow } from './hand.ts';

/** One halt of the walk: what is done at one hive, or at the shed, before going on. Stored as it is when the walk starts. */
export interface Stop {
  readonly id: string;
  readonly kind: 'shed' | 'look' | 'swap' | 'syrup' | 'candy' | 'unite';
  readonly yard: string;
  /** Null at the shed. */
  readonly colony: string | null;
  /** Combs that move; ticking the stop writes each as a record. */
  readonly flows: readonly Flow[];
  readonly syrup?: SyrupGift;
  readonly candy?: CandyGift;
  readonly union?: Uniting;
}

export type HiveStop = Omit<Stop, 'id'>;

/** A gap for which no light comb could be found is closed with a new frame: bees draw it out in spring. */
export function foundationStop({ colony, yard, depth }: OpenGap, count: number): HiveStop {
  const { key: frame, massKg } = framePart(depth, 'foundation');
  return { kind: 'swap', yard, colony, flows: [{ from: { hand: 'shed' }, to: { colony }, frame, count, massKg }] };
}
