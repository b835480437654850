import { expect, test } from 'vitest';
import { keyOf, uniformAt } from '../src/chance/index.ts';
import { type Measurement, type StoresAnswer, type StoresInput, stores } from '../src/stores/index.ts';
import { storesParameters } from '../src/tables/parameters-stores.gen.ts';
import { type Build, framePart, partOf, standardBuild } from '../src/tables/parts.ts';

const STATES = 200;
const SEED = Number(process.env['SEED'] ?? 20260914);
const key = keyOf(SEED, 'measure-next', 'states');

/** Uniform numbers of one state, one after the other. */
function dice(state: number) {
  let index = 0;
  const u = () => uniformAt(key, state, index++);
  return {
    chance: (p: number) => u() < p,
    between: (low: number, high: number) => low + (high - low) * u(),
    pick: <T>(list: readonly T[]): T => list[Math.floor(u() * list.length)]!,
  };
}

const BUILDS: readonly Build[] = [
  standardBuild(['deep', 'deep'], 10),
  standardBuild(['deep'], 10),
  standardBuild(['deep', 'medium'], 8, { material: 'foam' }),
  standardBuild(['medium', 'medium', 'medium'], 8),
  standardBuild(['deep'], 5),
];

function randomState(state: number): StoresInput {
  const { chance, between, pick } = dice(state);
  const build = pick(BUILDS);
  const frames = build.filter(({ part }) => partOf(part)?.kind === 'frame');
  const frame = frames[0]!.part;
  const places = build.reduce((n, { part, count }) => n + (partOf(part)?.kind === 'box' ? count * Number(part.split('-')[1]) : 0), 0);
  const boxPlaces = Number(build.find(({ part }) => partOf(part)?.kind === 'box')!.part.split('-')[1]);
  const tareKg = stores({ build, cappedFrames: [] });
  if (!tareKg.ok) throw new Error('the build was refused');
  const counted = chance(0.5);
  const top = Math.floor(between(0, boxPlaces));
  const below = Math.floor(between(0, Math.min(4, frames[0]!.count - top)));
  const entry = (where: 'top' | 'below', count: number) => ({
    frame,
    count,
    where,
    ...(chance(0.3)
      ? { massKg: framePart(partOf(frame)!.kind === 'frame' ? (frame.split('-')[0] as 'deep') : 'deep', 'drawn').massKg + 1.6 }
      : {}),
  });
  const grossKg = tareKg.value.tare.massKg + places * between(0.6, 1.9) + 3;
  const weight = chance(0.85) || !counted;
  return {
    build,
    ...(weight
      ? chance(0.1)
        ? { word: pick(['heavy', 'fair', 'light'] as const) }
        : { grossKg, grossSdKg: pick([0.4, 0.7, 1, 3, 6]) }
      : {}),
    ...(chance(0.45)
      ? { emptyHive: { massKg: tareKg.value.tare.massKg * between(0.95, 1.02), ...(chance(0.5) ? { sdKg: between(0.1, 0.6) } : {}) } }
      : {}),
    ...(chance(0.6)
      ? { framesOfBees: Math.round(between(2, places * 0.8)), counting: pick(['packed', 'covered', 'occupied'] as const) }
      : {}),
    ...(counted ? { cappedFrames: [entry('top', top), ...(chance(0.5) ? [entry('below', below)] : [])] } : {}),
    ...(chance(0.3)
      ? { onHive: { feeder: 'top-feeder', syrupKg: between(0, 5), candyKg: between(0, 4), ...(chance(0.3) ? { weighed: true } : {}) } }
      : {}),
    ...(chance(0.3)
      ? { date: '2026-09-20', syrupGiven: [{ date: `2026-09-${10 + Math.floor(between(0, 10))}`, sugarKg: between(2, 30) }] }
      : {}),
    ...(chance(0.2) ? { snowIceKg: between(0.5, 8) } : {}),
    ...(chance(0.3) ? { pollenFrames: 1 } : {}),
  };
}

/** Each measurement really added to the input, with the result now expected of it; none where it is already made. */
function added(input: StoresInput, now: StoresAnswer): Partial<Record<Measurement, StoresInput>> {
  const p = storesParameters;
  const weighed = input.grossKg !== undefined || input.word !== undefined;
  const known = now.byWeight?.kg ?? 0;
  const without = (change: Partial<StoresInput>): number => {
    const then = stores({ ...input, ...change });
    if (!then.ok) throw new Error(JSON.stringify(then.error));
    return (then.value.byWeight?.kg ?? known) - known;
  };
  const all: Partial<Record<Measurement, StoresInput>> = {};
  const { word: _word, ...wordless } = input;
  if (input.grossKg === undefined) {
    all.weigh = { ...wordless, grossKg: now.tare.massKg + now.bees.massKg + now.storesKg, grossSdKg: p.grossSdKg.value };
  } else if ((input.grossSdKg ?? 1) > p.grossSdKg.value) all['second-edge'] = { ...input, grossSdKg: p.grossSdKg.value };
  if (weighed && input.emptyHive === undefined) all['weigh-empty-hive'] = { ...input, emptyHive: { massKg: now.tare.massKg } };
  if (input.onHive !== undefined && input.onHive.weighed !== true)
    all['weigh-on-hive'] = { ...input, onHive: { ...input.onHive, weighed: true } };
  const last = input.syrupGiven?.[0];
  if (weighed && last !== undefined) {
    const waterKg = without({ syrupGiven: [] });
    const day = String(Number(last.date.slice(8)) + 15 - 30).padStart(2, '0');
    const date = Number(last.date.slice(8)) + 15 > 30 ? `2026-10-${day}` : `2026-09-${Number(last.date.slice(8)) + 15}`;
    all['wait-and-weigh'] = { ...input, date, ...(input.grossKg === undefined ? {} : { grossKg: input.grossKg - waterKg }) };
  }
  if (weighed && input.snowIceKg !== undefined) {
    all['clear-snow'] = { ...input, snowIceKg: 0, ...(input.grossKg === undefined ? {} : { grossKg: input.grossKg - input.snowIceKg }) };
  }
  const boxes = input.build.reduce((n, { part, count }) => n + (partOf(part)?.kind === 'box' ? count : 0), 0);
  const below = input.cappedFrames?.some(({ where }) => where === 'below') ?? false;
  if (input.cappedFrames === undefined || !(below || boxes === 1)) {
    // The count that leaves the best estimate where it is: tried one by one, the nearest taken.
    const named = input.cappedFrames ?? [];
    const frame = input.build
      .map(({ part }) => part)
      .find((part) => partOf(part)?.kind === 'frame')!
      .replace('-frame-drawn', '');
    const depth = mainDepth(input.build) ?? frame;
    let best: { apart: number; then: StoresInput } | null = null;
    for (let count = 0; count <= 30; count++) {
      const then: StoresInput = { ...input, cappedFrames: [...named, { frame: depth, count, where: 'below' }], countCovers: 'all' };
      const read = stores(then);
      if (!read.ok) continue;
      const apart = Math.abs(nominal(read.value, then) - now.storesKg);
      if (best === null || apart < best.apart - 1e-9) best = { apart, then };
    }
    if (best !== null) all['count-capped-frames'] = best.then;
  }
  if (input.cappedFrames?.some(({ massKg, count }) => massKg === undefined && count > 0)) {
    const part = (frame: string) => framePart(frame.split('-')[0] as 'deep', 'drawn');
    all['weigh-capped-frame'] = {
      ...input,
      cappedFrames: input.cappedFrames.map((one) => ({
        ...one,
        massKg: one.massKg ?? part(one.frame).massKg + part(one.frame).cappedNetKg,
      })),
    };
  }
  if (input.framesOfBees === undefined && input.bees === undefined) {
    const one = stores({ ...input, framesOfBees: 1 });
    if (one.ok) all['count-frames-of-bees'] = { ...input, framesOfBees: now.bees.count / one.value.bees.count };
  }
  if (input.pollenFrames === undefined) {
    const places = input.build.reduce(
      (n, { part, count }) => n + (partOf(part)?.kind === 'box' ? count * Number(part.split('-')[1]) : 0),
      0,
    );
    all['count-pollen-frames'] = { ...input, pollenFrames: (p.pollenPerCombKg.value * places) / p.pollenFrameKg.value };
  }
  return all;
}

/** The same with a weight this build can have: the error of the stores does not hang on the weight itself. */
function possible(input: StoresInput): StoresInput {
  const read = stores(input);
  if (read.ok || read.error.kind !== 'out-of-range' || input.grossKg === undefined) return input;
  return { ...input, grossKg: (read.error.low + read.error.high) / 2 };
}

/** Stores by count at the table's net mass per frame, so that a weighed frame does not move the count that is expected. */
function nominal(answer: StoresAnswer, then: StoresInput): number {
  const entries = (then.cappedFrames ?? []).map(({ massKg: _massKg, ...rest }) => rest);
  const read = stores({ build: then.build, cappedFrames: entries, countCovers: 'all' });
  return read.ok ? read.value.byCount!.kg : answer.storesKg;
}

function mainDepth(build: Build): string | undefined {
  const places = new Map<string, number>();
  for (const { part, count } of build) {
    if (partOf(part)?.kind === 'box') places.set(part.split('-')[0]!, (places.get(part.split('-')[0]!) ?? 0) + count);
  }
  return [...places].sort((a, b) => b[1] - a[1])[0]?.[0];
}

test(`the measurement named next is the best of all in ${STATES} random states (SEED=${SEED})`, () => {
  const named = new Map<string, number>();
  let compared = 0;
  for (let state = 0; state < STATES; state++) {
    const input = randomState(state);
    const now = stores(input);
    if (!now.ok) throw new Error(`state ${state}: ${JSON.stringify(now.error)}`);
    const after = new Map<string, number>();
    for (const [what, then] of Object.entries(added(input, now.value))) {
      const answer = stores(possible(then));
      if (!answer.ok) throw new Error(`state ${state}, ${what}: ${JSON.stringify(answer.error)}`);
      after.set(what, answer.value.sdKg);
    }
    const best = Math.min(now.value.sdKg, ...after.values());
    const next = now.value.measureNext;
    if (next === null) expect(best, `state ${state}: nothing is named, yet something helps`).toBeGreaterThan(now.value.sdKg - 0.0101);
    else {
      expect(after.get(next.what), `state ${state}: ${next.what} gives what it promises`).toBeCloseTo(next.sdKg, 6);
      expect(next.sdKg, `state ${state}: ${next.what} is the best of ${JSON.stringify([...after])}`).toBeLessThan(best + 1e-6);
    }
    for (const one of now.value.measurements) {
      compared++;
      expect(after.get(one.what), `state ${state}: ${one.what}`).toBeCloseTo(one.sdKg, 6);
    }
    const name = next?.what ?? 'nothing';
    named.set(name, (named.get(name) ?? 0) + 1);
  }
  expect(compared).toBeGreaterThan(STATES);
  expect([...named.keys()].filter((name) => name !== 'nothing').length, JSON.stringify([...named])).toBeGreaterThanOrEqual(4);
});
