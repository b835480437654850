import type { Material } from '../tables/materials.ts';
import { hivetopParameters } from '../tables/parameters-hivetop.gen.ts';

/** Below this the wood table ends and the formula's parabola turns the wrong way: colder wood is taken as at this temperature [degC]. */
export const WOOD_TABLE_FROM_C = -1.1;
const WOOD_TABLE_TO_C = 55;

/**
 * Water that wood holds in damp air, once it has come to rest.
 *
 * rhFrac    over liquid water, 0 to 1
 * tempC     [degC]; below -1.1 the value at -1.1, where the table ends
 * returns   [kg water / kg dry wood]
 * equation  1800/W (Kh/(1-Kh) + (K1 K h + 2 K1 K2 K^2 h^2)/(1 + K1 K h + K1 K2 K^2 h^2)) / 100
 * valid     the table to 0.06 % of moisture; the table prints 3.0 for 4.0 at 43 degC and 20 %
 * throws    RangeError outside 0 to 1, or above 55 degC
 * source    [wood-handbook]
 * checked   checks/hivetop.ts: cells of the printed table
 */
export function woodMoistureFrac(rhFrac: number, tempC: number): number {
  return woodIsotherm(rhFrac, tempC)[0];
}

function woodIsotherm(rhFrac: number, tempC: number): readonly [uptake: number, slope: number] {
  if (!(rhFrac >= 0 && rhFrac <= 1)) throw new RangeError(`woodMoistureFrac: rhFrac is ${rhFrac}, must be 0 to 1`);
  if (!(tempC <= WOOD_TABLE_TO_C)) throw new RangeError(`woodMoistureFrac: tempC is ${tempC} degC, must be up to ${WOOD_TABLE_TO_C} degC`);
  const t = Math.max(tempC, WOOD_TABLE_FROM_C);
  const W = 349 + 1.29 * t + 0.0135 * t * t;
  const K = 0.805 + 0.000736 * t - 2.73e-6 * t * t;
  const K1 = 6.27 - 0.00938 * t - 0.000303 * t * t;
  const K2 = 1.91 + 0.0407 * t - 0.000293 * t * t;
  const x = K * rhFrac;
  const top = K1 * x + 2 * K1 * K2 * x * x;
  const bottom = 1 + K1 * x + K1 * K2 * x * x;
  const slopeTop = K1 + 4 * K1 * K2 * x;
  const slopeBottom = K1 + 2 * K1 * K2 * x;
  return [
    (18 / W) * (x / (1 - x) + top / bottom),
    (18 / W) * K * (1 / (1 - x) ** 2 + (slopeTop * bottom - top * slopeBottom) / bottom ** 2),
  ];
}

/**
 * What a material holds of damp air, and how fast that grows: the VAPOUR uptake. Liquid is a separate, larger figure.
 *
 * returns   [kg/kg], [kg/kg per unit of humidity]
 * source    wood as above; jute [jute-regain] through two points; sugar [sucrose-deliquescence], almost none until it dissolves
 */
export function vapourUptake(isotherm: Material['isotherm'], rhFrac: number, tempC: number): readonly [uptake: number, slope: number] {
  const p = hivetopParameters;
  const rh = Math.min(1, Math.max(0, rhFrac));
  switch (isotherm) {
    case 'wood':
      return woodIsotherm(rh, Math.min(tempC, WOOD_TABLE_TO_C));
    case 'jute': {
      const full = p.juteFullFrac.value;
      const power = Math.log(p.juteAt65Frac.value / full) / Math.log(0.65);
      return [full * rh ** power, full * power * rh ** (power - 1)];
    }
    case 'sugar': {
      const slope = p.sugarDryUptakeFrac.value / p.sugarWetsAtRhFrac.value;
      return [slope * rh, slope];
    }
    case 'none':
      return [0, 0];
  }
}

/** Humidity above which a material takes up water without end: 1, for sugar where it dissolves. */
export function wetsAtRhFrac(isotherm: Material['isotherm']): number {
  return isotherm === 'sugar' ? hivetopParameters.sugarWetsAtRhFrac.value : 1;
}

/** Temperatures of the wood's conductivity [degC], and how it falls in the cold: 2 to 3 % for 10 K. Source: [wood-handbook]. */
const WOOD_HEAT_AT_C = 24;
const WOOD_HEAT_PER_K = 0.0025;

/**
 * Conductivity of wood across the grain.
 *
 * specificGravity  above 0.3
 * moistureFrac     [kg/kg], below 0.25
 * returns          [W/(m K)], +-20 %
 * equation         G (0.1941 + 0.004064 M) + 0.01864, M in percent, at 24 degC
 * source           [wood-handbook] eq. 4-15
 */
export function woodWPerMK(specificGravity: number, moistureFrac: number, tempC: number = WOOD_HEAT_AT_C): number {
  const percent = 100 * Math.min(moistureFrac, hivetopParameters.fibreSaturationFrac.value);
  return (specificGravity * (0.1941 + 0.004064 * percent) + 0.01864) * (1 + WOOD_HEAT_PER_K * (tempC - WOOD_HEAT_AT_C));
}

/** Mean temperatures at which foam is measured [degC]: label, cool, coldest. Colder is beyond its tests. */
export const FOAM_MEASURED_C = [24, 4.4, -3.9] as const;

/**
 * Conductivity of a layer at its mean temperature.
 *
 * returns   [W/(m K)]; foam straight between its three figures, beyond them the last one (the caller flags that); polyiso falls in
 *           the cold, the polystyrenes gain
 * source    the row's own
 */
export function conductivityWPerMK(material: Material, tempC: number, moistureFrac: number): number {
  if (material.specificGravity !== undefined) return woodWPerMK(material.specificGravity, moistureFrac, tempC);
  // A metal foil stops no heat but by its face.
  const label = material.wPerMK ?? Number.POSITIVE_INFINITY;
  const { coolWPerMK: cool, coldWPerMK: cold } = material;
  if (cool === undefined || cold === undefined) return label;
  const [warmC, coolC, coldC] = FOAM_MEASURED_C;
  if (tempC >= warmC) return label;
  if (tempC >= coolC) return cool + ((label - cool) * (tempC - coolC)) / (warmC - coolC);
  if (tempC >= coldC) return cold + ((cool - cold) * (tempC - coldC)) / (coolC - coldC);
  return cold;
}
