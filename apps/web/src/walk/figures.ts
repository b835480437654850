import type { ColonyOutlook, Plan, ProvisionAnswer } from '@winterheft/core';
import type { Stop } from './stop.ts';

/** A plan in a few figures. */
export interface PlanFigures {
  /** What colonies are short of before the walk, and how much of it is covered [kg]. */
  readonly shortKg: number;
  readonly coveredKg: number;
  /** How many lack something, two that are united taken as one. */
  readonly lacking: number;
  readonly swaps: number;
  readonly litres: number;
  readonly candyKg: number;
  /** Sugar that must be bought [kg]. */
  readonly buySugarKg: number;
  readonly hives: number;
  readonly looks: number;
  readonly unions: number;
  readonly minutes: number;
  readonly cost: number;
}

export function figuresOf(plan: Pick<Plan, 'outlooks'>, provision: ProvisionAnswer): PlanFigures {
  const shortages = shortagesOf(plan.outlooks, provision);
  const shortKg = shortages.reduce((sum, { kg }) => sum + kg, 0);
  const openKg = provision.uncovered.reduce((sum, { kg }) => sum + kg, 0);
  const { moves, syrup, candy, unite, looks, totals } = provision;
  const hives = new Set([
    ...moves.flatMap((move) => (move.fromKind === 'colony' ? [move.from, move.to] : [move.to])),
    ...syrup.map(({ to }) => to),
    ...candy.map(({ to }) => to),
    ...unite.flatMap(({ from, into }) => [from, into]),
  ]);
  return {
    shortKg,
    lacking: shortages.length,
    coveredKg: Math.max(0, shortKg - openKg),
    swaps: moves.reduce((n, { count }) => n + count, 0),
    litres: syrup.reduce((sum, { litres }) => sum + litres, 0),
    candyKg: candy.reduce((sum, { sugarKg }) => sum + sugarKg, 0),
    buySugarKg: totals.buySugarKg,
    hives: hives.size,
    looks: looks.length,
    unions: unite.length,
    minutes: totals.minutes,
    cost: totals.cost,
  };
}

/** What every colony is short of; two that are united are short together or not at all. */
function shortagesOf(outlooks: readonly ColonyOutlook[], { unite }: ProvisionAnswer): { readonly colony: string; readonly kg: number }[] {
  const hasKg = new Map(outlooks.map(({ colony, hasKg }) => [colony, hasKg ?? 0]));
  return outlooks.flatMap((line) => {
    if (line.hasKg === null || unite.some(({ from }) => from === line.colony)) return [];
    const union = unite.find(({ into }) => into === line.colony);
    const kg = (union?.needKg ?? line.needKg) - line.hasKg - (union === undefined ? 0 : (hasKg.get(union.from) ?? 0));
    return kg > 0 ? [{ colony: line.colony, kg }] : [];
  });
}

/** Stores of a colony before and after a stop [kg], as the plan has them, and what it needs. */
export interface Balance {
  readonly beforeKg: number;
  readonly afterKg: number;
  readonly needKg: number;
}

/** By the id of the stop; stops at the shed and looks have none. */
export function balancesOf(plan: Pick<Plan, 'outlooks'>, stops: readonly Stop[]): ReadonlyMap<string, Balance> {
  const hasKg = new Map(plan.outlooks.flatMap(({ colony, hasKg }) => (hasKg === null ? [] : [[colony, hasKg] as const])));
  const needKg = new Map(plan.outlooks.map(({ colony, needKg }) => [colony, needKg]));
  const balances = new Map<string, Balance>();
  for (const stop of stops) {
    const colony = stop.union?.into ?? stop.colony;
    const has = colony === null ? undefined : hasKg.get(colony);
    if (colony === null || has === undefined || stop.kind === 'look' || stop.kind === 'shed') continue;
    const gainKg = stop.union === undefined ? gainOf(stop) : (hasKg.get(stop.union.from) ?? 0);
    const need = stop.union?.needKg ?? needKg.get(colony) ?? 0;
    balances.set(stop.id, { beforeKg: has, afterKg: has + gainKg, needKg: need });
    hasKg.set(colony, has + gainKg);
    needKg.set(colony, need);
  }
  return balances;
}

/** What the colony of a stop is heavier by [kg]; negative where it gives. */
export function gainOf(stop: Pick<Stop, 'colony' | 'flows' | 'syrup' | 'candy'>): number {
  let kg = (stop.syrup?.storesKg ?? 0) + (stop.candy?.storesKg ?? 0);
  for (const { from, to, count, massKg = 0, out } of stop.flows) {
    if ('colony' in to && to.colony === stop.colony) kg += count * massKg - (out === undefined ? 0 : out.count * (out.massKg ?? 0));
    if ('colony' in from && from.colony === stop.colony) kg -= count * massKg;
  }
  return kg;
}
