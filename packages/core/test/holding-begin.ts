import { foldHolding, type Holding } from '../src/holding/index.ts';
import type { JournalRecord } from '../src/journal/index.ts';
import { newMaker, oneColony } from './journal-maker.ts';

/** Clashes of one kind. */
export function clashesOf(holding: Holding, kind: Holding['clashes'][number]['kind']) {
  return holding.clashes.filter((clash) => clash.kind === kind);
}

/** A maker and a journal that begins with one yard and colony; `add` appends and gives the record, `second` adds a hive with colony b. */
export function begin(name = 'a') {
  const make = newMaker();
  const records: JournalRecord[] = oneColony(make, name);
  const add: typeof make = (kind, body, chosen) => {
    const record = make(kind, body, chosen);
    records.push(record);
    return record;
  };
  const second = () => {
    const others = oneColony(newMaker(), 'b').slice(1);
    records.push(...others.map((record, i) => ({ ...record, id: record.id.replace(/^.{8}/, `00000b0${i}`) })));
  };
  return { records, add, second, fold: (until?: string) => foldHolding(records, until === undefined ? {} : { until }) };
}
