import { bad, epochDayOf, good, isoDateOf, OUTLOOK_RANGES, type Result } from '@winterheft/core';
import type { Fault } from '@winterheft/words';

/** A whole number given as an option, or the fault with its range. */
export function wholeOption(field: string, text: string, range: { readonly low: number; readonly high: number }): Result<number, Fault> {
  const value = Number(text);
  if (text.trim() === '' || !Number.isFinite(value)) return bad({ kind: 'not-a-number', field, value: text });
  if (!(value >= range.low && value <= range.high))
    return bad({ kind: 'out-of-range', field, value, unit: '', low: range.low, high: range.high });
  if (!Number.isInteger(value)) return bad({ kind: 'not-a-multiple', field, value, step: 1 });
  return good(value);
}

const DEFAULT_MEMBERS = 1000;
const DEFAULT_SEED = 1;
const SEEDS = { low: Number.MIN_SAFE_INTEGER, high: Number.MAX_SAFE_INTEGER };

export const membersOption = (text: string | undefined): Result<number, Fault> =>
  text === undefined ? good(DEFAULT_MEMBERS) : wholeOption('--members', text, OUTLOOK_RANGES.members);

export const seedOption = (text: string | undefined): Result<number, Fault> =>
  text === undefined ? good(DEFAULT_SEED) : wholeOption('--seed', text, SEEDS);

/** The day a plan is made for; left out: the date on this machine's calendar. */
export function todayOption(text: string | undefined, now: Date): Result<string, Fault> {
  if (text === undefined) return good(isoDateOf(Math.floor((now.getTime() - now.getTimezoneOffset() * 60_000) / 86_400_000)));
  return epochDayOf(text) === null ? bad({ kind: 'not-a-date', field: '--today', value: text }) : good(text);
}
