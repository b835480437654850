import type { JournalRecord, Result, SettingKey, UnreadLine } from '@winterheft/core';
import townsUrl from '../../../../data/places/towns.txt?url';
import { type Database, openDatabase, withReopening } from '../store/database.ts';
import { type AskersClock, addFile, type FileAdded } from './add-file.ts';
import { type FileCounts, Holder, type Snapshot } from './holder.ts';
import type { Place, PlaceWinter } from './place-winter.ts';
import { findTowns, readTowns, type Town } from './towns.ts';

/**
 * Everything that takes longer than a frame. One instance lives in a worker (or, where the browser refuses workers, in the page);
 * the screens talk to it through `background/client.ts`.
 */
export class WorkApi {
  private database: Database | null = null;
  private holder = new Holder();
  private lastN = 0;
  /** Rows written on this device, and up to which row all of it has been copied. */
  private hereRows: number[] = [];
  private copiedN = 0;
  private unsavedLines = 0;
  /** What is being read before the page has asked for it. */
  private begun: { readonly databaseName: string; readonly read: Promise<void> } | null = null;
  private towns: Promise<ReturnType<typeof readTowns>> | null = null;

  /** Begins to read a database before it is asked for. */
  begin(databaseName: string): void {
    const read = this.read(databaseName);
    this.begun = { databaseName, read };
    // whoever opens it is told
    read.catch(() => undefined);
  }

  /** Reads the whole journal of a database; to be called first. `null`: the browser keeps nothing, lines come by `catchUp` only. */
  async open(databaseName: string | null, copiedN: number): Promise<Snapshot> {
    const { begun } = this;
    this.begun = null;
    await (begun?.databaseName === databaseName ? begun.read : this.read(databaseName));
    this.copiedN = copiedN;
    return this.catchUp([]);
  }

  private async read(databaseName: string | null): Promise<void> {
    this.database = databaseName === null ? null : openDatabase(databaseName);
    this.holder = new Holder();
    this.lastN = 0;
    this.hereRows = [];
    await this.catchUp([]);
  }

  /** Takes in what has been added to the database since, by this or another tab, and lines the disk has refused. */
  async catchUp(unsaved: readonly string[]): Promise<Snapshot> {
    const { database, holder } = this;
    if (database !== null) {
      const rows = await withReopening(database, () => database.lines.where('n').above(this.lastN).toArray());
      // another journal may have been opened meanwhile
      if (holder !== this.holder) return this.snapshot();
      holder.add(rows.map((row) => row.text));
      this.lastN = rows.at(-1)?.n ?? this.lastN;
      for (const row of rows) if (row.from === 'here') this.hereRows.push(row.n);
    }
    this.holder.add(unsaved);
    this.unsavedLines = unsaved.length;
    return this.snapshot();
  }

  /** The journal as a file, and up to which row it goes. */
  async file(): Promise<{ readonly text: string; readonly n: number }> {
    return { text: this.holder.text(), n: this.lastN };
  }

  /** Everything up to this row has been handed out as a file. */
  async markCopied(n: number): Promise<Snapshot> {
    this.copiedN = n;
    return this.snapshot();
  }

  /** What was read, for a worker that computes with it; stays in this thread. */
  current(): Holder {
    return this.holder;
  }

  private snapshot(): Snapshot {
    const uncopied = this.hereRows.filter((n) => n > this.copiedN).length + this.unsavedLines;
    return { ...this.holder.snapshot(), uncopied };
  }

  /** Every record of one setting, struck ones included. */
  async recordsOfSetting(key: SettingKey): Promise<readonly JournalRecord[]> {
    return this.holder.recordsOfSetting(key);
  }

  /** The first lines of the journal that could not be read. */
  async unreadLines(): Promise<readonly UnreadLine[]> {
    return this.holder.unreadLines();
  }

  /** What a file would bring and what it lacks, against the rows up to `n`. */
  async compareFile(text: string): Promise<FileCounts & { readonly n: number }> {
    return { ...this.holder.compare(text), n: this.lastN };
  }

  /** Adds the lines of a file to the disk; `catchUp` takes them in. */
  async addFile(text: string, asker: AskersClock, onSlice: (written: number, of: number) => void): Promise<FileAdded> {
    return addFile(this.database, text, asker, onSlice);
  }

  /** Answers: whoever asks knows then that this runs. */
  async answers(): Promise<true> {
    return true;
  }

  async findTowns(typed: string, home: string | undefined): Promise<readonly Town[]> {
    this.towns ??= loadTowns();
    // A list that could not be loaded is asked for again the next time.
    const towns = await this.towns.catch((error: unknown) => {
      this.towns = null;
      throw error;
    });
    return findTowns(towns, typed, { home });
  }

  /** `winter` is named by its first year. The climate's tables are a file of their own: the journal is read sooner without them. */
  async winterAt(place: Place, winter: number): Promise<Result<PlaceWinter>> {
    const { winterOf } = await import('./place-winter.ts');
    return winterOf(place, winter);
  }
}

async function loadTowns(): Promise<ReturnType<typeof readTowns>> {
  const answer = await fetch(townsUrl);
  if (!answer.ok) throw new Error(`the list of towns could not be read (${answer.status})`);
  return readTowns(await answer.text());
}
