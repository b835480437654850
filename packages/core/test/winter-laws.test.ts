import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { clusterHeat, dailyUseKg } from '../src/winter/cluster.ts';
import { drawAppetite, drawColony } from '../src/winter/draws.ts';
import { judge, storesErrors } from '../src/winter/judge.ts';
import { runColony } from '../src/winter/kernel.ts';
import { makeRun, outcomeOf, runOutIndex } from '../src/winter/outcome.ts';
import { levelAfterRecord, levelPrior } from '../src/winter/own-rule.ts';
import { winterValues } from '../src/winter/parameters.ts';
import { prepareSeason } from '../src/winter/season.ts';

const values = winterValues();
const bees = fc.integer({ min: 2000, max: 60000 });
const temp = fc.double({ min: -45, max: 20, noNaN: true });
const conductance = fc.double({ min: 0.2, max: 4, noNaN: true });

describe('a day of a cluster', () => {
  test('more insulation never costs more', () => {
    fc.assert(
      fc.property(bees, temp, conductance, (n, t, g) => {
        const more = dailyUseKg(n, t, { hiveWPerK: g, values });
        const less = dailyUseKg(n, t, { hiveWPerK: g * 0.8, values });
        // rounding only
        expect(less).toBeLessThanOrEqual(more * (1 + 1e-12));
      }),
      { numRuns: 2000 },
    );
  });

  test('use per bee falls with size, and faster below about 18,000 bees', () => {
    for (const t of [-30, -10, 3]) {
      const per = (n: number) => dailyUseKg(n, t, { hiveWPerK: 1.5, values }) / n;
      const exponent = (n: number) => Math.log(per(n * 1.1) / per(n)) / Math.log(1.1);
      for (let n = 3000; n < 50000; n *= 1.2) expect(exponent(n)).toBeLessThan(0);
      expect(exponent(6000)).toBeLessThan(exponent(30000));
    }
  });

  test('least use lies between -3 and +10 °C in bare wood, wrapped and packed hives', () => {
    for (const hiveWPerK of [1.5, 0.6, 0.35]) {
      let least = { t: 0, use: Number.POSITIVE_INFINITY };
      for (let t = -45; t <= 20; t += 0.1) {
        const use = dailyUseKg(16000, t, { hiveWPerK, values });
        if (use < least.use) least = { t, use };
      }
      expect(least.t).toBeGreaterThan(-3);
      expect(least.t).toBeLessThan(10);
    }
  });

  test('smooth in temperature: no tenth of a degree changes the slope by more than the curve can', () => {
    const use = (t: number) => dailyUseKg(16000, t, { hiveWPerK: 0.6, values });
    for (let t = -45; t < 20; t += 0.1) {
      const bend = (use(t + 0.1) - 2 * use(t) + use(t - 0.1)) / 0.01;
      // the sharpest bend the smoothing widths allow: slope change of 2 W/K over about 1 K
      expect(Math.abs(bend)).toBeLessThan(0.02);
    }
  });

  test('energy: the heat of the cluster leaves through the hive and through the cluster alike', () => {
    fc.assert(
      fc.property(bees, temp, conductance, (n, t, g) => {
        const { heatW, aroundC } = clusterHeat(n * values.beeMassKg, t, { hiveWPerK: g, values });
        expect(Math.abs(heatW - g * (aroundC - t))).toBeLessThan(1e-9 * Math.max(1, heatW));
      }),
    );
  });
});

const days = 240;
function season(members: number, tempAt: (member: number, day: number) => number, forage = 230) {
  const tempC = new Float64Array(members * days);
  for (let i = 0; i < members; i++) for (let d = 0; d < days; d++) tempC[i * days + d] = tempAt(i, d);
  return prepareSeason(
    {
      fromDay: 20712,
      days,
      members,
      tempC,
      flightIndex: new Int32Array(members).fill(190),
      forageIndex: new Int32Array(members).fill(forage),
    },
    values,
  );
}
const cold = (_: number, d: number) => -8 + 14 * Math.cos((2 * Math.PI * (d + 40)) / 365);

describe('a winter of a colony', () => {
  const input = { seed: 1, members: 3, fromDay: 20712, bees: 16000, beesSdFrac: 0, pins: {} };

  test('the kernel eats on its first day what the one-day model says (no brood yet)', () => {
    const yard = season(3, cold);
    const run = makeRun(yard);
    runColony(yard, drawColony(input), { hiveWPerK: 0.9, values }, run);
    // the same arithmetic in another order: rounding only
    expect(run.useKg[0]! / dailyUseKg(16000, cold(0, 0), { hiveWPerK: 0.9, values })).toBeCloseTo(1, 12);
  });

  test('without brood bees fall as (1 - rate)^days, and brood brings some back', () => {
    const yard = season(1, cold);
    const pins = { winterDeathFracPerDay: 0.004, springDeathFracPerDay: 0.004 };
    const run = makeRun(yard);
    runColony(yard, drawColony({ ...input, members: 1, broodFromDay: null, pins }), { hiveWPerK: 1, values }, run);
    expect(run.beesAtEnd[0]! / (16000 * 0.996 ** days)).toBeCloseTo(1, 12);
    const without = run.beesAtEnd[0]!;
    runColony(yard, drawColony({ ...input, members: 1, broodFromDay: input.fromDay + 120, pins }), { hiveWPerK: 1, values }, run);
    expect(run.beesAtEnd[0]!).toBeGreaterThan(without + 1000);
  });

  test('the kept curve gives back what was eaten, and run-out falls as stores fall', () => {
    const yard = season(5, (i, d) => cold(i, d) - i);
    const run = makeRun(yard);
    const outcome = outcomeOf(yard, drawColony({ ...input, members: 5 }), { hiveWPerK: 1.5, values }, run);
    for (let i = 0; i < 5; i++) {
      let sum = 0;
      for (let d = 0; d < 100; d++) sum += run.useKg[i * days + d]!;
      // inside a week the kept curve is a straight line: less than a day's use apart
      expect(Math.abs(runOutIndex(outcome, i, { usableKg: sum, factor: 1 }) - 100)).toBeLessThan(0.5);
      let last = 0;
      for (let kg = 0; kg < 40; kg += 0.5) {
        const end = runOutIndex(outcome, i, { usableKg: kg, factor: 1.1 });
        expect(end).toBeGreaterThanOrEqual(last);
        last = end;
      }
    }
    expect(runOutIndex(outcome, 0, { usableKg: 1000, factor: 1 })).toBe(Number.POSITIVE_INFINITY);
    expect(runOutIndex(outcome, 0, { usableKg: -1, factor: 1 })).toBe(0);
  });
});

describe('need and the chance to hold', () => {
  const members = 400;
  const yard = season(members, cold);
  const draw = { seed: 7, members, fromDay: 20712, bees: 15000, beesSdFrac: 0.15, pins: {} };
  const colony = drawColony(draw);
  const outcome = outcomeOf(yard, colony, { hiveWPerK: 1.5, values }, makeRun(yard));
  const factor = drawAppetite(draw, levelPrior());
  const doubt = { tare: { key: 'b', sdKg: 2 }, scale: { key: 's', sdKg: 0.5 }, own: { sdKg: 1 }, beeKg: values.beeMassKg };
  const errors = storesErrors(doubt, { seed: 7, beesOff: colony.bees.map((n) => n - 15000) });
  const ask = (storesKg: number | null, certaintyFrac = 0.95) => judge({ outcome, factor, errors, storesKg, reserveKg: 2, certaintyFrac });

  test('a colony that holds exactly its need holds in the asked share of the members, and with a hair less it does not', () => {
    for (const certainty of [0.5, 0.8, 0.95, 0.99]) {
      const { needKg } = ask(null, certainty);
      expect(ask(needKg, certainty).holdFrac!).toBeGreaterThanOrEqual(certainty);
      expect(ask(needKg - 1e-6, certainty).holdFrac!).toBeLessThan(certainty);
    }
  });

  test('the parts of the need add up to it, and the loss curve starts at 0 and rises', () => {
    const verdict = ask(20);
    const { broodlessKg, broodKg, reserveKg, doubtKg } = verdict.needParts;
    expect(Math.abs(broodlessKg + broodKg + reserveKg + doubtKg - verdict.needKg)).toBeLessThan(1e-9);
    expect(verdict.lossCurve[0]).toEqual({ shortKg: 0, lossFrac: 0 });
    for (let k = 1; k < verdict.lossCurve.length; k++)
      expect(verdict.lossCurve[k]!.lossFrac).toBeGreaterThanOrEqual(verdict.lossCurve[k - 1]!.lossFrac);
  });

  test('unknown stores have a need but no chance and no date', () => {
    const verdict = ask(null);
    expect(verdict.holdFrac).toBeNull();
    expect(verdict.runOutIndex).toBeNull();
    expect(verdict.needKg).toBeGreaterThan(5);
  });

  test("no record leaves the keeper's level alone; deaths raise it, survivors lower it, and more of them more", () => {
    const prior = levelPrior();
    const used = outcome.toForageKg;
    const level = (colonies: number, starved: number) =>
      levelAfterRecord({ storesKg: 16, colonies, starved }, { usedKg: used, reserveKg: 2, coloniesPerWinter: 3 });
    expect(level(0, 0)).toEqual(prior);
    expect(level(30, 0).median).toBeLessThan(prior.median);
    expect(level(30, 25).median).toBeGreaterThan(level(30, 10).median);
    expect(level(60, 0).median).toBeLessThanOrEqual(level(30, 0).median);
    expect(level(30, 10).logSd).toBeLessThan(prior.logSd);
  });
});
