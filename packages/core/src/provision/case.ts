import type { CombLot, LossPoint } from './input.ts';

/** The input with every default filled in, checked, in an order that does not depend on names. */
export interface Case {
  readonly colonies: readonly CaseColony[];
  readonly bank: readonly CaseLot[];
  readonly shed: readonly CaseLot[];
  readonly sugarKg: number;
  readonly feeders: number;
  /** Days on which syrup can be given and still ripens. */
  readonly feedingDays: number;
  readonly unionNeedKg: ReadonlyMap<string, number>;
  readonly prices: CasePrices;
  readonly rules: CaseRules;
  /** The date that stood in for `rules.today`, or null. */
  readonly todayAssumed: string | null;
}

export interface CaseColony {
  readonly id: string;
  readonly yard: string;
  readonly bees: number;
  readonly hasKg: number;
  readonly needKg: number;
  /** Need minus has; negative is spare. */
  readonly shortKg: number;
  readonly looked: boolean;
  readonly flag: string | null;
  readonly capped: readonly CombLot[];
  readonly emptyCombs: readonly CombLot[];
  readonly spot: Spot;
  readonly curve: readonly LossPoint[];
  readonly rimKg: number;
  readonly uptakeLPerDay: number;
  readonly refusesSyrup: boolean;
  readonly openingWeight: number;
  readonly mayGive: boolean;
  readonly mayUnite: boolean;
  readonly small: boolean;
  readonly queenKnown: boolean;
}

/** A place to walk to: rows in order of their names, places along them. */
export interface Spot {
  readonly row: string;
  readonly along: number;
}

export interface CaseLot {
  readonly lot: string;
  readonly yard: string;
  readonly frame: string;
  readonly count: number;
  readonly massKg: number;
  readonly massSdKg: number;
  readonly looked: boolean;
  readonly inHand: boolean;
}

export interface CasePrices {
  readonly sugarPerKg: number;
  readonly workPerHour: number;
  readonly honeyPerKg: number;
  readonly opening: number;
}

export interface CaseRules {
  readonly allowLookSteps: boolean;
  readonly holdLightCombs: boolean;
  readonly crossYards: boolean;
  readonly unite: boolean;
  readonly needToleranceKg: number;
  readonly lossToleranceColonies: number;
  readonly sugarKgPerL: number;
  readonly storesPerSugar: number;
  readonly syrupStepL: number;
  /** No colony is fed less. */
  readonly leastSyrupL: number;
  readonly buySugarUpToKg: number;
  readonly pricePerColony: number | null;
  readonly gapFrac: number;
  readonly nodes: number;
  readonly brakeSeconds: number;
}

/** Key of a pair that may be united. */
export function unionKey(from: string, into: string): string {
  return `${from}\u0000${into}`;
}

/** Combs of a list that may leave: those with the last pollen stay. */
export function movable(lots: readonly CombLot[]): readonly CombLot[] {
  return lots.filter((lot) => lot.count > 0 && lot.pollenLast !== true);
}
