import { KINDS } from '@winterheft/core';
import * as z from 'zod';
import { output as outlookOutput } from './outlook.ts';

const date = z.iso.date();
const odds = z.strictObject({
  p10: date.nullable().describe('one year in ten is earlier'),
  p50: date.nullable().describe('the middle year'),
  p90: date.nullable().describe('nine years in ten are earlier'),
});
const anyObject = z.record(z.string(), z.unknown());

/** One line of a journal. The bodies of the kinds and the rules are told in docs/spec-journal.md. */
export const input = z.object({
  id: z.string().describe('UUID version 7'),
  yard: z.string().describe('the yard it happened in, or * for the whole holding'),
  kind: z.enum(KINDS as readonly [string, ...string[]]).describe('what happened'),
  at: z
    .object({
      date: date.describe('local date'),
      time: z.string().optional().describe('HH:MM'),
      zone: z.string().optional().describe('+HH:MM'),
    })
    .describe('when it happened in the yard'),
  by: z.string().describe('who wrote it'),
  seen: z.string().describe('hybrid logical clock stamp of the writing device'),
  body: anyObject.describe('fields of the kind'),
});

const colonyLine = outlookOutput.omit({ ownRule: true, climate: true }).extend({
  colony: z.string(),
  hive: z.string(),
  yard: z.string(),
  label: z.string(),
  state: z.enum(['short', 'enough', 'spare', 'unknown', 'too small alone', 'set aside']),
  low: z.boolean().describe('enough, but less at the cluster than the longest spell of cold wants'),
  cases: z.array(date.nullable()).nullable().describe('twenty run-out dates of equal chance, earliest first; null: later than the run'),
  chancesIn20: z.number().nullable().describe('how many of them come before first forage'),
  hasKg: z.number().nullable().describe('stores it is thought to hold today [kg]; null where nothing is known'),
  hasSdKg: z.number().nullable().describe('standard deviation of hasKg [kg]'),
  aboveNeedKg: z.number().nullable().describe('has minus need [kg]'),
  bees: z.number().describe('bees [count]'),
  weighedOn: date.nullable(),
  lookedOn: date.nullable().describe('last look at the brood without signs of disease'),
  targetFrontKg: z.number().nullable().describe('what the front edge reads when the need is met [kg]'),
  targetRearKg: z.number().nullable().describe('the same for the rear edge [kg]'),
  targetFrontSdKg: z.number().nullable().describe('standard deviation of that reading [kg]'),
  targetRearSdKg: z.number().nullable().describe('standard deviation of that reading [kg]'),
  stores: anyObject.nullable().describe('answer of the command `stores` for this hive'),
  lossCurve: z.array(z.strictObject({ shortKg: z.number(), lossFrac: z.number() })).describe('chance of loss at so much below the need'),
  notes: z.array(z.looseObject({ code: z.string() })).describe('why it is in its state'),
  ownRule: z
    .strictObject({
      storesKg: z.number().describe('stores the keeper’s own rule leaves [kg]'),
      verdict: z.enum(['enough', 'short', 'unknown']),
    })
    .nullable(),
});

export const output = z.strictObject({
  outlooks: z.array(colonyLine).describe('a line per living colony, least chance to hold first'),
  ended: z
    .array(
      z.strictObject({ colony: z.string(), yard: z.string(), label: z.string(), state: z.literal('ended'), how: z.string(), on: date }),
    )
    .describe('colonies that ended in this winter’s year'),
  provision: anyObject.nullable().describe('answer of the command `provision`'),
  dates: z
    .array(
      z.strictObject({
        yard: z.string(),
        yardName: z.string().describe('the yard’s name as the keeper wrote it'),
        climate: z.looseObject({ name: z.string() }),
        dates: z.record(z.string(), odds),
      }),
    )
    .describe('dates of this winter by yard'),
  tasks: z
    .array(z.strictObject({ code: z.string(), colonies: z.array(z.string()), by: date.nullable() }))
    .describe('what is to be done, with the last day on which it does its work'),
  unread: z
    .strictObject({
      lines: z.number().describe('lines that could not be read'),
      byWhy: z.record(z.string(), z.number()),
      first: z.array(z.looseObject({ line: z.number() })),
    })
    .describe('what could not be read'),
  clashes: z.array(z.looseObject({ kind: z.string() })).describe('records that do not fit together'),
  later: z.number().describe('records dated after today, kept and not used'),
  laterRecords: z.array(z.string()).describe('the first of their ids'),
  made: z
    .strictObject({
      planVersion: z.number(),
      codeVersion: z.string(),
      journalDigest: z.string(),
      tablesDigest: z.string(),
      weatherDigest: z.string(),
      today: date,
      seed: z.number(),
      members: z.number(),
      certaintyFrac: z.number(),
      solver: z.string().nullable(),
      endedBy: z.string().nullable(),
      from: date,
      to: date,
    })
    .describe('what the plan was made from'),
});

/** A line that runs as printed in the checkout. */
export const example = 'npx winterheft plan demo/journal.jsonl --today 2026-09-18 --members 200 --units ca';
