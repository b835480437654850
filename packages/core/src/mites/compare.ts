import { bad, good, inRange, type Result } from '../result/index.ts';
import { mitesParameters } from '../tables/parameters-mites.gen.ts';

export interface TellApartInput {
  /** Two levels to tell apart [mites per bee]. */
  readonly lowFrac: number;
  readonly highFrac: number;
  /** Chance wanted to call the high level high. */
  readonly chanceFrac?: number | undefined;
  /** Chance allowed to call the low level high. */
  readonly wrongFrac?: number | undefined;
  /** Bees washed a colony, where a yard is asked for. */
  readonly beesPerColony?: number | undefined;
}

export interface TellApart {
  /** Bees of one colony. */
  readonly bees: number;
  /** Mites from which on it counts as the high level. */
  readonly mitesFrom: number;
  readonly chanceFrac: number;
  readonly wrongFrac: number;
  /** For the mean of a yard whose colonies differ as usual: colonies to wash. */
  readonly colonies: number;
  readonly beesPerColony: number;
}

export const TELL_LEVEL = { low: 0.0005, high: 0.5, unit: 'mites/bee' } as const;
const TELL_CHANCE = { low: 0.5, high: 0.999, unit: '' } as const;
const TELL_WRONG = { low: 0.001, high: 0.5, unit: '' } as const;
const TELL_BEES = { low: 50, high: 2000, unit: 'bees' } as const;
const USUAL_BEES = 300;
const MOST_BEES = 200_000;

/** Probability of at most k of n. Summed term by term from the logarithm of the first, so that it holds for large n. */
export function binomialAtMost(k: number, n: number, p: number): number {
  if (k < 0) return 0;
  if (k >= n) return 1;
  let log = n * Math.log1p(-p);
  const step = Math.log(p) - Math.log1p(-p);
  let sum = Math.exp(log);
  for (let i = 0; i < k; i++) {
    log += Math.log((n - i) / (i + 1)) + step;
    sum += Math.exp(log);
  }
  return Math.min(1, sum);
}

/**
 * How many bees, or how many colonies, have to be washed to tell two levels apart.
 *
 * equation    smallest n for which a count c exists with P(X >= c | n, low) <= wrong and P(X >= c | n, high) >= chance, exact binomial;
 *             for a yard that n times 1 + (m - 1)/(s + 1) for m bees a colony whose levels differ with concentration s, over m
 * source      the binomial distribution; spread between colonies [own-judgement-mites]
 * checked     mites-statistics.test.ts: tails against a second library
 */
export function tellApart(input: TellApartInput): Result<TellApart> {
  const low = inRange('lowFrac', input.lowFrac, TELL_LEVEL);
  if (!low.ok) return low;
  const high = inRange('highFrac', input.highFrac, TELL_LEVEL);
  if (!high.ok) return high;
  if (!(low.value < high.value)) return bad({ kind: 'conflict', fields: ['lowFrac', 'highFrac'], why: 'low-below-high' });
  const chance = inRange('chanceFrac', input.chanceFrac ?? mitesParameters.tellChanceFrac.value, TELL_CHANCE);
  if (!chance.ok) return chance;
  const wrong = inRange('wrongFrac', input.wrongFrac ?? mitesParameters.tellWrongFrac.value, TELL_WRONG);
  if (!wrong.ok) return wrong;
  const perColony = inRange('beesPerColony', input.beesPerColony ?? USUAL_BEES, TELL_BEES);
  if (!perColony.ok) return perColony;
  const found = fewestBees({ low: low.value, high: high.value, chance: chance.value, wrong: wrong.value });
  if (found === null) return bad({ kind: 'implausible', field: 'highFrac', value: high.value, unit: 'mites/bee', why: 'levels-too-close' });
  const crowding = 1 + (perColony.value - 1) / (mitesParameters.yardConcentration.value + 1);
  return good({ ...found, colonies: Math.max(2, Math.ceil((found.bees * crowding) / perColony.value)), beesPerColony: perColony.value });
}

/** For each count the smallest sample that reaches the chance; the first whose wrong call is rare enough. */
function fewestBees(of: { low: number; high: number; chance: number; wrong: number }) {
  let bees = 1;
  for (let mitesFrom = 1; ; mitesFrom++) {
    const reaches = (n: number) => 1 - binomialAtMost(mitesFrom - 1, n, of.high) >= of.chance;
    let far = bees;
    while (!reaches(far)) {
      far *= 2;
      if (far > MOST_BEES) return null;
    }
    let near = bees;
    while (near < far) {
      const middle = (near + far) >> 1;
      if (reaches(middle)) far = middle;
      else near = middle + 1;
    }
    bees = near;
    const wrongFrac = 1 - binomialAtMost(mitesFrom - 1, bees, of.low);
    if (wrongFrac <= of.wrong) return { bees, mitesFrom, wrongFrac, chanceFrac: 1 - binomialAtMost(mitesFrom - 1, bees, of.high) };
  }
}
