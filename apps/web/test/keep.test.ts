import { readFileSync } from 'node:fs';
import type { Clash } from '@winterheft/core';
import { describe, expect, test } from 'vitest';
import { Holder, rowsOfFile } from '../src/background/holder.ts';
import { nameIn } from '../src/keep/clash-name.ts';
import { readTextFile } from '../src/keep/read-file.ts';

const demo = readFileSync(new URL('../../../demo/journal.jsonl', import.meta.url), 'utf8');
const lines = demo.trim().split('\n');

describe('what a file would bring', () => {
  const holder = new Holder();
  holder.add(rowsOfFile(lines.slice(0, 100).join('\n')).rows.map((row) => row.text));

  test('new, known and unreadable lines are counted apart, and the unreadable ones named', () => {
    const file = [...lines.slice(90), 'not a record', '{"id":1}'].join('\n');
    const counts = holder.compare(file);
    expect(counts).toMatchObject({ fresh: lines.length - 100, known: 10, unread: 2, freshUnread: 2, clashing: 0 });
    expect(counts.unreadLines.map(({ line, why }) => [line, why.kind])).toEqual([
      [lines.length - 90 + 1, 'not-json'],
      [lines.length - 90 + 2, 'not-a-record'],
    ]);
    expect(holder.snapshot().records).toBe(100);
  });

  test('unreadable lines that are here already are known, and of a monstrous one only the beginning is shown', () => {
    const monster = `{"long":"${'x'.repeat(1_000_000)}"`;
    const other = new Holder();
    other.add(rowsOfFile(`${demo}${monster}\n`).rows.map((row) => row.text));
    expect(other.compare(`${monster}\n`)).toMatchObject({ fresh: 0, known: 0, unread: 1, freshUnread: 0 });
    expect(other.unreadLines()[0]?.text.length).toBeLessThan(200);
    expect(other.text()).toContain(monster);
  });

  test('more clashes than are listed are counted', () => {
    const hive = JSON.parse(lines.find((line) => line.includes('"kind":"hive"')) as string);
    const twins = Array.from({ length: 30 }, (_, i) => {
      const end = String(i).padStart(12, '0');
      return [
        { ...hive, id: `019fffff-0000-7000-8000-${end}`, body: { ...hive.body, hive: `a${i}`, label: `T${i}` } },
        { ...hive, id: `019fffff-0000-7000-9000-${end}`, body: { ...hive.body, hive: `b${i}`, label: `t${i}` } },
      ];
    }).flat();
    const counts = new Holder().compare([lines[0], ...twins.map((record) => JSON.stringify(record))].join('\n'));
    expect(counts.clashing).toBeGreaterThanOrEqual(30);
    expect(counts.clashes).toHaveLength(20);
  });
});

describe('files', () => {
  test('text is read as it is; an empty file, no text and a file larger than any journal are refused', async () => {
    const read = (content: readonly BlobPart[]) => readTextFile(new Blob([...content]), 'a.jsonl');
    expect(await read(['{"ü":1}\n'])).toMatchObject({ ok: true, text: '{"ü":1}\n' });
    expect(await read([])).toMatchObject({ ok: false, why: 'empty' });
    expect(await read([new Uint8Array([0x89, 0x50, 0xff, 0xfe])])).toMatchObject({ ok: false, why: 'not-text' });
    expect(await readTextFile({ size: 201 * 1024 * 1024 } as Blob, 'b')).toMatchObject({ ok: false, why: 'too-big' });
    const gone = { size: 1, arrayBuffer: () => Promise.reject(new Error('taken away')) } as unknown as Blob;
    expect(await readTextFile(gone, 'c')).toMatchObject({ ok: false, why: 'unreadable', says: 'taken away' });
  });
});

test('a clash is told by the label of its hive where it has one', () => {
  const holding = {
    hives: new Map([['h1', { label: 'B4' }]]),
    colonies: new Map([['c1', { hive: 'h1' }]]),
  } as unknown as Parameters<typeof nameIn>[1];
  const clash = (of: object) => ({ records: [], ...of }) as unknown as Clash;
  expect(nameIn(clash({ kind: 'two-colonies', hive: 'h1', colonies: [] }), holding)).toBe('B4');
  expect(nameIn(clash({ kind: 'after-end', colony: 'c1' }), holding)).toBe('B4');
  expect(nameIn(clash({ kind: 'after-end', colony: 'c9' }), holding)).toBe('c9');
  expect(nameIn(clash({ kind: 'label-twice', label: 'A1', hives: [], yard: 'y' }), null)).toBe('A1');
  expect(nameIn(clash({ kind: 'same-id', contents: 2 }), null)).toBe('');
});
