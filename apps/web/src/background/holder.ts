import {
  type Clash,
  foldHolding,
  type Holding,
  type Journal,
  type JournalRecord,
  journalDigest,
  mergeJournals,
  normalJournal,
  readJournal,
  type SettingKey,
  type UnreadLine,
  writeJournal,
} from '@winterheft/core';
import { lineKey, unreadKey } from '../store/line-key.ts';

/** What a file would bring, said before anything is added. */
export interface FileCounts {
  readonly fresh: number;
  readonly known: number;
  /** Lines of the file that cannot be read here; they are kept and passed on. */
  readonly unread: number;
  /** Those of them that are not here yet. */
  readonly freshUnread: number;
  /** The first of the unread ones. */
  readonly unreadLines: readonly UnreadLine[];
  /** What does not fit together after the union and is no clash before it: how many, and the first of them. */
  readonly clashing: number;
  readonly clashes: readonly Clash[];
  /** Records and unreadable lines that are here and not in the file: none makes it a copy. */
  readonly lacks: number;
}

export interface FileRows {
  readonly rows: readonly { readonly key: string; readonly text: string }[];
  readonly stamps: readonly string[];
}

/** What the screens see. */
export interface Snapshot extends Folded {
  /** Records written on this device that no file has taken along. */
  readonly uncopied: number;
}

export interface Folded {
  readonly holding: Holding;
  readonly records: number;
  readonly unread: number;
  /** Local date of the last thing that happened; a clock set back shows against it. */
  readonly lastDate: string | null;
}

/** The journal in memory and what it folds to. Pure: lines come in as text. */
export class Holder {
  private journal: Journal = { records: [], unread: [] };
  private folded: Folded | null = null;

  add(texts: readonly string[]): void {
    if (texts.length === 0) return;
    this.journal = mergeJournals(this.journal, readJournal(texts.join('\n')));
    this.folded = null;
  }

  snapshot(): Folded {
    this.folded ??= snapshotOf(this.journal);
    return this.folded;
  }

  /** Sorted ids in one word: names the journal a plan was made from. */
  digest(): string {
    return journalDigest(this.journal.records);
  }

  records(): readonly JournalRecord[] {
    return this.journal.records;
  }

  unread(): readonly UnreadLine[] {
    return this.journal.unread;
  }

  text(): string {
    return writeJournal(this.journal);
  }

  recordsOfSetting(key: SettingKey): readonly JournalRecord[] {
    return this.journal.records.filter((record) => record.kind === 'setting' && record.body.key === key);
  }

  unreadLines(): readonly UnreadLine[] {
    return firstOf(this.journal.unread);
  }

  compare(file: string): FileCounts {
    const incoming = readJournal(file);
    const merged = mergeJournals(this.journal, incoming);
    const before = new Set(this.snapshot().holding.clashes.map((clash) => JSON.stringify(clash)));
    const clashes = snapshotOf(merged).holding.clashes.filter((clash) => !before.has(JSON.stringify(clash)));
    const fresh = merged.records.length - this.journal.records.length;
    return {
      fresh,
      known: incoming.records.length - fresh,
      unread: incoming.unread.length,
      freshUnread: merged.unread.length - this.journal.unread.length,
      unreadLines: firstOf(incoming.unread),
      clashing: clashes.length,
      clashes: clashes.slice(0, SHOWN),
      lacks: merged.records.length - incoming.records.length + merged.unread.length - incoming.unread.length,
    };
  }
}

/** Lines and clashes that are listed by name; the rest is counted. */
const SHOWN = 20;
/** So much of a line's text as tells which one it is: a line may be of any length. */
const SHOWN_TEXT = 120;

function firstOf(lines: readonly UnreadLine[]): readonly UnreadLine[] {
  return lines.slice(0, SHOWN).map((line) => ({ ...line, text: line.text.slice(0, SHOWN_TEXT) }));
}

function snapshotOf(journal: Journal): Folded {
  const holding = foldHolding(journal.records, { unread: journal.unread });
  let lastDate: string | null = null;
  for (const { at } of journal.records) if (lastDate === null || at.date > lastDate) lastDate = at.date;
  return { holding, records: journal.records.length, unread: journal.unread.length, lastDate };
}

/** The rows a file is stored as. */
export function rowsOfFile(file: string): FileRows {
  const { records, unread } = normalOf(file);
  const lines = writeJournal({ records, unread: [] }).split('\n');
  const rows = records.map((record, i) => ({ key: lineKey(record.id, lines[i] as string), text: lines[i] as string }));
  return {
    rows: [...rows, ...unread.map(({ text }) => ({ key: unreadKey(text), text }))],
    stamps: latestStamps(records.map((record) => record.seen)),
  };
}

function normalOf(file: string): Journal {
  const { records, unread } = readJournal(file);
  return normalJournal(records, unread);
}

/** The latest stamp of each device is enough to move the clock. */
function latestStamps(stamps: readonly string[]): readonly string[] {
  const latestByDevice = new Map<string, string>();
  for (const stamp of stamps) {
    const device = stamp.slice(20);
    if ((latestByDevice.get(device) ?? '') < stamp) latestByDevice.set(device, stamp);
  }
  return [...latestByDevice.values()].sort();
}
