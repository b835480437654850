import type { BuildFacts } from '../matter/index.ts';
import { storesParameters } from '../tables/parameters-stores.gen.ts';
import { type FrameDepth, type FramePart, framePart, partOf } from '../tables/parts.ts';
import { type Estimate, sdFromBounds } from './errors.ts';
import type { CappedFrames, StoresInput } from './types.ts';

const FRAME_DEPTHS = ['deep', 'medium', 'shallow'] as const;

/** The row of a frame named by depth or by its key in the parts table; undefined where it is neither. */
export function frameNamed(name: string): FramePart | undefined {
  const depth = FRAME_DEPTHS.find((one) => one === name);
  if (depth) return framePart(depth, 'drawn');
  const part = partOf(name);
  return part?.kind === 'frame' ? part : undefined;
}

/**
 * Honey of a full capped frame without wood and wax.
 *
 * returns   mass [kg], its standard deviation for a whole lot of frames, and that of one frame against another
 * source    parts table; [full-frames], [sealed-comb]
 */
export function cappedNetKg(depth: FrameDepth): { readonly kg: number; readonly lotSdKg: number; readonly eachSdKg: number } {
  const part = framePart(depth, 'drawn');
  return {
    kg: part.cappedNetKg,
    lotSdKg: sdFromBounds({ low: part.cappedNetLowKg, high: part.cappedNetHighKg }),
    eachSdKg: part.cappedNetKg * storesParameters.frameEachSdFrac.value,
  };
}

/** Whether the count is of every comb in the hive. */
export function coversAll(facts: BuildFacts, input: Pick<StoresInput, 'cappedFrames' | 'countCovers'>): boolean {
  if (input.countCovers !== undefined) return input.countCovers === 'all';
  return facts.boxCount === 1 || (input.cappedFrames ?? []).some(({ where }) => where === 'below');
}

/** Honey on one kind of counted frames: what it is and where the doubt comes from. */
function lotOf({ frame, count, massKg, fullFrac }: CappedFrames, facts: BuildFacts) {
  const part = frameNamed(frame);
  if (part === undefined) throw new RangeError(`lotOf: the table has no frame ${frame}`);
  const net = cappedNetKg(part.depth);
  const full = fullFrac ?? 1;
  const drawn = framePart(part.depth, 'drawn');
  const own = facts.frames.find((line) => line.part.key === drawn.key)?.massKg ?? null;
  const weighedSdKg = storesParameters.weighedSdKg.value;
  const kg = massKg === undefined ? net.kg * full : massKg - (own ?? drawn.massKg);
  return {
    kg: count * kg,
    depth: part.depth,
    lotSd: count * (massKg === undefined ? net.lotSdKg * full : weighedSdKg),
    // With a weighed frame heavier wood and wax mean less honey; the same frames stand in the build's mass.
    combSd: massKg === undefined ? 0 : -count * (own === null ? sdFromBounds(drawn) : weighedSdKg),
    eachVar: count * net.eachSdKg ** 2,
  };
}

/** Capped honey in the top box: what a cluster can reach without moving down. Null where no frame was named there. */
export function contactOf(
  facts: BuildFacts,
  cappedFrames: readonly CappedFrames[],
): { readonly frames: number; readonly kg: number; readonly sdKg: number } | null {
  const top = cappedFrames.filter(({ where }) => where === 'top');
  if (top.length === 0) return null;
  const lots = top.map((entry) => lotOf(entry, facts));
  const variance = lots.reduce((sum, lot) => sum + lot.eachVar, 0) + sum(lots, 'lotSd') ** 2 + sum(lots, 'combSd') ** 2;
  return { frames: top.reduce((n, { count }) => n + count, 0), kg: sum(lots, 'kg'), sdKg: Math.sqrt(variance) };
}

/**
 * Stores by counting combs: full capped frames, what is on the combs beside them, and what may be where nobody looked.
 *
 * Frames of one depth share the error of their weight (one lot, one nectar, one spacing); counting and the spread from comb to
 * comb are private to the colony. Boxes that were not looked into are taken as partly full with a wide error.
 */
export function countedStores(facts: BuildFacts, input: Pick<StoresInput, 'cappedFrames' | 'countCovers'>): Estimate {
  const p = storesParameters;
  const entries = input.cappedFrames ?? [];
  const lots = entries.map((entry) => lotOf(entry, facts));
  const counted = entries.reduce((n, { count }) => n + count, 0);
  const all = coversAll(facts, input);
  const lookedAt = all ? facts.framePlaces : Math.min(facts.framePlaces, facts.framePlaces / facts.boxCount);
  const unlooked = facts.framePlaces - lookedAt;
  const others = Math.max(0, lookedAt - counted);
  const meanNetKg = cappedNetKg(mainDepth(facts)).kg;
  const lotVar = FRAME_DEPTHS.reduce(
    (total, depth) =>
      total +
      sum(
        lots.filter((lot) => lot.depth === depth),
        'lotSd',
      ) **
        2,
    0,
  );
  const framesVar =
    lots.reduce((total, lot) => total + lot.eachVar, 0) +
    (p.countSdFrames.value * meanNetKg) ** 2 +
    (others * sdFromBounds(p.restPerCombKg)) ** 2 +
    (unlooked * sdFromBounds(p.unlookedFrac) * meanNetKg) ** 2;
  return {
    kg: sum(lots, 'kg') + others * p.restPerCombKg.value + unlooked * p.unlookedFrac.value * meanNetKg,
    errors: { lot: Math.sqrt(lotVar), comb: sum(lots, 'combSd'), frames: Math.sqrt(framesVar) },
  };
}

/** Depth of most frame places of the hive. */
export function mainDepth(facts: BuildFacts): FrameDepth {
  const places = (depth: FrameDepth) =>
    facts.boxes.reduce((n, { part, count }) => n + (part.depth === depth ? part.framesFit * count : 0), 0);
  return FRAME_DEPTHS.reduce((best, depth) => (places(depth) > places(best) ? depth : best));
}

function sum<K extends string>(rows: readonly Readonly<Record<K, number>>[], key: K): number {
  return rows.reduce((total, row) => total + row[key], 0);
}
