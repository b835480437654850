import { type FrameDepth, isLightComb, partOf } from '@winterheft/core';

/** Depth of a frame as recorded, by its depth alone or by the key of a part, and whether it is a light comb. */
export function frameOf({ frame, massKg }: { readonly frame: string; readonly massKg?: number | undefined }): {
  readonly depth: FrameDepth;
  readonly isLight: boolean;
} {
  const part = partOf(frame);
  const depth = part?.kind === 'frame' ? part.depth : frame === 'medium' || frame === 'shallow' ? frame : 'deep';
  return { depth, isLight: isLightComb(frame, massKg) };
}
