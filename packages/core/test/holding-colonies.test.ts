import { describe, expect, test } from 'vitest';
import { begin, clashesOf } from './holding-begin.ts';

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
    const { add, second, fold } = begin();
    second();
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
    const { add, second, fold } = begin();
    second();
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
    const { add, second, fold } = begin();
    second();
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
    const { add, second, fold } = begin();
    second();
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
