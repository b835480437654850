import type { LevelBelief } from './draws.ts';
import { winterParameter } from './parameters.ts';
import { shareAbove, sorted } from './quantiles.ts';

/** What the keeper has done so far, and how it went. */
export interface OwnRule {
  /** Stores the rule leaves in a hive [kg]. */
  readonly storesKg: number;
  readonly colonies: number;
  readonly starved: number;
}

/** The level before any evidence: the parameter row. */
export function levelPrior(): LevelBelief {
  const { value, low, high } = winterParameter('level');
  return { median: value, logSd: Math.log(high / low) / (2 * 1.6448536269514722) };
}

/**
 * The keeper's record as evidence on how much their colonies eat against the model.
 *
 * A level at which more of their colonies should have starved than did becomes less likely, and the other way round. Colonies of one
 * winter share its weather, so that only one in `coloniesPerWinter` counts as a witness. Starving has other causes than hunger by
 * appetite, so no level is taken to starve fewer than 1 in 200 or to spare more than 199.
 *
 * wantedKg   honey eaten until forage plus the reserve, by member, at level 1, own appetite inside [kg]; reserveKg its fixed part
 * returns    the level after the evidence; equal to the prior when there were no colonies
 * method     Bayes on a grid of 121 levels within 3 prior sd, then mean and sd of the logarithm
 */
export function levelAfterRecord(rule: OwnRule, use: { usedKg: Float64Array; reserveKg: number; coloniesPerWinter: number }): LevelBelief {
  const prior = levelPrior();
  if (!(rule.colonies >= rule.starved && rule.starved >= 0))
    throw new RangeError(`levelAfterRecord: starved is ${rule.starved} of ${rule.colonies} colonies, must be 0 to colonies`);
  if (rule.colonies === 0) return prior;
  const inOrder = sorted(use.usedKg);
  let weight = 0;
  let sum = 0;
  let squares = 0;
  const logs: { readonly log: number; readonly logWeight: number }[] = [];
  for (let k = -60; k <= 60; k++) {
    const z = k / 20;
    const log = Math.log(prior.median) + prior.logSd * z;
    const starve = Math.min(0.995, Math.max(0.005, shareAbove(inOrder, (rule.storesKg - use.reserveKg) / Math.exp(log))));
    const survived = rule.colonies - rule.starved;
    logs.push({
      log,
      logWeight: (-z * z) / 2 + (rule.starved * Math.log(starve) + survived * Math.log(1 - starve)) / use.coloniesPerWinter,
    });
  }
  const top = Math.max(...logs.map((l) => l.logWeight));
  for (const { log, logWeight } of logs) {
    const w = Math.exp(logWeight - top);
    weight += w;
    sum += w * log;
    squares += w * log * log;
  }
  const mean = sum / weight;
  return { median: Math.exp(mean), logSd: Math.sqrt(Math.max(0, squares / weight - mean * mean)) };
}
