import { type BuildFacts, readBuild } from '../matter/index.ts';
import { type BadInput, bad, good, inRange, type Result } from '../result/index.ts';
import { type Build, partKeys, partOf } from '../tables/parts.ts';
import { epochDayOf } from '../units/index.ts';
import { HEFT_WORDS, type HeftWord, wordWeight } from '../weigh/index.ts';
import { frameNamed } from './counted.ts';
import { type Fed, usualWaterKg } from './drying.ts';
import type { CappedFrames, Counting, StoresInput } from './types.ts';

/** An input that was read and found possible. */
export interface StoresCase {
  readonly input: StoresInput;
  readonly facts: BuildFacts;
  /** True where the weight is what a word stands for. */
  readonly byWord: boolean;
  /** Syrup that is in the combs, not in the feeder. */
  readonly fed: readonly Fed[];
  /** Epoch days of the weighing and of the last syrup; null where not known. */
  readonly day: number | null;
  readonly lastSyrupDay: number | null;
}

/** Bounds of the single figures: what cannot be, not what is unlikely. They decide no result. */
export const STORES_RANGES = {
  grossKg: { low: 3, high: 300, unit: 'kg' },
  grossSdKg: { low: 0.02, high: 15, unit: 'kg' },
  bees: { low: 0, high: 120_000, unit: 'bees' },
  beesSdFrac: { low: 0, high: 1, unit: '' },
  framesOfBees: { low: 0, high: 60, unit: 'frames' },
  seamsOfBees: { low: 0, high: 60, unit: 'seams' },
  pollenFrames: { low: 0, high: 20, unit: 'frames' },
  broodFrames: { low: 0, high: 20, unit: 'frames' },
  snowIceKg: { low: 0, high: 60, unit: 'kg' },
} as const;
const COUNTINGS: readonly Counting[] = ['packed', 'covered', 'occupied'];
/** Words are calibrated on ten-frame hives of deep boxes of this height. */
const DEEP_BOX_M = 0.244;
const TEN_FRAMES = 10;
const ON_HIVE = { low: 0, high: 40, unit: 'kg' };

export function readStoresInput(input: StoresInput): Result<StoresCase> {
  const built = readBuild(input.build);
  if (!built.ok) return built;
  const facts = built.value;
  const wrong = figures(input) ?? bodies(input) ?? combs(facts, input) ?? onHive(input);
  if (wrong) return bad(wrong);
  if (facts.frameCount === 0) {
    return bad({ kind: 'out-of-range', field: 'build (frames)', value: 0, unit: 'frames', low: 1, high: facts.framePlaces });
  }
  return fedOf({
    byWord: input.word !== undefined,
    input: input.word === undefined ? input : { ...input, word: undefined, ...weightOfWord(facts, input.word) },
    facts,
  });
}

/** What a word stands for in a hive of this height; narrower hives in proportion. */
function weightOfWord(facts: BuildFacts, word: HeftWord): { grossKg: number; grossSdKg: number } {
  const heightM = facts.boxes.reduce((total, { part, count }) => total + part.heightM * count, 0);
  const weight = wordWeight(word, Math.min(5, Math.max(0.5, heightM / DEEP_BOX_M)));
  const widthFrac = Math.max(...facts.boxes.map(({ part }) => part.framesFit)) / TEN_FRAMES;
  return { grossKg: weight.totalKg * widthFrac, grossSdKg: weight.sdKg * widthFrac };
}

function figures(input: StoresInput): BadInput | null {
  for (const [field, range] of Object.entries(STORES_RANGES)) {
    const value = input[field as keyof typeof STORES_RANGES];
    if (value === undefined) continue;
    const read = inRange(field, value, range);
    if (!read.ok) return read.error;
  }
  if (input.emptyHive !== undefined) {
    const mass = inRange('emptyHive.massKg', input.emptyHive.massKg, { low: 3, high: 90, unit: 'kg' });
    if (!mass.ok) return mass.error;
    const sd = inRange('emptyHive.sdKg', input.emptyHive.sdKg ?? 0, { low: 0, high: 5, unit: 'kg' });
    if (!sd.ok) return sd.error;
  }
  return null;
}

function bodies(input: StoresInput): BadInput | null {
  const counts = (['bees', 'framesOfBees', 'seamsOfBees'] as const).filter((field) => input[field] !== undefined);
  if (counts.length > 1) return { kind: 'conflict', fields: counts, why: 'give-one' };
  if (input.counting !== undefined && !COUNTINGS.includes(input.counting)) {
    return { kind: 'unknown-choice', field: 'counting', value: String(input.counting), choices: COUNTINGS };
  }
  if (input.word !== undefined && !HEFT_WORDS.includes(input.word)) {
    return { kind: 'unknown-choice', field: 'word', value: String(input.word), choices: HEFT_WORDS };
  }
  if (input.word !== undefined && input.grossKg !== undefined) return { kind: 'conflict', fields: ['word', 'grossKg'], why: 'give-one' };
  if (input.grossKg === undefined && input.word === undefined && input.cappedFrames === undefined)
    return { kind: 'missing-all', ways: [['grossKg'], ['word'], ['cappedFrames']] };
  return null;
}

function combs(facts: BuildFacts, { cappedFrames, framesOfBees, seamsOfBees, pollenFrames, broodFrames }: StoresInput): BadInput | null {
  let counted = 0;
  for (const [i, entry] of (cappedFrames ?? []).entries()) {
    const wrong = cappedEntry(entry, `cappedFrames[${i}]`, facts);
    if (wrong) return wrong;
    counted += entry.count;
  }
  const deep = (depth: string) =>
    (cappedFrames ?? []).filter(({ frame }) => frameNamed(frame)?.depth === depth).reduce((n, { count }) => n + count, 0);
  const top = (cappedFrames ?? []).filter(({ where }) => where === 'top').reduce((n, { count }) => n + count, 0);
  const hung = (depth: string) => facts.frames.filter(({ part }) => part.depth === depth).reduce((n, { count }) => n + count, 0);
  for (const depth of ['deep', 'medium', 'shallow']) {
    if (deep(depth) > hung(depth)) {
      return { kind: 'out-of-range', field: `cappedFrames (${depth})`, value: deep(depth), unit: 'frames', low: 0, high: hung(depth) };
    }
  }
  const topPlaces = Math.max(...facts.boxes.map(({ part }) => part.framesFit));
  if (top > topPlaces) return { kind: 'out-of-range', field: 'cappedFrames (top)', value: top, unit: 'frames', low: 0, high: topPlaces };
  const rest = facts.frameCount - counted;
  for (const [field, value] of [
    ['pollenFrames', pollenFrames],
    ['broodFrames', broodFrames],
  ] as const) {
    if ((value ?? 0) > rest) return { kind: 'out-of-range', field, value: value ?? 0, unit: 'frames', low: 0, high: rest };
  }
  // Bees fill the gaps, the outer faces and the space above and below: a little more than one frame of bees to a place.
  const most = facts.framePlaces + 2 * facts.boxCount;
  for (const [field, value, unit] of [
    ['framesOfBees', framesOfBees, 'frames'],
    ['seamsOfBees', seamsOfBees, 'seams'],
  ] as const) {
    if ((value ?? 0) > most) return { kind: 'out-of-range', field, value: value ?? 0, unit, low: 0, high: most };
  }
  return null;
}

function cappedEntry({ frame, count, where, massKg, fullFrac }: CappedFrames, field: string, facts: BuildFacts): BadInput | null {
  const part = frameNamed(frame);
  if (part === undefined) {
    const choices = ['deep', 'medium', 'shallow', ...partKeys().filter((key) => frameNamed(key) !== undefined)];
    return { kind: 'unknown-choice', field: `${field}.frame`, value: String(frame), choices };
  }
  const counted = inRange(`${field}.count`, count, { low: 0, high: facts.frameCount, unit: 'frames' });
  if (!counted.ok) return counted.error;
  if (!Number.isInteger(2 * count)) return { kind: 'implausible', field: `${field}.count`, value: count, unit: 'frames', why: 'not-half' };
  if (where !== 'top' && where !== 'below')
    return { kind: 'unknown-choice', field: `${field}.where`, value: String(where), choices: ['top', 'below'] };
  if (massKg !== undefined) {
    const mass = inRange(`${field}.massKg`, massKg, { low: part.massKg, high: part.high + 2 * part.cappedNetHighKg, unit: 'kg' });
    if (!mass.ok) return mass.error;
    if (fullFrac !== undefined && fullFrac !== 1)
      return { kind: 'conflict', fields: [`${field}.massKg`, `${field}.fullFrac`], why: 'give-one' };
  }
  if (fullFrac === undefined) return null;
  const full = inRange(`${field}.fullFrac`, fullFrac, { low: 0, high: 1, unit: '' });
  return full.ok ? null : full.error;
}

function onHive({ onHive: given }: StoresInput): BadInput | null {
  if (given === undefined) return null;
  for (const field of ['syrupKg', 'candyKg', 'waterKg', 'otherKg'] as const) {
    const read = inRange(`onHive.${field}`, given[field] ?? 0, ON_HIVE);
    if (!read.ok) return read.error;
  }
  if (given.feeder !== undefined && partOf(given.feeder)?.kind !== 'feeder') {
    const feeders = partKeys().filter((key) => partOf(key)?.kind === 'feeder');
    return { kind: 'unknown-choice', field: 'onHive.feeder', value: String(given.feeder), choices: feeders };
  }
  return topParts(given.topParts ?? []);
}

function topParts(parts: Build): BadInput | null {
  for (const [i, { part: key, count, massKg }] of parts.entries()) {
    const part = partOf(key);
    if (part === undefined || part.kind === 'box' || part.kind === 'frame') {
      const choices = partKeys().filter((one) => !['box', 'frame'].includes(partOf(one)?.kind ?? ''));
      return { kind: 'unknown-choice', field: `onHive.topParts[${i}].part`, value: String(key), choices };
    }
    const counted = inRange(`onHive.topParts[${i}].count`, count, { low: 0, high: 6, unit: '' });
    if (!counted.ok) return counted.error;
    if (massKg === undefined) continue;
    const mass = inRange(`onHive.topParts[${i}].massKg`, massKg, { low: 0.05, high: 30, unit: 'kg' });
    if (!mass.ok) return mass.error;
  }
  return null;
}

/** Dates and syrup; what is still in the feeder is taken off the last syrup given. */
function fedOf({ input, facts, byWord }: Pick<StoresCase, 'input' | 'facts' | 'byWord'>): Result<StoresCase> {
  const day = input.date === undefined ? null : epochDayOf(input.date);
  if (input.date !== undefined && day === null) return bad({ kind: 'not-a-date', field: 'date', value: String(input.date) });
  const given: { day: number; sugarKg: number; waterKg: number }[] = [];
  for (const [i, { date, sugarKg, waterKg }] of (input.syrupGiven ?? []).entries()) {
    if (day === null) return bad({ kind: 'missing', field: 'date' });
    const fedDay = epochDayOf(date);
    if (fedDay === null) return bad({ kind: 'not-a-date', field: `syrupGiven[${i}].date`, value: String(date) });
    if (fedDay > day) return bad({ kind: 'date-order', field: 'date', value: input.date ?? '', notBefore: date });
    const sugar = inRange(`syrupGiven[${i}].sugarKg`, sugarKg, { low: 0, high: 60, unit: 'kg' });
    if (!sugar.ok) return sugar;
    const water = inRange(`syrupGiven[${i}].waterKg`, waterKg ?? 0, { low: 0, high: 60, unit: 'kg' });
    if (!water.ok) return water;
    given.push({ day: fedDay, sugarKg, waterKg: waterKg ?? usualWaterKg(sugarKg) });
  }
  given.sort((a, b) => b.day - a.day);
  let inFeederKg = input.onHive?.syrupKg ?? 0;
  const fed: Fed[] = [];
  for (const one of given) {
    const massKg = one.sugarKg + one.waterKg;
    const taken = massKg === 0 ? 0 : Math.max(0, massKg - inFeederKg) / massKg;
    inFeederKg = Math.max(0, inFeederKg - massKg);
    fed.push({ daysAgo: (day ?? one.day) - one.day, sugarKg: one.sugarKg * taken, waterKg: one.waterKg * taken });
  }
  return good({ input, facts, byWord, fed, day, lastSyrupDay: given[0]?.day ?? null });
}
