import { type Hive, type PartCount, partOf } from '@winterheft/core';

/** What a round has to know of how a hive is built. */
export interface HiveFacts {
  /** Depths of the boxes from the floor up. */
  readonly boxes: readonly string[];
  readonly material: 'wood' | 'foam' | null;
  readonly framesInBox: number;
  /** Frames of the top box and of the boxes below it, as a look names them; null where there is no box below. */
  readonly topFrame: string;
  readonly belowFrame: string | null;
  /** Honey of a full capped frame of this hive, the lowest boxes' kind [kg]. */
  readonly cappedFrameKg: number;
}

const DEPTHS = ['deep', 'medium', 'shallow'];

/** Facts of the build that stands now; a hive without one counts as two deep boxes of ten, as in the plan. */
export function hiveFacts(hive: Hive): HiveFacts {
  const parts: readonly PartCount[] = hive.builds.at(-1)?.parts ?? [];
  const boxes: string[] = [];
  let material: HiveFacts['material'] = null;
  let framesInBox = 10;
  // A build lists its boxes by kind; the deeper stand below.
  for (const depth of DEPTHS) {
    for (const { part, count } of parts) {
      const row = partOf(part);
      if (row?.kind !== 'box' || row.depth !== depth) continue;
      for (let i = 0; i < count; i++) boxes.push(depth);
      material = row.material === 'eps' ? 'foam' : 'wood';
      framesInBox = row.framesFit;
    }
  }
  const stack = boxes.length === 0 ? ['deep', 'deep'] : boxes;
  const frame = (depth: string) => `${depth}-frame-drawn`;
  const bottom = partOf(frame(stack[0] as string));
  return {
    boxes,
    material,
    framesInBox,
    topFrame: frame(stack.at(-1) as string),
    belowFrame: stack.length > 1 ? frame(stack[0] as string) : null,
    cappedFrameKg: bottom?.kind === 'frame' ? bottom.cappedNetKg : 0,
  };
}
