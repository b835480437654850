import { recordOf, uuidv7 } from '@winterheft/core';
import { describe, expect, test } from 'vitest';
import { bigKeyOf, questionOf } from '../src/weighing/check.ts';
import { type Action, type Entry, entryAfter, entryOf, finished, isBegun, NEW_ENTRY, undone } from '../src/weighing/entry.ts';
import { lookOf, weighingBody } from '../src/weighing/records.ts';
import type { PadKey } from '../src/weighing/typing.ts';

const after = (entry: Entry, ...actions: Action[]) => actions.reduce(entryAfter, entry);
const keys = (text: string): Action[] => [...text].map((key) => ({ do: 'key', key: key === '.' ? 'mark' : (key as PadKey) }));
const rear: Action = { do: 'edge', edge: 'rear' };

describe('undo', () => {
  test('takes back one key while a reading is being typed', () => {
    const entry = after(NEW_ENTRY, ...keys('51.5'));
    expect(undone(entry)?.front).toBe('51.');
    expect(undone(undone(entry) as Entry)?.front).toBe('51');
  });

  test('takes back a finished reading as a whole, and the step to the other edge with it', () => {
    const moved = after(NEW_ENTRY, ...keys('51.5'), rear);
    const back = undone(moved) as Entry;
    expect(back).toMatchObject({ front: '', edge: 'front' });
    expect(undone(back)).toBeNull();
  });

  test('never ends in a step at which nothing on the screen changes but the field that is on', () => {
    const actions: Action[] = [...keys('51'), rear, { do: 'edge', edge: 'front' }, rear, ...keys('54'), { do: 'swap' }, rear];
    let entry = after(NEW_ENTRY, ...actions, { do: 'edge', edge: 'front' }, rear);
    for (let back = undone(entry); back !== null; back = undone(entry)) {
      expect({ ...back, edge: null, past: null }).not.toEqual({ ...entry, edge: null, past: null });
      entry = back;
    }
    expect(isBegun(entry)).toBe(false);
    expect(undone(after(NEW_ENTRY, rear))).toBeNull();
  });

  test('of a hive that was closed goes reading by reading', () => {
    const closed = finished(after(NEW_ENTRY, ...keys('51.5'), rear, ...keys('54')));
    expect(closed).toMatchObject({ front: '51.5', rear: '54' });
    expect(undone(closed)).toMatchObject({ front: '51.5', rear: '', edge: 'rear' });
  });

  test('reaches every state there was, and ends at the empty entry', () => {
    const actions: Action[] = [
      ...keys('51'),
      rear,
      ...keys('54'),
      { do: 'swap' },
      { do: 'count', of: 'bees', to: 7 },
      { do: 'brood', brood: 'clean' },
      { do: 'word', word: 'fair' },
    ];
    let entry: Entry | null = after(NEW_ENTRY, ...actions);
    let last = entry;
    while (entry !== null) {
      last = entry;
      entry = undone(entry);
    }
    expect(last).toEqual(NEW_ENTRY);
  });

  test('a deleted digit comes back', () => {
    const entry = after(NEW_ENTRY, ...keys('51'), { do: 'key', key: 'delete' });
    expect(entry.front).toBe('5');
    expect(undone(entry)?.front).toBe('51');
  });
});

describe('a draft', () => {
  test('comes back as it was, with its way back', () => {
    const entry = after(NEW_ENTRY, ...keys('51.5'), rear, ...keys('5'), { do: 'count', of: 'below', to: 2 });
    expect(entryOf(JSON.parse(JSON.stringify(entry)))).toEqual(entry);
  });

  test.each([null, 'x', {}, { front: 51, rear: '' }, { front: '051', rear: '' }, { front: '1e9', rear: '' }])(
    'that no version of ours wrote is none: %j',
    (stored) => {
      expect(entryOf(stored)).toBeNull();
    },
  );
});

test('who counts the lower box has counted none above where nothing was said of it', () => {
  expect(after(NEW_ENTRY, { do: 'count', of: 'below', to: 2 }).seen).toMatchObject({ top: 0, below: 2 });
});

describe('what has to be settled first', () => {
  const span = { lowKg: 9, highKg: 60 };
  const of = { spans: { front: span, rear: span }, units: 'metric', leaving: null } as const;

  test('a reading beyond the edge is asked about at once, a growing one when it is left', () => {
    expect(questionOf(after(NEW_ENTRY, ...keys('540')), of)).toMatchObject({ edge: 'front', text: '540', instead: ['54.0'] });
    expect(questionOf(after(NEW_ENTRY, ...keys('5')), of)).toBeNull();
    expect(questionOf(after(NEW_ENTRY, ...keys('5')), { ...of, leaving: 'front' })).toMatchObject({ instead: ['50'], canInsist: true });
  });

  test('insisting settles these digits and no others', () => {
    const sure = after(NEW_ENTRY, ...keys('70'), { do: 'sure', edge: 'front' });
    expect(questionOf(sure, of)).toBeNull();
    expect(questionOf(after(sure, ...keys('0')), of)).toMatchObject({ text: '700' });
  });

  test('what no edge of any hive shows cannot be insisted on', () => {
    expect(questionOf(after(NEW_ENTRY, ...keys('540')), of)?.canInsist).toBe(false);
  });
});

test('the big key goes to the rear after the front, then on; it skips a hive nothing was entered for', () => {
  const front = after(NEW_ENTRY, ...keys('51'));
  expect(bigKeyOf(NEW_ENTRY, { pane: 'keys', begun: false })).toEqual({ to: 'skip' });
  expect(bigKeyOf(front, { pane: 'keys', begun: true })).toEqual({ to: 'edge', edge: 'rear' });
  expect(bigKeyOf(after(front, rear), { pane: 'keys', begun: true })).toEqual({ to: 'next' });
  expect(bigKeyOf(after(NEW_ENTRY, { do: 'word', word: 'heavy' }), { pane: 'word', begun: true })).toEqual({ to: 'next' });
});

describe('the records a hive writes', () => {
  const facts = { topFrame: 'medium-frame-drawn', belowFrame: 'deep-frame-drawn' };
  const isRecord = (kind: string, body: unknown) =>
    recordOf({
      id: uuidv7(1_700_000_000_000, new Uint8Array(10)),
      yard: 'y1',
      kind,
      at: { date: '2026-09-18' },
      by: 'keeper',
      seen: '1700000000000-00000-device01',
      body,
    }).ok;

  test('are read by the journal', () => {
    const entry = after(
      NEW_ENTRY,
      ...keys('51.5'),
      rear,
      ...keys('54'),
      { do: 'count', of: 'bees', to: 8 },
      { do: 'count', of: 'top', to: 4 },
      { do: 'count', of: 'below', to: 3 },
      { do: 'brood', brood: 'clean' },
    );
    const weighing = weighingBody(entry, { hive: 'h1', units: 'ca', scale: { scale: 'hand', stepKg: 0.227 } });
    const look = { colony: 'c1', ...lookOf(entry.seen, facts) };
    expect(weighing).toMatchObject({ hive: 'h1', scale: 'hand', stepKg: 0.227 });
    // 1 lb is 0.453 592 37 kg; written to the gram.
    expect(weighing?.frontKg).toBeCloseTo(23.36, 3);
    expect(isRecord('weighing', weighing)).toBe(true);
    expect(look.capped).toEqual([
      { frame: 'medium-frame-drawn', count: 4, where: 'top' },
      { frame: 'deep-frame-drawn', count: 3, where: 'below' },
    ]);
    expect(isRecord('look', look)).toBe(true);
  });

  test('a word alone carries no scale, and nothing entered writes nothing', () => {
    const word = after(NEW_ENTRY, { do: 'word', word: 'light' });
    expect(weighingBody(word, { hive: 'h1', units: 'us', scale: { scale: 'hand' } })).toEqual({ hive: 'h1', word: 'light' });
    expect(weighingBody(NEW_ENTRY, { hive: 'h1', units: 'us', scale: {} })).toBeNull();
    expect(lookOf(NEW_ENTRY.seen, facts)).toBeNull();
    expect(isBegun(NEW_ENTRY)).toBe(false);
  });
});
