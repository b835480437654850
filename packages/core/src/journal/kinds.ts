import {
  bees,
  frameCount,
  halves,
  id,
  isSamePlace,
  key,
  longLine,
  massKg,
  type Place,
  partCount,
  parts,
  place,
  queenState,
  readingKg,
  shortLine,
  someWholes,
  wholes,
} from './fields.ts';
import { isSettingKey, settingShapes } from './settings.ts';
import { anyJson, anyObject, choice, flag, isoDate, list, number, type Of, object, pattern, type Shape, stepped, where } from './shape.ts';
import { UUID_V7 } from './uuid.ts';

export const recordId = pattern('uuid-v7', UUID_V7);
export const SHUT_TICKS = [
  'excluder-out',
  'strips-out',
  'feeder-off',
  'mouse-guard-on',
  'entrance-reduced',
  'upper-opening',
  'top-parts',
  'tipped-forward',
  'strapped',
  'label-readable',
] as const;

const latitude: Shape<number> = where(number(-90, 90, 'deg'), (value, field) =>
  value >= 0 ? null : { kind: 'implausible', field, value, unit: 'deg', why: 'southern-hemisphere' },
);
const monthlyMeanC = list(number(-60, 50, 'degC'), 12, 12);
const cappedFrames = object({ frame: key, count: stepped(0.5, 0.5, 200, 'frames'), where: choice(['top', 'below']) });
const ratio = pattern('ratio', /^\d{1,2}(\.\d{1,2})?:\d{1,2}(\.\d{1,2})?$/);

const twoColonies = where(object({ from: id, into: id }), (body, field) => differ(body.from, body.into, field));
function differ(from: string, into: string, field: string) {
  return from === into ? ({ kind: 'conflict', fields: [`${field}.from`, `${field}.into`], why: 'same-colony' } as const) : null;
}

const frames = stepped(1, 1, 200, 'frames');

/** Frames go from one place to another one; what is taken in hand is named by where it was taken. */
function flow(from: Place, to: Place, fromField: string, toField: string) {
  const conflict = (why: string) => ({ kind: 'conflict', fields: [fromField, toField], why }) as const;
  if (isSamePlace(from, to)) return conflict('same-place');
  if (!('hand' in to)) return null;
  const origin = 'colony' in from ? from.colony : 'lot' in from ? from.lot : 'shed' in from ? 'shed' : null;
  return origin === to.hand ? null : conflict('hand-names-origin');
}

/** What is found in a hive whose colony died; the last three speak of notifiable disease. */
export const DEADOUT_SIGNS = [
  'heads-in-cells',
  'no-honey-near',
  'honey-left',
  'mite-specks',
  'few-bees-left',
  'spotty-capped-brood',
  'wet-and-mouldy',
  'streaks',
  'no-queen-drone-brood',
  'cluster-a-fist',
  'gnawed',
  'sunken-greasy-caps',
  'ropy-brood',
  'hard-scales',
] as const;

/** The body of each kind of record. Masses in kg. */
export const bodyShapes = {
  yard: object(
    { name: shortLine, latDeg: latitude, lonDeg: number(-180, 180, 'deg') },
    { elevM: number(-400, 5000, 'm'), climatePlace: shortLine, monthlyMeanC, exchangeWith: list(id, 0, 50) },
  ),
  stand: object({ stand: id, row: shortLine, place: stepped(1, 0, 10_000, 'place') }),
  hive: object({ hive: id, label: shortLine }, { stand: id, gone: flag }),
  build: object({ hive: id, parts }),
  'colony-begun': object({ colony: id, hive: id, how: choice(['split', 'swarm', 'purchase', 'unknown']) }, { parents: list(id, 0, 10) }),
  'colony-placed': object({ colony: id, hive: id }),
  'colonies-united': twoColonies,
  'colony-ended': object({ colony: id, how: choice(['died', 'sold', 'other']) }),
  split: where(object({ from: id, into: id }, { frames: halves }), (body, field) => differ(body.from, body.into, field)),
  queen: object({ colony: id, state: queenState }, { bornYear: stepped(1, 1990, 2199, 'year') }),
  super: object({ hive: id, change: choice(['on', 'off']), part: key, count: stepped(1, 1, 20, 'count') }),
  weighing: where(
    object(
      { hive: id },
      {
        frontKg: readingKg,
        rearKg: readingKg,
        word: choice(['heavy', 'fair', 'light']),
        scale: id,
        liftM: number(0.001, 0.3, 'm'),
        stepKg: number(0.001, 5, 'kg'),
      },
    ),
    (body, field) =>
      body.frontKg === undefined && body.rearKg === undefined && body.word === undefined
        ? {
            kind: 'missing-all',
            ways: [[`${field}.frontKg`], [`${field}.rearKg`], [`${field}.frontKg`, `${field}.rearKg`], [`${field}.word`]],
          }
        : null,
  ),
  'part-weighed': object({ parts, massKg }),
  look: object(
    { colony: id },
    {
      bees,
      capped: list(cappedFrames, 0, 20),
      partFull: list(frameCount, 0, 20),
      pollenFrames: halves,
      emptyCombs: list(frameCount, 0, 20),
      brood: choice(['clean', 'signs', 'not-looked']),
    },
  ),
  wash: object({
    colony: id,
    bees: stepped(1, 1, 5000, 'bees'),
    mites: stepped(1, 0, 5000, 'mites'),
    method: choice(['alcohol', 'sugar', 'co2']),
  }),
  board: object({ colony: id, mites: stepped(1, 0, 20_000, 'mites'), days: number(0.5, 60, 'days') }),
  'treatment-in': object({ colony: id, active: key }, { product: shortLine, lot: shortLine }),
  'treatment-out': object({ colony: id, active: key }),
  feed: object(
    { colony: id, what: choice(['syrup', 'candy']), event: choice(['offered', 'feeder-on', 'taken', 'left', 'refused']) },
    { sugarKg: massKg, litres: number(0.01, 200, 'L'), ratio, basis: choice(['mass', 'volume']), feeder: key, massKg },
  ),
  swap: where(
    object(
      { from: place, to: place, frame: key, count: frames },
      { massKg, out: object({ frame: key, count: frames, to: place }, { massKg }) },
    ),
    (body, field) => {
      const back = body.out;
      return (
        flow(body.from, body.to, `${field}.from`, `${field}.to`) ?? (back ? flow(body.to, back.to, `${field}.to`, `${field}.out.to`) : null)
      );
    },
  ),
  'bank-lot': object({ lot: id, frame: key, count: wholes, massKg }, { from: id, crop: key, looked: isoDate, strips: flag }),
  'bank-count': object({ lot: id, count: wholes }),
  'kit-count': object({ item: key, count: number(0, 100_000, 'count'), unit: key }),
  'top-fitted': object({ hive: id, parts: list(partCount, 0, 20) }, { absorbentDryKg: number(0, 30, 'kg') }),
  'shut-tick': object({ hive: id, tick: choice(SHUT_TICKS), done: flag }),
  sign: object({ colony: id, sign: choice(['alive', 'silent', 'frost-plume', 'wet-lid', 'frozen-down']) }),
  'spring-count': object(
    { colony: id, alive: flag },
    { bees, storesKg: number(0, 150, 'kg'), queen: queenState, found: list(choice(DEADOUT_SIGNS), 0, 20) },
  ),
  bloom: object({ plant: key, stage: choice(['first', 'full']) }),
  'weather-file': object({ name: shortLine, digest: pattern('digest', /^[0-9a-f]{8,128}$/) }, { days: someWholes }),
  setting: where(object({ key, value: anyJson }), (body, field) =>
    isSettingKey(body.key) ? settingShapes[body.key].check(body.value, `${field}.value`) : null,
  ),
  'plan-adopted': object({ plan: anyObject }),
  'step-done': object({ plan: recordId, step: key }),
  refusal: object({ subject: id, what: key }, { why: longLine }),
  task: object({ task: key, state: choice(['done', 'not-this-year', 'later']) }, { subjects: list(id, 1, 1000), until: isoDate }),
  pin: object({ subject: id, rule: choice(['never-give', 'never-get', 'never-unite', 'must-give', 'must-get', 'must-unite']), on: flag }),
  correct: object({ target: recordId, body: anyObject }),
  strike: object({ target: recordId }),
} as const satisfies Readonly<Record<string, Shape<unknown>>>;

export type Kind = keyof typeof bodyShapes;
export type Bodies = { readonly [K in Kind]: Of<(typeof bodyShapes)[K]> };
export const KINDS = Object.keys(bodyShapes) as readonly Kind[];

export function isKind(name: unknown): name is Kind {
  return typeof name === 'string' && Object.hasOwn(bodyShapes, name);
}
