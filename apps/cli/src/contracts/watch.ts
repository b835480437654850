import * as z from 'zod';
import { input as planInput } from './plan.ts';

const date = z.iso.date();
const share = z.number().min(0).max(1);
const kg = (what: string) =>
  z.strictObject({ p5: z.number(), p50: z.number(), p95: z.number() }).describe(`${what} [kg] at 5, 50 and 95 %`);
const factor = z.strictObject({ median: z.number(), logSd: z.number() });
const end = date.nullable();

/** One line of a journal, as `plan` reads it. */
export const input = planInput;

const surprise = z.strictObject({
  day: z.number().describe('days since 1970-01-01'),
  which: z.enum(['lighter', 'heavier']),
  seenKg: z.number().describe('change of weight since autumn that was seen [kg]'),
  foreseenKg: kg('the change the cases had for that day'),
  chanceFrac: share.describe('chance of a reading as far off'),
});

const update = z.strictObject({
  effectiveCases: z.number().describe('cases that go on counting, as so many of equal weight'),
  trustFrac: share.describe('1: readings count as they say; below: they left too few cases and were given so much of their weight'),
  eatenKg: kg('eaten since the autumn round'),
  leftKg: z
    .strictObject({ p5: z.number(), p50: z.number(), p95: z.number(), mean: z.number(), sd: z.number() })
    .describe('held today, out of reach included [kg]'),
  runOut: z.strictObject({ p5: end, p50: end, p95: end }).describe('day the stores end; null: later than the run'),
  aliveFrac: share.describe('chance that its stores have lasted until today'),
  soonFrac: share.describe('chance to run out within the coming three weeks'),
  holdFrac: share.describe('chance to hold until the first dependable forage'),
  addKg: z.number().describe('stores missing today for the asked certainty [kg]; 0: none'),
  addNowKg: z.number().describe('stores missing today to hold until after the next lift [kg]; 0: none'),
  useKgPerDay: z.number().describe('use of the coming four weeks, middle case [kg/day]'),
  appetite: z.strictObject({ before: factor, after: factor }).describe('what it eats against the model, before and after what was seen'),
  appetiteSeen: z
    .strictObject({ logFactor: z.number(), logSd: z.number() })
    .nullable()
    .describe('what the surest reading says of it alone'),
  surprises: z.array(surprise),
});

const rescue = z.strictObject({
  storesKg: z.number().describe('stores missing until forage at the asked certainty [kg]'),
  slabsNow: z.number().describe('slabs of candy to lay on now, to hold until after the next lift'),
  slabs: z.number().describe('slabs until forage, if no later lift says otherwise'),
  slabKg: z.number().describe('sugar in one slab [kg]'),
  slabDays: z.number().describe('days one slab lasts'),
  by: date.describe('last day before one case in twenty has run out'),
  lidFromC: z.number().describe('daily high from which a lid may be lifted for some seconds [degC]'),
});

const line = z.strictObject({
  colony: z.string(),
  hive: z.string(),
  yard: z.string(),
  label: z.string(),
  update: update.nullable().describe('null where the hive was not weighed in autumn'),
  lastLifted: date.nullable(),
  scaleNowKg: kg('what both edges together should show now').nullable(),
  aliveFrac: share.nullable().describe('chance that its stores have lasted until today'),
  lifts: z
    .array(z.strictObject({ on: date, grossKg: z.number(), iceKg: z.number() }))
    .describe('weighings since autumn, and what of each may have been ice and snow [kg]'),
  empty: z.strictObject({ kg: z.number(), sdKg: z.number() }).nullable().describe('weight with no stores in it [kg]'),
  course: z.null().describe('only on the screen'),
  reasons: z.array(z.looseObject({ code: z.string() })).describe('why it is on the list'),
  acts: z
    .array(z.enum(['lift', 'tap-and-listen', 'clear-opening', 'read-frost', 'free-it-first', 'look-under-lid', 'give-candy', 'lift-again']))
    .describe('what to do, all from outside but the candy'),
  rescue: rescue.nullable(),
  refused: z.array(z.looseObject({ code: z.string(), on: date })).describe('weighings of winter that were not used, and why'),
});

export const output = z.strictObject({
  today: date.describe('the day it was made for'),
  autumnDay: date.nullable().describe('last day of the autumn round; null: nothing was weighed'),
  lines: z.array(line).describe('in the order of urgency'),
  certaintyFrac: share.describe('certainty asked for'),
  made: z.strictObject({ seed: z.number(), members: z.number() }).describe('what it was made from'),
  unread: z.looseObject({ lines: z.number() }).describe('lines of the journal that were not read, by reason'),
  later: z.number().describe('records dated after today, not used'),
});

export const example = 'npx winterheft watch demo/journal.jsonl --today 2027-02-20 --members 300 --units ca';
