/** Coefficients c[j][i] of tr^j w^i, tr = (tempC - 20)/100, kg/m3. Source: [icumsa-sps4]; one stored copy prints -3.9646 for -3.9643 (effect under 0.0001 kg/m3). */
const SPS4 = [
  [385.1761, 135.3705, 40.9299, -3.9643, 13.4853, -17.289],
  [-46.272, -7.172, 1.1597, 5.1126, 17.5254],
  [59.7712, 7.2491, 12.363, -35.4791],
  [-47.2207, -21.6977, 27.6301],
  [18.3184, 12.3081],
] as const;
/** Water: numerator in rising powers of tempC, and the denominator's slope. Source: [icumsa-sps4], water part. */
const WATER = [999.83952, 16.952577, -7.9905127e-3, -46.241757e-6, 105.84601e-9, -281.03006e-12] as const;
const WATER_DENOMINATOR_PER_C = 16.887236e-3;

/** Density of air and of the brass weights that "weight per gallon in air" is quoted against [kg/m3]. Source: [chen-1992], convention of NBS C440 (from memory). */
const AIR_KG_PER_M3 = 1.2;
const BRASS_KG_PER_M3 = 8400;

const SUGAR_FRAC_RANGE = { low: 0, high: 0.85, unit: 'kg sugar per kg' } as const;
export const SYRUP_TEMP_RANGE = { low: 0, high: 60, unit: '°C' } as const;

/**
 * Density of pure water at one atmosphere.
 *
 * tempC       [degC]
 * returns     density [kg/m3], greatest near 4 degC
 * valid       0 to 60 degC
 * throws      RangeError outside that, NaN included
 * source      [icumsa-sps4], water part
 * checked     checks/sugar.ts
 */
export function waterDensityKgPerM3(tempC: number): number {
  if (!(tempC >= SYRUP_TEMP_RANGE.low && tempC <= SYRUP_TEMP_RANGE.high)) {
    throw new RangeError(`waterDensityKgPerM3: tempC is ${tempC} degC, must be 0 to 60 degC`);
  }
  return polynomial(WATER, tempC) / (1 + WATER_DENOMINATOR_PER_C * tempC);
}

/**
 * Density of a solution of sucrose in water. Use it for syrup; not for honey, which is mostly fructose and glucose.
 *
 * sugarFrac   sucrose by mass, 0 to 0.85 (above saturation the solution is supersaturated, its density still defined)
 * tempC       [degC]
 * returns     density [kg/m3], in vacuum
 * equation    rho = rho_water(t) + sum_j tr^j sum_i c[j][i] w^i
 * valid       0 to 0.85, 0 to 60 degC; 0.05 % against the handbook up to 0.70
 * throws      RangeError outside that, NaN included
 * source      [icumsa-sps4]. A three-term form 385.1761 / 154.316 / 71.52 also goes by that name: not the same, do not mix.
 * checked     checks/sugar.ts: handbook densities at 20 degC
 */
export function sucroseDensityKgPerM3(sugarFrac: number, tempC: number): number {
  if (!(sugarFrac >= SUGAR_FRAC_RANGE.low && sugarFrac <= SUGAR_FRAC_RANGE.high)) {
    throw new RangeError(`sucroseDensityKgPerM3: sugarFrac is ${sugarFrac}, must be 0 to 0.85`);
  }
  const tr = (tempC - 20) / 100;
  let excess = 0;
  SPS4.forEach((row, j) => {
    excess += tr ** j * sugarFrac * polynomial(row, sugarFrac);
  });
  return waterDensityKgPerM3(tempC) + excess;
}

/** What a scale in air shows for a kilogram per cubic metre in vacuum: handbook weights per gallon are in air, 0.08 % lower at syrup density. */
export function densityInAirKgPerM3(kgPerM3: number): number {
  return (kgPerM3 - AIR_KG_PER_M3) / (1 - AIR_KG_PER_M3 / BRASS_KG_PER_M3);
}

function polynomial(coefficients: readonly number[], x: number): number {
  let sum = 0;
  for (let i = coefficients.length - 1; i >= 0; i--) sum = sum * x + coefficients[i]!;
  return sum;
}
