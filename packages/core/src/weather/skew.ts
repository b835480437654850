/**
 * A normal deviate bent to a given skewness: a shifted log-normal, mirrored for a cold tail. Monotone, mean 0, sd 1.
 *
 * `bend` is the log-normal's sigma with the sign of the skew; 0 leaves the deviate as it is.
 * equation    y = (exp(b z) - exp(b^2/2)) / (sign(b) exp(b^2/2) sqrt(exp(b^2) - 1));  skew = (e + 2) sqrt(e - 1), e = exp(b^2)
 * source      moments of the log-normal distribution, [JOHNSON-KOTZ] ch. 14
 */
export function bendOfSkew(skew: number): number {
  const wanted = Math.abs(skew);
  let bend = wanted / 3;
  for (let i = 0; i < 30; i++) {
    const e1 = Math.expm1(bend * bend);
    if (e1 === 0) return 0;
    bend *= wanted / ((e1 + 3) * Math.sqrt(e1));
  }
  return Math.sign(skew) * bend;
}

/** Below this the log-normal and the normal differ by less than 1e-6 and the quotient would lose its digits. */
const STRAIGHT = 1e-7;

/** Centre and scale of the bent deviate: y = (exp(b z) - centre) * perUnit. Only where |b| is not straight. */
export function bentScale(bend: number): { readonly centre: number; readonly perUnit: number } {
  const centre = Math.exp((bend * bend) / 2);
  return { centre, perUnit: Math.sign(bend) / (centre * Math.sqrt(Math.expm1(bend * bend))) };
}

export function isStraight(bend: number): boolean {
  return Math.abs(bend) < STRAIGHT;
}

/** Correlation of two bent deviates whose normal parents correlate by r. */
export function bentCorrelation(r: number, bendA: number, bendB: number): number {
  const sigmaA = isStraight(bendA) ? 1 : Math.sqrt(Math.expm1(bendA * bendA)) / Math.abs(bendA);
  const sigmaB = isStraight(bendB) ? 1 : Math.sqrt(Math.expm1(bendB * bendB)) / Math.abs(bendB);
  const product = bendA * bendB;
  const joint = Math.abs(product * r) < STRAIGHT * STRAIGHT ? r : Math.expm1(product * r) / product;
  return joint / (sigmaA * sigmaB);
}
