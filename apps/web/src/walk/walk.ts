import type { Happening, Holding } from '@winterheft/core';
import { type Adopted, adoptedPlans } from './adopted.ts';
import { type BoxCount, boxCount, type Combs, Hand } from './hand.ts';
import type { Stop } from './stop.ts';

/** Why a stop cannot be done yet: frames it takes are not in hand, or a brood was not looked at. */
type Waits = { readonly kind: 'hand' } | { readonly kind: 'look'; readonly colony: string };

export interface WalkStop {
  readonly stop: Stop;
  readonly done: Happening | null;
  readonly waits: Waits | null;
  /** In the box after it, as planned. */
  readonly box: BoxCount;
  /** Id of the adopted plan it belongs to. */
  readonly plan: string;
}

/** Where a walk stands: folded from the records alone. */
export interface Walk {
  readonly adopted: Adopted;
  /** Stops done under earlier plans of this walk, then those of the plan that holds now. */
  readonly past: readonly WalkStop[];
  readonly stops: readonly WalkStop[];
  /** The next stop that can be done, after the last one that was; null when all are done. */
  readonly now: WalkStop | null;
  readonly inHand: readonly Combs[];
  readonly isOver: boolean;
}

/** The walk of the plan adopted last, or null where none was. */
export function walkOf(holding: Holding): Walk | null {
  const plans = adoptedPlans(holding);
  const adopted = plans.at(-1);
  if (adopted === undefined) return null;
  const inHand = holding.inHand.filter(({ count }) => count > 0);
  const stops = stopStates(adopted, new Hand(inHand));
  const now = nowOf(stops);
  return { adopted, past: pastOf(adopted, plans), stops, now, inHand, isOver: now === null };
}

/** Where the keeper stands: the next stop that can be done after the last one that was; what was passed over comes when nothing is left ahead. */
function nowOf(stops: readonly WalkStop[]): WalkStop | null {
  const open = ({ done, waits }: WalkStop) => done === null && waits === null;
  const ahead = stops.slice(stops.findLastIndex(({ done }) => done !== null) + 1);
  return ahead.find(open) ?? stops.find(open) ?? stops.find(({ done }) => done === null) ?? null;
}

function stopStates(adopted: Adopted, hand: Hand): readonly WalkStop[] {
  const { done } = adopted.fact;
  const openLooks = new Set(adopted.stops.filter(({ kind, id }) => kind === 'look' && !done.has(id)).map(({ colony }) => colony));
  const boxes = boxesOf(adopted, hand);
  return adopted.stops.map((stop, i): WalkStop => {
    const happened = done.get(stop.id) ?? null;
    return {
      stop,
      done: happened,
      waits: happened === null ? waitsOf(stop, { hand, openLooks }) : null,
      box: boxes[i] as BoxCount,
      plan: adopted.fact.record,
    };
  });
}

function waitsOf(stop: Stop, of: { readonly hand: Hand; readonly openLooks: ReadonlySet<string | null> }): Waits | null {
  if (stop.kind === 'look') return null;
  const touched = [stop.colony, stop.union?.into, ...stop.flows.flatMap(({ from }) => ('hand' in from ? [from.hand] : []))];
  const closed = touched.find((colony) => colony !== undefined && colony !== null && of.openLooks.has(colony));
  // Feeding needs no look: only combs carry disease.
  if (closed !== undefined && closed !== null && stop.kind !== 'syrup' && stop.kind !== 'candy') return { kind: 'look', colony: closed };
  const tried = new Hand(of.hand.combs);
  for (const flow of stop.flows) {
    if (tried.lacks(flow) > 0) return { kind: 'hand' };
    tried.apply(flow);
  }
  return null;
}

/** The box after every stop: backwards over what is done from what is in hand, forwards over what is to come. */
function boxesOf(adopted: Adopted, hand: Hand): readonly BoxCount[] {
  const { stops, fact } = adopted;
  const isDone = (stop: Stop) => fact.done.has(stop.id);
  const boxes = new Map<string, BoxCount>();
  let box = boxCount(hand.combs);
  for (const stop of [...stops].reverse()) {
    if (!isDone(stop)) continue;
    boxes.set(stop.id, box);
    box = added(box, changeOf(stop), -1);
  }
  box = boxCount(hand.combs);
  for (const stop of stops) {
    if (isDone(stop)) continue;
    box = added(box, changeOf(stop), 1);
    boxes.set(stop.id, box);
  }
  return stops.map(({ id }) => boxes.get(id) as BoxCount);
}

/** What a stop does to the box. */
function changeOf({ flows }: Pick<Stop, 'flows'>): BoxCount {
  let change: BoxCount = { capped: 0, light: 0 };
  for (const { from, to, out, ...combs } of flows) {
    if ('hand' in from) change = added(change, boxCount([{ ...combs, from: from.hand }]), -1);
    if ('hand' in to) change = added(change, boxCount([{ ...combs, from: to.hand }]), 1);
    if (out !== undefined && 'hand' in out.to) change = added(change, boxCount([{ ...out, from: out.to.hand }]), 1);
  }
  return change;
}

function added(box: BoxCount, change: BoxCount, sign: 1 | -1): BoxCount {
  return { capped: box.capped + sign * change.capped, light: box.light + sign * change.light };
}

function pastOf(adopted: Adopted, plans: readonly Adopted[]): readonly WalkStop[] {
  const chain: Adopted[] = [];
  for (let before = adopted.before; before !== null; ) {
    const earlier = plans.find(({ fact }) => fact.record === before);
    if (earlier === undefined) break;
    chain.unshift(earlier);
    before = earlier.before;
  }
  return chain.flatMap((plan) =>
    plan.stops.flatMap((stop): WalkStop[] => {
      const done = plan.fact.done.get(stop.id);
      return done === undefined ? [] : [{ stop, done, waits: null, box: { capped: 0, light: 0 }, plan: plan.fact.record }];
    }),
  );
}
