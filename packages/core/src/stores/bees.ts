import type { BuildFacts } from '../matter/index.ts';
import { storesParameters } from '../tables/parameters-stores.gen.ts';
import { winterParameters } from '../tables/parameters-winter.gen.ts';
import { framePart } from '../tables/parts.ts';
import { sdFromBounds } from './errors.ts';
import type { Counting, StoresInput } from './types.ts';

export interface Bees {
  readonly count: number;
  readonly massKg: number;
  readonly sdKg: number;
  /** True where nobody counted and a usual colony was assumed. */
  readonly assumed: boolean;
}

/** The fields that tell how many bees there are. */
type BeesGiven = Pick<StoresInput, 'bees' | 'beesSdFrac' | 'framesOfBees' | 'seamsOfBees' | 'counting'>;

/** Bees on one deep frame of bees by the keeper's way of counting, as value with bounds. */
function beesPerDeepFrame(counting: Counting) {
  switch (counting) {
    case 'occupied':
      return storesParameters.beesPerFrameOccupied;
    case 'packed':
      return storesParameters.beesPerFramePacked;
    case 'covered':
      return storesParameters.beesPerFrameCovered;
  }
}

/**
 * How many bees, what they weigh and how well that is known.
 *
 * A seam of bees counts like a frame: the bees on the two sides that face each other. Frames shallower than deep carry bees by
 * their comb area. Where nobody counted, a usual winter colony is assumed, no more than a share of the combs in a small hive.
 *
 * returns   number, mass [kg] and its standard deviation: counting, the way of counting and the weight of a bee together
 */
export function beesOf(facts: BuildFacts, input: BeesGiven): Bees {
  const p = storesParameters;
  const massFrac = sdFromBounds(winterParameters.beeMassKg) / winterParameters.beeMassKg.value;
  const beeKg = winterParameters.beeMassKg.value;
  const as = (count: number, countSd: number, assumed: boolean): Bees => ({
    count,
    massKg: count * beeKg,
    sdKg: beeKg * Math.hypot(countSd, massFrac * count),
    assumed,
  });
  if (input.bees !== undefined) return as(input.bees, input.bees * (input.beesSdFrac ?? p.beesSdFrac.value), false);
  const perDeep = beesPerDeepFrame(input.counting ?? 'covered');
  const perFrame = perDeep.value * combShare(facts);
  const wayFrac = sdFromBounds(perDeep) / perDeep.value;
  const counted = input.framesOfBees ?? input.seamsOfBees;
  if (counted !== undefined) {
    const count = counted * perFrame;
    return as(count, Math.hypot(wayFrac * count, p.beeCountSdFrames.value * perFrame), false);
  }
  const share = facts.framePlaces * p.unknownBeeFrameFrac.value;
  const usual = p.unknownFramesOfBees.value / combShare(facts);
  const [frames, sdFrames] =
    share < usual
      ? [share, facts.framePlaces * sdFromBounds(p.unknownBeeFrameFrac)]
      : [usual, sdFromBounds(p.unknownFramesOfBees) / combShare(facts)];
  const count = frames * perFrame;
  return as(count, Math.hypot(wayFrac * count, sdFrames * perFrame), true);
}

/** Comb area of the hive's average frame place against a deep one. */
function combShare(facts: BuildFacts): number {
  let area = 0;
  let places = 0;
  for (const { part, count } of facts.boxes) {
    area += framePart(part.depth, 'drawn').combAreaM2 * part.framesFit * count;
    places += part.framesFit * count;
  }
  return area / places / framePart('deep', 'drawn').combAreaM2;
}
