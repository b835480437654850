/**
 * A normal deviate bent to a given skewness. Monotone, mean 0, sd 1, and with a cold tail hardly longer than the normal one:
 * what skews winter days is that thaws are held back by snow, not that a cold day has no floor.
 *
 * `bend` carries the sign of the skew; 0 leaves the deviate as it is. For a negative skew, b = |bend|, h = b / 10:
 * equation    g(z) = (1 - exp(-b z)) / b above 0, -(1 - exp(h z)) / h below, then brought to mean 0 and sd 1; mirrored for a positive skew
 * source      ours; a shifted log-normal of the same skewness made the coldest day of a record 6 degC too cold at 56 stations,
 *             see docs/decisions/0004-weather-years.md
 * valid       skewness -0.85 to 0.85, nearest bound beyond
 */
export interface BentShape {
  readonly bend: number;
  readonly centre: number;
  readonly perUnit: number;
  /** Weights of the powers of a correlation, from the first power; they add up to 1. */
  readonly powers: Float64Array;
}

/** How much longer the far tail is than the near one is short. */
const TAIL_RATIO = 10;
const MOST_BEND = 2.5;
const POWERS = 8;

/** Points and weights of the standard normal density, for means of smooth functions; exact to 1e-5. */
const STEP = 0.1;
const POINTS = Float64Array.from({ length: 161 }, (_, i) => STEP * (i - 80));
const WEIGHTS = POINTS.map((z) => (Math.exp((-z * z) / 2) * STEP) / Math.sqrt(2 * Math.PI));

/** The bent deviate before it is brought to mean 0 and sd 1. */
export function bentRaw(z: number, bend: number): number {
  const b = bend < 0 ? -bend : bend;
  const x = bend < 0 ? z : -z;
  const y = x >= 0 ? (1 - Math.exp(-b * x)) / b : ((Math.exp((b / TAIL_RATIO) * x) - 1) * TAIL_RATIO) / b;
  return bend < 0 ? y : -y;
}

function isStraight(bend: number): boolean {
  return Math.abs(bend) < 1e-3;
}

function meanOver(of: (z: number) => number): number {
  return POINTS.reduce((sum, z, i) => sum + WEIGHTS[i]! * of(z), 0);
}

function skewOfBend(bend: number): number {
  const centre = meanOver((z) => bentRaw(z, bend));
  const variance = meanOver((z) => (bentRaw(z, bend) - centre) ** 2);
  return meanOver((z) => (bentRaw(z, bend) - centre) ** 3) / variance ** 1.5;
}

/** The bend that gives a skewness. */
export function bendOfSkew(skew: number): number {
  const wanted = Math.abs(skew);
  if (wanted < 0.005) return 0;
  let [low, high] = [0.001, MOST_BEND];
  for (let i = 0; i < 40; i++) {
    const middle = (low + high) / 2;
    if (skewOfBend(middle) < wanted) low = middle;
    else high = middle;
  }
  return Math.sign(skew) * low;
}

/** Centre, scale and correlation weights of a bend: what a day of the year needs, made once for each. */
export function bentShape(bend: number): BentShape {
  const powers = new Float64Array(POWERS);
  if (isStraight(bend)) {
    powers[0] = 1;
    return { bend: 0, centre: 0, perUnit: 1, powers };
  }
  const centre = meanOver((z) => bentRaw(z, bend));
  const perUnit = 1 / Math.sqrt(meanOver((z) => (bentRaw(z, bend) - centre) ** 2));
  POINTS.forEach((z, i) => {
    const weighted = WEIGHTS[i]! * (bentRaw(z, bend) - centre) * perUnit;
    // Hermite polynomials over the square root of k factorial, from the two before
    let [before, now] = [1, z];
    for (let k = 1; k <= POWERS; k++) {
      powers[k - 1]! += weighted * now;
      [before, now] = [now, (z * now - Math.sqrt(k) * before) / Math.sqrt(k + 1)];
    }
  });
  const whole = Math.sqrt(powers.reduce((sum, d) => sum + d * d, 0));
  return { bend, centre, perUnit, powers: powers.map((d) => d / whole) };
}

/**
 * Correlation of two bent deviates whose normal parents correlate by r: the sum over powers of r weighted by both expansions.
 *
 * source   Mehler's formula for Hermite polynomials of correlated normals
 */
export function bentCorrelation(r: number, a: BentShape, b: BentShape): number {
  let [sum, power] = [0, 1];
  for (let k = 0; k < POWERS; k++) {
    power *= r;
    sum += a.powers[k]! * b.powers[k]! * power;
  }
  return sum;
}
