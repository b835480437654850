import { normalQuantile } from '../chance/index.ts';
import { winterParameters } from '../tables/parameters-winter.gen.ts';
import { epochDayOfParts, isoDateOf } from '../units/index.ts';
import { type Climate, drawWeather } from '../weather/index.ts';
import { drawForageSums, drawPollenSums } from './member-days.ts';
import type { HeatBelief } from './own-blooms.ts';
import { SEASON_NAMES, type SeasonName, seasonDates } from './season-dates.ts';

/** ISO dates; null where that share of the years does not have the event. */
export interface DateOdds {
  readonly p10: string | null;
  readonly p50: string | null;
  readonly p90: string | null;
}

/** The day a share of the years has an event by: an epoch day, or an infinity where that share has none. */
export type DaySpread = (share: number) => number;

export interface DistributionRules {
  readonly seed: number;
  /** First year of the winter. */
  readonly year: number;
  readonly members: number;
  /** The yard whose draws are used, so that these dates belong to the same years as its forecast. */
  readonly entity?: string;
  /** The keeper's own dates as epoch days: then the date is certain. */
  readonly own?: Partial<Record<SeasonName, number>>;
  /** What the keeper's own bloom dates say about the heat sums; left out: the published ones. */
  readonly beliefs?: HeatBeliefs | undefined;
}

export interface HeatBeliefs {
  readonly firstPollen: HeatBelief;
  readonly firstForage: HeatBelief;
}

/** First and last day of the years that are drawn for a winter's dates. */
export function seasonSpan(year: number): { readonly fromDay: number; readonly toDay: number } {
  return { fromDay: epochDayOfParts(year, 7, 1), toDay: epochDayOfParts(year + 1, 7, 31) };
}

/**
 * Every date of a winter as drawn years have it: members x days from `seasonSpan`.
 *
 * `broodlessTo`, the last day without brood, is not read from the weather: colonies begin round 15 February whatever it does.
 */
export function spreadsOf(
  years: { readonly tempsC: Float64Array; readonly fromDay: number; readonly days: number },
  climate: Pick<Climate, 'rangeC'>,
  rules: DistributionRules & { readonly entity: string },
): Readonly<Record<SeasonName | 'broodlessTo', DaySpread>> {
  const { members, year, beliefs, own } = rules;
  const forage = drawForageSums({ ...rules, belief: beliefs?.firstForage });
  const pollen = drawPollenSums({ ...rules, belief: beliefs?.firstPollen });
  const found = new Map<SeasonName, number[]>(SEASON_NAMES.map((name) => [name, []]));
  for (let member = 0; member < members; member++) {
    const meanC = years.tempsC.subarray(member * years.days, (member + 1) * years.days);
    const dates = seasonDates(
      { meanC, fromDay: years.fromDay },
      {
        rangeC: climate.rangeC,
        winterYear: year,
        forageSumCd: forage[member]!,
        pollenSumCd: pollen[member]!,
        ...(own === undefined ? {} : { own }),
      },
    );
    for (const name of SEASON_NAMES) found.get(name)!.push(dates[name] ?? neverAs(name));
  }
  const spreads: Partial<Record<SeasonName | 'broodlessTo', DaySpread>> = { broodlessTo: (share) => broodlessTo(year + 1, share) };
  for (const name of SEASON_NAMES) {
    const sorted = found.get(name)!.sort((a, b) => a - b);
    spreads[name] = (share) => quantile(sorted, share);
  }
  return spreads as Record<SeasonName | 'broodlessTo', DaySpread>;
}

/** The season's dates of a climate as one year in ten, one in two and nine in ten have them. */
export function seasonDistribution(climate: Climate, rules: DistributionRules): Readonly<Record<SeasonName | 'broodlessTo', DateOdds>> {
  const { seed, year, members, entity = climate.name } = rules;
  const { fromDay, toDay } = seasonSpan(year);
  const tempsC = drawWeather(climate, { seed, entity, fromDay, toDay, members });
  const spreads = spreadsOf({ tempsC, fromDay, days: toDay - fromDay + 1 }, climate, { ...rules, entity });
  const odds = Object.entries(spreads).map(([name, spread]) => [name, oddsOf(spread)]);
  return Object.fromEntries(odds) as Record<SeasonName | 'broodlessTo', DateOdds>;
}

export function oddsOf(spread: DaySpread): DateOdds {
  return { p10: isoOf(spread(0.1)), p50: isoOf(spread(0.5)), p90: isoOf(spread(0.9)) };
}

/** A first event that does not come is later than every date, a last one earlier. */
function neverAs(name: SeasonName): number {
  return name.startsWith('last') ? Number.NEGATIVE_INFINITY : Number.POSITIVE_INFINITY;
}

/** Nearest rank, so that the answer is a day that occurred. */
export function quantile(sorted: readonly number[], share: number): number {
  return sorted[Math.max(0, Math.ceil(share * sorted.length) - 1)]!;
}

/** ISO date of an epoch day; null for an event that does not come. */
export function isoOf(day: number): string | null {
  return Number.isFinite(day) ? isoDateOf(day) : null;
}

/** The day before brood begins, from the winter model's own parameter: normal, low and high its 5 % and 95 % bounds. */
function broodlessTo(springYear: number, share: number): number {
  const { value, low, high } = winterParameters.broodStartDayOfYear;
  const sd = (high - low) / (2 * normalQuantile(0.95));
  return epochDayOfParts(springYear, 1, 1) + Math.round(value + sd * normalQuantile(share)) - 2;
}
