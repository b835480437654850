import type { DateSpread, PreparedColony, Spread, StoresDoubt } from '../winter/index.ts';

/** What was known of a colony on the first day of its curve. */
export interface AutumnBelief {
  /** Its curve, begun on the day of the autumn weighing. */
  readonly prepared: PreparedColony;
  readonly storesKg: number;
  readonly doubt: StoresDoubt;
}

/** Something seen from outside after that day. */
export type Observation =
  | {
      readonly kind: 'weight';
      readonly day: number;
      /** Weight of the hive then, less its weight in autumn, less what was put in since [kg]. */
      readonly changeKg: number;
      /** Error of the two readings together [kg]. */
      readonly sdKg: number;
    }
  | { readonly kind: 'alive'; readonly day: number }
  | { readonly kind: 'silent'; readonly day: number };

/** A reading that hardly any case had foreseen. */
export interface Surprise {
  readonly day: number;
  readonly which: 'lighter' | 'heavier';
  readonly seenKg: number;
  /** What the cases had for that day before it was seen [kg]. */
  readonly foreseenKg: Spread;
  /** Chance of a reading as far off. */
  readonly chanceFrac: number;
}

/** A factor's median and the sd of its logarithm. */
export interface FactorBelief {
  readonly median: number;
  readonly logSd: number;
}

export interface WinterUpdate {
  /** Weight of each case; they add up to 1. */
  readonly weights: Float64Array;
  /** Cases that go on counting, as so many of equal weight. */
  readonly effectiveCases: number;
  /** 1: every reading counts as it says; below: they left too few cases and were given so much of their weight. */
  readonly trustFrac: number;
  /** Eaten since the first day [kg]. */
  readonly eatenKg: Spread;
  /** Held today, out of reach included [kg]. */
  readonly leftKg: Spread & { readonly mean: number; readonly sd: number };
  readonly runOut: DateSpread;
  /** Chance that its stores have lasted until today. */
  readonly aliveFrac: number;
  /** Chance that it runs out within so many days of today. */
  readonly soonFrac: number;
  /** Chance to hold until the first dependable forage. */
  readonly holdFrac: number;
  /** What must be added today to hold at the asked certainty [kg of stores]; 0 where it holds. */
  readonly addKg: number;
  /** What must be added today so that it holds until after the next lift but for the chance that puts it on the list [kg of stores]. */
  readonly addNowKg: number;
  /** How long an added kilogram lasts: use of the coming weeks [kg/day]. */
  readonly useKgPerDay: number;
  readonly appetite: { readonly before: FactorBelief; readonly after: FactorBelief };
  /** What the reading that says most about it says of its appetite on its own, the forecast's prior left out; null without a reading. */
  readonly appetiteSeen: { readonly logFactor: number; readonly logSd: number } | null;
  readonly surprises: readonly Surprise[];
}
