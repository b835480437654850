import { expect, test } from 'vitest';
import { foldHolding } from '../src/holding/index.ts';
import { effectiveRecords, type JournalRecord, journalDigest, lineOf, readJournal, uuidv7, writeJournal } from '../src/journal/index.ts';
import { isoDateOf } from '../src/units/index.ts';
import { newMaker, stampAt } from './journal-maker.ts';

/** 200 colonies and their weighings, looks and feeds over years, some corrected: 100,000 records. */
function largeJournal(count: number): JournalRecord[] {
  const make = newMaker();
  const chosen = (n: number, day: number) => ({
    id: uuidv7(1_700_000_000_000 + n, new Uint8Array(10)),
    date: isoDateOf(day),
    seen: stampAt(1_700_000_000_000 + n),
  });
  const records: JournalRecord[] = [make('yard', { name: 'Home', latDeg: 53.8, lonDeg: -101.2 }, chosen(0, 19_500))];
  for (let i = 0; i < 200; i++) {
    records.push(make('hive', { hive: `h${i}`, label: `L${i}` }, chosen(records.length, 19_500)));
    records.push(make('build', { hive: `h${i}`, parts: [{ part: 'deep-10-wood', count: 2 }] }, chosen(records.length, 19_500)));
    records.push(make('colony-begun', { colony: `c${i}`, hive: `h${i}`, how: 'unknown' }, chosen(records.length, 19_500)));
  }
  while (records.length < count) {
    const n = records.length;
    const [i, when] = [n % 200, chosen(n, 19_501 + Math.floor(n / 80))];
    if (n % 10 === 9) records.push(make('correct', { target: records[n - 3]!.id, body: records[n - 3]!.body as never }, when));
    else if (n % 10 === 8)
      records.push(make('look', { colony: `c${i}`, bees: { count: 8.5, unit: 'frames', counting: 'covered' }, brood: 'clean' }, when));
    else if (n % 10 === 7) records.push(make('feed', { colony: `c${i}`, what: 'syrup', event: 'taken', litres: 2 }, when));
    else records.push(make('weighing', { hive: `h${i}`, frontKg: 20.5, rearKg: 22 }, when));
  }
  return records;
}

test('[J23] a journal of 100,000 records is read and folded', () => {
  const records = largeJournal(100_000);
  const text = `${records.map(lineOf).join('\n')}\n`;
  const started = performance.now();
  const journal = readJournal(text);
  const read = performance.now();
  const holding = foldHolding(journal.records, { unread: journal.unread });
  const folded = performance.now();
  console.log(
    `100,000 records, ${(text.length / 1e6).toFixed(0)} MB: read ${(read - started).toFixed(0)} ms, folded ${(folded - read).toFixed(0)} ms`,
  );
  expect(journal.unread).toEqual([]);
  expect(holding.clashes).toEqual([]);
  expect(holding.colonies.size).toBe(200);
  const weighings = [...holding.hives.values()].reduce((sum, hive) => sum + hive.weighings.length, 0);
  expect(weighings).toBe(records.filter((record) => record.kind === 'weighing').length);
  expect(writeJournal(journal)).toBe(text);
  expect(journalDigest(journal.records)).toBe(journalDigest([...records].reverse()));
});

test('[J19] a chain of 100,000 strikes is settled without running out of stack', () => {
  const make = newMaker();
  const records: JournalRecord[] = [make('bloom', { plant: 'willow', stage: 'first' })];
  for (let n = 1; n <= 100_000; n++) {
    records.push(make('strike', { target: records[n - 1]!.id }, { id: uuidv7(n, new Uint8Array(10)), seen: stampAt(1000 + n) }));
  }
  // an even number of strikes: the last one undoes the one that undid the one ... that withdrew the first
  expect(effectiveRecords(records).records).toHaveLength(1);
});
