/// <reference path="./jstat.d.ts" />
import jstat from 'jstat';
import { normalQuantile } from '../chance/index.ts';
import { mitesParameters } from '../tables/parameters-mites.gen.ts';
import { addBeta, emptyWeights, gridOfWeights, type LevelGrid } from './level-grid.ts';

export interface PooledCount {
  readonly id: string;
  readonly mites: number;
  /** Bees, for a sugar roll times the share of mites it finds. */
  readonly bees: number;
}

export interface PooledYard {
  /** Level of each washed colony, drawn towards the others as far as they agree. */
  readonly washed: ReadonlyMap<string, LevelGrid>;
  /** Level of a colony of the yard that was not washed. */
  readonly notWashed: LevelGrid;
  /** Mean level of the yard's colonies. */
  readonly mean: LevelGrid;
}

export interface PoolPrior {
  /** Density of the mean level, up to a factor, as a logarithm. Left out: Jeffreys' beta(1/2, 1/2). */
  readonly logMean?: ((mean: number) => number) | undefined;
  /** Density of the concentration over its logarithm, up to a factor, as a logarithm. Left out: log-normal from the table. */
  readonly logConcentration?: ((concentration: number) => number) | undefined;
}

const MEANS = 160;
const CONCENTRATIONS = 28;
const [LEAST_CONCENTRATION, MOST_CONCENTRATION] = [1, 5000];
/** Points with less than this share of the best one's weight are left out. */
const NEGLIGIBLE = 1e-4;

/**
 * Levels of all colonies of a yard from the washes of some: partial pooling.
 *
 * Use it for washes of about the same days under the same treatment. A yard of one washed colony says little about the
 * others, and that is what comes out: a wide belief.
 *
 * counts      whole mites of whole bees (or bees found by a sugar roll), one per colony
 * returns     beliefs of the washed colonies, of one not washed, and of the mean
 * equation    k ~ beta-binomial(n; m s, (1 - m) s); priors on mean m and concentration s summed over a grid; given m and s a washed
 *             colony is beta(m s + k, (1 - m) s + n - k), one not washed beta(m s, (1 - m) s)
 * throws      RangeError where there is no count, or one with more mites than bees
 * source      [pool-binary-trials]; the spread between colonies of one yard is a judgement until it is learned
 * checked     checks/mites.ts; mites-statistics.test.ts: laws and a second library
 */
export function poolYard(counts: readonly PooledCount[], prior: PoolPrior = {}): PooledYard {
  if (counts.length === 0) throw new RangeError('poolYard: counts is empty, must hold at least one wash');
  for (const { id, mites, bees } of counts)
    if (!(mites >= 0 && bees >= mites && bees > 0)) throw new RangeError(`poolYard: ${id} has ${mites} mites on ${bees} bees`);
  const logMean = prior.logMean ?? ((m: number) => -0.5 * Math.log(m) - 0.5 * Math.log1p(-m));
  const logConcentration = prior.logConcentration ?? defaultConcentration();
  const points = hyperPoints().map(({ m, s, logWidth }) => ({
    m,
    s,
    log: logWidth + logMean(m) + logConcentration(s) + counts.reduce((sum, count) => sum + logLikelihood(count, { m, s }), 0),
  }));
  const best = Math.max(...points.map(({ log }) => log));
  const kept = points.flatMap(({ m, s, log }) => (log - best < Math.log(NEGLIGIBLE) ? [] : [{ m, s, weight: Math.exp(log - best) }]));
  const mixed = (shape: (m: number, s: number) => { a: number; b: number }) => {
    const weights = emptyWeights();
    for (const { m, s, weight } of kept) addBeta(weights, weight, shape(m, s));
    return gridOfWeights(weights);
  };
  // The mean is known only at its points: each is spread a little, as wide as the points lie apart.
  const spread = (m: number) => (m * (1 - m)) / ((m ** (2 / 3) * 3) / MEANS) ** 2;
  return {
    washed: new Map(
      counts.map(({ id, mites, bees }) => [id, mixed((m, s) => ({ a: m * s + mites, b: (1 - m) * s + bees - mites }))] as const),
    ),
    notWashed: mixed((m, s) => ({ a: m * s, b: (1 - m) * s })),
    mean: mixed((m) => ({ a: m * spread(m), b: (1 - m) * spread(m) })),
  };
}

function hyperPoints(): { m: number; s: number; logWidth: number }[] {
  const step = Math.log(MOST_CONCENTRATION / LEAST_CONCENTRATION) / (CONCENTRATIONS - 1);
  const end = (i: number) => (i / MEANS) ** 3;
  return Array.from({ length: MEANS }, (_, i) => i).flatMap((i) =>
    Array.from({ length: CONCENTRATIONS }, (__, k) => ({
      m: ((i + 0.5) / MEANS) ** 3,
      s: LEAST_CONCENTRATION * Math.exp(k * step),
      logWidth: Math.log(end(i + 1) - end(i)),
    })),
  );
}

/** The table's concentration as a log-normal between its 5 % and 95 % bounds. */
function defaultConcentration(): (s: number) => number {
  const { value, low, high } = mitesParameters.yardConcentration;
  const logSd = Math.log(high / low) / (2 * normalQuantile(0.95));
  return (s) => -0.5 * (Math.log(s / value) / logSd) ** 2;
}

function logLikelihood({ mites, bees }: PooledCount, { m, s }: { m: number; s: number }): number {
  const [a, b] = [m * s, (1 - m) * s];
  const ln = jstat.gammaln;
  return ln(a + mites) - ln(a) + ln(b + bees - mites) - ln(b) - ln(s + bees) + ln(s);
}
