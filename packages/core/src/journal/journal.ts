import { compareText } from './at.ts';
import { canonicalText } from './canonical.ts';
import { type JournalRecord, lineOf, recordOf, type Why } from './record.ts';
import { UPGRADES, upgradeRecord } from './upgrade.ts';

/** A line that could not be read. Its text is kept to the byte and written back as it was. */
export interface UnreadLine {
  /** Line in the file it was first seen in, from 1. */
  readonly line: number;
  readonly why: Why;
  readonly text: string;
}

/**
 * All records of a holding, each once, in the order of their ids; and the lines that could not be read, each once, in the order of their text.
 * Two records with the same id and different contents both stay in, so that the fold can report them.
 */
export interface Journal {
  readonly records: readonly JournalRecord[];
  readonly unread: readonly UnreadLine[];
}

/**
 * The journal in a file: one JSON object a line. Never fails: what is not understood is kept as unread, with the reason.
 *
 * text        lines ended by LF or CR LF, the last one ended or not; a byte order mark and blank lines carry nothing
 */
export function readJournal(text: string): Journal {
  const records: JournalRecord[] = [];
  const unread: UnreadLine[] = [];
  const lines = text.replace(/^\ufeff/, '').split('\n');
  for (let i = 0; i < lines.length; i++) {
    const line = lines[i] as string;
    if (line.trim() === '') continue;
    const read = readLine(line, i === lines.length - 1);
    if (read.ok) records.push(read.record);
    else unread.push({ line: i + 1, why: read.why, text: line });
  }
  return normalJournal(records, unread);
}

/** The journal as a file. The same set of records and unread lines gives the same bytes, wherever they came from. */
export function writeJournal(journal: Journal): string {
  return [...journal.records.map(lineOf), ...journal.unread.map((line) => line.text)].map((line) => `${line}\n`).join('');
}

/** The union of two journals: commutative, associative, idempotent. Nothing is chosen and nothing dropped here. */
export function mergeJournals(a: Journal, b: Journal): Journal {
  return normalJournal([...a.records, ...b.records], [...a.unread, ...b.unread]);
}

function readLine(line: string, isLast: boolean): ReturnType<typeof recordOf> {
  let raw: unknown;
  try {
    raw = JSON.parse(line);
  } catch {
    // a record cut off begins as one
    return { ok: false, why: { kind: isLast && line.trimStart().startsWith('{') ? 'torn' : 'not-json' } };
  }
  if (typeof raw !== 'object' || raw === null || Array.isArray(raw)) return recordOf(raw);
  const upgraded = upgradeRecord(raw as Record<string, unknown>, UPGRADES);
  return upgraded.ok ? recordOf(upgraded.raw) : upgraded;
}

/** Any records and unread lines as a journal: each once, in order. */
export function normalJournal(records: readonly JournalRecord[], unread: readonly UnreadLine[]): Journal {
  return { records: eachRecordOnce(records), unread: eachLineOnce(unread) };
}

function eachRecordOnce(records: readonly JournalRecord[]): JournalRecord[] {
  const sorted = [...records].sort((a, b) => compareText(a.id, b.id));
  const once: JournalRecord[] = [];
  for (let from = 0; from < sorted.length; ) {
    const first = sorted[from] as JournalRecord;
    let to = from + 1;
    while (to < sorted.length && (sorted[to] as JournalRecord).id === first.id) to++;
    if (to === from + 1) once.push(first);
    else {
      const recordByLine = new Map(sorted.slice(from, to).map((record) => [lineOf(record), record]));
      const inOrder = [...recordByLine].sort((a, b) => compareText(a[0], b[0]));
      once.push(...inOrder.map(([, record]) => record));
    }
    from = to;
  }
  return once;
}

function eachLineOnce(unread: readonly UnreadLine[]): UnreadLine[] {
  const lineByText = new Map<string, UnreadLine>();
  for (const line of unread) {
    const known = lineByText.get(line.text);
    lineByText.set(
      line.text,
      known === undefined ? line : { text: line.text, line: Math.min(known.line, line.line), why: firstWhy(known.why, line.why) },
    );
  }
  return [...lineByText.values()].sort((a, b) => compareText(a.text, b.text));
}

/** The same text can be `torn` at the end of one file and `not-json` inside another; the choice must not depend on which came first. */
function firstWhy(a: Why, b: Why): Why {
  return canonicalText(a) <= canonicalText(b) ? a : b;
}
