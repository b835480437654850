import type { Colony, Holding, Treatment } from '../holding/index.ts';
import { isoDateOf } from '../units/index.ts';

export type RecordFault = 'no-lot' | 'no-product' | 'still-in' | 'out-without-in' | 'overlap' | 'active-not-in-table';

/** A line of the book of treatments an inspector asks for. */
export interface TreatmentRecord {
  readonly yard: string;
  readonly colony: string;
  readonly label: string;
  readonly active: string;
  readonly product: string | null;
  readonly lot: string | null;
  readonly in: string | null;
  readonly out: string | null;
  readonly days: number | null;
  readonly faults: readonly RecordFault[];
  /** With `overlap`: the other active ingredient. */
  readonly overlaps: string | null;
}

/** Every treatment of every colony, ended ones too, by the day it went in. */
export function treatmentRecords(
  holding: Holding,
  of: { readonly today: number; readonly isKnown: (active: string) => boolean },
): TreatmentRecord[] {
  return [...holding.colonies.values()]
    .flatMap((colony) =>
      colony.treatments.map((one) => ({ line: recordOf(colony, one, { ...of, label: labelOf(holding, colony) }), day: dayOf(one) })),
    )
    .sort(
      (a, b) =>
        a.day - b.day || compare(a.line.yard, b.line.yard) || compare(a.line.label, b.line.label) || compare(a.line.active, b.line.active),
    )
    .map(({ line }) => line);
}

function recordOf(
  colony: Colony,
  one: Treatment,
  of: { today: number; label: string; isKnown: (active: string) => boolean },
): TreatmentRecord {
  const other = colony.treatments.find((two) => two !== one && overlap(one, two, of.today));
  const faults: RecordFault[] = [];
  if (one.in === null) faults.push('out-without-in');
  else {
    if (one.product === undefined) faults.push('no-product');
    if (one.lot === undefined) faults.push('no-lot');
    if (one.out === null) faults.push('still-in');
  }
  if (other !== undefined) faults.push('overlap');
  if (!of.isKnown(one.active)) faults.push('active-not-in-table');
  return {
    yard: colony.yard,
    colony: colony.id,
    label: of.label,
    active: one.active,
    product: one.product ?? null,
    lot: one.lot ?? null,
    in: one.in === null ? null : isoDateOf(one.in.day),
    out: one.out === null ? null : isoDateOf(one.out.day),
    days: one.in === null ? null : (one.out?.day ?? of.today) - one.in.day,
    faults,
    overlaps: other?.active ?? null,
  };
}

/** In the hive on the same days; one taken out on the day the other went in does not overlap. */
function overlap(a: Treatment, b: Treatment, today: number): boolean {
  if (a.in === null || b.in === null) return false;
  const end = (one: Treatment) => one.out?.day ?? Math.max(today, one.in!.day + 1);
  return a.in.day < end(b) && b.in.day < end(a);
}

function dayOf(one: Treatment): number {
  return (one.in ?? one.out)!.day;
}

export function labelOf(holding: Holding, colony: Colony): string {
  const hive = colony.hive ?? colony.stays.at(-1)?.hive;
  return (hive === undefined ? null : holding.hives.get(hive)?.label) ?? colony.id;
}

function compare(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
