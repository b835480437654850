import type { BadInput } from '../result/index.ts';
import type { Mark } from '../tables/types.ts';
import type { BoardAnswer } from './board.ts';
import type { MiteDue } from './due.ts';
import type { EfficacyAnswer } from './efficacy.ts';
import type { LevelOnDay, LevelStep } from './levels.ts';
import type { WinterLoss } from './loss.ts';
import type { TreatmentRecord } from './records.ts';
import type { LabelDiffers, TreatmentLimits } from './treatments.ts';

export interface MitesSetting {
  /** ISO date in the yard. */
  readonly today: string;
  readonly seed: number;
  readonly members: number;
  readonly place?: string | undefined;
}

/** A level with its 5, 50 and 95 % [mites per bee]. */
export interface LevelRange {
  readonly p5: number;
  readonly p50: number;
  readonly p95: number;
}

/** One sample of a colony as a bar on the season's axis. */
export interface WashPost {
  readonly date: string;
  readonly mites: number;
  readonly bees: number;
  readonly methods: readonly string[];
  readonly rateFrac: number;
  readonly lowFrac: number;
  readonly highFrac: number;
  readonly enoughBees: boolean;
}

export interface ColonyMites {
  readonly colony: string;
  readonly hive: string | null;
  readonly yard: string;
  readonly label: string;
  readonly washes: readonly WashPost[];
  readonly boards: readonly (BoardAnswer & { readonly date: string; readonly mites: number; readonly days: number })[];
  /** `own`: from its own washes and the yard's; `yard`: not washed, from the yard's alone; `nothing`: no wash in the yard. */
  readonly basis: 'own' | 'yard' | 'nothing';
  readonly now: LevelRange | null;
  readonly atWindow: LevelRange | null;
  readonly chanceWarnNowFrac: number | null;
  readonly chanceAboveNowFrac: number | null;
  readonly chanceAboveWindowFrac: number | null;
  /** How many of the twenty cases are above. */
  readonly chancesIn20: number | null;
  /** Twenty levels of equal chance in the winter-bee weeks, lowest first. */
  readonly cases: readonly number[] | null;
  /** Course of the level from its last washes to the end of the winter-bee weeks. */
  readonly fan: {
    readonly from: string;
    readonly stepDays: number;
    readonly p5: readonly number[];
    readonly p50: readonly number[];
    readonly p95: readonly number[];
  } | null;
  readonly due: readonly MiteDue[];
  /** What a treatment of known effect, begun today, would leave. */
  readonly ifTreated: readonly { readonly key: string; readonly chanceAboveWindowFrac: number }[];
  readonly supersOn: boolean;
  readonly winterLoss: WinterLoss | null;
  /** Records that cannot be and are not used. */
  readonly refused: readonly BadInput[];
}

/** One form of an active ingredient in a yard: when it may begin, and what has to be known for it. */
export interface YardTreatment {
  readonly key: string;
  readonly active: string;
  readonly form: string;
  readonly use: string;
  readonly limits: TreatmentLimits | null;
  /** What stands against it or has to be looked up. */
  readonly blockers: readonly ('label-needed' | 'supers-on' | 'supers-by-label' | 'too-late-for-window' | 'resistance-test')[];
  /** Chance that a start keeps the limits, a value a day from `from`; null without limits. */
  readonly startChances: { readonly from: string; readonly frac: readonly number[] } | null;
  /** First and last day with at least an even chance, from today to the end of the year. */
  readonly firstStart: string | null;
  readonly lastStart: string | null;
  /** Last day it may begin to be over when mites have to be low; null where it wants no brood, or its days are not known. */
  readonly latestStart: string | null;
  readonly latestStartChanceFrac: number | null;
  readonly effect: {
    readonly lowFrac: number;
    readonly highFrac: number;
    readonly known: boolean;
    readonly source: string;
    readonly mark: Mark;
  };
  readonly resistance: string;
  readonly leastBroodFrames: number | null;
  readonly differs: readonly LabelDiffers[];
  readonly cautions: readonly string[];
  readonly country: string;
  readonly note: string;
  readonly source: string;
  readonly mark: Mark;
}

export interface TreatmentEffect extends EfficacyAnswer {
  readonly active: string;
  readonly colonies: readonly string[];
  readonly before: { readonly mites: number; readonly bees: number; readonly date: string };
  readonly after: { readonly mites: number; readonly bees: number; readonly date: string };
}

export interface YardMites {
  readonly yard: string;
  readonly yardName: string;
  readonly climate: { readonly name: string; readonly notes: readonly { readonly code: string }[] };
  readonly lowBy: string;
  readonly winterBees: { readonly from: string; readonly to: string };
  /** The day of the winter-bee weeks that levels are judged for. */
  readonly projectedTo: string;
  readonly windowExtrapolated: boolean;
  readonly broodEnds: { readonly p10: string; readonly p50: string; readonly p90: string };
  /** The level that holds today and in the winter-bee weeks; null from January to March. */
  readonly level: LevelOnDay | null;
  readonly levelAtWindow: LevelOnDay | null;
  readonly stair: readonly LevelStep[];
  /** Mean level of the colonies as washed, and of one not washed; null without a wash. */
  readonly mean: LevelRange | null;
  readonly notWashed: LevelRange | null;
  readonly washed: number;
  readonly colonies: number;
  /** Colonies whose wash would tell most, the first first. */
  readonly washNext: readonly string[];
  readonly treatments: readonly YardTreatment[];
  readonly effects: readonly TreatmentEffect[];
  /** A treatment without brood is usual once brood has ended, whatever the count. */
  readonly broodlessTreatmentFrom: string;
}

export interface MitesAnswer {
  readonly yards: readonly YardMites[];
  readonly colonies: readonly ColonyMites[];
  readonly records: readonly TreatmentRecord[];
  readonly made: { readonly today: string; readonly seed: number; readonly members: number };
}
