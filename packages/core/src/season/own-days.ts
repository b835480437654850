import type { Holding } from '../holding/index.ts';
import { type BloomEvent, bloomRow, type HeatBeliefs, heatBelief, type SumSeen, sumMeasured, sumSeen } from '../phenology/index.ts';
import { type BadInput, bad, good, type Result } from '../result/index.ts';
import { epochDayOf, epochDayOfParts, isoDateOf, partsOf } from '../units/index.ts';
import { type OwnDays, SEASON_DATES, type SeasonDate, type SiteSeason } from './site-dates.ts';

/** First and last month and day a date can have, from 1 July of the winter's first year; `+` is the year after. */
const WINDOWS: Readonly<Record<SeasonDate, readonly [string, string]>> = {
  firstFrost: ['07-15', '12-31'],
  guardDay: ['08-01', '12-31'],
  lastGluingDay: ['08-01', '12-31'],
  lastFrameDay: ['08-01', '12-31'],
  clusterDay: ['08-01', '12-31'],
  lastFeedingDay: ['08-01', '12-31'],
  lastFlight: ['08-01', '12-31'],
  coldDay: ['08-01', '+03-31'],
  mitesLow: ['07-01', '10-31'],
  winterBeesFrom: ['07-01', '11-30'],
  winterBeesTo: ['07-01', '12-31'],
  requeenBy: ['07-01', '10-31'],
  ownQueenBy: ['06-01', '10-31'],
  broodlessFrom: ['08-01', '+01-31'],
  broodlessTo: ['12-01', '+04-30'],
  cleansingFlight: ['+01-01', '+05-31'],
  firstFlight: ['+01-01', '+06-15'],
  firstPollen: ['+01-01', '+07-14'],
  firstForage: ['+01-01', '+07-14'],
  lastFrost: ['+01-01', '+07-14'],
};

/** The first never after the second. */
const ORDER: readonly (readonly [SeasonDate, SeasonDate])[] = [
  ['winterBeesFrom', 'winterBeesTo'],
  ['broodlessFrom', 'broodlessTo'],
  ['cleansingFlight', 'firstFlight'],
  ['firstPollen', 'firstForage'],
];

/** Own dates of a winter as days, or what is wrong: a name that is none, a date of another year, two out of order. */
export function ownDaysOf(dates: Readonly<Record<string, string>>, year: number): Result<OwnDays> {
  const days: OwnDays = {};
  for (const [name, date] of Object.entries(dates)) {
    if (!isSeasonDate(name)) return bad({ kind: 'unknown-choice', field: 'own', value: name, choices: SEASON_DATES });
    const day = epochDayOf(date);
    if (day === null) return bad({ kind: 'not-a-date', field: `own.${name}`, value: date });
    const [from, to] = windowOf(name, year);
    if (!(day >= from && day <= to)) {
      return bad({ kind: 'date-order', field: `own.${name}`, value: date, notBefore: isoDateOf(from), notAfter: isoDateOf(to) });
    }
    days[name] = day;
  }
  for (const [a, b] of ORDER) {
    const [first, second] = [days[a], days[b]];
    if (first !== undefined && second !== undefined && first > second) {
      return bad({ kind: 'date-order', field: `own.${b}`, value: isoDateOf(second), notBefore: isoDateOf(first) });
    }
  }
  return good(days);
}

function isSeasonDate(name: string): name is SeasonDate {
  return Object.hasOwn(WINDOWS, name);
}

function windowOf(name: SeasonDate, year: number): readonly [number, number] {
  const at = (text: string) => {
    const [month, day] = text.replace('+', '').split('-').map(Number);
    return epochDayOfParts(text.startsWith('+') ? year + 1 : year, month!, day!);
  };
  const [from, to] = WINDOWS[name];
  return [at(from), at(to)];
}

/** A keeper's own date that counts this winter, and where it comes from. */
export interface OwnDate {
  readonly name: SeasonDate;
  readonly date: string;
  readonly from: 'setting' | 'bloom';
  /** With `bloom`: the plant seen. */
  readonly plant?: string;
}

export interface OwnSeason {
  readonly days: OwnDays;
  readonly dates: readonly OwnDate[];
  /** Own dates that cannot be and are not used. */
  readonly refused: readonly BadInput[];
}

/**
 * What the keeper has set or seen for this winter of one yard: settings, and the blooms of its spring, the earliest of each event.
 *
 * A date set for another winter does not count here; one of no possible year is refused and named.
 */
export function ownSeason(holding: Holding, of: { readonly yard: string; readonly year: number }): OwnSeason {
  const { yard, year } = of;
  const days: OwnDays = {};
  const dates: OwnDate[] = [];
  const refused: BadInput[] = [];
  for (const event of ['firstPollen', 'firstForage'] as const) {
    const seen = bloomsOf(holding, yard)
      .filter(
        (bloom) =>
          bloom.row.event === event && bloom.day >= epochDayOfParts(year + 1, 1, 1) && bloom.day < epochDayOfParts(year + 1, 7, 15),
      )
      .sort((a, b) => a.day - b.day)[0];
    if (seen === undefined) continue;
    days[event] = seen.day;
    dates.push({ name: event, date: isoDateOf(seen.day), from: 'bloom', plant: seen.plant });
  }
  for (const own of holding.settings.ownDates ?? []) {
    if (own.yard !== undefined && own.yard !== yard) continue;
    const day = epochDayOf(own.date)!;
    const read = ownDaysOf({ [own.name]: own.date }, year);
    if (!read.ok) {
      const { year: calendarYear } = partsOf(day);
      const isOfOther = [calendarYear - 1, calendarYear].some((other) => ownDaysOf({ [own.name]: own.date }, other).ok);
      if (!isOfOther) refused.push(read.error);
      continue;
    }
    const name = own.name as SeasonDate;
    const fits = ownDaysOf(
      Object.fromEntries([...Object.entries(days), [name, day]].map(([key, at]) => [key, isoDateOf(at as number)])),
      year,
    );
    if (!fits.ok) refused.push(fits.error);
    else {
      days[name] = day;
      dates.push({ name, date: own.date, from: 'setting' });
    }
  }
  return { days, dates: dates.filter(({ name, date }) => days[name] === epochDayOf(date)), refused };
}

function bloomsOf(holding: Holding, yard: string) {
  return holding.blooms
    .filter((bloom) => bloom.yard === yard)
    .flatMap((bloom) => {
      const row = bloomRow(bloom.plant, bloom.stage);
      return row === null ? [] : [{ plant: bloom.plant, stage: bloom.stage, day: bloom.day, row }];
    });
}

/**
 * Heat sums as the blooms of earlier springs in this yard have moved them, one for each event and spring: the first seen.
 *
 * A spring that a daily record holds counts with the heat it had, another one with what drawn years have by that day.
 *
 * Undefined where no earlier bloom was recorded: then the published sums stand.
 */
export function beliefsOf(
  holding: Holding,
  of: {
    readonly yard: string;
    readonly year: number;
    readonly years: SiteSeason['years'];
    readonly record?: { readonly fromDay: number; readonly meanC: Float64Array } | undefined;
  },
): HeatBeliefs | undefined {
  const earlier = bloomsOf(holding, of.yard)
    .filter(({ day }) => day < epochDayOfParts(of.year + 1, 1, 1))
    .sort((a, b) => a.day - b.day);
  const seen = new Map<string, SumSeen & { readonly event: BloomEvent }>();
  for (const bloom of earlier) {
    const spring = `${partsOf(bloom.day).year} ${bloom.row.event}`;
    if (seen.has(spring)) continue;
    const measured = of.record === undefined ? null : sumMeasured(bloom, of.record);
    const sum = measured ?? sumSeen(bloom, { ...of.years, springYear: of.year + 1 });
    if (sum !== null) seen.set(spring, sum);
  }
  if (seen.size === 0) return undefined;
  const by = (event: BloomEvent) =>
    heatBelief(
      event,
      [...seen.values()].filter((one) => one.event === event),
    );
  return { firstPollen: by('firstPollen'), firstForage: by('firstForage') };
}
