import { foldHolding, type JournalRecord, recordOf, uuidv7, waysOf } from '@winterheft/core';
import { describe, expect, test } from 'vitest';
import { type AdviceFrom, adviceOf } from '../src/weighing/advice.ts';
import { jumpOf } from '../src/weighing/jump.ts';
import { movedRecords } from '../src/weighing/records.ts';
import { looksSwapped } from '../src/weighing/suspicion.ts';
import { tagRead, tagText } from '../src/weighing/tag.ts';
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

describe('a weight that jumped since the last weighing', () => {
  type Entries = Parameters<typeof holdingOf>[0];
  const both = (kg: number, date: string): Entries[number] => ['weighing', { hive: 'h1', frontKg: kg, rearKg: kg }, date];
  const jump = (...entries: Entries) => {
    const holding = holdingOf([YARD, ...hive('h1', 'A1'), ...entries]);
    return jumpOf(holding.hives.get('h1') as NonNullable<ReturnType<typeof holding.hives.get>>, holding, waysOf(holding));
  };

  // Both edges together are the hive but for the lever: 15 lb is 6.8 kg, 3.4 kg an edge.
  test('is asked about from 15 lb on, lighter or heavier', () => {
    expect(jump(both(30, '2026-09-04'), both(25, '2026-09-18'))?.changeKg).toBeCloseTo(-10, 0);
    expect(jump(both(25, '2026-09-04'), both(30, '2026-09-18'))).toMatchObject({ since: '2026-09-04' });
    expect(jump(both(30, '2026-09-04'), both(27, '2026-09-18'))).toBeNull();
  });

  test('is not where a feed or a comb stands between, the boxes changed, or a season passed', () => {
    const fed: Entries[number] = [
      'feed',
      { colony: 'c-h1', what: 'syrup', event: 'taken', litres: 8, ratio: '2:1', basis: 'mass' },
      '2026-09-10',
    ];
    const given: Entries[number] = [
      'swap',
      { from: { colony: 'c-h1' }, to: { hand: 'c-h1' }, frame: 'deep-frame-drawn', count: 4 },
      '2026-09-10',
    ];
    const rebuilt: Entries[number] = ['build', { hive: 'h1', parts: [{ part: 'deep-box-10-wood', count: 1 }] }, '2026-09-10'];
    for (const between of [fed, given, rebuilt]) expect(jump(both(25, '2026-09-04'), between, both(30, '2026-09-18'))).toBeNull();
    expect(jump(both(15, '2026-05-04'), both(30, '2026-09-18'))).toBeNull();
    expect(jump(both(30, '2026-09-18'))).toBeNull();
  });
});

test('what was weighed at the wrong hive is corrected to the right one, its look of the same minute with it, and nothing of it is lost', () => {
  const holding = holdingOf([
    YARD,
    ...hive('h1', 'A1'),
    ...hive('h2', 'A2'),
    ['look', { colony: 'c-h1', brood: 'signs' }, '2026-05-02'],
    ['weighing', { hive: 'h1', frontKg: 25, rearKg: 26, stepKg: 0.2, scale: 'hand' }, '2026-09-18'],
    ['look', { colony: 'c-h1', bees: { count: 8, unit: 'frames', counting: 'covered' } }, '2026-09-18'],
  ]);
  const [from, to] = ['h1', 'h2'].map((id) => holding.hives.get(id)) as [never, never];
  const moved = movedRecords(holding, from, to);
  expect(moved.map(({ kind, body }) => [kind, (body as { body: unknown }).body])).toEqual([
    ['correct', { hive: 'h2', frontKg: 25, rearKg: 26, stepKg: 0.2, scale: 'hand' }],
    ['correct', { colony: 'c-h2', bees: { count: 8, unit: 'frames', counting: 'covered' } }],
  ]);
});

describe('a tag', () => {
  const hives = [
    { yard: 'y4k2m9x', hive: 'h7abcde', label: 'A1' },
    { yard: 'y4k2m9x', hive: 'H_7', label: 'A2' },
  ];

  test('holds yard and hive, in capitals where that loses nothing: 20 of them fit a code of 25 modules at level H (ISO/IEC 18004, table 7)', () => {
    expect(tagText(hives[0] as never)).toBe('Y4K2M9X/H7ABCDE');
    expect(tagText(hives[0] as never).length).toBeLessThanOrEqual(20);
    expect(tagText(hives[1] as never)).toBe('y4k2m9x/H_7');
  });

  test('leads to its hive and to no other', () => {
    for (const one of hives) expect(tagRead(tagText(one), hives)).toBe(one);
    expect(tagRead('Y4K2M9X/H7ABCDF', hives)).toBeNull();
    expect(tagRead('https://example.org', hives)).toBeNull();
  });
});
