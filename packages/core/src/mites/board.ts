/// <reference path="./jstat.d.ts" />
import jstat from 'jstat';
import { bad, good, inRange, type Result } from '../result/index.ts';
import { mitesParameters } from '../tables/parameters-mites.gen.ts';
import type { Mark } from '../tables/types.ts';
import { epochDayOf } from '../units/index.ts';
import { type Brood, levelRow } from './levels.ts';
import { WASH_CERTAINTY } from './wash-ranges.ts';

export interface BoardInput {
  /** Day the board was taken out. */
  readonly date: string;
  readonly mites: number;
  readonly days: number;
  readonly brood: Brood;
  readonly colony?: 'production' | 'young' | undefined;
  readonly certaintyFrac?: number | undefined;
}

/** A fall of mites by the rules of boards. It is never turned into a share of the bees. */
export interface BoardAnswer {
  readonly perDay: number;
  readonly lowPerDay: number;
  readonly highPerDay: number;
  readonly verdict: 'safe' | 'below' | 'watch' | 'treat' | 'no-rule';
  /** The rule that holds on that day; null where none does. */
  readonly rule: {
    readonly key: string;
    readonly warn: number | null;
    readonly treat: number;
    readonly place: string;
    readonly source: string;
    readonly mark: Mark;
  } | null;
  /** Mites in the colony by the rule's factor, its own doubt not known; null where it does not hold. */
  readonly mitesInColony: number | null;
  readonly notes: readonly ('ants-and-earwigs' | 'short-count' | 'no-brood-no-factor')[];
}

export const BOARD_MITES = { low: 0, high: 20000, unit: 'mites' } as const;
export const BOARD_DAYS = { low: 0.5, high: 60, unit: 'days' } as const;
/** Rules were read for a week, five days at the least. */
const SHORT_DAYS = 5;

/**
 * What a board under the combs says: mites a day against the rule of the month.
 *
 * equation    fall = mites/days with the exact interval of a Poisson count, gamma quantiles over days
 * valid       breeding colonies that are not collapsing; without brood only the factors of autumn and winter
 * errors      BadInput: days missing or out of range, mites out of range or not whole, no date
 * source      rules and factors of `data/thresholds.csv`; [garwood-1936]; validity [branco-2006]
 * checked     checks/mites.ts
 */
export function boardCount(input: BoardInput): Result<BoardAnswer> {
  const day = epochDayOf(input.date);
  if (day === null) return bad({ kind: 'not-a-date', field: 'date', value: String(input.date) });
  const mites = inRange('mites', input.mites, BOARD_MITES);
  if (!mites.ok) return mites;
  if (!Number.isInteger(mites.value))
    return bad({ kind: 'implausible', field: 'mites', value: mites.value, unit: 'mites', why: 'not-whole' });
  const days = inRange('days', input.days, BOARD_DAYS);
  if (!days.ok) return days;
  const certainty = inRange('certaintyFrac', input.certaintyFrac ?? mitesParameters.washCertaintyFrac.value, WASH_CERTAINTY);
  if (!certainty.ok) return certainty;
  const perDay = mites.value / days.value;
  const row = levelRow(day, { method: 'board', brood: input.brood, colony: input.colony });
  const { low, high } = poissonInterval(mites.value, certainty.value);
  const verdict =
    row === null
      ? 'no-rule'
      : perDay > row.treat
        ? 'treat'
        : row.warn !== null && perDay > row.warn
          ? 'watch'
          : row.safe !== null && perDay < row.safe
            ? 'safe'
            : 'below';
  const noBrood = row === null && input.brood === 'little';
  return good({
    perDay,
    lowPerDay: low / days.value,
    highPerDay: high / days.value,
    verdict,
    rule: row === null ? null : { key: row.key, warn: row.warn, treat: row.treat, place: row.place, source: row.source, mark: row.mark },
    mitesInColony: row?.mitesPerFall == null ? null : perDay * row.mitesPerFall,
    notes: [
      'ants-and-earwigs',
      ...(days.value < SHORT_DAYS ? (['short-count'] as const) : []),
      ...(noBrood ? (['no-brood-no-factor'] as const) : []),
    ],
  });
}

/** Exact interval of a Poisson mean from one count. Source: [garwood-1936]. */
export function poissonInterval(count: number, certainty: number): { readonly low: number; readonly high: number } {
  const tail = (1 - certainty) / 2;
  return { low: count === 0 ? 0 : jstat.gamma.inv(tail, count, 1), high: jstat.gamma.inv(1 - tail, count + 1, 1) };
}
