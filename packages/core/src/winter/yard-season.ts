import { drawForageSums, firstFlightDays, firstForageDays, springStartDay } from '../phenology/index.ts';
import { bad, good, inRange, type Result } from '../result/index.ts';
import { type Climate, climateForPlace, climateFromMonthly, climateFromRecord, drawWeather } from '../weather/index.ts';
import { OUTLOOK_RANGES } from './outlook-input.ts';
import type { OutlookInput } from './outlook-types.ts';
import type { WinterValues } from './parameters.ts';
import { prepareSeason, type YardSeason } from './season.ts';

export interface SeasonSpan {
  readonly seed: number;
  /** Whose weather: the yard. */
  readonly entity: string;
  readonly fromDay: number;
  readonly days: number;
  readonly members: number;
  readonly values: WinterValues;
  /** Epoch day of dependable forage; null: none before the end; left out: from the heat sum. */
  readonly forageDay?: number | null | undefined;
  /** Heat sum to forage as the keeper's own springs have it; left out: the published one. */
  readonly forageSum?: { readonly meanCd: number; readonly sdCd: number } | undefined;
  readonly indoors?: boolean | undefined;
}

/** [degC] daily maximum minus minimum where only daily means are given: the middle of the published places. */
const USUAL_RANGE_C = [9.7, 11.1, 11.7, 12.1, 12.9, 12.4, 11.9, 11.7, 11.3, 8.6, 7.8, 8.5];

/**
 * Stochastic years of a climate with the dates that follow from them, drawn once for all colonies of a yard.
 *
 * The heat sum runs from 1 January also where the span begins later.
 */
export function drawSeason(climate: Climate, span: SeasonSpan): YardSeason {
  const { fromDay, days, members, seed, entity } = span;
  const firstDay = Math.min(fromDay, springStartDay(fromDay));
  const all = drawWeather(climate, { seed, entity, fromDay: firstDay, toDay: fromDay + days - 1, members });
  const allDays = fromDay + days - firstDay;
  const skipped = fromDay - firstDay;
  const tempC = skipped === 0 ? all : new Float64Array(members * days);
  if (skipped > 0) {
    for (let i = 0; i < members; i++) tempC.set(all.subarray(i * allDays + skipped, (i + 1) * allDays), i * days);
  }
  return seasonOf({ tempsC: all, fromDay: firstDay, days: allDays }, { tempC, rangeC: climate.rangeC, span });
}

/** A yard's season and the climate it was drawn from; null where the daily means were given. */
export interface AskedSeason {
  readonly season: YardSeason;
  readonly climate: Climate | null;
}

/** The yard's season for what an outlook was asked, or what is wrong with its weather. */
export function seasonFor(
  input: OutlookInput,
  of: { fromDay: number; days: number; members: number; seed: number; forageDay: number | null | undefined; values: WinterValues },
): Result<AskedSeason> {
  const given = [input.dailyMeanC, input.place, input.monthlyMeanC].filter((one) => one !== undefined).length;
  if (given === 0 && input.record === undefined) return bad({ kind: 'missing-all', ways: [['dailyMeanC'], ['place'], ['monthlyMeanC']] });
  if (input.record !== undefined && input.dailyMeanC !== undefined) {
    return bad({ kind: 'conflict', fields: ['dailyMeanC', '--file'], why: 'give-one' });
  }
  if (given > 1) return bad({ kind: 'conflict', fields: ['dailyMeanC', 'place', 'monthlyMeanC'], why: 'give-one' });
  const span: SeasonSpan = { ...of, entity: 'yard', indoors: input.indoors };
  if (input.dailyMeanC !== undefined) {
    const { dailyMeanC } = input;
    if (dailyMeanC.length !== of.days) {
      return bad({ kind: 'out-of-range', field: 'dailyMeanC.length', value: dailyMeanC.length, unit: 'days', low: of.days, high: of.days });
    }
    for (let d = 0; d < of.days; d++) {
      const checked = inRange(`dailyMeanC[${d}]`, dailyMeanC[d], OUTLOOK_RANGES.dailyMeanC);
      if (!checked.ok) return checked;
    }
    const tempC = Float64Array.from(dailyMeanC);
    const season = seasonOf({ tempsC: tempC, fromDay: of.fromDay, days: of.days }, { tempC, rangeC: USUAL_RANGE_C, span });
    return good({ season, climate: null });
  }
  const climate = climateAsked(input);
  return climate.ok ? good({ season: drawSeason(climate.value, span), climate: climate.value }) : climate;
}

function climateAsked({ place, monthlyMeanC, record }: OutlookInput): Result<Climate> {
  const base = place !== undefined ? climateForPlace(place) : monthlyMeanC !== undefined ? climateFromMonthly(monthlyMeanC) : null;
  if (record === undefined) return base!;
  if (base === null) return climateFromRecord(record);
  return base.ok ? climateFromRecord(record, { base: base.value }) : base;
}

function seasonOf(
  outdoors: { tempsC: Float64Array; fromDay: number; days: number },
  of: { tempC: Float64Array; rangeC: readonly number[]; span: SeasonSpan },
): YardSeason {
  const { span } = of;
  const { fromDay, days, members, values } = span;
  const forage = forageDays(outdoors, span);
  const flights = firstFlightDays(outdoors, of.rangeC);
  const index = (day: number) => Math.max(0, Math.min(days, day - fromDay));
  const flightIndex = Int32Array.from({ length: members }, (_, i) => index(flights[flights.length === 1 ? 0 : i]!));
  const forageIndex = Int32Array.from(forage, index);
  const tempC = span.indoors === true ? of.tempC.map((t) => Math.max(t, values.indoorTempC)) : of.tempC;
  return prepareSeason({ fromDay, days, members, tempC, flightIndex, forageIndex }, values);
}

function forageDays(outdoors: { tempsC: Float64Array; fromDay: number; days: number }, span: SeasonSpan): Float64Array {
  const { forageDay, members } = span;
  if (forageDay === null) return new Float64Array(members).fill(Number.POSITIVE_INFINITY);
  if (forageDay !== undefined) return new Float64Array(members).fill(forageDay);
  return firstForageDays(outdoors, drawForageSums({ seed: span.seed, entity: span.entity, members, belief: span.forageSum }));
}
