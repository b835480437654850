/// <reference path="./jstat.d.ts" />
import jstat from 'jstat';

/** A belief about the level of mites (mites per bee) as points and the chance up to each of them. */
export interface LevelGrid {
  /** Upper ends of the cells, rising to 1. */
  readonly upTo: Float64Array;
  /** Chance of a level up to there, rising to 1. */
  readonly chance: Float64Array;
}

/** Points spread as a cube, so that half of them lie below one mite on eight bees. */
const CELLS = 600;
const cellMiddle = (i: number) => ((i + 0.5) / CELLS) ** 3;
const cellEnd = (i: number) => ((i + 1) / CELLS) ** 3;

export const GRID_LOG = Float64Array.from({ length: CELLS }, (_, i) => Math.log(cellMiddle(i)));
export const GRID_LOG_REST = Float64Array.from({ length: CELLS }, (_, i) => Math.log1p(-cellMiddle(i)));
const GRID_ENDS = Float64Array.from({ length: CELLS }, (_, i) => cellEnd(i));
/** Logarithm of the width of each cell. */
const GRID_LOG_WIDTH = Float64Array.from({ length: CELLS }, (_, i) => Math.log(cellEnd(i) - (i === 0 ? 0 : cellEnd(i - 1))));

/** A belief from the weights of its cells. */
export function gridOfWeights(weights: Float64Array): LevelGrid {
  const chance = new Float64Array(CELLS);
  let sum = 0;
  for (let i = 0; i < CELLS; i++) {
    sum += weights[i]!;
    chance[i] = sum;
  }
  for (let i = 0; i < CELLS; i++) chance[i]! /= sum;
  return { upTo: GRID_ENDS, chance };
}

/** Adds the weights of a beta distribution to `into`, times `weight`. */
export function addBeta(into: Float64Array, weight: number, shape: { readonly a: number; readonly b: number }): void {
  const { a, b } = shape;
  const log = Math.log(weight) + jstat.gammaln(a + b) - jstat.gammaln(a) - jstat.gammaln(b);
  for (let i = 0; i < CELLS; i++) {
    const term = log + (a - 1) * GRID_LOG[i]! + (b - 1) * GRID_LOG_REST[i]! + GRID_LOG_WIDTH[i]!;
    if (term > -45) into[i]! += Math.exp(term);
  }
}

export function emptyWeights(): Float64Array {
  return new Float64Array(CELLS);
}

/** The level of one beta distribution. Mites found k on n bees under Jeffreys' prior: a = k + 1/2, b = n - k + 1/2. */
export function betaGrid(shape: { readonly a: number; readonly b: number }): LevelGrid {
  const weights = emptyWeights();
  addBeta(weights, 1, shape);
  return gridOfWeights(weights);
}

/** Chance that the level is above `level`. */
export function chanceAbove(grid: LevelGrid, level: number): number {
  const i = firstAtLeast(grid.upTo, level);
  const [x0, c0] = i === 0 ? [0, 0] : [grid.upTo[i - 1]!, grid.chance[i - 1]!];
  const share = (level - x0) / (grid.upTo[i]! - x0);
  return 1 - (c0 + share * (grid.chance[i]! - c0));
}

/** The level that a share `u` of the belief stays below, straight between the points. */
export function levelAt(grid: LevelGrid, u: number): number {
  const i = firstAtLeast(grid.chance, u);
  const [x0, c0] = i === 0 ? [0, 0] : [grid.upTo[i - 1]!, grid.chance[i - 1]!];
  const span = grid.chance[i]! - c0;
  return span > 0 ? x0 + ((u - c0) / span) * (grid.upTo[i]! - x0) : grid.upTo[i]!;
}

export function meanLevel(grid: LevelGrid): number {
  let sum = 0;
  for (let i = 0; i < CELLS; i++) sum += (grid.chance[i]! - (i === 0 ? 0 : grid.chance[i - 1]!)) * cellMiddle(i);
  return sum;
}

function firstAtLeast(sorted: Float64Array, value: number): number {
  let [low, high] = [0, sorted.length - 1];
  while (low < high) {
    const middle = (low + high) >> 1;
    if (sorted[middle]! >= value) high = middle;
    else low = middle + 1;
  }
  return low;
}
