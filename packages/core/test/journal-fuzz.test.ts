import { expect, test } from 'vitest';
import { foldHolding, type Holding } from '../src/holding/index.ts';
import {
  effectiveRecords,
  type Journal,
  type JournalRecord,
  journalDigest,
  KINDS,
  lineOf,
  mergeJournals,
  minuteOf,
  normalJournal,
  readJournal,
  writeJournal,
} from '../src/journal/index.ts';
import { type Coverage, newCoverage, newRandom, type Random, type RandomJournal, randomJournal } from './journal-random.ts';

const JOURNALS = 10_000;
const SEED = Number(process.env['SEED'] ?? 20260915);

if (!(Number.isInteger(SEED) && SEED >= 0 && SEED < 2 ** 32))
  throw new RangeError(`SEED is ${process.env['SEED']}, must be a whole number from 0 to 2^32 - 1`);

type Merge = (a: Journal, b: Journal) => Journal;
type Fold = (records: readonly JournalRecord[]) => Holding;

/** A holding as text, maps and all, for comparing. */
function textOf(holding: Holding): string {
  return JSON.stringify(holding, (_, value) => (value instanceof Map ? ['map', ...value] : value));
}

/** The law that is broken, or null. */
function brokenMergeLaw(merge: Merge, [a, b, c]: readonly [Journal, Journal, Journal]): string | null {
  const ab = merge(a, b);
  const text = writeJournal(merge(ab, c));
  if (writeJournal(ab) !== writeJournal(merge(b, a))) return 'not commutative';
  if (text !== writeJournal(merge(a, merge(b, c)))) return 'not associative';
  if (writeJournal(merge(a, a)) !== writeJournal(a)) return 'not idempotent';
  const lines = new Set(text.split('\n'));
  for (const journal of [a, b, c]) {
    for (const record of journal.records) if (!lines.has(lineOf(record))) return 'lost a record';
    for (const { text: unread } of journal.unread) if (!lines.has(unread)) return 'lost an unread line';
  }
  return null;
}

function brokenRoundTrip(journal: Journal): string | null {
  const text = writeJournal(journal);
  const again = readJournal(text);
  if (writeJournal(again) !== text) return 'bytes changed';
  if (JSON.stringify(again.records.map(lineOf)) !== JSON.stringify(journal.records.map(lineOf))) return 'records changed';
  return JSON.stringify(again.unread.map((line) => line.text)) === JSON.stringify(journal.unread.map((line) => line.text))
    ? null
    : 'unread changed';
}

function brokenArrivalLaw(fold: Fold, records: readonly JournalRecord[], random: Random): string | null {
  const arrived = random.shuffled(records);
  if (journalDigest(arrived) !== journalDigest(records)) return 'digest depends on arrival';
  return textOf(fold(arrived)) === textOf(fold(records)) ? null : 'fold depends on arrival';
}

/** What stands, told again the slow way: settle changes one after the other until nothing new is known. */
function standingSlowly(records: readonly JournalRecord[]): Map<string, string> {
  const chosen = new Map<string, JournalRecord>();
  for (const record of records) {
    const known = chosen.get(record.id);
    if (known === undefined || record.seen > known.seen || (record.seen === known.seen && lineOf(record) > lineOf(known)))
      chosen.set(record.id, record);
  }
  const all = [...chosen.values()];
  const isChange = (record: JournalRecord | undefined) => record?.kind === 'correct' || record?.kind === 'strike';
  const strikes = all.filter((record) => record.kind === 'strike');
  const verdict = new Map<string, 'stands' | 'struck'>();
  for (let before = -1; verdict.size !== before; ) {
    before = verdict.size;
    for (const change of all.filter(isChange)) {
      const against = strikes.filter((strike) => strike.kind === 'strike' && strike.body.target === change.id);
      if (against.some((strike) => verdict.get(strike.id) === 'stands')) verdict.set(change.id, 'struck');
      else if (against.every((strike) => verdict.get(strike.id) === 'struck')) verdict.set(change.id, 'stands');
    }
  }
  const standing = new Map<string, string>();
  for (const record of all) {
    if (isChange(record)) continue;
    const fitting = all.filter((change) => {
      if (verdict.get(change.id) !== 'stands') return false;
      if (change.kind === 'strike') return change.body.target === record.id;
      return (
        change.kind === 'correct' &&
        change.body.target === record.id &&
        readJournal(JSON.stringify({ ...record, body: change.body.body })).records.length === 1
      );
    });
    const winner = fitting.sort((x, y) => (`${x.seen} ${x.id}` < `${y.seen} ${y.id}` ? 1 : -1))[0];
    if (winner === undefined) standing.set(record.id, lineOf(record));
    else if (winner.kind === 'correct') standing.set(record.id, lineOf({ ...record, body: winner.body.body } as unknown as JournalRecord));
  }
  return standing;
}

/** Balances and overlaps told again from the records that stand; what is broken must be reported and left as it is. */
function unreported(records: readonly JournalRecord[], holding: Holding): string | null {
  const standing = effectiveRecords(records).records;
  const has = (kind: string, test: (clash: Holding['clashes'][number]) => boolean) =>
    holding.clashes.some((clash) => clash.kind === kind && test(clash));
  for (const lot of holding.lots.values()) {
    let balance = 0;
    let described = 0;
    for (const { kind, body } of standing) {
      if (kind === 'bank-count' && body.lot === lot.id) balance = described = body.count;
      if (kind === 'bank-lot' && body.lot === lot.id) [balance, described] = [balance + body.count - described, body.count];
      if (kind !== 'swap') continue;
      const flows = [
        { from: body.from, to: body.to, count: body.count },
        ...(body.out ? [{ from: body.to, to: body.out.to, count: body.out.count }] : []),
      ];
      for (const { from, to, count } of flows) {
        if ('lot' in from && from.lot === lot.id) balance -= count;
        if ('lot' in to && to.lot === lot.id) balance += count;
      }
    }
    if (lot.count !== balance) return `lot ${lot.id} shows ${lot.count}, the records say ${balance}`;
    if (balance < 0 !== has('lot-negative', (clash) => clash.kind === 'lot-negative' && clash.lot === lot.id && clash.count === balance))
      return `lot ${lot.id} at ${balance}`;
  }
  for (const hive of holding.hives.values()) {
    const stays = [...holding.colonies.values()].flatMap((colony) =>
      colony.stays
        .filter((stay) => stay.hive === hive.id)
        .map((stay) => ({ colony: colony.id, from: stay.from.minute, to: stay.to?.minute ?? Number.POSITIVE_INFINITY })),
    );
    const meeting = stays.filter((stay) =>
      stays.some((other) => other.colony !== stay.colony && Math.min(stay.to, other.to) - Math.max(stay.from, other.from) > 1440),
    );
    const colonies = [...new Set(meeting.map((stay) => stay.colony))].sort().join();
    if (
      (colonies !== '') !==
      has(
        'two-colonies',
        (clash) => clash.kind === 'two-colonies' && clash.hive === hive.id && [...clash.colonies].sort().join() === colonies,
      )
    )
      return `hive ${hive.id}: ${colonies}`;
    const here = stays.filter((stay) => stay.to === Number.POSITIVE_INFINITY).map((stay) => stay.colony);
    if ([...here].sort().join() !== [...hive.colonies].sort().join())
      return `hive ${hive.id} holds ${hive.colonies.join()}, the stays say ${here.join()}`;
  }
  return null;
}

function brokenClashLaw({ records, unreadTexts }: RandomJournal, whole: Journal, holding: Holding): string | null {
  const linesById = new Map<string, Set<string>>();
  for (const record of records) linesById.set(record.id, (linesById.get(record.id) ?? new Set()).add(lineOf(record)));
  const twins = [...linesById]
    .filter(([, lines]) => lines.size > 1)
    .map(([id]) => id)
    .sort();
  const reported = holding.clashes.filter((clash) => clash.kind === 'same-id').flatMap((clash) => clash.records);
  if (twins.join() !== [...reported].sort().join()) return `twins ${twins.join()} reported as ${reported.join()}`;
  if (whole.records.length !== [...linesById.values()].reduce((sum, lines) => sum + lines.size, 0))
    return 'a content is missing in the journal';
  const texts = whole.unread.map((line) => line.text);
  if ([...texts].sort().join('\n') !== [...unreadTexts].sort().join('\n')) return `unread ${JSON.stringify(texts)}`;
  const known = new Set(linesById.keys());
  for (const clash of holding.clashes)
    if (clash.records.length === 0 || clash.records.some((id) => !known.has(id)))
      return `clash without its records: ${JSON.stringify(clash)}`;
  return unreported(records, holding);
}

function expectCovered(coverage: Coverage, journals: number): void {
  const shareOf = (kind: (typeof KINDS)[number]) => (coverage.byKind.get(kind) ?? 0) / coverage.records;
  for (const kind of KINDS) expect(shareOf(kind), kind).toBeGreaterThanOrEqual(0.02);
  expect(shareOf('correct') + shareOf('strike')).toBeGreaterThanOrEqual(0.1);
  expect(coverage.fewestDevices).toBeGreaterThanOrEqual(3);
  expect(coverage.unknownTargets).toBeGreaterThan(journals / 10);
  expect(coverage.changesOfChanges).toBeGreaterThan(journals / 50);
  expect(coverage.unfitCorrections).toBeGreaterThan(journals / 50);
  expect(coverage.journalsWithEqualAt).toBeGreaterThan(journals / 2);
  expect(coverage.yearsOff).toBeGreaterThan(coverage.records / 20);
  expect(coverage.tornFiles).toBeGreaterThan(journals / 10);
  expect(coverage.unreadLines).toBeGreaterThan(coverage.tornFiles / 2);
  expect(coverage.twins).toBeGreaterThan(journals / 20);
  expect(coverage.withoutTime).toBeGreaterThan(coverage.records / 4);
}

test(`[J9] [J6] [J10] [J16] [J17] [J20] [J23] [J24] ${JOURNALS} random journals keep every law, seed ${SEED}`, { timeout: 300_000 }, () => {
  const coverage = newCoverage();
  const clashKinds = new Set<string>();
  for (let n = 0; n < JOURNALS; n++) {
    const random = newRandom(SEED * 100_003 + n);
    const journal = randomJournal(random, coverage);
    const [a, b, c] = journal.files.map(readJournal) as [Journal, Journal, Journal];
    const whole = mergeJournals(mergeJournals(a, b), c);
    const effective = effectiveRecords(whole.records);
    const standing = new Map(effective.records.map((record) => [record.id, lineOf(record)]));
    const holding = foldHolding(whole.records, { unread: whole.unread });
    for (const clash of holding.clashes) clashKinds.add(clash.kind);
    const targets = new Set(whole.records.map((record) => record.id));
    const waiting = [...new Set(effective.waiting)].every((id) => {
      const record = whole.records.find((one) => one.id === id);
      return (record?.kind === 'correct' || record?.kind === 'strike') && !targets.has(record.body.target);
    });
    const broken =
      brokenMergeLaw(mergeJournals, [a, b, c]) ??
      brokenRoundTrip(whole) ??
      brokenArrivalLaw(foldHolding, whole.records, random) ??
      brokenClashLaw(journal, whole, holding) ??
      (waiting ? null : 'a change waits for a target that is there') ??
      (textByName(standing) === textByName(standingSlowly(whole.records)) ? null : 'the slow way finds other records standing') ??
      (isSorted(effective.records) ? null : 'not in the order of what happened');
    if (broken !== null) expect.fail(`SEED=${SEED}, journal ${n}: ${broken}`);
  }
  console.log(`journal fuzz: SEED=${SEED}, ${JOURNALS} journals, ${coverage.records} records, clashes of ${clashKinds.size} kinds`);
  expectCovered(coverage, JOURNALS);
  expect([...clashKinds].sort()).toEqual(CLASH_KINDS);
});

/** Every kind of clash there is must occur, or the law that they are reported says nothing about it. */
const CLASH_KINDS = [
  'after-end',
  'before-begin',
  'begun-twice',
  'correction-of-change',
  'correction-unfit',
  'gone-occupied',
  'hand-negative',
  'kit-negative',
  'label-twice',
  'lot-frame-differs',
  'lot-negative',
  'out-without-in',
  'part-negative',
  'placed-twice',
  'same-id',
  'strike-circle',
  'two-colonies',
  'unknown-thing',
  'weighing-without-colony',
];

function textByName(lines: ReadonlyMap<string, string>): string {
  return [...lines.keys()]
    .sort()
    .map((name) => lines.get(name))
    .join('\n');
}

function isSorted(records: readonly JournalRecord[]): boolean {
  return records.every((record, i) => {
    const before = records[i - 1];
    if (before === undefined) return true;
    const [x, y] = [minuteOf(before.at), minuteOf(record.at)];
    return x < y || (x === y && `${before.seen} ${before.id}` < `${record.seen} ${record.id}`);
  });
}

const BROKEN_MERGES: Readonly<Record<string, Merge>> = {
  'the second journal wins an id': (a, b) => ({
    records: normalJournal([...new Map([...a.records, ...b.records].map((record) => [record.id, record])).values()], []).records,
    unread: normalJournal([], [...a.unread, ...b.unread]).unread,
  }),
  'only one content of an id is kept': (a, b) => {
    const all = normalJournal([...a.records, ...b.records], [...a.unread, ...b.unread]);
    return { ...all, records: all.records.filter((record, i) => record.id !== all.records[i + 1]?.id) };
  },
  'one after the other': (a, b) => ({ records: [...a.records, ...b.records], unread: [...a.unread, ...b.unread] }),
  'unread lines of the second are dropped': (a, b) => ({ ...normalJournal([...a.records, ...b.records], []), unread: a.unread }),
};

test('[J9] the laws can fail: four broken ways to merge are all caught', () => {
  for (const [name, merge] of Object.entries(BROKEN_MERGES)) {
    const found = new Set<string>();
    for (let n = 0; n < 300; n++) {
      const { files } = randomJournal(newRandom(SEED + n), newCoverage());
      const broken = brokenMergeLaw(merge, files.map(readJournal) as [Journal, Journal, Journal]);
      if (broken !== null) found.add(broken);
    }
    expect([...found], name).not.toEqual([]);
  }
});

const BROKEN_FOLDS: Readonly<Record<string, Fold>> = {
  'of two contents the last to arrive wins': (records) => foldHolding([...new Map(records.map((record) => [record.id, record])).values()]),
  'arrival stands in for the stamp': (records) =>
    foldHolding(records.map((record, i) => ({ ...record, seen: `${String(i).padStart(13, '0')}${record.seen.slice(13)}` }))),
};

test('[J23] the laws can fail: two folds that mind the order of arrival are caught', () => {
  for (const [name, fold] of Object.entries(BROKEN_FOLDS)) {
    let caught = 0;
    for (let n = 0; n < 300; n++) {
      const random = newRandom(SEED + n);
      const { records } = randomJournal(random, newCoverage());
      if (brokenArrivalLaw(fold, records, random) === 'fold depends on arrival') caught++;
    }
    // one journal in seven has two contents under one id, about 45 of 300, and not every pair differs in what the holding shows
    expect(caught, name).toBeGreaterThan(5);
  }
});
