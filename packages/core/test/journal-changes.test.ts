import { describe, expect, test } from 'vitest';
import {
  effectiveRecords,
  inOrder,
  type JournalRecord,
  journalDigest,
  mergeJournals,
  minuteOf,
  normalJournal,
  readJournal,
  writeJournal,
} from '../src/journal/index.ts';
import { idAt, newMaker, stampAt } from './journal-maker.ts';

const make = newMaker();
const weighing = make('weighing', { hive: 'h1', frontKg: 21 });
const other = make('weighing', { hive: 'h2', frontKg: 30 });
const correction = (frontKg: number, ms: number, date = '2026-09-01') =>
  make('correct', { target: weighing.id, body: { hive: 'h1', frontKg } }, { seen: stampAt(ms), date });
const strike = (target: string, ms: number, id?: string) =>
  make('strike', { target }, { seen: stampAt(ms), ...(id === undefined ? {} : { id }) });

/** Front reading of the first weighing that stands; undefined where it is withdrawn. */
function reading(...records: JournalRecord[]): number | undefined {
  const { records: standing } = effectiveRecords([weighing, ...records]);
  const found = standing.find((record) => record.id === weighing.id);
  return found?.kind === 'weighing' ? found.body.frontKg : undefined;
}
const faults = (...records: JournalRecord[]) => effectiveRecords([weighing, ...records]).faults;

describe('merging', () => {
  test('[J9] merging is the union of records and unread lines', () => {
    const a = readJournal(`${JSON.stringify(weighing)}\nbroken a\n`);
    const b = readJournal(`${JSON.stringify(other)}\n${JSON.stringify(weighing)}\nbroken b\nbroken a`);
    const merged = mergeJournals(a, b);
    expect(merged.records).toEqual([weighing, other]);
    expect(merged.unread.map((line) => line.text)).toEqual(['broken a', 'broken b']);
    expect(mergeJournals(b, a)).toEqual(merged);
    expect(mergeJournals(merged, merged)).toEqual(merged);
  });

  test('[J10] two contents under one id both stay; the higher stamp counts, and it is reported', () => {
    const twin: JournalRecord = { ...weighing, body: { hive: 'h1', frontKg: 99 }, seen: stampAt(9000) };
    const merged = mergeJournals(normalJournal([weighing], []), normalJournal([twin], []));
    expect(writeJournal(merged).split('\n')).toHaveLength(3);
    for (const order of [
      [weighing, twin],
      [twin, weighing],
    ] as const) {
      const effective = effectiveRecords(order);
      expect(effective.records).toEqual([twin]);
      expect(effective.faults).toEqual([{ kind: 'same-id', records: [weighing.id], contents: 2 }]);
    }
    expect(faults({ ...weighing })).toEqual([]);
  });

  test('[J11] the digest depends on the set of records only', () => {
    const twin: JournalRecord = { ...weighing, by: 'somebody else' };
    const digest = journalDigest([weighing, other]);
    expect(digest).toMatch(/^[0-9a-f]{32}$/);
    expect(journalDigest([other, weighing])).toBe(digest);
    expect(journalDigest([other, weighing, { ...other }])).toBe(digest);
    expect(journalDigest([other])).not.toBe(digest);
    expect(journalDigest([weighing, other, twin])).not.toBe(digest);
    expect(journalDigest([twin, weighing, other])).toBe(journalDigest([weighing, other, twin]));
  });
});

describe('order', () => {
  test('[J15] instants are compared: no time is local noon, no zone is +00:00', () => {
    expect(minuteOf({ date: '1970-01-01' })).toBe(720);
    expect(minuteOf({ date: '1970-01-01', time: '00:30', zone: '-06:00' })).toBe(390);
    expect(minuteOf({ date: '1970-01-02', time: '00:30', zone: '+05:30' })).toBe(1440 + 30 - 330);
    const late = make('bloom', { plant: 'willow', stage: 'first' }, { time: '23:30', zone: '-06:00' });
    const nextDayEast = make('bloom', { plant: 'willow', stage: 'full' }, { date: '2026-09-02', time: '01:00', zone: '+02:00' });
    expect(inOrder([late, nextDayEast])).toEqual([nextDayEast, late]);
  });

  test('[J16] equal instants go by stamp, then by id', () => {
    const [a, b] = [
      make('bloom', { plant: 'willow', stage: 'first' }, { seen: stampAt(2) }),
      make('bloom', { plant: 'willow', stage: 'full' }, { seen: stampAt(1) }),
    ];
    const c = make('bloom', { plant: 'maple', stage: 'full' }, { seen: stampAt(2) });
    for (const order of [
      [a, b, c],
      [c, b, a],
      [b, c, a],
    ])
      expect(inOrder(order)).toEqual([b, a, c]);
  });
});

describe('corrections and strikes', () => {
  test('[J17] a correction replaces the body, a strike withdraws it, and the record itself is untouched', () => {
    expect(reading(correction(22, 2000))).toBe(22);
    expect(reading(strike(weighing.id, 2000))).toBeUndefined();
    expect(weighing.body).toEqual({ hive: 'h1', frontKg: 21 });
  });

  test('[J18] the highest stamp wins, whatever the date', () => {
    expect(reading(correction(22, 3000, '2020-01-01'), correction(23, 2000, '2030-01-01'))).toBe(22);
    expect(reading(correction(22, 2000), strike(weighing.id, 3000))).toBeUndefined();
    expect(reading(correction(22, 3000), strike(weighing.id, 2000))).toBe(22);
    const [low, high] = [idAt(70), idAt(71)].map((id, i) =>
      make('correct', { target: weighing.id, body: { hive: 'h1', frontKg: 40 + i } }, { id, seen: stampAt(5000) }),
    );
    expect(reading(high!, low!)).toBe(41);
  });

  test('[J19] undo is a strike and may be struck, as deep as one likes', () => {
    const chain: JournalRecord[] = [strike(weighing.id, 2000)];
    for (let depth = 1; depth <= 20_000; depth++) {
      chain.push(strike(chain.at(-1)!.id, 2000 + depth));
      if (depth < 6 || depth > 19_998) expect(reading(...chain), `depth ${depth}`).toBe(depth % 2 === 1 ? 21 : undefined);
    }
  });

  test('[J19] a struck correction gives way to the next highest', () => {
    const [second, third] = [correction(22, 2000), correction(23, 3000)];
    expect(reading(second, third, strike(third.id, 2500))).toBe(22);
    expect(reading(second, third, strike(third.id, 2500), strike(second.id, 1))).toBe(21);
  });

  test('[J20] a change whose target is unknown waits and is listed, and counts once the target is there', () => {
    const early = correction(25, 2000);
    expect(effectiveRecords([other, early])).toEqual({ records: [other], waiting: [early.id], faults: [] });
    expect(reading(early)).toBe(25);
  });

  test('[J21] a correction that does not fit its target does not count and is reported', () => {
    const unfit = make('correct', { target: weighing.id, body: { hive: 'h1', frontKg: 5000 } });
    expect(reading(unfit)).toBe(21);
    expect(faults(unfit)).toMatchObject([
      { kind: 'correction-unfit', records: [weighing.id, unfit.id], error: { field: 'body.frontKg', value: 5000 } },
    ]);
    const first = correction(22, 2000);
    const ofChange = make('correct', { target: first.id, body: { target: weighing.id, body: {} } });
    expect(reading(first, ofChange)).toBe(22);
    expect(faults(first, ofChange)).toEqual([{ kind: 'correction-of-change', records: [first.id, ofChange.id] }]);
  });

  test('[J22] strikes in a circle do not count and are reported; a strike from outside opens it', () => {
    const [a, b] = [strike(idAt(81), 2000, idAt(80)), strike(idAt(80), 2001, idAt(81))];
    expect(faults(a, b)).toEqual([{ kind: 'strike-circle', records: [idAt(80), idAt(81)] }]);
    const self = strike(idAt(82), 2000, idAt(82));
    expect(faults(self)).toEqual([{ kind: 'strike-circle', records: [idAt(82)] }]);
    // a, itself in no circle any more, strikes b; b is struck, so what b struck stands
    const opened = faults(a, b, strike(b.id, 3000));
    expect(opened).toEqual([]);
  });
});
