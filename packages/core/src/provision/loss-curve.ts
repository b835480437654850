import { normalQuantile } from '../chance/index.ts';
import { provisionParameters } from '../tables/parameters-provision.gen.ts';
import type { LossPoint } from './input.ts';

/** Chances of loss at which the curve is broken into straight pieces. The largest error of a chord is below 0.03, between the two highest (tested). */
const BREAKS = [0.1, 0.25, 0.75, 0.95, 0.99] as const;

/** A piece of the curve: from 0 short upward, in order. `concave` where it is flatter than the one before: it may not be used first. */
export interface LossPiece {
  readonly widthKg: number;
  readonly perKg: number;
  readonly flatter: boolean;
}

/**
 * Chance that a shortage adds to a colony's chance of being lost, as points of a broken line.
 *
 * Use it where the winter model gives no curve. What is not short of need counts nothing: the chance the need itself
 * leaves (one in twenty) is taken off.
 *
 * needKg          need, made so that the chance to hold is `certaintyFrac` [kg]
 * hasSdKg         error of what the colony holds, already inside the need [kg]
 * certaintyFrac   0.5 to 0.999
 * returns         points (shortKg, lossFrac) from (0, 0); flat beyond the last
 * equation        loss(q) = Phi(q / s - z) - (1 - certainty), z = Phi^-1(certainty); s2 = hasSd2 + (f u)2, need = u + z s,
 *                 f = useSpreadFrac, u the mean use
 * source          the definition of need; f [norrstrom-2021]
 * checked         provision-loss.test.ts
 */
export function lossCurve(needKg: number, hasSdKg: number, certaintyFrac: number): readonly LossPoint[] {
  if (!(certaintyFrac >= 0.5 && certaintyFrac <= 0.999))
    throw new RangeError(`lossCurve: certaintyFrac is ${certaintyFrac}, must be 0.5 to 0.999`);
  const z = normalQuantile(certaintyFrac);
  const spreadKg = spreadOfNeed(needKg, hasSdKg, z);
  const base = 1 - certaintyFrac;
  const points: LossPoint[] = [{ shortKg: 0, lossFrac: 0 }];
  for (const share of BREAKS) {
    if (share > base + 0.02) points.push({ shortKg: spreadKg * (z + normalQuantile(share)), lossFrac: share - base });
  }
  return points;
}

/** Standard deviation of use and reading together that makes `needKg` the need [kg]. */
function spreadOfNeed(needKg: number, hasSdKg: number, z: number): number {
  const f = provisionParameters.useSpreadFrac.value;
  if (z === 0) return Math.max(Math.hypot(hasSdKg, f * needKg), 0.05);
  const a = 1 - (z * f) ** 2;
  const c = needKg ** 2 - (z * hasSdKg) ** 2;
  const root = Math.sqrt(Math.max(0, needKg ** 2 - a * c));
  // mean use u solves (need - u)2 = z2 (hasSd2 + f2 u2); the smaller root is the one below the need
  const meanUseKg = Math.max(0, Math.abs(a) < 1e-9 ? c / (2 * needKg) : (needKg - root) / a);
  return Math.max((needKg - meanUseKg) / z, 0.05);
}

/** Loss at a shortage [kg] on a broken line; 0 where nothing is short, flat beyond the last point. */
export function lossAt(points: readonly LossPoint[], shortKg: number): number {
  if (shortKg <= 0) return 0;
  let before: LossPoint = { shortKg: 0, lossFrac: 0 };
  for (const point of points) {
    if (shortKg <= point.shortKg && point.shortKg > before.shortKg) {
      return before.lossFrac + ((point.lossFrac - before.lossFrac) * (shortKg - before.shortKg)) / (point.shortKg - before.shortKg);
    }
    before = point;
  }
  return before.lossFrac;
}

/** The curve as pieces up to `highKg`, the last one flat where the points end before. */
export function lossPieces(points: readonly LossPoint[], highKg: number): readonly LossPiece[] {
  const pieces: LossPiece[] = [];
  let atKg = 0;
  while (atKg < highKg - 1e-9) {
    const next = points.find((p) => p.shortKg > atKg + 1e-9);
    const toKg = Math.min(highKg, next?.shortKg ?? highKg);
    const perKg = (lossAt(points, toKg) - lossAt(points, atKg)) / (toKg - atKg);
    pieces.push({ widthKg: toKg - atKg, perKg, flatter: pieces.length > 0 && perKg < pieces[pieces.length - 1]!.perKg - 1e-12 });
    atKg = toKg;
  }
  return pieces;
}
