import type { Build } from '../tables/parts.ts';
import type { HeftWord } from '../weigh/index.ts';

/** What one frame or seam of bees means to the keeper who counts: packed, covered in one layer, or merely occupied. */
export type Counting = 'packed' | 'covered' | 'occupied';

export interface CappedFrames {
  /** Depth of the frame, or the key of a frame of the parts table. */
  readonly frame: string;
  /** How many [frames], halves allowed. */
  readonly count: number;
  /** In the top box, or below it. */
  readonly where: 'top' | 'below';
  /** Mass of one such frame with honey, comb and wood [kg]. */
  readonly massKg?: number | undefined;
  /** How full they are, 0 to 1; 1 where left out. */
  readonly fullFrac?: number | undefined;
}

export interface OnHive {
  /** Key of the feeder that stands on the hive or hangs in it and is not listed in the build. */
  readonly feeder?: string | undefined;
  /** Syrup left in it [kg]. */
  readonly syrupKg?: number | undefined;
  readonly candyKg?: number | undefined;
  /** Parts above the boxes that are not listed in the build. */
  readonly topParts?: Build | undefined;
  /** Water taken up by absorbents [kg]. */
  readonly waterKg?: number | undefined;
  readonly otherKg?: number | undefined;
  /** True where all of this was weighed and not judged. */
  readonly weighed?: boolean | undefined;
}

export interface SyrupGiven {
  /** ISO date. */
  readonly date: string;
  readonly sugarKg: number;
  /** Water in it [kg]; 2:1 by mass where left out. */
  readonly waterKg?: number | undefined;
}

export interface StoresInput {
  readonly build: Build;
  /** Whole hive as it stands [kg]. */
  readonly grossKg?: number | undefined;
  /** Left out: the error of a weighing at both edges on a usual scale. */
  readonly grossSdKg?: number | undefined;
  /** What a hand said that lifted one edge, where nothing was weighed. */
  readonly word?: HeftWord | undefined;
  /** One empty hive of this build, combs included, weighed by the keeper; sdKg: how far the mean hive of the build may be from it. */
  readonly emptyHive?: { readonly massKg: number; readonly sdKg?: number | undefined } | undefined;
  readonly bees?: number | undefined;
  readonly beesSdFrac?: number | undefined;
  /** Combs covered by bees on both sides. */
  readonly framesOfBees?: number | undefined;
  /** Gaps between combs filled with bees; a seam holds what a frame does, the bees on two sides of comb. */
  readonly seamsOfBees?: number | undefined;
  readonly counting?: Counting | undefined;
  readonly cappedFrames?: readonly CappedFrames[] | undefined;
  /** Whether every comb was looked at or only the top box; left out: all where a frame below is named or there is one box. */
  readonly countCovers?: 'all' | 'top' | undefined;
  readonly pollenFrames?: number | undefined;
  readonly broodFrames?: number | undefined;
  readonly onHive?: OnHive | undefined;
  readonly syrupGiven?: readonly SyrupGiven[] | undefined;
  /** Snow and ice on the hive [kg]. */
  readonly snowIceKg?: number | undefined;
  /** ISO date of the weighing or look. */
  readonly date?: string | undefined;
}

/** Kilograms of one standard deviation by cause; their squares add up to sdKg squared. */
export interface ErrorParts {
  /** The scale and the lift. */
  readonly scaleKg: number;
  /** The build's own mass: one error shared by all hives of the build. */
  readonly tareKg: number;
  /** This hive against another of the same build. */
  readonly hiveKg: number;
  readonly beesKg: number;
  /** Pollen and brood. */
  readonly pollenKg: number;
  /** Honey on a capped comb: one error shared by the frames of a lot. */
  readonly lotKg: number;
  /** Counting combs, what is on combs not counted, one comb against another. */
  readonly framesKg: number;
  readonly onHiveKg: number;
  readonly waterKg: number;
  readonly snowKg: number;
}

export type Measurement =
  | 'weigh'
  | 'second-edge'
  | 'weigh-empty-hive'
  | 'count-capped-frames'
  | 'count-frames-of-bees'
  | 'weigh-on-hive'
  | 'wait-and-weigh'
  | 'weigh-capped-frame'
  | 'clear-snow'
  | 'count-pollen-frames';

export interface Worth {
  readonly what: Measurement;
  /** Standard deviation of the stores once it is done, with the result now expected of it [kg]. */
  readonly sdKg: number;
  readonly minutes: number;
  /** Days to wait before it can be done. */
  readonly afterDays: number;
}

export type StoresNote = 'below-empty' | 'above-full' | 'bees-assumed' | 'weight-and-count-disagree' | 'lower-combs-assumed';

export interface StoresAnswer {
  /** What the bees can eat [kg]. */
  readonly storesKg: number;
  readonly sdKg: number;
  readonly errorParts: ErrorParts;
  /** The single measurement that cuts sdKg most; null where none does. */
  readonly measureNext: Worth | null;
  /** All that could be measured, best first. */
  readonly measurements: readonly Worth[];
  /** Set within three days of syrup. */
  readonly provisional: { readonly weighAgainOn: string } | null;
  /** True where the answer rests on weight and a build nobody weighed empty: then no colony is called spare. */
  readonly weightOnly: boolean;
  readonly byWeight: { readonly kg: number; readonly sdKg: number } | null;
  readonly byCount: { readonly kg: number; readonly sdKg: number } | null;
  readonly tare: {
    readonly massKg: number;
    /** The error all hives of the build share [kg], and that of this one. */
    readonly sharedSdKg: number;
    readonly ownSdKg: number;
    readonly basis: 'table' | 'own parts' | 'empty hive';
    /** Same text for the same build. */
    readonly buildKey: string;
  };
  readonly bees: { readonly count: number; readonly massKg: number; readonly sdKg: number };
  /** Capped honey counted in the top box; null where nobody looked. */
  readonly contact: { readonly frames: number; readonly kg: number; readonly sdKg: number } | null;
  readonly notes: readonly StoresNote[];
}
