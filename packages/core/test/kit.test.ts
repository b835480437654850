import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { candyBoard, csvCell, cutBoards, cutSheets, footprintOf, kit, kitCsv, meshSize, syrupBatch } from '../src/kit/index.ts';
import type { Result } from '../src/result/index.ts';

function value<T>(result: Result<T>): T {
  if (!result.ok) throw new Error(JSON.stringify(result.error));
  return result.value;
}
const fault = <T>(result: Result<T>) => (result.ok ? null : result.error);
const side = (min: number, max: number) => fc.double({ min, max, noNaN: true });

describe('cutting', () => {
  test('pieces lie inside the sheet, none on another, a kerf between, and never fewer than a plain grid', () => {
    fc.assert(
      fc.property(side(0.3, 3), side(0.3, 3), side(0.15, 1), side(0.15, 1), side(0, 0.006), (L, W, l, w, kerfM) => {
        const { layout, fromOne } = cutSheets({ lengthM: L, widthM: W }, { lengthM: l, widthM: w }, { count: 7, kerfM });
        const grid = (a: number, b: number) => Math.floor((L + kerfM) / (a + kerfM)) * Math.floor((W + kerfM) / (b + kerfM));
        expect(fromOne).toBeGreaterThanOrEqual(Math.max(grid(l, w), grid(w, l)));
        expect(fromOne * l * w).toBeLessThanOrEqual(L * W + 1e-6);
        for (const [i, one] of layout.entries()) {
          expect(one.xM + one.lengthM).toBeLessThanOrEqual(L + 1e-6);
          expect(one.yM + one.widthM).toBeLessThanOrEqual(W + 1e-6);
          for (const other of layout.slice(i + 1)) {
            const apart = (a: number, b: number, size: number) => b - (a + size) >= kerfM - 1e-6;
            expect(
              apart(one.xM, other.xM, one.lengthM) ||
                apart(other.xM, one.xM, other.lengthM) ||
                apart(one.yM, other.yM, one.widthM) ||
                apart(other.yM, one.yM, other.widthM),
            ).toBe(true);
          }
        }
      }),
      { numRuns: 120, seed: 7 },
    );
  });

  test('a piece larger than the sheet comes from none', () => {
    expect(cutSheets({ lengthM: 1, widthM: 1 }, { lengthM: 1.2, widthM: 0.5 }, { count: 1, kerfM: 0.003 }).fromOne).toBe(0);
  });

  test('boards hold their pieces and kerfs, every piece is cut once, and the bound is kept', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 40 }), side(0.3, 0.6), side(0.2, 0.6), (hives, long, short) => {
        const { boards, patterns, atLeast } = cutBoards(
          2.4384,
          [
            { lengthM: long, count: 2 * hives },
            { lengthM: short, count: 2 * hives },
          ],
          0.0032,
        );
        const cut = patterns.reduce((sum, pattern) => sum + pattern.boards * pattern.piecesM.length, 0);
        expect(cut).toBe(4 * hives);
        expect(boards).toBeGreaterThanOrEqual(atLeast);
        expect(boards).toBeLessThanOrEqual((11 / 9) * atLeast + 6 / 9 + 1);
        for (const { piecesM, leftM } of patterns) {
          const used = piecesM.reduce((sum, m) => sum + m, 0) + 0.0032 * (piecesM.length - 1);
          expect(used + leftM).toBeCloseTo(2.4384, 6);
          expect(leftM).toBeGreaterThanOrEqual(-1e-9);
        }
      }),
      { numRuns: 60, seed: 11 },
    );
  });

  test('mesh is short of the rim all round and still lies on wood', () => {
    const footprint = footprintOf(10);
    const mesh = value(meshSize(footprint, 0.0095));
    expect(mesh.lengthM).toBeCloseTo(footprint.outsideLengthM - 0.019, 9);
    expect(mesh.lengthM).toBeGreaterThan(footprint.insideLengthM);
    expect(fault(meshSize(footprint, 0.019))).toMatchObject({ kind: 'conflict', why: 'mesh-misses-the-rim' });
  });
});

describe('the list', () => {
  const whole = value(
    kit({
      hives: 26,
      top: 'vented-box',
      syrup: { ratio: '2:1', basis: 'mass', amount: 5, unit: 'US gal', daysToLastFeeding: 8 },
      candy: { sugarKg: 3.6, useKgPerDay: 0.04 },
      stock: { foam: 7, cloth: 30, fill: 1000 },
      prices: { foam: 34, cloth: 4 },
    }),
  );
  const line = (item: string) => whole.lines.find((one) => one.item === item)!;

  test('the stock is taken off, and what is enough is not bought', () => {
    expect(line('foam').more).toBe(19);
    expect(line('foam').buy).toBe(2); // ten from a sheet
    expect(line('foam').cost).toBe(68);
    expect(line('cloth').more).toBe(0);
    expect(line('cloth').buy).toBe(0);
    expect(line('fill').buy).toBe(0);
    expect(whole.cost).toBe(68);
    expect(whole.unpriced).toContain('mesh');
    expect(whole.unpriced).not.toContain('fill');
  });

  test('sugar is that of syrup and candy together', () => {
    expect(line('sugar').need).toBeCloseTo(whole.syrup!.syrup.sugarKg + 26 * 3.6, 9);
    expect(line('sugar').buy * 11.34).toBeGreaterThanOrEqual(line('sugar').need);
    expect((line('sugar').buy - 1) * 11.34).toBeLessThan(line('sugar').need);
  });

  test('what is no number, no item or no size of anything is refused', () => {
    expect(fault(kit({ hives: 0, top: 'both' }))).toMatchObject({ field: 'hives' });
    expect(fault(kit({ hives: 2.5, top: 'both' }))).toMatchObject({ kind: 'implausible', why: 'not-whole' });
    expect(fault(kit({ hives: 3 }))).toEqual({ kind: 'missing-all', ways: [['top'], ['syrup'], ['candy']] });
    expect(fault(kit({ hives: 3, top: 'both', frames: 9 }))).toMatchObject({ kind: 'unknown-choice', field: 'frames' });
    expect(fault(kit({ hives: 3, top: 'both', stock: { foam: -1 } }))).toMatchObject({ field: 'stock.foam' });
    expect(fault(kit({ hives: 3, top: 'both', prices: { mesh: Number.NaN } }))).toMatchObject({
      kind: 'not-a-number',
      field: 'prices.mesh',
    });
    expect(fault(kit({ hives: 3, top: 'both', sizes: { boardLengthM: 0.3 } }))).toMatchObject({ field: 'sizes.boardLengthM' });
    expect(fault(kit({ hives: 3, syrup: { ratio: '9', basis: 'mass', amount: 1, unit: 'L' } }))).toMatchObject({ field: 'syrup.ratio' });
  });

  test('CSV cells that a spreadsheet would run are disarmed, figures stay figures', () => {
    expect(csvCell('=1+1')).toBe("'=1+1");
    expect(csvCell('\t@SUM(A1)')).toBe(`"'\t@SUM(A1)"`.replace(/^"|"$/g, (quote) => (csvCell('\t@SUM(A1)').startsWith('"') ? quote : '')));
    expect(csvCell('+49')).toBe("'+49");
    expect(csvCell('-cmd')).toBe("'-cmd");
    expect(csvCell('-3.5')).toBe('-3.5');
    expect(csvCell(-3.5)).toBe('-3.5');
    expect(csvCell('a "b", c')).toBe('"a ""b"", c"');
    const rows = kitCsv(whole, { foam: '=HYPERLINK("x")' }).trimEnd().split('\r\n');
    expect(rows.length).toBe(whole.lines.length + 1);
    expect(rows[1]).toContain(`"'=HYPERLINK(""x"")"`);
  });
});

describe('recipes', () => {
  test('US, imperial and metric measures of one batch are one batch', () => {
    const of = (amount: number, unit: 'L' | 'US gal' | 'imp gal' | 'US qt') =>
      value(syrupBatch({ ratio: '2:1', basis: 'mass', amount, unit })).syrup.sugarKg;
    expect(of(4, 'US qt')).toBeCloseTo(of(1, 'US gal'), 9);
    expect(of(1, 'US gal')).toBeCloseTo(of(3.785411784, 'L'), 9); // 231 cubic inches exactly, NIST HB 44
    expect(of(1, 'imp gal')).toBeCloseTo(of(4.54609, 'L'), 9);
  });

  test('2:1 by mass may grain in the cold; 1:1 does not', () => {
    expect(value(syrupBatch({ ratio: '2:1', basis: 'mass', amount: 10, unit: 'L' })).grains).toBe(true);
    expect(value(syrupBatch({ ratio: '1:1', basis: 'mass', amount: 10, unit: 'L' })).grains).toBe(false);
  });

  test('as many jars at once as are taken before the last feeding day, and no more', () => {
    const jars = (daysToLastFeeding: number) =>
      value(syrupBatch({ ratio: '2:1', basis: 'mass', amount: 6, unit: 'L', daysToLastFeeding })).jars!;
    expect(jars(30).atOnce).toBe(1);
    expect(jars(8).atOnce).toBe(3);
    expect(jars(8).daysNeeded).toBeLessThanOrEqual(8);
    expect(jars(8).leftPerHiveL).toBe(0);
    expect(jars(2).leftPerHiveL).toBeGreaterThan(0);
    expect(jars(0).leftPerHiveL).toBeCloseTo(6, 9);
  });

  test('no acid in any recipe, burns told where sugar is boiled, and a board lasts by its energy', () => {
    const cold = value(candyBoard({ sugarKg: 4, useKgPerDay: 0.05, boards: 3 }));
    expect(cold.cautions).toContain('no-acid');
    expect(cold.cook).toBeNull();
    expect(cold.allSugarKg).toBe(12);
    // sugar 16.5 against honey 12.72 MJ/kg
    expect(cold.lastsDays!).toBeCloseTo((4 * 16.5) / 12.72 / 0.05, 6);
    expect(cold.lastsHours!).toBeCloseTo(cold.lastsDays! * 24, 9);
    const hot = value(candyBoard({ sugarKg: 4, kind: 'boiled' }));
    expect(hot.cautions).toContain('hot-sugar-burns');
    expect(hot.cautions).toContain('no-acid');
    expect(hot.cook!.hardC).toBeGreaterThan(hot.cook!.softC);
    expect(fault(candyBoard({ sugarKg: 4, boards: 1.5 }))).toMatchObject({ why: 'not-whole' });
  });
});
