import { compareText } from '../journal/index.ts';
import type { Clash } from './clashes.ts';
import type { Happening, Stay, Weighing } from './types.ts';
import { clash, type HiveDraft, type Work } from './work.ts';

/** Two colonies met in one hive for longer than this are reported; a day in which they change places is not, for many records carry no time. */
const CHANGE_MINUTES = 1440;

interface ColonyStay extends Stay {
  readonly colony: string;
}

/** What can only be told once all records are in: weighings beside arrivals of the same day, and every clash about a balance or an overlap. */
export function settle(work: Work): void {
  const staysByHive = new Map<string, ColonyStay[]>();
  for (const colony of work.colonies.values()) {
    for (const stay of colony.stays) {
      const known = staysByHive.get(stay.hive);
      if (known === undefined) staysByHive.set(stay.hive, [{ ...stay, colony: colony.id }]);
      else known.push({ ...stay, colony: colony.id });
    }
  }
  for (const hive of work.hives.values()) {
    const stays = (staysByHive.get(hive.id) ?? []).sort(
      (a, b) => a.from.minute - b.from.minute || compareText(a.from.record, b.from.record),
    );
    settleWeighings(work, hive, stays);
    reportOverlap(work, hive, stays);
    if (hive.gone && hive.colonies.length > 0) {
      const placings = stays.filter((stay) => stay.to === null).map((stay) => stay.from.record);
      clash(work, {
        kind: 'gone-occupied',
        hive: hive.id,
        colonies: hive.colonies,
        records: [(hive.named as Happening).record, ...placings],
      });
    }
  }
  reportLabels(work);
  reportBalances(work);
  for (const { thing, name, records } of work.unknown.values()) clash(work, { kind: 'unknown-thing', thing, name, records });
  for (const [colony, records] of work.afterEnd) clash(work, { kind: 'after-end', colony, records });
  reportEarly(work);
  work.holding.clashes.sort((a, b) => compareText(keyOf(a), keyOf(b)));
}

/** A weighing in the morning belongs to a colony placed at noon (or with no time) of the same day, and to one that left that day. So does a build. */
function settleWeighings(work: Work, hive: HiveDraft, stays: readonly ColonyStay[]): void {
  const coloniesByDay = new Map<number, Set<string>>();
  const add = (day: number, colony: string) => coloniesByDay.set(day, (coloniesByDay.get(day) ?? new Set<string>()).add(colony));
  for (const stay of stays) {
    add(stay.from.day, stay.colony);
    if (stay.to !== null) add(stay.to.day, stay.colony);
  }
  const firstBuild = hive.builds[0];
  const empty: string[] = [];
  hive.weighings = hive.weighings.map((weighing): Weighing => {
    const colonies = weighing.colonies.length > 0 ? weighing.colonies : [...(coloniesByDay.get(weighing.day) ?? [])];
    if (colonies.length === 0) empty.push(weighing.record);
    return { ...weighing, colonies, parts: weighing.parts ?? (firstBuild?.day === weighing.day ? firstBuild.parts : null) };
  });
  if (empty.length > 0) clash(work, { kind: 'weighing-without-colony', hive: hive.id, records: empty });
}

/** One sweep: of the stays begun so far only the one that lasts longest need be looked at, for whatever overlaps another one overlaps it too. */
function reportOverlap(work: Work, hive: HiveDraft, stays: readonly ColonyStay[]): void {
  const overlapping = new Set<ColonyStay>();
  let longest: ColonyStay | undefined;
  for (const stay of stays) {
    if (
      longest !== undefined &&
      stay.colony !== longest.colony &&
      Math.min(endOf(longest), endOf(stay)) - stay.from.minute > CHANGE_MINUTES
    ) {
      overlapping.add(longest).add(stay);
    }
    if (longest === undefined || endOf(stay) > endOf(longest)) longest = stay;
  }
  if (overlapping.size === 0) return;
  const found = [...overlapping].sort((a, b) => a.from.minute - b.from.minute || compareText(a.from.record, b.from.record));
  clash(work, {
    kind: 'two-colonies',
    hive: hive.id,
    colonies: [...new Set(found.map((stay) => stay.colony))],
    records: [...new Set(found.map((stay) => stay.from.record))],
  });
}

function endOf(stay: Stay): number {
  return stay.to === null ? Number.POSITIVE_INFINITY : stay.to.minute;
}

/** A label may be used again once its hive is gone; two hives standing in one yard may not share it, whatever the case of its letters. */
function reportLabels(work: Work): void {
  const hivesByLabel = new Map<string, HiveDraft[]>();
  for (const hive of work.hives.values()) {
    if (hive.label === null || hive.gone) continue;
    const key = `${hive.yard} ${hive.label.trim().toLowerCase()}`;
    const known = hivesByLabel.get(key);
    if (known === undefined) hivesByLabel.set(key, [hive]);
    else known.push(hive);
  }
  for (const hives of hivesByLabel.values()) {
    if (hives.length < 2) continue;
    const named = [...hives].sort((a, b) => compareHappening(a.named as Happening, b.named as Happening));
    const first = named[0] as HiveDraft;
    const records = named.map((hive) => (hive.named as Happening).record);
    clash(work, { kind: 'label-twice', yard: first.yard, label: first.label as string, hives: named.map((hive) => hive.id), records });
  }
}

function reportBalances(work: Work): void {
  for (const lot of work.lots.values()) {
    if (lot.count < 0) clash(work, { kind: 'lot-negative', lot: lot.id, count: lot.count, records: [...lot.base, ...lot.flows] });
  }
  for (const { from, frame, count, records } of work.inHand.values()) {
    if (count < 0) clash(work, { kind: 'hand-negative', from, frame, count, records });
  }
  for (const { item, count } of work.holding.kit.values()) {
    if (count < 0) clash(work, { kind: 'kit-negative', item, count, records: work.kitFlows.get(item) as string[] });
  }
}

function reportEarly(work: Work): void {
  for (const { thing, name, uses } of work.early.values()) {
    const begun = thing === 'colony' ? work.colonies.get(name)?.begun : work.lots.get(name)?.begun;
    if (!begun) continue;
    const records = [...new Set(uses.filter((use) => use.day < begun.day).map((use) => use.record))];
    if (records.length > 0) clash(work, { kind: 'before-begin', thing, name, records: [...records, begun.record] });
  }
}

function compareHappening(a: Happening, b: Happening): number {
  return a.minute - b.minute || compareText(a.record, b.record);
}

function keyOf(found: Clash): string {
  return `${found.kind} ${found.records.join(' ')}`;
}
