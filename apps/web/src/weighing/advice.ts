import type { ColonyOutlook } from '@winterheft/core';

/**
 * What can be done at this hive now, with nothing from another one: mark, feed, leave, look, weigh the other edge.
 * Who gives to whom is settled when the round is closed.
 */
export type Advice =
  | { readonly do: 'close'; readonly why: 'signs' }
  | { readonly do: 'weigh' }
  | { readonly do: 'weigh-other'; readonly edge: 'front' | 'rear' }
  | { readonly do: 'weigh-scale' }
  | { readonly do: 'mark-frames'; readonly frames: number }
  | { readonly do: 'feed'; readonly sugarKg: number; readonly until: string; readonly frames: number }
  | { readonly do: 'mark-small' }
  | { readonly do: 'look-first' }
  | { readonly do: 'mark-giver'; readonly frames: number }
  | { readonly do: 'leave'; readonly why: 'enough' | 'low' | 'drying' | 'on-weight-alone'; readonly weighAgainOn: string | null };

/** Two standard errors of the stores: inside them one edge, or a word, decides nothing. */
const DECIDED_SDS = 2;

export interface AdviceFrom {
  readonly line: Pick<ColonyOutlook, 'state' | 'low' | 'aboveNeedKg' | 'hasSdKg' | 'notes'>;
  /** What the weight rests on. */
  readonly basis: 'both' | 'front' | 'rear' | 'word' | 'none';
  /** Honey of one full capped frame [kg]. */
  readonly cappedFrameKg: number;
  /** Sugar for one kilogram of stores, at the lowest yield [kg]; and the last day it is taken down and dried in half of the years. */
  readonly sugarPerStores: number;
  readonly feedUntil: string | null;
  /** ISO date of the plan. */
  readonly today: string;
}

/** The one thing to do now. */
export function adviceOf({ line, basis, cappedFrameKg, sugarPerStores, feedUntil, today }: AdviceFrom): Advice {
  const has = (code: string) => line.notes.find((note) => note.code === code);
  if (line.state === 'set aside') return { do: 'close', why: 'signs' };
  if (line.aboveNeedKg === null || line.hasSdKg === null) return { do: 'weigh' };
  if (line.state === 'too small alone') return { do: 'mark-small' };
  const provisional = line.notes.find((note) => note.code === 'provisional');
  if (provisional !== undefined) return { do: 'leave', why: 'drying', weighAgainOn: provisional.weighAgainOn };
  const isDecided = Math.abs(line.aboveNeedKg) >= DECIDED_SDS * line.hasSdKg;
  if (!isDecided && (basis === 'front' || basis === 'rear')) return { do: 'weigh-other', edge: basis === 'front' ? 'rear' : 'front' };
  if (!isDecided && basis === 'word') return { do: 'weigh-scale' };
  if (line.state === 'short') {
    const frames = Math.ceil(-line.aboveNeedKg / cappedFrameKg);
    if (feedUntil === null || today > feedUntil) return { do: 'mark-frames', frames };
    return { do: 'feed', sugarKg: -line.aboveNeedKg * sugarPerStores, until: feedUntil, frames };
  }
  if (line.state === 'spare') {
    if (has('brood-not-looked-at') !== undefined) return { do: 'look-first' };
    return { do: 'mark-giver', frames: Math.max(1, Math.floor(line.aboveNeedKg / cappedFrameKg)) };
  }
  if (line.low) return { do: 'leave', why: 'low', weighAgainOn: null };
  if (has('spare-on-weight-alone') !== undefined) return { do: 'leave', why: 'on-weight-alone', weighAgainOn: null };
  return { do: 'leave', why: 'enough', weighAgainOn: null };
}
