import type { Place } from '../journal/index.ts';
import type { Happening, Holding } from './types.ts';

/** A thing that combs or bees can pass through. The shed is one thing: what hangs there is not told apart. */
export type TracePoint = { readonly colony: string } | { readonly lot: string } | { readonly shed: true };

/** One passing of combs or bees. */
export interface TraceStep {
  readonly day: number;
  readonly record: string;
  readonly how: 'combs' | 'lot-made' | 'united' | 'split';
  readonly from: TracePoint;
  readonly to: TracePoint;
  /** Kind and number of frames, where combs were moved. */
  readonly frame: string | null;
  readonly count: number | null;
}

export interface Trace {
  /** What left the start and where it went on to, oldest first. */
  readonly went: readonly TraceStep[];
  /** What came into the start and where that had come from. */
  readonly came: readonly TraceStep[];
  /** Everything touched, without the start itself. */
  readonly colonies: readonly string[];
  readonly lots: readonly string[];
  readonly shed: boolean;
}

const keyOf = (point: TracePoint) => ('colony' in point ? `colony ${point.colony}` : 'lot' in point ? `lot ${point.lot}` : 'shed');

/**
 * Where the combs and bees of a colony or lot came from and went to, through any number of hands.
 *
 * Time is kept: what left a hive before anything of the start had come into it is not followed. Combs on the cart are where they were
 * taken from until they are placed. What hangs in the shed counts as one, so that one comb hung there makes all that left it later suspect.
 */
export function traceOf(holding: Holding, start: TracePoint): Trace {
  const steps = passings(holding);
  const went = followed(steps, start, { ahead: true });
  const came = followed(steps, start, { ahead: false });
  const touched = new Map<string, TracePoint>();
  for (const { from, to } of [...went, ...came]) for (const point of [from, to]) touched.set(keyOf(point), point);
  touched.delete(keyOf(start));
  const points = [...touched.values()];
  return {
    went,
    came,
    colonies: points.flatMap((point) => ('colony' in point ? [point.colony] : [])).sort(),
    lots: points.flatMap((point) => ('lot' in point ? [point.lot] : [])).sort(),
    shed: points.some((point) => 'shed' in point),
  };
}

/** Steps reached from the start, each once, oldest first; backwards where `ahead` is false. */
function followed(steps: readonly TraceStep[], start: TracePoint, { ahead }: { readonly ahead: boolean }): TraceStep[] {
  const inOrder = [...steps].sort((a, b) => (ahead ? a.day - b.day : b.day - a.day));
  const reached = new Map([[keyOf(start), ahead ? Number.NEGATIVE_INFINITY : Number.POSITIVE_INFINITY]]);
  const taken = new Set<TraceStep>();
  // a day's steps stand in no order: they are gone through until none is added
  for (let before = -1; before !== taken.size; ) {
    before = taken.size;
    for (const step of inOrder) {
      const [here, there] = ahead ? [step.from, step.to] : [step.to, step.from];
      const since = reached.get(keyOf(here));
      if (taken.has(step) || since === undefined || (ahead ? step.day < since : step.day > since)) continue;
      taken.add(step);
      const known = reached.get(keyOf(there));
      if (known === undefined || (ahead ? step.day < known : step.day > known)) reached.set(keyOf(there), step.day);
    }
  }
  return [...taken].sort((a, b) => a.day - b.day || (a.record < b.record ? -1 : 1));
}

/** Every passing in the holding. A comb that two records of one swap speak of passes once. */
function passings(holding: Holding): TraceStep[] {
  const steps: TraceStep[] = [];
  const combs = (of: Happening, from: TracePoint, to: TracePoint, frames: { frame: string; count: number }) =>
    steps.push({ day: of.day, record: of.record, how: 'combs', from, to, ...frames });
  for (const colony of holding.colonies.values()) {
    const here = { colony: colony.id };
    for (const move of colony.moves) {
      const { frame, count, other } = move;
      const there = pointOf(other, holding);
      if (there === null || keyOf(there) === keyOf(here)) continue;
      if (move.direction === 'out-of' && !('hand' in other)) combs(move, here, there, { frame, count });
      // the giver's own record tells of combs that come straight from it
      if (move.direction === 'into' && !('colony' in other)) combs(move, there, here, { frame, count });
    }
    const { ended } = colony;
    if (ended?.how === 'united' && ended.into !== undefined) steps.push(bees(ended, here, { colony: ended.into }, 'united'));
    for (const split of colony.splits) if (split.from === colony.id) steps.push(bees(split, here, { colony: split.into }, 'split'));
  }
  for (const lot of holding.lots.values()) {
    if (lot.from === null || lot.begun === null) continue;
    steps.push({
      day: lot.begun.day,
      record: lot.begun.record,
      how: 'lot-made',
      from: { colony: lot.from },
      to: { lot: lot.id },
      frame: lot.frame,
      count: null,
    });
  }
  return steps;
}

function bees(of: Happening, from: TracePoint, to: TracePoint, how: 'united' | 'split'): TraceStep {
  return { day: of.day, record: of.record, how, from, to, frame: null, count: null };
}

/** Where a comb is or came from; what is on the cart is where it was taken from. */
function pointOf(place: Place, holding: Holding): TracePoint | null {
  if ('colony' in place) return { colony: place.colony };
  if ('lot' in place) return { lot: place.lot };
  if ('shed' in place) return { shed: true };
  if (holding.lots.has(place.hand)) return { lot: place.hand };
  return holding.colonies.has(place.hand) ? { colony: place.hand } : { shed: true };
}
