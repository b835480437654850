import type { EndedBy } from './solve.ts';

/** A capped comb into `to`, a lighter one of the same kind out of it; one entry for like swaps. */
export interface Move {
  readonly id: string;
  /** The giving colony, or the lot of the frame bank. */
  readonly from: string;
  readonly fromKind: 'colony' | 'bank' | 'hand';
  readonly to: string;
  readonly frame: string;
  readonly count: number;
  /** Of one comb going in [kg]. */
  readonly massKg: number;
  /** What `to` gains by all of them [kg], and its error. */
  readonly gainKg: number;
  readonly gainSdKg: number;
  /** The lighter comb that comes out: its mass [kg] and where it goes; `held` means kept apart for that colony alone. */
  readonly out: { readonly frame: string; readonly massKg: number; readonly to: string; readonly held: boolean };
  /** What closes the giver's gap; null where the frame came from the bank. */
  readonly fill: { readonly from: string; readonly fromKind: 'colony' | 'bank' | 'shed'; readonly massKg: number } | null;
  /** What the giver is lighter by [kg]; 0 for the bank. */
  readonly giverLossKg: number;
}

export interface SyrupGift {
  readonly id: string;
  readonly to: string;
  readonly litres: number;
  readonly sugarKg: number;
  readonly storesKg: number;
}
export interface CandyGift {
  readonly id: string;
  readonly to: string;
  readonly sugarKg: number;
  readonly storesKg: number;
}
export interface Uniting {
  readonly id: string;
  readonly from: string;
  readonly into: string;
  /** Need of the two together [kg]. */
  readonly needKg: number;
  readonly queenKnown: boolean;
}
export interface LookStep {
  readonly id: string;
  readonly colony: string;
}
export interface Uncovered {
  readonly colony: string;
  readonly kg: number;
  /** Chance of loss this shortage adds. */
  readonly lossFrac: number;
}

export type StepDo = 'look' | 'take' | 'place' | 'fill' | 'syrup' | 'unite' | 'candy';
/** One thing done at one hive; `ref` is the id of the move, gift, uniting or look. */
export interface Step {
  readonly id: string;
  readonly do: StepDo;
  readonly colony: string;
  readonly ref: string;
}

export type ReasonCode =
  | 'short'
  | 'giver-spare'
  | 'spare-not-looked'
  | 'getter-not-looked'
  | 'spare-flagged'
  | 'spare-may-not-give'
  | 'spare-other-yard'
  | 'flagged-only-feed'
  | 'bank-not-looked'
  | 'bank-other-yard'
  | 'no-light-comb'
  | 'no-heavier-comb'
  | 'no-comb-for-gap'
  | 'feeders-all-used'
  | 'no-feeding-days'
  | 'uptake-limit'
  | 'refuses-syrup'
  | 'sugar-used-up'
  | 'rim-full'
  | 'too-small-united'
  | 'too-small-alone'
  | 'queen-unknown'
  | 'left-by-tolerance'
  | 'uncovered'
  | 'conditional-on-look'
  | 'light-comb-held'
  | 'today-assumed'
  | 'buy-sugar'
  | 'solver-stopped'
  | 'no-solver';
/** Why, as a code with figures; worded by the shells. */
export interface Reason {
  readonly code: ReasonCode;
  readonly colony?: string;
  readonly lot?: string;
  readonly figures: Readonly<Record<string, number | string | null>>;
}

export type Aim = 'losses' | 'cost' | 'openings' | 'sum';
/** How one rank ended. `achieved` is the final plan's value of that aim, `objective` the best found when the aim was solved. */
export interface RankResult {
  readonly aim: Aim;
  readonly unit: string;
  readonly objective: number;
  readonly achieved: number;
  readonly bound: number | null;
  readonly gapFrac: number | null;
  readonly endedBy: EndedBy | null;
  readonly nodes: number;
}

export interface ProvisionAnswer {
  readonly method: 'solved' | 'greedy';
  readonly moves: readonly Move[];
  readonly looks: readonly LookStep[];
  readonly syrup: readonly SyrupGift[];
  readonly candy: readonly CandyGift[];
  readonly unite: readonly Uniting[];
  readonly uncovered: readonly Uncovered[];
  /** A number per rank. */
  readonly objective: readonly number[];
  /** Of the first rank; null where no solver ran. */
  readonly bound: number | null;
  readonly gapFrac: number | null;
  readonly ranks: readonly RankResult[];
  readonly reasons: readonly Reason[];
  /** Ids of `steps` in the order of the walk. */
  readonly order: readonly string[];
  readonly steps: readonly Step[];
  readonly totals: {
    readonly expectedLosses: number;
    readonly cost: number;
    readonly openings: number;
    readonly minutes: number;
    readonly sugarKg: number;
    readonly buySugarKg: number;
  };
  readonly solver: string | null;
}
