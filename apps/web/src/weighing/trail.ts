import type { Holding, JournalRecord } from '@winterheft/core';
import type { Units } from '@winterheft/words';
import { drafts } from '../app/session.ts';
import { type Entry, entryOf, isBegun } from './entry.ts';
import { readingsOf } from './records.ts';

/** One step of a round that can be taken back. */
export interface Step {
  /** Where it was made, and where taking it back leads. */
  readonly hive: string;
  /** What is put back into the fields, by hive; null empties them. */
  readonly fields: Readonly<Record<string, Entry | null>>;
  /** What it wrote. */
  readonly records: readonly JournalRecord[];
}

/** Where the round stands and how it came there: kept on this device, so that undo survives closing. */
export interface Trail {
  readonly hive: string | null;
  readonly steps: readonly Step[];
}

/** Key of its draft. */
export const TRAIL = 'round';
export const NEW_TRAIL: Trail = { hive: null, steps: [] };
/** More steps than a round has. */
const LONGEST_TRAIL = 1000;

export function trailOf(stored: unknown): Trail | null {
  if (typeof stored !== 'object' || stored === null) return null;
  const { hive, steps } = stored as Record<string, unknown>;
  if (!Array.isArray(steps)) return null;
  return { hive: typeof hive === 'string' ? hive : null, steps: steps.flatMap((step) => stepOf(step) ?? []) };
}

function stepOf(stored: Partial<Step> | null): Step | null {
  if (typeof stored?.hive !== 'string' || !Array.isArray(stored.records)) return null;
  const fields = Object.entries(stored.fields ?? {}).map(([hive, entry]) => [hive, entryOf(entry)] as const);
  return { hive: stored.hive, fields: Object.fromEntries(fields), records: stored.records };
}

export function withStep(trail: Trail, step: Step): Trail {
  return { ...trail, steps: [...trail.steps, step].slice(-LONGEST_TRAIL) };
}

const DRAFT = 'round:';
/** Key of the draft of a hive's fields. */
export const draftKey = (hive: string) => DRAFT + hive;

/** An entry whose records are on their way: when the page dies in between, the next opening finds both or only this. */
export type SentEntry = Entry & { readonly sent: true };

interface Kept {
  readonly holding: Holding;
  readonly units: Units;
}

export interface BegunEntry {
  readonly hive: string;
  readonly entry: Entry;
  readonly atMs: number;
}

/** What is typed and no record yet, hive by hive. */
export function begunEntries(kept: Kept): readonly BegunEntry[] {
  return storedEntries().flatMap(({ hive, value, atMs }) => {
    const entry = isRecorded(value, hive, kept) ? null : entryOf(value);
    return entry === null || !isBegun(entry) ? [] : [{ hive, entry, atMs }];
  });
}

/** Empties the fields whose records are on the disk by now: they were refused when they were written, and taken later. */
export function forgetRecorded(kept: Kept): void {
  for (const { hive, value } of storedEntries()) if (isRecorded(value, hive, kept)) void drafts.clear(draftKey(hive));
}

function storedEntries() {
  return [...drafts.all()].flatMap(([key, draft]) => (key.startsWith(DRAFT) ? [{ hive: key.slice(DRAFT.length), ...draft }] : []));
}

/** The page died, or the disk was full, after the record was sent and before the draft was gone. */
export function isRecorded(stored: unknown, hive: string, { holding, units }: Kept): boolean {
  const entry = (stored as Partial<SentEntry> | null)?.sent === true ? entryOf(stored) : null;
  const last = holding.hives.get(hive)?.weighings.at(-1);
  if (entry === null || last === undefined) return false;
  const { frontKg, rearKg, word } = readingsOf(entry, units);
  return frontKg === last.frontKg && rearKg === last.rearKg && word === last.word;
}
