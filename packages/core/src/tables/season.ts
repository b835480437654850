import type { Mark } from './types.ts';

/** A bloom a keeper can see, and the date of spring it stands for. */
export interface BloomRow {
  readonly plant: string;
  readonly stage: 'first' | 'full';
  readonly event: 'firstPollen' | 'firstForage';
  /** Null where no sum was found: the bloom stands for the event as it is. */
  baseC: number | null;
  sumCd: number | null;
  readonly source: string;
  readonly mark: Mark;
  readonly note: string;
}

/** A task of the year: when it can be done, until when it does its work, and what it takes. */
export interface TaskRow {
  readonly code: string;
  /** A date of the season or a month and day, and days after it. */
  readonly from: string;
  fromDays: number | null;
  /** The same, or what the last day is worked back from: `weighing`, `feeding`, `check`, `lift`, `mites`. */
  readonly until: string;
  untilDays: number | null;
  /** Afternoon it wants [degC]; null: any. */
  openAboveC: number | null;
  /** The keeper's work at one hive and for one visit [min]. */
  minutesEach: number | null;
  minutesYard: number | null;
  /** Where the record that finishes it is written; null: it has none of its own. */
  readonly enter: string | null;
  readonly source: string;
  readonly mark: Mark;
  readonly note: string;
}

/** A rule of the trade about how big a colony must be to winter alone. */
export interface SizeRow {
  readonly where: string;
  readonly when: string;
  readonly queen: string;
  lowFrames: number | null;
  highFrames: number | null;
  readonly source: string;
  readonly mark: Mark;
  readonly note: string;
}
