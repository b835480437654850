import { normalQuantile } from '../chance/index.ts';
import { broodEnd, mitesParameters, winterBeeWindow } from '../mites/index.ts';
import { type DateOdds, FROST_YEAR, phenologyParameters, quantile, seasonDistribution, WEATHER_RANGES } from '../phenology/index.ts';
import { bad, good, inRange, type Result } from '../result/index.ts';
import { seasonParameters } from '../tables/parameters-season.gen.ts';
import { epochDayOfParts, isoDateOf } from '../units/index.ts';
import { type Climate, climateForPlace, climateFromMonthly, drawWeather, monthOfIndex, places, yearIndexOf } from '../weather/index.ts';

export interface SeasonInput {
  readonly place?: string | undefined;
  /** North [deg]; with `monthlyMeanC` where no place is named. */
  readonly lat?: number | undefined;
  readonly monthlyMeanC?: readonly number[] | undefined;
  /** First year of the winter. */
  readonly year?: number | undefined;
  readonly members?: number | undefined;
  readonly seed?: number | undefined;
}

const NAMES = [
  'lastFeedingDay',
  'lastGluingDay',
  'clusterDay',
  'broodlessFrom',
  'broodlessTo',
  'firstFlight',
  'firstPollen',
  'firstForage',
  'winterBeesFrom',
  'winterBeesTo',
  'lastFrost',
  'firstFrost',
] as const;
export const SEASON_DATES: readonly SeasonDate[] = NAMES;
export type SeasonDate = (typeof NAMES)[number];

export interface SeasonAnswer extends Readonly<Record<SeasonDate, DateOdds>> {
  /** `no-frost`: some years have none; `window-extrapolated`: winter-bee dates of the nearest latitude read. */
  readonly notes: readonly ('no-frost' | 'window-extrapolated')[];
}

/**
 * The dates of a winter at a place, as one year in ten, one in two and nine in ten have them.
 *
 * returns     dates; null where that share of the years does not have the event
 * source      phenology and mites for their dates; last gluing day from memory
 */
export function season(input: SeasonInput): Result<SeasonAnswer> {
  const year = inRange('year', input.year ?? FROST_YEAR, { ...WEATHER_RANGES.year, unit: '' });
  if (!year.ok) return year;
  const members = inRange('members', input.members ?? 1000, { ...WEATHER_RANGES.members, unit: '' });
  if (!members.ok) return members;
  const site = siteOf(input);
  if (!site.ok) return site;
  const { climate, latDeg } = site.value;
  const rules = { seed: input.seed ?? 1, year: year.value, members: members.value };
  const weather = seasonDistribution(climate, rules);
  const end = broodEnd({ year: year.value, latDeg });
  const window = winterBeeWindow({ year: year.value, latDeg });
  const doubt = windowSdDays(latDeg);
  const noFrost = weather.firstFrost.p90 === null || weather.lastFrost.p10 === null;
  return good({
    lastFeedingDay: weather.lastFeedingDay,
    lastGluingDay: lastGluing(climate, rules),
    clusterDay: weather.clusterDay,
    broodlessFrom: normalOdds(end.day, end.sdDays),
    broodlessTo: weather.broodlessTo,
    firstFlight: weather.firstFlight,
    firstPollen: weather.firstPollen,
    firstForage: weather.firstForage,
    winterBeesFrom: normalOdds(window.fromDay, doubt),
    winterBeesTo: normalOdds(window.toDay, doubt),
    lastFrost: weather.lastFrost,
    firstFrost: weather.firstFrost,
    notes: [...(noFrost ? (['no-frost'] as const) : []), ...(window.extrapolated ? (['window-extrapolated'] as const) : [])],
  });
}

function siteOf(input: SeasonInput): Result<{ readonly climate: Climate; readonly latDeg: number }> {
  if (input.place !== undefined && input.monthlyMeanC !== undefined) {
    return bad({ kind: 'conflict', fields: ['place', 'monthlyMeanC'], why: 'give-one' });
  }
  if (input.place === undefined && input.monthlyMeanC === undefined) return bad({ kind: 'missing', field: 'place' });
  const named = input.place === undefined ? null : climateForPlace(input.place);
  if (named !== null && !named.ok) return named;
  const row = named === null ? undefined : places().find((line) => line.place === named.value.name);
  const lat = inRange('lat', input.lat ?? row?.latDeg, { low: 0, high: seasonParameters.seasonLatLimitDeg.value, unit: 'deg' });
  if (!lat.ok) return lat;
  const climate = named ?? climateFromMonthly(input.monthlyMeanC!, { latDeg: lat.value });
  return climate.ok ? good({ climate: climate.value, latDeg: lat.value }) : climate;
}

/** Last day until 31 December that ends a spell of days warm enough to work propolis. */
function lastGluing(climate: Climate, of: { readonly seed: number; readonly year: number; readonly members: number }): DateOdds {
  const fromDay = epochDayOfParts(of.year, 7, 1);
  const toDay = epochDayOfParts(of.year, 12, 31);
  const days = toDay - fromDay + 1;
  const temps = drawWeather(climate, { seed: of.seed, entity: climate.name, fromDay, toDay, members: of.members });
  const settled = phenologyParameters.settledDays.value;
  const last: number[] = [];
  for (let member = 0; member < of.members; member++) {
    let run = 0;
    let found = Number.NEGATIVE_INFINITY;
    for (let d = 0; d < days; d++) {
      const maxC = temps[member * days + d]! + climate.rangeC[monthOfIndex(yearIndexOf(fromDay + d))]! / 2;
      run = maxC >= seasonParameters.gluingMaxC.value ? run + 1 : 0;
      if (run >= settled) found = fromDay + d;
    }
    last.push(found);
  }
  last.sort((a, b) => a - b);
  const at = (share: number) => {
    const day = quantile(last, share);
    return Number.isFinite(day) ? isoDateOf(day) : null;
  };
  return { p10: at(0.1), p50: at(0.5), p90: at(0.9) };
}

function normalOdds(day: number, sdDays: number): DateOdds {
  const at = (share: number) => isoDateOf(Math.round(day + sdDays * normalQuantile(share)));
  return { p10: at(0.1), p50: at(0.5), p90: at(0.9) };
}

/** Doubt of the winter-bee window: that of the nearest latitude for which dates were read. */
function windowSdDays(latDeg: number): number {
  const p = mitesParameters;
  const near = [
    { at: p.lowByLatSouthDeg.value, row: p.lowBySouthDayOfYear },
    { at: p.lowByLatMidDeg.value, row: p.lowByMidDayOfYear },
    { at: p.lowByLatNorthDeg.value, row: p.lowByNorthDayOfYear },
  ].sort((a, b) => Math.abs(a.at - latDeg) - Math.abs(b.at - latDeg))[0]!;
  return (near.row.high - near.row.low) / (2 * normalQuantile(0.95));
}
