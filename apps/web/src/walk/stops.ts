import {
  combSource,
  framePart,
  type Holding,
  type Move,
  type ProvisionAnswer,
  type Reserve,
  reserveForGaps,
  type Step,
} from '@winterheft/core';
import type { Flow } from './hand.ts';
import { withShed } from './shed-stops.ts';
import type { HiveStop, Stop } from './stop.ts';

/**
 * The walk of a plan as stops, from what is in hand now.
 *
 * Steps of one hive in a row are one stop. Gaps that an earlier walk left open are closed first, with the light combs put by for them,
 * and where there are none with what is left over at the end of their yard. Stops at the shed come where combs of the bank are needed.
 */
export function stopsOf(answer: ProvisionAnswer, holding: Holding): readonly Stop[] {
  const reserve = reserveForGaps(holding);
  const stops = withShed([...gapStops(reserve), ...hiveStops(answer, holding)], { holding, gaps: reserve.gaps });
  return stops.map((stop, i) => ({ id: `stop-${i + 1}`, ...stop }));
}

/** A gap with combs put by: closed before anything else. */
function gapStops({ gaps }: Reserve): HiveStop[] {
  return gaps.flatMap(({ colony, yard, fills }): HiveStop[] => {
    const flows = fills.map(({ from, frame, count, massKg }): Flow => ({ from: { hand: from }, to: { colony }, frame, count, massKg }));
    return flows.length === 0 ? [] : [{ kind: 'swap', yard, colony, flows }];
  });
}

function hiveStops(answer: ProvisionAnswer, holding: Holding): HiveStop[] {
  const stops: HiveStop[] = [];
  const byId = new Map(answer.steps.map((step) => [step.id, step]));
  for (const id of answer.order) {
    const step = byId.get(id);
    if (step === undefined) continue;
    const stop = stopOf(step, { answer, holding });
    const last = stops.at(-1);
    if (last !== undefined && last.kind === 'swap' && stop.kind === 'swap' && last.colony === stop.colony)
      stops[stops.length - 1] = { ...last, flows: [...last.flows, ...stop.flows] };
    else stops.push(stop);
  }
  return stops.filter(({ kind, flows }) => kind !== 'swap' || flows.length > 0);
}

function stopOf(step: Step, of: { answer: ProvisionAnswer; holding: Holding }): HiveStop {
  const { answer, holding } = of;
  const { colony, ref } = step;
  const stop = { yard: holding.colonies.get(colony)?.yard ?? '*', colony, flows: [] };
  switch (step.do) {
    case 'look':
      return { ...stop, kind: 'look' };
    case 'syrup':
      return { ...stop, kind: 'syrup', syrup: found(answer.syrup, ref) };
    case 'candy':
      return { ...stop, kind: 'candy', candy: found(answer.candy, ref) };
    case 'unite':
      return { ...stop, kind: 'unite', union: found(answer.unite, ref) };
    default:
      return { ...stop, kind: 'swap', flows: flowsOf(step, found(answer.moves, ref), of) };
  }
}

function found<T extends { readonly id: string }>(items: readonly T[], id: string): T {
  const item = items.find((one) => one.id === id);
  if (item === undefined) throw new RangeError(`stopsOf: the plan has no "${id}"`);
  return item;
}

/** The combs of one step. A gap that is closed at once goes with the taking; one that waits has a step of its own. */
function flowsOf(step: Step, move: Move, { answer, holding }: { answer: ProvisionAnswer; holding: Holding }): Flow[] {
  const { count } = move;
  const capped = cappedOf(move, holding);
  const light = { frame: lightFrame(move.frame), count, massKg: move.out.massKg };
  const fill = fillOf(move, holding);
  if (step.do === 'take') {
    const out = { frame: capped.frame, count, massKg: move.massKg, to: { hand: move.from } };
    const waits = answer.steps.some(({ id }) => id === `fill:${move.id}`);
    return fill === null || waits
      ? [{ from: { colony: move.from }, to: out.to, frame: out.frame, count, massKg: out.massKg }]
      : [{ from: { hand: fill.from }, to: { colony: move.from }, frame: fill.frame, count, massKg: fill.massKg, out }];
  }
  if (step.do === 'place') {
    const from = { hand: capped.from };
    const out = { ...light, to: { hand: move.to } };
    return [{ from, to: { colony: move.to }, frame: capped.frame, count, massKg: move.massKg, out }];
  }
  return fill === null ? [] : [{ from: { hand: fill.from }, to: { colony: move.from }, frame: fill.frame, count, massKg: fill.massKg }];
}

/** Where a capped comb is on the cart, and under which frame it was recorded. */
function cappedOf(move: Move, holding: Holding): { readonly from: string; readonly frame: string } {
  if (move.fromKind === 'colony') return { from: move.from, frame: move.frame };
  return bankOf(move.from, move.frame, holding);
}

function bankOf(name: string, frame: string, holding: Holding): { readonly from: string; readonly frame: string } {
  const source = combSource(name);
  if (source.at === 'hand') return source;
  if (source.at === 'shed') return { from: 'shed', frame: source.frame };
  return { from: source.lot, frame: holding.lots.get(source.lot)?.frame ?? frame };
}

function fillOf(move: Move, holding: Holding): { readonly from: string; readonly frame: string; readonly massKg: number } | null {
  const { fill } = move;
  if (fill === null) return null;
  const place =
    fill.fromKind === 'colony' ? { from: fill.from, frame: lightFrame(move.frame) } : bankOf(fill.from, lightFrame(move.frame), holding);
  return { ...place, massKg: fill.massKg };
}

/** Light combs are recorded as drawn frames of their depth, so that the kit's count follows them and they stay apart from capped ones. */
function lightFrame(depth: string): string {
  return depth === 'deep' || depth === 'medium' || depth === 'shallow' ? framePart(depth, 'drawn').key : depth;
}
