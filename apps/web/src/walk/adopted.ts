import type { AdoptedPlan, Holding, Plan } from '@winterheft/core';
import type { Combs } from './hand.ts';
import type { Stop } from './stop.ts';
import { stopsOf } from './stops.ts';

/** Why a plan was taken: the walk began, the keeper asked, a stop was skipped, a look or a feed came out otherwise. */
export type Because = 'start' | 'again' | 'skip' | 'look' | 'refused';

/** The body of a `plan-adopted` record, as this app writes it. */
export interface AdoptedBody {
  readonly format: 1;
  readonly because: Because;
  /** The colony whose stop was skipped or came out otherwise. */
  readonly about?: string;
  /** Id of the adopted plan this one goes on from in the same walk. */
  readonly before: string | null;
  readonly plan: Plan;
  /** In hand when it was taken up. */
  readonly start: readonly Combs[];
  readonly stops: readonly Stop[];
}

export interface Adopted extends AdoptedBody {
  readonly fact: AdoptedPlan;
}

/** What counts of an outlook's curves: they are shown, never computed with again. */
const FIGURES = 5;

/** The record of a plan as it is taken up now. The provision stays to the digit, as its combs are found by their mass. */
export function adoptedBody(
  plan: Plan,
  holding: Holding,
  why: { readonly because: Because; readonly about?: string | undefined; readonly before: string | null },
): AdoptedBody {
  const { because, about, before } = why;
  return {
    format: 1,
    because,
    ...(about === undefined ? {} : { about }),
    before,
    plan: { ...(rounded(plan) as Plan), provision: plan.provision },
    start: holding.inHand.filter(({ count }) => count > 0),
    stops: plan.provision === null ? [] : stopsOf(plan.provision, holding),
  };
}

function rounded(value: unknown): unknown {
  if (typeof value === 'number') return Number(value.toPrecision(FIGURES));
  if (Array.isArray(value)) return value.map(rounded);
  if (ArrayBuffer.isView(value)) return Array.from(value as unknown as ArrayLike<number>, rounded);
  if (value === null || typeof value !== 'object') return value;
  return Object.fromEntries(
    Object.entries(value)
      .filter(([, inner]) => inner !== undefined)
      .map(([key, inner]) => [key, rounded(inner)]),
  );
}

/** The adopted plans of a holding that this app can read, oldest first. */
export function adoptedPlans(holding: Holding): readonly Adopted[] {
  return [...holding.plans.values()]
    .flatMap((fact) => {
      const body = bodyOf(fact.plan);
      return body === null ? [] : [{ ...body, fact }];
    })
    .sort((a, b) => a.fact.minute - b.fact.minute || (a.fact.record < b.fact.record ? -1 : 1));
}

function bodyOf(plan: Readonly<Record<string, unknown>>): AdoptedBody | null {
  const { format, stops, start, plan: inner } = plan;
  const fits =
    format === 1 && Array.isArray(stops) && Array.isArray(start) && typeof inner === 'object' && inner !== null && 'provision' in inner;
  return fits ? (plan as unknown as AdoptedBody) : null;
}
