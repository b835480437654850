import { describe, expect, it } from 'vitest';
import { foldHolding, traceOf } from '../src/holding/index.ts';
import type { Bodies } from '../src/journal/index.ts';
import { newMaker, oneColony } from './journal-maker.ts';

type From = Bodies['swap']['from'];

/** Colonies a to f; swaps as [day of September, from, to]. */
function holdingOf(
  swaps: readonly (readonly [day: number, from: From, to: From])[],
  more: (make: ReturnType<typeof newMaker>) => ReturnType<ReturnType<typeof newMaker>>[] = () => [],
) {
  const make = newMaker();
  const colonies = ['a', 'b', 'c', 'd', 'e', 'f'].flatMap((name) => oneColony(make, name));
  const date = (day: number) => ({ date: `2026-09-${String(day).padStart(2, '0')}` });
  const moved = swaps.map(([day, from, to]) => make('swap', { from, to, frame: 'deep', count: 1, massKg: 3 }, date(day)));
  return foldHolding([...colonies, ...moved, ...more(make)]);
}
const colony = (name: string) => ({ colony: `colony-${name}` });

describe('a trace', () => {
  it('follows combs through other hives, in order of time, and nothing that left before they came', () => {
    const holding = holdingOf([
      [1, colony('b'), colony('d')], // before anything of a was in b
      [2, colony('a'), colony('b')],
      [3, colony('b'), colony('c')],
      [4, colony('e'), colony('a')],
    ]);
    const { colonies, went, came } = traceOf(holding, colony('a'));
    expect(went.map(({ from, to }) => [from, to])).toEqual([
      [colony('a'), colony('b')],
      [colony('b'), colony('c')],
    ]);
    expect(came.map(({ from }) => from)).toEqual([colony('e')]);
    expect(colonies).toEqual(['colony-b', 'colony-c', 'colony-e']);
  });

  it('follows the cart: a comb in hand is where it was taken from until it is placed', () => {
    const hand = { hand: 'colony-a' } as const;
    const { colonies } = traceOf(
      holdingOf([
        [2, colony('a'), hand],
        [2, hand, colony('f')],
      ]),
      colony('a'),
    );
    expect(colonies).toEqual(['colony-f']);
  });

  it('follows a lot from the colony it was made of to those that got of it, and back', () => {
    const holding = holdingOf([[5, { lot: 'clover' }, colony('c')]], (make) => [
      make('bank-lot', { lot: 'clover', frame: 'deep', count: 4, massKg: 3, from: 'colony-a' }, { date: '2026-08-01' }),
    ]);
    expect(traceOf(holding, colony('a'))).toMatchObject({ colonies: ['colony-c'], lots: ['clover'] });
    expect(traceOf(holding, { lot: 'clover' })).toMatchObject({ colonies: ['colony-a', 'colony-c'], lots: [] });
    expect(traceOf(holding, colony('c')).came.map(({ how }) => how)).toEqual(['lot-made', 'combs']);
  });

  it('takes the shed as one: what hangs there makes suspect what leaves it later', () => {
    const shed = { shed: true } as const;
    const { colonies, shed: touched } = traceOf(
      holdingOf([
        [1, shed, colony('d')],
        [2, colony('a'), shed],
        [3, shed, colony('e')],
      ]),
      colony('a'),
    );
    expect([colonies, touched]).toEqual([['colony-e'], true]);
  });

  it('follows bees that were united and split', () => {
    const holding = holdingOf([], (make) => [
      make('split', { from: 'colony-a', into: 'colony-b' }, { date: '2026-06-01' }),
      make('colonies-united', { from: 'colony-b', into: 'colony-c' }, { date: '2026-09-20' }),
    ]);
    expect(traceOf(holding, colony('a')).colonies).toEqual(['colony-b', 'colony-c']);
    expect(traceOf(holding, colony('c')).came.map(({ how }) => how)).toEqual(['split', 'united']);
  });

  it('of a colony that never gave or got is empty', () => {
    expect(traceOf(holdingOf([]), colony('a'))).toEqual({ went: [], came: [], colonies: [], lots: [], shed: false });
  });
});
