import { cleanText, type PadKey, textAfter } from './typing.ts';

export type Edge = 'front' | 'rear';
export type HeftWord = 'heavy' | 'fair' | 'light';
export type Brood = 'clean' | 'signs' | 'not-looked';
/** What can be counted with the lid off: frames of bees, capped frames in the top box and below it. */
export type Count = 'bees' | 'top' | 'below';

export interface Seen {
  readonly bees: number | null;
  readonly top: number | null;
  readonly below: number | null;
  readonly brood: Brood | null;
}

/** What stands in the fields of one hive. */
export interface Fields {
  readonly front: string;
  readonly rear: string;
  readonly edge: Edge;
  readonly word: HeftWord | null;
  readonly seen: Seen;
  /** A reading out of all expectation the keeper has said is right, as text. */
  readonly sure: { readonly front: string | null; readonly rear: string | null };
}

/** How far one undo goes back: the last key, the whole reading it became part of, or a step aside. */
type Stride = 'key' | 'reading' | 'other';

/** One hive as it is being entered, with the way back. All of it is the draft on disk. */
export interface Entry extends Fields {
  readonly past: readonly { readonly stride: Stride; readonly fields: Fields }[];
}

const NOTHING_SEEN: Seen = { bees: null, top: null, below: null, brood: null };
const NOTHING: Fields = {
  front: '',
  rear: '',
  edge: 'front',
  word: null,
  seen: NOTHING_SEEN,
  sure: { front: null, rear: null },
};
export const NEW_ENTRY: Entry = { ...NOTHING, past: [] };

export type Action =
  | { readonly do: 'key'; readonly key: PadKey }
  /** A whole reading at once, from a keyboard's field or from a choice. */
  | { readonly do: 'text'; readonly edge: Edge; readonly text: string }
  | { readonly do: 'edge'; readonly edge: Edge }
  | { readonly do: 'swap' }
  | { readonly do: 'sure'; readonly edge: Edge }
  | { readonly do: 'word'; readonly word: HeftWord | null }
  | { readonly do: 'count'; readonly of: Count; readonly to: number }
  | { readonly do: 'brood'; readonly brood: Brood | null };

/** The entry after an action; the same one where nothing changes. */
export function entryAfter(entry: Entry, action: Action): Entry {
  const { past, ...fields } = entry;
  const next = fieldsAfter(fields, action);
  if (next === null) return entry;
  if (action.do === 'key' || action.do === 'text') return { ...next, past: [...past, { stride: 'key', fields }] };
  return { ...next, past: [...wholeReadings(past), { stride: 'other', fields }] };
}

function fieldsAfter(fields: Fields, action: Action): Fields | null {
  switch (action.do) {
    case 'key': {
      const text = textAfter(fields[fields.edge], action.key);
      return text === fields[fields.edge] ? null : { ...fields, [fields.edge]: text };
    }
    case 'text':
      return action.text === fields[action.edge] ? null : { ...fields, edge: action.edge, [action.edge]: action.text };
    case 'edge':
      return action.edge === fields.edge ? null : { ...fields, edge: action.edge };
    case 'swap':
      return { ...fields, front: fields.rear, rear: fields.front };
    case 'sure':
      return { ...fields, sure: { ...fields.sure, [action.edge]: fields[action.edge] } };
    case 'word':
      return action.word === fields.word ? null : { ...fields, word: action.word };
    case 'count':
      return action.to === fields.seen[action.of] ? null : { ...fields, seen: seenAfter(fields.seen, action.of, action.to) };
    case 'brood':
      return action.brood === fields.seen.brood ? null : { ...fields, seen: { ...fields.seen, brood: action.brood } };
  }
}

/** Who counts the lower box has seen the upper one: none there, until told otherwise, and shown as a nought. */
function seenAfter(seen: Seen, of: Count, to: number): Seen {
  return { ...seen, ...(of === 'below' && seen.top === null ? { top: 0 } : {}), [of]: to };
}

/** Keys at the end of the past joined to the one reading they made: a reading that is finished is taken back whole. */
function wholeReadings(past: Entry['past']): Entry['past'] {
  let first = past.length;
  while (first > 0 && past[first - 1]?.stride === 'key') first--;
  const begun = past[first];
  return begun === undefined ? past : [...past.slice(0, first), { stride: 'reading', fields: begun.fields }];
}

/** The entry as it is left when the hive is done. */
export function finished(entry: Entry): Entry {
  return { ...entry, past: wholeReadings(entry.past) };
}

/** One step back that can be seen: a key, a reading, a swap, a count; null where this hive has nothing to take back. */
export function undone(entry: Entry): Entry | null {
  for (let i = entry.past.length - 1; i >= 0; i--) {
    const { fields } = entry.past[i] as Entry['past'][number];
    if (!isOnlyEdge(entry, fields)) return { ...fields, past: entry.past.slice(0, i) };
  }
  return null;
}

/** Going to the other edge is no step of its own: whoever takes back wants something gone. */
function isOnlyEdge(now: Fields, before: Fields): boolean {
  const { edge: _now, past: _past, ...shown } = { past: null, ...now };
  const { edge: _before, ...earlier } = before;
  return JSON.stringify(shown) === JSON.stringify(earlier);
}

/** Whether anything of a hive has been entered. */
export function isBegun({ front, rear, word, seen }: Fields): boolean {
  return front !== '' || rear !== '' || word !== null || hasSeen(seen);
}

export function hasSeen(seen: Seen): boolean {
  return seen.bees !== null || seen.top !== null || seen.below !== null || seen.brood !== null;
}

/** What this device stored for a hive, or null where it does not fit (an older version wrote it). The way back goes as far as it can be read. */
export function entryOf(stored: unknown): Entry | null {
  const fields = fieldsOf(stored);
  if (fields === null) return null;
  const past = (stored as { readonly past?: unknown }).past;
  const steps: Entry['past'][number][] = [];
  for (const step of Array.isArray(past) ? past : []) {
    const back = fieldsOf(step?.fields);
    const stride: unknown = step?.stride;
    if (back === null || (stride !== 'key' && stride !== 'reading' && stride !== 'other')) continue;
    steps.push({ stride, fields: back });
  }
  return { ...fields, past: steps };
}

function fieldsOf(stored: unknown): Fields | null {
  if (typeof stored !== 'object' || stored === null) return null;
  const { front, rear, edge, word, seen, sure } = stored as Record<string, unknown>;
  if (typeof front !== 'string' || typeof rear !== 'string') return null;
  if (cleanText(front) !== front || cleanText(rear) !== rear) return null;
  return {
    front,
    rear,
    edge: edge === 'rear' ? 'rear' : 'front',
    word: word === 'heavy' || word === 'fair' || word === 'light' ? word : null,
    seen: seenOf(seen),
    sure: { front: textOr(sure, 'front'), rear: textOr(sure, 'rear') },
  };
}

function textOr(stored: unknown, edge: Edge): string | null {
  const text = typeof stored === 'object' && stored !== null ? (stored as Record<string, unknown>)[edge] : null;
  return typeof text === 'string' ? text : null;
}

function seenOf(stored: unknown): Seen {
  if (typeof stored !== 'object' || stored === null) return NOTHING_SEEN;
  const { bees, top, below, brood } = stored as Record<string, unknown>;
  const count = (value: unknown) => (typeof value === 'number' && value >= 0 && value <= 60 ? value : null);
  return {
    bees: count(bees),
    top: count(top),
    below: count(below),
    brood: brood === 'clean' || brood === 'signs' || brood === 'not-looked' ? brood : null,
  };
}
