import { normalQuantile } from './normal.ts';

/** Two 32-bit words that name a stream of random numbers: who draws what, under which seed. */
export interface Key {
  readonly a: number;
  readonly b: number;
}

/**
 * The key of one stream. The same (seed, stream, entity) always gives the same numbers, whatever else is drawn,
 * in whatever order: adding or renaming a colony cannot change another one's figures.
 *
 * seed     any safe integer
 * stream   what is drawn, for example 'appetite'
 * entity   whose, for example a colony's id
 */
export function keyOf(seed: number, stream: string, entity: string): Key {
  if (!Number.isSafeInteger(seed)) throw new RangeError(`keyOf: seed is ${seed}, must be a whole number within 2^53`);
  let a = 0x811c9dc5 ^ (seed | 0);
  let b = 0x9e3779b9 ^ Math.floor(seed / 4294967296);
  const text = `${stream}\u0000${entity}`;
  for (let i = 0; i < text.length; i++) {
    const c = text.charCodeAt(i);
    a = Math.imul(a ^ c, 0x01000193);
    b = Math.imul(b ^ (a >>> 15) ^ c, 0x85ebca6b);
  }
  return { a: a >>> 0, b: (b ^ Math.imul(a, 0xc2b2ae35)) >>> 0 };
}

/**
 * One number of a stream, uniform in the open interval (0, 1), 53 bits.
 *
 * member, index   whole numbers, 0 to 2^32 - 1
 * source          the pcg4d hash of Jarzynski & Olano 2020, J. Computer Graphics Techniques 9(3), listing 6 (from memory; its uniformity is tested, not assumed)
 */
export function uniformAt(key: Key, member: number, index: number): number {
  let x = (Math.imul(key.a, 1664525) + 1013904223) | 0;
  let y = (Math.imul(key.b, 1664525) + 1013904223) | 0;
  let z = (Math.imul(member, 1664525) + 1013904223) | 0;
  let w = (Math.imul(index, 1664525) + 1013904223) | 0;
  x = (x + Math.imul(y, w)) | 0;
  y = (y + Math.imul(z, x)) | 0;
  z = (z + Math.imul(x, y)) | 0;
  w = (w + Math.imul(y, z)) | 0;
  x ^= x >>> 16;
  y ^= y >>> 16;
  z ^= z >>> 16;
  w ^= w >>> 16;
  x = (x + Math.imul(y, w)) | 0;
  y = (y + Math.imul(z, x)) | 0;
  return ((x >>> 5) * 67108864 + (y >>> 6) + 0.5) / 9007199254740992;
}

/** One number of a stream, standard normal. Arguments as for `uniformAt`. */
export function normalAt(key: Key, member: number, index: number): number {
  return normalQuantile(uniformAt(key, member, index));
}
