import { normalQuantile } from '../chance/index.ts';
import { winterParameters } from '../tables/parameters-winter.gen.ts';
import { epochDayOfParts, isoDateOf } from '../units/index.ts';
import { type Climate, drawWeather } from '../weather/index.ts';
import { drawForageSums } from './member-days.ts';
import { SEASON_NAMES, type SeasonName, seasonDates } from './season-dates.ts';

/** ISO dates; null where that share of the years does not have the event. */
export interface DateOdds {
  readonly p10: string | null;
  readonly p50: string | null;
  readonly p90: string | null;
}

export interface DistributionRules {
  readonly seed: number;
  /** First year of the winter. */
  readonly year: number;
  readonly members: number;
  /** The yard whose draws are used, so that these dates belong to the same years as its forecast. */
  readonly entity?: string;
  /** The keeper's own dates as epoch days: then the date is certain. */
  readonly own?: Partial<Record<SeasonName, number>>;
}

/**
 * The season's dates of a climate as one year in ten, one in two and nine in ten have them.
 *
 * `broodlessTo`, the last day without brood, is not read from the weather: colonies begin round 15 February whatever it does.
 */
export function seasonDistribution(climate: Climate, rules: DistributionRules): Readonly<Record<SeasonName | 'broodlessTo', DateOdds>> {
  const { seed, year, members, entity = climate.name } = rules;
  const fromDay = epochDayOfParts(year, 7, 1);
  const toDay = epochDayOfParts(year + 1, 7, 31);
  const days = toDay - fromDay + 1;
  const temps = drawWeather(climate, { seed, entity, fromDay, toDay, members });
  const sums = drawForageSums({ seed, entity, members });
  const found = new Map<SeasonName, number[]>(SEASON_NAMES.map((name) => [name, []]));
  for (let member = 0; member < members; member++) {
    const meanC = temps.subarray(member * days, (member + 1) * days);
    const dates = seasonDates(
      { meanC, fromDay },
      { rangeC: climate.rangeC, winterYear: year, forageSumCd: sums[member]!, ...(rules.own ? { own: rules.own } : {}) },
    );
    for (const name of SEASON_NAMES) found.get(name)!.push(dates[name] ?? neverAs(name));
  }
  const odds = (p: (share: number) => number): DateOdds => ({ p10: isoOf(p(0.1)), p50: isoOf(p(0.5)), p90: isoOf(p(0.9)) });
  const ofName = (name: SeasonName): DateOdds => {
    const sorted = found.get(name)!.sort((a, b) => a - b);
    return odds((share) => quantile(sorted, share));
  };
  return {
    firstFrost: ofName('firstFrost'),
    clusterDay: ofName('clusterDay'),
    lastFeedingDay: ofName('lastFeedingDay'),
    broodlessTo: odds((share) => broodlessTo(year + 1, share)),
    firstFlight: ofName('firstFlight'),
    firstPollen: ofName('firstPollen'),
    firstForage: ofName('firstForage'),
    lastFrost: ofName('lastFrost'),
  };
}

/** A first event that does not come is later than every date, a last one earlier. */
function neverAs(name: SeasonName): number {
  return name.startsWith('last') ? Number.NEGATIVE_INFINITY : Number.POSITIVE_INFINITY;
}

/** Nearest rank, so that the answer is a day that occurred. */
export function quantile(sorted: readonly number[], share: number): number {
  return sorted[Math.max(0, Math.ceil(share * sorted.length) - 1)]!;
}

function isoOf(day: number): string | null {
  return Number.isFinite(day) ? isoDateOf(day) : null;
}

/** The day before brood begins, from the winter model's own parameter: normal, low and high its 5 % and 95 % bounds. */
function broodlessTo(springYear: number, share: number): number {
  const { value, low, high } = winterParameters.broodStartDayOfYear;
  const sd = (high - low) / (2 * normalQuantile(0.95));
  return epochDayOfParts(springYear, 1, 1) + Math.round(value + sd * normalQuantile(share)) - 2;
}
