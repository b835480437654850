import { clockOnReceipt, type StampClock } from '@winterheft/core';
import { type Database, withReopening } from '../store/database.ts';
import { isLater, storedClock, writeLines } from '../store/write-lines.ts';
import { type FileRows, rowsOfFile } from './holder.ts';

/** Lines written in one transaction: so few that what a finger writes meanwhile gets its turn. */
const SLICE = 2000;

export interface FileAdded extends Pick<FileRows, 'stamps'> {
  readonly written: number;
  /** Lines the disk did not take; none where all went well. */
  readonly left: FileRows['rows'];
}

/** The clock of the page that asks, and what it reads on the wall. */
export interface AskersClock {
  readonly clock: StampClock;
  readonly nowMs: number;
}

/** Writes the lines of a file that are not there yet, slice by slice. Null: there is no disk. */
export async function addFile(
  database: Database | null,
  text: string,
  { clock: own, nowMs }: AskersClock,
  onSlice: (written: number, of: number) => void,
): Promise<FileAdded> {
  const { rows, stamps } = rowsOfFile(text);
  let written = 0;
  let left: FileRows['rows'] = rows;
  if (database === null) return { written, left, stamps };
  try {
    const known = new Set((await withReopening(database, () => database.lines.toArray())).map((row) => row.key));
    left = rows.filter((row) => !known.has(row.key));
    const fresh = left.length;
    const stored = await storedClock(database);
    let clock = stored !== null && !isLater(own, stored) ? stored : own;
    for (const stamp of stamps) clock = clockOnReceipt(clock, stamp, nowMs).clock;
    while (left.length > 0) {
      onSlice(fresh - left.length, fresh);
      const slice = left.slice(0, SLICE).map(({ key, text: line }) => ({ key, text: line, from: 'file' as const }));
      written += await writeLines(database, slice, clock);
      left = left.slice(SLICE);
    }
  } catch {
    // why it was refused is found out, and said, where the rest is tried again
  }
  return { written, left, stamps };
}
