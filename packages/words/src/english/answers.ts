import type { CandyCaution, WashAnswer, WashNote } from '@winterheft/core';
import { listed } from '../text.ts';

/** Names of the figures in answers. */
export const heft = {
  total: 'whole hive',
  basis: 'read at',
  both: 'both edges',
  front: 'the front edge only',
  rear: 'the rear edge only',
  targetFront: 'front reading to stop at',
  targetRear: 'rear reading to stop at',
} as const;

export const syrup = {
  strength: 'sugar by mass',
  density: 'density',
  volume: 'volume',
  sugar: 'sugar',
  water: 'water',
  mass: 'weighs',
  stores: 'stores it becomes',
  range: (low: string, mid: string, high: string) => `${low} (low rule, plan on this), ${mid} (measured), ${high} (no loss)`,
  extrapolated: 'The measured yield was for 1:1 to 2:1 by mass; this strength lies outside, so the middle figure is extended beyond it.',
  grainsBelow: 'can grain below',
  never: 'not above freezing',
  relations: (low: string, high: string) => `three published relations: ${low} to ${high}`,
  supersaturated: 'At this temperature the water cannot hold all that sugar: it grains, or has to be warmed to dissolve.',
  feeding: 'Thick syrup is for autumn stores. White sugar only, no acid. Leave no syrup in the open: it starts robbing.',
} as const;

export const candy = {
  sugar: 'sugar',
  water: 'water',
  mass: 'damp, as packed',
  volume: 'packs to',
  packing: (volume: string) => `${volume}, about 20 % more or less by how hard it is packed`,
  cautions: {
    'no-acid': 'No vinegar, lemon juice or cream of tartar: acid makes a substance that harms bees.',
    'no-boiling': 'Do not boil: heat makes the same substance.',
    'white-sugar-only': 'White sugar only; brown sugar, raw sugar and molasses give bees dysentery.',
    'open-briefly': 'In the cold lift the lid for moments only.',
    'not-wet-on-cluster': 'Let it dry until it is firm; nothing wet on the cluster.',
  } satisfies Record<CandyCaution, string>,
} as const;

export const wash = {
  rate: 'mites to 100 bees',
  between: (low: string, high: string, share: string) => `${share} interval ${low} to ${high}`,
  interval: 'interval',
  intervals: { 'clopper-pearson': 'Clopper and Pearson, exact binomial' },
  above: (level: string) => `above ${level} in 100`,
  decisions: {
    above: 'taken as above',
    'not-told': 'not told apart; wash as many bees again, or treat as if above',
    below: 'taken as below',
    withheld: 'too few bees to decide anything',
  } satisfies Record<NonNullable<WashAnswer['decision']>, string>,
  notes: {
    'few-bees': 'So few bees only tell a great many mites from none. Wash about 300, from a frame with brood, without the queen.',
    'sugar-corrected': 'A sugar roll leaves some mites on the bees: divided by 0.93 (0.87 to 1), for a careful roll.',
    'recovery-not-known': 'How many mites this method leaves on the bees was not found: the true level is higher rather than lower.',
    'higher-than-published': 'That is more than any published group of living colonies: count again.',
  } satisfies Record<WashNote, string>,
  instead: (counts: readonly string[]) => `Was it ${listed(counts, 'or')}?`,
  ahead: 'by then, untreated',
  aheadRange: (low: string, mid: string, high: string) => `${mid} mites to 100 bees (${low} growing slowly, ${high} growing fast)`,
  caution: 'A wash is a sample: plan on the upper figure. What may be used when is on the label in your hand and in local law.',
} as const;

export const air = {
  vapour: 'vapour pressure',
  saturationWater: 'saturation over water',
  saturationIce: 'saturation over ice',
  dewPoint: 'dew point',
  frostPoint: 'frost point',
  humidityRatio: 'water to dry air',
  density: 'density',
  rh: 'relative humidity',
  noIce: 'no ice at this temperature',
  dewFirst: 'dew comes before frost',
  ofWater: (percent: string) => `${percent} over water`,
  ofIce: (percent: string) => `${percent} over ice`,
  error:
    'Saturation agrees with the published tables within 0.1 %, over supercooled water within 1 %; air taken as an ideal gas, water to dry air about 0.5 % low.',
} as const;

export const outlook = {
  stores: 'stores now',
  use: 'would be eaten if stores had no end',
  spread: (p5: string, p50: string, p95: string) => `5 % ${p5}, 50 % ${p50}, 95 % ${p95}`,
  mean: (text: string) => `mean ${text}`,
  need: 'need',
  forCertainty: (chance: string) => `to hold with ${chance}`,
  needParts: 'made of',
  parts: {
    broodlessKg: 'before brood',
    broodKg: 'brood',
    reserveKg: 'reserve within reach',
    doubtKg: 'doubt',
  },
  hold: 'chance to hold',
  holdUnknown: 'not known: no stores were given',
  runOut: 'stores end',
  holds: 'holds',
  afterEnd: 'after the last day',
  forage: 'first dependable forage',
  beesAtEnd: 'bees at the end',
  scale: 'change the scale will show',
  doubt: 'the doubt comes from',
  month: 'month',
  eaten: (unit: string) => `eaten (${unit})`,
  contact: 'must be in combs at the cluster',
  notWinterable: 'Too small to be wintered alone by the usual rule.',
  lightForWinter:
    'Bees and stores together are lighter than a published review asks of an autumn hive without its wood: not to be wintered so.',
  extrapolating: {
    'below-weighed-cold': 'colder than any published weighing of single hives (about -10 °C)',
    'fewer-bees-than-measured': 'fewer bees than in the weighed colonies',
    'more-bees-than-measured': 'more bees than in the weighed colonies',
    'forage-after-to': 'forage begins after the last day asked for in some cases',
  },
  extrapolated: 'Extrapolated',
  causes: { weather: 'weather', appetite: 'appetite', bees: 'count of bees', tare: 'tare', scale: 'scale', forage: 'forage date' },
  madeWith: (members: number, seed: number) => `${members} cases drawn, seed ${seed}`,
} as const;
