import type { ChangeFault } from '../journal/index.ts';

/** Things that records speak of by name. */
export type Thing = 'yard' | 'stand' | 'hive' | 'colony' | 'lot' | 'plan';

/**
 * What does not fit together in a journal. Every clash names the records (ids, oldest first) between which the keeper has to choose, by a strike or a
 * correction. The fold never chooses: balances stay below zero, both colonies stay in the hive, both labels stay.
 */
export type Clash =
  | ChangeFault
  | { readonly kind: 'unknown-thing'; readonly thing: Thing; readonly name: string; readonly records: readonly string[] }
  | { readonly kind: 'begun-twice'; readonly thing: 'colony' | 'lot'; readonly name: string; readonly records: readonly string[] }
  | { readonly kind: 'before-begin'; readonly thing: 'colony' | 'lot'; readonly name: string; readonly records: readonly string[] }
  | { readonly kind: 'after-end'; readonly colony: string; readonly records: readonly string[] }
  | { readonly kind: 'weighing-without-colony'; readonly hive: string; readonly records: readonly string[] }
  | { readonly kind: 'two-colonies'; readonly hive: string; readonly colonies: readonly string[]; readonly records: readonly string[] }
  | { readonly kind: 'placed-twice'; readonly colony: string; readonly hives: readonly string[]; readonly records: readonly string[] }
  | { readonly kind: 'gone-occupied'; readonly hive: string; readonly colonies: readonly string[]; readonly records: readonly string[] }
  | {
      readonly kind: 'label-twice';
      readonly yard: string;
      readonly label: string;
      readonly hives: readonly string[];
      readonly records: readonly string[];
    }
  | { readonly kind: 'lot-negative'; readonly lot: string; readonly count: number; readonly records: readonly string[] }
  | { readonly kind: 'lot-frame-differs'; readonly lot: string; readonly frames: readonly string[]; readonly records: readonly string[] }
  | {
      readonly kind: 'hand-negative';
      readonly from: string;
      readonly frame: string;
      readonly count: number;
      readonly records: readonly string[];
    }
  | { readonly kind: 'kit-negative'; readonly item: string; readonly count: number; readonly records: readonly string[] }
  | {
      readonly kind: 'part-negative';
      readonly hive: string;
      readonly part: string;
      readonly count: number;
      readonly records: readonly string[];
    }
  | { readonly kind: 'out-without-in'; readonly colony: string; readonly active: string; readonly records: readonly string[] };
