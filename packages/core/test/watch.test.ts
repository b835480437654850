import { describe, expect, it } from 'vitest';
import { keyOf, normalAt, uniformAt } from '../src/chance/index.ts';
import { epochDayOf } from '../src/units/index.ts';
import { casesOf } from '../src/watch/cases.ts';
import { type AutumnBelief, type Observation, updateColony } from '../src/watch/index.ts';
import { weightsOf } from '../src/watch/weighted.ts';
import { climateForPlace } from '../src/weather/index.ts';
import { drawSeason, levelPrior, makeRun, type PreparedColony, prepareColony, winterValues } from '../src/winter/index.ts';

const FROM = epochDayOf('2026-10-01')!;
const DAYS = epochDayOf('2027-06-30')! - FROM + 1;
const WEIGHED = ['2027-01-15', '2027-03-01', '2027-04-01'].map((day) => epochDayOf(day)!);
const TODAY = WEIGHED[2]!;
const values = winterValues();
const level = levelPrior();

function prepared(seed: number, members: number): PreparedColony {
  const climate = climateForPlace('The Pas MB');
  if (!climate.ok) throw new Error('no climate');
  const season = drawSeason(climate.value, { seed, entity: 'yard', fromDay: FROM, days: DAYS, members, values });
  const draw = { seed, colony: 'c', members, fromDay: FROM, bees: 20_000, beesSdFrac: 0.15, pins: {} };
  return prepareColony({ season, draw, level, hiveWPerK: 1.2, values }, makeRun(season));
}

const believed = prepared(1, 500);
const ONES = new Float64Array(500).fill(1);
/** Winters the forecast never saw: other weather, other bees. Its cases are the truths. */
const others = prepared(77, 40);
const doubt = (tareSdKg: number) => ({
  tare: { key: 'build', sdKg: tareSdKg },
  scale: { key: 'scale', sdKg: 0.3 },
  own: { key: 'own', sdKg: 0.9 },
  beeKg: 0,
});

/** What truth number `i` had eaten by a day [kg], with appetite `factor`. */
function eatenKg(i: number, day: number, factor: number): number {
  const { knots, cumulativeKg } = others.outcome;
  const weeks = (day - FROM) / 7;
  const low = Math.min(knots - 1, Math.floor(weeks));
  const before = low === 0 ? 0 : cumulativeKg[i * knots + low - 1]!;
  return factor * (before + (weeks - low) * (cumulativeKg[i * knots + low]! - before));
}

interface Truth {
  readonly observations: Observation[];
  readonly toForageKg: number;
  readonly byTodayKg: number;
}

const READ_SD_KG = 0.9;

function truth(i: number, factor: number, wild = 0): Truth {
  const key = keyOf(5, 'truth', 'watch');
  const observations = WEIGHED.map((day, k) => {
    const iceKg = 1.5 * uniformAt(key, i, k);
    const reading = READ_SD_KG * normalAt(key, i, k) + (k === 1 ? wild : 0);
    return { kind: 'weight', day, changeKg: -eatenKg(i, day, factor) + iceKg + reading, sdKg: READ_SD_KG } as const;
  });
  return { observations, toForageKg: factor * others.outcome.toForageKg[i]!, byTodayKg: eatenKg(i, TODAY, factor) };
}

/**
 * Root mean square error of what is said to be eaten until forage [kg]: before, after, of two learners anybody could do by hand, and
 * with the colony's appetite known: what spring and weather leave to nobody's knowledge.
 */
function errorsOf(make: (i: number) => { truth: Truth; factor?: number; belief: AutumnBelief; observations?: Observation[] }) {
  const sums = { before: 0, after: 0, lastReading: 0, sameRate: 0, known: 0 };
  const n = others.outcome.members;
  const usual = mean(believed.outcome.toForageKg, believed.factor);
  for (let i = 0; i < n; i++) {
    const { truth: is, belief, observations, factor = 1 } = make(i);
    const said = updateColony(belief, { observations: observations ?? is.observations, today: TODAY, certaintyFrac: 0.95 });
    const cases = casesOf(belief);
    let after = 0;
    said.weights.forEach((w, m) => {
      after += w * cases.toForageKg[m]!;
    });
    const last = (observations ?? is.observations).at(-1) as Extract<Observation, { kind: 'weight' }>;
    const usualByToday = mean(
      Float64Array.from({ length: believed.outcome.members }, (_, m) => believed.outcome.cumulativeKg[m * believed.outcome.knots + 25]!),
      believed.factor,
    );
    const days = mean(believed.season.forageIndex as unknown as Float64Array, ONES);
    const square = (kg: number) => (kg - is.toForageKg) ** 2 / n;
    sums.before += square(usual);
    sums.after += square(after);
    sums.known += square(factor * mean(believed.outcome.toForageKg, ONES));
    sums.lastReading += square(-last.changeKg + usual - usualByToday);
    sums.sameRate += square((-last.changeKg / (TODAY - FROM)) * days);
  }
  return Object.fromEntries(Object.entries(sums).map(([name, sum]) => [name, Math.sqrt(sum)])) as Record<keyof typeof sums, number>;
}

function mean(a: ArrayLike<number>, b: ArrayLike<number>): number {
  let sum = 0;
  for (let i = 0; i < a.length; i++) sum += (a[i]! * b[i]!) / a.length;
  return sum;
}

const belief = (storesKg = 22, tareSdKg = 1): AutumnBelief => ({ prepared: believed, storesKg, doubt: doubt(tareSdKg) });
/** Level and appetite together: the sd of the logarithm of what a colony eats against the model. */
const LOG_SD = Math.sqrt(
  believed.factor.reduce(
    (sum, f) => sum + (Math.log(f) - believed.factor.reduce((s, g) => s + Math.log(g), 0) / believed.factor.length) ** 2,
    0,
  ) / believed.factor.length,
);

describe('a winter update', () => {
  it('takes most of what colonies 1.5 prior sd off cost, and beats both learners by hand', () => {
    const both = { before: 0, after: 0, lastReading: 0, sameRate: 0, known: 0 };
    for (const z of [1.5, -1.5]) {
      const factor = Math.exp(z * LOG_SD);
      const e = errorsOf((i) => ({ truth: truth(i, factor), belief: belief(), factor }));
      for (const name of Object.keys(both) as (keyof typeof both)[]) both[name] += e[name] ** 2;
    }
    // three readings of 0.9 kg against some 10 kg eaten leave about a tenth of the appetite's error; half is asked
    expect(both.after - both.known).toBeLessThan(0.5 * (both.before - both.known));
    expect(both.after).toBeLessThan(both.lastReading);
    expect(both.after).toBeLessThan(both.sameRate);
  });

  it('is no worse than before where the colony is as thought', () => {
    const e = errorsOf((i) => ({ truth: truth(i, 1), belief: belief() }));
    // a twentieth is what 40 winters leave to chance
    expect(e.after).toBeLessThan(1.05 * e.before);
    expect(e.after).toBeLessThan(e.sameRate);
  });

  it('does not mind a tare that is wrong by 3 kg: readings speak of the change', () => {
    const right = errorsOf((i) => ({ truth: truth(i, Math.exp(1.5 * LOG_SD)), belief: belief(22) }));
    const wrong = errorsOf((i) => ({ truth: truth(i, Math.exp(1.5 * LOG_SD)), belief: belief(25, 2.5) }));
    expect(Math.abs(wrong.after - right.after)).toBeLessThan(0.3);
  });

  it('is not wrecked by one wild reading of 12 kg, and calls it surprising', () => {
    const calm = errorsOf((i) => ({ truth: truth(i, 1), belief: belief() }));
    const wild = errorsOf((i) => ({ truth: truth(i, 1, 12), belief: belief() }));
    expect(wild.after).toBeLessThan(calm.after + 0.5 * READ_SD_KG);
    const said = updateColony(belief(), { observations: truth(0, 1, 12).observations, today: TODAY, certaintyFrac: 0.95 });
    expect(said.surprises.map(({ day, which }) => [day, which])).toContainEqual([WEIGHED[1], 'heavier']);
  });

  it('with the readings of another hive is worse than with its own, and no worse than without by more than that hive differs', () => {
    const n = others.outcome.members;
    const factorOf = (i: number) => Math.exp((i % 2 === 0 ? 1 : -1) * LOG_SD);
    const own = errorsOf((i) => ({ truth: truth(i, factorOf(i)), belief: belief() }));
    const swapped = errorsOf((i) => ({
      truth: truth(i, factorOf(i)),
      belief: belief(),
      observations: truth((i + 1) % n, factorOf(i + 1)).observations,
    }));
    expect(own.after).toBeLessThan(own.before);
    expect(swapped.after).toBeGreaterThan(own.after);
    expect(swapped.after).toBeLessThan(2.2 * own.before);
  });

  it('believes two readings that agree on what nobody foresaw, and says that they surprise', () => {
    const factor = Math.exp(4 * LOG_SD);
    const { observations, byTodayKg } = truth(5, factor);
    const said = updateColony(belief(35), { observations, today: TODAY, certaintyFrac: 0.95 });
    expect(said.surprises.length).toBeGreaterThan(0);
    // within two readings' errors, and the ice that may lie between
    expect(Math.abs(said.eatenKg.p50 - byTodayKg)).toBeLessThan(3);
  });

  it('without anything seen changes nothing', () => {
    const said = updateColony(belief(), { observations: [], today: TODAY, certaintyFrac: 0.95 });
    const even = weightsOf(casesOf(belief()).logPrior);
    expect(said.weights).toEqual(even);
    expect(said.trustFrac).toBe(1);
    expect(said.appetite.after.median).toBeCloseTo(said.appetite.before.median, 12);
  });

  it('heard alive holds longer than unheard, silent shorter; a tap alone never makes it certain', () => {
    const on = (kind: 'alive' | 'silent') =>
      updateColony(belief(9, 2.5), { observations: [{ kind, day: TODAY }], today: TODAY, certaintyFrac: 0.95 });
    const none = updateColony(belief(9, 2.5), { observations: [], today: TODAY, certaintyFrac: 0.95 });
    expect(on('alive').holdFrac).toBeGreaterThan(none.holdFrac);
    expect(on('silent').holdFrac).toBeLessThan(none.holdFrac);
    expect(on('silent').holdFrac).toBeGreaterThan(0);
  });

  it('weighing the same day again with the same reading makes it surer, never otherwise', () => {
    const one = truth(3, Math.exp(LOG_SD)).observations.slice(-1);
    const once = updateColony(belief(), { observations: one, today: TODAY, certaintyFrac: 0.95 });
    const twice = updateColony(belief(), { observations: [...one, ...one], today: TODAY, certaintyFrac: 0.95 });
    expect(twice.appetite.after.logSd).toBeLessThan(once.appetite.after.logSd);
    expect(once.appetite.after.logSd).toBeLessThan(once.appetite.before.logSd);
  });
});
