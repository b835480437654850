import { type JournalRecord, newStampClock, stampOnWrite, uuidv7 } from '../../packages/core/src/journal/index.ts';
import { LIFT_DATES } from '../world/colony.ts';
import type { WorldKeeper } from '../world/keeper.ts';
import type { Edges, Taken } from './gift.ts';

export const TODAY = '2026-09-01';
const FED = '2026-09-20';

/** What the keeper has written down since the round. */
export interface Later {
  readonly taken: readonly Taken[];
  readonly swaps: readonly { from: string; to: string; count: number; massKg: number; outKg: number }[];
  readonly lifts: readonly (readonly Edges[])[];
  /** Candy laid on at each of the earlier lifts [kg of sugar]. */
  readonly candy: readonly (readonly number[])[];
}
const YARD = 'yard-1';
const FRAMES_PER_BOX = 10;
const BUILD = [
  { part: 'solid-floor', count: 1 },
  { part: 'deep-10-wood', count: 2 },
  { part: 'deep-frame-drawn', count: 20 },
  { part: 'inner-cover', count: 1 },
  { part: 'telescoping-cover', count: 1 },
];
/** Sugar that is never the limit [kg]: the study's own limit is what an arm uses. */
const SUGAR_KG = 2000;

/**
 * What the keeper of the world wrote into the journal: the build, one look, one weighing of both edges a hive, and the empty hive
 * where one was weighed; with `later` also what went in and out since and the
 * lifts of winter. Nothing of what is true but not seen.
 */
export function journalOf(keeper: WorldKeeper, later?: Later): JournalRecord[] {
  const records: JournalRecord[] = [];
  let clock = newStampClock('worth000');
  const put = (kind: string, body: object, date = '2026-05-03') => {
    const wall = Date.parse(`${date}T12:00:00Z`) + records.length;
    const next = stampOnWrite(clock, wall);
    clock = next.clock;
    const n = records.length;
    const bytes = Uint8Array.from({ length: 10 }, (_, i) => (i < 2 ? (n >> (8 * i)) & 255 : 7));
    const at = { date, time: '12:00', zone: '-06:00' };
    records.push({ id: uuidv7(wall, bytes), yard: YARD, kind, at, by: 'keeper', seen: next.stamp, body } as unknown as JournalRecord);
  };
  const { latDeg, lonDeg, elevM } = keeper.climate;
  put('yard', { name: 'Yard', latDeg, lonDeg, elevM, exchangeWith: [] });
  put('setting', { key: 'sugarKg', value: SUGAR_KG });
  put('setting', { key: 'feeders', value: [{ type: 'top-feeder', count: keeper.hives.length, litres: 8 }] });
  if (keeper.emptyHiveKg !== null) put('part-weighed', { parts: BUILD, massKg: keeper.emptyHiveKg });
  for (const { label, seen } of keeper.hives) {
    const [hive, colony] = [`hive-${label}`, `colony-${label}`];
    put('hive', { hive, label });
    put('build', { hive, parts: BUILD });
    put('colony-begun', { colony, hive, how: 'unknown' });
    put('queen', { colony, state: 'laying' }, '2026-08-20');
    // uniting is not what is studied: a colony united is neither starved nor saved
    put('pin', { subject: colony, rule: 'never-unite', on: true });
    const light = Math.max(2, 20 - seen.cappedFrames - seen.framesOfBees);
    const look = {
      colony,
      bees: { count: seen.framesOfBees, unit: 'frames', counting: 'covered' },
      capped: [
        { frame: 'deep', count: Math.min(FRAMES_PER_BOX, seen.cappedFrames), where: 'top' },
        { frame: 'deep', count: Math.max(0, seen.cappedFrames - FRAMES_PER_BOX), where: 'below' },
      ],
      emptyCombs: [{ frame: 'deep', count: light }],
      brood: 'clean',
    };
    put('look', look, '2026-08-30');
    put('weighing', { hive, frontKg: seen.frontKg, rearKg: seen.rearKg, scale: 'hand', stepKg: 0.25 }, '2026-08-31');
  }
  later?.taken.forEach(({ sugarKg, candySugarKg }, i) => {
    const colony = `colony-${keeper.hives[i]?.label}`;
    if (sugarKg > 0) put('feed', { colony, what: 'syrup', event: 'taken', sugarKg }, FED);
    if (candySugarKg > 0) put('feed', { colony, what: 'candy', event: 'taken', sugarKg: candySugarKg }, FED);
  });
  for (const { from, to, count, massKg, outKg } of later?.swaps ?? []) {
    const at = (colony: string) => ({ colony });
    put(
      'swap',
      { from: at(from), to: at(to), frame: 'deep', count, massKg, out: { frame: 'deep', count, to: at(from), massKg: outKg } },
      FED,
    );
  }
  later?.lifts.forEach((readings, k) => {
    readings.forEach(({ frontKg, rearKg }, i) => {
      const label = keeper.hives[i]?.label;
      put('weighing', { hive: `hive-${label}`, frontKg, rearKg, scale: 'hand', stepKg: 0.25 }, LIFT_DATES[k]);
      const sugarKg = later.candy[k]?.[i] ?? 0;
      if (sugarKg > 0) put('feed', { colony: `colony-${label}`, what: 'candy', event: 'taken', sugarKg }, LIFT_DATES[k]);
    });
  });
  return records;
}
