import type { Holding, InHand } from '../holding/index.ts';
import { provisionParameters } from '../provision/index.ts';
import { frameNamed } from '../stores/index.ts';
import type { FrameDepth } from '../tables/parts.ts';

/**
 * Whether a comb is a light one, that closes a gap, and no capped one. By its mass where it was weighed; else a frame named by a part
 * of the table is light as it stands there, and one named by its depth alone is full.
 */
export function isLightComb(frame: string, massKg?: number): boolean {
  const part = frameNamed(frame);
  return (massKg ?? (part?.key === frame ? part.massKg : Number.POSITIVE_INFINITY)) < provisionParameters.lightCombKg.value;
}

/** Places for frames in a hive that a walk has left empty. */
export interface OpenGap {
  readonly colony: string;
  readonly yard: string;
  readonly depth: FrameDepth;
  readonly count: number;
  /** Light combs at hand that close it, and how many places find none. */
  readonly fills: readonly GapFill[];
  readonly left: number;
}

export interface GapFill {
  /** The colony or lot it came from, or `shed`. */
  readonly from: string;
  /** It still hangs in the shed. */
  readonly inShed: boolean;
  readonly frame: string;
  readonly count: number;
  readonly massKg: number;
}

/** What is in hand and in the shed after the gaps have had theirs. */
export interface Reserve {
  readonly gaps: readonly OpenGap[];
  readonly inHand: readonly InHand[];
  readonly shed: readonly { readonly item: string; readonly count: number }[];
}

/**
 * Gaps that a walk has left open, and the light combs put by for them: a box must be full before anything else is planned with its frames.
 *
 * What leaves a hive in hand and does not come back by hand is a gap. Light combs in hand come first, then drawn ones in the shed.
 */
export function reserveForGaps(holding: Holding): Reserve {
  const inHand = holding.inHand.filter(({ count }) => count > 0).map((entry) => ({ ...entry }));
  const shed = shedCombs(holding).map((entry) => ({ ...entry }));
  const gaps = [...holding.colonies.values()].flatMap((colony) => {
    if (colony.ended !== null) return [];
    return gapsOf(colony.moves).map(({ depth, count }): OpenGap => {
      const fills: GapFill[] = [];
      let left = count;
      const take = (from: { count: number }, fill: Omit<GapFill, 'count'>) => {
        const n = Math.min(left, from.count);
        if (n <= 0) return;
        from.count -= n;
        left -= n;
        fills.push({ ...fill, count: n });
      };
      for (const entry of inHand) {
        const part = frameNamed(entry.frame);
        if (part?.depth !== depth || !isLightComb(entry.frame, entry.massKg) || !mayGo(holding, entry.from, colony.yard)) continue;
        take(entry, { from: entry.from, inShed: false, frame: entry.frame, massKg: entry.massKg ?? part.massKg });
      }
      for (const entry of shed) {
        const part = frameNamed(entry.item);
        if (part?.depth === depth) take(entry, { from: 'shed', inShed: true, frame: entry.item, massKg: part.massKg });
      }
      return { colony: colony.id, yard: colony.yard, depth, count, fills, left };
    });
  });
  return { gaps, inHand: inHand.filter(({ count }) => count > 0), shed: shed.filter(({ count }) => count > 0) };
}

function gapsOf(moves: readonly { readonly direction: string; readonly frame: string; readonly count: number; readonly other: object }[]) {
  const byDepth = new Map<FrameDepth, number>();
  for (const { direction, frame, count, other } of moves) {
    const depth = frameNamed(frame)?.depth;
    if (depth === undefined || !('hand' in other)) continue;
    byDepth.set(depth, (byDepth.get(depth) ?? 0) + (direction === 'out-of' ? count : -count));
  }
  return [...byDepth].filter(([, count]) => count > 0).map(([depth, count]) => ({ depth, count }));
}

/** Never out of a colony with signs of disease, nor to another yard unless that is allowed. */
function mayGo(holding: Holding, from: string, yard: string): boolean {
  const colony = holding.colonies.get(from);
  if (colony?.flag === 'signs') return false;
  const home = colony?.yard ?? holding.lots.get(from)?.yard ?? yard;
  return home === yard || (holding.settings.crossYards ?? false);
}

/**
 * Drawn frames in the shed by the kit's counts.
 *
 * The kit does not say which colonies they came from: they are used only in a holding that has seen no signs of disease and no colony die.
 */
function shedCombs(holding: Holding): { item: string; count: number }[] {
  if (isShedSuspect(holding)) return [];
  return [...holding.kit.values()].flatMap(({ item, count }) =>
    frameNamed(item)?.state === 'drawn' && count >= 1 ? [{ item, count: Math.floor(count) }] : [],
  );
}

export function isShedSuspect(holding: Holding): boolean {
  return [...holding.colonies.values()].some(
    (colony) => colony.looks.some((look) => look.brood === 'signs') || colony.ended?.how === 'died',
  );
}

/** What provision calls frames in hand: where they came from and which kind they are, to be found again in its answer. */
export function handLotName(from: string, frame: string): string {
  return `in hand ${from} ${frame}`;
}

export function shedLotName(item: string): string {
  return `shed ${item}`;
}

/** Where combs named in an answer are: in hand (and from where), in the shed, or in a lot of the bank. Names of lots have no spaces. */
export type CombSource =
  | { readonly at: 'hand'; readonly from: string; readonly frame: string }
  | { readonly at: 'shed'; readonly frame: string }
  | { readonly at: 'lot'; readonly lot: string };

export function combSource(name: string): CombSource {
  const words = name.split(' ');
  if (words.length === 4 && words[0] === 'in') return { at: 'hand', from: words[2]!, frame: words[3]! };
  if (words.length === 2 && words[0] === 'shed') return { at: 'shed', frame: words[1]! };
  return { at: 'lot', lot: name };
}
