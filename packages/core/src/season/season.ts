import { type DateOdds, FROST_YEAR, sunDay, WEATHER_RANGES } from '../phenology/index.ts';
import { bad, good, inRange, type Result } from '../result/index.ts';
import { epochDayOfParts, isoDateOf } from '../units/index.ts';
import {
  type Climate,
  climateForPlace,
  climateFromMonthly,
  climateFromRecord,
  places,
  type StationRecord,
  winterYearOf,
} from '../weather/index.ts';
import { ownDaysOf } from './own-days.ts';
import { type SeasonDate, type SeasonNote, seasonOdds, siteSeason } from './site-dates.ts';

export interface SeasonInput {
  readonly place?: string | undefined;
  /** North [deg]; with `monthlyMeanC` where no place is named. */
  readonly lat?: number | undefined;
  /** East [deg]; left out: the place's, or none, and then no sunrise is given. */
  readonly lon?: number | undefined;
  readonly monthlyMeanC?: readonly number[] | undefined;
  /** The keeper's own daily record, alone or beside a place or means. */
  readonly record?: StationRecord | undefined;
  /** The keeper's own dates by name, which overrule. */
  readonly own?: Readonly<Record<string, string>> | undefined;
  /** First year of the winter. */
  readonly year?: number | undefined;
  readonly members?: number | undefined;
  readonly seed?: number | undefined;
}

/** The sun on a day at the site, in UTC; null where it does not rise or set, or the longitude is not known. */
interface SunLine {
  readonly date: string;
  readonly riseUtc: string | null;
  readonly setUtc: string | null;
  readonly dayHours: number;
}

export interface SeasonAnswer extends Readonly<Record<SeasonDate, DateOdds>> {
  /** First year of the winter told. */
  readonly year: number;
  /** The climate the dates come from, and what has to be said of it. */
  readonly climate: Pick<Climate, 'name' | 'notes'>;
  readonly sun: readonly SunLine[];
  readonly notes: readonly SeasonNote[];
}

/** Month, day and years after the winter's first one on which the sun is told: the turns of the year. */
const SUN_DAYS = [
  [9, 22, 0],
  [12, 21, 0],
  [3, 20, 1],
  [6, 21, 1],
] as const;

/**
 * The dates of a winter at a place, as one year in ten, one in two and nine in ten have them.
 *
 * record      days of it that lie in the winter asked for are taken as they were, the rest is drawn: one that stops in January leaves
 *             the spring to the climate; without a year the winter it ends in is told
 * returns     dates; null where that share of the years does not have the event; an own date is the same three times
 * errors      BadInput: a place not known, a latitude of the south, an own date of another year or out of order
 * source      phenology and mites for their dates
 * checked     checks/season.ts, season.test.ts
 */
export function season(input: SeasonInput): Result<SeasonAnswer> {
  const year = inRange('year', input.year ?? yearOf(input.record), { ...WEATHER_RANGES.year, unit: '' });
  if (!year.ok) return year;
  const members = inRange('members', input.members ?? 1000, { ...WEATHER_RANGES.members, unit: '' });
  if (!members.ok) return members;
  const site = siteOf(input);
  if (!site.ok) return site;
  const own = ownDaysOf(input.own ?? {}, year.value);
  if (!own.ok) return own;
  const { climate, latDeg, lonDeg } = site.value;
  const rules = { seed: input.seed ?? 1, year: year.value, members: members.value, ownDays: own.value };
  const { spreads, notes } = siteSeason({ climate, latDeg }, rules);
  const sun = SUN_DAYS.map(([month, day, later]) => sunLine(latDeg, lonDeg, epochDayOfParts(year.value + later, month, day)));
  return good({ ...seasonOdds(spreads), year: year.value, climate: { name: climate.name, notes: climate.notes }, sun, notes });
}

interface Site {
  readonly climate: Climate;
  readonly latDeg: number;
  readonly lonDeg: number | null;
}

const yearOf = (record: StationRecord | undefined) => (record === undefined ? FROST_YEAR : winterYearOf(record.toDay));

function siteOf(input: SeasonInput): Result<Site> {
  const { record } = input;
  const base = baseOf(input);
  if (base !== null && !base.ok) return base;
  if (base === null && record === undefined) return bad({ kind: 'missing', field: 'place' });
  const row = base === null ? undefined : places().find((line) => line.place === base.value.name);
  const lat = inRange('lat', input.lat ?? record?.place.latDeg ?? row?.latDeg, { low: 0, high: 90, unit: 'deg' });
  if (!lat.ok) return lat;
  const lonDeg = input.lon ?? record?.place.lonDeg ?? row?.lonDeg ?? null;
  const lon = inRange('lon', lonDeg ?? 0, { low: -180, high: 180, unit: 'deg' });
  if (!lon.ok) return lon;
  if (record === undefined) return good({ climate: base!.value, latDeg: lat.value, lonDeg });
  const yard = lonDeg === null ? undefined : { latDeg: lat.value, lonDeg };
  const climate = climateFromRecord(record, { base: base?.value, yard });
  return climate.ok ? good({ climate: climate.value, latDeg: lat.value, lonDeg }) : climate;
}

/** The climate without the record; null where neither a place nor means are given. */
function baseOf(input: SeasonInput): Result<Climate> | null {
  if (input.place !== undefined && input.monthlyMeanC !== undefined) {
    return bad({ kind: 'conflict', fields: ['place', 'monthlyMeanC'], why: 'give-one' });
  }
  if (input.place !== undefined) return climateForPlace(input.place);
  if (input.monthlyMeanC === undefined) return null;
  const lat = inRange('lat', input.lat ?? input.record?.place.latDeg, { low: 0, high: 90, unit: 'deg' });
  return lat.ok ? climateFromMonthly(input.monthlyMeanC, { latDeg: lat.value }) : lat;
}

function sunLine(latDeg: number, lonDeg: number | null, day: number): SunLine {
  const sun = sunDay(latDeg, lonDeg ?? 0, day);
  const time = (minute: number | null) => (minute === null || lonDeg === null ? null : clock(minute));
  return { date: isoDateOf(day), riseUtc: time(sun.riseMinute), setUtc: time(sun.setMinute), dayHours: Math.round(sun.hours * 100) / 100 };
}

/** Whole minutes as a time of day; a moment of the day before or after keeps its time. */
function clock(minute: number): string {
  const whole = ((Math.round(minute) % 1440) + 1440) % 1440;
  return `${String(Math.floor(whole / 60)).padStart(2, '0')}:${String(whole % 60).padStart(2, '0')}`;
}
