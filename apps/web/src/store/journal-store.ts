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
import { type Database, type LineRow, withReopening } from './database.ts';
import { lineKey } from './line-key.ts';

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

type NewLine = Omit<LineRow, 'n'>;

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

  /** Lines of a file, known ones included; gives how many were not there yet. */
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
      const added = await withReopening(this.database, () => this.write([...this.unsaved, ...lines], clock));
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

  /** One transaction: the lines that are new, and the clock no other tab may fall behind. */
  private async write(lines: readonly NewLine[], clock: StampClock): Promise<number> {
    const { database } = this;
    return database.transaction('rw', database.lines, database.facts, async () => {
      const known = new Set(await knownKeys(database, lines));
      const fresh = lines.filter((line) => !known.has(line.key) && known.add(line.key));
      if (fresh.length === 1) await database.lines.add(fresh[0] as LineRow);
      else if (fresh.length > 1) await database.lines.bulkAdd(fresh as LineRow[]);
      const stored = (await database.facts.get('clock'))?.value as StampClock | undefined;
      if (stored === undefined || isLater(clock, stored)) await database.facts.put({ key: 'clock', value: clock });
      return fresh.length;
    });
  }

  /** The later of this tab's clock and the one the other tabs have left on disk. */
  private async sharedClock(): Promise<StampClock> {
    const stored = await withReopening(this.database, () => this.database.facts.get('clock')).catch(() => undefined);
    const clock = stored?.value as StampClock | undefined;
    return clock !== undefined && !isLater(this.clock, clock) ? clock : this.clock;
  }
}

function isLater(a: StampClock, b: StampClock): boolean {
  return a.ms !== b.ms ? a.ms > b.ms : a.counter > b.counter;
}

async function knownKeys(database: Database, lines: readonly NewLine[]): Promise<readonly string[]> {
  const rows: string[] = [];
  // In slices: one query over 100,000 keys would hold them all at once.
  for (let from = 0; from < lines.length; from += 5000) {
    const keys = lines.slice(from, from + 5000).map((line) => line.key);
    rows.push(...((await database.lines.where('key').anyOf(keys).uniqueKeys()) as unknown as string[]));
  }
  return rows;
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
