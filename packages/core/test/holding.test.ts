import { describe, expect, test } from 'vitest';
import { foldHolding } from '../src/holding/index.ts';
import { readJournal } from '../src/journal/index.ts';
import { epochDayOf } from '../src/units/index.ts';
import { begin, clashesOf } from './holding-begin.ts';

describe('the holding as a whole', () => {
  test('[J23] one yard, hive and colony fold to what was recorded, without a clash', () => {
    const { add, fold } = begin();
    const weighing = add(
      'weighing',
      { hive: 'hive-a', frontKg: 18.5, rearKg: 20, scale: 'hook', stepKg: 0.1 },
      { time: '14:05', zone: '-06:00' },
    );
    add('wash', { colony: 'colony-a', bees: 300, mites: 4, method: 'alcohol' });
    add('part-weighed', { parts: [{ part: 'deep-10-wood', count: 1 }], massKg: 5.1 });
    const holding = fold();
    expect(holding.clashes).toEqual([]);
    expect(holding.yards.get('home')).toMatchObject({ id: 'home', name: 'Home', latDeg: 53.8 });
    const hive = holding.hives.get('hive-a')!;
    expect(hive).toMatchObject({ label: 'A', yard: 'home', colonies: ['colony-a'], gone: false });
    expect(hive.weighings).toMatchObject([
      {
        record: weighing.id,
        frontKg: 18.5,
        rearKg: 20,
        day: epochDayOf('2026-09-01'),
        colonies: ['colony-a'],
        parts: [{ part: 'deep-10-wood', count: 2 }],
      },
    ]);
    expect(hive.weighings[0]!.minute).toBe(epochDayOf('2026-09-01')! * 1440 + 20 * 60 + 5);
    expect(holding.colonies.get('colony-a')).toMatchObject({
      hive: 'hive-a',
      yard: 'home',
      flag: null,
      ended: null,
      washes: [{ bees: 300, mites: 4 }],
    });
    expect(holding.partWeights).toMatchObject([{ massKg: 5.1 }]);
  });

  test('[J23] records after the last day are listed, not folded', () => {
    const { add, fold } = begin();
    const later = add('weighing', { hive: 'hive-a', frontKg: 20 }, { date: '2027-09-01' });
    const holding = fold('2026-12-31');
    expect(holding.hives.get('hive-a')!.weighings).toEqual([]);
    expect(holding.later).toEqual([later.id]);
    expect(fold('2027-09-01').later).toEqual([]);
    expect(() => fold('tomorrow')).toThrow(/until is "tomorrow"/);
  });

  test('[J23] unread lines are counted by reason, and unknown settings are listed as unread', () => {
    const { records, add } = begin();
    const unknown = add('setting', { key: 'moonPhase', value: 3 });
    const { unread } = readJournal('broken\n{"kind":"moon"}\nbroken too\n');
    const holding = foldHolding(records, { unread });
    expect(holding.unread).toMatchObject({
      lines: 3,
      byWhy: { 'not-json': 2, 'unknown-kind': 1 },
      settings: [{ record: unknown.id, key: 'moonPhase' }],
    });
    expect(holding.settings).toEqual({});
  });

  test('[J24] a clash names its records and changes nothing; striking one of them settles it', () => {
    const { add, fold } = begin();
    const lot = add('bank-lot', { lot: 'lot-1', frame: 'deep', count: 1, massKg: 3.2 }, { date: '2026-08-01' });
    const swaps = [1, 2].map(() => add('swap', { from: { lot: 'lot-1' }, to: { colony: 'colony-a' }, frame: 'deep', count: 1 }));
    const broken = fold();
    expect(broken.clashes).toEqual([{ kind: 'lot-negative', lot: 'lot-1', count: -1, records: [lot.id, ...swaps.map((swap) => swap.id)] }]);
    expect(broken.lots.get('lot-1')!.count).toBe(-1);
    expect(broken.colonies.get('colony-a')!.moves).toHaveLength(2);
    add('strike', { target: swaps[1]!.id });
    const settled = fold();
    expect(settled.clashes).toEqual([]);
    expect(settled.lots.get('lot-1')!.count).toBe(0);
  });

  test('[J25] the last record in time counts, not the last to arrive', () => {
    const { add, fold } = begin();
    add('hive', { hive: 'hive-a', label: 'A9' }, { date: '2026-08-02' });
    add('hive', { hive: 'hive-a', label: 'A8' }, { date: '2026-08-01' });
    add('setting', { key: 'units', value: 'us' }, { date: '2026-08-02' });
    add('setting', { key: 'units', value: 'metric' }, { date: '2026-08-01' });
    add('pin', { subject: 'colony-a', rule: 'never-give', on: false }, { date: '2026-08-02' });
    add('pin', { subject: 'colony-a', rule: 'never-give', on: true }, { date: '2026-08-01' });
    add('pin', { subject: 'colony-a', rule: 'never-unite', on: true }, { date: '2026-08-01' });
    add('shut-tick', { hive: 'hive-a', tick: 'strapped', done: true }, { date: '2026-10-02' });
    add('shut-tick', { hive: 'hive-a', tick: 'strapped', done: false }, { date: '2026-10-01' });
    add('top-fitted', { hive: 'hive-a', parts: [{ part: 'absorbent-box', count: 1 }], absorbentDryKg: 2 }, { date: '2026-10-02' });
    const holding = fold();
    expect(holding.hives.get('hive-a')).toMatchObject({ label: 'A9', top: { absorbentDryKg: 2 } });
    expect(holding.settings).toEqual({ units: 'us' });
    expect(holding.pins.map((pin) => pin.rule)).toEqual(['never-unite']);
    expect(holding.hives.get('hive-a')!.shut.get(2026)!.get('strapped')).toMatchObject({ done: true });
  });
});

describe('hives', () => {
  test('[J26] a build states everything, supers change it, and taking off too many is reported', () => {
    const { add, fold } = begin();
    add('super', { hive: 'hive-a', change: 'on', part: 'shallow-10-wood', count: 2 }, { date: '2026-04-01' });
    add('super', { hive: 'hive-a', change: 'on', part: 'shallow-10-wood', count: 2 }, { date: '2026-06-01' });
    add('super', { hive: 'hive-a', change: 'off', part: 'shallow-10-wood', count: 1 }, { date: '2026-07-01' });
    const partsNow = () => fold().hives.get('hive-a')!.builds.at(-1)!.parts;
    expect(partsNow()).toEqual([
      { part: 'deep-10-wood', count: 2 },
      { part: 'shallow-10-wood', count: 1 },
    ]);
    add('super', { hive: 'hive-a', change: 'off', part: 'shallow-10-wood', count: 1 }, { date: '2026-08-01' });
    expect(partsNow()).toEqual([{ part: 'deep-10-wood', count: 2 }]);
    const tooMany = add('super', { hive: 'hive-a', change: 'off', part: 'deep-10-wood', count: 3 }, { date: '2026-08-02' });
    expect(clashesOf(fold(), 'part-negative')).toMatchObject([
      { hive: 'hive-a', part: 'deep-10-wood', count: -1, records: [expect.any(String), tooMany.id] },
    ]);
    add('build', { hive: 'hive-a', parts: [{ part: 'nucleus-5', count: 1 }] }, { date: '2026-08-03' });
    expect(partsNow()).toEqual([{ part: 'nucleus-5', count: 1 }]);
  });

  test('[J27] a weighing keeps the build, top and colonies of its moment', () => {
    const { add, fold } = begin();
    add('weighing', { hive: 'hive-a', word: 'heavy' }, { date: '2026-07-01' });
    add('super', { hive: 'hive-a', change: 'on', part: 'shallow-10-wood', count: 1 }, { date: '2026-07-02' });
    add('top-fitted', { hive: 'hive-a', parts: [{ part: 'rim', count: 1 }] }, { date: '2026-07-02' });
    add('colony-ended', { colony: 'colony-a', how: 'sold' }, { date: '2026-07-04' });
    add('weighing', { hive: 'hive-a', word: 'fair' }, { date: '2026-07-03' });
    const [first, second] = fold().hives.get('hive-a')!.weighings;
    expect(first).toMatchObject({ word: 'heavy', parts: [{ part: 'deep-10-wood', count: 2 }], top: null, colonies: ['colony-a'] });
    expect(second).toMatchObject({
      word: 'fair',
      parts: [{ part: 'deep-10-wood' }, { part: 'shallow-10-wood', count: 1 }],
      top: { parts: [{ part: 'rim', count: 1 }] },
      colonies: ['colony-a'],
    });
  });

  test('[J27] a morning weighing belongs to the colony and build written down without a time that day', () => {
    const { add, fold } = begin();
    add('weighing', { hive: 'hive-a', frontKg: 20 }, { date: '2026-05-01', time: '08:00' });
    const holding = fold();
    expect(holding.hives.get('hive-a')!.weighings).toMatchObject([{ colonies: ['colony-a'], parts: [{ part: 'deep-10-wood', count: 2 }] }]);
    expect(holding.clashes).toEqual([]);
  });

  test('[J28] a weighing on a hive without a colony that day is reported', () => {
    const { add, fold } = begin();
    const before = add('weighing', { hive: 'hive-a', frontKg: 9 }, { date: '2026-04-30' });
    add('colony-ended', { colony: 'colony-a', how: 'died' }, { date: '2026-09-02' });
    add('weighing', { hive: 'hive-a', frontKg: 20 }, { date: '2026-09-02', time: '18:00' });
    const after = add('weighing', { hive: 'hive-a', frontKg: 8 }, { date: '2026-09-03' });
    expect(fold().clashes).toEqual([{ kind: 'weighing-without-colony', hive: 'hive-a', records: [before.id, after.id] }]);
  });

  test('[J37] one label on two standing hives of a yard is reported, and is free again when one is gone', () => {
    const { add, fold } = begin();
    const second = add('hive', { hive: 'hive-b', label: ' a ' }, { date: '2026-06-01' });
    add('hive', { hive: 'hive-c', label: 'A' }, { yard: 'far', date: '2026-06-01' });
    add('yard', { name: 'Far', latDeg: 54, lonDeg: -101 }, { yard: 'far' });
    expect(fold().clashes).toEqual([
      { kind: 'label-twice', yard: 'home', label: 'A', hives: ['hive-a', 'hive-b'], records: [expect.any(String), second.id] },
    ]);
    add('hive', { hive: 'hive-b', label: 'a', gone: true }, { date: '2026-07-01' });
    expect(fold().clashes).toEqual([]);
  });
});
