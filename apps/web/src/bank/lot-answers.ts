import { type Bodies, type FrameDepth, framePart, type Holding, type Lot, partOf } from '@winterheft/core';
import type { UnitFormat } from '@winterheft/words';
import { typedNumber } from '../ui/typed-number.ts';

/** A lot as it is being typed; kept as a draft. */
export interface LotAnswers {
  readonly lot: string;
  readonly yard: string;
  readonly frame: FrameDepth;
  readonly count: string;
  /** Of one comb, in the units shown. */
  readonly mass: string;
  /** Colony, or empty where it is not known. */
  readonly from: string;
  /** ISO date, or empty. */
  readonly looked: string;
  readonly crop: string;
  readonly strips: boolean;
}

export const NO_LOT: LotAnswers = { lot: '', yard: '', frame: 'deep', count: '', mass: '', from: '', looked: '', crop: '', strips: false };

export function readLotAnswers(stored: unknown): LotAnswers | null {
  if (typeof stored !== 'object' || stored === null) return null;
  const known = stored as Readonly<Record<string, unknown>>;
  const fits = Object.entries(NO_LOT).every(([key, value]) => typeof known[key] === typeof value);
  return fits ? (known as unknown as LotAnswers) : null;
}

/** What is wrong with a field: nothing there, no number, not whole, outside what can be, or the like. */
export type LotFault =
  | { readonly kind: 'missing' }
  | { readonly kind: 'not-a-number'; readonly typed: string }
  | { readonly kind: 'not-whole' }
  | { readonly kind: 'out-of-range'; readonly low: number; readonly high: number }
  | { readonly kind: 'name' }
  | { readonly kind: 'taken' }
  | { readonly kind: 'late' };

export type LotFaults = { readonly [K in keyof LotAnswers]?: LotFault };

/** Combs of one lot. */
export const LOT_COMBS = { low: 1, high: 500 };
const COUNT_AGAIN = { low: 0, high: 500 };
/** Outside these shares of an empty comb and of a full one it is no comb of its kind. */
const LEAST_OF_EMPTY_FRAC = 0.7;
const MOST_OF_FULL_FRAC = 1.4;
const NAME = /^[0-9A-Za-z][0-9A-Za-z._-]{0,59}$/;

/** A full comb of a kind with its frame [kg]. */
export function fullCombKg(frame: FrameDepth): number {
  const { massKg, cappedNetKg } = framePart(frame, 'drawn');
  return massKg + cappedNetKg;
}

/** What one comb of a kind can weigh [kg]. */
export function combRangeKg(frame: FrameDepth): { readonly low: number; readonly high: number } {
  return { low: framePart(frame, 'drawn').massKg * LEAST_OF_EMPTY_FRAC, high: fullCombKg(frame) * MOST_OF_FULL_FRAC };
}

/** The record of a typed lot, or what is wrong with it. */
export function lotOf(
  answers: LotAnswers,
  of: { readonly holding: Holding; readonly units: UnitFormat; readonly today: string },
): { readonly body: Bodies['bank-lot'] | null; readonly faults: LotFaults } {
  const { holding, units, today } = of;
  const { frame, from, looked, strips } = answers;
  const name = answers.lot.trim();
  const crop = answers.crop.trim().toLowerCase().replace(/\s+/g, '-');
  const count = countOf(answers.count, LOT_COMBS);
  const perKg = units.massOf(1);
  const range = combRangeKg(frame);
  const typed = typedNumber(answers.mass);
  const mass = numberFault(answers.mass, typed, { low: range.low * perKg, high: range.high * perKg });
  const faults: { -readonly [K in keyof LotFaults]: LotFault } = {};
  if (name === '') faults.lot = { kind: 'missing' };
  else if (!NAME.test(name)) faults.lot = { kind: 'name' };
  else if (holding.lots.has(name)) faults.lot = { kind: 'taken' };
  if (count.fault !== null) faults.count = count.fault;
  if (mass !== null) faults.mass = mass;
  if (crop !== '' && !NAME.test(crop)) faults.crop = { kind: 'name' };
  if (looked > today) faults.looked = { kind: 'late' };
  if (Object.keys(faults).length > 0 || typed === null) return { body: null, faults };
  return {
    faults,
    body: {
      lot: name,
      frame,
      count: count.value,
      massKg: Number((typed / perKg).toFixed(4)),
      ...(from === '' ? {} : { from }),
      ...(crop === '' ? {} : { crop }),
      ...(looked === '' ? {} : { looked }),
      strips,
    },
  };
}

/** A lot counted again: none may be left. */
export function countedAgain(typed: string): { readonly value: number; readonly fault: LotFault | null } {
  return countOf(typed, COUNT_AGAIN);
}

function countOf(
  typed: string,
  range: { readonly low: number; readonly high: number },
): { readonly value: number; readonly fault: LotFault | null } {
  const value = typedNumber(typed);
  const fault = numberFault(typed, value, range);
  if (fault !== null || value === null) return { value: 0, fault };
  return { value, fault: Number.isInteger(value) ? null : { kind: 'not-whole' } };
}

function numberFault(typed: string, value: number | null, { low, high }: { readonly low: number; readonly high: number }): LotFault | null {
  if (value === null) return { kind: 'missing' };
  if (Number.isNaN(value)) return { kind: 'not-a-number', typed };
  return value >= low && value <= high ? null : { kind: 'out-of-range', low, high };
}

/** Lots of a yard with what they come to, those that can be given on first. */
export interface LotLine {
  readonly lot: Lot;
  /** In words a keeper uses, or null where the kind was not recorded. */
  readonly frame: FrameDepth | null;
  readonly totalKg: number;
  /** Given to nobody: nobody looked, or signs were seen in the colony it came from. */
  readonly held: 'not-looked' | 'signs' | null;
}

export function lotLines(holding: Holding, yard: string): readonly LotLine[] {
  return [...holding.lots.values()]
    .filter((lot) => lot.yard === yard)
    .map((lot): LotLine => {
      const part = lot.frame === null ? undefined : partOf(lot.frame);
      const depth = part?.kind === 'frame' ? part.depth : isDepth(lot.frame) ? lot.frame : null;
      const origin = lot.from === null ? undefined : holding.colonies.get(lot.from);
      return {
        lot,
        frame: depth,
        totalKg: Math.max(0, lot.count) * (lot.massKg ?? 0),
        held: origin?.flag === 'signs' ? 'signs' : lot.looked === undefined ? 'not-looked' : null,
      };
    })
    .sort((a, b) => Number(a.held !== null) - Number(b.held !== null) || (a.lot.id < b.lot.id ? -1 : 1));
}

function isDepth(frame: string | null): frame is FrameDepth {
  return frame === 'deep' || frame === 'medium' || frame === 'shallow';
}
