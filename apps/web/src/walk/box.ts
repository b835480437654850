import { isLightComb } from '@winterheft/core';
import { type Combs, type Flow, SLOTS } from './hand.ts';
import type { Stop } from './stop.ts';

/** What hangs in a slot: a capped comb of the bank or of a colony, a light one, or nothing. */
export type Hangs = 'bank' | 'capped' | 'light' | null;

/** The box at one stop, slot by slot: as one comes to it and as one leaves. More than ten slots where the box is too small. */
export interface BoxAtStop {
  readonly before: readonly Hangs[];
  readonly after: readonly Hangs[];
}

interface Comb extends Pick<Combs, 'from' | 'frame'> {
  readonly hangs: Exclude<Hangs, null>;
}

/**
 * The box along a walk, from what was in hand when it began. A comb keeps its slot until it leaves, and the one that comes out of the
 * same hive takes the slot of the one that went in: so a swap turns thick into thin in its place.
 *
 * isBank   whether a comb's origin is a lot of the bank
 */
export function boxesAlong(start: readonly Combs[], stops: readonly Stop[], isBank: (from: string) => boolean): readonly BoxAtStop[] {
  const slots: (Comb | null)[] = Array.from({ length: SLOTS }, () => null);
  const combOf = (from: string, frame: string, massKg?: number): Comb => ({
    from,
    frame,
    hangs: isLightComb(frame, massKg) ? 'light' : isBank(from) ? 'bank' : 'capped',
  });
  const hang = (comb: Comb, count: number, places: readonly number[]) => {
    const free = [...places, ...slots.flatMap((slot, i) => (slot === null && !places.includes(i) ? [i] : []))];
    for (let n = 0; n < count; n++) slots[free[n] ?? slots.length] = comb;
  };
  for (const { from, frame, count, massKg } of start) hang(combOf(from, frame, massKg), count, []);
  return stops.map(({ flows }) => {
    const before = slots.map((slot) => slot?.hangs ?? null);
    for (const flow of flows) {
      const freed = 'hand' in flow.from ? taken(slots, flow.from.hand, flow) : [];
      const { to, out } = flow;
      if (out !== undefined && 'hand' in out.to) hang(combOf(out.to.hand, out.frame, out.massKg), out.count, freed);
      if ('hand' in to) hang(combOf(to.hand, flow.frame, flow.massKg), flow.count, freed);
    }
    const after = slots.map((slot) => slot?.hangs ?? null);
    return { before: padded(before, after.length), after };
  });
}

/** Empties the slots a flow takes from; gives their places. */
function taken(slots: (Comb | null)[], from: string, { frame, count }: Flow): number[] {
  const places = slots.flatMap((slot, i) => (slot?.from === from && slot.frame === frame ? [i] : [])).slice(0, count);
  for (const place of places) slots[place] = null;
  return places;
}

function padded(slots: readonly Hangs[], length: number): readonly Hangs[] {
  return [...slots, ...Array.from({ length: Math.max(0, length - slots.length) }, () => null)];
}
