import type { At, Bodies, Kind, Place, Settings } from '../journal/index.ts';
import type { Clash } from './clashes.ts';

/** When and by which record: every fact in the holding can be traced to the line it came from. */
export interface Happening {
  /** Id of the record. */
  readonly record: string;
  readonly at: At;
  /** Local epoch day in the yard. */
  readonly day: number;
  /** Instant [minutes since 1970-01-01T00:00Z]. */
  readonly minute: number;
}

/** A record's body with when it happened. */
export type Fact<K extends Kind> = Happening & Bodies[K];

export interface PartCount {
  readonly part: string;
  readonly count: number;
}

export interface Yard extends Happening {
  readonly id: string;
  readonly name: string;
  /** North; southern yards are refused when the journal is read. */
  readonly latDeg: number;
  readonly lonDeg: number;
  readonly elevM?: number;
  readonly climatePlace?: string;
  /** January first [degC]. */
  readonly monthlyMeanC?: readonly number[];
  readonly exchangeWith?: readonly string[];
}

export interface Stand extends Happening {
  readonly id: string;
  readonly yard: string;
  readonly row: string;
  readonly place: number;
}

/** What the hive was made of from some moment on: the last build, with the supers set on and taken off since. */
export interface Build extends Happening {
  readonly parts: readonly PartCount[];
  /** Boxes among them that `super` records set on since the hive's last full build; left out where there are none. */
  readonly supers?: number;
}

export interface Top extends Happening {
  readonly parts: readonly PartCount[];
  readonly absorbentDryKg?: number;
}

/** One heft: edge readings or a word, with what stood on the scale at that moment. */
export interface Weighing extends Happening {
  readonly frontKg?: number;
  readonly rearKg?: number;
  readonly word?: 'heavy' | 'fair' | 'light';
  readonly scale?: string;
  readonly liftM?: number;
  readonly stepKg?: number;
  /** Colonies in the hive then; more than one is a clash, none is one too. */
  readonly colonies: readonly string[];
  /** Build then; null where none had been recorded. */
  readonly parts: readonly PartCount[] | null;
  readonly top: Top | null;
}

export type ShutTick = Bodies['shut-tick']['tick'];

export interface Hive {
  readonly id: string;
  /** Null where records speak of a hive that no `hive` record names. */
  readonly label: string | null;
  readonly yard: string;
  /** The `hive` record that counts. */
  readonly named: Happening | null;
  readonly stand: string | null;
  readonly gone: boolean;
  /** Oldest first; the last is what stands now. */
  readonly builds: readonly Build[];
  readonly top: Top | null;
  readonly weighings: readonly Weighing[];
  /** Colonies in it now; more than one is a clash. */
  readonly colonies: readonly string[];
  /** Ticks by winter (its first year) and name. */
  readonly shut: ReadonlyMap<number, ReadonlyMap<ShutTick, Happening & { readonly done: boolean }>>;
}

/** A stay of a colony in a hive; `to` null while it lasts. */
export interface Stay {
  readonly hive: string;
  readonly from: Happening;
  readonly to: Happening | null;
}

export interface Treatment {
  readonly active: string;
  readonly product?: string;
  readonly lot?: string;
  /** Null where only its removal was recorded. */
  readonly in: Happening | null;
  /** Null while it is in. */
  readonly out: Happening | null;
}

export interface Move extends Happening {
  /** What happened to this colony's combs. */
  readonly direction: 'into' | 'out-of';
  readonly frame: string;
  readonly count: number;
  /** One frame, where weighed [kg]. */
  readonly massKg?: number;
  /** The other end. */
  readonly other: Place;
}

export interface Colony {
  readonly id: string;
  /** Yard of the hive it lives or last lived in. */
  readonly yard: string;
  readonly hive: string | null;
  readonly stays: readonly Stay[];
  readonly begun: Fact<'colony-begun'> | null;
  readonly ended: (Happening & { readonly how: 'died' | 'sold' | 'other' | 'united'; readonly into?: string }) | null;
  readonly queens: readonly Fact<'queen'>[];
  readonly looks: readonly Fact<'look'>[];
  readonly washes: readonly Fact<'wash'>[];
  readonly boards: readonly Fact<'board'>[];
  readonly treatments: readonly Treatment[];
  readonly feeds: readonly Fact<'feed'>[];
  readonly moves: readonly Move[];
  readonly splits: readonly Fact<'split'>[];
  readonly signs: readonly Fact<'sign'>[];
  readonly springCounts: readonly Fact<'spring-count'>[];
  /** `signs`: signs of disease were seen, here or in a colony it was made of, and no look without signs followed. Set aside. */
  readonly flag: 'signs' | null;
  /** Last look at the brood without signs, if none with signs followed; null means unknown, not healthy. */
  readonly cleanLook: Happening | null;
}

export interface Lot {
  readonly id: string;
  readonly yard: string;
  /** Kind of frame; like `massKg` null where records speak of a lot that no `bank-lot` record describes. */
  readonly frame: string | null;
  /** Running count: below zero is a clash and is shown as it is. */
  readonly count: number;
  /** One frame [kg]. */
  readonly massKg: number | null;
  readonly from: string | null;
  readonly crop?: string;
  /** Last look at the brood of the colony it came from before it left. */
  readonly looked?: string;
  /** Treatment strips were in the colony while the honey was made. */
  readonly strips: boolean;
  readonly begun: Happening | null;
}

/** Frames taken and not yet placed. */
export interface InHand {
  /** Colony or lot they were taken from. */
  readonly from: string;
  readonly frame: string;
  readonly count: number;
  readonly massKg?: number;
}

export interface KitCount extends Happening {
  readonly item: string;
  /** As counted, less and plus the frames that swaps took from and put into the shed since. */
  readonly count: number;
  readonly unit: string;
}

export interface AdoptedPlan extends Happening {
  readonly plan: Readonly<Record<string, unknown>>;
  readonly done: ReadonlyMap<string, Happening>;
}

export interface Unread {
  /** Lines that could not be read, in all and by why. */
  readonly lines: number;
  readonly byWhy: Readonly<Record<string, number>>;
  /** `setting` records with a key this version does not know. */
  readonly settings: readonly (Happening & { readonly key: string })[];
}

/** The state of all yards at the end of a journal. */
export interface Holding {
  readonly yards: ReadonlyMap<string, Yard>;
  readonly stands: ReadonlyMap<string, Stand>;
  readonly hives: ReadonlyMap<string, Hive>;
  readonly colonies: ReadonlyMap<string, Colony>;
  readonly lots: ReadonlyMap<string, Lot>;
  readonly inHand: readonly InHand[];
  readonly kit: ReadonlyMap<string, KitCount>;
  readonly partWeights: readonly Fact<'part-weighed'>[];
  readonly settings: Settings;
  readonly blooms: readonly (Fact<'bloom'> & { readonly yard: string })[];
  readonly weatherFiles: readonly (Fact<'weather-file'> & { readonly yard: string })[];
  /** By the id of the `plan-adopted` record. */
  readonly plans: ReadonlyMap<string, AdoptedPlan>;
  readonly refusals: readonly Fact<'refusal'>[];
  /** What the keeper said of tasks of the season: done, not this year, later. */
  readonly tasks: readonly (Fact<'task'> & { readonly yard: string })[];
  /** Those that are on. */
  readonly pins: readonly Fact<'pin'>[];
  readonly clashes: readonly Clash[];
  /** Ids of corrections and strikes whose target has not come in yet. */
  readonly waiting: readonly string[];
  /** Ids of records dated after the day asked for: kept, not folded. */
  readonly later: readonly string[];
  readonly unread: Unread;
}

/** The same, while the fold writes it. */
export type Draft<T> = {
  -readonly [K in keyof T]: T[K] extends readonly (infer U)[] ? U[] : T[K] extends ReadonlyMap<infer N, infer V> ? Map<N, V> : T[K];
};
