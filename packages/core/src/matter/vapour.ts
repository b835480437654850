/** Water freezes here on its own vapour [K]. */
const TRIPLE_POINT_K = 273.16;
export const ZERO_C_IN_K = 273.15;
const LOWEST_C = -130;
const HIGHEST_C = 58;

/**
 * Vapour pressure in equilibrium with flat ice. Use it for frost.
 *
 * tempC       [degC]
 * returns     [Pa]
 * equation    ln p = 9.550426 - 5723.265/T + 3.53068 ln T - 0.00728332 T
 * valid       -130 to 0.01 degC
 * throws      RangeError outside that, NaN included: there is no ice above the triple point
 * source      [murphy-koop-2005] eq. 7
 * checked     checks/air.ts; air.test.ts against psychrolib and the [wmo-49] formula
 */
export function iceSaturationPa(tempC: number): number {
  if (!(tempC >= LOWEST_C && tempC + ZERO_C_IN_K <= TRIPLE_POINT_K + 1e-9)) {
    throw new RangeError(`iceSaturationPa: tempC is ${tempC} degC, must be -130 to 0.01 degC`);
  }
  const T = tempC + ZERO_C_IN_K;
  return Math.exp(9.550426 - 5723.265 / T + 3.53068 * Math.log(T) - 0.00728332 * T);
}

/**
 * Vapour pressure in equilibrium with flat liquid water, supercooled below 0 degC.
 *
 * Relative humidity as stations and sensors give it is over THIS pressure, below freezing too.
 *
 * tempC       [degC]
 * returns     [Pa]
 * equation    ln p = 54.842763 - 6763.22/T - 4.210 ln T + 0.000367 T
 *                    + tanh(0.0415 (T - 218.8)) (53.878 - 1331.22/T - 9.44523 ln T + 0.014025 T)
 * valid       -130 to 58 degC
 * throws      RangeError outside that, NaN included
 * source      [murphy-koop-2005] eq. 10
 * checked     checks/air.ts; air.test.ts against psychrolib above 0 degC
 */
export function waterSaturationPa(tempC: number): number {
  if (!(tempC >= LOWEST_C && tempC <= HIGHEST_C)) {
    throw new RangeError(`waterSaturationPa: tempC is ${tempC} degC, must be -130 to 58 degC`);
  }
  const T = tempC + ZERO_C_IN_K;
  const lnT = Math.log(T);
  const cold = Math.tanh(0.0415 * (T - 218.8)) * (53.878 - 1331.22 / T - 9.44523 * lnT + 0.014025 * T);
  return Math.exp(54.842763 - 6763.22 / T - 4.21 * lnT + 0.000367 * T + cold);
}

/** Temperature at which this vapour would begin to condense as water [degC]. Throws RangeError outside the range of `waterSaturationPa`. */
export function dewPointC(vapourPa: number): number {
  return solve('dewPointC', vapourPa, waterSaturationPa, HIGHEST_C);
}

/** Temperature at which this vapour would begin to settle as frost [degC]; null above the triple point's pressure, where dew comes first. */
export function frostPointC(vapourPa: number): number | null {
  const triplePointC = TRIPLE_POINT_K - ZERO_C_IN_K;
  if (vapourPa > iceSaturationPa(triplePointC)) return null;
  return solve('frostPointC', vapourPa, iceSaturationPa, triplePointC);
}

function solve(name: string, vapourPa: number, saturation: (tempC: number) => number, highestC: number): number {
  if (!(vapourPa >= saturation(LOWEST_C) && vapourPa <= saturation(highestC))) {
    throw new RangeError(`${name}: vapourPa is ${vapourPa} Pa, must be ${saturation(LOWEST_C)} to ${saturation(highestC)} Pa`);
  }
  let [low, high] = [LOWEST_C, highestC];
  while (high - low > 1e-10) {
    const middle = (low + high) / 2;
    if (saturation(middle) < vapourPa) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
