import { monthOfIndex, yearIndexOf } from '../weather/index.ts';
import type { TreatmentLimits } from './treatments.ts';

/** Drawn weather of a yard with the end of its brood. */
export interface YardDays {
  /** Daily means [degC], members x days. */
  readonly tempsC: Float64Array;
  readonly fromDay: number;
  readonly days: number;
  readonly members: number;
  /** Mean daily maximum minus minimum by month, from January [degC]. */
  readonly rangeC: readonly number[];
  readonly broodEndDays: Float64Array;
}

/** A start far from the end of the draw, so that every day of its own span is in it. */
const LONGEST_LOOK_DAYS = 60;

/**
 * Chance that a treatment started on a day keeps its limits, day by day from the first day of the draw.
 *
 * A limit by daily high holds on the day it goes in, and what does harm must not come in the first days; a limit by daily mean holds for
 * the mean of the days it is in. A limit without brood wants the brood to have ended.
 *
 * returns     [0 to 1] one value per day, as many as lie at least the treatment's span before the end of the draw
 * equation    share of the drawn years in which all limits hold; a day's high is its mean and half the month's usual range, so
 *             single days are hotter than that
 * checked     mites-treatments.test.ts
 */
export function startChances(yard: YardDays, limits: TreatmentLimits): Float64Array {
  const { days, members, fromDay, tempsC, rangeC } = yard;
  const span = Math.min(
    LONGEST_LOOK_DAYS,
    Math.max(1, limits.tempBasis === 'day-mean' ? (limits.durationDays ?? 1) : (limits.stopDays ?? 1)),
  );
  const count = Math.max(0, days - span + 1);
  const halfRange = Float64Array.from({ length: days }, (_, d) => rangeC[monthOfIndex(yearIndexOf(fromDay + d))]! / 2);
  const chances = new Float64Array(count);
  const low = limits.tempLowC ?? Number.NEGATIVE_INFINITY;
  const high = limits.tempHighC ?? Number.POSITIVE_INFINITY;
  const stop = limits.stopHighC ?? Number.POSITIVE_INFINITY;
  for (let member = 0; member < members; member++) {
    const row = member * days;
    for (let d = 0; d < count; d++) {
      if (limits.broodless && fromDay + d < yard.broodEndDays[member]!) continue;
      if (!withinTemps(d)) continue;
      chances[d]! += 1 / members;
    }
    function withinTemps(d: number): boolean {
      if (limits.tempBasis === 'day-mean') {
        let sum = 0;
        for (let k = 0; k < span; k++) sum += tempsC[row + d + k]!;
        return sum / span >= low && sum / span <= high && holdsOff(d);
      }
      if (limits.tempBasis === 'none') return holdsOff(d);
      const top = tempsC[row + d]! + halfRange[d]!;
      return top >= low && top <= high && holdsOff(d);
    }
    function holdsOff(d: number): boolean {
      for (let k = 0; k < Math.min(span, limits.stopDays ?? 0); k++) if (tempsC[row + d + k]! + halfRange[d + k]! > stop) return false;
      return true;
    }
  }
  return chances;
}
