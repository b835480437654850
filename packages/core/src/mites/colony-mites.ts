import { keyOf, uniformAt } from '../chance/index.ts';
import type { Colony, Holding } from '../holding/index.ts';
import { mitesParameters } from '../tables/parameters-mites.gen.ts';
import { isoDateOf } from '../units/index.ts';
import type { ColonyMites, LevelRange, WashPost } from './answer-types.ts';
import { boardCount } from './board.ts';
import { miteYearStart, supersOn, type WashGroup, washGroups } from './counts.ts';
import { dueAt } from './due.ts';
import { type LevelGrid, levelAt } from './level-grid.ts';
import { winterLoss } from './loss.ts';
import { poolYard } from './pool.ts';
import { levelsOnDay, type Projection, shareAbove, shareAt } from './project.ts';
import { clopperPearson } from './proportion.ts';
import { broodOn, levelOnDayOf, type MiteStanding, miteStanding, type YardSeasonOfMites } from './standing.ts';
import { effectRange, treatmentRows } from './treatments.ts';
import { recoveryOf } from './wash.ts';

interface Start {
  readonly grid: LevelGrid;
  readonly day: number;
}

/**
 * Beliefs to start from: the last washes of the yard's colonies, pooled where they lie within a month of the newest.
 *
 * A colony not washed starts on the middle day of those washes. Older washes stand alone.
 */
export function startsOf(
  colonies: readonly Colony[],
  today: number,
): { readonly byColony: ReadonlyMap<string, Start>; readonly other: Start | undefined; readonly mean: LevelGrid | null } {
  const last = colonies.flatMap((colony) => {
    const group = washGroups(colony, today).groups.at(-1);
    return group === undefined ? [] : [{ id: colony.id, group }];
  });
  if (last.length === 0) return { byColony: new Map(), other: undefined, mean: null };
  const newest = Math.max(...last.map(({ group }) => group.day));
  const recent = last.filter(({ group }) => newest - group.day <= mitesParameters.washGoodDays.value);
  const pooled = poolYard(recent.map(({ id, group }) => ({ id, mites: group.mites, bees: group.countedBees })));
  const days = recent.map(({ group }) => group.day).sort((a, b) => a - b);
  return {
    byColony: new Map(recent.map(({ id, group }) => [id, { grid: pooled.washed.get(id)!, day: group.day }])),
    other: { grid: pooled.notWashed, day: days[days.length >> 1]! },
    mean: pooled.mean,
  };
}

/** Everything about one colony's mites. */
export function colonyMites(
  colony: Colony,
  of: { readonly season: YardSeasonOfMites; readonly holding: Holding; readonly label: string; readonly start: Start | undefined },
): ColonyMites {
  const { season, holding } = of;
  const own = washGroups(colony, season.today).groups.length > 0;
  const standing = miteStanding(colony, season, { start: of.start });
  const level = levelOnDayOf(season, season.today);
  const due = dueAt(colony, standing, season);
  const chance = standing.chanceAboveWindowFrac;
  return {
    colony: colony.id,
    hive: colony.hive,
    yard: season.yard,
    label: of.label,
    washes: standing.groups.map(postOf),
    boards: boardsOf(colony, season),
    basis: own ? 'own' : standing.projection === null ? 'nothing' : 'yard',
    now: standing.now === null ? null : rangeOf(standing.now),
    atWindow: standing.atWindow === null ? null : rangeOf(standing.atWindow),
    chanceWarnNowFrac: standing.now === null || level === null ? null : shareAbove(standing.now, level.warn),
    chanceAboveNowFrac: standing.chanceAboveNowFrac,
    chanceAboveWindowFrac: chance,
    chancesIn20: chance === null ? null : Math.round(20 * chance),
    cases: standing.atWindow === null ? null : Array.from({ length: 20 }, (_, i) => shareAt(standing.atWindow!, (i + 0.5) / 20)),
    fan: standing.projection === null ? null : fanOf(standing.projection),
    due,
    ifTreated: due.some(({ what }) => what === 'treat' || what === 'wash-again') ? treatedLevels(colony, standing, season) : [],
    supersOn: supersOn(holding, colony),
    winterLoss: standing.chanceWarnWindowFrac === null ? null : winterLoss(standing.chanceWarnWindowFrac),
    refused: standing.refused,
  };
}

function postOf(group: WashGroup): WashPost {
  const { low, high } = clopperPearson(group.mites, group.bees, mitesParameters.washCertaintyFrac.value);
  const isSugar = group.washes.some(({ method }) => method === 'sugar');
  const recovery = recoveryOf(isSugar ? 'sugar' : undefined);
  return {
    date: isoDateOf(group.day),
    mites: group.mites,
    bees: group.bees,
    methods: [...new Set(group.washes.map(({ method }) => method))],
    rateFrac: group.mites / group.countedBees,
    lowFrac: low / recovery.high,
    highFrac: Math.min(1, high / recovery.low),
    enoughBees: group.bees >= mitesParameters.leastBees.value,
  };
}

function boardsOf(colony: Colony, season: YardSeasonOfMites): ColonyMites['boards'] {
  return colony.boards.flatMap((one) => {
    if (one.day < miteYearStart(season.today)) return [];
    const answer = boardCount({ date: isoDateOf(one.day), mites: one.mites, days: one.days, brood: broodOn(season, one.day) });
    return answer.ok ? [{ ...answer.value, date: isoDateOf(one.day), mites: one.mites, days: one.days }] : [];
  });
}

/** What is left in the winter-bee weeks where a treatment of known effect begins now; growth after it is as without it. */
function treatedLevels(colony: Colony, standing: MiteStanding, season: YardSeasonOfMites): ColonyMites['ifTreated'] {
  const level = levelOnDayOf(season, season.projectDay);
  if (standing.atWindow === null || level === null || season.today >= season.projectDay) return [];
  const key = keyOf(season.seed, 'mites-if-treated', colony.id);
  const broodless = broodOn(season, season.today) === 'little';
  return treatmentRows().flatMap((row) => {
    const effect = effectRange(row, { broodless });
    if (!effect.known || row.use !== 'DEFAULT') return [];
    const left = standing.atWindow!.map((was, member) => was * (1 - effect.low - uniformAt(key, member, 0) * (effect.high - effect.low)));
    return [{ key: row.key, chanceAboveWindowFrac: shareAbove(left.sort(), level.treat) }];
  });
}

/** Days between the points of the fan. */
const FAN_STEP_DAYS = 3;

function fanOf(projection: Projection): NonNullable<ColonyMites['fan']> {
  const points = Array.from({ length: Math.ceil(projection.days / FAN_STEP_DAYS) }, (_, i) =>
    rangeOf(levelsOnDay(projection, projection.fromDay + i * FAN_STEP_DAYS)),
  );
  return {
    from: isoDateOf(projection.fromDay),
    stepDays: FAN_STEP_DAYS,
    p5: points.map(({ p5 }) => p5),
    p50: points.map(({ p50 }) => p50),
    p95: points.map(({ p95 }) => p95),
  };
}

function rangeOf(sorted: Float64Array): LevelRange {
  return { p5: shareAt(sorted, 0.05), p50: shareAt(sorted, 0.5), p95: shareAt(sorted, 0.95) };
}

export function rangeOfGrid(grid: LevelGrid): LevelRange {
  return { p5: levelAt(grid, 0.05), p50: levelAt(grid, 0.5), p95: levelAt(grid, 0.95) };
}
