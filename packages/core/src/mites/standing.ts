import type { Colony, Holding } from '../holding/index.ts';
import type { BadInput } from '../result/index.ts';
import { mitesParameters } from '../tables/parameters-mites.gen.ts';
import { partsOf } from '../units/index.ts';
import { actsAfter, type WashGroup, washGroups } from './counts.ts';
import { betaGrid, type LevelGrid } from './level-grid.ts';
import { type LevelOnDay, levelOn } from './levels.ts';
import { levelsOnDay, type Projection, projectLevels, shareAbove } from './project.ts';
import { type BroodEnd, broodEnd, drawBroodEnd, type WinterBeeWindow, winterBeeWindow } from './window.ts';

/** What is known of a yard before any colony is looked at. */
export interface YardSeasonOfMites {
  readonly yard: string;
  readonly today: number;
  readonly seed: number;
  readonly members: number;
  readonly window: WinterBeeWindow;
  /** The day levels are judged for: the middle of the winter-bee weeks, also where it has passed. */
  readonly projectDay: number;
  readonly broodEnd: BroodEnd;
  readonly broodEndDays: Float64Array;
  readonly own: NonNullable<Holding['settings']['miteLevels']>;
}

export function yardSeasonOfMites(
  yard: { readonly id: string; readonly latDeg: number },
  of: { readonly holding: Holding; readonly today: number; readonly seed: number; readonly members: number },
): YardSeasonOfMites {
  const { today, seed, members, holding } = of;
  const { year: calendarYear, month } = partsOf(today);
  const year = month <= 2 ? calendarYear - 1 : calendarYear;
  const window = winterBeeWindow({ year, latDeg: yard.latDeg, ownLowByDayOfYear: holding.settings.mitesLowByDayOfYear });
  const end = broodEnd({ year, latDeg: yard.latDeg });
  return {
    yard: yard.id,
    today,
    seed,
    members,
    window,
    projectDay: window.middleDay,
    broodEnd: end,
    broodEndDays: drawBroodEnd(end, { seed, entity: yard.id, members }),
    own: holding.settings.miteLevels ?? [],
  };
}

export function broodOn(season: Pick<YardSeasonOfMites, 'broodEnd'>, day: number): 'brood' | 'little' {
  return day < season.broodEnd.day ? 'brood' : 'little';
}

export function levelOnDayOf(season: YardSeasonOfMites, day: number): LevelOnDay | null {
  return levelOn(day, { brood: broodOn(season, day), own: season.own });
}

/** A colony's level today and in the winter-bee weeks. */
export interface MiteStanding {
  readonly groups: readonly WashGroup[];
  readonly refused: readonly BadInput[];
  /** From the last washes on; null where nothing is known. */
  readonly projection: Projection | null;
  readonly now: Float64Array | null;
  readonly atWindow: Float64Array | null;
  readonly chanceAboveNowFrac: number | null;
  readonly chanceAboveWindowFrac: number | null;
  /** Chance to be above the warning level, that already raised winter loss, in the winter-bee weeks. */
  readonly chanceWarnWindowFrac: number | null;
}

const NOTHING_KNOWN = {
  projection: null,
  now: null,
  atWindow: null,
  chanceAboveNowFrac: null,
  chanceAboveWindowFrac: null,
  chanceWarnWindowFrac: null,
} as const;

/**
 * Where one colony stands: its last washes carried forward through growth, mites brought in and treatments recorded since.
 *
 * start    the belief about the level on `startDay`, where the yard's other washes know more than its own; left out: its own alone
 */
export function miteStanding(
  colony: Colony,
  season: YardSeasonOfMites,
  of: { readonly start?: { readonly grid: LevelGrid; readonly day: number } | undefined } = {},
): MiteStanding {
  const { groups, refused } = washGroups(colony, season.today);
  const last = groups.at(-1);
  const start =
    of.start ??
    (last === undefined ? null : { grid: betaGrid({ a: last.mites + 0.5, b: last.countedBees - last.mites + 0.5 }), day: last.day });
  if (start === null) return { ...NOTHING_KNOWN, groups, refused };
  const projection = projectLevels({
    start: start.grid,
    fromDay: start.day,
    toDay: Math.max(season.today, start.day, season.window.toDay),
    seed: season.seed,
    entity: colony.id,
    yard: season.yard,
    members: season.members,
    bees: mitesParameters.colonyBees.value,
    broodEndDays: season.broodEndDays,
    treatments: actsAfter(colony, { day: start.day, today: season.today, broodEndDay: season.broodEnd.day }),
  });
  const now = levelsOnDay(projection, season.today);
  // Washed only after the middle of those weeks: the first day known stands for it.
  const atWindow = levelsOnDay(projection, Math.max(season.projectDay, start.day));
  const [level, later] = [levelOnDayOf(season, season.today), levelOnDayOf(season, season.projectDay)];
  return {
    groups,
    refused,
    projection,
    now,
    atWindow,
    chanceAboveNowFrac: level === null ? null : shareAbove(now, level.treat),
    chanceAboveWindowFrac: later === null ? null : shareAbove(atWindow, later.treat),
    chanceWarnWindowFrac: later === null ? null : shareAbove(atWindow, later.warn),
  };
}
