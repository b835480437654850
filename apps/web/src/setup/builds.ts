import { type FrameDepth, type PartCount, standardBuild } from '@winterheft/core';

/** Boxes from the floor up, as one word; the words have a name for each. */
export const STACKS = ['deep', 'deep-deep', 'deep-medium', 'medium-medium-medium'] as const;
export type Stack = (typeof STACKS)[number];

export interface BuildChoice {
  readonly stack: Stack;
  readonly frames: 10 | 8 | 5;
  readonly material: 'wood' | 'foam';
}

export const DEFAULT_BUILD: BuildChoice = { stack: 'deep-deep', frames: 10, material: 'wood' };

export const boxesOf = (stack: Stack): readonly FrameDepth[] => stack.split('-') as FrameDepth[];

/** The list of parts a `build` record takes. */
export function partsOfBuild({ stack, frames, material }: BuildChoice): readonly PartCount[] {
  return standardBuild(boxesOf(stack), frames, { material }).map(({ part, count }) => ({ part, count }));
}

const keyOf = (parts: readonly PartCount[]) =>
  parts
    .map(({ part, count }) => `${part} ${count}`)
    .sort()
    .join('\n');

/** The choice a list of parts came from, or null where somebody listed parts of their own. */
export function choiceOfParts(parts: readonly PartCount[]): BuildChoice | null {
  const wanted = keyOf(parts);
  for (const stack of STACKS) {
    for (const frames of [10, 8, 5] as const) {
      for (const material of ['wood', 'foam'] as const) {
        const choice = { stack, frames, material };
        if (keyOf(partsOfBuild(choice)) === wanted) return choice;
      }
    }
  }
  return null;
}
