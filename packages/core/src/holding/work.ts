import { type Bodies, dayOf, type HappenedRecord, type JournalRecord, type Kind, minuteOf } from '../journal/index.ts';
import type { Clash, Thing } from './clashes.ts';
import type { Colony, Draft, Fact, Happening, Hive, Holding, Lot, PartCount, Stay } from './types.ts';

export type ColonyDraft = Draft<Omit<Colony, 'stays'>> & { stays: Draft<Stay>[] };
export type HiveDraft = Draft<Hive> & { parts: readonly PartCount[] | null };
/** `base` is the record that set the count, `flows` the swaps since: between these the keeper has to choose when the balance breaks. */
export type LotDraft = Draft<Lot> & { base: string[]; flows: string[]; counted: number };

/** Everything the fold writes on; made new for each fold. */
export interface Work {
  readonly holding: Draft<Omit<Holding, 'hives' | 'colonies' | 'lots' | 'inHand' | 'pins' | 'waiting' | 'later' | 'unread'>>;
  readonly hives: Map<string, HiveDraft>;
  readonly colonies: Map<string, ColonyDraft>;
  readonly lots: Map<string, LotDraft>;
  readonly inHand: Map<string, { from: string; frame: string; count: number; massKg?: number; records: string[] }>;
  readonly kitFlows: Map<string, string[]>;
  readonly pins: Map<string, Fact<'pin'>>;
  readonly stepsByPlan: Map<string, Map<string, Happening>>;
  readonly unreadSettings: (Happening & { readonly key: string })[];
  readonly defined: Readonly<Record<Thing, ReadonlySet<string>>>;
  readonly unknown: Map<string, { thing: Thing; name: string; records: string[] }>;
  /** Records of a colony or lot read before the one that begins it. */
  readonly early: Map<string, { thing: 'colony' | 'lot'; name: string; uses: Happening[] }>;
  readonly afterEnd: Map<string, string[]>;
}

const DEFINING: Readonly<Record<Thing, Kind>> = {
  yard: 'yard',
  stand: 'stand',
  hive: 'hive',
  colony: 'colony-begun',
  lot: 'bank-lot',
  plan: 'plan-adopted',
};

export function newWork(records: readonly HappenedRecord[]): Work {
  const defined = {
    yard: new Set<string>(['*']),
    stand: new Set<string>(),
    hive: new Set<string>(),
    colony: new Set<string>(),
    lot: new Set<string>(),
    plan: new Set<string>(),
  };
  for (const record of records) {
    for (const thing of Object.keys(DEFINING) as Thing[]) {
      if (record.kind !== DEFINING[thing]) continue;
      const body = record.body as Readonly<Record<string, string>>;
      defined[thing].add(thing === 'yard' ? record.yard : thing === 'plan' ? record.id : (body[thing] as string));
    }
  }
  return {
    holding: {
      yards: new Map(),
      stands: new Map(),
      kit: new Map(),
      partWeights: [],
      settings: {},
      blooms: [],
      weatherFiles: [],
      plans: new Map(),
      refusals: [],
      tasks: [],
      clashes: [],
    },
    hives: new Map(),
    colonies: new Map(),
    lots: new Map(),
    inHand: new Map(),
    kitFlows: new Map(),
    pins: new Map(),
    stepsByPlan: new Map(),
    unreadSettings: [],
    defined,
    unknown: new Map(),
    early: new Map(),
    afterEnd: new Map(),
  };
}

export function happeningOf(record: JournalRecord): Happening {
  return { record: record.id, at: record.at, day: dayOf(record.at), minute: minuteOf(record.at) };
}

export function factOf<K extends Kind>(record: JournalRecord & { readonly kind: K; readonly body: Bodies[K] }): Fact<K> {
  return { ...record.body, ...happeningOf(record) };
}

/** Notes that a record speaks of a thing; reported at the end where nothing ever says what it is. */
export function mention(work: Work, thing: Thing, name: string, record: JournalRecord): void {
  if (work.defined[thing].has(name)) return;
  const key = `${thing} ${name}`;
  const known = work.unknown.get(key);
  if (known === undefined) work.unknown.set(key, { thing, name, records: [record.id] });
  else if (known.records.at(-1) !== record.id) known.records.push(record.id);
}

export function clash(work: Work, found: Clash): void {
  work.holding.clashes.push(found);
}

export function hiveOf(work: Work, name: string, record: JournalRecord): HiveDraft {
  mention(work, 'hive', name, record);
  let hive = work.hives.get(name);
  if (hive === undefined) {
    hive = {
      id: name,
      label: null,
      yard: record.yard,
      named: null,
      stand: null,
      gone: false,
      builds: [],
      top: null,
      weighings: [],
      colonies: [],
      shut: new Map(),
      parts: null,
    };
    work.hives.set(name, hive);
  }
  return hive;
}

/** The colony a record speaks of. A record before its beginning or after its end is noted; `afterEnd` says which may come after the end. */
export function colonyOf(work: Work, name: string, record: JournalRecord, { mayFollowEnd = false } = {}): ColonyDraft {
  mention(work, 'colony', name, record);
  let colony = work.colonies.get(name);
  if (colony === undefined) {
    colony = {
      id: name,
      yard: record.yard,
      hive: null,
      stays: [],
      begun: null,
      ended: null,
      queens: [],
      looks: [],
      washes: [],
      boards: [],
      treatments: [],
      feeds: [],
      moves: [],
      splits: [],
      signs: [],
      springCounts: [],
      flag: null,
      cleanLook: null,
    };
    work.colonies.set(name, colony);
  }
  if (colony.begun === null && record.kind !== 'colony-begun') noteEarly(work, 'colony', name, record);
  if (colony.ended !== null && !mayFollowEnd && dayOf(record.at) > colony.ended.day) noteAfterEnd(work, colony, record);
  return colony;
}

export function noteEarly(work: Work, thing: 'colony' | 'lot', name: string, record: JournalRecord): void {
  const key = `${thing} ${name}`;
  const known = work.early.get(key);
  if (known === undefined) work.early.set(key, { thing, name, uses: [happeningOf(record)] });
  else known.uses.push(happeningOf(record));
}

export function noteAfterEnd(work: Work, colony: ColonyDraft, record: JournalRecord): void {
  const known = work.afterEnd.get(colony.id);
  if (known === undefined) work.afterEnd.set(colony.id, [(colony.ended as Happening).record, record.id]);
  else if (known.at(-1) !== record.id) known.push(record.id);
}
