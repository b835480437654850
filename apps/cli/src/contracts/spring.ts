import * as z from 'zod';
import { input as planInput } from './plan.ts';

const date = z.iso.date();
const share = z.number().min(0).max(1);
const spread = z.strictObject({ p5: z.number(), p50: z.number(), p95: z.number() });

/** One line of a journal, as `plan` reads it. */
export const input = planInput;

const deadout = z.strictObject({
  colony: z.string(),
  label: z.string(),
  on: date,
  found: z.array(z.string()).describe('keys of data/deadouts.csv'),
  causes: z.array(z.strictObject({ cause: z.string(), chanceFrac: share })).describe('most probable first'),
  named: z.string().nullable().describe('the first where it is likely enough; null: unsure'),
  speakFor: z.array(z.string()),
  speakAgainst: z.array(z.string()),
  notifiable: z.boolean().describe('signs of a disease that the law of most places wants reported'),
});

export const output = z.strictObject({
  today: date.describe('the day it was made for'),
  winter: z.number().describe('named by its first year'),
  colonies: z.number().describe('alive on 1 November'),
  survivors: z.number().describe('of those counted this spring, alive'),
  notCounted: z.array(z.string()).describe('labels of hives not yet seen this spring'),
  loss: z.strictObject({ frac: share, lowFrac: share, highFrac: share }).nullable().describe('with its 95 % Jeffreys interval'),
  region: z
    .strictObject({ lossFrac: share, lowFrac: share, highFrac: share, source: z.string() })
    .describe('loss of the region to compare with, and its source'),
  said: z
    .array(
      z.strictObject({
        fromFrac: share.describe('chance to hold that was said in autumn'),
        toFrac: share,
        colonies: z.number(),
        expected: z.number().describe('deaths by hunger that were expected'),
        low: z.number(),
        high: z.number(),
        died: z.number().describe('deaths of any cause'),
        cases: z.array(z.number()).describe('twenty numbers of deaths by hunger of equal chance'),
      }),
    )
    .describe('what was said in autumn against what died, by the chance said'),
  stores: z
    .array(z.strictObject({ label: z.string(), saidKg: spread, seenKg: z.number() }))
    .describe('at the spring count, said in autumn and seen [kg]'),
  deadouts: z.array(deadout).describe('colonies that died, with the cause their signs speak for'),
  sugarKg: z.number().describe('fed since the autumn round [kg]'),
  sugarPerSurvivorKg: z.number().nullable().describe('the same for each survivor [kg]; null where none is counted'),
  moneyPerSurvivor: z.number().nullable().describe('at the keeper’s price of sugar; null without one'),
  made: z.strictObject({ seed: z.number(), members: z.number() }).describe('what it was made from'),
  unread: z.looseObject({ lines: z.number() }).describe('lines of the journal that were not read, by reason'),
  later: z.number().describe('records dated after today, not used'),
});

export const example = 'npx winterheft spring demo/journal.jsonl --today 2027-05-10 --members 200 --units ca';
