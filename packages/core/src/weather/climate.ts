import { type BadInput, bad, good, inRange, type Result } from '../result/index.ts';

/** What is said about where a climate's figures come from; the wording lives in the shells. */
export type ClimateNote =
  | { readonly code: 'warmed'; readonly place: string; readonly period: string }
  | { readonly code: 'own-spread'; readonly place: string }
  | { readonly code: 'class-spread'; readonly januaryC: number }
  | { readonly code: 'range-of-country'; readonly place: string }
  | { readonly code: 'extreme-site'; readonly place: string }
  | { readonly code: 'far'; readonly place: string; readonly distanceKm: number }
  | { readonly code: 'steep'; readonly place: string; readonly heightM: number }
  | { readonly code: 'entered-means' }
  | { readonly code: 'no-spread' }
  /** The keeper's record is the ensemble: so many whole winters. */
  | { readonly code: 'own-winters'; readonly winters: number; readonly from: string; readonly to: string }
  /** The record is too short for that; it moves the years of the tables by so much from November to March. */
  | { readonly code: 'own-correction'; readonly winters: number; readonly needed: number; readonly shiftC: number }
  /** A typical year: monthly means of it, spread of the tables. */
  | { readonly code: 'typical-year' }
  /** Days of the record that lie in a forecast are taken as they were, up to this one. */
  | { readonly code: 'own-days'; readonly until: string };

/** A keeper's own daily record behind a climate. */
export interface OwnRecord {
  /** Epoch day of the first value. */
  readonly fromDay: number;
  /** [degC] daily means, bridged; NaN where missing. */
  readonly meanC: Float64Array;
  /** First years of the winters that stand for the years to come; none: they are drawn from the tables. */
  readonly winters: readonly number[];
  /** From this epoch day on, the beginning of its last winter, the record is what happened; earlier days are only an example. */
  readonly happenedFromDay: number;
}

/** A place whose normals were used. `distanceKm` and `heightM` (place minus yard) are null where the keeper named the place. */
export interface ClimateSource {
  readonly place: string;
  readonly period: string;
  readonly source: string;
  readonly mark: string;
  readonly distanceKm: number | null;
  readonly heightM: number | null;
}

/** Everything the stochastic years are made from. All arrays hold twelve values from January. */
export interface Climate {
  readonly name: string;
  /** Mean of the daily means [degC]. */
  readonly monthlyMeanC: readonly number[];
  /** Standard deviation of the monthly mean between years [degC]. */
  readonly monthlySdMeanC: readonly number[];
  /** Standard deviation of the daily means inside one month, the season's slope included [degC]. */
  readonly dailySdC: readonly number[];
  /** Mean of daily maximum minus minimum [degC]. */
  readonly rangeC: readonly number[];
  /** Autocorrelation of the daily anomaly at 1 and 5 days. */
  readonly r1: readonly number[];
  readonly r5: readonly number[];
  /** Skewness of the daily anomaly; negative is a cold tail. */
  readonly skew: readonly number[];
  /** Error of the climate itself for the yard, one draw for the whole year [degC]. */
  readonly placeErrorSdC: number;
  readonly from: readonly ClimateSource[];
  readonly notes: readonly ClimateNote[];
  /** Left out: no record of the keeper's. */
  readonly own?: OwnRecord | undefined;
}

/** Coldest and warmest monthly mean that is taken for a place with bees; Fahrenheit typed as Celsius falls outside in summer. */
export const MONTHLY_MEAN_RANGE = { low: -60, high: 40, unit: 'degC' } as const;

/**
 * Twelve monthly means as a keeper typed them, or what is wrong with them.
 *
 * `latDeg` and the means themselves are used to refuse the southern hemisphere, whose winters this version does not know.
 */
export function checkedMonthlyMeans(monthlyMeanC: readonly number[], latDeg?: number): Result<readonly number[]> {
  if (!Array.isArray(monthlyMeanC)) return bad({ kind: 'missing', field: 'monthlyMeanC' });
  if (monthlyMeanC.length !== 12) {
    return bad({ kind: 'out-of-range', field: 'monthlyMeanC.length', value: monthlyMeanC.length, unit: 'months', low: 12, high: 12 });
  }
  for (let month = 0; month < 12; month++) {
    const value = inRange(`monthlyMeanC.${month}`, monthlyMeanC[month], MONTHLY_MEAN_RANGE);
    if (!value.ok) return value;
  }
  const south = southern(monthlyMeanC, latDeg);
  return south ? bad(south) : good([...monthlyMeanC]);
}

function southern(monthlyMeanC: readonly number[], latDeg: number | undefined): BadInput | null {
  const latitude = latDeg === undefined ? good(0) : checkedLatitude(latDeg);
  if (!latitude.ok) return latitude.error;
  const [january, july] = [monthlyMeanC[0]!, monthlyMeanC[6]!];
  if (january <= july) return null;
  return { kind: 'implausible', field: 'monthlyMeanC', value: january, unit: 'degC', why: 'january-warmer-than-july' };
}

/** A latitude of the northern hemisphere. */
export function checkedLatitude(latDeg: number): Result<number> {
  const latitude = inRange('latDeg', latDeg, { low: -90, high: 90, unit: 'deg' });
  if (!latitude.ok || latitude.value >= 0) return latitude;
  return bad({ kind: 'implausible', field: 'latDeg', value: latDeg, unit: 'deg', why: 'southern-hemisphere' });
}

/**
 * The same climate without any scatter: every drawn year is the smooth curve.
 *
 * For showing what weather contributes to a result: with this and everything else pinned, a forecast has no width.
 */
export function withoutSpread({ own: _own, ...climate }: Climate): Climate {
  const none = Array.from({ length: 12 }, () => 0);
  return {
    ...climate,
    monthlySdMeanC: none,
    dailySdC: none,
    skew: none,
    placeErrorSdC: 0,
    notes: [...climate.notes, { code: 'no-spread' }],
  };
}
