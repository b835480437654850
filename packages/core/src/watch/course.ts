import { isoDateOf } from '../units/index.ts';
import { KNOT_DAYS, type Spread } from '../winter/index.ts';
import { casesOf } from './cases.ts';
import type { AutumnBelief } from './types.ts';
import { Weighted, weightsOf } from './weighted.ts';

/** The course of a hive on the scale: what was said in autumn, and what is said now, at the end of every week [kg]. */
export interface ScaleCourse {
  /** ISO dates. */
  readonly days: readonly string[];
  readonly said: readonly Spread[];
  readonly now: readonly Spread[];
  /** Twenty days of equal chance on which the stores end, earliest first; null: later than the run. */
  readonly cases: readonly (string | null)[];
  /** How many of the twenty end before their forage. */
  readonly chancesIn20: number;
}

const CASES = 20;

/**
 * Weight on the scale week by week, both as it was said in autumn and with every case counted as `weights` say.
 *
 * grossKg   weight in autumn, with what has been put in since [kg]
 */
export function courseOf(
  belief: AutumnBelief,
  of: { readonly weights: Float64Array; readonly grossKg: number; readonly holdFrac: number },
): ScaleCourse {
  const { season } = belief.prepared;
  const cases = casesOf(belief);
  const asSaid = weightsOf(cases.logPrior);
  const days: string[] = [];
  const said: Spread[] = [];
  const now: Spread[] = [];
  for (let index = 0; index < season.days; index += KNOT_DAYS) {
    const kg = new Float64Array(cases.count);
    for (let i = 0; i < cases.count; i++) kg[i] = of.grossKg - Math.min(cases.heldKg[i]!, cases.eatenKg(i, index));
    days.push(isoDateOf(season.fromDay + index));
    said.push(new Weighted(kg, asSaid).spread());
    now.push(new Weighted(kg, of.weights).spread());
  }
  const ends = new Weighted(cases.endIndex, of.weights);
  return {
    days,
    said,
    now,
    cases: Array.from({ length: CASES }, (_, k) => {
      const index = ends.quantile((k + 0.5) / CASES);
      return Number.isFinite(index) ? isoDateOf(season.fromDay + Math.floor(index)) : null;
    }),
    chancesIn20: Math.round(CASES * (1 - of.holdFrac)),
  };
}
