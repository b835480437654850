import type { Colony, Fact, Holding, Treatment } from '../holding/index.ts';
import type { BadInput } from '../result/index.ts';
import { mitesParameters } from '../tables/parameters-mites.gen.ts';
import { epochDayOfParts, partsOf } from '../units/index.ts';
import type { TreatmentAct } from './project.ts';
import { effectRange, rowOfActive } from './treatments.ts';
import { washedBees } from './wash.ts';

/** Washes of one colony that count together. */
export interface WashGroup {
  readonly day: number;
  readonly mites: number;
  /** As washed. */
  readonly bees: number;
  /** As they count: a sugar roll's times the share of the mites it finds. */
  readonly countedBees: number;
  readonly washes: readonly Fact<'wash'>[];
}

/** First day of the mite year: from the first brood on, washes of the year before say nothing. */
export function miteYearStart(today: number): number {
  const { year, month } = partsOf(today);
  return epochDayOfParts(month <= 2 ? year - 1 : year, 3, 1);
}

/** Washes of the mite year in groups, oldest first: those a few days apart with no treatment between them are one sample. */
export function washGroups(
  colony: Colony,
  today: number,
): { readonly groups: readonly WashGroup[]; readonly refused: readonly BadInput[] } {
  const refused: BadInput[] = [];
  const groups: Fact<'wash'>[][] = [];
  for (const one of colony.washes) {
    if (one.day < miteYearStart(today) || one.day > today) continue;
    if (one.mites > one.bees) {
      refused.push({
        kind: 'out-of-range',
        field: `wash of ${one.at.date}: mites`,
        value: one.mites,
        unit: 'mites',
        low: 0,
        high: one.bees,
      });
      continue;
    }
    const last = groups.at(-1)?.at(-1);
    const together =
      last !== undefined && one.day - last.day <= mitesParameters.washTogetherDays.value && !touched(colony.treatments, last.day, one.day);
    if (together) groups.at(-1)!.push(one);
    else groups.push([one]);
  }
  return { groups: groups.map(groupOf), refused };
}

function groupOf(washes: Fact<'wash'>[]): WashGroup {
  const sum = (of: (wash: Fact<'wash'>) => number) => washes.reduce((total, wash) => total + of(wash), 0);
  return { day: washes.at(-1)!.day, mites: sum((w) => w.mites), bees: sum((w) => w.bees), countedBees: sum(washedBees), washes };
}

function touched(treatments: readonly Treatment[], from: number, to: number): boolean {
  return treatments.some((one) => [one.in?.day, one.out?.day].some((day) => day !== undefined && day >= from && day < to));
}

/** What the treatments recorded do to a level measured on a day: what went in before and is still in acts on for the rest of its time. */
export function actsAfter(
  colony: Colony,
  of: { readonly day: number; readonly today: number; readonly broodEndDay: number },
): TreatmentAct[] {
  return colony.treatments.flatMap((one) => {
    if (one.in === null) return [];
    const row = rowOfActive(one.active);
    const planned = one.in.day + (row?.durationDays ?? row?.durationHighDays ?? USUAL_DAYS);
    const toDay = Math.max(one.out?.day ?? Math.max(planned, of.today), one.in.day + 1);
    if (toDay <= of.day) return [];
    const effect = row === null ? { low: 0, high: 0.99 } : effectRange(row, { broodless: one.in.day >= of.broodEndDay });
    // Of a treatment already in at the wash only the days after it are left.
    const left = (toDay - Math.max(of.day, one.in.day)) / (toDay - one.in.day);
    const rest = (frac: number) => 1 - (1 - frac) ** left;
    return [{ fromDay: Math.max(of.day, one.in.day), toDay, effectLowFrac: rest(effect.low), effectHighFrac: rest(effect.high) }];
  });
}

/** Where neither the journal nor the table says how long it stays. */
const USUAL_DAYS = 42;

/** Boxes that supers have put on, from the last build. */
export function supersOn(holding: Holding, colony: Colony): boolean {
  const hive = colony.hive === null ? undefined : holding.hives.get(colony.hive);
  return (hive?.builds.at(-1)?.supers ?? 0) > 0;
}
