import { provisionParameters } from '../tables/parameters-provision.gen.ts';

/** Syrup for one colony, and its bees where they are known. */
export interface SyrupTake {
  readonly litres: number;
  readonly bees: number | null;
}

/**
 * Days that the slowest of several colonies needs to take its syrup.
 *
 * equation   litres over uptake; a small colony takes what its bees can carry, any colony what a feeder gives
 * returns    whole days, 0 without syrup
 */
export function feedDays(takes: readonly SyrupTake[]): number {
  const { uptakeLPerDay, uptakeLPer1000BeesPerDay } = provisionParameters;
  return Math.max(
    0,
    ...takes.map(({ litres, bees }) => {
      const perDay = bees === null ? uptakeLPerDay.value : Math.min(uptakeLPerDay.value, (uptakeLPer1000BeesPerDay.value * bees) / 1000);
      return perDay > 0 ? Math.ceil(litres / perDay) : 0;
    }),
  );
}
