import { seasonParameters } from '../tables/parameters-season.gen.ts';
import type { Mark } from '../tables/types.ts';
import { epochDayOf, isoDateOf } from '../units/index.ts';
import { type LastDay, stillTimeFrac } from './day-cases.ts';
import type { SeasonTask, TaskBinds, TaskCode, TaskState } from './task-types.ts';
import { fitDay, type YardSeasonDates } from './yard-seasons.ts';

/** A task before it is measured against the days left. */
export interface RawTask {
  readonly code: TaskCode;
  readonly yard: string;
  readonly season: YardSeasonDates;
  readonly colonies: readonly string[];
  readonly hives: readonly string[];
  readonly doneCount: number;
  readonly refused: number;
  readonly isOpen: boolean;
  readonly putOffUntil: number | null;
  readonly from: string | null;
  readonly last: LastDay;
  readonly binds: TaskBinds;
  readonly openAboveC: number | null;
  readonly hoursNeeded: number;
  readonly enter: string | null;
  readonly source: string;
  readonly mark: Mark;
  readonly figures: Readonly<Record<string, number>>;
}

/**
 * Measures every task against the days left and puts them in order.
 *
 * One keeper does them all: a task has what the days until its last one give, less what tasks want whose last day comes earlier but
 * not before this one can begin. Days with another limit of warmth are counted as if they were the same days, so with many tasks
 * the slack is rather too small. What has been over for a month is left out.
 */
export function finishTasks(raw: readonly RawTask[], today: string): SeasonTask[] {
  const order = [...raw].sort((a, b) => compare(lastText(a), lastText(b)) || compare(a.code, b.code) || compare(a.yard, b.yard));
  const before: { readonly last: string; readonly hours: number }[] = [];
  return order.flatMap((task) => {
    const from = task.from !== null && task.from > today ? task.from : today;
    const hoursBefore = before.reduce((sum, { last, hours }) => (last >= from ? sum + hours : sum), 0);
    const finished = finish(task, { today, hoursBefore });
    if (isToDo(finished.state)) before.push({ last: finished.state === 'late' ? today : lastText(task), hours: task.hoursNeeded });
    return finished.state === 'over' && finished.lateDays > seasonParameters.overShownDays.value ? [] : [finished];
  });
}

const lastText = (task: RawTask) => task.last.odds.p50 ?? (task.last.noneIsTime ? '9999' : '0000');
const compare = (a: string, b: string) => (a < b ? -1 : a > b ? 1 : 0);
const isToDo = (state: TaskState) => state === 'waiting' || state === 'open' || state === 'tight' || state === 'late';
const tenth = (value: number) => Math.round(value * 10) / 10;

function finish(task: RawTask, of: { readonly today: string; readonly hoursBefore: number }): SeasonTask {
  const { today } = of;
  const { odds } = task.last;
  const chance = stillTimeFrac(task.last, today);
  const daysLeft = odds.p50 === null ? null : epochDayOf(odds.p50)! - epochDayOf(today)!;
  const left = timeLeft(task, today);
  const slackHours = tenth(left.hours - task.hoursNeeded - of.hoursBefore);
  return {
    id: `${task.code}.${task.yard}`,
    code: task.code,
    yard: task.yard,
    colonies: task.colonies,
    hives: task.hives,
    doneCount: task.doneCount,
    state: stateOf(task, { today, chance, slackHours }),
    from: task.from,
    lastDay: odds,
    cases: task.last.cases,
    binds: task.binds,
    stillTimeFrac: chance,
    daysLeft,
    lateDays: task.isOpen && daysLeft !== null ? Math.max(0, -daysLeft) : 0,
    openAboveC: task.openAboveC,
    hoursNeeded: tenth(task.hoursNeeded),
    workDaysLeft: tenth(left.days),
    hoursLeft: tenth(left.hours),
    hoursBefore: tenth(of.hoursBefore),
    slackHours,
    putOffUntil: task.putOffUntil === null ? null : isoDateOf(task.putOffUntil),
    enter: task.enter,
    source: task.source,
    mark: task.mark,
    figures: task.figures,
  };
}

/** Expected fit days and hours from today, or the first day, to the last day half the years allow. */
function timeLeft(task: RawTask, today: string): { readonly days: number; readonly hours: number } {
  const last = task.last.odds.p50;
  const from = task.from !== null && task.from > today ? task.from : today;
  let [days, hours] = [0, 0];
  if (last === null && !task.last.noneIsTime) return { days, hours };
  for (const day of task.season.days) {
    if (day.date < from) continue;
    if (last !== null && day.date > last) break;
    const fit = fitDay(day, task.openAboveC);
    days += fit.chanceFrac;
    hours += fit.hours;
  }
  return { days, hours };
}

function stateOf(task: RawTask, of: { readonly today: string; readonly chance: number; readonly slackHours: number }): TaskState {
  const { today } = of;
  if (!task.isOpen) return task.refused > 0 && task.doneCount === 0 ? 'not-this-year' : 'done';
  const { p50, p90 } = task.last.odds;
  const isPast = (date: string | null) => (date === null ? !task.last.noneIsTime : date < today);
  const comesBack = task.binds === 'records' || task.binds === 'mites';
  if (isPast(p90) && !comesBack) return 'over';
  if (task.putOffUntil !== null) return 'put-off';
  if (task.from !== null && task.from > today) return 'waiting';
  if (isPast(p50)) return 'late';
  return of.chance < seasonParameters.tightFrac.value || of.slackHours < 0 ? 'tight' : 'open';
}
