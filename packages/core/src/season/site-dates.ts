import { normalQuantile } from '../chance/index.ts';
import { broodEnd, mitesParameters, winterBeeWindow } from '../mites/index.ts';
import { type DateOdds, type DaySpread, type DistributionRules, oddsOf, SEASON_NAMES, seasonSpan, spreadsOf } from '../phenology/index.ts';
import { seasonParameters } from '../tables/parameters-season.gen.ts';
import { type Climate, drawWeather } from '../weather/index.ts';

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
  'guardDay',
  'lastFrameDay',
  'lastFlight',
  'coldDay',
  'cleansingFlight',
  'mitesLow',
  'requeenBy',
  'ownQueenBy',
] as const;
/** Every date of a season, in the order it is printed. */
export const SEASON_DATES: readonly SeasonDate[] = NAMES;
export type SeasonDate = (typeof NAMES)[number];
export type SeasonSpreads = Readonly<Record<SeasonDate, DaySpread>>;
export type SeasonOdds = Readonly<Record<SeasonDate, DateOdds>>;

/** What is said beside the dates; the wording lives in the shells. */
export type SeasonNote =
  /** Some years have no frost. */
  | 'no-frost'
  /** Some years never form a cluster, or feed to the end of the year: not a winter this model knows. */
  | 'no-winter'
  /** Winter-bee dates of the nearest latitude read. */
  | 'window-extrapolated'
  /** Beyond the polar circle the sun stays down or up for days on end. */
  | 'polar-circle';

export interface SiteSeason {
  readonly spreads: SeasonSpreads;
  readonly notes: readonly SeasonNote[];
  /** The drawn years the dates come from: members x days [degC]. */
  readonly years: { readonly tempsC: Float64Array; readonly fromDay: number; readonly days: number };
}

/** The keeper's own day for any date of the season, as epoch days. */
export type OwnDays = Partial<Record<SeasonDate, number>>;

/**
 * Every date of a winter at a site: those of the weather, and those of brood, mites and queens by latitude.
 *
 * requeenBy    last day to put in a mated queen whose brood still becomes winter bees: end of their rearing less 21 days of brood
 *              [worker-21-days] and the days until she lays
 * ownQueenBy   the same for a queen the colony raises itself
 * mitesLow, winterBeesFrom, winterBeesTo, broodlessFrom   by latitude, with the doubt of the nearest one for which dates were read
 *
 * years   drawn already, from `seasonSpan`; left out: drawn here
 */
export function siteSeason(
  site: { readonly climate: Climate; readonly latDeg: number; readonly ownLowByDayOfYear?: number | undefined },
  rules: Omit<DistributionRules, 'own'> & { readonly ownDays?: OwnDays | undefined; readonly years?: SiteSeason['years'] | undefined },
): SiteSeason {
  const { climate, latDeg, ownLowByDayOfYear } = site;
  const { ownDays = {}, entity = climate.name } = rules;
  const years = rules.years ?? drawYears(climate, { ...rules, entity });
  const weather = spreadsOf(years, climate, { ...rules, entity, own: weatherOwn(ownDays) });
  const { year } = rules;
  const end = broodEnd({ year, latDeg });
  const window = winterBeeWindow({ year, latDeg, ownLowByDayOfYear });
  const doubtDays = ownLowByDayOfYear === undefined ? windowSdDays(latDeg) : 0;
  const s = seasonParameters;
  const spreads: Record<SeasonDate, DaySpread> = {
    ...weather,
    broodlessFrom: normalSpread(end.day, end.sdDays),
    mitesLow: normalSpread(window.lowByDay, doubtDays),
    winterBeesFrom: normalSpread(window.fromDay, doubtDays),
    winterBeesTo: normalSpread(window.toDay, doubtDays),
    requeenBy: normalSpread(requeenDay({ year, latDeg, ownLowByDayOfYear }), doubtDays),
    ownQueenBy: normalSpread(window.toDay - s.workerBroodDays.value - s.queenRearDays.value, doubtDays),
  };
  for (const name of NAMES) {
    const own = ownDays[name];
    if (own !== undefined) spreads[name] = () => own;
  }
  const never = (name: SeasonDate) => !Number.isFinite(spreads[name](0.1)) || !Number.isFinite(spreads[name](0.9));
  return {
    spreads,
    years,
    notes: [
      ...(never('firstFrost') || never('lastFrost') ? (['no-frost'] as const) : []),
      ...(never('clusterDay') ? (['no-winter'] as const) : []),
      ...(window.extrapolated ? (['window-extrapolated'] as const) : []),
      ...(latDeg > s.seasonLatLimitDeg.value ? (['polar-circle'] as const) : []),
    ],
  };
}

/** Last day to put in a mated queen: her brood has to emerge before the rearing of winter bees ends. */
export function requeenDay(of: Parameters<typeof winterBeeWindow>[0]): number {
  const { workerBroodDays, queenIntroDays } = seasonParameters;
  return winterBeeWindow(of).toDay - workerBroodDays.value - queenIntroDays.value;
}

export function drawYears(
  climate: Climate,
  of: { readonly seed: number; readonly year: number; readonly members: number; readonly entity: string },
): SiteSeason['years'] {
  const { fromDay, toDay } = seasonSpan(of.year);
  const { seed, entity, members } = of;
  return { tempsC: drawWeather(climate, { seed, entity, fromDay, toDay, members }), fromDay, days: toDay - fromDay + 1 };
}

export function seasonOdds(spreads: SeasonSpreads): SeasonOdds {
  return Object.fromEntries(NAMES.map((name) => [name, oddsOf(spreads[name])])) as Record<SeasonDate, DateOdds>;
}

function weatherOwn(own: OwnDays): OwnDays {
  return Object.fromEntries(SEASON_NAMES.flatMap((name) => (own[name] === undefined ? [] : [[name, own[name]]])));
}

function normalSpread(day: number, sdDays: number): DaySpread {
  return (share) => Math.round(day + (sdDays === 0 ? 0 : sdDays * normalQuantile(share)));
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
