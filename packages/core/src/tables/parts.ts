import { PARTS } from './parts.gen.ts';
import type { Mark } from './types.ts';

export type FrameDepth = 'deep' | 'medium' | 'shallow';
export type FrameState = 'bare' | 'foundation' | 'drawn';

interface Sourced {
  readonly key: string;
  readonly source: string;
  readonly mark: Mark;
  readonly note: string;
}
/** Mass of one piece [kg] and its 5 % and 95 % bounds; flat parts are of ten-frame size. */
interface Weighed {
  massKg: number;
  low: number;
  high: number;
}

/** A bare box. Its mass follows from its shell and the density of its material. */
export interface BoxPart extends Sourced {
  readonly kind: 'box';
  readonly material: 'pine' | 'eps';
  readonly depth: FrameDepth;
  outsideLengthM: number;
  outsideWidthM: number;
  heightM: number;
  wallM: number;
  framesFit: number;
}

/** A frame by depth and state. combAreaM2 is one side; cappedNetKg is the honey of a full capped comb, without wood and wax. */
export interface FramePart extends Sourced, Weighed {
  readonly kind: 'frame';
  readonly depth: FrameDepth;
  readonly state: FrameState;
  combAreaM2: number;
  cappedNetKg: number;
  cappedNetLowKg: number;
  cappedNetHighKg: number;
}

/** A layer over, under or around the boxes. Without massKg its mass follows from the footprint, the thickness and the material. */
export interface LayerPart extends Sourced, Partial<Weighed> {
  readonly kind: 'floor' | 'inner cover' | 'cover' | 'insulation' | 'fill' | 'wrap';
  readonly material: string;
  thicknessM: number;
}

/** A ring on the boxes' footprint. */
export interface RimPart extends Sourced {
  readonly kind: 'rim';
  readonly material: 'pine' | 'eps';
  heightM: number;
  wallM: number;
}

export interface LoosePart extends Sourced, Weighed {
  readonly kind: 'stand' | 'feeder';
  /** Frame places it takes in a box. */
  framePlaces?: number;
}

export type Part = BoxPart | FramePart | LayerPart | RimPart | LoosePart;

/** What a hive is made of: keys of the parts table, how many, and the keeper's own mass of one piece where it was weighed. */
export interface BuildPart {
  readonly part: string;
  readonly count: number;
  readonly massKg?: number | undefined;
}
export type Build = readonly BuildPart[];

/** The row of a part, or undefined where the table has none. */
export function partOf(key: string): Part | undefined {
  return PARTS.find((part) => part.key === key);
}

/** Every row. */
export const PARTS_TABLE: readonly Part[] = PARTS;

export function partKeys(): readonly string[] {
  return PARTS.map((part) => part.key);
}

/** The row of a frame by depth and state; it is there for every pair. */
export function framePart(depth: FrameDepth, state: FrameState): FramePart {
  const part = partOf(`${depth}-frame-${state}`);
  if (part?.kind !== 'frame') throw new RangeError(`framePart: the table has no frame ${depth} ${state}`);
  return part;
}

/**
 * A usual build: boxes full of drawn frames, a floor, an inner cover and a lid.
 *
 * boxes     depths from the floor up, for example ['deep', 'deep']
 * frames    5, 8 or 10 to a box
 */
export function standardBuild(
  boxes: readonly FrameDepth[],
  frames: 5 | 8 | 10,
  options: { readonly material?: 'wood' | 'foam'; readonly floor?: string; readonly extra?: Build } = {},
): Build {
  const material = options.material ?? 'wood';
  const depths = (['deep', 'medium', 'shallow'] as const).filter((depth) => boxes.includes(depth));
  const countOf = (depth: FrameDepth) => boxes.filter((box) => box === depth).length;
  const cover: Build =
    material === 'foam'
      ? [{ part: 'foam-lid', count: 1 }]
      : [
          { part: 'inner-cover', count: 1 },
          { part: 'telescoping-cover', count: 1 },
        ];
  return [
    { part: options.floor ?? 'solid-floor', count: 1 },
    ...depths.map((depth) => ({ part: `${depth}-${frames}-${material}`, count: countOf(depth) })),
    ...depths.map((depth) => ({ part: `${depth}-frame-drawn`, count: countOf(depth) * frames })),
    ...cover,
    ...(options.extra ?? []),
  ];
}
