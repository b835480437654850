import { type Key, uniformAt } from './keyed.ts';
import { normalQuantile } from './normal.ts';

/** Standard normal draws of one stream, stratified as `stratifiedUniforms`. */
export function stratifiedNormals(key: Key, members: number): Float64Array {
  return stratifiedUniforms(key, members).map(normalQuantile);
}

/**
 * Draws of one stream between 0 and 1, one from each of `members` classes of equal chance, in an order of the stream's own.
 *
 * Every stream has as many lucky as unlucky members, so that a forecast of a thousand cases does not lean with the seed. Streams of
 * different keys are independent of one another; the first few members of a stream are a random sample of it.
 *
 * members     1 to 1,000,000
 * returns     members
 * method      Latin hypercube: a keyed Fisher-Yates shuffle of the classes, a uniform place inside each
 * source      McKay, Beckman & Conover 1979, Technometrics 21:239 (from memory; the classes are tested)
 */
export function stratifiedUniforms(key: Key, members: number): Float64Array {
  if (!(Number.isInteger(members) && members >= 1 && members <= 1e6)) {
    throw new RangeError(`stratifiedUniforms: members is ${members}, must be 1 to 1,000,000`);
  }
  const classes = Int32Array.from({ length: members }, (_, i) => i);
  for (let i = members - 1; i > 0; i--) {
    const other = Math.floor(uniformAt(key, i, 1) * (i + 1));
    const kept = classes[i]!;
    classes[i] = classes[other]!;
    classes[other] = kept;
  }
  const draws = new Float64Array(members);
  for (let i = 0; i < members; i++) draws[i] = (classes[i]! + uniformAt(key, i, 0)) / members;
  return draws;
}
