import { compareText } from './at.ts';
import { bodyShapes } from './kinds.ts';
import { inOrder, type JournalRecord, lineOf, type RecordOf } from './record.ts';
import type { FieldError } from './shape.ts';

type Change = RecordOf<'correct'> | RecordOf<'strike'>;
/** What happened, after corrections and withdrawals. */
export type HappenedRecord = Exclude<JournalRecord, Change>;

/** What is wrong among records, corrections and strikes themselves. `records` are ids. */
export type ChangeFault =
  | { readonly kind: 'same-id'; readonly records: readonly string[]; readonly contents: number }
  | { readonly kind: 'strike-circle'; readonly records: readonly string[] }
  | { readonly kind: 'correction-of-change'; readonly records: readonly string[] }
  | { readonly kind: 'correction-unfit'; readonly records: readonly string[]; readonly error: FieldError };

export interface Effective {
  /** In the order of what happened, with corrected bodies; withdrawn ones, corrections and strikes left out. */
  readonly records: readonly HappenedRecord[];
  /** Ids of corrections and strikes whose target is not here (yet). */
  readonly waiting: readonly string[];
  readonly faults: readonly ChangeFault[];
}

/**
 * What stands once every correction and strike has been applied. Depends on the set of records only, not on their order.
 *
 * Of the changes to one record that are not themselves struck, the one with the highest stamp wins (then the highest id), whatever its `at`.
 * Strikes that withdraw each other in a circle cannot have been written by anyone who saw their targets: none of them counts.
 */
export function effectiveRecords(records: readonly JournalRecord[]): Effective {
  const faults: ChangeFault[] = [];
  const recordById = chosenById(records, faults);
  const changesByTarget = new Map<string, Change[]>();
  const waiting: string[] = [];
  for (const record of recordById.values()) {
    if (record.kind !== 'correct' && record.kind !== 'strike') continue;
    const target = recordById.get(record.body.target);
    if (target === undefined) waiting.push(record.id);
    else if (fits(record, target, faults)) push(changesByTarget, target.id, record);
  }
  const winnerByTarget = winners(changesByTarget, faults);
  const happened: HappenedRecord[] = [];
  for (const record of recordById.values()) {
    if (record.kind === 'correct' || record.kind === 'strike') continue;
    const winner = winnerByTarget.get(record.id);
    if (winner?.kind === 'strike') continue;
    happened.push(winner === undefined ? record : ({ ...record, body: winner.body.body } as HappenedRecord));
  }
  return { records: inOrder(happened), waiting: waiting.sort(), faults: faults.sort((a, b) => compareText(keyOfFault(a), keyOfFault(b))) };
}

/** One record per id. Of several contents the one with the highest stamp stands, then the one whose line sorts last. */
function chosenById(records: readonly JournalRecord[], faults: ChangeFault[]): Map<string, JournalRecord> {
  const recordById = new Map<string, JournalRecord>();
  const twinsById = new Map<string, JournalRecord[]>();
  for (const record of records) {
    const known = recordById.get(record.id);
    if (known === undefined) recordById.set(record.id, record);
    else if (known !== record) push(twinsById, record.id, record);
  }
  for (const [id, others] of twinsById) {
    const twins = [recordById.get(id) as JournalRecord, ...others].map((record) => ({ record, line: lineOf(record) }));
    const contents = new Set(twins.map((twin) => twin.line)).size;
    twins.sort((a, b) => compareText(b.record.seen, a.record.seen) || compareText(b.line, a.line));
    recordById.set(id, (twins[0] as { record: JournalRecord }).record);
    if (contents > 1) faults.push({ kind: 'same-id', records: [id], contents });
  }
  return recordById;
}

function fits(change: Change, target: JournalRecord, faults: ChangeFault[]): boolean {
  if (change.kind === 'strike') return true;
  if (target.kind === 'correct' || target.kind === 'strike') {
    faults.push({ kind: 'correction-of-change', records: [target.id, change.id] });
    return false;
  }
  const error = bodyShapes[target.kind].check(change.body.body, 'body');
  if (error) faults.push({ kind: 'correction-unfit', records: [target.id, change.id], error });
  return error === null;
}

/**
 * The change that counts for each changed record. Each change has one target, so the changes form chains that end in a record or run in a circle;
 * they are settled from the outer ends inwards, and what is left over is circles. Without recursion: a chain may be as long as the journal.
 */
function winners(changesByTarget: ReadonlyMap<string, readonly Change[]>, faults: ChangeFault[]): Map<string, Change> {
  const winnerByTarget = new Map<string, Change>();
  const changeById = new Map<string, Change>();
  for (const changes of changesByTarget.values()) for (const change of changes) changeById.set(change.id, change);
  const openById = new Map<string, number>();
  for (const id of changeById.keys()) openById.set(id, changesByTarget.get(id)?.length ?? 0);
  const struck = new Set<string>();
  const settled = [...changeById.values()].filter((change) => openById.get(change.id) === 0);
  for (let next = settled.pop(); next !== undefined; next = settled.pop()) {
    if (!openById.delete(next.id)) continue;
    const isStruck = struck.has(next.id);
    const target = changeById.get(next.body.target);
    if (target === undefined) {
      const best = winnerByTarget.get(next.body.target);
      if (!isStruck && (best === undefined || compareSeen(next, best) > 0)) winnerByTarget.set(next.body.target, next);
    } else if (openById.has(target.id)) {
      const open = (openById.get(target.id) as number) - 1;
      openById.set(target.id, open);
      if (!isStruck) struck.add(target.id);
      if (!isStruck || open === 0) settled.push(target);
    }
  }
  reportCircles(openById, changeById, faults);
  return winnerByTarget;
}

function reportCircles(left: Map<string, number>, changeById: ReadonlyMap<string, Change>, faults: ChangeFault[]): void {
  for (const start of [...left.keys()]) {
    const circle: string[] = [];
    for (let id = start; left.delete(id); id = (changeById.get(id) as Change).body.target) circle.push(id);
    if (circle.length > 0) faults.push({ kind: 'strike-circle', records: circle.sort() });
  }
}

function compareSeen(a: JournalRecord, b: JournalRecord): number {
  return compareText(a.seen, b.seen) || compareText(a.id, b.id);
}

function keyOfFault(fault: ChangeFault): string {
  return `${fault.kind} ${fault.records.join(' ')}`;
}

function push<V>(lists: Map<string, V[]>, name: string, value: V): void {
  const known = lists.get(name);
  if (known === undefined) lists.set(name, [value]);
  else known.push(value);
}
