import { cToFahrenheit, kgPerM3ToLbPerUsGallon, kgToLb, lToUsGallon, partsOf } from '@winterheft/core';

/** `ca` is Canada as keepers speak there: pounds and degrees Celsius, litres. */
export type Units = 'metric' | 'us' | 'ca';
export const UNITS: readonly Units[] = ['metric', 'us', 'ca'];

const MONTHS = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec'] as const;

/** A figure as text with a fixed number of decimals; minus zero is zero. */
export function decimals(value: number, places: number): string {
  const text = value.toFixed(places);
  return Number(text) === 0 ? text.replace('-', '') : text;
}

/** Decimals that make sense beside an error of this size: none beside 12, one beside 2.1 or 0.4, two beside 0.04. */
export function placesFor(error: number): number {
  if (error >= 10) return 0;
  if (error >= 0.1 || !(error > 0)) return 1;
  return Math.min(6, Math.ceil(-Math.log10(error)));
}

/** Three figures that count, without an exponent. */
export function significant(value: number, figures = 3): string {
  if (value === 0) return '0';
  return decimals(value, Math.min(9, Math.max(0, figures - 1 - Math.floor(Math.log10(Math.abs(value))))));
}

export interface UnitFormat {
  readonly massUnit: string;
  readonly tempUnit: string;
  readonly volumeUnit: string;
  readonly densityUnit: string;
  readonly lengthUnit: string;
  /** Values only: the unit stands in the head of the column. */
  massOf(kg: number): number;
  tempOf(tempC: number): number;
  volumeOf(litres: number): number;
  densityOf(kgPerM3: number): number;
  /** Value with unit, and with its standard error where there is one. */
  mass(kg: number, sdKg?: number): string;
  temp(tempC: number): string;
  volume(litres: number): string;
  density(kgPerM3: number): string;
}

export function unitFormat(units: Units): UnitFormat {
  const pounds = units !== 'metric';
  const us = units === 'us';
  const massOf = (kg: number) => (pounds ? kgToLb(kg) : kg);
  const volumeOf = (litres: number) => (us ? lToUsGallon(litres) : litres);
  const tempOf = (tempC: number) => (us ? cToFahrenheit(tempC) : tempC);
  const densityOf = (kgPerM3: number) => (us ? kgPerM3ToLbPerUsGallon(kgPerM3) : kgPerM3);
  const names = {
    massUnit: pounds ? 'lb' : 'kg',
    tempUnit: us ? '°F' : '°C',
    volumeUnit: us ? 'US gal' : 'L',
    densityUnit: us ? 'lb/US gal' : 'kg/m³',
    lengthUnit: us ? 'in' : 'mm',
  };
  return {
    ...names,
    massOf,
    volumeOf,
    tempOf,
    densityOf,
    mass: (kg, sdKg) =>
      sdKg === undefined || sdKg === 0
        ? `${massText(massOf(kg))} ${names.massUnit}`
        : `${decimals(massOf(kg), placesFor(massOf(sdKg)))} ± ${decimals(massOf(sdKg), placesFor(massOf(sdKg)))} ${names.massUnit}`,
    temp: (tempC) => `${decimals(tempOf(tempC), 1)} ${names.tempUnit}`,
    volume: (litres) => `${massText(volumeOf(litres))} ${names.volumeUnit}`,
    density: (kgPerM3) => `${us ? decimals(densityOf(kgPerM3), 2) : decimals(kgPerM3, 1)} ${names.densityUnit}`,
  };
}

/** Tenths above one, two figures below: 41.2, 1.4, 0.19. */
function massText(value: number): string {
  return Math.abs(value) >= 1 || value === 0 ? decimals(value, 1) : significant(value, 2);
}

/** `25 Mar` of an ISO date; the year joins where the reader could take it for another one. */
export function dayMonth(iso: string, year = false): string {
  const [y, m, d] = iso.split('-').map(Number);
  return `${d} ${MONTHS[(m ?? 1) - 1]}${year ? ` ${y}` : ''}`;
}

/** `25 Mar` of an epoch day. */
export function dayMonthOf(epochDay: number): string {
  const { month, day } = partsOf(epochDay);
  return `${day} ${MONTHS[month - 1]}`;
}

export function monthName(month: number): string {
  return MONTHS[month - 1] ?? String(month);
}
