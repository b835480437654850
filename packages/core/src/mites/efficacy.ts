/// <reference path="./jstat.d.ts" />
import jstat from 'jstat';
import { normalQuantile } from '../chance/index.ts';
import { bad, good, inRange, type Result } from '../result/index.ts';
import { mitesParameters } from '../tables/parameters-mites.gen.ts';
import { epochDayOf } from '../units/index.ts';
import { miteGrowth } from './growth.ts';
import { clopperPearson } from './proportion.ts';
import { WASH_BEES, WASH_CERTAINTY } from './wash-ranges.ts';

export interface Counted {
  readonly mites: number;
  readonly bees: number;
}

export interface EfficacyInput {
  /** Mites and bees of all washes before, added up. */
  readonly before: Counted & { readonly date: string };
  readonly after: Counted & { readonly date: string };
  /** Colonies of the same yard left untreated, washed on the same days. */
  readonly control?: { readonly before: Counted; readonly after: Counted } | undefined;
  readonly nature: 'organic' | 'synthetic';
  readonly certaintyFrac?: number | undefined;
}

export interface EfficacyAnswer {
  /** Share of the mites gone; below 0 where there are more than before. */
  readonly effectFrac: number;
  readonly lowFrac: number;
  readonly highFrac: number;
  readonly interval: 'conditional-exact' | 'log-ratio';
  /** What the level would have grown by untreated, already taken out with a control, not without one. */
  readonly growthMeanwhile: { readonly slow: number; readonly mid: number; readonly fast: number };
  readonly passFrac: number;
  /** Chance that the effect is at or above the pass mark. */
  readonly chancePassFrac: number;
  readonly verdict: 'passed' | 'failed' | 'not-told' | 'nothing-before';
}

/**
 * What a treatment did, from washes before and after it.
 *
 * Without untreated colonies it is the fall of the level, growth between the washes included: a treatment in a breeding colony
 * did more than that. With them it is the Henderson-Tilton figure.
 *
 * equation    effect = 1 - (k2/n2)/(k1/n1), with a control times (c1/m1)/(c2/m2). Without a control k2 given k1 + k2 is
 *             binomial, its exact interval turned into one of the ratio; with one a normal interval of the logarithm, 1/2 added to each count
 * valid       rare mites: bees taken as Poisson. Mites crowd and colonies differ, so the truth is wider
 * errors      BadInput: counts outside their ranges, more mites than bees, the second date not after the first, no mite before
 * source      [henderson-tilton-1955], [r-poisson-test] for the interval, [ema-varroa] for the pass marks
 * checked     checks/mites.ts
 */
export function treatmentEffect(input: EfficacyInput): Result<EfficacyAnswer> {
  const certainty = inRange('certaintyFrac', input.certaintyFrac ?? mitesParameters.washCertaintyFrac.value, WASH_CERTAINTY);
  if (!certainty.ok) return certainty;
  const counts = [
    ['before', input.before],
    ['after', input.after],
    ...(input.control === undefined
      ? []
      : ([
          ['control.before', input.control.before],
          ['control.after', input.control.after],
        ] as const)),
  ] as const;
  for (const [field, { bees, mites }] of counts) {
    const n = inRange(`${field}.bees`, bees, { ...WASH_BEES, high: 1e6 });
    if (!n.ok) return n;
    const k = inRange(`${field}.mites`, mites, { low: 0, high: bees, unit: 'mites' });
    if (!k.ok) return k;
    for (const [name, value] of [
      ['bees', bees],
      ['mites', mites],
    ] as const)
      if (!Number.isInteger(value)) return bad({ kind: 'implausible', field: `${field}.${name}`, value, unit: name, why: 'not-whole' });
  }
  const [from, to] = [epochDayOf(input.before.date), epochDayOf(input.after.date)];
  if (from === null) return bad({ kind: 'not-a-date', field: 'before.date', value: input.before.date });
  if (to === null) return bad({ kind: 'not-a-date', field: 'after.date', value: input.after.date });
  if (to <= from) return bad({ kind: 'date-order', field: 'after.date', value: input.after.date, notBefore: input.before.date });
  if (to - from > 200)
    return bad({ kind: 'out-of-range', field: 'after.date', value: to - from, unit: 'days after before.date', low: 1, high: 200 });
  return good(effectOf(input, { certainty: certainty.value, days: to - from }));
}

function effectOf(input: EfficacyInput, of: { certainty: number; days: number }): EfficacyAnswer {
  const { before, after, control, nature } = input;
  const passFrac = nature === 'organic' ? mitesParameters.passOrganicFrac.value : mitesParameters.passSyntheticFrac.value;
  const growthMeanwhile = miteGrowth(of.days);
  const none = before.mites === 0 || (control !== undefined && control.before.mites === 0) || control?.after.mites === 0;
  const found =
    control === undefined ? conditional(before, after, { ...of, passFrac }) : logRatio({ before, after, control }, { ...of, passFrac });
  const chance = found.chancePassFrac;
  const { treatChanceFrac } = mitesParameters;
  const verdict = none
    ? 'nothing-before'
    : chance >= treatChanceFrac.value
      ? 'passed'
      : chance <= 1 - treatChanceFrac.value
        ? 'failed'
        : 'not-told';
  return { ...found, growthMeanwhile, passFrac, verdict };
}

type Found = Pick<EfficacyAnswer, 'effectFrac' | 'lowFrac' | 'highFrac' | 'interval' | 'chancePassFrac'>;

/** Ratio of two rare counts: given their sum, the second is binomial with share r n2 / (n1 + r n2). */
function conditional(before: Counted, after: Counted, of: { certainty: number; passFrac: number }): Found {
  const total = before.mites + after.mites;
  const effect = (share: number) => (share >= 1 ? Number.NEGATIVE_INFINITY : 1 - (share / (1 - share)) * (before.bees / after.bees));
  if (total === 0) return { effectFrac: 0, lowFrac: -1, highFrac: 1, interval: 'conditional-exact', chancePassFrac: 0.5 };
  const share = clopperPearson(after.mites, total, of.certainty);
  const passShare = ((1 - of.passFrac) * after.bees) / (before.bees + (1 - of.passFrac) * after.bees);
  return {
    effectFrac: Math.max(LEAST_EFFECT, effect(after.mites / total)),
    lowFrac: Math.max(LEAST_EFFECT, effect(share.high)),
    highFrac: effect(share.low),
    interval: 'conditional-exact',
    chancePassFrac: jstat.beta.cdf(passShare, after.mites + 0.5, before.mites + 0.5),
  };
}

/** A hundred times as many mites as before: further down the figure says nothing. */
const LEAST_EFFECT = -99;

function logRatio(
  counts: { before: Counted; after: Counted; control: { before: Counted; after: Counted } },
  of: { certainty: number; passFrac: number },
): Found {
  const { before, after, control } = counts;
  const rate = ({ mites, bees }: Counted) => (mites + 0.5) / (bees + 1);
  const log = Math.log(rate(after) / rate(before)) - Math.log(rate(control.after) / rate(control.before));
  const sd = Math.sqrt([before, after, control.before, control.after].reduce((sum, { mites }) => sum + 1 / (mites + 0.5), 0));
  const z = normalQuantile((1 + of.certainty) / 2);
  const plain = (x: Counted) => x.mites / x.bees;
  const ratio = (plain(after) * plain(control.before)) / (plain(before) * plain(control.after));
  return {
    effectFrac: Number.isFinite(ratio) ? 1 - ratio : 1 - Math.exp(log),
    lowFrac: Math.max(LEAST_EFFECT, 1 - Math.exp(log + z * sd)),
    highFrac: 1 - Math.exp(log - z * sd),
    interval: 'log-ratio',
    chancePassFrac: normalShare((Math.log(1 - of.passFrac) - log) / sd),
  };
}

/** Share of a standard normal below z, through the incomplete beta of its square. */
function normalShare(z: number): number {
  // Student's t with so many degrees of freedom is normal to 1e-6.
  const v = 1e6;
  const tail = 0.5 * jstat.beta.cdf(v / (v + z * z), v / 2, 0.5);
  return z > 0 ? 1 - tail : tail;
}
