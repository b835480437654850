import { bad, good, inRange, type Result } from '../result/index.ts';
import { mitesParameters } from '../tables/parameters-mites.gen.ts';
import { miteGrowth } from './growth.ts';
import { clopperPearson } from './proportion.ts';

export interface WashInput {
  readonly bees: number;
  readonly mites: number;
  readonly certaintyFrac?: number | undefined;
  /** Days to a date that matters, for example until the winter bees are reared. */
  readonly daysAhead?: number | undefined;
}

export interface WashAnswer {
  /** Mites per bee washed. */
  readonly rateFrac: number;
  readonly lowFrac: number;
  readonly highFrac: number;
  readonly interval: 'clopper-pearson';
  /** With daysAhead: mites per bee then, untreated, with brood; low from the low end growing slowly, high from the high end growing fast. */
  readonly aheadMitesPerBee?: { readonly low: number; readonly mid: number; readonly high: number };
}

export const WASH_BEES = { low: 1, high: 20000, unit: 'bees' } as const;
export const WASH_CERTAINTY = { low: 0.5, high: 0.9999, unit: '' } as const;
export const WASH_DAYS_AHEAD = { low: 0, high: 200, unit: 'days' } as const;

/**
 * What a wash of bees says about the share of bees that carry a mite.
 *
 * input       bees and mites counted; more mites than bees is refused, the sample being taken as a binomial one (bees with or
 *             without a mite). Mites crowd on some bees, so the real doubt is wider than shown.
 * returns     the share and its exact interval, or what is wrong with the input
 * source      [clopper-pearson-1934], [wash-sample]
 * checked     checks/wash.ts, wash.test.ts
 */
export function wash(input: WashInput): Result<WashAnswer> {
  const bees = wholeInRange('bees', input.bees, WASH_BEES);
  if (!bees.ok) return bees;
  const mites = wholeInRange('mites', input.mites, { low: 0, high: bees.value, unit: 'mites' });
  if (!mites.ok) return mites;
  const certainty = inRange('certaintyFrac', input.certaintyFrac ?? mitesParameters.washCertaintyFrac.value, WASH_CERTAINTY);
  if (!certainty.ok) return certainty;
  const { low, high } = clopperPearson(mites.value, bees.value, certainty.value);
  const answer: WashAnswer = { rateFrac: mites.value / bees.value, lowFrac: low, highFrac: high, interval: 'clopper-pearson' };
  if (input.daysAhead === undefined) return good(answer);
  const days = inRange('daysAhead', input.daysAhead, WASH_DAYS_AHEAD);
  if (!days.ok) return days;
  const growth = miteGrowth(days.value);
  return good({ ...answer, aheadMitesPerBee: { low: low * growth.slow, mid: answer.rateFrac * growth.mid, high: high * growth.fast } });
}

function wholeInRange(field: string, value: unknown, range: { low: number; high: number; unit: string }): Result<number> {
  const number = inRange(field, value, range);
  if (!number.ok) return number;
  return Number.isInteger(number.value)
    ? number
    : bad({ kind: 'implausible', field, value: number.value, unit: range.unit, why: 'not-whole' });
}
