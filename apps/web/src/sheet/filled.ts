import type { TypedEntry } from '@winterheft/core';
import type { Units } from '@winterheft/words';
import type { NewRecord } from '../store/journal-store.ts';
import { typedNumber } from '../ui/typed-number.ts';
import { type Entry, NEW_ENTRY, type Seen } from '../weighing/entry.ts';
import type { HiveFacts } from '../weighing/hive-facts.ts';
import { lookOf, readingsOf, type Scale, weighingBody } from '../weighing/records.ts';
import { cleanText } from '../weighing/typing.ts';

export const NUMBER_FIELDS = ['front', 'rear', 'bees', 'top', 'below'] as const;
export type NumberField = (typeof NUMBER_FIELDS)[number];
export type Brood = '' | 'clean' | 'signs' | 'not-looked';
export const BROODS: readonly Brood[] = ['', 'clean', 'signs', 'not-looked'];

/** One row of a filled sheet, as typed. */
export type FilledRow = Readonly<Record<NumberField, string>> & { readonly brood: Brood };

/** A filled sheet: the draft on disk. */
export interface Filled {
  readonly date: string;
  readonly rows: Readonly<Record<string, FilledRow>>;
}

export const EMPTY_ROW: FilledRow = { front: '', rear: '', bees: '', top: '', below: '', brood: '' };
const MOST_BEES = 60;

/** What this device stored, or null where it does not fit. */
export function filledOf(stored: unknown): Filled | null {
  if (typeof stored !== 'object' || stored === null) return null;
  const { date, rows } = stored as Record<string, unknown>;
  if (typeof date !== 'string' || typeof rows !== 'object' || rows === null) return null;
  const read = Object.entries(rows as Record<string, unknown>).map(([hive, row]) => [hive, rowOf(row)] as const);
  return { date, rows: Object.fromEntries(read) };
}

function rowOf(stored: unknown): FilledRow {
  const row = typeof stored === 'object' && stored !== null ? (stored as Record<string, unknown>) : {};
  const text = (field: NumberField) => (typeof row[field] === 'string' ? row[field] : '');
  const brood = BROODS.find((one) => one === row['brood']) ?? '';
  return { front: text('front'), rear: text('rear'), bees: text('bees'), top: text('top'), below: text('below'), brood };
}

export function isFilled(row: FilledRow): boolean {
  return row.brood !== '' || NUMBER_FIELDS.some((field) => row[field].trim() !== '');
}

/** The highest count a field takes in this hive. */
export function mostOf(field: 'bees' | 'top' | 'below', facts: HiveFacts): number {
  const boxes = Math.max(facts.boxes.length, facts.belowFrame === null ? 1 : 2);
  if (field === 'bees') return MOST_BEES;
  return field === 'top' ? facts.framesInBox : facts.framesInBox * (boxes - 1);
}

export type RowFault =
  | { readonly field: NumberField; readonly kind: 'no-number' }
  | { readonly field: NumberField; readonly kind: 'halves'; readonly high: number };

/** What no hive is needed to refuse: text that is no number, counts that are not in halves or more than there are frames. */
export function rowFaults(row: FilledRow, facts: HiveFacts): readonly RowFault[] {
  return NUMBER_FIELDS.flatMap((field): RowFault[] => {
    const text = row[field];
    if (text.trim() === '') return [];
    if (field === 'front' || field === 'rear') return cleanText(text) === null ? [{ field, kind: 'no-number' }] : [];
    const value = typedNumber(text) as number;
    if (Number.isNaN(value)) return [{ field, kind: 'no-number' }];
    const high = mostOf(field, facts);
    return value >= 0 && value <= high && Number.isInteger(value * 2) ? [] : [{ field, kind: 'halves', high }];
  });
}

export type DateFault = 'missing' | 'later' | 'old';

/** A sheet is of today or of the year before. ISO dates compare as text. */
export function dateFault(date: string, today: string): DateFault | null {
  if (!/^\d{4}-\d{2}-\d{2}$/.test(date)) return 'missing';
  if (date > today) return 'later';
  return date < yearBefore(today) ? 'old' : null;
}

/** The same day a year ago; of 29 February, the 28th. */
export function yearBefore(iso: string): string {
  const [year = '', month = '', day = ''] = iso.split('-');
  return `${Number(year) - 1}-${month}-${month === '02' && day === '29' ? '28' : day}`;
}

/** The row as an entry of the round; a field that is wrong counts as empty. */
function entryOfRow(row: FilledRow, facts: HiveFacts): Entry {
  const wrong = new Set(rowFaults(row, facts).map((fault) => fault.field));
  const count = (field: 'bees' | 'top' | 'below') => (wrong.has(field) ? null : typedNumber(row[field]));
  const seen: Seen = { bees: count('bees'), top: count('top'), below: count('below'), brood: row.brood === '' ? null : row.brood };
  return { ...NEW_ENTRY, front: cleanText(row.front) ?? '', rear: cleanText(row.rear) ?? '', seen };
}

/** The row as it is judged. */
export function typedEntry(row: FilledRow, { facts, units }: { readonly facts: HiveFacts; readonly units: Units }): TypedEntry {
  const entry = entryOfRow(row, facts);
  return { ...readingsOf(entry, units), look: lookOf(entry.seen, facts) ?? undefined };
}

interface RowOf {
  readonly hive: string;
  readonly colony: string;
  readonly yard: string;
  readonly facts: HiveFacts;
  readonly units: Units;
  readonly scale: Scale;
  readonly at: NonNullable<NewRecord['at']>;
}

/** The records a row makes, dated as the sheet is. */
export function rowRecords(row: FilledRow, { hive, colony, yard, facts, units, scale, at }: RowOf): readonly NewRecord[] {
  const entry = entryOfRow(row, facts);
  const weighing = weighingBody(entry, { hive, units, scale });
  const look = lookOf(entry.seen, facts);
  return [
    ...(weighing === null ? [] : [{ yard, kind: 'weighing', at, body: weighing } as const]),
    ...(look === null ? [] : [{ yard, kind: 'look', at, body: { colony, ...look } } as const]),
  ];
}
