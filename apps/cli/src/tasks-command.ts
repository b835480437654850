import { bad, good, journalDigest, mites, plan, seasonTasks, yardSeasons } from '@winterheft/core';
import { calendarEvents, english } from '@winterheft/words';
import { CALENDAR_OPTIONS, calendarText } from './calendar-options.ts';
import * as contract from './contracts/tasks.ts';
import { journalCommand, leftOut } from './journal-command.ts';
import { tasksTable } from './print/tasks.ts';
import { loadedSolver } from './solver.ts';

export const tasksCommand = journalCommand({
  name: 'tasks',
  summary: 'a journal becomes the tasks of the year: the last day of each, the work it takes and the time left',
  contract,
  options: CALENDAR_OPTIONS,
  answer: async (asked) => {
    const { holding, journal, setting } = asked;
    const seasons = yardSeasons(holding, setting);
    if (!seasons.ok) return seasons;
    const planned = plan(holding, setting, { solve: await loadedSolver(), journalDigest: journalDigest(journal.records), shares: false });
    if (!planned.ok) return bad(planned.error);
    const counted = mites(holding, setting);
    const facts = { plan: planned.value, mites: counted.ok ? counted.value : null };
    const tasks = seasonTasks(holding, { today: setting.today, seasons: seasons.value, facts });
    return good({ today: setting.today, tasks, yards: seasons.value, ...leftOut(asked) });
  },
  text: ({ tasks, yards, today }, { holding }, options) =>
    calendarText(options, {
      name: yards.map(({ yardName }) => yardName).join(', '),
      day: today,
      events: () => calendarEvents({ seasons: yards, tasks, holding }, english),
    }),
  table: tasksTable,
});
