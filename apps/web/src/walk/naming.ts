import type { Holding } from '@winterheft/core';
import { decimals, type Naming, type UnitFormat } from '@winterheft/words';
import { words } from '../app/words.ts';

/** How things of a holding are called on the screen. */
export interface Names extends Naming {
  /** Where combs in hand came from: a hive's label, a lot, the shed. */
  origin(from: string): string;
  /** A mass in whole pounds or tenths of a kilogram: what a keeper reads in passing. */
  brief(kg: number): string;
  /** Tenths, without the unit. */
  tenths(kg: number): string;
  /** What is read in passing, without its unit. */
  figure(kg: number): string;
}

export function namesOf(holding: Holding, units: UnitFormat): Names {
  const colony = (id: string) => {
    const hive = holding.colonies.get(id)?.hive ?? holding.colonies.get(id)?.stays.at(-1)?.hive;
    return (hive === undefined || hive === null ? null : holding.hives.get(hive)?.label) ?? id;
  };
  const places = units.massUnit === 'kg' ? 1 : 0;
  const figure = (kg: number) => decimals(units.massOf(kg), places);
  const { provision } = words;
  return {
    units,
    colony,
    lot: (id) => id,
    origin: (from) => (from === 'shed' ? provision.shed : holding.colonies.has(from) ? colony(from) : provision.lot(from)),
    figure,
    tenths: (kg) => decimals(units.massOf(kg), 1),
    brief: (kg) => `${figure(kg)}\u00a0${units.massUnit}`,
  };
}
