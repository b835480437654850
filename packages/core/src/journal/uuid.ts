/**
 * A new record id: UUID version 7, so that ids sort by the time they were made.
 *
 * unixMs      milliseconds since 1970 by the writing device's clock, 0 to 2^48 - 1
 * random      10 random bytes, from a source fit for ids
 * returns     36 characters, lower case
 * throws      RangeError for a time outside that, TypeError for another number of bytes
 * source      RFC 9562 (2024), sections 5.7 and 4.1
 * checked     journal.test.ts: the example of RFC 9562 appendix A.6
 */
export function uuidv7(unixMs: number, random: Uint8Array): string {
  if (!(Number.isInteger(unixMs) && unixMs >= 0 && unixMs < 2 ** 48)) {
    throw new RangeError(`uuidv7: unixMs is ${unixMs} ms, must be a whole number from 0 to 2^48 - 1`);
  }
  if (random.length !== 10) throw new TypeError(`uuidv7: random has ${random.length} bytes, must have 10`);
  const tail = Array.from(random);
  tail[0] = 0x70 | ((tail[0] as number) & 0x0f);
  tail[2] = 0x80 | ((tail[2] as number) & 0x3f);
  const hex = unixMs.toString(16).padStart(12, '0') + tail.map((byte) => byte.toString(16).padStart(2, '0')).join('');
  return `${hex.slice(0, 8)}-${hex.slice(8, 12)}-${hex.slice(12, 16)}-${hex.slice(16, 20)}-${hex.slice(20)}`;
}

export const UUID_V7 = /^[0-9a-f]{8}-[0-9a-f]{4}-7[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/;
