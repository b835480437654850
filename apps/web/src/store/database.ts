import Dexie, { type EntityTable } from 'dexie';

/** One line of the journal, exactly as it goes into a file. Rows are only ever added. */
export interface LineRow {
  /** Order of arrival on this device. */
  n: number;
  /** The id of the record (or `unread`) and a mark of the text: the same line cannot come in twice. */
  key: string;
  text: string;
  /** Written here, or come in with a file, so that another copy of it exists. */
  from: 'here' | 'file';
}

/** What somebody is in the middle of typing. */
export interface DraftRow {
  key: string;
  value: unknown;
  atMs: number;
}

/** Facts about this device: clock, when it was copied, what the browser said about keeping. */
export interface FactRow {
  key: string;
  value: unknown;
}

export type Database = Dexie & {
  lines: EntityTable<LineRow, 'n'>;
  drafts: EntityTable<DraftRow, 'key'>;
  facts: EntityTable<FactRow, 'key'>;
};

/** `strict`: a write is reported done when the disk has it, not when the operating system has promised to write it. */
export function openDatabase(name: string): Database {
  const database = new Dexie(name, { chromeTransactionDurability: 'strict' }) as Database;
  database.version(1).stores({ lines: '++n, &key', drafts: 'key', facts: 'key' });
  return database;
}

const LOST = new Set(['DatabaseClosedError', 'InvalidStateError', 'UnknownError', 'OpenFailedError', 'TransactionInactiveError']);

/**
 * Does some work in the database; where the browser has dropped the connection (after a while in the background some do), opens it again
 * and does the work once more. Anything added is keyed, so doing it twice adds it once.
 */
export async function withReopening<T>(database: Database, work: () => Promise<T>): Promise<T> {
  try {
    return await work();
  } catch (error) {
    if (!(error instanceof Error) || !LOST.has(error.name)) throw error;
    database.close({ disableAutoOpen: false });
    await database.open();
    return await work();
  }
}
