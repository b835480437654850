import type { StampClock } from '@winterheft/core';
import Dexie from 'dexie';
import { type Database, type LineRow, withReopening } from './database.ts';

export type NewLine = Omit<LineRow, 'n'>;

/** One transaction: the lines that are not there yet, and the clock no other window may fall behind. Gives how many lines were new. */
export function writeLines(database: Database, lines: readonly NewLine[], clock: StampClock): Promise<number> {
  return withReopening(database, () =>
    database.transaction('rw', database.lines, database.facts, async () => {
      const known = await addNew(database, lines);
      const stored = await storedClock(database);
      if (stored === null || isLater(clock, stored)) await database.facts.put({ key: 'clock', value: clock });
      return lines.length - known;
    }),
  );
}

/** Gives how many were there already: their keys are refused, and nothing else is. */
async function addNew(database: Database, lines: readonly NewLine[]): Promise<number> {
  try {
    if (lines.length > 0) await database.lines.bulkAdd(lines as LineRow[]);
    return 0;
  } catch (error) {
    if (!(error instanceof Dexie.BulkError) || error.failures.some(({ name }) => name !== 'ConstraintError')) throw error;
    return error.failures.length;
  }
}

/** The clock that the windows of this browser share; null before the first record. */
export async function storedClock(database: Database): Promise<StampClock | null> {
  return ((await database.facts.get('clock'))?.value as StampClock | undefined) ?? null;
}

export function isLater(a: StampClock, b: StampClock): boolean {
  return a.ms !== b.ms ? a.ms > b.ms : a.counter > b.counter;
}
