import { describe, expect, test } from 'vitest';
import { winterOf, winterSpan } from '../src/holding/index.ts';
import { epochDayOf } from '../src/units/index.ts';
import { begin } from './holding-begin.ts';
import { stampAt } from './journal-maker.ts';

describe('frame bank, hand, shed and plans', () => {
  test('[J34] a lot runs with the swaps of both ways and is reset by a count', () => {
    const { add, fold } = begin();
    add('swap', { from: { lot: 'lot-1' }, to: { colony: 'colony-a' }, frame: 'deep', count: 1 }, { date: '2026-08-01', time: '09:00' });
    add(
      'bank-lot',
      { lot: 'lot-1', frame: 'deep', count: 10, massKg: 3.4, from: 'colony-a', looked: '2026-07-20', strips: false, crop: 'clover' },
      { date: '2026-08-01' },
    );
    add(
      'swap',
      {
        from: { lot: 'lot-1' },
        to: { colony: 'colony-a' },
        frame: 'deep',
        count: 4,
        out: { frame: 'deep', count: 2, massKg: 0.7, to: { lot: 'lot-1' } },
      },
      { date: '2026-08-02' },
    );
    expect(fold().lots.get('lot-1')).toMatchObject({
      count: 7,
      frame: 'deep',
      massKg: 3.4,
      from: 'colony-a',
      looked: '2026-07-20',
      crop: 'clover',
    });
    expect(
      fold()
        .colonies.get('colony-a')!
        .moves.map((move) => [move.direction, move.count]),
    ).toEqual([
      ['into', 1],
      ['into', 4],
      ['out-of', 2],
    ]);
    add('bank-count', { lot: 'lot-1', count: 6 }, { date: '2026-08-03' });
    expect(fold().lots.get('lot-1')!.count).toBe(6);
    expect(fold().clashes).toEqual([]);
    const wrong = add('swap', { from: { lot: 'lot-1' }, to: { colony: 'colony-a' }, frame: 'shallow', count: 1 });
    expect(fold().clashes).toMatchObject([
      { kind: 'lot-frame-differs', frames: ['deep', 'shallow'], records: [expect.any(String), wrong.id] },
    ]);
  });

  test('[J34] a lot used on a day before it began is reported', () => {
    const { add, fold } = begin();
    const early = add('swap', { from: { lot: 'lot-1' }, to: { colony: 'colony-a' }, frame: 'deep', count: 1 }, { date: '2026-07-01' });
    const lot = add('bank-lot', { lot: 'lot-1', frame: 'deep', count: 2, massKg: 3 }, { date: '2026-08-01' });
    expect(fold().clashes).toEqual([{ kind: 'before-begin', thing: 'lot', name: 'lot-1', records: [early.id, lot.id] }]);
    expect(fold().lots.get('lot-1')!.count).toBe(1);
  });

  test('[J35] what was taken and not placed is in hand, with where it came from', () => {
    const { add, fold } = begin();
    add('swap', { from: { colony: 'colony-a' }, to: { hand: 'colony-a' }, frame: 'deep', count: 3, massKg: 3.1 });
    add('swap', { from: { hand: 'colony-a' }, to: { shed: true }, frame: 'deep', count: 1 });
    expect(fold().inHand).toEqual([{ from: 'colony-a', frame: 'deep', count: 2, massKg: 3.1 }]);
    add('swap', { from: { hand: 'colony-a' }, to: { shed: true }, frame: 'deep', count: 2 });
    expect(fold().inHand).toEqual([]);
    const over = add('swap', { from: { hand: 'colony-a' }, to: { shed: true }, frame: 'deep', count: 1 });
    const holding = fold();
    expect(holding.inHand).toMatchObject([{ count: -1 }]);
    expect(holding.clashes).toMatchObject([{ kind: 'hand-negative', from: 'colony-a', frame: 'deep', count: -1 }]);
    expect(holding.clashes[0]!.records.at(-1)).toBe(over.id);
  });

  test('[J35] frames of the shed are kit once counted', () => {
    const { add, fold } = begin();
    add('swap', { from: { shed: true }, to: { colony: 'colony-a' }, frame: 'deep', count: 5 }, { date: '2026-08-01' });
    expect(fold().kit.size).toBe(0);
    const counted = add('kit-count', { item: 'deep', count: 2, unit: 'frames' }, { date: '2026-08-02' });
    const swap = add('swap', { from: { shed: true }, to: { colony: 'colony-a' }, frame: 'deep', count: 3 }, { date: '2026-08-03' });
    expect(fold().kit.get('deep')).toMatchObject({ count: -1, unit: 'frames' });
    expect(fold().clashes).toEqual([{ kind: 'kit-negative', item: 'deep', count: -1, records: [counted.id, swap.id] }]);
  });

  test('[J39] an adopted plan is kept whole, with the steps done since', () => {
    const { add, fold } = begin();
    const plan = add('plan-adopted', { plan: { moves: [{ from: 'a', gainKg: 2.5 }], made: { seed: 7 } } });
    const step = add('step-done', { plan: plan.id, step: 'look-a7' }, { date: '2026-08-31' });
    const stored = fold().plans.get(plan.id)!;
    expect(stored.plan).toEqual(plan.body.plan);
    expect(stored.done.get('look-a7')).toMatchObject({ record: step.id });
    expect(fold().clashes).toEqual([]);
  });

  test('[J24] faults among the records themselves are clashes too, and waiting changes are listed', () => {
    const { records, add, fold } = begin();
    const waiting = add('strike', { target: '0192f000-0000-7000-8000-000000000000' });
    records.push({ ...records[0]!, by: 'somebody else', seen: stampAt(1) });
    expect(fold().waiting).toEqual([waiting.id]);
    expect(fold().clashes).toEqual([{ kind: 'same-id', records: [records[0]!.id], contents: 2 }]);
  });

  test('[J38] a winter is named by its first year', () => {
    expect([
      winterOf(epochDayOf('2026-06-01')!),
      winterOf(epochDayOf('2027-05-31')!),
      winterOf(epochDayOf('2026-05-31')!),
      winterOf(epochDayOf('2027-01-01')!),
    ]).toEqual([2026, 2026, 2025, 2026]);
    const { fromDay, toDay } = winterSpan(2027);
    expect([fromDay, toDay]).toEqual([epochDayOf('2027-06-01'), epochDayOf('2028-05-31')]);
    // 2028 is a leap year: that winter has 366 days
    expect(toDay - fromDay + 1).toBe(366);
  });
});
