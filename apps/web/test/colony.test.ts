import { readFileSync } from 'node:fs';
import { type ColonyOutlook, foldHolding, readJournal, recordOf } from '@winterheft/core';
import { appEnglish, figures, unitFormat } from '@winterheft/words';
import { describe, expect, test } from 'vitest';
import { rowsOf } from '../src/colony/citations.ts';
import { doubtRows } from '../src/colony/doubt.ts';
import { bandPath, massMarks } from '../src/colony/fan.ts';
import { historyOf } from '../src/colony/history.ts';
import { figureName, sourceGroups, unitName } from '../src/colony/source-groups.ts';
import { axisOf } from '../src/verdict/axis.ts';

const shares = { weather: 0.1, appetite: 0.5, bees: 0.1, tare: 0.16, scale: 0.04, forage: 0.1 };
const worth = (what: string, sdKg: number) => ({ what, sdKg, minutes: 5, afterDays: 0 });
const line = (of: object) =>
  ({ doubtShares: shares, needParts: { doubtKg: 10 }, stores: { sdKg: 2, measurements: [] }, ...of }) as unknown as ColonyOutlook;

describe('doubt by cause', () => {
  test('the kilograms of the causes add up to the doubt, largest first', () => {
    const rows = doubtRows(line({})) ?? [];
    expect(rows.reduce((sum, row) => sum + row.kg, 0)).toBeCloseTo(10, 9);
    expect(rows.map((row) => row.kg)).toEqual([...rows.map((row) => row.kg)].sort((a, b) => b - a));
    expect(rows[0]?.cause).toBe('appetite');
  });

  test('a measurement takes off what the root of the variances gives: 3-4-5 by hand', () => {
    // The stores make 0.36 of the variance; an error of nought leaves 0.64 of it, and its root is 0.8: 2 of 10 kg go.
    const half = { ...shares, weather: 0, appetite: 0.64, bees: 0, tare: 0.36, scale: 0, forage: 0 };
    const rows = doubtRows(line({ doubtShares: half, stores: { sdKg: 2, measurements: [worth('weigh-empty-hive', 0)] } })) ?? [];
    expect(rows.find((row) => row.cause === 'tare')?.cuts[0]?.takesOffKg).toBeCloseTo(2, 9);
  });

  test('an error that stays as it is takes nothing off and is not offered', () => {
    const rows = doubtRows(line({ stores: { sdKg: 2, measurements: [worth('second-edge', 2)] } })) ?? [];
    expect(rows.flatMap((row) => row.cuts)).toEqual([]);
  });

  test('not asked for yet is not the same as none', () => {
    expect(doubtRows(line({ doubtShares: null }))).toBeNull();
    expect(doubtRows(line({ needParts: { doubtKg: 0 } }))).toEqual([]);
  });
});

describe('fan', () => {
  test('marks of the mass axis are round and at most six', () => {
    for (const most of [3, 9, 24, 55, 113, 260]) {
      const marks = massMarks(most);
      expect(marks.length).toBeGreaterThan(0);
      expect(marks.length).toBeLessThanOrEqual(6);
      expect(marks.every((mark) => mark <= most && /^[125]0*$/.test(String(marks[0])))).toBe(true);
    }
  });

  test('a band goes out along its upper edge and back along its lower one', () => {
    const fan = { days: ['2026-10-01', '2026-10-08'], p5: [1, 0], p25: [], p50: [], p75: [], p95: [3, 2] };
    const frame = { axis: axisOf('2026-10-01', '2026-10-08', { left: 0, right: 7 }), y: (kg: number) => 10 - kg };
    expect(bandPath(fan, fan.p5, fan.p95, frame)).toBe('M0.0 7.0L7.0 8.0L7.0 10.0L0.0 9.0Z');
  });
});

describe('sources', () => {
  const all = new Map<string, readonly string[]>();
  for (const name of ['winter', 'stores', 'weigh', 'phenology', 'envelope', 'matter', 'mites', 'provision', 'climate', 'places'])
    for (const row of rowsOf(readFileSync(new URL(`../../../data/sources/${name}.csv`, import.meta.url), 'utf8')).slice(1))
      all.set(row[0] ?? '', row);

  test('fields in quotes keep their commas, quotes and line ends (RFC 4180)', () => {
    expect(rowsOf('a,b\r\n"x, y","say ""z""\nagain"\r\n')).toEqual([
      ['a', 'b'],
      ['x, y', 'say "z"\nagain'],
    ]);
  });

  test('every figure shown names a source that is listed', () => {
    const used = sourceGroups.flatMap((group) => Object.values(group.rows).map((row) => row.source));
    expect(used.length).toBeGreaterThan(100);
    expect(used.filter((source) => !all.has(source))).toEqual([]);
  });

  test('every figure has a name and a unit in words: none is shown as it stands in the tables', () => {
    for (const group of sourceGroups)
      for (const [name, row] of Object.entries(group.rows)) {
        expect(figureName(figures, group.name, name), name).not.toBe(name);
        expect(unitName(figures, row.unit), row.unit).not.toMatch(/degC|^1$|_/);
      }
  });
});

describe('history', () => {
  const { records } = readJournal(readFileSync(new URL('../../../demo/journal.jsonl', import.meta.url), 'utf8'));
  const units = unitFormat('ca');
  const { history } = appEnglish.colony;

  test('holds every record of the colony, newest first, each once', () => {
    const holding = foldHolding(records, {});
    const colony = holding.colonies.get('colony-b4');
    if (colony === undefined) throw new Error('the demo has no colony-b4');
    const events = historyOf(colony, { holding, units, history });
    const told = new Set(events.map((event) => event.record));
    const own = records.filter(
      ({ body }) => ('colony' in body && body.colony === 'colony-b4') || ('hive' in body && body.hive === colony.hive && 'frontKg' in body),
    );
    expect(own.length).toBeGreaterThan(3);
    expect(own.filter((record) => !told.has(record.id)).map((record) => record.kind)).toEqual([]);
    expect(events.map((event) => event.date)).toEqual([...events.map((event) => event.date)].sort().reverse());
  });

  test('a struck record leaves it, and comes back when its strike is struck', () => {
    const weighing = records.find(({ kind, body }) => kind === 'weighing' && 'hive' in body && body.hive === 'hive-b4');
    if (weighing === undefined) throw new Error('the demo has no weighing of hive-b4');
    const strike = (id: string, target: string, seconds: string) => {
      const made = recordOf({
        ...weighing,
        id,
        kind: 'strike',
        seen: `17960000000${seconds}-00000-demo0001`,
        body: { target },
      });
      if (!made.ok) throw new Error(JSON.stringify(made.why));
      return made.record;
    };
    const has = (all: typeof records) => {
      const holding = foldHolding(all, {});
      const colony = holding.colonies.get('colony-b4');
      return colony !== undefined && historyOf(colony, { holding, units, history }).some((event) => event.record === weighing.id);
    };
    const first = strike('01990000-0000-7000-8000-000000000001', weighing.id, '01');
    const second = strike('01990000-0000-7000-8000-000000000002', first.id, '02');
    expect([has(records), has([...records, first]), has([...records, first, second])]).toEqual([true, false, true]);
  });
});
