import type { ClimatePlace } from '../tables/climate-types.ts';
import { weatherParameters } from '../tables/parameters-weather.gen.ts';
import type { ClimateNote } from './climate.ts';

/** A place of the table as seen from a yard. */
export interface Neighbour {
  readonly row: ClimatePlace;
  readonly km: number;
  /** Place minus yard [m]; null where the yard's height is not known. */
  readonly heightM: number | null;
}

/** How many places are averaged: three have beaten one. Source: [PLACE-ERROR]. */
const AVERAGED = 3;

/** The three best places for a yard by distance and height together. */
export function nearest(
  rows: readonly ClimatePlace[],
  yard: { readonly latDeg: number; readonly lonDeg: number; readonly elevM?: number },
): readonly Neighbour[] {
  return rows
    .map((row) => ({ row, km: distanceKm(yard, row), heightM: yard.elevM === undefined ? null : row.elevM - yard.elevM }))
    .sort((a, b) => unlikenessKm(a.km, a.heightM) - unlikenessKm(b.km, b.heightM))
    .slice(0, AVERAGED);
}

/** How unlike a place is to a yard: kilometres away plus half a kilometre for every metre of height. Source: [PLACE-ERROR]. */
export function unlikenessKm(km: number, heightM: number | null): number {
  return km + weatherParameters.distancePerHeightKmPerM.value * Math.abs(heightM ?? 0);
}

/** What has to be said of a place that was chosen: too far away, or too high or low, to be like the yard. */
export function choiceNotes({ row, km, heightM }: Neighbour): readonly ClimateNote[] {
  const notes: ClimateNote[] = [];
  if (km > weatherParameters.farKm.value) notes.push({ code: 'far', place: row.place, distanceKm: km });
  if (heightM !== null && Math.abs(heightM) > weatherParameters.steepM.value) notes.push({ code: 'steep', place: row.place, heightM });
  return notes;
}

/**
 * Published error of the winter mean of three places at this mean distance.
 *
 * Straight lines between the middles of the printed bands (50, 150 and 300 km) and on to the last figure at 500 km.
 *
 * returns     standard deviation [degC]
 * source      [PLACE-ERROR]
 */
export function placeErrorC(meanKm: number): number {
  const p = weatherParameters;
  const points = [
    [50, p.placeErrorTo100KmC.value],
    [150, p.placeErrorTo200KmC.value],
    [300, p.placeErrorTo400KmC.value],
    [500, p.placeErrorBeyondC.value],
  ] as const;
  if (meanKm <= points[0][0]) return points[0][1];
  for (let k = 1; k < points.length; k++) {
    const [x0, y0] = points[k - 1]!;
    const [x1, y1] = points[k]!;
    if (meanKm <= x1) return y0 + ((y1 - y0) * (meanKm - x0)) / (x1 - x0);
  }
  return points[points.length - 1]![1];
}

/**
 * Error of a station's winter mean for a yard so far away: none at the yard itself, rising by a straight line to the published error of
 * one place within 100 km (its middle, 50 km), beyond that the published error of the choice.
 *
 * returns     standard deviation [degC]
 * source      [PLACE-ERROR]; the line below 50 km is ours
 */
export function stationErrorC(km: number): number {
  const near = weatherParameters.namedPlaceErrorC.value;
  return km <= 50 ? (near * km) / 50 : Math.max(near, placeErrorC(km));
}

/** Great-circle distance [km] on a sphere of 6371 km, haversine formula. */
export function distanceKm(
  a: { readonly latDeg: number; readonly lonDeg: number },
  b: { readonly latDeg: number; readonly lonDeg: number },
): number {
  const rad = Math.PI / 180;
  const north = Math.sin(((b.latDeg - a.latDeg) * rad) / 2) ** 2;
  const east = Math.cos(a.latDeg * rad) * Math.cos(b.latDeg * rad) * Math.sin(((b.lonDeg - a.lonDeg) * rad) / 2) ** 2;
  return 2 * 6371 * Math.asin(Math.min(1, Math.sqrt(north + east)));
}
