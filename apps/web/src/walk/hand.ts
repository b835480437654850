import { type Bodies, isLightComb, type Place } from '@winterheft/core';

export type Flow = Bodies['swap'];

/** Like combs on the cart: where they were taken from, which frame, how many. */
export interface Combs {
  /** The colony or lot, or `shed`. */
  readonly from: string;
  readonly frame: string;
  readonly count: number;
  readonly massKg?: number;
}

/** Slots of the box on the cart. */
export const SLOTS = 10;

/** Frames in hand by where they came from; grows and shrinks with flows. Never below zero. */
export class Hand {
  private readonly entries = new Map<string, Combs>();

  constructor(start: readonly Combs[] = []) {
    for (const combs of start) if (combs.count > 0) this.entries.set(keyOf(combs), combs);
  }

  get combs(): readonly Combs[] {
    return [...this.entries.values()];
  }

  get size(): number {
    return this.combs.reduce((n, { count }) => n + count, 0);
  }

  countOf(from: string, frame: string): number {
    return this.entries.get(keyOf({ from, frame }))?.count ?? 0;
  }

  /** What a flow takes from the hand and the hand has not. */
  lacks(flow: Flow): number {
    return 'hand' in flow.from ? Math.max(0, flow.count - this.countOf(flow.from.hand, flow.frame)) : 0;
  }

  /** Does a flow. Throws where it takes what is not there: a caller's bug. */
  apply(flow: Flow): void {
    const { from, to, out, frame, count, massKg } = flow;
    if (this.lacks(flow) > 0) throw new RangeError(`Hand.apply: ${count} ${frame} are to leave the hand, there are fewer`);
    this.add(from, { frame, count: -count });
    this.add(to, { frame, count, ...(massKg === undefined ? {} : { massKg }) });
    if (out === undefined) return;
    this.add(to, { frame: out.frame, count: 0 });
    this.add(out.to, { frame: out.frame, count: out.count, ...(out.massKg === undefined ? {} : { massKg: out.massKg }) });
  }

  private add(place: Place, combs: Omit<Combs, 'from'>): void {
    if (!('hand' in place) || combs.count === 0) return;
    const key = keyOf({ from: place.hand, frame: combs.frame });
    const known = this.entries.get(key);
    const count = (known?.count ?? 0) + combs.count;
    if (count === 0) this.entries.delete(key);
    else this.entries.set(key, { ...known, ...combs, from: place.hand, count });
  }
}

function keyOf({ from, frame }: Pick<Combs, 'from' | 'frame'>): string {
  return `${from} ${frame}`;
}

/** What hangs in the box, counted for the picture and the bar. */
export interface BoxCount {
  readonly capped: number;
  readonly light: number;
}

export function boxCount(combs: readonly Combs[]): BoxCount {
  let [capped, light] = [0, 0];
  for (const { frame, massKg, count } of combs) {
    if (isLightComb(frame, massKg)) light += Math.max(0, count);
    else capped += Math.max(0, count);
  }
  return { capped, light };
}
