/** Layouts of station files that are read. */
export type StationLayout = 'ghcn-dly' | 'ghcn-csv' | 'noaa-summaries' | 'canada-daily' | 'dwd-daily' | 'epw' | 'plain';

/** Unit of the temperatures in a file. */
export type StationUnit = 'C' | 'F' | 'tenths-C';

/** Why a line, or a value of it, was not used. */
export type RejectedWhy =
  | 'not-a-date'
  | 'not-a-number'
  | 'out-of-range'
  | 'max-below-min'
  | 'repeated-day'
  | 'quality-flag'
  | 'line-too-short';

export interface RejectedLine {
  /** Counted from 1. */
  readonly line: number;
  readonly why: RejectedWhy;
}

/** Temperatures of one day as they stand in the file. */
export interface RawDay {
  readonly line: number;
  readonly day: number;
  mean?: number;
  max?: number;
  min?: number;
}

/** Who measured, as far as the file says. */
export interface StationPlace {
  readonly name: string | null;
  readonly latDeg: number | null;
  readonly lonDeg: number | null;
  readonly elevM: number | null;
}

/** A file as its layout reads it, before units and plausibility. */
export interface RawStation {
  readonly layout: StationLayout;
  readonly days: ReadonlyMap<number, RawDay>;
  readonly rejected: readonly RejectedLine[];
  /** null: the file does not say. */
  readonly unit: StationUnit | null;
  readonly place: StationPlace;
}

/** Why a file as a whole is refused; the shells word it and ask the question it holds. */
export type StationFault =
  | { readonly kind: 'not-text' }
  | { readonly kind: 'no-layout'; readonly firstLine: string }
  | { readonly kind: 'no-columns'; readonly columns: readonly string[] }
  | { readonly kind: 'which-unit'; readonly low: number; readonly high: number }
  | { readonly kind: 'wrong-unit'; readonly unit: 'C' | 'F'; readonly low: number; readonly high: number }
  | { readonly kind: 'which-date-order'; readonly example: string }
  | { readonly kind: 'no-days'; readonly rejected: number; readonly firstWhy: RejectedWhy | null }
  | { readonly kind: 'too-short'; readonly days: number; readonly leastDays: number }
  | { readonly kind: 'month-without-days'; readonly month: number }
  | { readonly kind: 'southern-hemisphere' };

export interface StationOptions {
  /** What the keeper says of a file that does not say it itself. */
  readonly unit?: 'C' | 'F' | undefined;
  readonly dateOrder?: 'day-first' | 'month-first' | undefined;
}

/** A daily record that was read and found plausible. */
export interface StationRecord {
  readonly layout: StationLayout;
  readonly place: StationPlace;
  readonly unit: StationUnit;
  /** True where the unit was told by the values, not by the file or the keeper. */
  readonly unitByValues: boolean;
  /** A typical year put together from months of different years: no winter of it happened. */
  readonly typical: boolean;
  /** Epoch days, both inclusive. */
  readonly fromDay: number;
  readonly toDay: number;
  /** [degC] daily means, bridged; NaN where a gap was too long. */
  readonly meanC: Float64Array;
  /** Days with a mean of their own, bridged days, and days left without one. */
  readonly readDays: number;
  readonly bridgedDays: number;
  readonly missingDays: number;
  /** First years of the winters that are whole from 1 September to 30 June. */
  readonly winters: readonly number[];
  /** [degC] mean daily maximum minus minimum by month, from January; null where a month has too few of both. */
  readonly rangeC: readonly number[] | null;
  readonly rejected: readonly RejectedLine[];
}
