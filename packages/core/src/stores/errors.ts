import type { ErrorParts } from './types.ts';

/**
 * One standard deviation of each independent cause, with its sign in the stores estimated: a hive heavier than believed means
 * less stores by weight. `comb` is the mass of an empty drawn comb, which enters the weight through every frame of the hive and
 * a weighed capped frame through its own: the one error a weighing and a count have in common.
 */
export type Cause = 'scale' | 'tare' | 'comb' | 'hive' | 'bees' | 'pollen' | 'lot' | 'frames' | 'onHive' | 'water' | 'snow';
export type Errors = Readonly<Partial<Record<Cause, number>>>;

export interface Estimate {
  readonly kg: number;
  readonly errors: Errors;
}

const CAUSES: readonly Cause[] = ['scale', 'tare', 'comb', 'hive', 'bees', 'pollen', 'lot', 'frames', 'onHive', 'water', 'snow'];

function covariance(a: Errors, b: Errors): number {
  return CAUSES.reduce((sum, cause) => sum + (a[cause] ?? 0) * (b[cause] ?? 0), 0);
}

export function sdOf(errors: Errors): number {
  return Math.sqrt(covariance(errors, errors));
}

/** Standard deviation of a normal quantity from its 5 % and 95 % bounds. */
export function sdFromBounds({ low, high }: { readonly low: number; readonly high: number }): number {
  return (high - low) / (2 * 1.6448536269514722);
}

/**
 * Two estimates of one quantity joined with the weights of least variance.
 *
 * equation    w = (vb - cab) / (va + vb - 2 cab), joined = w a + (1 - w) b; with cab = 0 it is the inverse-variance mean
 * source      Gauss-Markov theorem; Aitken 1935 for errors in common
 */
export function joined(a: Estimate, b: Estimate): Estimate {
  const [va, vb, cab] = [covariance(a.errors, a.errors), covariance(b.errors, b.errors), covariance(a.errors, b.errors)];
  const spread = va + vb - 2 * cab;
  const w = spread > 0 ? (vb - cab) / spread : 0.5;
  const errors: Partial<Record<Cause, number>> = {};
  for (const cause of CAUSES) errors[cause] = w * (a.errors[cause] ?? 0) + (1 - w) * (b.errors[cause] ?? 0);
  return { kg: w * a.kg + (1 - w) * b.kg, errors };
}

/** The causes as the answer shows them: the mass of empty combs is part of the build's. */
export function errorParts(errors: Errors): ErrorParts {
  const size = (cause: Cause) => Math.abs(errors[cause] ?? 0);
  return {
    scaleKg: size('scale'),
    tareKg: Math.hypot(size('tare'), size('comb')),
    hiveKg: size('hive'),
    beesKg: size('bees'),
    pollenKg: size('pollen'),
    lotKg: size('lot'),
    framesKg: size('frames'),
    onHiveKg: size('onHive'),
    waterKg: size('water'),
    snowKg: size('snow'),
  };
}
