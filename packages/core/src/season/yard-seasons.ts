import type { Holding, Yard } from '../holding/index.ts';
import { type DaySpread, isoOf, quantile, sunDay, warmHours } from '../phenology/index.ts';
import { type BadInput, bad, good, inRange, type Result } from '../result/index.ts';
import { seasonParameters } from '../tables/parameters-season.gen.ts';
import { epochDayOf, isoDateOf } from '../units/index.ts';
import {
  type Climate,
  climateForPlace,
  climateFromMonthly,
  climateFromRecord,
  climateNear,
  monthOfIndex,
  type StationRecord,
  winterYearOf,
  yearIndexOf,
} from '../weather/index.ts';
import type { OwnDate } from './own-days.ts';
import {
  drawYears,
  SEASON_DATES,
  type SeasonDate,
  type SeasonNote,
  type SeasonOdds,
  type SiteSeason,
  seasonOdds,
  siteSeason,
} from './site-dates.ts';
import { yardSpring } from './yard-spring.ts';

/** Twenty of equal chance, so that one is one case in twenty. */
const CASES = 20;

/** A day ahead as the climate has it: no forecast and no past year. */
export interface YardDay {
  readonly date: string;
  /** Twenty afternoons of equal chance, the coldest first [degC]. */
  readonly afternoonsC: readonly number[];
  /** Mean daily maximum less minimum of the month [degC]. */
  readonly rangeC: number;
  readonly daylightHours: number;
}

/** The dates of this winter in one yard. */
export interface YardSeasonDates {
  readonly yard: string;
  readonly yardName: string;
  readonly latDeg: number;
  readonly lonDeg: number;
  /** First year of the winter. */
  readonly year: number;
  readonly climate: { readonly name: string; readonly notes: Climate['notes'] };
  readonly dates: SeasonOdds;
  /** Twenty days of equal chance for each date, the earliest first; null: that case does not have it. */
  readonly cases: Readonly<Record<SeasonDate, readonly (string | null)[]>>;
  /** From today to the end of the July after the winter. */
  readonly days: readonly YardDay[];
  /** The keeper's own dates that count, and those that cannot be. */
  readonly own: readonly OwnDate[];
  readonly refused: readonly BadInput[];
  /** How far own blooms of earlier springs moved the heat sums [degC d], and how many springs they were. */
  readonly learnt: Readonly<Record<'firstPollen' | 'firstForage', { readonly springs: number; readonly shiftCd: number }>> | null;
  readonly notes: readonly SeasonNote[];
}

export interface SeasonSetting {
  /** ISO date in the yard. */
  readonly today: string;
  readonly seed: number;
  readonly members: number;
  /** A place of the climate table for every yard, instead of the yards' own. */
  readonly place?: string | undefined;
  /** The keeper's own daily record, for every yard. */
  readonly record?: StationRecord | undefined;
}

const SEASON_MEMBERS = { low: 20, high: 20_000, unit: 'cases' } as const;

/**
 * The dates of this winter in every yard, and the days ahead as the climate has them.
 *
 * The same seed and members give the same years as a plan's: its first forage is the one told here. What has passed of this
 * winter is known from a daily record only: without one, dates stay those of the climate until the keeper sets his own.
 *
 * errors   BadInput: today is no date, members out of range, a place not known
 */
export function yardSeasons(holding: Holding, of: SeasonSetting): Result<YardSeasonDates[]> {
  const today = epochDayOf(of.today);
  if (today === null) return bad({ kind: 'not-a-date', field: 'today', value: of.today });
  const members = inRange('members', of.members, SEASON_MEMBERS);
  if (!members.ok) return members;
  const seasons: YardSeasonDates[] = [];
  for (const yard of holding.yards.values()) {
    const climate = climateOf(yard, of);
    if (!climate.ok) return climate;
    seasons.push(yardSeason(yard, { holding, today, climate: climate.value, seed: of.seed, members: members.value }));
  }
  return good(seasons);
}

function climateOf(yard: Yard, { place, record }: SeasonSetting): Result<Climate> {
  const base = placeClimate(yard, place);
  return !base.ok || record === undefined ? base : climateFromRecord(record, { base: base.value, yard });
}

function placeClimate(yard: Yard, place: string | undefined): Result<Climate> {
  if (place !== undefined) return climateForPlace(place);
  if (yard.monthlyMeanC !== undefined) return climateFromMonthly(yard.monthlyMeanC, { latDeg: yard.latDeg });
  if (yard.climatePlace !== undefined) return climateForPlace(yard.climatePlace);
  return climateNear(yard.latDeg, yard.lonDeg, yard.elevM);
}

function yardSeason(
  yard: Yard,
  of: { readonly holding: Holding; readonly today: number; readonly climate: Climate; readonly seed: number; readonly members: number },
): YardSeasonDates {
  const { holding, today, climate, seed, members } = of;
  const year = winterYearOf(today);
  const draw = { seed, year, members, entity: yard.id };
  const years = drawYears(climate, draw);
  const own = yardSpring(holding, { yard, climate, today, seed });
  const { beliefs } = own;
  const site = { climate, latDeg: yard.latDeg, ownLowByDayOfYear: own.ownLowByDayOfYear };
  const { spreads, notes } = siteSeason(site, { ...draw, years, beliefs, ownDays: own.days });
  return {
    yard: yard.id,
    yardName: yard.name,
    latDeg: yard.latDeg,
    lonDeg: yard.lonDeg,
    year,
    climate: { name: climate.name, notes: climate.notes },
    dates: seasonOdds(spreads),
    cases: Object.fromEntries(SEASON_DATES.map((name) => [name, casesOf(spreads[name])])) as YardSeasonDates['cases'],
    days: daysAhead(yard, { years, today, rangeC: climate.rangeC }),
    own: own.dates,
    refused: own.refused,
    learnt: beliefs === undefined ? null : { firstPollen: learnt(beliefs.firstPollen), firstForage: learnt(beliefs.firstForage) },
    notes,
  };
}

const learnt = ({ springs, shiftCd }: { springs: number; shiftCd: number }) => ({ springs, shiftCd: Math.round(shiftCd * 10) / 10 });

function casesOf(spread: DaySpread): readonly (string | null)[] {
  return Array.from({ length: CASES }, (_, i) => isoOf(spread((i + 0.5) / CASES)));
}

function daysAhead(yard: Yard, of: { years: SiteSeason['years']; today: number; rangeC: readonly number[] }): YardDay[] {
  const { tempsC, fromDay, days } = of.years;
  const members = tempsC.length / days;
  const ahead: YardDay[] = [];
  for (let d = Math.max(0, of.today - fromDay); d < days; d++) {
    const rangeC = of.rangeC[monthOfIndex(yearIndexOf(fromDay + d))]!;
    const sorted = Array.from({ length: members }, (_, member) => tempsC[member * days + d]! + rangeC / 2).sort((a, b) => a - b);
    ahead.push({
      date: isoDateOf(fromDay + d),
      afternoonsC: Array.from({ length: CASES }, (_, i) => Math.round(quantile(sorted, (i + 0.5) / CASES) * 10) / 10),
      rangeC,
      daylightHours: Math.round(sunDay(yard.latDeg, yard.lonDeg, fromDay + d).hours * 100) / 100,
    });
  }
  return ahead;
}

/** Chance that a day is warm enough, and the keeper's hours in it: warm daylight, at most what he gives a day. */
export function fitDay(day: YardDay, openAboveC: number | null): { readonly chanceFrac: number; readonly hours: number } {
  const most = seasonParameters.workHoursPerDay.value;
  if (openAboveC === null) return { chanceFrac: 1, hours: Math.min(most, day.daylightHours) };
  const warm = { aboveC: openAboveC, daylightHours: day.daylightHours };
  const hours = day.afternoonsC.map((maxC) => Math.min(most, warmHours(maxC, maxC - day.rangeC, warm)));
  return {
    chanceFrac: day.afternoonsC.filter((maxC) => maxC >= openAboveC).length / day.afternoonsC.length,
    hours: hours.reduce((sum, one) => sum + one, 0) / hours.length,
  };
}
