import { storesParameters } from '../tables/parameters-stores.gen.ts';
import { framePart } from '../tables/parts.ts';
import { isoDateOf } from '../units/index.ts';
import { beesOf } from './bees.ts';
import { type Belief, believe } from './believe.ts';
import { cappedNetKg, coversAll, frameNamed, mainDepth } from './counted.ts';
import { sdOf } from './errors.ts';
import { readStoresInput, type StoresCase } from './read-input.ts';
import type { CappedFrames, Measurement, StoresInput, Worth } from './types.ts';
import { bothEdgesSdKg, readAtOneEdge, weighedAgainSdKg } from './weighing-doubt.ts';

interface Candidate {
  readonly what: Measurement;
  readonly minutes: number;
  readonly afterDays?: number;
  /** The input as it would stand once that is measured, with the result now expected. */
  readonly input: StoresInput;
}

/** Less than this is not worth a walk [kg]. */
const LEAST_CUT_KG = 0.01;

/**
 * Every measurement that is still open and cuts the doubt, best first.
 *
 * Each is found by adding the measurement to the input, with the result now expected of it, and working the stores out again.
 * Minutes only break ties: a minute at the hive is cheap against a colony.
 */
export function measurementsOpen(given: StoresCase, belief: Belief): readonly Worth[] {
  const nowKg = sdOf(belief.stores.errors);
  const worths: Worth[] = [];
  for (const { what, minutes, afterDays, input } of candidates(given, belief)) {
    const read = readStoresInput(input);
    const then = read.ok ? believe(read.value) : read;
    if (!then.ok) continue;
    const sdKg = sdOf(then.value.stores.errors);
    if (sdKg < nowKg - LEAST_CUT_KG) worths.push({ what, sdKg, minutes, afterDays: afterDays ?? 0 });
  }
  return worths.sort((a, b) => a.sdKg - b.sdKg || a.minutes - b.minutes);
}

function candidates(given: StoresCase, belief: Belief): Candidate[] {
  return [...ofWeight(given, belief), ...ofCombs(given, belief)];
}

function ofWeight(given: StoresCase, belief: Belief): Candidate[] {
  const { input, day, lastSyrupDay } = given;
  const p = storesParameters;
  const list: Candidate[] = [];
  const { tare, bees, pollen, onHive, water, snow, stores } = belief;
  // What a scale would show if the best estimate were the truth, and never less than a hive without stores.
  const expectedGrossKg = tare.massKg + bees.massKg + pollen.massKg + onHive.massKg + water.massKg + snow.massKg + Math.max(0, stores.kg);
  if (input.grossKg === undefined || given.byWord) {
    list.push({
      what: 'weigh',
      minutes: p.minutesWeigh.value,
      input: { ...input, grossKg: expectedGrossKg, grossSdKg: bothEdgesSdKg(expectedGrossKg) },
    });
  }
  if (input.grossKg === undefined) return list;
  const fromKg = input.grossKg;
  const sdKg = input.grossSdKg ?? bothEdgesSdKg(fromKg);
  if (!given.byWord && readAtOneEdge(sdKg, fromKg)) {
    list.push({ what: 'second-edge', minutes: p.minutesSecondEdge.value, input: { ...input, grossSdKg: bothEdgesSdKg(expectedGrossKg) } });
  }
  const again = (toKg: number) => ({
    grossKg: toKg,
    grossSdKg: given.byWord ? sdKg : weighedAgainSdKg(sdKg, { fromKg, toKg }),
  });
  if (tare.basis !== 'empty hive') {
    list.push({ what: 'weigh-empty-hive', minutes: p.minutesEmptyHive.value, input: { ...input, emptyHive: { massKg: tare.massKg } } });
  }
  if (onHive.massKg > 0 && input.onHive?.weighed !== true) {
    list.push({
      what: 'weigh-on-hive',
      minutes: p.minutesWeighOnHive.value,
      input: { ...input, onHive: { ...input.onHive, weighed: true } },
    });
  }
  if (water.massKg > 0 && day !== null && lastSyrupDay !== null) {
    const dryDay = lastSyrupDay + p.dryingWindowDays.value + 1;
    list.push({
      what: 'wait-and-weigh',
      minutes: p.minutesWaitAndWeigh.value,
      afterDays: dryDay - day,
      input: { ...input, date: isoDateOf(dryDay), ...again(expectedGrossKg - water.massKg) },
    });
  }
  if (snow.massKg > 0) {
    list.push({
      what: 'clear-snow',
      minutes: p.minutesClearSnow.value,
      input: { ...input, snowIceKg: 0, ...again(expectedGrossKg - snow.massKg) },
    });
  }
  return list;
}

function ofCombs(given: StoresCase, belief: Belief): Candidate[] {
  const { input, facts } = given;
  const p = storesParameters;
  const list: Candidate[] = [];
  if (input.cappedFrames === undefined || !coversAll(facts, input)) {
    const cappedFrames = expectedCount(given, belief);
    list.push({ what: 'count-capped-frames', minutes: p.minutesCountCapped.value, input: { ...input, cappedFrames, countCovers: 'all' } });
  }
  if ((input.cappedFrames ?? []).some(({ massKg, count }) => massKg === undefined && count > 0)) {
    const cappedFrames = (input.cappedFrames ?? []).map(asWeighed);
    list.push({ what: 'weigh-capped-frame', minutes: p.minutesWeighFrame.value, input: { ...input, cappedFrames } });
  }
  if (belief.bees.assumed) {
    const perFrame = beesOf(facts, { framesOfBees: 1 }).count;
    const framesOfBees = belief.bees.count / perFrame;
    list.push({ what: 'count-frames-of-bees', minutes: p.minutesCountBees.value, input: { ...input, framesOfBees } });
  }
  if (input.pollenFrames === undefined) {
    const pollenFrames = (p.pollenPerCombKg.value * facts.framePlaces) / p.pollenFrameKg.value;
    list.push({ what: 'count-pollen-frames', minutes: p.minutesCountPollen.value, input: { ...input, pollenFrames } });
  }
  return list;
}

/** What a count of every comb would find if the stores are what they are thought to be: more capped combs below those named. */
function expectedCount({ input, facts }: StoresCase, { stores }: Belief): CappedFrames[] {
  const depth = mainDepth(facts);
  const restKg = storesParameters.restPerCombKg.value;
  const entries = [...(input.cappedFrames ?? [])];
  const named = entries.reduce((n, { count }) => n + count, 0);
  const namedKg = entries.reduce(
    (kg, { frame, count, fullFrac }) => kg + count * (fullFrac ?? 1) * (frameNamed(frame)?.cappedNetKg ?? 0),
    0,
  );
  const hung = facts.frames.filter(({ part }) => part.depth === depth).reduce((n, { count }) => n + count, 0);
  const more = (stores.kg - namedKg - restKg * (facts.framePlaces - named)) / (cappedNetKg(depth).kg - restKg);
  const taken = Math.max(input.pollenFrames ?? 0, input.broodFrames ?? 0);
  const most = Math.floor(Math.min(hung - named, facts.frameCount - named - taken));
  return [...entries, { frame: depth, count: Math.max(0, Math.min(Math.round(more), most)), where: 'below' }];
}

/** The same combs, one of them hung on a scale. */
function asWeighed(entry: CappedFrames): CappedFrames {
  const part = frameNamed(entry.frame);
  if (part === undefined || entry.massKg !== undefined) return entry;
  const { fullFrac, ...rest } = entry;
  return { ...rest, massKg: framePart(part.depth, 'drawn').massKg + part.cappedNetKg * (fullFrac ?? 1) };
}
