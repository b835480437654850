import * as z from 'zod';
import { input as planInput } from './plan.ts';

const date = z.iso.date();
const factor = z.strictObject({ median: z.number(), logSd: z.number().describe('sd of its logarithm') });

/** One line of a journal, as `plan` reads it. */
export const input = planInput;

export const output = z.strictObject({
  today: date.describe('the day it was made for'),
  appetite: z
    .strictObject({
      level: z.strictObject({ before: factor, after: factor }).describe('what the keeper’s colonies eat against the model'),
      nextWinter: factor.describe('the same for a coming winter, the spread between winters inside'),
      colonies: z.array(z.strictObject({ colony: z.string(), after: factor, winters: z.number() })),
      winters: z.array(z.strictObject({ winter: z.number(), after: factor, colonies: z.number() })),
      labels: z.record(z.string(), z.string()).describe('label of the hive by colony'),
    })
    .describe('what colonies eat against the model, before and after what was seen'),
  syrupYield: z
    .strictObject({ before: factor, after: factor, feeds: z.number() })
    .describe('stores that one kilogram of sugar becomes [kg]; feeds: weighings before and after'),
  frontShare: z
    .strictObject({ frontShareFrac: z.number(), sdFrac: z.number(), hives: z.number() })
    .loose()
    .describe('share of a hive’s weight on its front edge, and the hives it rests on'),
  tares: z.array(z.strictObject({ parts: z.number(), massKg: z.number(), on: date })).describe('empty hives and parts weighed [kg]'),
  made: z.strictObject({ seed: z.number(), members: z.number(), winters: z.array(z.number()) }).describe('what it was made from'),
  unread: z.looseObject({ lines: z.number() }).describe('lines of the journal that were not read, by reason'),
  later: z.number().describe('records dated after today, not used'),
});

export const example = 'npx winterheft learn demo/journal.jsonl --today 2027-05-15 --members 200';
