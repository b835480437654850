import { bad, good, inRange, type Result } from '../result/index.ts';
import { olderNormals } from '../tables/climate-older-normals.gen.ts';
import { climatePlaces } from '../tables/climate-places.gen.ts';
import type { ClimatePlace } from '../tables/climate-types.ts';
import { weatherParameters } from '../tables/parameters-weather.gen.ts';
import { choiceNotes, nearest, placeErrorC } from './choice.ts';
import { type Climate, type ClimateNote, type ClimateSource, checkedLatitude, checkedMonthlyMeans } from './climate.ts';
import { persistence, rangeOf, skewOf, spreadOfClass, spreadOfPlace } from './spread.ts';

/** One line of the list of places. */
export interface PlaceLine {
  readonly place: string;
  readonly country: string;
  readonly period: string;
  readonly source: string;
  readonly mark: string;
  readonly latDeg: number;
  readonly lonDeg: number;
  readonly elevM: number;
  /** Left out of the search by distance: nearly nobody keeps bees there. */
  readonly extreme: boolean;
}

/** Every place of the table, in its order. */
export function places(): readonly PlaceLine[] {
  return climatePlaces.map((row) => {
    const { place, country, period, source, mark, latDeg, lonDeg, elevM } = row;
    return { place, country, period, source, mark, latDeg, lonDeg, elevM, extreme: isExtreme(row) };
  });
}

/**
 * Climate of a place of the table, by name.
 *
 * Capitals, accents, points and commas do not count. A full name wins; else the beginning of exactly one name; else a part
 * of exactly one. Otherwise the error lists the candidates (none: an empty list).
 */
export function climateForPlace(name: string): Result<Climate> {
  if (typeof name !== 'string' || plain(name) === '') return bad({ kind: 'missing', field: 'place' });
  const wanted = plain(name);
  const exact = climatePlaces.filter((row) => plain(row.place) === wanted);
  const beginning = climatePlaces.filter((row) => plain(row.place).startsWith(wanted));
  const inside = climatePlaces.filter((row) => plain(row.place).includes(wanted));
  const hits = [exact, beginning, inside].find((rows) => rows.length > 0) ?? [];
  if (hits.length !== 1) return bad({ kind: 'unknown-choice', field: 'place', value: name, choices: hits.map((row) => row.place) });
  const row = hits[0]!;
  const source: ClimateSource = {
    place: row.place,
    period: row.period,
    source: row.source,
    mark: row.mark,
    distanceKm: null,
    heightM: null,
  };
  return good(climateOf([row], [source], { name: row.place, placeErrorSdC: weatherParameters.namedPlaceErrorC.value, notes: [] }));
}

/**
 * Climate of a yard from the three places that are nearest by distance and height; extreme sites are left out.
 *
 * The published error of such a choice goes with it as `placeErrorSdC`: it is as large as a year's own scatter, so
 * figures the keeper enters are better (`climateFromMonthly`). Without `elevM` height is not weighed.
 *
 * source      [PLACE-ERROR]
 */
export function climateNear(latDeg: number, lonDeg: number, elevM?: number): Result<Climate> {
  const checked = [
    checkedLatitude(latDeg),
    inRange('lonDeg', lonDeg, { low: -180, high: 180, unit: 'deg' }),
    inRange('elevM', elevM ?? 0, { low: -450, high: 6000, unit: 'm' }),
  ].find((result) => !result.ok);
  if (checked && !checked.ok) return checked;
  const best = nearest(
    climatePlaces.filter((row) => !isExtreme(row)),
    { latDeg, lonDeg, ...(elevM === undefined ? {} : { elevM }) },
  );
  const from = best.map(({ row, km, heightM }) => ({
    place: row.place,
    period: row.period,
    source: row.source,
    mark: row.mark,
    distanceKm: km,
    heightM,
  }));
  const name = best.map((entry) => entry.row.place).join(' / ');
  const placeErrorSdC = placeErrorC(best.reduce((sum, entry) => sum + entry.km, 0) / best.length);
  return good(
    climateOf(
      best.map((entry) => entry.row),
      from,
      { name, placeErrorSdC, notes: best.flatMap(choiceNotes) },
    ),
  );
}

/** Climate from twelve monthly means the keeper enters; they are taken as right for the yard, only the scatter comes from the tables. */
export function climateFromMonthly(monthlyMeanC: readonly number[], options: { readonly latDeg?: number } = {}): Result<Climate> {
  const means = checkedMonthlyMeans(monthlyMeanC, options.latDeg);
  if (!means.ok) return means;
  const januaryC = means.value[0]!;
  return good({
    name: 'entered',
    monthlyMeanC: means.value,
    ...spreadOfClass(januaryC),
    rangeC: rangeOf(null).rangeC,
    ...persistence(),
    skew: skewOf(januaryC),
    placeErrorSdC: 0,
    from: [],
    notes: [{ code: 'entered-means' }, { code: 'class-spread', januaryC }],
  });
}

/** Mean of one or more places of the table, older normals brought to 1991-2020 first. */
function climateOf(
  rows: readonly ClimatePlace[],
  from: readonly ClimateSource[],
  head: { readonly name: string; readonly placeErrorSdC: number; readonly notes: readonly ClimateNote[] },
): Climate {
  const notes = [...head.notes];
  const means = rows.map((row) => {
    const older = olderNormals.find((entry) => entry.normals === row.source);
    if (older) notes.push({ code: 'warmed', place: row.place, period: row.period });
    if (isExtreme(row)) notes.push({ code: 'extreme-site', place: row.place });
    return row.meanC.map((mean, month) => mean + (older?.warmingC[month] ?? 0));
  });
  const spreads = rows.map((row, i) => {
    const spread = spreadOfPlace(row.place, means[i]![0]!);
    notes.push(spread.own ? { code: 'own-spread', place: row.place } : { code: 'class-spread', januaryC: means[i]![0]! });
    return spread;
  });
  const ranges = rows.map((row) => {
    const range = rangeOf(row);
    if (!range.own) notes.push({ code: 'range-of-country', place: row.place });
    return range.rangeC;
  });
  const monthlyMeanC = meanRow(means);
  return {
    name: head.name,
    monthlyMeanC,
    monthlySdMeanC: meanRow(spreads.map((spread) => spread.monthlySdMeanC)),
    dailySdC: meanRow(spreads.map((spread) => spread.dailySdC)),
    rangeC: meanRow(ranges),
    ...persistence(),
    skew: skewOf(monthlyMeanC[0]!),
    placeErrorSdC: head.placeErrorSdC,
    from,
    notes,
  };
}

function meanRow(rows: readonly (readonly number[])[]): readonly number[] {
  return Array.from({ length: 12 }, (_, month) => rows.reduce((sum, row) => sum + row[month]!, 0) / rows.length);
}

function isExtreme(row: ClimatePlace): boolean {
  return row.note.startsWith('EXTREME SITE');
}

/** Small letters without accents, points, commas or doubled spaces. */
function plain(name: string): string {
  return name
    .normalize('NFD')
    .replace(/[\u0300-\u036f.,']/g, '')
    .replace(/[\s-]+/g, ' ')
    .trim()
    .toLowerCase();
}
