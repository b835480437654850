import 'fake-indexeddb/auto';
import { readFileSync } from 'node:fs';
import { newStampClock } from '@winterheft/core';
import { afterEach, describe, expect, test, vi } from 'vitest';
import { addFile } from '../src/background/add-file.ts';
import { WorkApi } from '../src/background/api.ts';
import { rowsOfFile } from '../src/background/holder.ts';
import { openDatabase } from '../src/store/database.ts';
import { JournalStore } from '../src/store/journal-store.ts';
import { storedClock, writeLines } from '../src/store/write-lines.ts';

const demo = readFileSync(new URL('../../../demo/journal.jsonl', import.meta.url), 'utf8');
const { rows, stamps } = rowsOfFile(demo);
const NOW_MS = Date.parse('2026-09-20T12:00:00Z');
const asker = { clock: newStampClock('test0001'), nowMs: NOW_MS };
const line = (n: number) => ({ key: rows[n]?.key ?? '', text: rows[n]?.text ?? '', from: 'file' as const });
const silent = () => undefined;

let databases = 0;
const fresh = () => openDatabase(`test-${++databases}`);

afterEach(() => vi.restoreAllMocks());

describe('lines on the disk', () => {
  test('what is there already is not written again, whoever wrote it, and the rest is', async () => {
    const database = fresh();
    expect(await writeLines(database, [line(0), line(1)], asker.clock)).toBe(2);
    expect(await writeLines(database, [line(1), line(2), line(0), line(3)], asker.clock)).toBe(2);
    expect((await database.lines.toArray()).map(({ text }) => text)).toEqual([0, 1, 2, 3].map((n) => rows[n]?.text));
  });

  test('a disk that is full takes none of a batch: what was there stays, the error says why', async () => {
    const database = fresh();
    await writeLines(database, [line(0)], asker.clock);
    const add = IDBObjectStore.prototype.add;
    let left = 2;
    vi.spyOn(IDBObjectStore.prototype, 'add').mockImplementation(function (this: IDBObjectStore, ...of: Parameters<typeof add>) {
      if (left-- > 0) return add.apply(this, of);
      throw new DOMException('The quota has been exceeded.', 'QuotaExceededError');
    });
    await expect(writeLines(database, [line(1), line(2), line(3), line(4)], asker.clock)).rejects.toThrow(/QuotaExceeded/);
    vi.restoreAllMocks();
    expect(await database.lines.count()).toBe(1);
  });
});

describe('a file added by the worker', () => {
  test('every line is written once, the clock has seen its latest stamp, and how far it is is told', async () => {
    const database = fresh();
    await writeLines(
      database,
      rows.slice(0, 100).map((_, n) => line(n)),
      asker.clock,
    );
    const told = vi.fn();
    expect(await addFile(database, demo, asker, told)).toEqual({ written: rows.length - 100, left: [], stamps });
    expect(told).toHaveBeenCalledWith(0, rows.length - 100);
    expect(await database.lines.count()).toBe(rows.length);
    const latest = Math.max(...stamps.map((stamp) => Number(stamp.slice(0, 13))));
    expect((await storedClock(database))?.ms).toBeGreaterThanOrEqual(latest);
    expect((await storedClock(database))?.device).toBe('test0001');
    expect(await addFile(database, demo, asker, silent)).toMatchObject({ written: 0, left: [] });
  });

  test('what no disk takes comes back whole', async () => {
    expect(await addFile(null, demo, asker, silent)).toEqual({ written: 0, left: rows, stamps });
    const database = fresh();
    vi.spyOn(IDBObjectStore.prototype, 'add').mockImplementation(() => {
      throw new DOMException('The quota has been exceeded.', 'QuotaExceededError');
    });
    const { written, left } = await addFile(database, demo, asker, silent);
    expect([written, left.length]).toEqual([0, rows.length]);
    // and the page keeps it in memory, says that the disk is full, and writes it when there is room
    const told = vi.fn();
    const store = new JournalStore(
      database,
      { nowMs: () => NOW_MS, random: (n) => new Uint8Array(n), at: () => ({ date: '2026-09-20' }) },
      told,
    );
    await store.addLines(left, stamps);
    expect(store.trouble?.kind).toBe('full');
    expect(told.mock.lastCall?.[0]).toHaveLength(rows.length);
    vi.restoreAllMocks();
    expect(await store.retry()).toBe(true);
    expect(await database.lines.count()).toBe(rows.length);
  });
});

describe('the journal read ahead', () => {
  test('the page gets what the worker has begun to read, and what came since; another database is read for itself', async () => {
    const database = fresh();
    await writeLines(database, [line(0), line(1)], asker.clock);
    const api = new WorkApi();
    api.begin(database.name);
    await writeLines(database, [line(2)], asker.clock);
    expect((await api.open(database.name, 0)).records).toBe(3);
    const other = new WorkApi();
    other.begin(database.name);
    expect((await other.open(fresh().name, 0)).records).toBe(0);
  });

  test('a row that is no record is told as unreadable, hides nothing else and goes along in the file', async () => {
    const database = fresh();
    const broken = { key: 'unread torn', text: '{"id":"torn', from: 'here' as const };
    await writeLines(database, [line(0), broken, line(1)], asker.clock);
    const api = new WorkApi();
    expect(await api.open(database.name, 0)).toMatchObject({ records: 2, unread: 1 });
    expect((await api.file()).text).toContain('{"id":"torn');
  });
});
