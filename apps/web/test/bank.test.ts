import { foldHolding, type Holding, readJournal, recordOf, uuidv7 } from '@winterheft/core';
import { unitFormat } from '@winterheft/words';
import { describe, expect, test } from 'vitest';
import { countedAgain, fullCombKg, type LotAnswers, lotLines, lotOf, NO_LOT, readLotAnswers } from '../src/bank/lot-answers.ts';

const at = { date: '2026-09-10', time: '12:00', zone: '+00:00' };
let n = 0;
const record = (kind: string, body: object, yard = 'yard-1') => {
  n += 1;
  const read = recordOf({
    id: uuidv7(1000 + n, new Uint8Array(10)),
    yard,
    kind,
    at,
    by: 'test',
    seen: `${1_000_000_000_000 + n}-00000-testtest`,
    body,
  });
  if (!read.ok) throw new Error(JSON.stringify(read.why));
  return read.record;
};
const holdingOf = (...records: ReturnType<typeof record>[]): Holding =>
  foldHolding([record('yard', { name: 'Y', latDeg: 53, lonDeg: -101 }), ...records]);

const units = unitFormat('ca');
const of = { holding: holdingOf(), units, today: '2026-09-18' };
const answers: LotAnswers = {
  ...NO_LOT,
  lot: 'clover-2',
  count: '4',
  mass: '7.5',
  from: 'colony-a2',
  looked: '2026-09-12',
  crop: ' Sweet clover ',
};

describe('a lot that is typed', () => {
  test('becomes a record in kilograms (a pound is 0.45359237 kg: NIST Handbook 44, appendix C)', () => {
    const { body, faults } = lotOf(answers, of);
    expect(faults).toEqual({});
    // 7.5 lb = 3.401943 kg, kept to a tenth of a gram
    expect(body).toEqual({
      lot: 'clover-2',
      frame: 'deep',
      count: 4,
      massKg: 3.4019,
      from: 'colony-a2',
      crop: 'sweet-clover',
      looked: '2026-09-12',
      strips: false,
    });
    expect(() => record('bank-lot', body as object)).not.toThrow();
  });

  test.each([
    ['lot', '', 'missing'],
    ['lot', 'a lot', 'name'],
    ['count', '', 'missing'],
    ['count', 'four', 'not-a-number'],
    ['count', '2.5', 'not-whole'],
    ['count', '0', 'out-of-range'],
    ['mass', '75', 'out-of-range'],
    ['mass', '0.1', 'out-of-range'],
    ['crop', 'trèfle', 'name'],
    ['looked', '2026-09-19', 'late'],
  ] as const)('%s "%s" is refused: %s', (field, value, kind) => {
    const { body, faults } = lotOf({ ...answers, [field]: value }, of);
    expect(body).toBeNull();
    expect(faults[field]?.kind).toBe(kind);
  });

  test('a name that stands already is refused, and a draft of another shape is not taken for one', () => {
    const known = holdingOf(record('bank-lot', { lot: 'clover-2', frame: 'deep', count: 1, massKg: 3 }));
    expect(lotOf(answers, { ...of, holding: known }).faults.lot).toEqual({ kind: 'taken' });
    expect(readLotAnswers({ ...NO_LOT, count: 4 })).toBeNull();
    expect(readLotAnswers(NO_LOT)).toEqual(NO_LOT);
  });

  test('a full deep comb is taken as 2.5 to 4 kg (6 to 8 lb of honey and the comb: common practice, no source)', () => {
    expect(fullCombKg('deep')).toBeGreaterThan(2.5);
    expect(fullCombKg('deep')).toBeLessThan(4);
    expect(fullCombKg('medium')).toBeLessThan(fullCombKg('deep'));
  });

  test('a lot counted again may be empty, never less', () => {
    expect(countedAgain('0')).toEqual({ value: 0, fault: null });
    expect(countedAgain('-1').fault?.kind).toBe('out-of-range');
    expect(countedAgain('1,5').fault?.kind).toBe('not-whole');
  });
});

describe('the lots of a yard', () => {
  const begun = record('colony-begun', { colony: 'colony-s', hive: 'hive-s', how: 'unknown' });
  const hive = record('hive', { hive: 'hive-s', label: 'S' });
  const lots = [
    record('bank-lot', { lot: 'a', frame: 'deep', count: 3, massKg: 3.5, looked: '2026-08-01' }),
    record('bank-lot', { lot: 'b', frame: 'deep', count: 2, massKg: 3 }),
    record('bank-lot', { lot: 'c', frame: 'medium-frame-drawn', count: 1, massKg: 2, looked: '2026-08-01', from: 'colony-s' }),
  ];
  const signs = record('look', { colony: 'colony-s', brood: 'signs' });

  test('those nobody may be given stand last with the reason: nobody looked, or the colony has shown signs since', () => {
    const lines = lotLines(holdingOf(hive, begun, ...lots, signs), 'yard-1');
    expect(lines.map(({ lot, held, frame }) => [lot.id, held, frame])).toEqual([
      ['a', null, 'deep'],
      ['b', 'not-looked', 'deep'],
      ['c', 'signs', 'medium'],
    ]);
    expect(lines[0]?.totalKg).toBeCloseTo(10.5, 9);
  });

  test('a lot below zero weighs nothing and is a clash of its own', () => {
    const out = record('swap', { from: { lot: 'b' }, to: { hand: 'b' }, frame: 'deep', count: 5 });
    const holding = holdingOf(hive, begun, ...lots, out);
    expect(lotLines(holding, 'yard-1').find(({ lot }) => lot.id === 'b')).toMatchObject({ totalKg: 0, lot: { count: -3 } });
    expect(holding.clashes).toMatchObject([{ kind: 'lot-negative', lot: 'b', count: -3 }]);
  });

  test('a journal read from text gives the same lots', () => {
    expect(lotLines(foldHolding(readJournal('').records), 'yard-1')).toEqual([]);
  });
});
