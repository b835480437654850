/**
 * The world's own dice: a sequence drawn in order, nothing keyed, nothing shared with the product's random numbers.
 *
 * Generator: sfc32 of the PractRand suite (public domain), seeded from a text by FNV-1a.
 */
export interface Dice {
  /** Uniform in (0, 1). */
  uniform(): number;
  /** Normal with mean 0 and sd 1. */
  normal(): number;
  /** Student's t with `freedom` degrees, scaled to sd 1; its tails are heavier than the normal's. `freedom` above 2. */
  heavy(freedom: number): number;
  /** Log-normal with median 1 and `sd` of the logarithm. */
  factor(sd: number): number;
  /** Exponential with mean 1. */
  waiting(): number;
}

export function diceOf(text: string): Dice {
  const word = (salt: string) => fnv(`${salt}|${text}`);
  let [a, b, c, count] = [word('a'), word('b'), word('c'), 1];
  const uniform = () => {
    const sum = (a + b + count++) | 0;
    a = b ^ (b >>> 9);
    b = (c + (c << 3)) | 0;
    c = ((c << 21) | (c >>> 11)) + sum;
    return ((sum >>> 0) + 0.5) / 4294967296;
  };
  for (let i = 0; i < 16; i++) uniform();
  const normal = () => Math.sqrt(-2 * Math.log(uniform())) * Math.cos(2 * Math.PI * uniform());
  const waiting = () => -Math.log(uniform());
  const heavy = (freedom: number) => {
    let chi = 0;
    for (let i = 0; i < freedom; i++) chi += normal() ** 2;
    return (normal() / Math.sqrt(chi / freedom)) * Math.sqrt((freedom - 2) / freedom);
  };
  return { uniform, normal, heavy, waiting, factor: (sd) => Math.exp(sd * normal()) };
}

function fnv(text: string): number {
  let hash = 0x811c9dc5;
  for (let i = 0; i < text.length; i++) hash = Math.imul(hash ^ text.charCodeAt(i), 0x01000193);
  return hash | 0;
}
