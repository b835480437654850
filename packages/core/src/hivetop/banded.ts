/** Entries of a row: two below the diagonal, the diagonal, two above. */
export const BAND = 5;
const HALF = 2;

/**
 * Solves A x = b where every node is tied to at most two neighbours on each side.
 *
 * a         n x 5 by rows, entry k of row i stands in column i + k - 2; overwritten
 * b         n, overwritten with x
 * equation  Gauss elimination without pivoting: rows here are diagonally dominant
 */
export function solveBanded(n: number, a: Float64Array, b: Float64Array): void {
  for (let i = 0; i < n; i++) {
    const pivot = a[i * BAND + HALF]!;
    for (let d = 1; d <= HALF && i + d < n; d++) {
      const row = (i + d) * BAND;
      const factor = a[row + HALF - d]! / pivot;
      if (factor === 0) continue;
      for (let k = 0; k <= HALF; k++) a[row + HALF - d + k]! -= factor * a[i * BAND + HALF + k]!;
      b[i + d]! -= factor * b[i]!;
    }
  }
  for (let i = n - 1; i >= 0; i--) {
    let sum = b[i]!;
    for (let d = 1; d <= HALF && i + d < n; d++) sum -= a[i * BAND + HALF + d]! * b[i + d]!;
    b[i] = sum / a[i * BAND + HALF]!;
  }
}

/** Ties nodes i and j (at most two apart) by a conductance. */
export function tie(a: Float64Array, i: number, j: number, conductance: number): void {
  a[i * BAND + HALF]! += conductance;
  a[j * BAND + HALF]! += conductance;
  a[i * BAND + HALF + j - i]! -= conductance;
  a[j * BAND + HALF + i - j]! -= conductance;
}

/** Ties node i to a known value. */
export function tieToKnown(a: Float64Array, b: Float64Array, i: number, conductance: number, value: number): void {
  a[i * BAND + HALF]! += conductance;
  b[i]! += conductance * value;
}

/** What flows into node i brings the value of node j along: a stream of that strength, out of i at its own value. */
export function stream(a: Float64Array, i: number, from: number, strength: number): void {
  a[i * BAND + HALF]! += strength;
  a[i * BAND + HALF + from - i]! -= strength;
}
