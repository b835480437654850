import type { SeasonTask, YardSeasonDates } from '@winterheft/core';
import { dayMonth, shortened } from '@winterheft/words';
import type { View } from '../command.ts';
import { paragraph, table } from './layout.ts';

const YARD_COLUMNS = 12;
const TASK_COLUMNS = 34;

interface Shown {
  readonly today: string;
  readonly tasks: readonly SeasonTask[];
  readonly yards: readonly YardSeasonDates[];
  readonly unread: { readonly lines: number };
  readonly later: number;
}

const SETTLED: readonly SeasonTask['state'][] = ['done', 'not-this-year', 'over'];

/** What is to be done first, then what is settled; every line with its last day and its time. */
export function tasksTable(answer: Shown, view: View): string {
  const w = view.words.season;
  const open = answer.tasks.filter(({ state }) => !SETTLED.includes(state));
  const settled = answer.tasks.filter(({ state }) => SETTLED.includes(state));
  const notes = new Set(answer.yards.flatMap((yard) => yard.notes));
  return [
    open.length === 0 ? w.noTasks : rows(open, answer, view),
    ...(settled.length === 0 ? [] : ['', rows(settled, answer, view)]),
    '',
    ...answer.yards.flatMap(({ learnt }) =>
      learnt === null ? [] : [paragraph(w.bloomsLearnt(Math.max(learnt.firstForage.springs, learnt.firstPollen.springs)))],
    ),
    ...[...notes].map((note) => paragraph(w.notes[note])),
    ...answer.yards.flatMap(({ refused }) => refused.map((fault) => paragraph(view.words.faultSentence(fault)))),
    ...(answer.unread.lines === 0 ? [] : [paragraph(view.words.plan.unread(answer.unread.lines))]),
    ...(answer.later === 0 ? [] : [paragraph(view.words.plan.later(answer.later, dayMonth(answer.today, true)))]),
  ].join('\n');
}

function rows(tasks: readonly SeasonTask[], answer: Shown, { words }: View): string {
  const w = words.season;
  const names = new Map(answer.yards.map(({ yard, yardName }) => [yard, yardName]));
  const several = names.size > 1;
  const day = (iso: string | null) => (iso === null ? w.none : dayMonth(iso));
  return table(
    [
      { head: w.task },
      ...(several ? [{ head: w.yard }] : []),
      { head: w.where, align: 'right' as const },
      { head: w.lastDay },
      { head: w.range },
      { head: w.need, align: 'right' as const },
      { head: w.state },
    ],
    tasks.map((task) => [
      shortened(w.tasks[task.code].name, TASK_COLUMNS),
      ...(several ? [shortened(names.get(task.yard) ?? task.yard, YARD_COLUMNS)] : []),
      task.colonies.length === 0 ? '' : String(task.colonies.length),
      day(task.lastDay.p50),
      task.lastDay.p10 === task.lastDay.p90 ? '' : `${day(task.lastDay.p10)} - ${day(task.lastDay.p90)}`,
      task.hoursNeeded === 0 ? '' : w.hours(task.hoursNeeded, Math.max(0, task.hoursLeft - task.hoursBefore)),
      w.states[task.state],
    ]),
  );
}
