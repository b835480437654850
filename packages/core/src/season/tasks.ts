import type { Colony, Holding } from '../holding/index.ts';
import { limitsOf, rowOfActive } from '../mites/index.ts';
import { provisionParameters } from '../tables/parameters-provision.gen.ts';
import { seasonParameters } from '../tables/parameters-season.gen.ts';
import { watchParameters } from '../tables/parameters-watch.gen.ts';
import type { TaskRow } from '../tables/season.ts';
import { taskRows } from '../tables/tasks.gen.ts';
import { epochDayOf, epochDayOfParts, isoDateOf } from '../units/index.ts';
import { fixedDay, isSeasonDate, type LastDay, lastDayOf } from './day-cases.ts';
import type { SyrupTake } from './feed-days.ts';
import { feedDays } from './feed-days.ts';
import { contextOf, type TaskContext } from './task-context.ts';
import { saidOf } from './task-marks.ts';
import { lastLift, lastSign, miteDay, NEEDS, type TaskNeed } from './task-needs.ts';
import { finishTasks, type RawTask } from './task-state.ts';
import { type OpenTick, type SeasonTask, TASK_CODES, type TaskBinds, type TaskCode, type TaskFacts, type YearTask } from './task-types.ts';
import type { YardSeasonDates } from './yard-seasons.ts';

/**
 * What is to be done in every yard from June to May, worked back from the deadlines and from what the records say.
 *
 * A task is listed where a colony needs it or records of this winter have done it; tasks whose first day is still to come are
 * `waiting`. In the order of their last days, those without one last.
 *
 * seasons   from `yardSeasons` for the same day
 * facts     a plan and the mite pages for the same day; without them the tasks that rest on them are left out
 */
export function seasonTasks(
  holding: Holding,
  of: { readonly today: string; readonly seasons: readonly YardSeasonDates[]; readonly facts: TaskFacts },
): SeasonTask[] {
  const raw: RawTask[] = [];
  for (const season of of.seasons) {
    const context = contextOf(holding, { season, facts: of.facts, today: of.today });
    for (const code of TASK_CODES) {
      const task = yearTask(code, context);
      if (task !== null) raw.push(task);
    }
    for (const tick of of.facts.shut ?? []) if (tick.yard === season.yard) raw.push(tickTask(tick, context));
  }
  return finishTasks(raw, of.today);
}

function rowOf(code: YearTask): TaskRow {
  const row = taskRows.find((one) => one.code === code);
  if (row === undefined) throw new RangeError(`seasonTasks: data/tasks.csv has no row ${code}`);
  return row;
}

/** Open colonies less those the keeper has settled; how many are done, refused, put off. */
interface Standing {
  readonly open: readonly Colony[];
  readonly doneCount: number;
  readonly refused: number;
  readonly putOff: readonly number[];
}

function standingOf(need: TaskNeed, code: TaskCode, of: TaskContext): Standing {
  const said = saidOf(of.holding, { code, yard: of.season.yard, year: of.year, today: of.today });
  const subjects: readonly (Colony | null)[] = need.yard === true ? [null] : need.open;
  const open: Colony[] = [];
  const putOff: number[] = [];
  let [doneCount, refused] = [need.done, 0];
  for (const colony of subjects) {
    const word = said(colony?.id ?? null);
    if (word?.state === 'done' && !isRepeated(code)) doneCount += 1;
    else if (word?.state === 'not-this-year') refused += 1;
    else {
      if (word?.state === 'later') putOff.push(word.until);
      if (colony !== null) open.push(colony);
    }
  }
  return { open, doneCount, refused, putOff };
}

/** Work that comes back: a word that it is done holds until it is due again, not for the winter. */
function isRepeated(code: TaskCode): boolean {
  return code === 'winter-check' || code === 'lift' || code === 'wash';
}

function yearTask(code: YearTask, of: TaskContext): RawTask | null {
  const row = rowOf(code);
  const need = NEEDS[code](of);
  const standing = standingOf(need, code, of);
  const wanted = need.yard === true || need.open.length > 0;
  if (!wanted && need.done === 0) return null;
  const colonies = repeatedDue(code, standing.open, of);
  if (isRepeated(code) && colonies.length === 0 && need.done === 0 && standing.refused === 0) return null;
  const { last, binds } = lastOf(row, { code, colonies, need }, of);
  const moves = need.figures?.['frames'] ?? colonies.length;
  const work = code === 'swap' ? moves : code === 'get-sugar' || need.yard === true ? 1 : colonies.length;
  const isOpen = wanted && (need.yard === true ? standing.doneCount === need.done && standing.refused === 0 : colonies.length > 0);
  return {
    code,
    yard: of.season.yard,
    season: of.season,
    colonies: colonies.map(({ id }) => id),
    hives: colonies.flatMap(({ hive, stays }) => hive ?? stays.at(-1)?.hive ?? []),
    doneCount: standing.doneCount,
    refused: standing.refused,
    isOpen,
    putOffUntil: standing.putOff.length > 0 && standing.putOff.length >= Math.max(1, colonies.length) ? Math.min(...standing.putOff) : null,
    from: firstDay(row, code, colonies, of),
    last,
    binds,
    openAboveC: row.openAboveC,
    hoursNeeded: isOpen ? ((row.minutesYard ?? 0) + work * (row.minutesEach ?? 0)) / 60 : 0,
    enter: row.enter,
    source: row.source,
    mark: row.mark,
    figures: need.figures ?? {},
  };
}

/** Of the repeated tasks only the colonies that come due before the season for it ends. */
function repeatedDue(code: YearTask, open: readonly Colony[], of: TaskContext): readonly Colony[] {
  if (code !== 'winter-check' && code !== 'lift') return open;
  const end = code === 'lift' ? of.dayOf('firstForage') : of.dayOf('firstFlight');
  return open.filter((colony) => of.today <= end && repeatDay(code, colony, of) <= end);
}

/** The day on which a colony is due again; the first time at the end of the first span. */
function repeatDay(code: 'winter-check' | 'lift', colony: Colony, of: TaskContext): number {
  const said = saidOf(of.holding, { code, yard: of.season.yard, year: of.year, today: of.today })(colony.id);
  const word = said?.state === 'done' ? said.day : Number.NEGATIVE_INFINITY;
  const every = code === 'lift' ? watchParameters.oldLiftDays.value : seasonParameters.checkDays.value;
  const last = Math.max(code === 'lift' ? lastLift(of, colony) : lastSign(of, colony), word);
  return Math.max(last, monthDay(rowOf(code).from, of)) + Math.round(every);
}

/** A month and day inside this winter. */
function monthDay(text: string, of: Pick<TaskContext, 'year'>): number {
  const [month, day] = text.split('-').map(Number);
  return epochDayOfParts(month! >= 6 ? of.year : of.year + 1, month!, day!);
}

function firstDay(row: TaskRow, code: YearTask, colonies: readonly Colony[], of: TaskContext): string | null {
  const shift = row.fromDays ?? 0;
  if (isSeasonDate(row.from)) {
    const day = of.dayOf(row.from);
    return Number.isFinite(day) ? isoDateOf(day + shift) : null;
  }
  const fixed = monthDay(row.from, of) + shift;
  if (code !== 'weigh-again') return isoDateOf(fixed);
  const ids = new Set(colonies.map(({ id }) => id));
  const days = (of.facts.plan?.outlooks ?? [])
    .filter(({ colony }) => ids.has(colony))
    .flatMap(({ notes }) => notes.flatMap((note) => note.weighAgainOn ?? []));
  return days.sort()[0] ?? isoDateOf(fixed);
}

function lastOf(
  row: TaskRow,
  task: { readonly code: YearTask; readonly colonies: readonly Colony[]; readonly need: TaskNeed },
  of: TaskContext,
): { readonly last: LastDay; readonly binds: TaskBinds } {
  const shift = row.untilDays ?? 0;
  const { season } = of;
  if (isSeasonDate(row.until)) return { last: lastDayOf(season, row.until, shift), binds: row.until };
  const ripening = provisionParameters.ripeningDays.value;
  switch (row.until) {
    case 'weighing':
      return {
        last: lastDayOf(season, 'lastFeedingDay', -Math.round(ripening + seasonParameters.weighAheadDays.value)),
        binds: 'lastFeedingDay',
      };
    case 'feeding':
      return { last: lastDayOf(season, 'lastFeedingDay', shift - Math.round(ripening) - feedDays(takesOf(of))), binds: 'lastFeedingDay' };
    case 'check':
    case 'lift': {
      const code = row.until === 'lift' ? 'lift' : 'winter-check';
      const days = task.colonies.map((colony) => repeatDay(code, colony, of));
      return { last: fixedDay(days.length === 0 ? of.today : Math.min(...days)), binds: 'records' };
    }
    case 'mites':
      if (task.code === 'treat') return { last: lastDayOf(season, 'mitesLow'), binds: 'mitesLow' };
      if (task.code === 'end-treatment') return { last: fixedDay(stripsDay(task.colonies, of)), binds: 'mites' };
      return { last: fixedDay(epochDayOf(miteDay(of, 'wash', task.colonies))!), binds: 'mites' };
    default:
      return { last: fixedDay(monthDay(row.until, of) + shift), binds: 'fixed' };
  }
}

function takesOf(of: TaskContext): readonly SyrupTake[] {
  const bees = new Map((of.facts.plan?.outlooks ?? []).map((line) => [line.colony, line.bees]));
  return (of.facts.plan?.provision?.syrup ?? [])
    .filter(({ to }) => of.ids.has(to))
    .map(({ to, litres }) => ({ litres, bees: bees.get(to) ?? null }));
}

/** The day the first strips are to come out by the label, or by the table; where neither says, today. */
function stripsDay(colonies: readonly Colony[], of: TaskContext): number {
  const days = colonies.flatMap(({ treatments }) =>
    treatments.flatMap((one) => {
      if (one.in === null || one.out !== null) return [];
      const row = rowOfActive(one.active);
      const label = of.holding.settings.labels?.filter(({ key }) => key === row?.key).at(-1);
      const duration = row === null ? null : (limitsOf(row, label)?.durationDays ?? null);
      return duration === null ? [] : [one.in.day + duration];
    }),
  );
  return days.length === 0 ? of.today : Math.min(...days);
}

function tickTask(tick: OpenTick, of: TaskContext): RawTask {
  const need = { open: of.living.filter(({ id }) => tick.colonies.includes(id)), done: tick.doneCount };
  const standing = standingOf(need, tick.tick, of);
  return {
    code: tick.tick,
    yard: tick.yard,
    season: of.season,
    colonies: standing.open.map(({ id }) => id),
    hives: standing.open.flatMap(({ hive }) => hive ?? []),
    doneCount: standing.doneCount,
    refused: standing.refused,
    isOpen: standing.open.length > 0,
    putOffUntil: standing.putOff.length > 0 && standing.putOff.length >= standing.open.length ? Math.min(...standing.putOff) : null,
    from: tick.from,
    last: { odds: tick.lastDay, cases: tick.cases, noneIsTime: true },
    binds: 'shut',
    openAboveC: tick.openAboveC,
    hoursNeeded: (standing.open.length * tick.minutesEach) / 60,
    enter: 'shut',
    source: tick.source,
    mark: tick.mark,
    figures: {},
  };
}
