import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { foldHolding } from '../src/holding/index.ts';
import { readJournal } from '../src/journal/index.ts';
import { linesOf, preparePlan, type WhatIfAsked, whatIf } from '../src/plan/index.ts';
import { epochDayOf } from '../src/units/index.ts';
import { climateForPlace } from '../src/weather/index.ts';
import {
  drawSeason,
  judgeColony,
  levelPrior,
  makeRun,
  prepareColony,
  storesErrors,
  type WhatIfChanges,
  whatIfJudged,
  whatIfRun,
  winterValues,
} from '../src/winter/index.ts';

const MEMBERS = 400;
const values = winterValues();
const fromDay = epochDayOf('2026-09-18')!;
function prepared(bees = 15_000) {
  const climate = climateForPlace('The Pas MB');
  if (!climate.ok) throw new Error('no climate');
  const season = drawSeason(climate.value, { seed: 4, entity: 'yard', fromDay, days: 286, members: MEMBERS, values });
  const draw = { seed: 4, members: MEMBERS, fromDay, bees, beesSdFrac: 0.15, pins: {} };
  return prepareColony({ season, draw, level: { median: 1.1, logSd: 0.1 }, hiveWPerK: 1.2, values }, makeRun(season));
}
const doubt = { tare: { key: 'b', sdKg: 2 }, scale: { key: 's', sdKg: 0.5 }, own: { sdKg: 1 }, beeKg: values.beeMassKg };
const colony = prepared();
const ask = (changes: WhatIfChanges, members = MEMBERS) =>
  whatIfJudged(whatIfRun(colony, members, changes), {
    storesKg: 24,
    errors: storesErrors(doubt, { seed: 4, beesOff: colony.beesOff }),
    certaintyFrac: 0.95,
  });

describe('what if', () => {
  test('nothing changed on all members is the forecast itself', () => {
    const judged = judgeColony(colony, { kg: 24, doubt }, 0.95);
    expect(ask({})).toEqual({ needKg: judged.needKg, holdFrac: judged.holdFrac, runOut: judged.runOut });
  });

  test('more certainty, a later spring and earlier brood never need less; more insulation never needs more', () => {
    for (const members of [60, 200, MEMBERS]) {
      const now = ask({}, members).needKg;
      expect(ask({ certaintyFrac: 0.99 }, members).needKg).toBeGreaterThanOrEqual(now);
      expect(ask({ laterSpringDays: 14 }, members).needKg).toBeGreaterThan(now);
      expect(ask({ laterSpringDays: 28 }, members).needKg).toBeGreaterThan(ask({ laterSpringDays: 14 }, members).needKg);
      expect(ask({ conductanceTimes: 0.5 }, members).needKg).toBeLessThan(now);
      expect(ask({ conductanceTimes: 1.5 }, members).needKg).toBeGreaterThan(now);
      expect(ask({ earlierBroodDays: 14 }, members).needKg).toBeGreaterThan(now);
    }
  });

  test('an insulation, a certainty and a level asked for give what a forecast made with them gives', () => {
    const { season, draw } = colony;
    const other = prepareColony({ season, draw, level: levelPrior(), hiveWPerK: 0.6, values }, makeRun(season));
    const judged = judgeColony(other, { kg: 24, doubt }, 0.9);
    const asked = ask({ conductanceTimes: 0.5, certaintyFrac: 0.9, level: levelPrior() });
    expect(asked.needKg).toBeCloseTo(judged.needKg, 10);
    expect(asked.holdFrac).toBe(judged.holdFrac);
  });

  test('a change out of range is a caller’s mistake', () => {
    for (const changes of [{ certaintyFrac: 1 }, { laterSpringDays: -1 }, { conductanceTimes: 0 }, { earlierBroodDays: Number.NaN }]) {
      expect(() => ask(changes)).toThrow(/must be/);
    }
  });
});

describe('what if on a whole outlook', () => {
  const { records } = readJournal(readFileSync(new URL('../../../demo/journal.jsonl', import.meta.url), 'utf8'));
  const holding = foldHolding(records, { until: '2026-09-18' });
  const plan = preparePlan(holding, { today: '2026-09-18', seed: 1, members: 300 });
  if (!plan.ok) throw new Error(JSON.stringify(plan.error));
  const lines = linesOf(plan.value, holding, { shares: false });
  const all = (asked: WhatIfAsked) => whatIf(plan.value, { holding, lines }, asked);

  test('has a line for every colony; on all members and with nothing changed it is the outlook', () => {
    const same = all({ members: 300 });
    expect(same).toHaveLength(lines.length);
    for (const one of same) {
      const line = lines.find(({ colony: id }) => id === one.colony)!;
      expect(one).toMatchObject({
        needKg: line.needKg,
        holdFrac: line.holdFrac,
        runOut: line.runOut,
        needMoreKg: 0,
        aboveNeedKg: line.aboveNeedKg,
      });
    }
  });

  test('the own rule off is the forecast of a holding without one', () => {
    const { ownRule: _rule, ...settings } = holding.settings;
    const without = { ...holding, settings };
    const bare = preparePlan(without, { today: '2026-09-18', seed: 1, members: 300 });
    if (!bare.ok) throw new Error('no plan');
    const needs = new Map(linesOf(bare.value, without, { shares: false }).map((line) => [line.colony, line.needKg]));
    for (const one of all({ ownRule: false, members: 300 })) expect(one.needKg).toBeCloseTo(needs.get(one.colony)!, 10);
  });

  test('answers for all colonies while a finger moves', () => {
    all({ laterSpringDays: 3 });
    const times = [7, 14, 21].map((laterSpringDays) => {
      const start = performance.now();
      all({ laterSpringDays });
      return performance.now() - start;
    });
    // a third of a second for the whole demo holding on a machine that does other things too; 30 to 60 ms alone
    expect(Math.min(...times)).toBeLessThan(350);
  });
});
