import type { Mark } from './types.ts';

/** Level of mites by season, brood and way of counting, from which something is due. */
export interface MiteLevel {
  readonly key: string;
  readonly method: string;
  /** Month and day, both inclusive. */
  readonly from: string;
  readonly to: string;
  /** `brood`: with much brood; `little`: little or none; `any`: both. */
  readonly brood: string;
  readonly colony: string;
  /** Mites per bee for a wash, mites a day for a board. */
  /** Null on boards where none was read. */
  warn: number | null;
  treat: number;
  /** A level that is never accepted, whatever the doubt. */
  never: number | null;
  /** Board: below it is the safe side [mites/day]. */
  safe: number | null;
  /** Board: mites in the colony for one that falls a day. */
  mitesPerFall: number | null;
  readonly place: string;
  readonly source: string;
  readonly mark: Mark;
  readonly note: string;
}

/** What is known of one form of an active ingredient. The label in the keeper's hand rules over it. */
export interface MiteTreatment {
  readonly key: string;
  readonly active: string;
  readonly form: string;
  readonly nature: string;
  /** DEFAULT may decide where no label was typed in; RANGE and NOTE may not, they are held against the label. */
  readonly use: string;
  readonly brood: string;
  /** `no`: not with supers on; `label`: only the label says. */
  readonly supersOn: string;
  readonly tempBasis: string;
  tempLowC: number | null;
  tempHighC: number | null;
  /** Above this in the first `stopDays` days it does harm. */
  stopHighC: number | null;
  stopDays: number | null;
  durationDays: number | null;
  durationLowDays: number | null;
  durationHighDays: number | null;
  /** Share of the mites killed, without brood where `brood` asks for none. */
  effectLowFrac: number | null;
  effectHighFrac: number | null;
  effectBroodLowFrac: number | null;
  effectBroodHighFrac: number | null;
  leastBroodFrames: number | null;
  readonly resistance: string;
  readonly cautions: readonly string[];
  readonly country: string;
  readonly source: string;
  readonly mark: Mark;
  readonly effectSource: string;
  readonly effectMark: Mark;
  readonly note: string;
}
