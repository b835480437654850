import type { Holding } from '@winterheft/core';
import type { Count } from '../weighing/entry.ts';
import type { HiveFacts } from '../weighing/hive-facts.ts';
import type { WalkHive } from '../weighing/walk.ts';

/** Where each stepper begins and ends: at what was counted last, else in the middle of a box for bees and at one frame for honey. */
export function seenLimits(
  holding: Holding,
  here: WalkHive,
  facts: HiveFacts,
): { readonly start: Readonly<Record<Count, number>>; readonly most: Readonly<Record<Count, number>> } {
  const { boxes, framesInBox, belowFrame } = facts;
  const stacked = Math.max(boxes.length, belowFrame === null ? 1 : 2);
  const bees = holding.colonies.get(here.colony)?.looks.findLast((look) => look.bees?.unit === 'frames')?.bees?.count;
  return {
    start: { bees: bees ?? Math.ceil(framesInBox / 2), top: 1, below: 1 },
    most: { bees: framesInBox * stacked, top: framesInBox, below: belowFrame === null ? 0 : framesInBox * (stacked - 1) },
  };
}
