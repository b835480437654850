/** Solution of a linear least-squares problem with a prior, and the sd of each unknown. */
export interface Solved {
  readonly mean: Float64Array;
  readonly sd: Float64Array;
}

/**
 * Unknowns with independent normal priors of mean 0, seen through sums of them with normal errors.
 *
 * priorSd   sd of each unknown before anything is seen, above 0
 * rows      each: which unknowns add up, what was seen, its error
 * method    normal equations, Cholesky; hundreds of unknowns at most
 * source    Bayesian linear regression: Gelman et al., Bayesian Data Analysis, ch. 14
 */
export function solveWithPrior(
  priorSd: readonly number[],
  rows: readonly { readonly of: readonly number[]; readonly seen: number; readonly sd: number }[],
): Solved {
  const n = priorSd.length;
  const matrix = priorSd.map((sd, i) => Float64Array.from({ length: n }, (_, j) => (i === j ? 1 / (sd * sd) : 0)));
  const right = new Float64Array(n);
  for (const { of, seen, sd } of rows) {
    const precision = 1 / (sd * sd);
    for (const i of of) {
      right[i]! += precision * seen;
      for (const j of of) matrix[i]![j]! += precision;
    }
  }
  const lower = cholesky(matrix);
  const unit = (i: number) => Float64Array.from({ length: n }, (_, j) => (i === j ? 1 : 0));
  return {
    mean: backward(lower, forward(lower, right)),
    sd: Float64Array.from({ length: n }, (_, i) => Math.sqrt(backward(lower, forward(lower, unit(i)))[i]!)),
  };
}

function cholesky(matrix: readonly Float64Array[]): Float64Array[] {
  const lower = matrix.map((row) => new Float64Array(row.length));
  for (let i = 0; i < matrix.length; i++) {
    for (let j = 0; j <= i; j++) {
      let sum = matrix[i]![j]!;
      for (let k = 0; k < j; k++) sum -= lower[i]![k]! * lower[j]![k]!;
      lower[i]![j] = i === j ? Math.sqrt(sum) : sum / lower[j]![j]!;
    }
  }
  return lower;
}

function forward(lower: readonly Float64Array[], right: Float64Array): Float64Array {
  const out = new Float64Array(right.length);
  for (let i = 0; i < right.length; i++) {
    let sum = right[i]!;
    for (let k = 0; k < i; k++) sum -= lower[i]![k]! * out[k]!;
    out[i] = sum / lower[i]![i]!;
  }
  return out;
}

function backward(lower: readonly Float64Array[], right: Float64Array): Float64Array {
  const out = new Float64Array(right.length);
  for (let i = right.length - 1; i >= 0; i--) {
    let sum = right[i]!;
    for (let k = i + 1; k < right.length; k++) sum -= lower[k]![i]! * out[k]!;
    out[i] = sum / lower[i]![i]!;
  }
  return out;
}
