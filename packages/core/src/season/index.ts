export { type CalendarEvent, calendarFile } from './calendar.ts';
export { lastDayOf } from './day-cases.ts';
export { type SeasonAnswer, type SeasonInput, season } from './season.ts';
export { requeenDay, SEASON_DATES, type SeasonDate, type SeasonNote, seasonOdds, siteSeason } from './site-dates.ts';
export { queenOf, type SizeAnswer, sizeOf } from './sizes.ts';
export { type TaskRecord, taskRecord } from './task-marks.ts';
export {
  type DayCases,
  type OpenTick,
  type SeasonTask,
  TASK_CODES,
  type TaskCode,
  type TaskFacts,
  type TaskState,
} from './task-types.ts';
export { seasonTasks } from './tasks.ts';
export { type YardDay, type YardSeasonDates, yardSeasons } from './yard-seasons.ts';
export { type YardSpring, yardSpring } from './yard-spring.ts';
export { type YearRow, yearRows } from './year-rows.ts';
