import {
  type Bodies,
  isKind,
  type JournalRecord,
  KINDS,
  type Kind,
  lineOf,
  newStampClock,
  SHUT_TICKS,
  type StampClock,
  stampOnWrite,
  uuidv7,
} from '../src/journal/index.ts';
import { isoDateOf } from '../src/units/index.ts';

/** Random journals: small pools of names, days and devices, so that records meet, contradict and correct each other. */

export type Random = ReturnType<typeof newRandom>;

/** Numbers from a seed (mulberry32, public domain, from memory; only has to be varied and repeatable). */
export function newRandom(seed: number) {
  let state = seed >>> 0;
  const unit = () => {
    state = (state + 0x6d2b79f5) | 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
  const below = (n: number) => Math.floor(unit() * n);
  const pick = <T>(choices: readonly T[]): T => choices[below(choices.length)] as T;
  const chance = (share: number) => unit() < share;
  const shuffled = <T>(values: readonly T[]): T[] => {
    const list = [...values];
    for (let i = list.length - 1; i > 0; i--) {
      const j = below(i + 1);
      [list[i], list[j]] = [list[j] as T, list[i] as T];
    }
    return list;
  };
  return { unit, below, pick, chance, shuffled };
}

const yards = ['y1', 'y2'];
const hives = ['h1', 'h2', 'h3', 'h4'];
const colonies = ['c1', 'c2', 'c3', 'c4', 'c5'];
const lots = ['l1', 'l2'];
const frames = ['deep', 'shallow'];
const parts = ['deep-10-wood', 'shallow-10-wood', 'floor'];

/** A body of each kind that its validator takes. `ids` are the records so far. */
function bodyOf(random: Random, kind: Kind, ids: readonly string[]): Bodies[Kind] {
  const { pick, below, chance } = random;
  const colony = () => pick(colonies);
  const twoColonies = () => {
    const from = colony();
    return { from, into: pick(colonies.filter((other) => other !== from)) };
  };
  const count = () => 1 + below(3);
  const kg = (high: number) => Math.round((0.5 + random.unit() * high) * 100) / 100;
  const place = () => pick([{ colony: colony() }, { lot: pick(lots) }, { shed: true } as const, { hand: colony() }]);
  const bees = () => ({
    count: below(24) / 2,
    unit: pick(['frames', 'seams'] as const),
    counting: pick(['covered', 'occupied', 'packed'] as const),
  });
  const bodies: { readonly [K in Kind]: () => Bodies[K] } = {
    yard: () => ({
      name: pick(['Home', 'Far, "north"']),
      latDeg: 49 + below(10),
      lonDeg: -100.25,
      ...(chance(0.3) ? { exchangeWith: [pick(yards)] } : {}),
    }),
    stand: () => ({ stand: pick(['s1', 's2']), row: pick(['1', '2']), place: below(9) }),
    hive: () => ({
      hive: pick(hives),
      label: pick(['A', 'a', 'B7', 'Ä✓']),
      ...(chance(0.3) ? { gone: chance(0.5) } : {}),
      ...(chance(0.3) ? { stand: pick(['s1', 's2']) } : {}),
    }),
    build: () => ({ hive: pick(hives), parts: [{ part: pick(parts), count: count() }] }),
    'colony-begun': () => ({
      colony: colony(),
      hive: pick(hives),
      how: pick(['split', 'swarm', 'purchase', 'unknown'] as const),
      ...(chance(0.3) ? { parents: [colony()] } : {}),
    }),
    'colony-placed': () => ({ colony: colony(), hive: pick(hives) }),
    'colonies-united': twoColonies,
    'colony-ended': () => ({ colony: colony(), how: pick(['died', 'sold', 'other'] as const) }),
    split: () => ({ ...twoColonies(), frames: below(6) / 2 }),
    queen: () => ({
      colony: colony(),
      state: pick(['seen', 'laying', 'absent', 'introduced', 'unknown'] as const),
      bornYear: 2024 + below(3),
    }),
    super: () => ({ hive: pick(hives), change: pick(['on', 'off'] as const), part: pick(parts), count: count() }),
    weighing: () => ({
      hive: pick(hives),
      ...(chance(0.7) ? { frontKg: 0.5 + kg(40) } : { word: pick(['heavy', 'fair', 'light'] as const) }),
      ...(chance(0.5) ? { rearKg: 0.5 + kg(40) } : {}),
    }),
    'part-weighed': () => ({ parts: [{ part: pick(parts), count: count() }], massKg: kg(9) }),
    look: () => ({
      colony: colony(),
      ...(chance(0.5) ? { bees: bees() } : {}),
      ...(chance(0.5) ? { capped: [{ frame: pick(frames), count: count() / 2, where: pick(['top', 'below'] as const) }] } : {}),
      ...(chance(0.7) ? { brood: pick(['clean', 'signs', 'not-looked'] as const) } : {}),
    }),
    wash: () => ({ colony: colony(), bees: 300, mites: below(20), method: pick(['alcohol', 'sugar', 'co2'] as const) }),
    board: () => ({ colony: colony(), mites: below(60), days: count() }),
    'treatment-in': () => ({ colony: colony(), active: pick(['thymol', 'oxalic-acid']), lot: 'L/7' }),
    'treatment-out': () => ({ colony: colony(), active: pick(['thymol', 'oxalic-acid']) }),
    feed: () => ({
      colony: colony(),
      what: pick(['syrup', 'candy'] as const),
      event: pick(['offered', 'feeder-on', 'taken', 'left', 'refused'] as const),
      litres: count(),
      ratio: '2:1',
      basis: 'mass',
    }),
    swap: () => {
      const from = place();
      const origin = 'colony' in from ? from.colony : 'lot' in from ? from.lot : 'shed' in from ? 'shed' : undefined;
      const open = [
        { colony: 'c1' },
        { colony: 'c2' },
        { lot: 'l1' },
        { lot: 'l2' },
        { shed: true } as const,
        ...(origin === undefined ? [] : [{ hand: origin }]),
      ];
      const to = pick(open.filter((other) => JSON.stringify(other) !== JSON.stringify(from)));
      const back =
        'colony' in to && chance(0.4)
          ? { out: { frame: pick(frames), count: count(), to: pick([{ shed: true } as const, { lot: pick(lots) }, { hand: to.colony }]) } }
          : {};
      return { from, to, frame: pick(frames), count: count(), massKg: kg(3), ...back };
    },
    'bank-lot': () => ({ lot: pick(lots), frame: pick(frames), count: below(5), massKg: kg(4), from: colony() }),
    'bank-count': () => ({ lot: pick(lots), count: below(5) }),
    'kit-count': () => ({ item: pick([...frames, 'feeder']), count: below(6), unit: 'pieces' }),
    'top-fitted': () => ({ hive: pick(hives), parts: [{ part: 'rim', count: 1 }], absorbentDryKg: kg(3) }),
    'shut-tick': () => ({ hive: pick(hives), tick: pick(SHUT_TICKS), done: chance(0.7) }),
    sign: () => ({ colony: colony(), sign: pick(['alive', 'silent', 'frost-plume', 'wet-lid', 'frozen-down'] as const) }),
    'spring-count': () => ({
      colony: colony(),
      alive: chance(0.7),
      storesKg: kg(9),
      found: chance(0.2) ? ['heads-in-cells', 'honey-left'] : [],
    }),
    bloom: () => ({ plant: pick(['willow', 'dandelion']), stage: pick(['first', 'full'] as const) }),
    'weather-file': () => ({ name: 'station.csv', digest: 'deadbeef', days: 1 + below(400) }),
    setting: () =>
      pick([
        { key: 'certaintyFrac', value: pick([0.9, 0.95]) },
        { key: 'units', value: pick(['metric', 'us', 'ca']) },
        { key: 'sugarKg', value: below(99) },
        { key: 'notKnownYet', value: { nested: [1, null, 'x'] } },
      ]),
    'plan-adopted': () => ({ plan: { made: { seed: below(9) }, moves: [{ gainKg: kg(3) }] } }),
    'step-done': () => ({ plan: pick(ids), step: `s${below(4)}` }),
    refusal: () => ({ subject: colony(), what: 'give', why: 'queen just seen' }),
    task: () => ({
      task: pick(['wrap', 'unite'] as const),
      state: pick(['done', 'not-this-year', 'later'] as const),
      subjects: [colony()],
    }),
    pin: () => ({ subject: colony(), rule: pick(['never-give', 'must-get'] as const), on: chance(0.7) }),
    correct: () => ({ target: pick(ids), body: {} }),
    strike: () => ({ target: pick(ids) }),
  };
  return bodies[kind]();
}

/** What a run of random journals really contained; the test asserts it. */
export interface Coverage {
  records: number;
  readonly byKind: Map<Kind, number>;
  unknownTargets: number;
  changesOfChanges: number;
  unfitCorrections: number;
  journalsWithEqualAt: number;
  fewestDevices: number;
  yearsOff: number;
  tornFiles: number;
  unreadLines: number;
  twins: number;
  withoutTime: number;
}

export function newCoverage(): Coverage {
  return {
    records: 0,
    byKind: new Map(),
    unknownTargets: 0,
    changesOfChanges: 0,
    unfitCorrections: 0,
    journalsWithEqualAt: 0,
    fewestDevices: Number.POSITIVE_INFINITY,
    yearsOff: 0,
    tornFiles: 0,
    unreadLines: 0,
    twins: 0,
    withoutTime: 0,
  };
}

const OTHERS = KINDS.filter((kind) => kind !== 'correct' && kind !== 'strike');
const FIRST_DAY = 20_560;
const YEAR_MS = 365 * 86_400_000;

/** A journal as its files: one per device, each with its own records, some of the others', and lines nobody can read. */
export interface RandomJournal {
  readonly records: readonly JournalRecord[];
  readonly files: readonly string[];
  readonly unreadTexts: readonly string[];
}

export function randomJournal(random: Random, coverage: Coverage): RandomJournal {
  const { below, pick, chance } = random;
  const devices = Array.from({ length: 3 + below(3) }, (_, i) => ({
    name: `device0${i}`,
    offsetMs: chance(0.2) ? (below(9) - 4) * YEAR_MS : below(5) * 1000,
  }));
  const clocks = new Map<string, StampClock>(devices.map(({ name }) => [name, newStampClock(name)]));
  const records: JournalRecord[] = [];
  const target = 5 + below(41);
  const start = 1_790_000_000_000;
  for (let i = 0; i < target; i++) {
    const device = i < devices.length ? devices[i]! : pick(devices);
    const wallMs = start + device.offsetMs + i * pick([0, 1, 60_000]);
    const { clock, stamp } = stampOnWrite(clocks.get(device.name)!, wallMs);
    clocks.set(device.name, clock);
    if (Math.abs(device.offsetMs) >= YEAR_MS) coverage.yearsOff++;
    const id = uuidv7(
      start + below(3),
      Uint8Array.from({ length: 10 }, () => below(256)),
    );
    const kind = chance(0.13) ? pick(['correct', 'strike'] as const) : pick(OTHERS);
    records.push(recordAt(random, coverage, { id, kind, seen: stamp, by: device.name, earlier: records }));
  }
  if (chance(0.15)) {
    const one = pick(records);
    records.push({
      ...one,
      at: { date: isoDateOf(FIRST_DAY + below(4)) },
      by: 'another hand',
      ...(chance(0.5) ? { seen: `9${one.seen.slice(1)}` } : {}),
    });
    coverage.twins++;
  }
  note(coverage, records);
  return { records, ...filesOf(random, coverage, records) };
}

function recordAt(
  random: Random,
  coverage: Coverage,
  { id, kind, seen, by, earlier }: { id: string; kind: Kind; seen: string; by: string; earlier: readonly JournalRecord[] },
): JournalRecord {
  const { below, pick, chance } = random;
  const stranger = uuidv7(below(1000), new Uint8Array(10));
  const ids = earlier.length === 0 || chance(0.1) ? [stranger, ...(chance(0.2) ? [id] : [])] : earlier.map((record) => record.id);
  let body = bodyOf(random, kind, ids);
  if (kind === 'correct') body = correctionOf(random, coverage, (body as Bodies['correct']).target, earlier);
  if ((kind === 'correct' || kind === 'strike') && (body as Bodies['strike']).target === stranger) coverage.unknownTargets++;
  // a few days only, so that many records share an instant; a fifth of them years away
  const day = FIRST_DAY + (chance(0.2) ? (below(5) - 2) * 365 : 0) + below(4);
  const withTime = chance(0.5);
  if (!withTime) coverage.withoutTime++;
  const at = {
    date: isoDateOf(day),
    ...(withTime ? { time: pick(['00:10', '08:00', '12:00', '23:50']) } : {}),
    ...(chance(0.5) ? { zone: pick(['-06:00', '+00:00', '+05:30']) } : {}),
  };
  return { id, yard: chance(0.1) ? '*' : pick(yards), kind, at, by, seen, body } as JournalRecord;
}

/** Mostly a new body for what the target is, sometimes one that does not fit, sometimes of a change. */
function correctionOf(random: Random, coverage: Coverage, target: string, earlier: readonly JournalRecord[]): Bodies['correct'] {
  const found = earlier.find((record) => record.id === target);
  if (found === undefined) return { target, body: { hive: 'h1', frontKg: 20 } };
  if (found.kind === 'correct' || found.kind === 'strike') {
    coverage.changesOfChanges++;
    return { target, body: { target } };
  }
  if (random.chance(0.2)) {
    coverage.unfitCorrections++;
    return { target, body: { weightOfTheMoon: 7 } };
  }
  const ids = earlier.map((record) => record.id);
  return { target, body: bodyOf(random, found.kind, ids) as unknown as Record<string, unknown> };
}

function filesOf(random: Random, coverage: Coverage, records: readonly JournalRecord[]): Pick<RandomJournal, 'files' | 'unreadTexts'> {
  const { below, chance, pick, shuffled } = random;
  const unreadTexts = new Set<string>();
  const files = [0, 1, 2].map((file) => {
    const own = records.filter((_, i) => i % 3 === file || chance(0.3));
    const lines = shuffled(own).map((record) => (chance(0.1) ? JSON.stringify({ ...record, v: 1 }) : lineOf(record)));
    if (chance(0.2)) {
      const strange = pick([
        '',
        'not a record',
        '{"id":1}',
        `{"kind":"moon-phase","n":${below(9)}}`,
        `${JSON.stringify({ ...records[0], v: 2 })} `,
        '\u0000\ufffd',
        '"',
      ]);
      lines.splice(below(lines.length + 1), 0, strange);
      if (strange !== '') unreadTexts.add(strange);
    }
    const torn = chance(0.15) ? lineOf(pick(records)) : '';
    const tail = torn.slice(0, 1 + below(Math.max(1, torn.length - 1)));
    if (tail !== '') {
      unreadTexts.add(tail);
      coverage.tornFiles++;
    }
    return `${lines.map((line) => `${line}\n`).join('')}${tail}`;
  });
  coverage.unreadLines += unreadTexts.size;
  return { files, unreadTexts: [...unreadTexts] };
}

function note(coverage: Coverage, records: readonly JournalRecord[]): void {
  coverage.records += records.length;
  for (const { kind } of records) if (isKind(kind)) coverage.byKind.set(kind, (coverage.byKind.get(kind) ?? 0) + 1);
  const instants = new Set(records.map((record) => JSON.stringify(record.at)));
  if (instants.size < records.length) coverage.journalsWithEqualAt++;
  coverage.fewestDevices = Math.min(coverage.fewestDevices, new Set(records.map((record) => record.seen.slice(20))).size);
}
