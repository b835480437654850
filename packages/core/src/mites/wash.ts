import { bad, good, inRange, type Result } from '../result/index.ts';
import { mitesParameters } from '../tables/parameters-mites.gen.ts';
import { miteGrowth } from './growth.ts';
import { betaGrid, chanceAbove } from './level-grid.ts';
import { clopperPearson, type Interval, jeffreys, wilson, wilsonCorrected } from './proportion.ts';
import { WASH_BEES, WASH_CERTAINTY, WASH_DAYS_AHEAD, type WashMethod } from './wash-ranges.ts';

export interface WashInput {
  readonly bees: number;
  readonly mites: number;
  readonly certaintyFrac?: number | undefined;
  /** Left out: alcohol. A sugar roll is corrected for the mites it leaves. */
  readonly method?: WashMethod | undefined;
  /** The keeper's level [mites per bee]. */
  readonly thresholdFrac?: number | undefined;
  /** Days to a date that matters, for example until the winter bees are reared. */
  readonly daysAhead?: number | undefined;
}

export type WashNote = 'few-bees' | 'sugar-corrected' | 'recovery-not-known' | 'higher-than-published';

export interface WashAnswer {
  /** Mites per bee washed, for a sugar roll divided by the share it finds. */
  readonly rateFrac: number;
  readonly lowFrac: number;
  readonly highFrac: number;
  readonly interval: 'clopper-pearson';
  /** Other usual intervals of the same count, to be compared; the exact one is shown because it never promises too much. */
  readonly otherIntervals: { readonly wilson: Interval; readonly wilsonCorrected: Interval; readonly jeffreys: Interval };
  /** With thresholdFrac: chance that the true level is above it. */
  readonly chanceAboveFrac?: number;
  /** With thresholdFrac: `withheld` where too few bees were washed to decide anything. */
  readonly decision?: 'above' | 'not-told' | 'below' | 'withheld';
  readonly notes: readonly WashNote[];
  /** Counts that may have been meant where this one is higher than any published. */
  readonly insteadMites?: readonly number[];
  /** With daysAhead: mites per bee then, untreated, with brood; low from the low end growing slowly, high from the high end growing fast. */
  readonly aheadMitesPerBee?: { readonly low: number; readonly mid: number; readonly high: number };
}

/**
 * What a wash of bees says about the share of bees that carry a mite.
 *
 * The exact interval is shown: at the small counts that decide here Wilson's and Jeffreys' cover the truth less often than they say
 * for some levels. Chances come from Jeffreys' posterior, beta(k + 1/2, n - k + 1/2), for a chance needs a prior and this one favours least.
 *
 * input       bees and mites counted; more mites than bees is refused, the sample being taken as a binomial one (bees with or
 *             without a mite). Mites crowd on some bees, so the real doubt is wider than shown.
 * returns     the share and its exact interval, or what is wrong with the input; a sugar roll's interval is widened by the doubt
 *             about the share of mites it finds
 * source      [clopper-pearson-1934], [wash-sample], [macedo-2002]
 * checked     checks/wash.ts, wash.test.ts, mites-statistics.test.ts
 */
export function wash(input: WashInput): Result<WashAnswer> {
  const bees = wholeInRange('bees', input.bees, WASH_BEES);
  if (!bees.ok) return bees;
  const mites = wholeInRange('mites', input.mites, { low: 0, high: bees.value, unit: 'mites' });
  if (!mites.ok) return mites;
  const p = mitesParameters;
  const certainty = inRange('certaintyFrac', input.certaintyFrac ?? p.washCertaintyFrac.value, WASH_CERTAINTY);
  if (!certainty.ok) return certainty;
  const threshold =
    input.thresholdFrac === undefined ? null : inRange('thresholdFrac', input.thresholdFrac, { low: 0.0001, high: 0.5, unit: 'mites/bee' });
  if (threshold !== null && !threshold.ok) return threshold;
  const days = input.daysAhead === undefined ? null : inRange('daysAhead', input.daysAhead, WASH_DAYS_AHEAD);
  if (days !== null && !days.ok) return days;
  const [k, n] = [mites.value, bees.value];
  const found = recoveryOf(input.method);
  const corrected = ({ low, high }: Interval): Interval => ({ low: low / found.high, high: Math.min(1, high / found.low) });
  const { low, high } = corrected(clopperPearson(k, n, certainty.value));
  const rateFrac = Math.min(1, k / n / found.mid);
  const few = n < p.leastBees.value;
  const tooMany = k / n > p.implausibleFrac.value && k > 2;
  const notes: WashNote[] = [
    ...(few ? (['few-bees'] as const) : []),
    ...(input.method === 'sugar' ? (['sugar-corrected'] as const) : input.method === 'co2' ? (['recovery-not-known'] as const) : []),
    ...(tooMany ? (['higher-than-published'] as const) : []),
  ];
  const chance = threshold === null ? null : chanceAboveLevel({ mites: k, bees: n, method: input.method }, threshold.value);
  const growth = days === null ? null : miteGrowth(days.value);
  return good({
    rateFrac,
    lowFrac: low,
    highFrac: high,
    interval: 'clopper-pearson',
    otherIntervals: {
      wilson: corrected(wilson(k, n, certainty.value)),
      wilsonCorrected: corrected(wilsonCorrected(k, n, certainty.value)),
      jeffreys: corrected(jeffreys(k, n, certainty.value)),
    },
    ...(chance === null ? {} : { chanceAboveFrac: chance, decision: few ? ('withheld' as const) : decisionOf(chance) }),
    notes,
    ...(tooMany ? { insteadMites: tenfoldLess(k) } : {}),
    ...(growth === null ? {} : { aheadMitesPerBee: { low: low * growth.slow, mid: rateFrac * growth.mid, high: high * growth.fast } }),
  });
}

/** Share of the mites on the bees that a method finds. */
export function recoveryOf(method: WashMethod | undefined): { readonly low: number; readonly mid: number; readonly high: number } {
  if (method !== 'sugar') return { low: 1, mid: 1, high: 1 };
  const { low, value, high } = mitesParameters.sugarRecoveryFrac;
  return { low, mid: value, high };
}

/** Bees that a count stands for: a sugar roll that finds 93 of 100 mites is as good as a wash of 93 bees of 100. */
export function washedBees(count: { readonly bees: number; readonly mites: number; readonly method?: WashMethod | undefined }): number {
  return Math.max(count.mites, count.bees * recoveryOf(count.method).mid);
}

/** Chance that the true level is above a level. */
export function chanceAboveLevel(
  count: { readonly bees: number; readonly mites: number; readonly method?: WashMethod | undefined },
  level: number,
): number {
  return chanceAbove(betaGrid({ a: count.mites + 0.5, b: washedBees(count) - count.mites + 0.5 }), level);
}

function decisionOf(chance: number): 'above' | 'not-told' | 'below' {
  const sure = mitesParameters.treatChanceFrac.value;
  return chance >= sure ? 'above' : chance <= 1 - sure ? 'below' : 'not-told';
}

/** 107 typed for 10 or 7. */
function tenfoldLess(mites: number): number[] {
  const text = String(mites);
  return [...new Set([Number(text.slice(0, -1)), Number(text.slice(1))])].filter((count) => count < mites);
}

function wholeInRange(field: string, value: unknown, range: { low: number; high: number; unit: string }): Result<number> {
  const number = inRange(field, value, range);
  if (!number.ok) return number;
  return Number.isInteger(number.value)
    ? number
    : bad({ kind: 'implausible', field, value: number.value, unit: range.unit, why: 'not-whole' });
}
