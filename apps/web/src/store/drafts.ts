import { type Database, withReopening } from './database.ts';

export interface Draft {
  readonly value: unknown;
  readonly atMs: number;
}

/**
 * Half-typed entries. All are read before the first paint, so a screen finds them without waiting; every change is written at once.
 * While one write is under way only the newest value of a key waits behind it: the disk never lags more than one write behind the finger.
 */
export class Drafts {
  private readonly draftByKey = new Map<string, Draft>();
  private readonly waiting = new Map<string, Draft | null>();
  private running: Promise<void> | null = null;
  private readonly database: Database;
  private readonly nowMs: () => number;

  constructor(database: Database, nowMs: () => number) {
    this.database = database;
    this.nowMs = nowMs;
  }

  async load(): Promise<void> {
    const rows = await withReopening(this.database, () => this.database.drafts.toArray());
    for (const { key, value, atMs } of rows) this.draftByKey.set(key, { value, atMs });
  }

  get(key: string): Draft | null {
    return this.draftByKey.get(key) ?? null;
  }

  all(): ReadonlyMap<string, Draft> {
    return this.draftByKey;
  }

  /** The promise ends when the disk has this value or a newer one; it never rejects: what cannot be written stays in memory. */
  set(key: string, value: unknown): Promise<void> {
    const draft = { value, atMs: this.nowMs() };
    this.draftByKey.set(key, draft);
    return this.queue(key, draft);
  }

  clear(key: string): Promise<void> {
    if (!this.draftByKey.delete(key)) return Promise.resolve();
    return this.queue(key, null);
  }

  private queue(key: string, draft: Draft | null): Promise<void> {
    this.waiting.set(key, draft);
    this.running ??= this.drain();
    return this.running;
  }

  private async drain(): Promise<void> {
    while (this.waiting.size > 0) {
      const batch = [...this.waiting];
      this.waiting.clear();
      await withReopening(this.database, () => this.write(batch)).catch(() => undefined);
    }
    this.running = null;
  }

  private async write(batch: readonly (readonly [string, Draft | null])[]): Promise<void> {
    const { database } = this;
    await database.transaction('rw', database.drafts, async () => {
      for (const [key, draft] of batch) {
        if (draft === null) await database.drafts.delete(key);
        else await database.drafts.put({ key, ...draft });
      }
    });
  }
}
