import type { FieldError, Holding, JournalRecord, Result } from '@winterheft/core';
import { proxy } from 'comlink';
import { work } from '../background/client.ts';
import type { Snapshot } from '../background/holder.ts';
import { openDatabase } from '../store/database.ts';
import { Drafts } from '../store/drafts.ts';
import { JournalStore, type NewRecord, type StoreTrouble, troubleOf } from '../store/journal-store.ts';
import { demoText } from './demo.ts';
import { databaseName, isDemo, setDemo } from './demo-flag.ts';
import { Held, useHeld } from './held.ts';
import { atNow } from './today.ts';

/** When the journal was last copied to a file that was seen to be there: everything up to row `n` is in it. */
export interface Copied {
  readonly n: number;
  readonly date: string;
}

export interface SessionState {
  /** Null until the journal has been read. */
  readonly snapshot: Snapshot | null;
  readonly trouble: StoreTrouble | null;
  readonly copied: Copied | null;
  /** Something that failed outside any screen; shown until it is closed. */
  readonly mishap: string | null;
}

export { databaseName, isDemo };

const world = { nowMs: () => Date.now(), random: (bytes: number) => crypto.getRandomValues(new Uint8Array(bytes)), at: () => atNow() };
const database = openDatabase(databaseName);
const channel = typeof BroadcastChannel === 'undefined' ? null : new BroadcastChannel(databaseName);

export const session = new Held<SessionState>({ snapshot: null, trouble: null, copied: null, mishap: null });
export const drafts = new Drafts(database, world.nowMs);
export const store = new JournalStore(database, world, (unsaved) => {
  channel?.postMessage('changed');
  void refresh(unsaved);
});

/**
 * Opens what this device keeps: first what was half typed (so that the first paint has it), then the journal.
 * Gives back as soon as the screens can be shown; `journal` ends when it is there, or has been said to be in trouble.
 */
export async function openSession(): Promise<{ readonly journal: Promise<void> }> {
  database.on('versionchange', () => {
    database.close({ disableAutoOpen: false });
    session.set({ trouble: { kind: 'newer-version', says: 'versionchange' } });
  });
  channel?.addEventListener('message', () => void refresh([]));
  try {
    const [rows] = await Promise.all([database.facts.toArray(), drafts.load()]);
    const facts = new Map(rows.map(({ key, value }) => [key, value]));
    session.set({ copied: (facts.get('copied') as Copied | undefined) ?? null });
    const by = facts.get('by');
    if (typeof by === 'string') store.by = by;
    return { journal: openJournal(databaseName) };
  } catch (error) {
    store.trouble = troubleOf(error);
    session.set({ trouble: store.trouble });
    return { journal: openJournal(null) };
  }
}

async function openJournal(name: string | null): Promise<void> {
  try {
    const api = await work();
    const snapshot = await api.open(name, session.get().copied?.n ?? 0);
    // the demo's first opening: nothing is shown before its journal is there, for an empty holding leads to Begin
    if (isDemo && snapshot.records === 0) await takeIn(await demoText());
    else session.set({ snapshot });
  } catch (error) {
    report(error);
  }
}

let refreshing: Promise<void> | null = null;
let again: readonly string[] | null = null;

/** Lets the worker take in what is new and publishes what the journal folds to; calls that come meanwhile share one more turn. */
async function refresh(unsaved: readonly string[]): Promise<void> {
  again = unsaved;
  refreshing ??= (async () => {
    while (again !== null) {
      const lines: readonly string[] = again;
      again = null;
      try {
        const snapshot = await (await work()).catchUp(lines);
        session.set({ snapshot, trouble: store.trouble });
      } catch (error) {
        report(error);
      }
    }
    refreshing = null;
  })();
  return refreshing;
}

/** Writes records. Ends when the disk has them and the holding shows them; refused bodies come back as data. */
export async function append(entries: readonly NewRecord[]): Promise<Result<readonly JournalRecord[], FieldError>> {
  const written = await store.append(entries);
  await refreshing;
  return written;
}

/** Withdraws records; a strike is a record itself and can be struck. */
export async function strike(records: readonly JournalRecord[]): Promise<readonly JournalRecord[]> {
  const written = await append(records.map(({ id, yard }) => ({ yard, kind: 'strike', body: { target: id } })));
  if (!written.ok) throw new TypeError(`strike: ${written.error.kind}`);
  return written.value;
}

/**
 * Adds all lines of a journal file and gives how many were new. The first worker writes them; what it cannot is tried here, so that it
 * is kept in memory at least.
 *
 * onSlice   told how many of the new lines are written so far
 */
export async function takeIn(text: string, onSlice: (written: number, of: number) => void = () => undefined): Promise<number> {
  const api = await work();
  const { written, left, stamps } = await api.addFile(text, { clock: await store.sharedClock(), nowMs: world.nowMs() }, proxy(onSlice));
  if (left.length > 0) {
    const added = await store.addLines(left, stamps);
    await refreshing;
    return written + added;
  }
  channel?.postMessage('changed');
  await refresh(store.unsaved.map((line) => line.text));
  return written;
}

/** Remembers that somebody holds everything up to a row as a file. */
export async function markCopied(copied: Copied): Promise<void> {
  await setFact('copied', copied);
  session.set({ copied });
  const snapshot = await (await work()).markCopied(copied.n);
  session.set({ snapshot });
}

export async function setBy(by: string): Promise<void> {
  store.by = by;
  await setFact('by', by);
}

/** A fact about this device, outside the journal. Where nothing is kept it holds as long as the page. */
export async function setFact(key: string, value: unknown): Promise<void> {
  await database.facts.put({ key, value }).catch(() => undefined);
}

export async function fact(key: string): Promise<unknown> {
  return (await database.facts.get(key).catch(() => undefined))?.value;
}

/** All lines straight from the disk and from memory: for a file when a screen or the worker has failed. */
export async function rawText(): Promise<string> {
  const rows = await database.lines.toArray().catch(() => []);
  return [...rows, ...store.unsaved].map((line) => `${line.text}\n`).join('');
}

export function report(error: unknown): void {
  console.error(error);
  session.set({ mishap: error instanceof Error ? error.message : String(error) });
}

export function useSession(): SessionState {
  return useHeld(session);
}

/** The holding, or null while the journal is being read. */
export function useHolding(): Holding | null {
  return useSession().snapshot?.holding ?? null;
}

/** Enters the demo holding, which has a database of its own, or leaves it. The page starts afresh: nothing of one reaches the other. */
export function switchDemo(on: boolean): void {
  try {
    setDemo(on);
  } catch (error) {
    report(error);
    return;
  }
  location.hash = '#/';
  location.reload();
}
