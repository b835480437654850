import type { RecordOf } from '../journal/index.ts';
import type { Build, Happening, PartCount } from './types.ts';
import { winterOf } from './winter-name.ts';
import { clash, factOf, type HiveDraft, happeningOf, hiveOf, mention, type Work } from './work.ts';

export function foldYard(work: Work, record: RecordOf<'yard'>): void {
  for (const other of record.body.exchangeWith ?? []) mention(work, 'yard', other, record);
  work.holding.yards.set(record.yard, { id: record.yard, ...factOf(record) });
}

export function foldStand(work: Work, record: RecordOf<'stand'>): void {
  const { stand, row, place } = record.body;
  work.holding.stands.set(stand, { id: stand, yard: record.yard, row, place, ...happeningOf(record) });
}

export function foldHiveNamed(work: Work, record: RecordOf<'hive'>): void {
  const hive = hiveOf(work, record.body.hive, record);
  if (record.body.stand !== undefined) mention(work, 'stand', record.body.stand, record);
  hive.yard = record.yard;
  hive.label = record.body.label;
  hive.stand = record.body.stand ?? null;
  hive.gone = record.body.gone ?? false;
  hive.named = happeningOf(record);
}

export function foldBuild(work: Work, record: RecordOf<'build'>): void {
  setParts(hiveOf(work, record.body.hive, record), record.body.parts, happeningOf(record));
}

/** A super changes the last build. Before the first build there is nothing to change: a build states everything the hive is made of. */
export function foldSuper(work: Work, record: RecordOf<'super'>): void {
  const { part, change, count } = record.body;
  const hive = hiveOf(work, record.body.hive, record);
  if (hive.parts === null) return;
  const before = hive.parts.find((entry) => entry.part === part)?.count ?? 0;
  const after = before + (change === 'on' ? count : -count);
  if (after < 0)
    clash(work, { kind: 'part-negative', hive: hive.id, part, count: after, records: [(hive.builds.at(-1) as Build).record, record.id] });
  const others = hive.parts.filter((entry) => entry.part !== part);
  const supers = Math.max(0, (hive.builds.at(-1)?.supers ?? 0) + (change === 'on' ? count : -count));
  setParts(hive, after === 0 ? others : [...others, { part, count: after }], happeningOf(record), supers);
}

function setParts(hive: HiveDraft, parts: readonly PartCount[], when: Happening, supers = 0): void {
  hive.parts = parts;
  hive.builds.push({ ...when, parts, ...(supers > 0 ? { supers } : {}) });
}

export function foldWeighing(work: Work, record: RecordOf<'weighing'>): void {
  const hive = hiveOf(work, record.body.hive, record);
  const { hive: _listedUnder, ...reading } = record.body;
  hive.weighings.push({ ...reading, ...happeningOf(record), colonies: hive.colonies, parts: hive.parts, top: hive.top });
}

export function foldTop(work: Work, record: RecordOf<'top-fitted'>): void {
  const { hive, ...top } = record.body;
  hiveOf(work, hive, record).top = { ...top, ...happeningOf(record) };
}

export function foldShutTick(work: Work, record: RecordOf<'shut-tick'>): void {
  const hive = hiveOf(work, record.body.hive, record);
  const when = happeningOf(record);
  const winter = winterOf(when.day);
  hive.shut.set(winter, new Map(hive.shut.get(winter)).set(record.body.tick, { ...when, done: record.body.done }));
}
