import { hiveConductance } from '../matter/index.ts';
import { bad, good, type Result } from '../result/index.ts';
import { judgeColony, prepareColony, sharesOf } from './colony.ts';
import { type DrawInput, drawAppetite, drawColony, type LevelBelief } from './draws.ts';
import type { StoresDoubt } from './judge.ts';
import { makeRun, outcomeOf } from './outcome.ts';
import { readOutlook } from './outlook-input.ts';
import type { OutlookAnswer, OutlookInput } from './outlook-types.ts';
import { levelAfterRecord, levelPrior } from './own-rule.ts';
import { type WinterValues, winterValues } from './parameters.ts';
import { ruleStoresKg } from './rule-stores.ts';
import type { YardSeason } from './season.ts';
import { seasonFor } from './yard-season.ts';

/**
 * One colony's winter: what it eats, when its stores end, what it needs and where the doubt comes from.
 *
 * Use is what would be eaten if stores had no end. A colony holds when its stores last, less the reserve out of reach, until the
 * first dependable forage (or `to`, when forage comes later). The need holds every error and the reserve once, and no further factor.
 *
 * input     see OutlookInput
 * returns   see OutlookAnswer; the same input gives the same answer
 * errors    BadInput naming the field
 * valid     500 to 100,000 bees; below a daily mean of about -10 °C no single hive has been weighed: `extrapolating`
 */
export function outlook(input: OutlookInput): Result<OutlookAnswer> {
  const read = readOutlook(input);
  if (!read.ok) return read;
  const { fromDay, days, broodFromDay, forageDay, pins } = read.value;
  const values = winterValues(pins);
  const members = input.members ?? 1000;
  const seed = input.seed ?? 1;
  const hive = hiveOf(input, values);
  if (!hive.ok) return hive;
  const yard = seasonFor(input, { fromDay, days, members, seed, forageDay, values });
  if (!yard.ok) return yard;
  const draw: DrawInput = {
    seed,
    members,
    fromDay,
    bees: input.bees,
    beesSdFrac: input.beesSdFrac ?? values.beesSdFrac,
    pins,
    ...(broodFromDay === undefined ? {} : { broodFromDay }),
  };
  const run = makeRun(yard.value.season);
  const ruleKg = input.ownRule === undefined ? null : ruleStoresKg(input.ownRule.grossKg, input, values);
  const { season, climate } = yard.value;
  const record = input.ownRule === undefined || ruleKg === null ? null : { ...input.ownRule, storesKg: ruleKg };
  const level = record === null ? levelPrior() : levelAfter(record, { season, draw, hiveWPerK: hive.value, values });
  const prepared = prepareColony({ season, draw, level, hiveWPerK: hive.value, values }, run);
  const doubt = doubtOfStores(input);
  const {
    lossCurve: _curve,
    cases: _cases,
    ...judged
  } = judgeColony(prepared, { kg: input.storesKg ?? null, doubt }, input.certaintyFrac ?? 0.95);
  return good({
    ...prepared.usage,
    ...judged,
    doubtShares: sharesOf(prepared, doubt, run),
    climate: climate === null ? null : { name: climate.name, placeErrorSdC: climate.placeErrorSdC, notes: climate.notes },
    ownRule:
      ruleKg === null
        ? null
        : { storesKg: ruleKg, verdict: ruleVerdict(input, ruleKg), levelMedian: level.median, levelLogSd: level.logSd },
    members,
    seed,
  });
}

function hiveOf(input: OutlookInput, values: WinterValues): Result<number> {
  if (input.hive?.build !== undefined) {
    const conductance = hiveConductance(input.hive.build, input.hive);
    return conductance.ok ? good(conductance.value.wPerK) : bad(conductance.error);
  }
  return good(input.hive?.conductanceWPerK ?? values.bareHiveWPerK);
}

/** The keeper's level after their record, judged on a colony like this one. */
export function levelAfter(
  record: { readonly storesKg: number; readonly colonies: number; readonly starved: number },
  of: { readonly season: YardSeason; readonly draw: DrawInput; readonly hiveWPerK: number; readonly values: WinterValues },
): LevelBelief {
  const outcome = outcomeOf(of.season, drawColony(of.draw), of, makeRun(of.season));
  const own = drawAppetite(of.draw, { median: 1, logSd: 0 });
  const usedKg = own.map((k, i) => k * outcome.toForageKg[i]!);
  return levelAfterRecord(record, { usedKg, reserveKg: of.values.reserveKg, coloniesPerWinter: of.values.ruleColoniesPerWinter });
}

function ruleVerdict(input: OutlookInput, ruleKg: number): 'enough' | 'short' | 'unknown' {
  if (input.storesKg === undefined) return 'unknown';
  return input.storesKg >= ruleKg ? 'enough' : 'short';
}

/** Where only the sd is known, tare and measuring are taken to err alike: half of the variance each. */
function doubtOfStores(input: OutlookInput): StoresDoubt {
  const half = (input.storesSdKg ?? 0) * Math.SQRT1_2;
  const tareKg = input.storesSdParts?.tareKg ?? half;
  const scaleKg = input.storesSdParts?.scaleKg ?? half;
  return { tare: { key: 'build', sdKg: tareKg }, scale: { key: 'scale', sdKg: scaleKg }, own: { sdKg: 0 }, beeKg: 0 };
}
