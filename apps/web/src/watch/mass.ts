import { decimals, type UnitFormat } from '@winterheft/words';

/** Whole pounds, or tenths of a kilogram, with the error to the same places. */
export function shownMass(kg: number, sdKg: number | null, units: UnitFormat): string {
  const places = units.massUnit === 'lb' ? 0 : 1;
  const figure = (value: number) => decimals(units.massOf(value), places);
  return sdKg === null ? `${figure(kg)} ${units.massUnit}` : `${figure(kg)} ± ${figure(sdKg)} ${units.massUnit}`;
}
