import { dailyCharacters } from '../tables/climate-character.gen.ts';
import { climatePlaces } from '../tables/climate-places.gen.ts';
import { stationSpreads } from '../tables/climate-spread.gen.ts';
import { classSpreads } from '../tables/climate-spread-by-class.gen.ts';
import type { ClimatePlace } from '../tables/climate-types.ts';
import { weatherParameters } from '../tables/parameters-weather.gen.ts';

export interface Spread {
  readonly monthlySdMeanC: readonly number[];
  readonly dailySdC: readonly number[];
}

/** Place of October to April, the order of the class table, in a year that starts with January. */
const CLASS_MONTHS = [9, 10, 11, 0, 1, 2, 3] as const;

/**
 * How much months and days scatter at a place without a series of its own.
 *
 * October to April: by January mean, straight lines between the middles of the published classes (the outer classes,
 * open or last, hold beyond theirs), so that a place on a boundary does not jump. May to September, when stations differ
 * little: the median of the stations with a series.
 *
 * source      [DAILY-SPREAD], classes; medians computed here from the station table
 */
export function spreadOfClass(januaryC: number): Spread {
  const centres = classSpreads.map((row) => (row.januaryLowC === null ? row.januaryHighC - 3 : (row.januaryLowC + row.januaryHighC) / 2));
  let upper = centres.findIndex((centre) => centre >= januaryC);
  if (upper < 0) upper = centres.length - 1;
  const lower = Math.max(0, upper - 1);
  const gap = centres[upper]! - centres[lower]!;
  const share = gap > 0 ? Math.min(1, Math.max(0, (januaryC - centres[lower]!) / gap)) : 0;
  const between = stationMedians(stationSpreads.map((row) => row.sdBetweenYearsC));
  const daily = stationMedians(stationSpreads.flatMap((row) => (row.sdDailyInMonthC === null ? [] : [row.sdDailyInMonthC])));
  CLASS_MONTHS.forEach((month, k) => {
    const mix = (of: 'sdBetweenYearsC' | 'sdDailyInMonthC') =>
      (1 - share) * classSpreads[lower]![of][k]! + share * classSpreads[upper]![of][k]!;
    between[month] = mix('sdBetweenYearsC');
    daily[month] = mix('sdDailyInMonthC');
  });
  return { monthlySdMeanC: between, dailySdC: daily };
}

/** Spread of a place: its own station's where the table has one, the class's for what is missing. `own` says which. */
export function spreadOfPlace(place: string, januaryC: number): Spread & { readonly own: boolean } {
  const ofClass = spreadOfClass(januaryC);
  const station = stationSpreads.find((row) => row.place === place);
  if (!station) return { ...ofClass, own: false };
  return { monthlySdMeanC: station.sdBetweenYearsC, dailySdC: station.sdDailyInMonthC ?? ofClass.dailySdC, own: true };
}

/** Correlations from day to day: the middle between a continental and a maritime station, which lies inside the published winter range. */
export function persistence(): { readonly r1: readonly number[]; readonly r5: readonly number[] } {
  const { albertaFoothills: inland, montreal: seaboard } = dailyCharacters;
  return {
    r1: inland.r1.map((r, month) => (r + seaboard.r1[month]!) / 2),
    r5: inland.r5.map((r, month) => (r + seaboard.r5[month]!) / 2),
  };
}

/**
 * Skewness of daily anomalies by month. A cold tail in winter, except under the Siberian high.
 *
 * November to March pass from the foothills' values to the Siberian one between the two January means of the parameters.
 */
export function skewOf(januaryC: number): readonly number[] {
  const { mildJanuaryC, siberianJanuaryC, siberianSkewFrac } = weatherParameters;
  const span = mildJanuaryC.value - siberianJanuaryC.value;
  const siberian = Math.min(1, Math.max(0, (mildJanuaryC.value - januaryC) / span));
  return dailyCharacters.albertaFoothills.skew.map((skew, month) =>
    month <= 2 || month >= 10 ? (1 - siberian) * skew + siberian * siberianSkewFrac.value : skew,
  );
}

/** Mean daily maximum minus minimum at a place, or the median of the country's places (of Canada's where it has none). */
export function rangeOf(place: ClimatePlace | null): { readonly rangeC: readonly number[]; readonly own: boolean } {
  if (place?.maxC && place.minC) return { rangeC: differences(place.maxC, place.minC), own: true };
  const withRange = (country: string) =>
    climatePlaces.flatMap((row) => (row.country === country && row.maxC && row.minC ? [differences(row.maxC, row.minC)] : []));
  const rows = withRange(place?.country ?? 'CA');
  return { rangeC: stationMedians(rows.length > 0 ? rows : withRange('CA')), own: false };
}

function differences(upper: readonly number[], lower: readonly number[]): readonly number[] {
  return upper.map((value, month) => value - lower[month]!);
}

/** Median over stations, month by month. */
export function stationMedians(rows: readonly (readonly number[])[]): number[] {
  return Array.from({ length: 12 }, (_, month) => {
    const sorted = rows.map((row) => row[month]!).sort((a, b) => a - b);
    const half = Math.floor(sorted.length / 2);
    return sorted.length % 2 === 1 ? sorted[half]! : (sorted[half - 1]! + sorted[half]!) / 2;
  });
}
