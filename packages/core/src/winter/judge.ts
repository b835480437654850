import { keyOf, stratifiedNormals } from '../chance/index.ts';
import { type ColonyOutcome, runOutIndex } from './outcome.ts';
import { meanOf, quantileOfSorted, type Spread, shareAbove, sorted, spreadOf } from './quantiles.ts';

/** Standard deviations of what a colony is thought to hold, by whose error it is [kg]. */
export interface StoresDoubt {
  /** Shared by every hive of the build: `key` names the build. */
  readonly tare: { readonly key: string; readonly sdKg: number };
  /** Shared by everything read on one scale: `key` names it. */
  readonly scale: { readonly key: string; readonly sdKg: number };
  /** The colony's own: reading, frames counted, pollen, water. */
  readonly own: { readonly sdKg: number };
  /** [kg/bee] how much lighter the stores are taken when a bee more sits in the hive; 0 when stores were counted, not weighed. */
  readonly beeKg: number;
}

export interface StoresBelief {
  readonly kg: number;
  readonly doubt: StoresDoubt;
}

/** Stores minus what is thought [kg], by member. `beesOff` is bees drawn minus bees thought; a frozen cause adds nothing. */
export function storesErrors(
  doubt: StoresDoubt,
  draw: { seed: number; beesOff: ArrayLike<number> },
  freeze: { tare?: boolean; scale?: boolean } = {},
): Float64Array {
  const errors = Float64Array.from(draw.beesOff, (off) => -doubt.beeKg * off);
  const add = (stream: string, entity: string, sdKg: number) => {
    if (sdKg === 0) return;
    const z = stratifiedNormals(keyOf(draw.seed, stream, entity), errors.length);
    for (let i = 0; i < errors.length; i++) errors[i]! += sdKg * z[i]!;
  };
  if (!freeze.tare) add('tare', doubt.tare.key, doubt.tare.sdKg);
  if (!freeze.scale) {
    add('scale', doubt.scale.key, doubt.scale.sdKg);
    add('reading', 'colony', doubt.own.sdKg);
  }
  return errors;
}

export interface Verdict {
  /** Smallest expected stores with which the asked share of the members holds until forage [kg]; all errors and the reserve inside. */
  readonly needKg: number;
  readonly needParts: { readonly broodlessKg: number; readonly broodKg: number; readonly reserveKg: number; readonly doubtKg: number };
  /** Share of members in which the stores last until forage; null when nothing is known of the stores. */
  readonly holdFrac: number | null;
  /** Days since the start at which the stores end; Infinity where that share never runs out. */
  readonly runOutIndex: Spread | null;
  /** The same in twenty cases of equal chance, earliest first; null when nothing is known of the stores. */
  readonly caseIndex: readonly number[] | null;
  /** Loss probability at so many kilograms below the need, what an even need leaves taken off. */
  readonly lossCurve: readonly { readonly shortKg: number; readonly lossFrac: number }[];
}

/**
 * Judges stores against a colony's outcome. Only subtraction and sorting: the model is not run, so this may happen on every digit.
 *
 * factor         appetite by member [1]
 * errors         stores minus what is thought, by member [kg]
 * storesKg       what the colony is thought to hold; null: unknown
 * reserveKg      honey out of reach, once
 * certaintyFrac  share of members that must hold, 0.5 to 0.995
 */
export function judge(input: {
  readonly outcome: ColonyOutcome;
  readonly factor: Float64Array;
  readonly errors: Float64Array;
  readonly storesKg: number | null;
  readonly reserveKg: number;
  readonly certaintyFrac: number;
}): Verdict {
  const { outcome, factor, errors, storesKg, reserveKg } = input;
  const { members } = outcome;
  const wanted = new Float64Array(members);
  const used = new Float64Array(members);
  const broodless = new Float64Array(members);
  for (let i = 0; i < members; i++) {
    used[i] = factor[i]! * outcome.toForageKg[i]!;
    broodless[i] = factor[i]! * outcome.broodlessKg[i]!;
    wanted[i] = used[i]! - errors[i]! + reserveKg;
  }
  const inOrder = sorted(wanted);
  const needKg = quantileOfSorted(inOrder, input.certaintyFrac);
  const broodlessKg = meanOf(broodless);
  const broodKg = meanOf(used) - broodlessKg;
  const needParts = { broodlessKg, broodKg, reserveKg, doubtKg: needKg - broodlessKg - broodKg - reserveKg };
  const lossCurve = [0, 1, 2, 3, 4, 6, 8, 10, 12, 15, 18, 22, 26, 30, 35, 40].map((shortKg) => ({
    shortKg,
    lossFrac: shareAbove(inOrder, needKg - shortKg) - shareAbove(inOrder, needKg),
  }));
  if (storesKg === null) return { needKg, needParts, holdFrac: null, runOutIndex: null, caseIndex: null, lossCurve };
  const ends = new Float64Array(members);
  let holding = 0;
  for (let i = 0; i < members; i++) {
    if (wanted[i]! <= storesKg + 1e-9) holding++;
    ends[i] = runOutIndex(outcome, i, { usableKg: storesKg + errors[i]! - reserveKg, factor: factor[i]! });
  }
  return { needKg, needParts, holdFrac: holding / members, runOutIndex: spreadOf(ends), caseIndex: casesOf(ends), lossCurve };
}

/** So many cases of equal chance are drawn for each colony. */
const CASES = 20;

/** The draws in order, cut into twenty groups of equal size, each by its middle one. */
function casesOf(ends: Float64Array): readonly number[] {
  const inOrder = sorted(ends);
  return Array.from({ length: CASES }, (_, i) => quantileOfSorted(inOrder, (i + 0.5) / CASES));
}
