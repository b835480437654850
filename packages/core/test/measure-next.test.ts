import { expect, test } from 'vitest';
import { keyOf, uniformAt } from '../src/chance/index.ts';
import { type Measurement, type StoresAnswer, type StoresInput, stores } from '../src/stores/index.ts';
import { storesParameters } from '../src/tables/parameters-stores.gen.ts';
import { type Build, type FrameDepth, framePart, partOf, standardBuild } from '../src/tables/parts.ts';
import { edgeReadingKg, type HeftInput, heft, standardGeometry } from '../src/weigh/index.ts';

const STATES = 200;
const SEED = Number(process.env['SEED'] ?? 20260914);
const key = keyOf(SEED, 'measure-next', 'states');

/** The answer leaves out what cuts the doubt by less than this; so near may also lie a reading of the scale that cannot be known before. */
const LEAST_CUT_KG = 0.01;
/** Digits only: the named measurement is the best one, not one near it. */
const DIGITS_KG = 1e-6;
/**
 * Measurements whose worth hangs on what the scale will show. They cannot be exact: the promise is for a hive whose honey sits as
 * usual, while the one found has its own front share. Where a front reading and the count of combs disagree, the rear reading that
 * makes up the believed weight says that the honey sits far off the middle, and the error of the two readings is up to 7 % another
 * (seeds 1 to 10; 1 % on the seed run here). The others must come to the promise to the digit.
 */
const BY_SCALE = new Set<Measurement>(['weigh', 'second-edge', 'wait-and-weigh', 'clear-snow']);

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
  standardBuild(['shallow', 'shallow', 'shallow'], 10),
  standardBuild(['deep', 'shallow'], 8),
];

/** What the scale showed: one edge, both, or nothing but a figure the keeper gives. */
interface State {
  readonly input: StoresInput;
  readonly readings: HeftInput | null;
}

/** A weighing turned into what `stores` is told of it. */
function weighed(readings: HeftInput): { grossKg: number; grossSdKg: number } {
  const answer = heft(readings);
  if (!answer.ok) throw new Error(JSON.stringify(answer.error));
  return { grossKg: answer.value.totalKg, grossSdKg: answer.value.sdKg };
}

/** Readings a hive of this weight gives at both edges, its honey so far ahead of the middle [m]. */
function readingsOf(massKg: number, aheadM = 0): { frontKg: number; rearKg: number } {
  const geometry = standardGeometry();
  const centre = geometry.baseDepthM / 2 + aheadM;
  return { frontKg: edgeReadingKg(massKg, centre, geometry, 'front'), rearKg: edgeReadingKg(massKg, centre, geometry, 'rear') };
}

function randomState(state: number): State {
  const { chance, between, pick } = dice(state);
  const build = pick(BUILDS);
  const frames = build.filter(({ part }) => partOf(part)?.kind === 'frame');
  const frame = frames[0]!.part;
  const places = placesOf(build);
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
      ? { massKg: framePart(partOf(frame)!.kind === 'frame' ? (frame.split('-')[0] as FrameDepth) : 'deep', 'drawn').massKg + 1.6 }
      : {}),
  });
  const grossKg = tareKg.value.tare.massKg + places * between(0.6, 1.9) + 3;
  const weight = chance(0.85) || !counted ? pick(['word', 'front', 'front', 'both', 'both', 'told'] as const) : 'none';
  const both = readingsOf(grossKg, between(-0.03, 0.03));
  const readings = weight === 'front' ? { frontKg: both.frontKg } : weight === 'both' ? both : null;
  const input: StoresInput = {
    build,
    ...(weight === 'word' ? { word: pick(['heavy', 'fair', 'light'] as const) } : {}),
    ...(weight === 'told' ? { grossKg, grossSdKg: pick([0.4, 0.7, 1]) } : {}),
    ...(readings === null ? {} : weighed(readings)),
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
  return { input, readings };
}

/** Each measurement really added to the input, with the result now expected of it; none where it is already made. */
function added(drawn: State, now: StoresAnswer): Partial<Record<Measurement, StoresInput>> {
  const { input, readings } = drawn;
  const p = storesParameters;
  const onScale = input.grossKg !== undefined || input.word !== undefined;
  const known = now.byWeight?.kg ?? 0;
  const without = (change: Partial<StoresInput>): number => {
    const then = stores({ ...input, ...change });
    if (!then.ok) throw new Error(JSON.stringify(then.error));
    return (then.value.byWeight?.kg ?? known) - known;
  };
  const all: Partial<Record<Measurement, StoresInput>> = {};
  const { word: _word, ...wordless } = input;
  if (input.grossKg === undefined) all.weigh = { ...wordless, ...weighed(readingsOf(worldKg(input, now))) };
  if (readings !== null && readings.rearKg === undefined) {
    all['second-edge'] = {
      ...input,
      ...weighed({ ...readings, rearKg: rearOf(readings.frontKg!, [worldKg(input, now), input.grossKg!]) }),
    };
  }
  if (onScale && input.emptyHive === undefined) all['weigh-empty-hive'] = { ...input, emptyHive: { massKg: now.tare.massKg } };
  if (input.onHive !== undefined && input.onHive.weighed !== true)
    all['weigh-on-hive'] = { ...input, onHive: { ...input.onHive, weighed: true } };
  const last = input.syrupGiven?.[0];
  const waterKg = onScale && last !== undefined ? without({ syrupGiven: [] }) : 0;
  if (onScale && last !== undefined) {
    const day = String(Number(last.date.slice(8)) + 15 - 30).padStart(2, '0');
    const date = Number(last.date.slice(8)) + 15 > 30 ? `2026-10-${day}` : `2026-09-${Number(last.date.slice(8)) + 15}`;
    all['wait-and-weigh'] = { ...input, date, ...weighedAgain(drawn, worldKg(input, now)) };
  }
  if (onScale && input.snowIceKg !== undefined) {
    all['clear-snow'] = { ...input, snowIceKg: 0, ...weighedAgain(drawn, worldKg(input, now) - input.snowIceKg + waterKg) };
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
    all['count-pollen-frames'] = { ...input, pollenFrames: (p.pollenPerCombKg.value * placesOf(input.build)) / p.pollenFrameKg.value };
  }
  return all;
}

/** Weight of the whole hive if what is believed of it were the truth [kg]. */
function worldKg(input: StoresInput, now: StoresAnswer): number {
  const p = storesParameters;
  const places = placesOf(input.build);
  const pollenKg = input.pollenFrames === undefined ? p.pollenPerCombKg.value * places : p.pollenFrameKg.value * input.pollenFrames;
  const { syrupKg = 0, candyKg = 0 } = input.onHive ?? {};
  // an empty top feeder weighs 2.67 kg
  const onHiveKg = input.onHive === undefined ? 0 : syrupKg + candyKg + 2.67;
  return now.tare.massKg + now.bees.massKg + pollenKg + onHiveKg + (input.snowIceKg ?? 0) + now.storesKg;
}

/**
 * What the rear edge shows beside a front reading: both together are those of the hive's weight. Where weight and count disagree so
 * much that no hive of the believed weight shows this at its front, the next weight is taken.
 */
function rearOf(frontKg: number, massesKg: readonly number[]): number {
  for (const massKg of massesKg) {
    const both = readingsOf(massKg);
    const rearKg = both.frontKg + both.rearKg - frontKg;
    if (heft({ frontKg, rearKg }).ok) return rearKg;
  }
  throw new Error(`no rear reading goes with ${frontKg} kg at the front`);
}

/** The hive weighed again in the same way at another weight; what is no weighing stays as doubtful as it was. */
function weighedAgain({ input, readings }: State, massKg: number): Partial<StoresInput> {
  if (input.grossKg === undefined) return {};
  if (readings === null) return { grossKg: massKg };
  const share = massKg / input.grossKg;
  const { frontKg, rearKg } = readings;
  return weighed({ frontKg: frontKg! * share, ...(rearKg === undefined ? {} : { rearKg: rearKg * share }) });
}

function placesOf(build: Build): number {
  return build.reduce((n, { part, count }) => n + (partOf(part)?.kind === 'box' ? count * Number(part.split('-')[1]) : 0), 0);
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
  let [compared, exact, namedStates] = [0, 0, 0];
  for (let state = 0; state < STATES; state++) {
    const drawn = randomState(state);
    const { input } = drawn;
    const now = stores(input);
    if (!now.ok) throw new Error(`state ${state}: ${JSON.stringify(now.error)}`);
    const after = new Map<string, number>();
    for (const [what, then] of Object.entries(added(drawn, now.value))) {
      const answer = stores(possible(then));
      // A word stands for one weight, and a hive may be too heavy for it once what stands on it is known.
      if (!answer.ok && input.word !== undefined) continue;
      if (!answer.ok) throw new Error(`state ${state}, ${what}: ${JSON.stringify(answer.error)}`);
      after.set(what, answer.value.sdKg);
    }
    const next = now.value.measureNext;
    const best = Math.min(now.value.sdKg, ...after.values());
    const reached = next === null ? now.value.sdKg : after.get(next.what);
    const first = [...after].reduce((a, b) => (b[1] < a[1] ? b : a), ['nothing', Number.POSITIVE_INFINITY] as [string, number])[0];
    const onScale = [first, next?.what].some((what) => BY_SCALE.has(what as Measurement));
    const near = next === null || (onScale && next.what !== first) ? LEAST_CUT_KG : DIGITS_KG;
    if (next !== null && next.what === first) exact++;
    expect(reached, `state ${state}: ${next?.what ?? 'nothing'} is the best of ${JSON.stringify([...after])}`).toBeLessThan(best + near);
    for (const one of now.value.measurements) {
      compared++;
      const apart = Math.abs(after.get(one.what)! - one.sdKg);
      expect(apart, `state ${state}: ${one.what} promises ${one.sdKg}, gives ${after.get(one.what)}`).toBeLessThan(
        BY_SCALE.has(one.what) ? 0.1 * one.sdKg : DIGITS_KG,
      );
    }
    if (next !== null) namedStates++;
    const name = next?.what ?? 'nothing';
    named.set(name, (named.get(name) ?? 0) + 1);
  }
  expect(compared).toBeGreaterThan(STATES);
  // ties on the scale alone may name the second: no more than one in a hundred
  expect(exact).toBeGreaterThanOrEqual(0.99 * namedStates);
  expect([...named.keys()].filter((name) => name !== 'nothing').length, JSON.stringify([...named])).toBeGreaterThanOrEqual(4);
});
