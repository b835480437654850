/** Three published relations. They differ by up to 0.7 %-points, that is by four degrees for a 2:1 syrup. */
export type SolubilityRelation = 'vavrinecz' | 'charles' | 'herzfeld';

/** Percent by mass in rising powers of tempC. Source: [vavrinecz-1962]. Copies with -1.6169e-3 or 1.66169e-3 circulate and are wrong. */
const VAVRINECZ = [64.447, 0.08222, 1.6169e-3, -1.558e-6, -4.63e-8] as const;
/** Same. Source: [charles-1960]. A copy with 0.0002057 and 3.44e-7 circulates and is wrong. */
const CHARLES = [64.397, 0.07251, 0.0020569, -9.035e-6] as const;
/** [degC, percent by mass]. Source: [herzfeld-table]; its 66.53 at 15 degC breaks the curve, 66.33 stands in a second printing (197.0 g in 100 g water). */
const HERZFELD = [
  [0, 64.18],
  [5, 64.87],
  [10, 65.58],
  [15, 66.33],
  [20, 67.09],
  [25, 67.89],
  [30, 68.8],
  [40, 70.42],
  [50, 72.25],
  [60, 74.18],
  [80, 78.36],
  [100, 82.97],
] as const;
const HIGHEST_C = 100;

/**
 * Sucrose in a saturated solution. Below it syrup keeps; above it grains sooner or later, not at once.
 *
 * tempC       [degC]
 * returns     mass fraction, rises with tempC
 * valid       0 to 100 degC
 * throws      RangeError outside that, NaN included
 * source      [vavrinecz-1962] (default: nearest to the plant table at 0 to 20 degC), [charles-1960], [herzfeld-table]
 * checked     checks/sugar.ts: plant table; sugar.test.ts: the corrupt copies are far off
 */
export function saturationFrac(tempC: number, relation: SolubilityRelation = 'vavrinecz'): number {
  if (!(tempC >= 0 && tempC <= HIGHEST_C)) throw new RangeError(`saturationFrac: tempC is ${tempC} degC, must be 0 to 100 degC`);
  if (relation === 'herzfeld') return herzfeld(tempC) / 100;
  const terms = relation === 'vavrinecz' ? VAVRINECZ : CHARLES;
  return terms.reduce((sum, c, i) => sum + c * tempC ** i, 0) / 100;
}

/**
 * Temperature at which a syrup of this strength is just saturated; colder it can grain.
 *
 * sugarFrac   sucrose by mass
 * returns     [degC], or null where it stays below saturation even at 0 degC, or is above it even at 100 degC
 */
export function saturationTempC(sugarFrac: number, relation: SolubilityRelation = 'vavrinecz'): number | null {
  if (sugarFrac < saturationFrac(0, relation) || sugarFrac > saturationFrac(HIGHEST_C, relation)) return null;
  let [low, high] = [0, HIGHEST_C];
  while (high - low > 1e-9) {
    const middle = (low + high) / 2;
    if (saturationFrac(middle, relation) < sugarFrac) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

function herzfeld(tempC: number): number {
  const next = Math.max(
    1,
    HERZFELD.findIndex(([t]) => t >= tempC),
  );
  const [t0, p0] = HERZFELD[next - 1]!;
  const [t1, p1] = HERZFELD[next]!;
  return p0 + ((p1 - p0) * (tempC - t0)) / (t1 - t0);
}
