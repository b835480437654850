import { recordOf, standardBuild, uuidv7 } from '@winterheft/core';
import { describe, expect, test } from 'vitest';
import {
  dateFault,
  EMPTY_ROW,
  type FilledRow,
  filledOf,
  isFilled,
  mostOf,
  rowFaults,
  rowRecords,
  yearBefore,
} from '../src/sheet/filled.ts';
import { PAGE_MM, pagesOf, ROW_MM, YARD_MM } from '../src/sheet/pages.ts';
import { hiveFacts } from '../src/weighing/hive-facts.ts';

const yards = (...sizes: readonly number[]) =>
  sizes.map((size, y) => ({ yard: `y${y}`, rows: Array.from({ length: size }, (_, i) => `${y}.${i}`) }));
const rowsOf = (page: readonly { readonly rows: readonly string[] }[]) => page.flatMap(({ rows }) => rows);
const heightMm = (page: readonly { readonly rows: readonly string[] }[]) =>
  page.reduce((mm, { rows }) => mm + YARD_MM + rows.length * ROW_MM, 0);

describe('pages of the sheet', () => {
  test('26 hives stand on one page, in one yard, in two or in three', () => {
    for (const sizes of [[26], [16, 10], [9, 9, 8]]) expect(pagesOf(yards(...sizes))).toHaveLength(1);
  });

  test('however many, every hive stands once, in order, and no page is fuller than a page', () => {
    for (const sizes of [[27], [60], [1, 1, 1, 1], [200], [5, 40, 13, 2], Array.from({ length: 60 }, () => 3)]) {
      const all = yards(...sizes);
      const pages = pagesOf(all);
      expect(pages.flatMap(rowsOf)).toEqual(rowsOf(all));
      for (const page of pages) {
        expect(heightMm(page)).toBeLessThanOrEqual(PAGE_MM + 1e-6);
        // a yard's name never stands alone at the foot
        expect(page.every(({ rows }) => rows.length > 0)).toBe(true);
      }
    }
  });

  test('no hive, no page', () => {
    expect(pagesOf([])).toEqual([]);
    expect(pagesOf(yards(0))).toEqual([]);
  });
});

const parts = standardBuild(['deep', 'medium'], 8).map(({ part, count }) => ({ part, count }));
const facts = hiveFacts({ builds: [{ parts }] } as unknown as Parameters<typeof hiveFacts>[0]);
const row = (change: Partial<FilledRow>): FilledRow => ({ ...EMPTY_ROW, ...change });

describe('a filled sheet', () => {
  test('text that is no number, and counts that are not in halves or more than there are frames, are refused by field', () => {
    expect(rowFaults(row({ front: '48,5', rear: '.5', bees: '7½' }), facts)).toEqual([{ field: 'bees', kind: 'no-number' }]);
    expect(rowFaults(row({ front: '4e1', top: '2,5', below: '2.3' }), facts)).toEqual([
      { field: 'front', kind: 'no-number' },
      { field: 'below', kind: 'halves', high: 8 },
    ]);
    // eight frames in each of two boxes
    expect(mostOf('top', facts)).toBe(8);
    expect(rowFaults(row({ top: '9' }), facts)).toHaveLength(1);
    expect(rowFaults(row({ top: '8', below: '8', bees: '16', brood: 'clean' }), facts)).toEqual([]);
    expect(rowFaults(row({ bees: '-1' }), facts)).toHaveLength(1);
  });

  test('a sheet is of today or of the year before', () => {
    expect(dateFault('2026-09-18', '2026-09-18')).toBeNull();
    expect(dateFault('2026-09-19', '2026-09-18')).toBe('later');
    expect(dateFault('2025-09-18', '2026-09-18')).toBeNull();
    expect(dateFault('2025-09-17', '2026-09-18')).toBe('old');
    expect(dateFault('', '2026-09-18')).toBe('missing');
    // 2028 is a leap year, 2027 is none
    expect(yearBefore('2028-02-29')).toBe('2027-02-28');
  });

  test('a row makes a weighing and a look with the date of the sheet; what the journal takes, nothing more', () => {
    const records = rowRecords(row({ front: '48,5', rear: '50', bees: '7.5', top: '3', brood: 'signs' }), {
      hive: 'h1',
      colony: 'c1',
      yard: 'y1',
      facts,
      units: 'ca',
      scale: { stepKg: 0.2 },
      at: { date: '2026-09-12', zone: '-05:00' },
    });
    expect(records.map(({ kind, at }) => [kind, at?.date])).toEqual([
      ['weighing', '2026-09-12'],
      ['look', '2026-09-12'],
    ]);
    // the international pound is 0.45359237 kg exactly; within half a gram, as readings are kept to the gram
    const weighing = records[0]?.body as { frontKg: number; rearKg: number };
    expect(Math.abs(weighing.frontKg - 48.5 * 0.45359237)).toBeLessThan(0.0005);
    expect(Math.abs(weighing.rearKg - 50 * 0.45359237)).toBeLessThan(0.0005);
    expect(records[1]?.body).toEqual({
      colony: 'c1',
      bees: { count: 7.5, unit: 'frames', counting: 'covered' },
      capped: [{ frame: 'medium-frame-drawn', count: 3, where: 'top' }],
      brood: 'signs',
    });
    records.forEach((record, n) => {
      const id = uuidv7(1_780_000_000_000 + n, new Uint8Array(10));
      expect(recordOf({ ...record, id, by: 'keeper', seen: `${1_780_000_000_000 + n}-00000-device01` }).ok).toBe(true);
    });
  });

  test('an empty row makes nothing; a stored draft of any form is read or left, never a fault', () => {
    const of = { hive: 'h', colony: 'c', yard: 'y', facts, units: 'metric', scale: {}, at: { date: '2026-09-12' } } as const;
    expect(rowRecords(EMPTY_ROW, of)).toEqual([]);
    expect(isFilled(row({ front: ' ' }))).toBe(false);
    expect(filledOf({ date: '2026-09-12', rows: { h: { front: '48', brood: 'wild', bees: 3 } } })).toEqual({
      date: '2026-09-12',
      rows: { h: row({ front: '48' }) },
    });
    for (const odd of [null, 3, 'x', {}, { date: 1, rows: {} }, { date: '2026-09-12', rows: null }]) expect(filledOf(odd)).toBeNull();
  });
});
