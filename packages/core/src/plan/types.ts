import type { Clash } from '../holding/index.ts';
import type { UnreadLine } from '../journal/index.ts';
import type { ProvisionAnswer } from '../provision/index.ts';
import type { BadInput } from '../result/index.ts';
import type { StoresAnswer } from '../stores/index.ts';
import type { StationRecord } from '../weather/index.ts';
import type { Judged, OutlookAnswer } from '../winter/index.ts';

/** What a plan is a function of, beside the holding. */
export interface PlanSetting {
  /** ISO date in the yard. */
  readonly today: string;
  readonly seed: number;
  /** Cases drawn. */
  readonly members: number;
  /** A place of the climate table for every yard, instead of the yards' own. */
  readonly place?: string | undefined;
  /** The keeper's own daily record, for every yard. */
  readonly record?: StationRecord | undefined;
}

export type State = 'short' | 'enough' | 'spare' | 'unknown' | 'too small alone' | 'set aside' | 'ended';

/** Why a colony is in its state; the shells word it. */
export type StateNote =
  | { readonly code: 'spare-on-weight-alone' }
  | { readonly code: 'brood-not-looked-at'; readonly lastLook: string | null }
  | { readonly code: 'signs-of-disease' }
  | { readonly code: 'not-weighed' }
  | { readonly code: 'weighed-long-ago'; readonly days: number }
  | { readonly code: 'by-word'; readonly word: string }
  | { readonly code: 'provisional'; readonly weighAgainOn: string }
  /** Short of its need by less than a hand scale can show: not counted, and called enough. */
  | { readonly code: 'short-within-tolerance'; readonly shortKg: number; readonly toleranceKg: number }
  | { readonly code: 'low-in-top-box'; readonly holdsKg: number; readonly wantsKg: number }
  /** Bees and stores against the least an autumn hive should weigh without its wood. */
  | { readonly code: 'light-for-winter'; readonly massKg: number; readonly leastKg: number }
  | { readonly code: 'bees-assumed'; readonly bees: number }
  | { readonly code: 'build-assumed' }
  /** Mites: the chance to be above the level in the winter-bee weeks, and the range of winter loss that goes with it. */
  | { readonly code: 'mites-above-threshold'; readonly chanceFrac: number; readonly lossLowFrac: number; readonly lossHighFrac: number }
  /** No wash of this year since the last treatment: stores say nothing about mites. */
  | { readonly code: 'mites-unknown' }
  /** Something recorded of the hive cannot be; it is not used. */
  | { readonly code: 'record-refused'; readonly fault: BadInput };

/** A colony's line in the plan: an outlook, what it rests on, and what the scale will show when the need is met. */
export interface ColonyOutlook extends Omit<OutlookAnswer, 'doubtShares' | 'ownRule' | 'climate'>, Pick<Judged, 'lossCurve' | 'cases'> {
  readonly colony: string;
  readonly hive: string;
  readonly yard: string;
  readonly label: string;
  readonly state: State;
  /** Enough, but less at the cluster than the longest spell wants. */
  readonly low: boolean;
  /** How many of the twenty cases run out before their first forage: always the first of them. */
  readonly chancesIn20: number | null;
  readonly hasKg: number | null;
  readonly hasSdKg: number | null;
  /** Has minus need [kg]; null when nothing is known of what it has. */
  readonly aboveNeedKg: number | null;
  readonly bees: number;
  readonly weighedOn: string | null;
  readonly lookedOn: string | null;
  readonly targetFrontKg: number | null;
  readonly targetRearKg: number | null;
  readonly targetFrontSdKg: number | null;
  readonly targetRearSdKg: number | null;
  readonly stores: StoresAnswer | null;
  /** Null where they were not asked for: they take three more runs of the model. */
  readonly doubtShares: OutlookAnswer['doubtShares'] | null;
  readonly notes: readonly StateNote[];
  /** The keeper's own rule on this colony: stores it would leave, and its verdict. */
  readonly ownRule: { readonly storesKg: number; readonly verdict: 'enough' | 'short' | 'unknown' } | null;
}

export interface EndedColony {
  readonly colony: string;
  readonly yard: string;
  readonly label: string;
  readonly state: 'ended';
  readonly how: string;
  readonly on: string;
}

/** A date as 10, 50 and 90 % of the years have it. */
export interface DateOdds {
  readonly p10: string | null;
  readonly p50: string | null;
  readonly p90: string | null;
}

/** The yard's dates of this winter by name. */
export interface YardDates {
  readonly yard: string;
  /** The yard's name as the keeper wrote it. */
  readonly yardName: string;
  readonly climate: { readonly name: string; readonly notes: readonly { readonly code: string }[] };
  readonly dates: Readonly<Record<string, DateOdds>>;
}

export interface Task {
  readonly code: 'look' | 'weigh' | 'measure' | 'swap' | 'feed-syrup' | 'feed-candy' | 'unite' | 'weigh-again' | 'weigh-empty-hive';
  readonly colonies: readonly string[];
  /** Last day it does its work; null where no date binds. */
  readonly by: string | null;
}

export interface Plan {
  readonly outlooks: readonly ColonyOutlook[];
  readonly ended: readonly EndedColony[];
  readonly provision: ProvisionAnswer | null;
  readonly dates: readonly YardDates[];
  readonly tasks: readonly Task[];
  readonly unread: {
    readonly lines: number;
    readonly byWhy: Readonly<Record<string, number>>;
    readonly first: readonly Pick<UnreadLine, 'line' | 'why'>[];
  };
  readonly clashes: readonly Clash[];
  /** Records dated after today, kept and not used: how many, and the first of their ids. */
  readonly later: number;
  readonly laterRecords: readonly string[];
  readonly made: {
    readonly planVersion: number;
    readonly codeVersion: string;
    readonly journalDigest: string;
    readonly tablesDigest: string;
    readonly weatherDigest: string;
    readonly today: string;
    readonly seed: number;
    readonly members: number;
    readonly certaintyFrac: number;
    readonly solver: string | null;
    readonly endedBy: string | null;
    /** First and last day of the run. */
    readonly from: string;
    readonly to: string;
  };
}
