import {
  type At,
  type Bodies,
  clockOnReceipt,
  type FieldError,
  type JournalRecord,
  type Kind,
  lineOf,
  newStampClock,
  type Result,
  recordOf,
  type StampClock,
  stampOnWrite,
  uuidv7,
} from '@winterheft/core';
import { type Database, withReopening } from './database.ts';
import { lineKey } from './line-key.ts';
import { isLater, type NewLine, storedClock, writeLines } from './write-lines.ts';

/** A record about to be written: the store gives it its id and its stamp. */
export type NewRecord = { [K in Kind]: { readonly yard: string; readonly kind: K; readonly body: Bodies[K]; readonly at?: At } }[Kind];

/** Why something could not be put on disk. It is in memory then, and offered as a file. */
export type StoreTrouble = { readonly kind: 'full' | 'refused' | 'newer-version'; readonly says: string };

export interface World {
  readonly nowMs: () => number;
  readonly random: (bytes: number) => Uint8Array;
  /** Local date, time and zone of the yard's keeper. */
  readonly at: () => At;
}

/**
 * The journal on this device. Only ever adds. What the disk refuses stays in `unsaved` until a later try succeeds.
 */
export class JournalStore {
  readonly database: Database;
  readonly world: World;
  by = 'keeper';
  /** Lines that are in memory only. */
  unsaved: NewLine[] = [];
  trouble: StoreTrouble | null = null;
  private clock: StampClock;
  private readonly onChange: (lines: readonly string[]) => void;

  constructor(database: Database, world: World, onChange: (unsavedLines: readonly string[]) => void) {
    this.database = database;
    this.world = world;
    this.onChange = onChange;
    this.clock = newStampClock(deviceName(world.random));
  }

  /** Validates, stamps and stores; the promise ends when the disk has them (or has refused them: see `trouble`). */
  async append(entries: readonly NewRecord[]): Promise<Result<readonly JournalRecord[], FieldError>> {
    const nowMs = this.world.nowMs();
    const at = this.world.at();
    let clock = await this.sharedClock();
    const records: JournalRecord[] = [];
    for (const { yard, kind, body, at: when } of entries) {
      const stamped = stampOnWrite(clock, nowMs);
      clock = stamped.clock;
      const read = recordOf({
        id: uuidv7(nowMs, this.world.random(10)),
        yard,
        kind,
        at: when ?? at,
        by: this.by,
        seen: stamped.stamp,
        body,
      });
      if (!read.ok) {
        if (read.why.kind === 'not-a-record') return { ok: false, error: read.why.error };
        throw new TypeError(`append: no record of kind ${kind} can be written`);
      }
      records.push(read.record);
    }
    this.clock = clock;
    const lines = records.map((record): NewLine => ({ ...rowOf(record), from: 'here' }));
    await this.keep(lines, clock);
    return { ok: true, value: records };
  }

  /** Lines of a file that the first worker could not write; gives how many were not there yet. */
  async addLines(lines: readonly { readonly key: string; readonly text: string }[], stamps: readonly string[]): Promise<number> {
    const nowMs = this.world.nowMs();
    let clock = await this.sharedClock();
    for (const stamp of stamps) clock = clockOnReceipt(clock, stamp, nowMs).clock;
    this.clock = clock;
    return this.keep(
      lines.map(({ key, text }) => ({ key, text, from: 'file' })),
      clock,
    );
  }

  /** Tries again to put on disk what is in memory only. */
  async retry(): Promise<boolean> {
    const lines = this.unsaved;
    this.unsaved = [];
    this.trouble = null;
    await this.keep(lines, this.clock);
    return this.trouble === null;
  }

  private async keep(lines: readonly NewLine[], clock: StampClock): Promise<number> {
    try {
      const added = await writeLines(this.database, [...this.unsaved, ...lines], clock);
      this.unsaved = [];
      this.trouble = null;
      this.onChange([]);
      return added;
    } catch (error) {
      this.trouble = troubleOf(error);
      this.unsaved.push(...lines);
      this.onChange(this.unsaved.map((line) => line.text));
      return lines.length;
    }
  }

  /** The later of this window's clock and the one the other windows have left on disk. */
  async sharedClock(): Promise<StampClock> {
    const stored = await withReopening(this.database, () => storedClock(this.database)).catch(() => null);
    return stored !== null && !isLater(this.clock, stored) ? stored : this.clock;
  }
}

export function rowOf(record: JournalRecord): { readonly key: string; readonly text: string } {
  const text = lineOf(record);
  return { key: lineKey(record.id, text), text };
}

function deviceName(random: World['random']): string {
  return Array.from(random(8), (byte) => (byte % 36).toString(36)).join('');
}

export function troubleOf(error: unknown): StoreTrouble {
  const says = error instanceof Error ? `${error.name}: ${error.message}` : String(error);
  const inner = error instanceof Error && 'inner' in error && error.inner instanceof Error ? error.inner.name : '';
  const isFull = /QuotaExceeded/.test(`${says} ${inner}`);
  const isNewer = /VersionError/.test(`${says} ${inner}`);
  return { kind: isFull ? 'full' : isNewer ? 'newer-version' : 'refused', says };
}
