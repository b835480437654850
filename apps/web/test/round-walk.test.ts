import { foldHolding, type JournalRecord, recordOf, uuidv7, waysOf } from '@winterheft/core';
import { describe, expect, test } from 'vitest';
import { type AdviceFrom, adviceOf } from '../src/weighing/advice.ts';
import { looksSwapped } from '../src/weighing/suspicion.ts';
import { nextHive, openingHive, ROUND_DAYS, walkOf } from '../src/weighing/walk.ts';

/** 18 September 2026 as days since 1970-01-01. */
const TODAY = Date.UTC(2026, 8, 18) / 86_400_000;

function holdingOf(entries: readonly (readonly [kind: string, body: Record<string, unknown>, date?: string])[]) {
  const records = entries.map(([kind, body, date = '2026-05-01'], n) => {
    const read = recordOf({
      id: uuidv7(1_780_000_000_000 + n, new Uint8Array(10)),
      yard: kind === 'setting' ? '*' : 'y1',
      kind,
      at: { date },
      by: 'keeper',
      seen: `${1_780_000_000_000 + n}-00000-device01`,
      body,
    });
    if (!read.ok) throw new Error(`${kind}: ${JSON.stringify(read.why)}`);
    return read.record;
  });
  return foldHolding(records as JournalRecord[]);
}

const YARD = ['yard', { name: 'Home', latDeg: 53, lonDeg: -101 }] as const;
const hive = (name: string, label: string, row?: string, place?: number) => [
  ...(row === undefined ? [] : [['stand', { stand: `s-${name}`, row, place }] as const]),
  ['hive', { hive: name, label, ...(row === undefined ? {} : { stand: `s-${name}` }) }] as const,
  ['colony-begun', { colony: `c-${name}`, hive: name, how: 'unknown' }] as const,
];

describe('the walk', () => {
  const holding = holdingOf([
    YARD,
    ...hive('h1', 'Z10'),
    ...hive('h2', 'Z9'),
    ...hive('h3', 'B1', 'B', 1),
    ...hive('h4', 'A2', 'A', 2),
    ...hive('h5', 'A1', 'A', 1),
    ...hive('gone', 'A3', 'A', 3),
    ['hive', { hive: 'gone', label: 'A3', gone: true }, '2026-06-01'],
    ['hive', { hive: 'empty', label: 'A4' }],
    ['weighing', { hive: 'h5', frontKg: 25 }, '2026-09-18'],
    ['weighing', { hive: 'h4', frontKg: 25 }, '2026-09-10'],
  ]);
  const walk = walkOf(holding, TODAY, new Set(['h3']));

  test('goes by row and place, then hives without a stand by label; gone and empty hives are left out', () => {
    expect(walk.map(({ hives }) => hives.map(({ label }) => label))).toEqual([['A1', 'A2', 'B1', 'Z9', 'Z10']]);
  });

  test('knows what is done in this round, begun, and to do', () => {
    expect(walk[0]?.hives.map(({ stop }) => stop)).toEqual(['done', 'to-do', 'begun', 'to-do', 'to-do']);
    expect(ROUND_DAYS).toBeLessThan(8);
  });

  test('goes on with the next that is not done, round the yard; half-read ones are not passed over', () => {
    expect(nextHive(walk, 'h5')?.label).toBe('A2');
    expect(nextHive(walk, 'h4')?.label).toBe('B1');
    expect(nextHive(walk, 'h1')?.label).toBe('A2');
  });

  test('opens at the hive asked for by name or label, else where it was left, else at the first to do', () => {
    expect(openingHive(walk, 'h1', 'h3')?.label).toBe('Z10');
    expect(openingHive(walk, 'B1', null)?.hive).toBe('h3');
    expect(openingHive(walk, undefined, 'h3')?.hive).toBe('h3');
    expect(openingHive(walk, undefined, 'gone')?.label).toBe('A2');
    expect(openingHive([], undefined, null)).toBeNull();
  });

  test('ends when all are done', () => {
    const all = holdingOf([YARD, ...hive('h1', '1'), ['weighing', { hive: 'h1', word: 'fair' }, '2026-09-18']]);
    expect(nextHive(walkOf(all, TODAY, new Set()), 'h1')).toBeNull();
  });
});

test('front and rear are suspected of being swapped only where the other way round fits the hives weighed before', () => {
  // Ten hives whose front bears 55 % of the weight, as far as the lever shows it.
  const weighed = Array.from({ length: 10 }, (_, i) => [
    ...hive(`h${i}`, `${i}`),
    ['weighing', { hive: `h${i}`, frontKg: 28 + i / 10, rearKg: 21 + i / 10 }, '2026-09-18'] as const,
  ]).flat();
  const ways = waysOf(holdingOf([YARD, ...weighed]));
  expect(looksSwapped(28, 21, ways)).toBe(false);
  expect(looksSwapped(25, 24, ways)).toBe(false);
  expect(looksSwapped(20, 30, ways)).toBe(true);
});

describe('what to do now needs no other hive', () => {
  const line = { state: 'short', low: false, aboveNeedKg: -9.5, hasSdKg: 2, notes: [] } as const;
  const from: AdviceFrom = { line, basis: 'both', cappedFrameKg: 3, sugarPerStores: 0.9, feedUntil: '2026-10-10', today: '2026-09-18' };
  const withLine = (change: object): AdviceFrom => ({ ...from, line: { ...line, ...change } as AdviceFrom['line'] });

  test('a short one is marked for whole frames, or fed while syrup is still taken', () => {
    expect(adviceOf(from)).toMatchObject({ do: 'feed', frames: 4, until: '2026-10-10' });
    expect(adviceOf({ ...from, today: '2026-10-11' })).toEqual({ do: 'mark-frames', frames: 4 });
    expect(adviceOf({ ...from, feedUntil: null })).toEqual({ do: 'mark-frames', frames: 4 });
  });

  test('one edge that does not decide sends to the other, a word to the scale', () => {
    expect(adviceOf({ ...withLine({ aboveNeedKg: 3 }), basis: 'front' })).toEqual({ do: 'weigh-other', edge: 'rear' });
    expect(adviceOf({ ...withLine({ aboveNeedKg: 3 }), basis: 'rear' })).toEqual({ do: 'weigh-other', edge: 'front' });
    expect(adviceOf({ ...withLine({ aboveNeedKg: -3 }), basis: 'word' })).toEqual({ do: 'weigh-scale' });
    expect(adviceOf({ ...from, basis: 'front' })).toMatchObject({ do: 'feed' });
  });

  test('signs of disease come before all else: nothing moves', () => {
    expect(adviceOf(withLine({ state: 'set aside' }))).toEqual({ do: 'close', why: 'signs' });
  });

  test('a spare one is looked at first, and then marked for the frames it has to spare', () => {
    const spare = { state: 'spare', aboveNeedKg: 10 };
    expect(adviceOf(withLine({ ...spare, notes: [{ code: 'brood-not-looked-at', lastLook: null }] }))).toEqual({ do: 'look-first' });
    expect(adviceOf(withLine(spare))).toEqual({ do: 'mark-giver', frames: 3 });
  });

  test('an unweighed one is weighed, one with wet syrup is weighed again, one that has enough is left', () => {
    expect(adviceOf(withLine({ state: 'unknown', aboveNeedKg: null, hasSdKg: null }))).toEqual({ do: 'weigh' });
    expect(adviceOf(withLine({ notes: [{ code: 'provisional', weighAgainOn: '2026-10-02' }] }))).toMatchObject({ why: 'drying' });
    expect(adviceOf(withLine({ state: 'enough', aboveNeedKg: 5 }))).toMatchObject({ do: 'leave', why: 'enough' });
    expect(adviceOf(withLine({ state: 'enough', aboveNeedKg: 5, low: true }))).toMatchObject({ why: 'low' });
  });
});
