import {
  type Climate,
  climateNear,
  type JournalRecord,
  type Result,
  type SettingKey,
  seasonDistribution,
  type UnreadLine,
  yearlyCurve,
} from '@winterheft/core';
import townsUrl from '../../../../data/places/towns.txt?url';
import { type Database, openDatabase, withReopening } from '../store/database.ts';
import { type FileCounts, type FileRows, Holder, rowsOfFile, type Snapshot } from './holder.ts';
import { findTowns, readTowns, type Town } from './towns.ts';

interface DateSpread {
  readonly p10: string | null;
  readonly p50: string | null;
  readonly p90: string | null;
}

/** The winter of a place, for the picture a keeper begins with. */
export interface PlaceWinter {
  readonly climate: Climate;
  /** Daily means over 365 days from 1 January [degC]. */
  readonly dailyMeanC: Float64Array;
  /** Standard deviation of a day's mean round that course [degC]: months and days drawn together. */
  readonly dailySdC: Float64Array;
  readonly lastFeedingDay: DateSpread;
  readonly firstForage: DateSpread;
}

/** Enough for dates that are shown to the day with their spread; the plan draws its own. */
const PICTURE_MEMBERS = 200;
const PICTURE_SEED = 1;

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
  private towns: Promise<ReturnType<typeof readTowns>> | null = null;

  /** Reads the whole journal of a database; to be called first. `null`: the browser keeps nothing, lines come by `catchUp` only. */
  async open(databaseName: string | null, copiedN: number): Promise<Snapshot> {
    this.database = databaseName === null ? null : openDatabase(databaseName);
    this.holder = new Holder();
    this.lastN = 0;
    this.hereRows = [];
    this.copiedN = copiedN;
    return this.catchUp([]);
  }

  /** Takes in what has been added to the database since, by this or another tab, and lines the disk has refused. */
  async catchUp(unsaved: readonly string[]): Promise<Snapshot> {
    const { database } = this;
    if (database !== null) {
      const rows = await withReopening(database, () => database.lines.where('n').above(this.lastN).toArray());
      this.holder.add(rows.map((row) => row.text));
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

  async compareFile(text: string): Promise<FileCounts> {
    return this.holder.compare(text);
  }

  async rowsOfFile(text: string): Promise<FileRows> {
    return rowsOfFile(text);
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

  /** `winter` is named by its first year. */
  async winterAt(
    place: { readonly latDeg: number; readonly lonDeg: number; readonly elevM: number | null },
    winter: number,
  ): Promise<Result<PlaceWinter>> {
    const climate = climateNear(place.latDeg, place.lonDeg, place.elevM ?? undefined);
    if (!climate.ok) return climate;
    const { monthlyMeanC, monthlySdMeanC, dailySdC } = climate.value;
    const spread = monthlySdMeanC.map((between, month) => Math.hypot(between, dailySdC[month] as number));
    const { lastFeedingDay, firstForage } = seasonDistribution(climate.value, {
      seed: PICTURE_SEED,
      year: winter,
      members: PICTURE_MEMBERS,
    });
    return {
      ok: true,
      value: { climate: climate.value, dailyMeanC: yearlyCurve(monthlyMeanC), dailySdC: yearlyCurve(spread), lastFeedingDay, firstForage },
    };
  }
}

async function loadTowns(): Promise<ReturnType<typeof readTowns>> {
  const answer = await fetch(townsUrl);
  if (!answer.ok) throw new Error(`the list of towns could not be read (${answer.status})`);
  return readTowns(await answer.text());
}
