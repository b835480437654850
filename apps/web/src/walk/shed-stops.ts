import { framePart, type Holding, isLightComb, type OpenGap } from '@winterheft/core';
import { type Combs, type Flow, Hand, SLOTS } from './hand.ts';
import { foundationStop, type HiveStop } from './stop.ts';

/**
 * Puts the stops at the shed into a walk: combs of the bank are loaded just before they are needed, as many loads ahead as the box holds,
 * and what nobody needs any more is hung up whenever one stands at the shed, at the end of each yard at the latest.
 */
export function withShed(
  hives: readonly HiveStop[],
  of: { readonly holding: Holding; readonly gaps: readonly OpenGap[] },
): readonly HiveStop[] {
  const { holding } = of;
  const hand = new Hand(holding.inHand);
  const walk: HiveStop[] = [];
  const pending = [...hives];
  const waiting = of.gaps.filter(({ left }) => left > 0).map((gap) => ({ ...gap }));
  const shed = (yard: string, flows: readonly Flow[]) => {
    if (flows.length === 0) return;
    for (const flow of flows) hand.apply(flow);
    walk.push({ kind: 'shed', yard, colony: null, flows });
  };
  const visit = (stop: HiveStop) => {
    for (const flow of stop.flows) hand.apply(flow);
    walk.push(stop);
  };
  const closeYard = (yard: string) => {
    for (const gap of waiting.filter((one) => one.yard === yard)) {
      for (const stop of gapClosings(gap, { hand, pending, holding })) {
        shed(yard, loadFlows(hand, [stop]));
        visit(stop);
      }
      waiting.splice(waiting.indexOf(gap), 1);
    }
    shed(yard, unloadFlows(hand, pending, holding));
  };

  let here = pending[0]?.yard;
  for (let stop = pending[0]; stop !== undefined; stop = pending[0]) {
    if (here !== undefined && stop.yard !== here) closeYard(here);
    here = stop.yard;
    if (loadFlows(hand, [stop]).length > 0) shed(here, [...unloadFlows(hand, pending, holding), ...loadAhead(hand, pending, holding)]);
    pending.shift();
    visit(stop);
  }
  if (here !== undefined) closeYard(here);
  for (const { yard } of [...waiting]) closeYard(yard);
  const left = [...new Set(hand.combs.map(({ from }) => yardOf(from, holding)))];
  for (const yard of left) shed(yard ?? here ?? '*', unloadFlows(hand, [], holding));
  return walk;
}

function yardOf(from: string, holding: Holding): string | undefined {
  return holding.colonies.get(from)?.yard ?? holding.lots.get(from)?.yard;
}

/** Combs that stops take from the hand and that neither hang there nor come into it on the way: they are in the bank or the shed. */
function loadFlows(hand: Hand, stops: readonly HiveStop[]): Flow[] {
  const have = new Map<string, number>();
  const missing = new Map<string, Combs>();
  const key = (from: string, frame: string) => `${from} ${frame}`;
  for (const { from, frame, count } of hand.combs) have.set(key(from, frame), count);
  const put = (from: string, frame: string, count: number) => have.set(key(from, frame), (have.get(key(from, frame)) ?? 0) + count);
  for (const { from, frame, count, massKg, to, out } of stops.flatMap(({ flows }) => flows)) {
    if ('hand' in from) {
      const lack = Math.max(0, count - (have.get(key(from.hand, frame)) ?? 0));
      put(from.hand, frame, lack - count);
      if (lack > 0) {
        const known = missing.get(key(from.hand, frame))?.count ?? 0;
        missing.set(key(from.hand, frame), { from: from.hand, frame, count: known + lack, ...(massKg === undefined ? {} : { massKg }) });
      }
    }
    if ('hand' in to) put(to.hand, frame, count);
    if (out !== undefined && 'hand' in out.to) put(out.to.hand, out.frame, out.count);
  }
  return [...missing.values()].map(({ from, ...combs }): Flow => {
    const place = from === 'shed' ? { shed: true as const } : { lot: from };
    return { from: place, to: { hand: from }, ...combs };
  });
}

/** As many of the coming stops as the box has room for on the way: at least the next one. */
function loadAhead(hand: Hand, pending: readonly HiveStop[], holding: Holding): Flow[] {
  const kept = new Hand(hand.combs);
  for (const flow of unloadFlows(hand, pending, holding)) kept.apply(flow);
  const yard = pending[0]?.yard;
  let best = loadFlows(kept, pending.slice(0, 1));
  for (let n = 2; n <= pending.length && pending[n - 1]?.yard === yard; n++) {
    const stops = pending.slice(0, n);
    const flows = loadFlows(kept, stops);
    if (fullest(kept, flows, stops) > SLOTS) break;
    best = flows;
  }
  return best;
}

function fullest(hand: Hand, load: readonly Flow[], stops: readonly HiveStop[]): number {
  const tried = new Hand(hand.combs);
  for (const flow of load) tried.apply(flow);
  let most = tried.size;
  for (const flow of stops.flatMap(({ flows }) => flows)) {
    tried.apply(flow);
    most = Math.max(most, tried.size);
  }
  return most;
}

/** What no later stop takes: light combs to the shed, capped ones back to their lot, or into a new lot where they came out of a colony. */
export function unloadFlows(hand: Hand, pending: readonly HiveStop[], holding: Holding): Flow[] {
  return hand.combs.flatMap(({ from, frame, count, massKg }): Flow[] => {
    const later = pending
      .flatMap(({ flows }) => flows)
      .reduce((n, flow) => n + ('hand' in flow.from && flow.from.hand === from && flow.frame === frame ? flow.count : 0), 0);
    const free = count - later;
    if (free <= 0) return [];
    const to = from === 'shed' || isLightComb(frame, massKg) ? { shed: true as const } : { lot: lotNameFor(from, holding) };
    return [{ from: { hand: from }, to, frame, count: free, ...(massKg === undefined ? {} : { massKg }) }];
  });
}

/** The lot a capped comb goes back to, or the first free name for one out of a colony. */
function lotNameFor(from: string, holding: Holding): string {
  if (holding.lots.has(from)) return from;
  let n = 1;
  const name = () => `${from.slice(0, 54)}-${n}`;
  while (holding.lots.has(name())) n += 1;
  return name();
}

/** Gaps left over: with light combs that would go to the shed, else with new frames. */
function gapClosings(gap: OpenGap, of: { hand: Hand; pending: readonly HiveStop[]; holding: Holding }): HiveStop[] {
  const { colony, yard, depth } = gap;
  let open = gap.left;
  const drawn = framePart(depth, 'drawn').key;
  const flows = unloadFlows(of.hand, of.pending, of.holding).flatMap((free): Flow[] => {
    const from = 'hand' in free.from ? free.from.hand : '';
    const mayGo = of.holding.colonies.get(from)?.flag !== 'signs' && (yardOf(from, of.holding) ?? yard) === yard;
    const count = Math.min(open, free.count);
    if (count <= 0 || free.frame !== drawn || !isLightComb(free.frame, free.massKg) || !mayGo) return [];
    open -= count;
    return [{ ...free, to: { colony }, count }];
  });
  const closed: HiveStop[] = flows.length > 0 ? [{ kind: 'swap', yard, colony, flows }] : [];
  return open > 0 ? [...closed, foundationStop(gap, open)] : closed;
}
