import { keyOf, stratifiedUniforms } from '../chance/index.ts';
import { epochDayOfParts, partsOf } from '../units/index.ts';
import { winterYearOf, yearIndexOf } from './calendar.ts';
import type { OwnRecord } from './climate.ts';

interface Span {
  readonly seed: number;
  readonly entity: string;
  readonly fromDay: number;
  readonly toDay: number;
  readonly members: number;
}

/**
 * Members whose years are the winters of a record, each as often as any other, in an order of the seed's own.
 *
 * A span that reaches beyond what a winter of the record holds, or into a gap of its summer, takes the smooth curve there.
 *
 * meanC     [degC] smooth yearly curve, 365 values
 * returns   [degC] members x days
 */
export function ownYears(own: OwnRecord, meanC: Float64Array, span: Span): Float64Array {
  const { fromDay, toDay, members } = span;
  const days = toDay - fromDay + 1;
  const rows = own.winters.map((winter) => rowOf(own, meanC, { fromDay, days, yearsBack: winterYearOf(fromDay) - winter }));
  const place = stratifiedUniforms(keyOf(span.seed, 'own-winter', span.entity), members);
  const temps = new Float64Array(members * days);
  for (let member = 0; member < members; member++) temps.set(rows[Math.floor(place[member]! * rows.length)]!, member * days);
  return temps;
}

function rowOf(own: OwnRecord, meanC: Float64Array, of: { fromDay: number; days: number; yearsBack: number }): Float64Array {
  return Float64Array.from({ length: of.days }, (_, d) => {
    const day = of.fromDay + d;
    const { year, month, day: ofMonth } = partsOf(day);
    const there = epochDayOfParts(year - of.yearsBack, month, month === 2 && ofMonth === 29 ? 28 : ofMonth);
    const value = own.meanC[there - own.fromDay];
    return value === undefined || Number.isNaN(value) ? meanC[yearIndexOf(day)]! : value;
  });
}

/** Writes what happened over what was drawn: every member has the same past. */
export function setOwnDays(own: OwnRecord, temps: Float64Array, span: Pick<Span, 'fromDay' | 'toDay' | 'members'>): void {
  const { fromDay, toDay, members } = span;
  const days = toDay - fromDay + 1;
  for (let d = Math.max(0, Math.max(own.fromDay, own.happenedFromDay) - fromDay); d < days; d++) {
    const value = own.meanC[fromDay + d - own.fromDay];
    if (value === undefined) return;
    if (Number.isNaN(value)) continue;
    for (let member = 0; member < members; member++) temps[member * days + d] = value;
  }
}
