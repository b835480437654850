import type { Spread } from '../winter/index.ts';

/** Values with weights that add up to 1, in order of the values. */
export class Weighted {
  private readonly order: Uint32Array;
  private readonly values: Float64Array;
  private readonly weights: Float64Array;

  constructor(values: Float64Array, weights: Float64Array) {
    this.values = values;
    this.weights = weights;
    this.order = Uint32Array.from(values, (_, i) => i).sort((a, b) => values[a]! - values[b]! || a - b);
  }

  /** The smallest value that at least a share `frac` of the weight does not exceed. */
  quantile(frac: number): number {
    let sum = 0;
    for (const i of this.order) {
      sum += this.weights[i]!;
      if (sum >= frac - 1e-12) return this.values[i]!;
    }
    return this.values[this.order.at(-1)!]!;
  }

  spread(): Spread {
    return { p5: this.quantile(0.05), p50: this.quantile(0.5), p95: this.quantile(0.95) };
  }

  mean(): number {
    let sum = 0;
    for (let i = 0; i < this.values.length; i++) sum += this.weights[i]! * this.values[i]!;
    return sum;
  }

  sd(): number {
    const mean = this.mean();
    let sum = 0;
    for (let i = 0; i < this.values.length; i++) sum += this.weights[i]! * (this.values[i]! - mean) ** 2;
    return Math.sqrt(sum);
  }
}

/** Cases of equal weight that would say as much as these: 1 / sum of squares. */
export function effectiveOf(weights: Float64Array): number {
  let squares = 0;
  for (const w of weights) squares += w * w;
  return 1 / squares;
}

/** Weights from logarithms, adding up to 1. */
export function weightsOf(logs: Float64Array): Float64Array {
  let top = Number.NEGATIVE_INFINITY;
  for (const log of logs) top = Math.max(top, log);
  const weights = Float64Array.from(logs, (log) => Math.exp(log - top));
  let sum = 0;
  for (const w of weights) sum += w;
  return weights.map((w) => w / sum);
}
