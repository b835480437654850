import { type Bodies, type Result, type WashAnswer, type WashMethod, wash } from '@winterheft/core';
import { typedNumber } from '../ui/typed-number.ts';

/** A wash as it is being typed; kept as a draft. */
export interface WashTyped {
  readonly bees: string;
  readonly mites: string;
  readonly method: WashMethod;
}

export const NO_WASH: WashTyped = { bees: '300', mites: '', method: 'alcohol' };

export function readWash(stored: unknown): WashTyped | null {
  if (typeof stored !== 'object' || stored === null) return null;
  const known = stored as Readonly<Record<string, unknown>>;
  const fits = Object.entries(NO_WASH).every(([key, value]) => typeof known[key] === typeof value);
  return fits ? (known as unknown as WashTyped) : null;
}

/** What the typed counts say; null while a count is missing. */
export function washSays(typed: WashTyped, thresholdFrac: number | undefined): Result<WashAnswer> | null {
  const [bees, mites] = [typedNumber(typed.bees), typedNumber(typed.mites)];
  return bees === null || mites === null ? null : wash({ bees, mites, method: typed.method, thresholdFrac });
}

export function washBody(colony: string, typed: WashTyped): Bodies['wash'] {
  return { colony, bees: Number(typedNumber(typed.bees)), mites: Number(typedNumber(typed.mites)), method: typed.method };
}
