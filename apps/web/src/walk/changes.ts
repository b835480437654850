import type { Adopted } from './adopted.ts';
import { gainOf } from './figures.ts';

/** What a new plan means for one colony against what was still to come under the old one. */
export interface Change {
  readonly colony: string;
  /** What it was to gain (negative: give) and what it is to gain now [kg]. */
  readonly wasKg: number;
  readonly isKg: number;
  /** What it stays short of now [kg]. */
  readonly leftKg: number;
}

/** Smaller than any comb: a difference below is none. */
const SAME_KG = 0.05;

/** Colonies for which the new plan differs, those that stay short first. */
export function changesBetween(before: Adopted, after: Pick<Adopted, 'plan' | 'stops'>): readonly Change[] {
  const was = gainsOf(before, (id) => !before.fact.done.has(id));
  const is = gainsOf(after, () => true);
  const left = new Map((after.plan.provision?.uncovered ?? []).map(({ colony, kg }) => [colony, kg]));
  const leftBefore = new Map((before.plan.provision?.uncovered ?? []).map(({ colony, kg }) => [colony, kg]));
  const colonies = new Set([...was.keys(), ...is.keys(), ...left.keys()]);
  return [...colonies]
    .map((colony) => ({ colony, wasKg: was.get(colony) ?? 0, isKg: is.get(colony) ?? 0, leftKg: left.get(colony) ?? 0 }))
    .filter(
      ({ colony, wasKg, isKg, leftKg }) => Math.abs(wasKg - isKg) > SAME_KG || Math.abs(leftKg - (leftBefore.get(colony) ?? 0)) > SAME_KG,
    )
    .sort((a, b) => b.leftKg - a.leftKg || (a.colony < b.colony ? -1 : 1));
}

/** Gains by colony over the stops that count. */
function gainsOf(adopted: Pick<Adopted, 'stops'>, counts: (stop: string) => boolean): ReadonlyMap<string, number> {
  const gains = new Map<string, number>();
  for (const stop of adopted.stops) {
    if (stop.colony === null || !counts(stop.id)) continue;
    const kg = gainOf(stop);
    if (kg !== 0) gains.set(stop.colony, (gains.get(stop.colony) ?? 0) + kg);
  }
  return gains;
}
