import { describe, expect, test } from 'vitest';
import { mix128 } from '../src/journal/digest.ts';
import {
  clockOnReceipt,
  type Journal,
  KINDS,
  lineOf,
  newStampClock,
  partsOfStamp,
  readJournal,
  recordOf,
  stampOnWrite,
  uuidv7,
  writeJournal,
} from '../src/journal/index.ts';
import { upgradeRecord } from '../src/journal/upgrade.ts';
import { newMaker, stampAt } from './journal-maker.ts';

const make = newMaker();
const weighing = make('weighing', { hive: 'h1', frontKg: 21.5 });
const raw = (changes: Record<string, unknown>) => JSON.stringify({ ...weighing, ...changes });

/** The one reason in a text of one unread line. */
function whyNot(line: string) {
  const { records, unread } = readJournal(`${line}\n`);
  expect(records).toHaveLength(0);
  expect(unread).toHaveLength(1);
  return unread[0]!.why;
}

/** The field error of a weighing (or another kind) with this body. */
function errorOf(body: unknown, kind = 'weighing') {
  const why = whyNot(raw({ kind, body }));
  expect(why.kind).toBe('not-a-record');
  return why.kind === 'not-a-record' ? why.error : undefined;
}

describe('the file', () => {
  test('[J1] a byte order mark, CR LF and blank lines carry nothing', () => {
    const look = make('look', { colony: 'c1', brood: 'clean' });
    const journal = readJournal(`\ufeff${lineOf(weighing)}\r\n\r\n  \n${lineOf(look)}`);
    expect(journal.unread).toEqual([]);
    expect(journal.records).toEqual([weighing, look]);
  });

  test('[J2] each field of a record is asked for, and nothing else may stand in it', () => {
    for (const field of ['id', 'yard', 'kind', 'at', 'by', 'seen', 'body']) {
      expect(whyNot(raw({ [field]: undefined })), field).toMatchObject({ kind: 'not-a-record', error: { kind: 'missing', field } });
    }
    expect(whyNot(raw({ weight: 3 }))).toMatchObject({ error: { kind: 'unknown-field', field: 'weight' } });
    expect(whyNot(raw({ id: weighing.id.toUpperCase() }))).toMatchObject({ error: { field: 'id', form: 'uuid-v7' } });
    expect(whyNot(raw({ id: '00000000-0000-4000-8000-000000000000' }))).toMatchObject({ error: { field: 'id', form: 'uuid-v7' } });
    expect(whyNot(raw({ at: { date: '2026-02-30' } }))).toMatchObject({
      error: { kind: 'not-a-date', field: 'at.date', value: '2026-02-30' },
    });
    expect(whyNot(raw({ at: { date: '2026-09-01', time: '24:00' } }))).toMatchObject({ error: { field: 'at.time', form: 'time' } });
    expect(whyNot(raw({ at: { date: '2026-09-01', zone: 'CST' } }))).toMatchObject({ error: { field: 'at.zone', form: 'zone' } });
    expect(whyNot(raw({ seen: 'yesterday' }))).toMatchObject({ error: { field: 'seen', form: 'stamp' } });
    expect(readJournal(raw({ yard: '*' })).records).toHaveLength(1);
    expect(whyNot('[1, 2]')).toMatchObject({ kind: 'not-a-record', error: { kind: 'wrong-type' } });
  });

  test('[J3] an error names the field, the value and what is allowed', () => {
    expect(errorOf({ hive: 'h1', frontKg: 1400 })).toEqual({
      kind: 'out-of-range',
      field: 'body.frontKg',
      value: 1400,
      unit: 'kg',
      low: 1,
      high: 150,
    });
    expect(errorOf({ hive: 'h1', frontKg: 0 })).toMatchObject({ kind: 'out-of-range', value: 0 });
    expect(errorOf({ hive: 'h1', frontKg: '21,5' })).toEqual({ kind: 'not-a-number', field: 'body.frontKg', value: '21,5' });
    expect(errorOf({ hive: 'h1' })).toEqual({
      kind: 'missing-all',
      ways: [['body.frontKg'], ['body.rearKg'], ['body.frontKg', 'body.rearKg'], ['body.word']],
    });
    expect(errorOf({ hive: 'h1', frontKg: 20, word: 'huge' })).toMatchObject({
      kind: 'unknown-choice',
      field: 'body.word',
      choices: ['heavy', 'fair', 'light'],
    });
    expect(errorOf({ hive: 'h1', frontLb: 40, frontKg: 20 })).toMatchObject({ kind: 'unknown-field', field: 'body.frontLb' });
    expect(errorOf({ hive: 'h1', label: 'x'.repeat(1_000_000) }, 'hive')).toEqual({
      kind: 'wrong-length',
      field: 'body.label',
      length: 1_000_000,
      low: 1,
      high: 40,
      unit: 'characters',
    });
    expect(errorOf({ hive: 'h1', label: 'A\n7' }, 'hive')).toMatchObject({ kind: 'wrong-form', field: 'body.label' });
    expect(errorOf({ colony: 'c1', bees: 300, mites: 2.5, method: 'alcohol' }, 'wash')).toMatchObject({
      kind: 'not-a-multiple',
      field: 'body.mites',
      value: 2.5,
      step: 1,
    });
    expect(
      errorOf(
        {
          hive: 'h1',
          parts: [
            { part: 'deep', count: 2 },
            { part: 'deep', count: -1 },
          ],
        },
        'build',
      ),
    ).toMatchObject({ kind: 'out-of-range', field: 'body.parts.1.count' });
    expect(errorOf({ hive: 'h1', parts: 'deep' }, 'build')).toMatchObject({ kind: 'wrong-type', field: 'body.parts', allowed: 'list' });
    expect(errorOf({ from: 'c1', into: 'c1' }, 'colonies-united')).toMatchObject({ kind: 'conflict', why: 'same-colony' });
  });

  test('[J3] frames go from one place to another, and what is in hand is named by where it was taken', () => {
    const swap = { from: { colony: 'c1' }, to: { colony: 'c2' }, frame: 'deep', count: 1 };
    const read = (body: unknown) => readJournal(raw({ kind: 'swap', body })).records.length;
    expect(read(swap)).toBe(1);
    expect(read({ ...swap, to: { hand: 'c1' } })).toBe(1);
    expect(read({ ...swap, from: { shed: true }, to: { hand: 'shed' } })).toBe(1);
    expect(errorOf({ ...swap, to: { colony: 'c1' } }, 'swap')).toMatchObject({ kind: 'conflict', why: 'same-place' });
    expect(errorOf({ ...swap, to: { hand: 'c9' } }, 'swap')).toMatchObject({ kind: 'conflict', why: 'hand-names-origin' });
    expect(errorOf({ ...swap, out: { frame: 'deep', count: 1, to: { hand: 'c1' } } }, 'swap')).toMatchObject({
      fields: ['body.to', 'body.out.to'],
      why: 'hand-names-origin',
    });
    expect(errorOf({ ...swap, to: { roof: true } }, 'swap')).toMatchObject({
      kind: 'unknown-choice',
      field: 'body.to',
      choices: ['colony', 'lot', 'shed', 'hand'],
    });
  });

  test('[J4] a line that is not read is kept to the byte, with its reason', () => {
    const lines = ['not json', '{"id": "x"', raw({ kind: 'moon-phase' }), raw({ v: 7 }), raw({ by: '' })];
    const journal = readJournal(`${lines.join('\n')}\n${lineOf(weighing)}\n${lineOf(weighing).slice(0, 40)}`);
    expect(journal.records).toEqual([weighing]);
    const kinds = Object.fromEntries(journal.unread.map(({ line, why }) => [line, why.kind]));
    expect(kinds).toEqual({ 1: 'not-json', 2: 'not-json', 3: 'unknown-kind', 4: 'newer', 5: 'not-a-record', 7: 'torn' });
    const written = writeJournal(journal).split('\n');
    for (const line of [...lines, lineOf(weighing).slice(0, 40)]) expect(written).toContain(line);
  });

  test('[J4] a file that is no journal at all is read as unread lines', () => {
    const { records, unread } = readJournal('\u0089PNG\r\n\u001a\n\u0000\u0000rest');
    expect(records).toEqual([]);
    expect(unread.map((line) => line.text)).toContain('\u0089PNG\r');
  });

  test('[J3] a value nested beyond what can be written back is not read', () => {
    const deep = `${'['.repeat(5000)}${']'.repeat(5000)}`;
    const line = raw({ kind: 'plan-adopted', body: { plan: { nested: 0 } } }).replace('{"nested":0}', `{"nested":${deep}}`);
    expect(whyNot(line)).toMatchObject({ error: { kind: 'too-deep', field: 'body.plan' } });
  });

  test('[J5] version 1 may be said or left out, a newer version is kept unread', () => {
    expect(readJournal(raw({ v: 1 })).records).toEqual([weighing]);
    expect(whyNot(raw({ v: 2 }))).toEqual({ kind: 'newer', version: 2, readUpTo: 1 });
    expect(whyNot(raw({ v: 'one' }))).toMatchObject({ kind: 'not-a-record', error: { field: 'v' } });
    expect(whyNot(raw({ v: 0 }))).toMatchObject({ kind: 'not-a-record', error: { field: 'v' } });
  });

  test('[J5] an older version is raised step by step to the current one', () => {
    const steps = [(old: object) => ({ ...old, second: true }), (old: object) => ({ ...old, third: 'second' in old })];
    expect(upgradeRecord({ a: 1 }, steps)).toEqual({ ok: true, raw: { a: 1, second: true, third: true } });
    expect(upgradeRecord({ a: 1, v: 2 }, steps)).toEqual({ ok: true, raw: { a: 1, third: false } });
    expect(upgradeRecord({ a: 1, v: 3 }, steps)).toEqual({ ok: true, raw: { a: 1 } });
    expect(upgradeRecord({ a: 1, v: 4 }, steps)).toEqual({ ok: false, why: { kind: 'newer', version: 4, readUpTo: 3 } });
  });

  test('[J6] written and read again, a journal gives the same bytes, in the order of ids and with fields in a fixed order', () => {
    const shuffled = `{"body":{"colony":"c","word":1},"broken":\n{"seen":"${stampAt(5)}","body":{"target":"${weighing.id}"},"kind":"strike","by":"k","at":{"zone":"-06:00","date":"2026-09-02"},"yard":"*","id":"${uuidv7(5, new Uint8Array(10))}"}\n${lineOf(weighing)}\n`;
    const once = writeJournal(readJournal(shuffled));
    expect(writeJournal(readJournal(once))).toBe(once);
    expect(once.split('\n').map((line) => line.slice(0, 20))).toEqual([
      '{"id":"00000000-0005',
      `{"id":"${weighing.id.slice(0, 13)}`,
      '{"body":{"colony":"c',
      '',
    ]);
  });

  test('[J7] a southern yard is refused with its reason', () => {
    expect(errorOf({ name: 'Far', latDeg: -38.2, lonDeg: 145 }, 'yard')).toEqual({
      kind: 'implausible',
      field: 'body.latDeg',
      value: -38.2,
      unit: 'deg',
      why: 'southern-hemisphere',
    });
  });

  test('[J8] an unknown setting is a record, a known one with a value that does not fit is not', () => {
    expect(readJournal(raw({ kind: 'setting', body: { key: 'moonPhase', value: { any: 'thing' } } })).records).toHaveLength(1);
    expect(errorOf({ key: 'certaintyFrac', value: 95 }, 'setting')).toMatchObject({
      kind: 'out-of-range',
      field: 'body.value',
      value: 95,
      low: 0.5,
      high: 0.999,
    });
    expect(errorOf({ key: 'ownRule', value: { grossKg: 60, colonies: 10, starved: 11 } }, 'setting')).toMatchObject({
      field: 'body.value.starved',
      high: 10,
    });
    expect(errorOf({ key: 'ownRule', value: { colonies: 10, starved: 1 } }, 'setting')).toMatchObject({
      kind: 'missing-all',
      ways: [['body.value.grossKg'], ['body.value.frontKg']],
    });
  });

  test('[J3] a body of another kind is refused by nearly every kind', () => {
    const strike = { target: weighing.id };
    const takes = KINDS.filter((kind) => recordOf({ ...weighing, kind, body: strike }).ok);
    expect(takes).toEqual(['strike']);
  });
});

describe('ids and stamps', () => {
  test('[J12] a new id is the example of RFC 9562, appendix A.6', () => {
    // unix_ts_ms 0x017F22E279B0, rand_a 0xCC3, rand_b 0x18C4DC0C0C07398F; exact
    const random = Uint8Array.from([0x0c, 0xc3, 0x18, 0xc4, 0xdc, 0x0c, 0x0c, 0x07, 0x39, 0x8f]);
    expect(uuidv7(0x017f22e279b0, random)).toBe('017f22e2-79b0-7cc3-98c4-dc0c0c07398f');
  });

  test('[J12] a time or a number of bytes that cannot be is refused', () => {
    expect(() => uuidv7(-1, new Uint8Array(10))).toThrow(/unixMs is -1/);
    expect(() => uuidv7(Number.NaN, new Uint8Array(10))).toThrow(RangeError);
    expect(() => uuidv7(1, new Uint8Array(16))).toThrow(/16 bytes/);
  });

  test('[J13] the stamps of a device rise strictly, also when its clock is set back or stands still', () => {
    let clock = newStampClock('device01');
    let last = '';
    for (const wallMs of [1000, 1000, 1001, 5, 5, 2000, 0, 1_790_000_000_000]) {
      const written = stampOnWrite(clock, wallMs);
      clock = written.clock;
      expect(written.stamp > last, `${written.stamp} after ${last}`).toBe(true);
      expect(written.stamp).toHaveLength(28);
      last = written.stamp;
    }
    expect(partsOfStamp(last)).toEqual({ ms: 1_790_000_000_000, counter: 0, device: 'device01' });
  });

  test('[J13] the counter rolls over into the next millisecond', () => {
    const { clock, stamp } = stampOnWrite({ ms: 1000, counter: 99_999, device: 'device01' }, 1000);
    expect(stamp > '0000000001000-99999-device01').toBe(true);
    expect(clock).toEqual({ ms: 1001, counter: 0, device: 'device01' });
  });

  test('[J13] what is written after a receipt sorts after what was received', () => {
    for (const receivedMs of [500, 1000, 1500, 1000 + 24 * 3600 * 1000]) {
      const start = stampOnWrite(newStampClock('device01'), 1000).clock;
      const received = clockOnReceipt(start, stampAt(receivedMs, 'zzzzzzzz'), 1000);
      expect(received.ahead).toBe(false);
      expect(stampOnWrite(received.clock, 1000).stamp > stampAt(receivedMs, 'zzzzzzzz')).toBe(true);
    }
  });

  test('[J14] a stamp more than 24 h ahead does not advance the clock', () => {
    const start = stampOnWrite(newStampClock('device01'), 1000).clock;
    const received = clockOnReceipt(start, stampAt(1001 + 24 * 3600 * 1000, 'zzzzzzzz'), 1000);
    expect(received).toEqual({ clock: start, ahead: true });
  });

  test('[J13] a stamp or clock that is none is refused', () => {
    expect(() => partsOfStamp('x')).toThrow(TypeError);
    expect(() => newStampClock('Device 1')).toThrow(TypeError);
    expect(() => stampOnWrite(newStampClock('device01'), Number.NaN)).toThrow(RangeError);
    expect(() => clockOnReceipt(newStampClock('device01'), stampAt(1), 1.5)).toThrow(RangeError);
  });

  test('[J11] the mix is MurmurHash3_x86_128: the verification value of its own test suite', () => {
    // SMHasher, KeysetTest: keys 0..i-1 with seed 256-i, digests little-endian, mixed with seed 0; first word. Exact. Read in public copies of SMHasher's main.cpp.
    const digests = new DataView(new ArrayBuffer(256 * 16));
    for (let i = 0; i < 256; i++) {
      const key = Uint8Array.from({ length: i }, (_, byte) => byte);
      mix128(key, 256 - i).forEach((word, lane) => {
        digests.setUint32(16 * i + 4 * lane, word, true);
      });
    }
    expect(mix128(new Uint8Array(digests.buffer), 0)[0]).toBe(0xb3ece62a);
  });
});

test('[J6] the empty journal is the empty file', () => {
  const empty: Journal = readJournal('');
  expect(empty).toEqual({ records: [], unread: [] });
  expect(writeJournal(empty)).toBe('');
});
