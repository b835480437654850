import type { JournalRecord, RecordOf } from '../journal/index.ts';
import type { Colony, Happening, Treatment } from './types.ts';
import { type ColonyDraft, clash, colonyOf, factOf, happeningOf, hiveOf, noteAfterEnd, type Work } from './work.ts';

export function foldBegun(work: Work, record: RecordOf<'colony-begun'>): void {
  const colony = colonyOf(work, record.body.colony, record);
  if (colony.begun !== null)
    clash(work, { kind: 'begun-twice', thing: 'colony', name: colony.id, records: [colony.begun.record, record.id] });
  colony.begun = factOf(record);
  for (const parent of record.body.parents ?? []) if (work.colonies.get(parent)?.flag === 'signs') setAside(colony);
  place(work, colony, record.body.hive, record);
}

export function foldPlaced(work: Work, record: RecordOf<'colony-placed'>): void {
  place(work, colonyOf(work, record.body.colony, record), record.body.hive, record);
}

/** An ended colony is not placed again: its end stands until it is struck, and the record is reported. */
function place(work: Work, colony: ColonyDraft, hiveName: string, record: JournalRecord): void {
  const hive = hiveOf(work, hiveName, record);
  if (colony.ended !== null || colony.hive === hiveName) return;
  const when = happeningOf(record);
  const last = colony.stays.at(-1);
  if (last !== undefined && last.from.minute === when.minute) {
    clash(work, { kind: 'placed-twice', colony: colony.id, hives: [last.hive, hiveName], records: [last.from.record, record.id] });
  }
  leave(work, colony, when);
  colony.hive = hiveName;
  colony.yard = hive.yard;
  colony.stays.push({ hive: hiveName, from: when, to: null });
  hive.colonies = [...hive.colonies, colony.id];
}

function leave(work: Work, colony: ColonyDraft, when: Happening): void {
  if (colony.hive === null) return;
  const hive = work.hives.get(colony.hive);
  if (hive !== undefined) hive.colonies = hive.colonies.filter((other) => other !== colony.id);
  const stay = colony.stays.at(-1);
  if (stay !== undefined) stay.to = when;
  colony.hive = null;
}

export function foldUnited(work: Work, record: RecordOf<'colonies-united'>): void {
  const from = colonyOf(work, record.body.from, record);
  const into = colonyOf(work, record.body.into, record);
  if (from.flag === 'signs') setAside(into);
  else into.cleanLook = olderOf(from.cleanLook, into.cleanLook);
  end(work, from, record, { how: 'united', into: into.id });
}

/** A look covers the combs a colony had; after uniting only the older look covers them all, and none where one of the two was never looked at. */
function olderOf(a: Happening | null, b: Happening | null): Happening | null {
  if (a === null || b === null) return null;
  return a.minute <= b.minute ? a : b;
}

export function foldEnded(work: Work, record: RecordOf<'colony-ended'>): void {
  end(work, colonyOf(work, record.body.colony, record), record, { how: record.body.how });
}

/** The first end stands; another one on a later day is reported by `colonyOf`, one that says something else here. */
function end(
  work: Work,
  colony: ColonyDraft,
  record: JournalRecord,
  ended: { readonly how: NonNullable<Colony['ended']>['how']; readonly into?: string },
): void {
  if (colony.ended !== null) {
    if (colony.ended.how !== ended.how || colony.ended.into !== ended.into) noteAfterEnd(work, colony, record);
    return;
  }
  const when = happeningOf(record);
  leave(work, colony, when);
  colony.ended = { ...ended, ...when };
}

export function foldSplit(work: Work, record: RecordOf<'split'>): void {
  const from = colonyOf(work, record.body.from, record);
  const into = colonyOf(work, record.body.into, record);
  if (from.flag === 'signs') setAside(into);
  from.splits.push(factOf(record));
  into.splits.push(factOf(record));
}

export function foldQueen(work: Work, record: RecordOf<'queen'>): void {
  colonyOf(work, record.body.colony, record).queens.push(factOf(record));
}

/** A look at the combs of a colony that has ended is a look at what it left, as long as it counts no bees. */
export function foldLook(work: Work, record: RecordOf<'look'>): void {
  const colony = colonyOf(work, record.body.colony, record, { mayFollowEnd: (record.body.bees?.count ?? 0) === 0 });
  colony.looks.push(factOf(record));
  if (record.body.brood === 'signs') setAside(colony);
  if (record.body.brood === 'clean') {
    colony.flag = null;
    colony.cleanLook = happeningOf(record);
  }
}

function setAside(colony: ColonyDraft): void {
  colony.flag = 'signs';
  colony.cleanLook = null;
}

export function foldWash(work: Work, record: RecordOf<'wash'>): void {
  colonyOf(work, record.body.colony, record).washes.push(factOf(record));
}

export function foldBoard(work: Work, record: RecordOf<'board'>): void {
  colonyOf(work, record.body.colony, record).boards.push(factOf(record));
}

export function foldTreatmentIn(work: Work, record: RecordOf<'treatment-in'>): void {
  const { colony, ...treatment } = record.body;
  colonyOf(work, colony, record).treatments.push({ ...treatment, in: happeningOf(record), out: null });
}

/** Closes the oldest of this active still in, so that each strip that went in is asked for. Strips also come out of a hive whose bees have died. */
export function foldTreatmentOut(work: Work, record: RecordOf<'treatment-out'>): void {
  const { active } = record.body;
  const colony = colonyOf(work, record.body.colony, record, { mayFollowEnd: true });
  const open = colony.treatments.findIndex((treatment) => treatment.active === active && treatment.out === null);
  if (open >= 0) colony.treatments[open] = { ...(colony.treatments[open] as Treatment), out: happeningOf(record) };
  else {
    colony.treatments.push({ active, in: null, out: happeningOf(record) });
    clash(work, { kind: 'out-without-in', colony: colony.id, active, records: [record.id] });
  }
}

export function foldFeed(work: Work, record: RecordOf<'feed'>): void {
  colonyOf(work, record.body.colony, record).feeds.push(factOf(record));
}

export function foldSign(work: Work, record: RecordOf<'sign'>): void {
  colonyOf(work, record.body.colony, record).signs.push(factOf(record));
}

/** Not alive in spring is an end by death, unless an end was recorded before. */
export function foldSpringCount(work: Work, record: RecordOf<'spring-count'>): void {
  const isAlive = record.body.alive;
  const colony = colonyOf(work, record.body.colony, record, { mayFollowEnd: !isAlive });
  colony.springCounts.push(factOf(record));
  if (!isAlive && colony.ended === null) end(work, colony, record, { how: 'died' });
}
