import { hivetopParameters } from '../tables/parameters-hivetop.gen.ts';

/** [W/(m2 K4)] CODATA. */
const STEFAN_BOLTZMANN = 5.670374419e-8;
const ZERO_C_IN_K = 273.15;
/** Of water vapour [J/(kg K)] and of dry air. */
const VAPOUR_J_PER_KG_K = 461.5;
const DRY_AIR_J_PER_KG_K = 287.055;
const PRESSURE_PA = 101_325;

export type HeatDirection = 'up' | 'down' | 'sideways';

/**
 * Heat carried by radiation between two nearly equal temperatures, for a black surface [W/(m2 K)].
 *
 * equation  4 sigma T^3
 */
export function radiantWPerM2K(tempC: number): number {
  return 4 * STEFAN_BOLTZMANN * (tempC + ZERO_C_IN_K) ** 3;
}

/** Emittance between two parallel faces: 1 / (1/e1 + 1/e2 - 1). */
export function pairEmittance(one: number, other: number): number {
  return 1 / (1 / one + 1 / other - 1);
}

/** Heat a still-air film carries by moving air alone [W/(m2 K)]. */
export function filmConvectionWPerM2K(direction: HeatDirection): number {
  const p = hivetopParameters;
  if (direction === 'up') return p.filmConvectionUpWPerM2K.value;
  if (direction === 'down') return p.filmConvectionDownWPerM2K.value;
  return p.filmConvectionVerticalWPerM2K.value;
}

/**
 * Resistance of the still air at a surface.
 *
 * direction   where the heat goes
 * emittance   of the surface; 0.9 wood, 0.05 clean dry foil
 * tempC       mean temperature of the film
 * returns     [m2K/W]
 * equation    1 / (h_c + e 4 sigma T^3): moving air by direction and radiation by emittance, side by side
 * valid       the handbook's tables at 21 degC to 2 %; colder the radiation falls with T^3
 * source      [film-resistance], [film-memory]
 * checked     checks/hivetop.ts
 */
export function filmM2KPerW(direction: HeatDirection, emittance: number, tempC: number = hivetopParameters.filmRadiantTempC.value): number {
  return 1 / (filmConvectionWPerM2K(direction) + emittance * radiantWPerM2K(tempC));
}

/** Heat moving air carries across a closed horizontal air space [W/(m2 K)]. */
export function spaceConvectionWPerM2K(direction: 'up' | 'down'): number {
  const p = hivetopParameters;
  return direction === 'up' ? p.airSpaceConvectionUpWPerM2K.value : p.airSpaceConvectionDownWPerM2K.value;
}

/**
 * Resistance of a closed horizontal air space between two faces.
 *
 * returns   [m2K/W]
 * source    [air-space-table]: 13 mm, heat up, about 5 K across; wider spaces carry up to a third more by moving air
 */
export function airSpaceM2KPerW(direction: 'up' | 'down', emittances: readonly [number, number], tempC: number): number {
  return 1 / (spaceConvectionWPerM2K(direction) + pairEmittance(...emittances) * radiantWPerM2K(tempC));
}

/**
 * Speed at which vapour crosses a film that carries so much heat by moving air.
 *
 * returns   [m/s]
 * equation  h_m = h / (rho c_p Le^(2/3))
 * source    [lewis-relation]
 */
export function massTransferMPerS(
  convectionWPerM2K: number,
  { densityKgPerM3, lewis = hivetopParameters.lewisNumber.value }: { readonly densityKgPerM3: number; readonly lewis?: number | undefined },
): number {
  return convectionWPerM2K / (densityKgPerM3 * hivetopParameters.airHeatJPerKgK.value * lewis ** (2 / 3));
}

/** The same as vapour a pascal [kg/(m2 s Pa)]. */
export function vapourFilmKgPerM2SPa(convectionWPerM2K: number, tempC: number): number {
  const kelvin = tempC + ZERO_C_IN_K;
  const densityKgPerM3 = PRESSURE_PA / (DRY_AIR_J_PER_KG_K * kelvin);
  return massTransferMPerS(convectionWPerM2K, { densityKgPerM3 }) / (VAPOUR_J_PER_KG_K * kelvin);
}
