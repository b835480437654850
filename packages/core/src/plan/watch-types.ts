import type { BadInput } from '../result/index.ts';
import type { ScaleCourse, WinterUpdate } from '../watch/index.ts';
import type { Spread } from '../winter/index.ts';

/** Why a hive is on the list, with the figures the sentence needs. */
export type WatchReason =
  | { readonly code: 'may-run-out-soon'; readonly chanceFrac: number; readonly days: number }
  | { readonly code: 'short-until-forage'; readonly addKg: number; readonly holdFrac: number }
  | { readonly code: 'lift-is-old'; readonly days: number }
  | { readonly code: 'never-lifted-since-autumn'; readonly days: number }
  | { readonly code: 'silent'; readonly on: string }
  | { readonly code: 'frozen-down'; readonly on: string }
  | { readonly code: 'wet-lid'; readonly on: string }
  | { readonly code: 'reading-surprises'; readonly on: string; readonly which: 'lighter' | 'heavier'; readonly chanceFrac: number }
  | { readonly code: 'not-weighed-in-autumn' };

/** What to do, all of it from outside but the candy. */
export type WatchAct =
  | 'lift'
  | 'tap-and-listen'
  | 'clear-opening'
  | 'read-frost'
  | 'free-it-first'
  | 'look-under-lid'
  | 'give-candy'
  | 'lift-again';

/** A weighing of winter that says nothing, and why. */
export type RefusedWeighing =
  | { readonly code: 'frozen-down' | 'other-build'; readonly on: string }
  | { readonly code: 'impossible'; readonly on: string; readonly fault: BadInput };

export interface Rescue {
  /** Stores missing until forage at the asked certainty [kg]. */
  readonly storesKg: number;
  /** Slabs to lay on the top bars now, so that it holds until after the next lift; 0 where there is time. */
  readonly slabsNow: number;
  /** Slabs until forage, those of now included, if no later lift says otherwise. */
  readonly slabs: number;
  readonly slabKg: number;
  /** So long one slab lasts at the use of the coming weeks [days]. */
  readonly slabDays: number;
  /** Last day that comes before all but one case in twenty have run out; today where that is past. */
  readonly by: string;
  /** Daily high from which a lid may be lifted for some seconds [degC]. */
  readonly lidFromC: number;
}

export interface WatchLine {
  readonly colony: string;
  readonly hive: string;
  readonly yard: string;
  readonly label: string;
  /** Null where the hive was not weighed in autumn. */
  readonly update: Omit<WinterUpdate, 'weights'> | null;
  readonly lastLifted: string | null;
  /** Weight the hive should show now on the scale, both edges together, ice and frost inside the band [kg]. */
  readonly scaleNowKg: Spread | null;
  /** Share of the cases in which its stores have lasted until today. */
  readonly aliveFrac: number | null;
  /** Weighings since autumn as the scale showed them, and what of each may have been ice and snow [kg]. */
  readonly lifts: readonly { readonly on: string; readonly grossKg: number; readonly iceKg: number }[];
  /** Weight of the hive with no stores in it, and its error [kg]. */
  readonly empty: { readonly kg: number; readonly sdKg: number } | null;
  /** Its course on the scale; null unless asked for. */
  readonly course: ScaleCourse | null;
  readonly reasons: readonly WatchReason[];
  readonly acts: readonly WatchAct[];
  readonly rescue: Rescue | null;
  /** Weighings that were not used, and why. */
  readonly refused: readonly RefusedWeighing[];
}

export interface WatchAnswer {
  readonly today: string;
  /** The weighings of autumn that the forecast starts from; null where there were none. */
  readonly autumnDay: string | null;
  /** In the order of urgency: those with a reason first. */
  readonly lines: readonly WatchLine[];
  readonly certaintyFrac: number;
  readonly made: { readonly seed: number; readonly members: number };
}
