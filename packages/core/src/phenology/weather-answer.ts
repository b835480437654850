import { bad, good, inRange, type Result } from '../result/index.ts';
import { epochDayOfParts, isoDateOf } from '../units/index.ts';
import { type Climate, type ClimateNote, type ClimateSource, climateForPlace, drawWeather } from '../weather/index.ts';
import { quantile } from './distribution.ts';
import { seasonDates } from './season-dates.ts';

export interface WeatherInput {
  readonly place: string;
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

export interface WeatherAnswer {
  readonly station: string;
  /** Days, holes and refused lines of a daily record; a place of the table has none. */
  readonly days: number;
  readonly missingDays: number;
  readonly rejected: readonly { readonly line: number; readonly why: string }[];
  readonly monthlyMeanC: readonly number[];
  readonly monthlySdC: readonly number[];
  readonly lastFrost: FrostOdds;
  readonly firstFrost: FrostOdds;
  readonly winters: number;
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
 * What the tables know about the weather of a place: monthly means and their scatter, and frost dates from stochastic years.
 *
 * input     see WeatherInput
 * returns   see WeatherAnswer; `days` and `winters` are 0, for the tables hold normals and no daily record
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
  const climate = climateForPlace(input.place);
  if (!climate.ok) return climate;
  const { name, monthlyMeanC, monthlySdMeanC, from, notes } = climate.value;
  return good({
    station: name,
    days: 0,
    missingDays: 0,
    rejected: [],
    monthlyMeanC: monthlyMeanC.map(hundredths),
    monthlySdC: monthlySdMeanC.map(hundredths),
    ...frostOdds(climate.value, { year, members, seed }),
    winters: 0,
    sources: from,
    notes,
  });
}

/** The sources print tenths. */
const hundredths = (value: number): number => Math.round(value * 100) / 100;

/** Last frost of spring and first of autumn in the same calendar year, drawn. The yard is taken to lie at the place. */
function frostOdds(climate: Climate, of: { year: number; members: number; seed: number }): { lastFrost: FrostOdds; firstFrost: FrostOdds } {
  const fromDay = epochDayOfParts(of.year, 1, 1);
  const toDay = epochDayOfParts(of.year, 12, 31);
  const days = toDay - fromDay + 1;
  const temps = drawWeather({ ...climate, placeErrorSdC: 0 }, { seed: of.seed, entity: climate.name, fromDay, toDay, members: of.members });
  const last: number[] = [];
  const first: number[] = [];
  for (let member = 0; member < of.members; member++) {
    const series = { meanC: temps.subarray(member * days, (member + 1) * days), fromDay };
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
  return { lastFrost: odds(last), firstFrost: odds(first) };
}
