import { learnParameters } from '../tables/parameters-learn.gen.ts';
import { solveWithPrior } from './solve.ts';

/** A log-normal factor: its median and the sd of its logarithm. */
export interface Factor {
  readonly median: number;
  readonly logSd: number;
}

/** What one colony's winter said about its appetite, on its own: without any prior. */
export interface Evidence {
  readonly colony: string;
  /** Names the winter by its first year. */
  readonly winter: number;
  readonly logFactor: number;
  readonly logSd: number;
}

export interface AppetiteLearnt {
  /** The keeper's colonies against the model, a year like any other. */
  readonly level: { readonly before: Factor; readonly after: Factor };
  /** For a coming winter: the same with the spread between winters inside. */
  readonly nextWinter: Factor;
  readonly colonies: readonly { readonly colony: string; readonly after: Factor; readonly winters: number }[];
  readonly winters: readonly { readonly winter: number; readonly after: Factor; readonly colonies: number }[];
}

/**
 * Appetite by partial pooling: log factor = level + colony + winter + error.
 *
 * What all colonies of one winter have in common goes partly to that winter, so that one odd year does not swing the level, and what one
 * colony shows in several winters stays with it. Without evidence everything stands as before.
 *
 * prior      the level before any evidence
 * evidence   a colony may have several winters, a winter several colonies
 * validity   sd of the logarithms small against 1; winters not alike in their weather are told apart by the forecast, not here
 */
export function learnAppetite(prior: Factor, evidence: readonly Evidence[]): AppetiteLearnt {
  const p = learnParameters;
  const colonies = [...new Set(evidence.map(({ colony }) => colony))];
  const winters = [...new Set(evidence.map(({ winter }) => winter))].sort((a, b) => a - b);
  const colonyAt = new Map(colonies.map((colony, i) => [colony, 1 + i]));
  const winterAt = new Map(winters.map((winter, i) => [winter, 1 + colonies.length + i]));
  const middle = Math.log(prior.median);
  const solved = solveWithPrior(
    [prior.logSd, ...colonies.map(() => p.colonyLogSd.value), ...winters.map(() => p.yearLogSd.value)],
    evidence.map(({ colony, winter, logFactor, logSd }) => ({
      of: [0, colonyAt.get(colony)!, winterAt.get(winter)!],
      seen: logFactor - middle,
      sd: logSd,
    })),
  );
  const factor = (at: number, from = 0): Factor => ({ median: Math.exp(from + solved.mean[at]!), logSd: solved.sd[at]! });
  const level = factor(0, middle);
  const count = (of: (one: Evidence) => boolean) => evidence.filter(of).length;
  return {
    level: { before: prior, after: level },
    nextWinter: evidence.length === 0 ? prior : { median: level.median, logSd: Math.hypot(level.logSd, p.yearLogSd.value) },
    colonies: colonies.map((colony) => ({
      colony,
      after: factor(colonyAt.get(colony)!),
      winters: count((one) => one.colony === colony),
    })),
    winters: winters.map((winter) => ({ winter, after: factor(winterAt.get(winter)!), colonies: count((one) => one.winter === winter) })),
  };
}

/**
 * A single factor, such as the yield of sugar, from ratios seen with their errors: a normal prior on the logarithm, nothing pooled.
 *
 * seen   each ratio above 0, and the sd of its logarithm
 */
export function learnFactor(prior: Factor, seen: readonly { readonly ratio: number; readonly logSd: number }[]): Factor {
  if (seen.length === 0) return prior;
  const middle = Math.log(prior.median);
  const { mean, sd } = solveWithPrior(
    [prior.logSd],
    seen.map(({ ratio, logSd }) => ({ of: [0], seen: Math.log(ratio) - middle, sd: logSd })),
  );
  return { median: Math.exp(middle + mean[0]!), logSd: sd[0]! };
}
