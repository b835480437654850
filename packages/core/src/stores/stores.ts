import { good, type Result } from '../result/index.ts';
import { storesParameters } from '../tables/parameters-stores.gen.ts';
import { isoDateOf } from '../units/index.ts';
import { type Belief, believe } from './believe.ts';
import { contactOf, coversAll } from './counted.ts';
import { type Estimate, errorParts, sdOf } from './errors.ts';
import { measurementsOpen } from './measure-next.ts';
import { readStoresInput, type StoresCase } from './read-input.ts';
import { buildKey } from './tare.ts';
import type { StoresAnswer, StoresInput, StoresNote } from './types.ts';

/** Weight and count further apart than this many standard deviations of their difference: one of them is of another hive. */
const DISAGREE = 3;

/**
 * What a colony holds that its bees can eat, with the error, where that comes from and what to measure next.
 *
 * By weight: the whole hive less its build, bees, pollen, brood, what stands on it, water still to be dried from syrup, snow and
 * ice. By count: full capped combs and what is beside them. Both: joined with the weights of least variance.
 *
 * input     see StoresInput; a weight, a count of capped combs, or both
 * returns   see StoresAnswer; storesKg is never below 0 (a hive lighter than thought empty says so in `notes`)
 * errors    BadInput naming the field: neither weight nor count, unknown parts, more frames than the boxes hold, a weight that
 *           cannot be of this build
 * source    data/parts.csv, data/parameters/stores.csv
 * checked   checks/stores.ts, checks/parts.ts; stores.test.ts, measure-next.test.ts
 */
export function stores(input: StoresInput): Result<StoresAnswer> {
  const read = readStoresInput(input);
  if (!read.ok) return read;
  const believed = believe(read.value);
  if (!believed.ok) return believed;
  const belief = believed.value;
  const { tare, bees, stores: best } = belief;
  const measurements = measurementsOpen(read.value, belief);
  return good({
    storesKg: Math.max(0, best.kg),
    sdKg: sdOf(best.errors),
    errorParts: errorParts(best.errors),
    measureNext: measurements[0] ?? null,
    measurements,
    provisional: provisionalOf(read.value),
    weightOnly: belief.byCount === null && tare.basis === 'table',
    byWeight: summary(belief.byWeight),
    byCount: summary(belief.byCount),
    tare: {
      massKg: tare.massKg,
      sharedSdKg: Math.hypot(tare.partsSdKg, tare.combSdKg),
      ownSdKg: tare.ownSdKg,
      basis: tare.basis,
      buildKey: buildKey(read.value.facts),
    },
    bees: { count: bees.count, massKg: bees.massKg, sdKg: bees.sdKg },
    contact: contactOf(read.value.facts, input.cappedFrames ?? []),
    notes: notesOf(read.value, belief),
  });
}

function summary(estimate: Estimate | null): { kg: number; sdKg: number } | null {
  return estimate === null ? null : { kg: estimate.kg, sdKg: sdOf(estimate.errors) };
}

/** Within a few days of syrup a weight is not yet stores: the first day on which it counts. */
function provisionalOf({ input, day, lastSyrupDay }: StoresCase): StoresAnswer['provisional'] {
  if (input.grossKg === undefined || day === null || lastSyrupDay === null) return null;
  const lastProvisionalDay = lastSyrupDay + storesParameters.provisionalDays.value;
  return day > lastProvisionalDay ? null : { weighAgainOn: isoDateOf(lastProvisionalDay + 1) };
}

function notesOf({ input, facts }: StoresCase, { byWeight, byCount, stores: best, bees, fullKg }: Belief): StoresNote[] {
  const notes: StoresNote[] = [];
  if (best.kg < 0) notes.push('below-empty');
  if (best.kg > fullKg) notes.push('above-full');
  if (bees.assumed) notes.push('bees-assumed');
  if (byCount !== null && !coversAll(facts, input)) notes.push('lower-combs-assumed');
  if (byWeight !== null && byCount !== null) {
    const apartKg = Math.abs(byWeight.kg - byCount.kg);
    if (apartKg > DISAGREE * Math.hypot(sdOf(byWeight.errors), sdOf(byCount.errors))) notes.push('weight-and-count-disagree');
  }
  return notes;
}
