/** A hybrid logical clock: the latest time it has seen, a counter within that millisecond, and whose it is. */
export interface StampClock {
  readonly ms: number;
  readonly counter: number;
  /** Eight characters 0-9 a-z, drawn once per device. */
  readonly device: string;
}

/** `wall ms - counter - device`, fixed width, so that text order is time order. */
export const STAMP = /^\d{13}-\d{5}-[0-9a-z]{8}$/;

/** A stamp further ahead of the own clock than this does not move it: one device with a clock years off must not carry all others along. */
const FURTHEST_AHEAD_MS = 24 * 3600 * 1000;
const LAST_MS = 9_999_999_999_999;
const LAST_COUNTER = 99_999;

/** A clock that has seen nothing yet. */
export function newStampClock(device: string): StampClock {
  if (!/^[0-9a-z]{8}$/.test(device)) throw new TypeError(`newStampClock: device is "${device}", must be 8 characters 0-9 a-z`);
  return { ms: 0, counter: 0, device };
}

/**
 * The stamp of a record about to be written, and the clock after it. Stamps of one device rise strictly, even when its wall clock is set back.
 *
 * wallMs      the device's clock [ms since 1970], 0 to 9 999 999 999 999 (year 2286)
 * source      Kulkarni et al. 2014, Logical Physical Clocks (hybrid logical clock, send event), from memory
 */
export function stampOnWrite(clock: StampClock, wallMs: number): { readonly clock: StampClock; readonly stamp: string } {
  const next = advanced(clock, [checkedWall('stampOnWrite', wallMs)]);
  return { clock: next, stamp: stampOf(next) };
}

/**
 * The clock after a record of another device has come in, so that whatever is written next sorts after it.
 * A stamp more than 24 h ahead of the wall clock leaves the clock as it was, and `ahead` says so; the record itself is kept.
 *
 * source      Kulkarni et al. 2014 (receive event), from memory; the 24 h bound is ours
 */
export function clockOnReceipt(clock: StampClock, stamp: string, wallMs: number): { readonly clock: StampClock; readonly ahead: boolean } {
  const wall = checkedWall('clockOnReceipt', wallMs);
  const { ms, counter } = partsOfStamp(stamp);
  if (ms > wall + FURTHEST_AHEAD_MS) return { clock, ahead: true };
  if (ms < clock.ms) return { clock: advanced(clock, [wall]), ahead: false };
  const seen = ms === clock.ms ? { ...clock, counter: Math.max(clock.counter, counter) } : { ...clock, ms, counter };
  return { clock: advanced(seen, [wall]), ahead: false };
}

/** The three parts of a stamp. Throws TypeError where the text is none. */
export function partsOfStamp(stamp: string): StampClock {
  if (!STAMP.test(stamp)) throw new TypeError(`partsOfStamp: stamp is "${stamp.slice(0, 40)}", must be 13 digits, 5 digits and a device`);
  return { ms: Number(stamp.slice(0, 13)), counter: Number(stamp.slice(14, 19)), device: stamp.slice(20) };
}

function advanced(clock: StampClock, times: readonly number[]): StampClock {
  const ms = Math.max(clock.ms, ...times);
  if (ms > clock.ms) return { ...clock, ms, counter: 0 };
  return clock.counter < LAST_COUNTER ? { ...clock, counter: clock.counter + 1 } : { ...clock, ms: ms + 1, counter: 0 };
}

function stampOf({ ms, counter, device }: StampClock): string {
  return `${String(ms).padStart(13, '0')}-${String(counter).padStart(5, '0')}-${device}`;
}

function checkedWall(name: string, wallMs: number): number {
  if (!(Number.isInteger(wallMs) && wallMs >= 0 && wallMs <= LAST_MS)) {
    throw new RangeError(`${name}: wallMs is ${wallMs} ms, must be a whole number from 0 to ${LAST_MS}`);
  }
  return wallMs;
}
