import {
  dayOf,
  effectiveRecords,
  type HappenedRecord,
  isSettingKey,
  type JournalRecord,
  type RecordOf,
  type UnreadLine,
} from '../journal/index.ts';
import { epochDayOf } from '../units/index.ts';
import { foldBankCount, foldBankLot, foldKitCount, foldSwap } from './fold-bank.ts';
import {
  foldBegun,
  foldBoard,
  foldEnded,
  foldFeed,
  foldLook,
  foldPlaced,
  foldQueen,
  foldSign,
  foldSplit,
  foldSpringCount,
  foldTreatmentIn,
  foldTreatmentOut,
  foldUnited,
  foldWash,
} from './fold-colony.ts';
import { foldBuild, foldHiveNamed, foldShutTick, foldStand, foldSuper, foldTop, foldWeighing, foldYard } from './fold-hive.ts';
import { settle } from './settle.ts';
import type { Colony, Happening, Hive, Holding, InHand, Lot } from './types.ts';
import { factOf, happeningOf, mention, newWork, type Work } from './work.ts';

type Folds = { readonly [K in HappenedRecord['kind']]: (work: Work, record: RecordOf<K>) => void };

const folds: Folds = {
  yard: foldYard,
  stand: foldStand,
  hive: foldHiveNamed,
  build: foldBuild,
  'colony-begun': foldBegun,
  'colony-placed': foldPlaced,
  'colonies-united': foldUnited,
  'colony-ended': foldEnded,
  split: foldSplit,
  queen: foldQueen,
  super: foldSuper,
  weighing: foldWeighing,
  'part-weighed': (work, record) => void work.holding.partWeights.push(factOf(record)),
  look: foldLook,
  wash: foldWash,
  board: foldBoard,
  'treatment-in': foldTreatmentIn,
  'treatment-out': foldTreatmentOut,
  feed: foldFeed,
  swap: foldSwap,
  'bank-lot': foldBankLot,
  'bank-count': foldBankCount,
  'kit-count': foldKitCount,
  'top-fitted': foldTop,
  'shut-tick': foldShutTick,
  sign: foldSign,
  'spring-count': foldSpringCount,
  bloom: (work, record) => void work.holding.blooms.push({ ...factOf(record), yard: record.yard }),
  'weather-file': (work, record) => void work.holding.weatherFiles.push({ ...factOf(record), yard: record.yard }),
  setting: foldSetting,
  'plan-adopted': foldPlan,
  'step-done': foldStepDone,
  refusal: (work, record) => void work.holding.refusals.push(factOf(record)),
  task: (work, record) => void work.holding.tasks.push({ ...factOf(record), yard: record.yard }),
  pin: (work, record) => void work.pins.set(`${record.body.subject} ${record.body.rule}`, factOf(record)),
};

/**
 * The state of all yards at the end of a journal. A function of the set of records: their order of arrival does not matter.
 * What does not fit together is reported in `clashes` and left as it is.
 *
 * records     of one journal; corrections and strikes are applied here
 * unread      lines that could not be read, to be counted
 * until       last local date to fold, inclusive; records dated later are listed in `later`. Without it everything is folded.
 * throws      RangeError where `until` is no calendar date
 */
export function foldHolding(
  records: readonly JournalRecord[],
  { unread = [], until }: { readonly unread?: readonly UnreadLine[]; readonly until?: string } = {},
): Holding {
  const effective = effectiveRecords(records);
  const lastDay = until === undefined ? Number.POSITIVE_INFINITY : epochDayOf(until);
  if (lastDay === null) throw new RangeError(`foldHolding: until is "${until}", must be a calendar date from 1900 to 2199`);
  const happened = effective.records.filter((record) => dayOf(record.at) <= lastDay);
  const work = newWork(happened);
  for (const record of happened) {
    mention(work, 'yard', record.yard, record);
    (folds[record.kind] as (work: Work, record: JournalRecord) => void)(work, record);
  }
  work.holding.clashes.push(...effective.faults);
  settle(work);
  return finished(work, {
    waiting: effective.waiting,
    later: effective.records.filter((record) => dayOf(record.at) > lastDay).map((record) => record.id),
    unread,
  });
}

function foldSetting(work: Work, record: RecordOf<'setting'>): void {
  const { key, value } = record.body;
  if (isSettingKey(key)) work.holding.settings = { ...work.holding.settings, [key]: value };
  else work.unreadSettings.push({ ...happeningOf(record), key });
}

/** The plan may be dated after a step of it, where clocks differ; the step is kept all the same. */
function foldPlan(work: Work, record: RecordOf<'plan-adopted'>): void {
  work.holding.plans.set(record.id, { ...factOf(record), done: stepsOf(work, record.id) });
}

function foldStepDone(work: Work, record: RecordOf<'step-done'>): void {
  mention(work, 'plan', record.body.plan, record);
  stepsOf(work, record.body.plan).set(record.body.step, happeningOf(record));
}

function stepsOf(work: Work, plan: string): Map<string, Happening> {
  const steps = work.stepsByPlan.get(plan) ?? new Map<string, Happening>();
  work.stepsByPlan.set(plan, steps);
  return steps;
}

function finished(
  work: Work,
  { waiting, later, unread }: { waiting: readonly string[]; later: readonly string[]; unread: readonly UnreadLine[] },
): Holding {
  const byWhy: Record<string, number> = {};
  for (const { why } of unread) byWhy[why.kind] = (byWhy[why.kind] ?? 0) + 1;
  const inHand = [...work.inHand.values()]
    .filter((entry) => entry.count !== 0)
    .map(({ records: _shownInClashes, ...entry }): InHand => entry);
  return {
    ...work.holding,
    hives: mapped(work.hives, ({ parts: _lastOfBuilds, ...hive }): Hive => hive),
    colonies: mapped(work.colonies, (colony): Colony => colony),
    lots: mapped(work.lots, ({ base: _base, flows: _flows, counted: _counted, ...lot }): Lot => lot),
    inHand,
    pins: [...work.pins.values()].filter((pin) => pin.on),
    waiting,
    later,
    unread: { lines: unread.length, byWhy, settings: work.unreadSettings },
  };
}

function mapped<V, W>(map: ReadonlyMap<string, V>, change: (value: V) => W): ReadonlyMap<string, W> {
  return new Map([...map].map(([name, value]) => [name, change(value)]));
}
