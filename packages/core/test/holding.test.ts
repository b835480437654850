import { describe, expect, test } from 'vitest';
import { foldHolding, type Holding, winterOf, winterSpan } from '../src/holding/index.ts';
import type { JournalRecord } from '../src/journal/index.ts';
import { readJournal } from '../src/journal/index.ts';
import { epochDayOf } from '../src/units/index.ts';
import { newMaker, oneColony, stampAt } from './journal-maker.ts';

/** Clashes of one kind. */
function clashesOf(holding: Holding, kind: Holding['clashes'][number]['kind']) {
  return holding.clashes.filter((clash) => clash.kind === kind);
}

/** A maker and a journal that begins with one yard and colony; `add` appends and gives the record. */
function begin(name = 'a') {
  const make = newMaker();
  const records: JournalRecord[] = oneColony(make, name);
  const add: typeof make = (kind, body, chosen) => {
    const record = make(kind, body, chosen);
    records.push(record);
    return record;
  };
  return { records, add, fold: (until?: string) => foldHolding(records, until === undefined ? {} : { until }) };
}

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

describe('colonies', () => {
  test('[J29] placing a colony ends its stay elsewhere', () => {
    const { add, fold } = begin();
    add('hive', { hive: 'hive-b', label: 'B' });
    const placed = add('colony-placed', { colony: 'colony-a', hive: 'hive-b' }, { date: '2026-07-01' });
    const holding = fold();
    expect(holding.colonies.get('colony-a')).toMatchObject({
      hive: 'hive-b',
      stays: [
        { hive: 'hive-a', to: { record: placed.id } },
        { hive: 'hive-b', to: null },
      ],
    });
    expect(holding.hives.get('hive-a')!.colonies).toEqual([]);
    expect(holding.clashes).toEqual([]);
    add('colony-placed', { colony: 'colony-a', hive: 'hive-b' }, { date: '2026-07-05' });
    expect(fold().colonies.get('colony-a')!.stays).toEqual(holding.colonies.get('colony-a')!.stays);
  });

  test('[J29] placed in two hives at one instant is reported; an ended colony is not placed', () => {
    const { add, fold } = begin();
    add('hive', { hive: 'hive-b', label: 'B' });
    add('hive', { hive: 'hive-c', label: 'C' });
    const [b, c] = ['hive-b', 'hive-c'].map((hive) => add('colony-placed', { colony: 'colony-a', hive }, { date: '2026-07-01' }));
    expect(fold().clashes).toEqual([{ kind: 'placed-twice', colony: 'colony-a', hives: ['hive-b', 'hive-c'], records: [b!.id, c!.id] }]);
    const ended = add('colony-ended', { colony: 'colony-a', how: 'sold' }, { date: '2026-08-01' });
    const late = add('colony-placed', { colony: 'colony-a', hive: 'hive-b' }, { date: '2026-08-02' });
    expect(fold().colonies.get('colony-a')!.hive).toBeNull();
    expect(clashesOf(fold(), 'after-end')).toEqual([{ kind: 'after-end', colony: 'colony-a', records: [ended.id, late.id] }]);
  });

  test('[J30] two colonies in one hive are reported and both stay; changing places within a day is not', () => {
    const { add, records, fold } = begin();
    records.push(
      ...oneColony(newMaker(), 'b')
        .slice(1)
        .map((record, i) => ({ ...record, id: record.id.replace(/^.{8}/, `00000b0${i}`) })),
    );
    add('colony-placed', { colony: 'colony-b', hive: 'hive-a' }, { date: '2026-07-01', time: '10:00' });
    add('colony-placed', { colony: 'colony-a', hive: 'hive-b' }, { date: '2026-07-01', time: '10:20' });
    expect(fold().clashes).toEqual([]);
    add('colony-placed', { colony: 'colony-a', hive: 'hive-a' }, { date: '2026-07-20' });
    const both = fold();
    expect(both.clashes).toMatchObject([{ kind: 'two-colonies', hive: 'hive-a', colonies: ['colony-b', 'colony-a'] }]);
    expect(both.clashes[0]!.records).toHaveLength(2);
    expect(both.hives.get('hive-a')!.colonies).toEqual(['colony-b', 'colony-a']);
  });

  test('[J30] a colony in a hive that is gone is reported', () => {
    const { add, fold } = begin();
    const gone = add('hive', { hive: 'hive-a', label: 'A', gone: true }, { date: '2026-08-01' });
    expect(fold().clashes).toEqual([
      { kind: 'gone-occupied', hive: 'hive-a', colonies: ['colony-a'], records: [gone.id, expect.any(String)] },
    ]);
  });

  test('[J31] a colony ends by uniting, and its hive is free', () => {
    const { add, records, fold } = begin();
    records.push(
      ...oneColony(newMaker(), 'b')
        .slice(1)
        .map((record, i) => ({ ...record, id: record.id.replace(/^.{8}/, `00000b0${i}`) })),
    );
    add('colonies-united', { from: 'colony-b', into: 'colony-a' }, { date: '2026-09-10' });
    const holding = fold();
    expect(holding.colonies.get('colony-b')).toMatchObject({ hive: null, ended: { how: 'united', into: 'colony-a' } });
    expect(holding.hives.get('hive-b')!.colonies).toEqual([]);
    expect(holding.clashes).toEqual([]);
  });

  test('[J31] a spring count that finds no life ends the colony; what belongs to clearing up is no clash', () => {
    const { add, fold } = begin();
    add('treatment-in', { colony: 'colony-a', active: 'thymol' }, { date: '2026-08-20' });
    const dead = add('spring-count', { colony: 'colony-a', alive: false }, { date: '2027-04-10' });
    add('colony-ended', { colony: 'colony-a', how: 'died' }, { date: '2027-04-10' });
    add('spring-count', { colony: 'colony-a', alive: false }, { date: '2027-04-20' });
    add('treatment-out', { colony: 'colony-a', active: 'thymol' }, { date: '2027-04-20' });
    add('swap', { from: { colony: 'colony-a' }, to: { shed: true }, frame: 'deep', count: 3 }, { date: '2027-04-20' });
    add('look', { colony: 'colony-a', capped: [{ frame: 'deep', count: 3, where: 'top' }] }, { date: '2027-04-20' });
    const cleared = fold();
    expect(cleared.colonies.get('colony-a')!.ended).toMatchObject({ how: 'died', record: dead.id });
    expect(cleared.clashes).toEqual([]);
    const late = [
      add('feed', { colony: 'colony-a', what: 'syrup', event: 'offered' }, { date: '2027-04-21' }),
      add('look', { colony: 'colony-a', bees: { count: 4, unit: 'frames', counting: 'covered' } }, { date: '2027-04-21' }),
      add('colony-ended', { colony: 'colony-a', how: 'sold' }, { date: '2027-04-22' }),
    ];
    expect(fold().clashes).toEqual([{ kind: 'after-end', colony: 'colony-a', records: [dead.id, ...late.map((record) => record.id)] }]);
    expect(fold().colonies.get('colony-a')!.ended!.how).toBe('died');
  });

  test('[J32] before the beginning, begun twice, and names nobody explains are reported', () => {
    const { add, fold } = begin();
    const early = add('queen', { colony: 'colony-a', state: 'seen' }, { date: '2026-04-01' });
    expect(fold().clashes).toMatchObject([
      { kind: 'before-begin', thing: 'colony', name: 'colony-a', records: [early.id, expect.any(String)] },
    ]);
    const again = add('colony-begun', { colony: 'colony-a', hive: 'hive-a', how: 'swarm' }, { date: '2026-06-01' });
    expect(clashesOf(fold(), 'begun-twice')).toMatchObject([
      { thing: 'colony', name: 'colony-a', records: [expect.any(String), again.id] },
    ]);
    const stray = add('feed', { colony: 'colony-x', what: 'candy', event: 'left' }, { yard: 'nowhere' });
    const step = add('step-done', { plan: stray.id, step: '1' });
    const tick = add('shut-tick', { hive: 'hive-x', tick: 'strapped', done: true });
    const hive = add('hive', { hive: 'hive-y', label: 'Y', stand: 'stand-x' });
    const count = add('bank-count', { lot: 'lot-x', count: 4 });
    const unknown = clashesOf(fold(), 'unknown-thing').map((clash) =>
      clash.kind === 'unknown-thing' ? [clash.thing, clash.name, ...clash.records] : [],
    );
    expect(unknown).toHaveLength(6);
    expect(unknown).toEqual(
      expect.arrayContaining([
        ['colony', 'colony-x', stray.id],
        ['yard', 'nowhere', stray.id],
        ['plan', stray.id, step.id],
        ['hive', 'hive-x', tick.id],
        ['stand', 'stand-x', hive.id],
        ['lot', 'lot-x', count.id],
      ]),
    );
    expect(fold().lots.get('lot-x')).toMatchObject({ count: 4, frame: null, massKg: null, begun: null });
    expect(fold().plans.size).toBe(0);
  });

  test('[J33] signs of disease set a colony aside until a clean look, and go on with a split', () => {
    const { add, records, fold } = begin();
    records.push(
      ...oneColony(newMaker(), 'b')
        .slice(1)
        .map((record, i) => ({ ...record, id: record.id.replace(/^.{8}/, `00000b0${i}`) })),
    );
    const flags = () => ['colony-a', 'colony-b', 'colony-c'].map((name) => fold().colonies.get(name)?.flag);
    const clean = add('look', { colony: 'colony-a', brood: 'clean' }, { date: '2026-06-01' });
    expect(fold().colonies.get('colony-a')).toMatchObject({ flag: null, cleanLook: { record: clean.id } });
    add('look', { colony: 'colony-a', brood: 'signs' }, { date: '2026-06-10' });
    expect(fold().colonies.get('colony-a')).toMatchObject({ flag: 'signs', cleanLook: null });
    add('look', { colony: 'colony-a', brood: 'not-looked' }, { date: '2026-06-11' });
    add('hive', { hive: 'hive-c', label: 'C' });
    add('colony-begun', { colony: 'colony-c', hive: 'hive-c', how: 'split', parents: ['colony-a'] }, { date: '2026-06-12' });
    add('split', { from: 'colony-a', into: 'colony-b', frames: 2 }, { date: '2026-06-12' });
    expect(flags()).toEqual(['signs', 'signs', 'signs']);
    add('look', { colony: 'colony-a', brood: 'clean' }, { date: '2026-07-01' });
    expect(flags()).toEqual([null, 'signs', 'signs']);
    add('colonies-united', { from: 'colony-b', into: 'colony-a' }, { date: '2026-07-02' });
    expect(flags()).toEqual(['signs', 'signs', 'signs']);
  });

  test('[J33] after uniting the older clean look counts, and none where one is missing', () => {
    const { add, records, fold } = begin();
    records.push(
      ...oneColony(newMaker(), 'b')
        .slice(1)
        .map((record, i) => ({ ...record, id: record.id.replace(/^.{8}/, `00000b0${i}`) })),
    );
    add('look', { colony: 'colony-a', brood: 'clean' }, { date: '2026-09-01' });
    add('colonies-united', { from: 'colony-b', into: 'colony-a' }, { date: '2026-09-10' });
    expect(fold().colonies.get('colony-a')!.cleanLook).toBeNull();
    const older = add('look', { colony: 'colony-b', brood: 'clean' }, { date: '2026-08-01' });
    expect(fold().colonies.get('colony-a')!.cleanLook!.record).toBe(older.id);
  });

  test('[J36] strips that come out close the oldest still in; without one it is reported', () => {
    const { add, fold } = begin();
    const [first, second] = ['2026-08-01', '2026-08-10'].map((date) =>
      add('treatment-in', { colony: 'colony-a', active: 'thymol', lot: 'L1' }, { date }),
    );
    const out = add('treatment-out', { colony: 'colony-a', active: 'thymol' }, { date: '2026-09-01' });
    expect(fold().colonies.get('colony-a')!.treatments).toMatchObject([
      { in: { record: first!.id }, out: { record: out.id }, lot: 'L1' },
      { in: { record: second!.id }, out: null },
    ]);
    const stray = add('treatment-out', { colony: 'colony-a', active: 'amitraz' }, { date: '2026-09-01' });
    expect(fold().clashes).toEqual([{ kind: 'out-without-in', colony: 'colony-a', active: 'amitraz', records: [stray.id] }]);
    expect(fold().colonies.get('colony-a')!.treatments.at(-1)).toMatchObject({ active: 'amitraz', in: null });
  });
});

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
