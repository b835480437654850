import type { DueWhat, MiteDue, RecordFault, TreatmentEffect, TreatmentRecord, WinterLoss, YardTreatment } from '@winterheft/core';
import { listed, shortened } from '../text.ts';
import { dayMonth, decimals } from '../units.ts';

/** Mites to 100 bees. */
export const mitesPer100 = (frac: number): string => decimals(100 * frac, frac < 0.1 ? 1 : 0);

const DUE: Readonly<Record<DueWhat, string>> = {
  treat: 'treat',
  'wash-again': 'wash again, or treat as if above',
  'wash-more-bees': 'wash about 300 bees: this was too few to decide',
  wash: 'wash',
  'wash-after-treatment': 'wash, to see what the treatment did',
  'treatment-in': 'treatment is in; take it out as the label says',
};

const WHY: Readonly<Record<MiteDue['reason'], string>> = {
  'above-level': '',
  'near-level': '',
  'never-level': 'a level not to be accepted',
  'few-bees': '',
  'never-washed': 'not washed this year',
  'washed-long-ago': 'a month since the last',
  'treated-since': '',
  autumn: 'mites come in with other bees in autumn',
  growth: 'growth may have carried it up by then',
  'still-in': '',
};

const CAUTIONS: Readonly<Record<string, string>> = {
  'acid-gloves': 'acid-proof gloves (EN 374)',
  gloves: 'gloves',
  goggles: 'tight goggles',
  respirator: 'the respirator the label names, for acid vapour',
  'long-sleeves': 'long sleeves and boots',
  'water-at-hand': 'clean water at hand before the pack is opened',
  'eyes-15-min': 'eyes: rinse 15 minutes with water and see a doctor',
  'skin-water': 'skin: wash off at once with much water, clothes off',
  'fresh-air': 'breathed in: fresh air; with cough or tightness a doctor',
  'swallowed-call': 'swallowed: call the poison centre, do not bring up',
  'not-warmed': 'never warm the acid or leave it in the sun',
  upwind: 'stand upwind',
  'queen-check': 'look for the queen’s eggs a month later',
  'taints-honey': 'no honey is taken while it is in and as long after as the label says',
  'wash-after': 'wash after it: it may fail; two failures mean another active ingredient',
  'rest-as-label': 'leftovers and used strips as the label says, never into water or fire',
};
export const mitesCautionCodes: readonly string[] = Object.keys(CAUTIONS);

const BLOCKERS: Readonly<Record<YardTreatment['blockers'][number], string>> = {
  'label-needed': 'type its limits from the label in hand first',
  'supers-on': 'supers are on: not with honey for people',
  'supers-by-label': 'supers are on: the label says whether',
  'too-late-for-window': 'too late to be over when mites have to be low',
  'resistance-test': 'resistance is widespread: not without a test',
};

const FAULTS: Readonly<Record<RecordFault, string>> = {
  'no-lot': 'no lot',
  'no-product': 'no product',
  'still-in': 'still in',
  'out-without-in': 'never recorded as put in',
  overlap: 'overlaps',
  'active-not-in-table': 'an active ingredient not known here',
};

const VERDICTS: Readonly<Record<TreatmentEffect['verdict'], string>> = {
  passed: 'passed',
  failed: 'failed: think of another active ingredient',
  'not-told': 'the counts do not tell',
  'nothing-before': 'no mite before: nothing to judge by',
};

export const mitesWords = {
  title: (today: string) => `Mites on ${today}`,
  yard: (name: string, lowBy: string, from: string, to: string) => `${name}: low by ${lowBy}; winter bees are reared from ${from} to ${to}`,
  extrapolated: 'These dates were read for 43 to 61 degrees north; this yard lies outside.',
  level: (warn: string, treat: string, by: string, place: string) =>
    `Level today: watch from ${warn}, treat above ${treat} in 100 (${by}, ${place})`,
  byOwn: 'your own figure',
  noLevel: 'No level holds in these months: bees are not washed in the cold.',
  mean: (low: string, mid: string, high: string) => `mean of the yard as washed ${mid} in 100 (${low} to ${high})`,
  notWashed: (low: string, mid: string, high: string) => `one not washed ${mid} (${low} to ${high})`,
  washedOf: (washed: number, all: number) => `${washed} of ${all} washed`,
  label: 'label',
  found: 'found',
  interval: 'in 100\n95 %',
  above: (day: string) => `above,\nof 20 on ${day}`,
  aboveNow: 'of 20\nnow',
  loss: 'winter\nloss',
  due: 'due',
  none: '–',
  fromYard: 'from the yard',
  tooFew: ' (few)',
  washNext: (labels: readonly string[]) => `Would tell most: wash ${listed(labels, 'and', 8)}`,
  treatments: 'What may begin when (none is advised; the label in your hand and local law decide)',
  notYet: 'not this year',
  startSpan: (first: string, last: string) => `an even chance or better from ${first} to ${last}`,
  latest: (day: string, chance: string) => `to be over in time by ${day} (${chance})`,
  latestNoChance: (day: string) => `to be over in time by ${day}`,
  broodless: 'only without brood',
  effect: (low: string, high: string) => `kills ${low} to ${high} %`,
  effectUnknown: 'effect not known without a wash after it',
  brood: (frames: number) => `at least ${frames} frames of bees and brood`,
  differs: (field: string, label: string, read: string) => `your label says ${field} ${label}, elsewhere ${read} was read: look again`,
  broodlessPlan: (day: string) => `Once brood has ended (about ${day}) one treatment without brood is usual, whatever the count.`,
  cautions: 'With them',
  effects: 'What treatments did',
  effectOf: (active: string, colonies: number, mid: string, low: string, high: string) =>
    `${active}, ${colonies} ${colonies === 1 ? 'colony' : 'colonies'} washed before and after: ${mid} % of the mites gone (${low} to ${high})`,
  verdicts: VERDICTS,
  records: 'Treatments in the book',
  recordHead: { active: 'active', product: 'product', lot: 'lot', in: 'in', out: 'out', remark: 'remark' },
  lossNote:
    'Winter loss, if nothing more is done: share of such colonies that died in published winters, by all causes (16 % without mites, 31 % with, all when never treated). It is a range, no forecast.',
  estimates:
    'Intervals are exact for bees taken singly; mites crowd, so the real doubt is wider. Growth doubles in 19 to 40 days with brood; mites brought in by other bees are in it.',
  levelsSource: 'Levels are from Manitoba, Quebec and western Canada; set your own province’s in the setting miteLevels.',
} as const;

export function miteDue(due: MiteDue): string {
  const why = WHY[due.reason];
  return `${DUE[due.what]}${due.by === null ? '' : ` by ${dayMonth(due.by)}`}${why === '' ? '' : ` (${why})`}`;
}

export const miteBlocker = (code: YardTreatment['blockers'][number]): string => BLOCKERS[code];
export const miteCaution = (code: string): string => CAUTIONS[code] ?? code;

export function recordRemark(record: TreatmentRecord): string {
  return record.faults
    .map((fault) => (fault === 'overlap' ? `${FAULTS.overlap} ${shortened(record.overlaps ?? '', 20)}` : FAULTS[fault]))
    .join(', ');
}

export function lossRange(loss: WinterLoss): string {
  return `${decimals(100 * loss.lowFrac, 0)}-${decimals(100 * loss.highFrac, 0)} %`;
}
