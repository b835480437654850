import { keyOf, normalAt, normalQuantile } from '../chance/index.ts';
import { mitesParameters } from '../tables/parameters-mites.gen.ts';
import { dayOfYearIn } from './levels.ts';

/** When the bees of the winter are reared in a year at a latitude, as epoch days. */
export interface WinterBeeWindow {
  /** Mites have to be low by then. */
  readonly lowByDay: number;
  readonly fromDay: number;
  readonly toDay: number;
  /** The day levels are projected to: the middle of the window. */
  readonly middleDay: number;
  /** Outside the latitudes for which dates were read: the nearest one's. */
  readonly extrapolated: boolean;
}

/**
 * When mites must be low, and when the winter bees are reared.
 *
 * Dates of a maritime climate are later (57 degrees on the Baltic: mid-August to early September); a province may name an earlier one
 * (Quebec: early August). The keeper's own day of the year overrules.
 *
 * equation    straight lines between 43, 50 and 61 degrees north, the nearest beyond
 * source      [otis-winter-bees] at 50 and 43 degrees, [north-of-60-brood] reasoned
 * checked     checks/mites.ts
 */
export function winterBeeWindow(of: {
  readonly year: number;
  readonly latDeg: number;
  readonly ownLowByDayOfYear?: number | undefined;
}): WinterBeeWindow {
  const p = mitesParameters;
  const points = [
    [p.lowByLatSouthDeg.value, p.lowBySouthDayOfYear.value],
    [p.lowByLatMidDeg.value, p.lowByMidDayOfYear.value],
    [p.lowByLatNorthDeg.value, p.lowByNorthDayOfYear.value],
  ] as const;
  const lowByDay = dayOfYearIn(of.year, of.ownLowByDayOfYear ?? between(points, of.latDeg));
  const fromDay = lowByDay + Math.round(p.winterBeesFromAfterDays.value);
  const toDay = lowByDay + Math.round(p.winterBeesToAfterDays.value);
  const outside = of.latDeg < points[0][0] - 1 || of.latDeg > points[2][0] + 1;
  return {
    lowByDay,
    fromDay,
    toDay,
    middleDay: Math.round((fromDay + toDay) / 2),
    extrapolated: outside && of.ownLowByDayOfYear === undefined,
  };
}

/** Straight between the points, level beyond the first and last. */
function between(points: readonly (readonly [number, number])[], x: number): number {
  if (x <= points[0]![0]) return points[0]![1];
  for (let i = 1; i < points.length; i++) {
    const [x0, y0] = points[i - 1]!;
    const [x1, y1] = points[i]!;
    if (x <= x1) return y0 + ((y1 - y0) * (x - x0)) / (x1 - x0);
  }
  return points.at(-1)![1];
}

export interface BroodEnd {
  /** Middle and standard deviation of the first day without brood [epoch day, d]. */
  readonly day: number;
  readonly sdDays: number;
}

/**
 * First day without brood in a year at a latitude.
 *
 * source      [usda-brood-calendar] in the south, [north-of-60-brood] in the north, straight between; a look at the combs beats it
 */
export function broodEnd(of: { readonly year: number; readonly latDeg: number }): BroodEnd {
  const p = mitesParameters;
  const along = (pick: (row: { value: number; low: number; high: number }) => number) =>
    between(
      [
        [p.lowByLatSouthDeg.value, pick(p.broodEndSouthDayOfYear)],
        [p.lowByLatNorthDeg.value, pick(p.broodEndNorthDayOfYear)],
      ],
      of.latDeg,
    );
  const sd = (row: { low: number; high: number }) => (row.high - row.low) / (2 * normalQuantile(0.95));
  return {
    day: dayOfYearIn(
      of.year,
      along((row) => row.value),
    ),
    sdDays: along(sd),
  };
}

/** First day without brood by member, one draw per yard. */
export function drawBroodEnd(
  end: BroodEnd,
  of: { readonly seed: number; readonly entity: string; readonly members: number },
): Float64Array {
  const key = keyOf(of.seed, 'brood-end', of.entity);
  return Float64Array.from({ length: of.members }, (_, member) => Math.round(end.day + end.sdDays * normalAt(key, member, 0)));
}
