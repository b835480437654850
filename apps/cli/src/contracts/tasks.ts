import { SEASON_DATES, type SeasonTask, TASK_CODES } from '@winterheft/core';
import * as z from 'zod';
import { input as planInput } from './plan.ts';

const date = z.iso.date();
const odds = z.strictObject({
  p10: date.nullable().describe('one year in ten has it by then; null: that share has none'),
  p50: date.nullable().describe('half of the years'),
  p90: date.nullable().describe('nine years in ten'),
});
const cases = z.array(date.nullable()).describe('twenty days of equal chance, earliest first; null: that case has none');

/** One line of a journal, as `plan` reads it. */
export const input = planInput;

const states = [
  'waiting',
  'open',
  'tight',
  'late',
  'over',
  'done',
  'not-this-year',
  'put-off',
] as const satisfies readonly SeasonTask['state'][];

const task = z.strictObject({
  id: z.string().describe('code and yard: the same in every answer of a winter'),
  code: z.string().describe(`what: ${TASK_CODES.join(', ')}, or a tick of shutting up`),
  yard: z.string(),
  colonies: z.array(z.string()).describe('where it is still to do; empty for work of the yard'),
  hives: z.array(z.string()),
  doneCount: z.number().int().describe('colonies where it is done'),
  state: z.enum(states),
  from: date.nullable().describe('first day; null: at once'),
  lastDay: odds.describe('last day on which it does its work'),
  cases,
  binds: z.string().describe('what the last day is worked back from'),
  stillTimeFrac: z.number().min(0).max(1).describe('chance that today is not yet too late'),
  daysLeft: z.number().int().nullable().describe('calendar days to the last day of half the years; below 0: late; null: no day binds'),
  lateDays: z.number().int().min(0),
  openAboveC: z.number().nullable().describe('afternoon it wants [°C]; null: any'),
  hoursNeeded: z.number().describe("the keeper's work for what is still to do [h]"),
  workDaysLeft: z.number().describe('days until then that are warm enough, as the climate has them'),
  hoursLeft: z.number().describe('hours in them: warm daylight, at most what a keeper gives a day [h]'),
  hoursBefore: z.number().describe('work of tasks with an earlier last day in the same time [h]'),
  slackHours: z.number().describe('hoursLeft less hoursNeeded and hoursBefore [h]'),
  putOffUntil: date.nullable(),
  enter: z.string().nullable().describe('where the record that finishes it is written; null: only a task record does'),
  source: z.string(),
  mark: z.string(),
  figures: z.record(z.string(), z.number()).describe('litres, kilograms, counts'),
});

const yard = z.strictObject({
  yard: z.string(),
  yardName: z.string(),
  latDeg: z.number(),
  lonDeg: z.number(),
  year: z.number().int().describe('first year of the winter'),
  climate: z.strictObject({ name: z.string(), notes: z.array(z.looseObject({ code: z.string() })) }),
  dates: z.strictObject(Object.fromEntries(SEASON_DATES.map((name) => [name, odds]))),
  cases: z.strictObject(Object.fromEntries(SEASON_DATES.map((name) => [name, cases]))),
  days: z
    .array(
      z.strictObject({
        date,
        afternoonsC: z.array(z.number()).describe('twenty afternoons of equal chance, coldest first [°C]: drawn years, no forecast'),
        rangeC: z.number().describe('mean daily maximum less minimum [°C]'),
        daylightHours: z.number(),
      }),
    )
    .describe('days ahead'),
  own: z
    .array(z.strictObject({ name: z.string(), date, from: z.enum(['setting', 'bloom']), plant: z.string().optional() }))
    .describe("the keeper's own dates that count this winter"),
  refused: z.array(z.looseObject({ kind: z.string() })).describe('own dates that cannot be'),
  learnt: z
    .strictObject({
      firstPollen: z.strictObject({ springs: z.number().int(), shiftCd: z.number() }),
      firstForage: z.strictObject({ springs: z.number().int(), shiftCd: z.number() }),
    })
    .nullable()
    .describe('how far own blooms of earlier springs moved the heat sums [°C d]'),
  notes: z.array(z.enum(['no-frost', 'no-winter', 'window-extrapolated', 'polar-circle'])),
});

export const output = z.strictObject({
  today: date.describe('the day it was made for'),
  tasks: z.array(task).describe('in the order of their last days'),
  yards: z.array(yard).describe('the dates of this winter by yard'),
  unread: z.looseObject({ lines: z.number().int() }).describe('lines of the journal that could not be read'),
  later: z.number().int().describe('records dated after today, not used'),
});

export const example = 'npx winterheft tasks demo/journal.jsonl --today 2026-09-18 --members 200';
