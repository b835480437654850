import type { ColonyOutlook } from '@winterheft/core';
import { describe, expect, test } from 'vitest';
import { columnsOf, forageOf, needsTwoLines } from '../src/outlook/frame.ts';
import { layOut, nearestRow, type Room, shownInSun } from '../src/outlook/layout.ts';
import { axisOf, monthMarks, needlesOf, xOf } from '../src/verdict/axis.ts';
import {
  type Group,
  type GroupName,
  groupOf,
  groupsOf,
  headlineOf,
  inOldOrder,
  isAtRisk,
  nextOf,
  orderOf,
  shapeOf,
} from '../src/verdict/groups.ts';

/** The fields of a line that the chart sorts and draws by. */
function line(colony: string, of: Partial<ColonyOutlook> = {}): ColonyOutlook {
  return {
    colony,
    label: colony,
    yard: 'home',
    state: 'enough',
    low: false,
    holdFrac: 0.97,
    notes: [],
    cases: null,
    ...of,
  } as ColonyOutlook;
}
const NOT_LOOKED = [{ code: 'brood-not-looked-at', lastLook: null }] as const;

describe('dates on the axis', () => {
  const axis = axisOf('2026-09-18', '2027-06-30', { left: 50, right: 335 });

  // Days from 18 September counted by month by hand: 12 + 31 + 30 + 31 + 31 + 28 + 31 + 30 + 31 + 30 = 285 to 30 June; a pixel a day.
  test.each([
    ['2026-09-18', 50],
    ['2026-10-01', 63],
    ['2026-12-31', 154],
    ['2027-02-28', 213],
    ['2027-03-01', 214],
    ['2027-06-30', 335],
  ])('%s stands where the calendar has it', (iso, x) => expect(xOf(axis, iso)).toBeCloseTo(x, 9));

  test('29 February is a day of its own in a leap year', () => {
    const leap = axisOf('2028-02-27', '2028-03-02', { left: 0, right: 4 });
    expect(['2028-02-28', '2028-02-29', '2028-03-01'].map((day) => xOf(leap, day))).toEqual([1, 2, 3]);
  });

  test('every first of a month within the axis is marked, in order', () => {
    const marks = monthMarks(axis, 20);
    expect(marks.map((mark) => mark.month)).toEqual([10, 11, 12, 1, 2, 3, 4, 5, 6]);
    // JavaScript's own calendar as the second opinion.
    for (const [i, mark] of marks.entries()) {
      const day = (Date.UTC(i < 3 ? 2026 : 2027, mark.month - 1, 1) - Date.UTC(2026, 8, 18)) / 86_400_000;
      expect(mark.x).toBeCloseTo(50 + day, 9);
    }
  });

  test('where names would touch, every second is named, and none is lost as a mark', () => {
    expect(monthMarks(axis, 20).every((mark) => mark.named)).toBe(true);
    const crowded = monthMarks(axis, 40);
    expect(crowded).toHaveLength(9);
    expect(crowded.map((mark) => mark.named).slice(0, 4)).toEqual([true, false, true, false]);
  });

  test('twenty cases are twenty: tall before their forage, short after it, the rest counted as later', () => {
    const cases = [
      ...Array.from({ length: 15 }, (_, i) => `2027-05-${String(10 + i).padStart(2, '0')}`),
      '2027-07-02',
      null,
      null,
      null,
      null,
    ];
    const needles = needlesOf(axis, cases, 6);
    expect(needles.tall).toHaveLength(6);
    expect(needles.short).toHaveLength(9);
    expect(needles.later).toBe(5);
    expect(needles.tall[0]).toBeCloseTo(xOf(axis, '2027-05-10'), 9);
  });
});

describe('groups by what to do', () => {
  test.each([
    ['short', { state: 'short' }, 'short', 'short', 'cover'],
    ['unknown', { state: 'unknown' }, 'look', 'unknown', 'weigh'],
    ['too small', { state: 'too small alone' }, 'look', 'too-small-alone', 'unite'],
    ['set aside', { state: 'set aside' }, 'look', 'set-aside', 'shut'],
    ['spare, brood not looked at', { state: 'spare', notes: NOT_LOOKED }, 'look', 'look', 'look'],
    ['spare, looked at', { state: 'spare' }, 'spare', 'spare', 'give'],
    ['enough, brood not looked at: it gives nothing, so nothing waits', { state: 'enough', notes: NOT_LOOKED }, 'enough', 'enough', null],
    ['enough, but low', { state: 'enough', low: true }, 'low', 'low', 'lift'],
    ['spare, but low', { state: 'spare', low: true }, 'low', 'low', 'lift'],
  ] as const)('%s', (_name, of, group, shape, next) => {
    const one = line('x', of as Partial<ColonyOutlook>);
    expect([groupOf(one), shapeOf(one), nextOf(one)]).toEqual([group, shape, next]);
  });

  test('no colony is lost or doubled, and the order of risk stays inside a group', () => {
    const lines = ['a', 'b', 'c', 'd', 'e', 'f'].map((name, i) => line(name, { state: i % 2 === 0 ? 'short' : 'spare' }));
    const groups = groupsOf(lines);
    expect(groups.map((group) => group.lines.map((one) => one.colony))).toEqual([
      ['a', 'c', 'e'],
      ['b', 'd', 'f'],
    ]);
  });

  test('the headline counts those above the asked chance, whatever their group; a share equal to it passes', () => {
    const lines = [
      line('a', { holdFrac: 0.95 }),
      line('b', { holdFrac: 0.949 }),
      line('c', { holdFrac: null, state: 'unknown' }),
      line('d', { holdFrac: 0.4, state: 'set aside' }),
    ];
    expect(headlineOf(lines, 0.95)).toEqual({ atRisk: 2, unknown: 1, all: 4 });
    expect(isAtRisk(line('a', { holdFrac: 0.95 }), 0.95)).toBe(false);
  });

  test('while the screen is open rows keep their places; new ones come at the end', () => {
    const before = groupsOf([line('a', { state: 'short' }), line('b', { state: 'short' }), line('c')]);
    const now = groupsOf([line('b', { state: 'short' }), line('new', { state: 'short' }), line('a'), line('c', { state: 'short' })]);
    const kept = inOldOrder(now, orderOf(before));
    expect(kept.map((group) => [group.name, group.lines.map((one) => one.colony)])).toEqual([
      ['short', ['a', 'b', 'new']],
      ['enough', ['c']],
    ]);
  });
});

describe('room for the rows', () => {
  const room: Room = { height: 520, scale: 1, sun: false, twoLines: false, opened: new Set(), below: 17 };
  const groups = (counts: Partial<Record<GroupName, number>>): readonly Group[] =>
    Object.entries(counts).map(([name, n]) => ({
      name: name as GroupName,
      lines: Array.from({ length: n }, (_, i) => line(`${name}${i}`)),
    }));

  test('26 colonies in five groups fit the first view of a phone', () => {
    const layout = layOut(groups({ short: 7, look: 5, low: 2, enough: 10, spare: 2 }), room);
    expect(layout.scrolls).toBe(false);
    expect(layout.rows).toHaveLength(26);
    expect(layout.rows.every((row) => !row.sliver && row.height >= 16)).toBe(true);
  });

  test('of 60 those that ask for nothing shrink, all of them stay, and nothing scrolls', () => {
    const layout = layOut(groups({ short: 11, look: 2, enough: 41, spare: 6 }), room);
    expect(layout.scrolls).toBe(false);
    expect(layout.rows).toHaveLength(60);
    expect(layout.rows.filter((row) => row.sliver)).toHaveLength(47);
    expect(layout.rows.filter((row) => !row.sliver).every((row) => row.height >= 16)).toBe(true);
  });

  test('many risky rows scroll at full size', () => {
    const layout = layOut(groups({ short: 40, enough: 20 }), room);
    expect(layout.scrolls).toBe(true);
    expect(layout.rows.filter((row) => !row.sliver)).toHaveLength(40);
  });

  test('an opened group has full rows', () => {
    const layout = layOut(groups({ short: 11, look: 2, enough: 41, spare: 6 }), { ...room, opened: new Set(['enough']) });
    expect(layout.rows.filter((row) => row.sliver)).toHaveLength(6);
    expect(layout.scrolls).toBe(true);
  });

  test('sun shows what asks for something, in rows of 33 px, never under 31', () => {
    const shown = shownInSun(groups({ short: 7, look: 5, low: 2, enough: 10, spare: 2 }));
    const layout = layOut(shown, { ...room, sun: true, height: 900 });
    expect(layout.rows).toHaveLength(14);
    expect(layout.rows.every((row) => row.height === 33)).toBe(true);
    expect(Math.min(...layOut(shown, { ...room, sun: true, height: 528 }).rows.map((row) => row.height))).toBeGreaterThanOrEqual(31);
  });

  test('rows and heads follow each other without gap or overlap', () => {
    for (const counts of [
      { short: 3, enough: 4 },
      { short: 11, look: 2, enough: 41, spare: 6 },
    ]) {
      const { heads, rows } = layOut(groups(counts), room);
      const all = [...heads, ...rows].sort((a, b) => a.top - b.top);
      for (const [i, one] of all.entries()) if (i > 0) expect(one.top).toBeCloseTo((all[i - 1]?.top ?? 0) + (all[i - 1]?.height ?? 0), 6);
    }
  });

  test('a tap takes the nearest row, also beside and between rows', () => {
    const rows = [
      { colony: 'a', top: 17, height: 20, sliver: false },
      { colony: 'b', top: 37, height: 20, sliver: false },
      { colony: 'c', top: 80, height: 4, sliver: true },
    ];
    expect([-50, 30, 40, 60, 70, 900].map((y) => nearestRow(rows, y)?.colony)).toEqual(['a', 'a', 'b', 'b', 'c', 'c']);
    expect(nearestRow([], 5)).toBeNull();
  });
});

describe('frame of the chart', () => {
  test('columns stay inside the width at every size of text', () => {
    for (const scale of [1, 1.25, 1.5, 2])
      for (const [width, wide] of [
        [358, false],
        [1216, true],
      ] as const) {
        const columns = columnsOf(width, { scale, wide, sun: false });
        expect(columns.left).toBeLessThan(columns.right);
        expect(columns.right).toBeLessThan(width);
        expect(columns.aboveEnd).toBeLessThanOrEqual(width);
      }
  });

  test('yards whose middle day agrees share a line; a day after the axis is left out', () => {
    const yard = (p10: string, p50: string | null, p90: string | null) =>
      ({ yard: 'y', yardName: 'y', climate: { name: '', notes: [] }, dates: { firstForage: { p10, p50, p90 } } }) as never;
    expect(forageOf([yard('2027-05-30', '2027-06-12', '2027-06-25'), yard('2027-05-28', '2027-06-12', null)], '2027-06-30')).toEqual({
      days: ['2027-06-12'],
      p10: '2027-05-28',
      p90: '2027-06-30',
    });
    expect(forageOf([yard('2027-07-02', null, null)], '2027-06-30')).toEqual({ days: [], p10: null, p90: null });
  });

  test('figures take a line of their own where the quiet part has become too short', () => {
    const lines = [line('a', { cases: ['2027-04-20', null] }), line('b', { cases: ['2027-05-10', null] })];
    const edges = { left: 54, right: 308 };
    expect(needsTwoLines(lines, axisOf('2026-09-18', '2027-06-30', edges), 128)).toBe(false);
    expect(needsTwoLines(lines, axisOf('2027-03-01', '2027-06-30', edges), 128)).toBe(true);
  });
});
