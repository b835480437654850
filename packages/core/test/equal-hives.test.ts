import { describe, expect, test } from 'vitest';
import { keyOf, stratifiedNormals } from '../src/chance/index.ts';
import { foldHolding } from '../src/holding/index.ts';
import { type JournalRecord, recordOf } from '../src/journal/index.ts';
import { judgeEntry, linesOf, openPlan, preparePlan } from '../src/plan/index.ts';
import { epochDayOf } from '../src/units/index.ts';
import { climateForPlace } from '../src/weather/index.ts';
import { drawSeason, judgeColony, levelPrior, makeRun, prepareColony, winterValues } from '../src/winter/index.ts';

const setting = { today: '2026-09-18', seed: 1, members: 400 };
/** What a keeper's scale shows at best: half a pound. */
const HALF_POUND_KG = 0.23;

let made = 0;
function record(kind: string, body: Record<string, unknown>): JournalRecord {
  const n = String(++made).padStart(4, '0');
  const read = recordOf({
    id: `01a0c5e0-0000-7000-8000-00000000${n}`,
    yard: 'yard-1',
    kind,
    at: { date: '2026-09-15' },
    by: 'test',
    seen: `1789000000000-0${n}-testtest`,
    body,
  });
  if (!read.ok) throw new Error(JSON.stringify(read.why));
  return read.record;
}

/** A yard of hives that are alike in everything but their names. */
function yardOf(labels: readonly string[]): JournalRecord[] {
  const parts = [
    { part: 'deep-10-wood', count: 2 },
    { part: 'deep-frame-drawn', count: 20 },
    { part: 'solid-floor', count: 1 },
    { part: 'inner-cover', count: 1 },
  ];
  return [
    record('yard', { name: 'North', latDeg: 53.8, lonDeg: -101.2, elevM: 270 }),
    ...labels.flatMap((label) => [
      record('hive', { hive: `hive-${label}`, label }),
      record('build', { hive: `hive-${label}`, parts }),
      record('colony-begun', { colony: `colony-${label}`, hive: `hive-${label}`, how: 'purchase' }),
      record('look', { colony: `colony-${label}`, bees: { count: 9, unit: 'frames', counting: 'covered' } }),
      record('weighing', { hive: `hive-${label}`, frontKg: 24, rearKg: 26 }),
    ]),
  ];
}
const linesFor = (labels: readonly string[]) => {
  const holding = foldHolding(yardOf(labels), { until: setting.today });
  const prepared = preparePlan(holding, setting);
  if (!prepared.ok) throw new Error(JSON.stringify(prepared.error));
  return linesOf(prepared.value, holding, { shares: true });
};

describe('equal hives', () => {
  const lines = linesFor(['A1', 'A2', 'A3', 'A4', 'A5', 'A6']);

  test('have equal needs, chances, dates and shares of doubt', () => {
    expect(lines).toHaveLength(6);
    for (const line of lines) {
      expect(line.needKg).toBe(lines[0]!.needKg);
      expect(line.holdFrac).toBe(lines[0]!.holdFrac);
      expect(line.cases).toEqual(lines[0]!.cases);
      expect(line.doubtShares).toEqual(lines[0]!.doubtShares);
    }
  });

  test('keep every figure when colonies are added, taken away, renamed or come in another order', () => {
    const figures = (all: typeof lines) => ({ needKg: all[0]!.needKg, runOut: all[0]!.runOut, useKg: all[0]!.useKg, cases: all[0]!.cases });
    expect(figures(linesFor(['A1']))).toEqual(figures(lines));
    expect(figures(linesFor(['Z9', 'Q4', 'B2', 'A1', 'A0', 'C7', 'D8', 'E1']))).toEqual(figures(lines));
  });
});

describe('a need while a weight is typed', () => {
  const holding = foldHolding(yardOf(['A1', 'A2']), { until: setting.today });
  const open = openPlan(holding, setting);
  if (!open.ok) throw new Error(JSON.stringify(open.error));
  const need = (frontKg: number, rearKg: number) => {
    const answer = judgeEntry(open.value, { holding, hive: 'hive-A1', entry: { frontKg, rearKg } });
    if (!answer.ok) throw new Error(JSON.stringify(answer.error));
    return answer.value.line.needKg;
  };

  test('moves by less than half a pound between the lightest and the heaviest weight', () => {
    const needs = [20, 22, 24, 26, 28, 30].map((kg) => need(kg, kg + 1));
    // what is left is the doubt of the reading itself, which grows a little with the weight
    expect(Math.max(...needs) - Math.min(...needs)).toBeLessThan(HALF_POUND_KG);
  });

  test('does not hang on the stores at all when their error is the same', () => {
    const climate = climateForPlace('The Pas MB');
    if (!climate.ok) throw new Error('no climate');
    const fromDay = epochDayOf('2026-09-18')!;
    const values = winterValues();
    const season = drawSeason(climate.value, { seed: 1, entity: 'yard', fromDay, days: 280, members: 200, values });
    const draw = { seed: 1, members: 200, fromDay, bees: 15_000, beesSdFrac: 0.15, pins: {} };
    const prepared = prepareColony({ season, draw, level: levelPrior(), hiveWPerK: 1.2, values }, makeRun(season));
    const doubt = { tare: { key: 'b', sdKg: 2 }, scale: { key: 's', sdKg: 0.5 }, own: { sdKg: 1 }, beeKg: values.beeMassKg };
    const needs = [null, 5, 15, 25, 60].map((kg) => judgeColony(prepared, { kg, doubt }, 0.95).needKg);
    expect(new Set(needs).size).toBe(1);
  });
});

describe('stratified draws', () => {
  test('hold exactly one draw of every class of equal chance', () => {
    for (const members of [1, 20, 1000]) {
      const bounds = [...stratifiedNormals(keyOf(3, 'bees', 'x'), members)].sort((a, b) => a - b);
      expect(bounds).toHaveLength(members);
      // mean of n stratified normals errs by less than one class's width over n; 0.02 is a third of 1/sqrt(1000)
      if (members === 1000) expect(Math.abs(bounds.reduce((sum, z) => sum + z, 0) / members)).toBeLessThan(0.01);
      const halfway = bounds.filter((z) => z < 0).length;
      expect(Math.abs(halfway - members / 2)).toBeLessThanOrEqual(0.5);
    }
  });

  test('of different streams do not go together, and a stream says the same whatever else was drawn', () => {
    const a = stratifiedNormals(keyOf(3, 'bees', 'x'), 4000);
    const b = stratifiedNormals(keyOf(3, 'appetite', 'x'), 4000);
    const product = a.reduce((sum, z, i) => sum + z * b[i]!, 0) / 4000;
    // sd of a correlation of 4,000 independent pairs is 0.016: five of them
    expect(Math.abs(product)).toBeLessThan(0.08);
    expect(stratifiedNormals(keyOf(3, 'bees', 'x'), 4000)).toEqual(a);
    // no order in it: neighbours do not go together either
    expect(Math.abs(a.slice(1).reduce((sum, z, i) => sum + z * a[i]!, 0) / 4000)).toBeLessThan(0.08);
  });

  test('refuse a number of members that is none', () => {
    for (const members of [0, 1.5, Number.NaN, 2e6]) expect(() => stratifiedNormals(keyOf(1, 'a', 'b'), members)).toThrow(/members is/);
  });
});
