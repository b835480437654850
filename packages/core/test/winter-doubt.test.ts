import { afterEach, describe, expect, test } from 'vitest';
import { winterParameters } from '../src/tables/parameters-winter.gen.ts';
import { epochDayOf } from '../src/units/index.ts';
import { climateForPlace } from '../src/weather/index.ts';
import { prepareColony, sharesOf } from '../src/winter/colony.ts';
import { doubtCauses } from '../src/winter/doubt.ts';
import { type DrawInput, drawColony, type LevelBelief } from '../src/winter/draws.ts';
import { type StoresDoubt, storesErrors } from '../src/winter/judge.ts';
import { makeRun } from '../src/winter/outcome.ts';
import { levelPrior } from '../src/winter/own-rule.ts';
import { drawWinter, winterValues } from '../src/winter/parameters.ts';
import { prepareSeason, type YardSeason } from '../src/winter/season.ts';
import { drawSeason } from '../src/winter/yard-season.ts';

const values = winterValues();
const members = 500;
const fromDay = epochDayOf('2026-10-01')!;
const climate = climateForPlace('The Pas MB');
if (!climate.ok) throw new Error('no climate');
const season = drawSeason(climate.value, { seed: 9, entity: 'yard', fromDay, days: 273, members, values });
const draw: DrawInput = { seed: 9, members, fromDay, bees: 14_000, beesSdFrac: 0.2, pins: {} };
const doubt: StoresDoubt = { tare: { key: 'b', sdKg: 2.5 }, scale: { key: 's', sdKg: 0.6 }, own: { sdKg: 1.2 }, beeKg: values.beeMassKg };

/** Variance of (error of the stores minus what is eaten until forage), from the public pieces alone. */
function marginVar(of: { season?: YardSeason; draw?: DrawInput; level?: LevelBelief; doubt?: StoresDoubt }): number {
  const d = of.draw ?? draw;
  const yard = of.season ?? season;
  const prepared = prepareColony({ season: yard, draw: d, level: of.level ?? levelPrior(), hiveWPerK: 1.2, values }, makeRun(yard));
  const errors = storesErrors(of.doubt ?? doubt, { seed: d.seed, beesOff: prepared.beesOff });
  const margin = Array.from(errors, (error, i) => error - prepared.factor[i]! * prepared.outcome.toForageKg[i]!);
  const mean = margin.reduce((sum, kg) => sum + kg, 0) / members;
  return margin.reduce((sum, kg) => sum + (kg - mean) ** 2, 0) / members;
}

const middle = (days: Int32Array) => Int32Array.from(days).sort()[members >> 1]!;
function meanWeather(): YardSeason {
  const tempC = Float64Array.from({ length: season.days }, (_, d) => {
    let sum = 0;
    for (let i = 0; i < members; i++) sum += season.tempC[i * season.days + d]!;
    return sum / members;
  });
  return prepareSeason({ ...season, tempC, flightIndex: new Int32Array(members).fill(middle(season.flightIndex)) }, values);
}
const drawnRows = () => Object.entries(winterParameters).filter(([, row]) => row.distribution !== 'fixed');

describe('the shares of doubt', () => {
  const shares = sharesOf(
    prepareColony({ season, draw, level: levelPrior(), hiveWPerK: 1.2, values }, makeRun(season)),
    doubt,
    makeRun(season),
  );

  test('add up to one, and every cause of this colony has one', () => {
    expect(Math.abs(doubtCauses.reduce((sum, cause) => sum + shares[cause], 0) - 1)).toBeLessThan(1e-12);
    for (const cause of doubtCauses) expect(shares[cause]).toBeGreaterThan(0.001);
  });

  test('are what freezing each cause from outside takes off the variance', () => {
    const all = marginVar({});
    const frozen = {
      weather: marginVar({ season: meanWeather() }),
      appetite: marginVar({
        draw: { ...draw, pins: Object.fromEntries(drawnRows().map(([name, row]) => [name, row.value])) },
        level: { median: levelPrior().median, logSd: 0 },
      }),
      bees: marginVar({ draw: { ...draw, beesSdFrac: 0 } }),
      tare: marginVar({ doubt: { ...doubt, tare: { key: 'b', sdKg: 0 } } }),
      scale: marginVar({ doubt: { ...doubt, scale: { key: 's', sdKg: 0 }, own: { sdKg: 0 } } }),
      forage: marginVar({ season: { ...season, forageIndex: new Int32Array(members).fill(middle(season.forageIndex)) } }),
    };
    const off = doubtCauses.map((cause) => Math.max(0, all - frozen[cause]));
    const sum = off.reduce((total, one) => total + one, 0);
    for (const [k, cause] of doubtCauses.entries()) expect(shares[cause]).toBeCloseTo(off[k]! / sum, 9);
  });
});

describe('parameters as data', () => {
  const row = winterParameters.broodScale as { distribution: string };
  afterEach(() => {
    row.distribution = 'lognormal';
  });

  test('a drawn value follows the distribution its row names, with low and high as its 5 % and 95 % bounds', () => {
    const { value, low, high } = winterParameters.broodScale;
    for (const distribution of ['normal', 'lognormal', 'uniform'] as const) {
      row.distribution = distribution;
      // a log-normal's and a normal's bounds lie evenly about the value; the row's are given to three digits
      const wide = distribution === 'uniform' ? 1e-9 : 0.11;
      expect(Math.abs(drawWinter('broodScale', 0.05) - low)).toBeLessThan(wide);
      expect(Math.abs(drawWinter('broodScale', 0.95) - high)).toBeLessThan(wide);
    }
    row.distribution = 'fixed';
    expect([drawWinter('broodScale', 0.05), drawWinter('broodScale', 0.95)]).toEqual([value, value]);
  });

  test('a row that becomes fixed is no longer drawn, and a pin holds every drawn row still', () => {
    const spreadOf = (of: DrawInput) => new Set(drawColony(of).broodScale).size;
    expect(spreadOf(draw)).toBe(members);
    row.distribution = 'fixed';
    expect(spreadOf(draw)).toBe(1);
    row.distribution = 'lognormal';
    expect(drawColony({ ...draw, pins: { broodScale: 1.3 } }).broodScale.every((one) => one === 1.3)).toBe(true);
    expect(drawnRows().length).toBeGreaterThanOrEqual(6);
  });
});
