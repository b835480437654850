import { decimals, type UnitFormat } from '@winterheft/words';

/** Figures read in passing: whole pounds, tenths of a kilogram. */
export function figure(units: UnitFormat, kg: number): string {
  return decimals(units.massOf(kg), units.massUnit === 'kg' ? 1 : 0);
}

/** An error beside such a figure: never nought, and in halves where a whole pound would hide it. */
export function errorFigure(units: UnitFormat, sdKg: number): string {
  const sd = units.massOf(sdKg);
  if (units.massUnit === 'kg') return decimals(Math.max(0.1, sd), 1);
  return sd < 2 ? decimals(Math.max(0.5, Math.round(sd * 2) / 2), 1) : decimals(sd, 0);
}
