import { type JournalRecord, lineOf } from './record.ts';

/**
 * Which set of records this is: equal for equal sets, whatever their order. For naming what a plan was made from and for comparing two devices;
 * it is no protection against somebody who forges records, for it is a mix and not a cryptographic hash.
 *
 * records     any order; records with the same id count once, unless their contents differ
 * returns     32 hexadecimal digits
 * equation    MurmurHash3, 128 bits for 32-bit machines, seed 0, over the sorted ids, one a line, two bytes a character, low byte first
 */
export function journalDigest(records: readonly JournalRecord[]): string {
  const recordsById = new Map<string, JournalRecord | Set<string>>();
  for (const record of records) {
    const known = recordsById.get(record.id);
    if (known === undefined || known === record) recordsById.set(record.id, record);
    else if (known instanceof Set) known.add(lineOf(record));
    else recordsById.set(record.id, new Set([lineOf(known), lineOf(record)]));
  }
  const names = [...recordsById].map(([id, content]) => (content instanceof Set && content.size > 1 ? [...content].sort().join('\n') : id));
  const text = names.sort().join('\n');
  const bytes = new Uint8Array(text.length * 2);
  for (let i = 0; i < text.length; i++) {
    const unit = text.charCodeAt(i);
    bytes[2 * i] = unit & 0xff;
    bytes[2 * i + 1] = unit >>> 8;
  }
  return Array.from(mix128(bytes, 0), (word) => word.toString(16).padStart(8, '0')).join('');
}

const C1 = 0x239b961b;
const C2 = 0xab0e9789;
const C3 = 0x38b34ae5;
const C4 = 0xa1e38b93;

/**
 * MurmurHash3_x86_128.
 *
 * returns     four 32-bit words, first word first
 * source      Appleby, MurmurHash3 (public domain); constants from memory
 * checked     journal.test.ts: the verification value 0xB3ECE62A its author's own test suite prints
 */
export function mix128(bytes: Uint8Array, seed: number): Uint32Array {
  let [a, b, c, d] = [seed, seed, seed, seed];
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const blocks = bytes.length >>> 4;
  for (let i = 0; i < blocks; i++) {
    a ^= scrambled(view.getUint32(16 * i, true), C1, 15, C2);
    a = (Math.imul((rotated(a, 19) + b) | 0, 5) + 0x561ccd1b) | 0;
    b ^= scrambled(view.getUint32(16 * i + 4, true), C2, 16, C3);
    b = (Math.imul((rotated(b, 17) + c) | 0, 5) + 0x0bcaa747) | 0;
    c ^= scrambled(view.getUint32(16 * i + 8, true), C3, 17, C4);
    c = (Math.imul((rotated(c, 15) + d) | 0, 5) + 0x96cd1c35) | 0;
    d ^= scrambled(view.getUint32(16 * i + 12, true), C4, 18, C1);
    d = (Math.imul((rotated(d, 13) + a) | 0, 5) + 0x32ac3b17) | 0;
  }
  const tail = new DataView(new ArrayBuffer(16));
  for (let i = blocks * 16; i < bytes.length; i++) tail.setUint8(i - blocks * 16, bytes[i] as number);
  a ^= scrambled(tail.getUint32(0, true), C1, 15, C2);
  b ^= scrambled(tail.getUint32(4, true), C2, 16, C3);
  c ^= scrambled(tail.getUint32(8, true), C3, 17, C4);
  d ^= scrambled(tail.getUint32(12, true), C4, 18, C1);
  return finished([a ^ bytes.length, b ^ bytes.length, c ^ bytes.length, d ^ bytes.length]);
}

function finished([a0, b0, c0, d0]: readonly [number, number, number, number]): Uint32Array {
  const a1 = (a0 + b0 + c0 + d0) | 0;
  const [b1, c1, d1] = [avalanched((b0 + a1) | 0), avalanched((c0 + a1) | 0), avalanched((d0 + a1) | 0)];
  const a2 = (avalanched(a1) + b1 + c1 + d1) | 0;
  return Uint32Array.of(a2, b1 + a2, c1 + a2, d1 + a2);
}

function scrambled(word: number, before: number, turn: number, after: number): number {
  return Math.imul(rotated(Math.imul(word, before), turn), after);
}

function rotated(word: number, turn: number): number {
  return (word << turn) | (word >>> (32 - turn));
}

function avalanched(word: number): number {
  let h = Math.imul(word ^ (word >>> 16), 0x85ebca6b);
  h = Math.imul(h ^ (h >>> 13), 0xc2b2ae35);
  return h ^ (h >>> 16);
}
