import type { Holding } from '../holding/index.ts';
import { seasonParameters } from '../tables/parameters-season.gen.ts';
import { epochDayOf, epochDayOfParts, isoDateOf } from '../units/index.ts';
import type { SeasonTask, TaskCode } from './task-types.ts';

/** What the keeper has said of one task at one colony, or of the yard's. */
export type TaskSaid =
  | { readonly state: 'done'; readonly day: number }
  | { readonly state: 'not-this-year'; readonly day: number }
  | { readonly state: 'later'; readonly day: number; readonly until: number };

/**
 * The last word on a task of this winter: one that names the colony, or one for the whole yard or all yards.
 *
 * returns   null where nothing was said, or it was put off to a day that has come
 */
export function saidOf(
  holding: Holding,
  of: { readonly code: TaskCode; readonly yard: string; readonly year: number; readonly today: number },
): (subject: string | null) => TaskSaid | null {
  const { code, yard, year, today } = of;
  const [from, to] = [epochDayOfParts(year, 6, 1), epochDayOfParts(year + 1, 5, 31)];
  const marks = holding.tasks.filter(
    (mark) => mark.task === code && (mark.yard === yard || mark.yard === '*') && mark.day >= from && mark.day <= Math.min(to, today),
  );
  return (subject) => {
    const mark = marks.filter(({ subjects }) => subjects === undefined || (subject !== null && subjects.includes(subject))).at(-1);
    if (mark === undefined) return null;
    if (mark.state !== 'later') return { state: mark.state, day: mark.day };
    const until = mark.until === undefined ? mark.day + Math.round(seasonParameters.putOffDays.value) : epochDayOf(mark.until)!;
    return until > today ? { state: 'later', day: mark.day, until } : null;
  };
}

/** The record by which a keeper says done, not this year, or later. */
export interface TaskRecord {
  readonly yard: string;
  readonly kind: 'task';
  readonly body: {
    readonly task: TaskCode;
    readonly state: 'done' | 'not-this-year' | 'later';
    readonly subjects?: readonly string[];
    readonly until?: string;
  };
}

/** The record of an action on a task's row; undone by striking it. `until` only with `later`: the day it comes back. */
export function taskRecord(
  task: Pick<SeasonTask, 'code' | 'yard' | 'colonies'>,
  act: 'done' | 'not-this-year' | 'later',
  until?: number,
): TaskRecord {
  return {
    yard: task.yard,
    kind: 'task',
    body: {
      task: task.code,
      state: act,
      ...(task.colonies.length === 0 ? {} : { subjects: task.colonies }),
      ...(act === 'later' && until !== undefined ? { until: isoDateOf(until) } : {}),
    },
  };
}
