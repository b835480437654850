/** A sorted copy; draws are few thousand, so that sorting is cheaper than anything cleverer. */
export function sorted(values: ArrayLike<number>): Float64Array {
  return Float64Array.from(values).sort();
}

/**
 * The smallest of the draws that at least a share `frac` of them does not exceed. No interpolation, so that it also holds for
 * dates that some draws never reach (Infinity) and "19 in 20" is a count.
 */
export function quantileOfSorted(values: Float64Array, frac: number): number {
  if (!(frac > 0 && frac <= 1) || values.length === 0)
    throw new RangeError(`quantileOfSorted: frac is ${frac} of ${values.length} draws, must be above 0 to 1`);
  return values[Math.max(0, Math.ceil(frac * values.length - 1e-9) - 1)]!;
}

/**
 * The same as `quantileOfSorted` of the sorted draws, without sorting all of them: their order is changed on the way.
 *
 * method   selection by parts about a middle of three, Hoare 1961, Algorithm 65 FIND (from memory; tested against sorting)
 */
export function quantileInPlace(values: Float64Array, frac: number): number {
  if (!(frac > 0 && frac <= 1) || values.length === 0)
    throw new RangeError(`quantileInPlace: frac is ${frac} of ${values.length} draws, must be above 0 to 1`);
  const wanted = Math.max(0, Math.ceil(frac * values.length - 1e-9) - 1);
  let low = 0;
  let high = values.length - 1;
  while (low < high) {
    const [a, b, c] = [values[low]!, values[(low + high) >> 1]!, values[high]!];
    const pivot = Math.max(Math.min(a, b), Math.min(Math.max(a, b), c));
    let i = low;
    let j = high;
    while (i <= j) {
      while (values[i]! < pivot) i++;
      while (values[j]! > pivot) j--;
      if (i <= j) {
        const kept = values[i]!;
        values[i++] = values[j]!;
        values[j--] = kept;
      }
    }
    if (wanted <= j) high = j;
    else if (wanted >= i) low = i;
    else break;
  }
  return values[wanted]!;
}

export interface Spread {
  readonly p5: number;
  readonly p50: number;
  readonly p95: number;
}

export function spreadOf(values: ArrayLike<number>): Spread {
  const s = sorted(values);
  return { p5: quantileOfSorted(s, 0.05), p50: quantileOfSorted(s, 0.5), p95: quantileOfSorted(s, 0.95) };
}

export function meanOf(values: ArrayLike<number>): number {
  let sum = 0;
  for (let i = 0; i < values.length; i++) sum += values[i]!;
  return sum / values.length;
}

/** Variance of the draws, about their own mean. */
export function varianceOf(values: ArrayLike<number>): number {
  const mean = meanOf(values);
  let sum = 0;
  for (let i = 0; i < values.length; i++) sum += (values[i]! - mean) ** 2;
  return sum / values.length;
}

/** Share of the sorted draws above a level; draws within a billionth of it do not count as above. */
export function shareAbove(sortedValues: Float64Array, level: number): number {
  let low = 0;
  let high = sortedValues.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (sortedValues[middle]! > level + 1e-9) high = middle;
    else low = middle + 1;
  }
  return (sortedValues.length - low) / sortedValues.length;
}
