import { bad, good, inRange, type Result } from '../result/index.ts';
import { weatherParameters } from '../tables/parameters-weather.gen.ts';
import { epochDayOfParts, isoDateOf } from '../units/index.ts';
import {
  type Climate,
  type ClimateNote,
  type ClimateSource,
  climateForPlace,
  climateFromRecord,
  drawWeather,
  type RejectedLine,
  type StationRecord,
} from '../weather/index.ts';
import { quantile } from './distribution.ts';
import { seasonDates } from './season-dates.ts';

export interface WeatherInput {
  readonly place?: string | undefined;
  /** A daily record that was read; with a place it corrects the place's tables where it is short. */
  readonly record?: StationRecord | undefined;
  /** Year the frost dates are written in; any, for they are the odds of all years. */
  readonly year?: number;
  readonly members?: number;
  readonly seed?: number;
}

export interface FrostOdds {
  readonly p5: string | null;
  readonly p50: string | null;
  readonly p95: string | null;
}

/** Of a year's lowest temperature: one year in twenty is colder than p5, nineteen colder than p95 [degC]. */
export interface ColdestOdds {
  readonly p5: number;
  readonly p50: number;
  readonly p95: number;
}

export interface WeatherAnswer {
  readonly station: string;
  /** Days, holes and refused lines of a daily record; a place of the table has none. */
  readonly days: number;
  readonly missingDays: number;
  readonly rejected: readonly RejectedLine[];
  /** What was read of a file; null for a place of the table. */
  readonly file: {
    readonly from: string;
    readonly to: string;
    readonly layout: StationRecord['layout'];
    readonly unit: StationRecord['unit'];
    readonly unitByValues: boolean;
    readonly bridgedDays: number;
  } | null;
  readonly monthlyMeanC: readonly number[];
  readonly monthlySdC: readonly number[];
  readonly lastFrost: FrostOdds;
  readonly firstFrost: FrostOdds;
  readonly winters: number;
  /** Lowest daily mean of a year, and its lowest night, an estimate from the first: the two are told apart because they differ by 5 degrees. */
  readonly coldestDayC: ColdestOdds;
  readonly coldestNightC: ColdestOdds;
  readonly sources: readonly ClimateSource[];
  readonly notes: readonly ClimateNote[];
}

export const WEATHER_RANGES = {
  year: { low: 1901, high: 2198, unit: 'year' },
  members: { low: 20, high: 20_000, unit: 'members' },
  seed: { low: -(2 ** 53) + 1, high: 2 ** 53 - 1, unit: '' },
} as const;

/** A year without 29 February, so that a date is the same day of every common year. */
export const FROST_YEAR = 2001;

/**
 * What the tables know about the weather of a place, or a record of it: monthly means and their scatter, and frost dates from the years
 * the forecast would draw.
 *
 * input     see WeatherInput
 * returns   see WeatherAnswer; for a place of the tables `days` and `winters` are 0: they hold normals and no daily record
 * errors    BadInput naming the field; a name that fits several places lists them
 */
export function weather(input: WeatherInput): Result<WeatherAnswer> {
  const { year = FROST_YEAR, members = 1000, seed = 1 } = input;
  const faults = [
    inRange('year', year, WEATHER_RANGES.year),
    inRange('members', members, WEATHER_RANGES.members),
    inRange('seed', seed, WEATHER_RANGES.seed),
  ];
  for (const one of faults) if (!one.ok) return one;
  for (const [field, value] of Object.entries({ year, members, seed })) {
    if (!Number.isInteger(value)) return bad({ kind: 'implausible', field, value, unit: '', why: 'not-whole' });
  }
  const { record } = input;
  const climate = climateAsked(input);
  if (!climate.ok) return climate;
  const { name, monthlyMeanC, monthlySdMeanC, from, notes } = climate.value;
  return good({
    station: name,
    days: record?.readDays ?? 0,
    missingDays: record === undefined ? 0 : record.toDay - record.fromDay + 1 - record.readDays,
    rejected: record?.rejected ?? [],
    file: record === undefined ? null : fileOf(record),
    monthlyMeanC: monthlyMeanC.map(hundredths),
    monthlySdC: monthlySdMeanC.map(hundredths),
    ...yearOdds(climate.value, { year, members, seed }),
    winters: record?.winters.length ?? 0,
    sources: from,
    notes,
  });
}

function climateAsked({ place, record }: WeatherInput): Result<Climate> {
  if (record === undefined) return place === undefined ? bad({ kind: 'missing', field: 'place' }) : climateForPlace(place);
  const base = place === undefined ? null : climateForPlace(place);
  if (base === null) return climateFromRecord(record);
  return base.ok ? climateFromRecord(record, { base: base.value }) : base;
}

function fileOf(record: StationRecord): NonNullable<WeatherAnswer['file']> {
  const { layout, unit, unitByValues, bridgedDays } = record;
  return { from: isoDateOf(record.fromDay), to: isoDateOf(record.toDay), layout, unit, unitByValues, bridgedDays };
}

/** The sources print tenths. */
const hundredths = (value: number): number => Math.round(value * 100) / 100;

/** Last frost of spring, first of autumn and lowest daily mean in the same calendar year, drawn. The yard is taken to lie at the place. */
function yearOdds(
  climate: Climate,
  of: { year: number; members: number; seed: number },
): Pick<WeatherAnswer, 'lastFrost' | 'firstFrost' | 'coldestDayC' | 'coldestNightC'> {
  const fromDay = epochDayOfParts(of.year, 1, 1);
  const toDay = epochDayOfParts(of.year, 12, 31);
  const days = toDay - fromDay + 1;
  // the odds of all years: what happened in one of them is no certainty
  const own = climate.own === undefined ? undefined : { ...climate.own, happenedFromDay: Number.POSITIVE_INFINITY };
  const temps = drawWeather(
    { ...climate, own, placeErrorSdC: 0 },
    { seed: of.seed, entity: climate.name, fromDay, toDay, members: of.members },
  );
  const last: number[] = [];
  const first: number[] = [];
  const coldest: number[] = [];
  for (let member = 0; member < of.members; member++) {
    const series = { meanC: temps.subarray(member * days, (member + 1) * days), fromDay };
    coldest.push(series.meanC.reduce((low, c) => Math.min(low, c), Number.POSITIVE_INFINITY));
    last.push(seasonDates(series, { rangeC: climate.rangeC, winterYear: of.year - 1 }).lastFrost ?? Number.NEGATIVE_INFINITY);
    first.push(seasonDates(series, { rangeC: climate.rangeC, winterYear: of.year }).firstFrost ?? Number.POSITIVE_INFINITY);
  }
  const odds = (found: number[]): FrostOdds => {
    const sorted = found.sort((a, b) => a - b);
    const at = (share: number) => {
      const day = quantile(sorted, share);
      return Number.isFinite(day) ? isoDateOf(day) : null;
    };
    return { p5: at(0.05), p50: at(0.5), p95: at(0.95) };
  };
  coldest.sort((a, b) => a - b);
  const coldestOdds = (below: number): ColdestOdds => {
    const at = (share: number) => hundredths(quantile(coldest, share) - below);
    return { p5: at(0.05), p50: at(0.5), p95: at(0.95) };
  };
  return {
    lastFrost: odds(last),
    firstFrost: odds(first),
    coldestDayC: coldestOdds(0),
    coldestNightC: coldestOdds(weatherParameters.coldestNightBelowC.value),
  };
}
