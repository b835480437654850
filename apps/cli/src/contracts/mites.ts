import * as z from 'zod';
import { input as planInput } from './plan.ts';

const date = z.iso.date();
const share = z.number().min(0).max(1);
const levels = z.strictObject({ p5: z.number(), p50: z.number(), p95: z.number() }).describe('mites per bee at 5, 50 and 95 %');
const level = z.strictObject({
  key: z.string().describe('row of data/thresholds.csv'),
  warn: z.number().describe('mites per bee from which it is watched'),
  treat: z.number().describe('mites per bee above which treating is due'),
  never: z.number().nullable().describe('mites per bee never accepted'),
  by: z.enum(['table', 'own']).describe('own: the keeper’s setting miteLevels'),
  place: z.string(),
  source: z.string(),
  mark: z.string(),
  note: z.string(),
});

/** One line of a journal, as `plan` reads it. */
export const input = planInput;

const wash = z.strictObject({
  date,
  mites: z.number(),
  bees: z.number(),
  methods: z.array(z.string()),
  rateFrac: z.number(),
  lowFrac: z.number(),
  highFrac: z.number(),
  enoughBees: z.boolean(),
});

const colony = z.strictObject({
  colony: z.string(),
  hive: z.string().nullable(),
  yard: z.string(),
  label: z.string(),
  washes: z.array(wash).describe('its samples of this year with their exact intervals; washes a few days apart are added'),
  boards: z
    .array(z.looseObject({ date, mites: z.number(), days: z.number(), perDay: z.number(), verdict: z.string() }))
    .describe('falls of mites by the rules of boards, never a share'),
  basis: z.enum(['own', 'yard', 'nothing']).describe('what the figures rest on: its own washes, the yard’s, or none'),
  now: levels.nullable(),
  atWindow: levels.nullable(),
  chanceWarnNowFrac: share.nullable(),
  chanceAboveNowFrac: share.nullable().describe('chance above the level of today'),
  chanceAboveWindowFrac: share.nullable().describe('chance above the level in the winter-bee weeks, if nothing more is done'),
  chancesIn20: z.number().nullable(),
  cases: z.array(z.number()).nullable().describe('twenty levels of equal chance in the winter-bee weeks, lowest first'),
  fan: z
    .strictObject({ from: date, stepDays: z.number(), p5: z.array(z.number()), p50: z.array(z.number()), p95: z.array(z.number()) })
    .nullable()
    .describe('course of the level'),
  due: z.array(z.strictObject({ what: z.string(), by: date.nullable(), reason: z.string() })).describe('what is due, most urgent first'),
  ifTreated: z.array(z.strictObject({ key: z.string(), chanceAboveWindowFrac: share })),
  supersOn: z.boolean(),
  winterLoss: z
    .strictObject({ lowFrac: share, highFrac: share, chanceAboveFrac: share, sources: z.array(z.string()) })
    .nullable()
    .describe('share of such colonies that died in published winters, by all causes, as a range'),
  refused: z.array(z.looseObject({ kind: z.string() })),
});

const treatment = z.strictObject({
  key: z.string(),
  active: z.string(),
  form: z.string(),
  use: z.string(),
  limits: z
    .strictObject({
      by: z.enum(['label', 'table']),
      tempBasis: z.string(),
      tempLowC: z.number().nullable(),
      tempHighC: z.number().nullable(),
      stopHighC: z.number().nullable(),
      stopDays: z.number().nullable(),
      durationDays: z.number().nullable(),
      broodless: z.boolean(),
      supersOff: z.boolean().nullable(),
      withdrawalDays: z.number().nullable(),
    })
    .nullable()
    .describe('null: type the limits from the label in hand (setting labels)'),
  blockers: z.array(z.string()),
  startChances: z
    .strictObject({ from: date, frac: z.array(share) })
    .nullable()
    .describe('chance that a start on the day keeps the limits'),
  firstStart: date.nullable(),
  lastStart: date.nullable(),
  latestStart: date.nullable().describe('last day it may begin to be over when mites have to be low'),
  latestStartChanceFrac: share.nullable(),
  effect: z.strictObject({ lowFrac: z.number(), highFrac: z.number(), known: z.boolean(), source: z.string(), mark: z.string() }),
  resistance: z.string(),
  leastBroodFrames: z.number().nullable(),
  differs: z.array(
    z.strictObject({ field: z.string(), label: z.union([z.number(), z.boolean()]), read: z.union([z.number(), z.boolean()]) }),
  ),
  cautions: z.array(z.string()),
  country: z.string(),
  note: z.string(),
  source: z.string(),
  mark: z.string(),
});

const counted = z.strictObject({ mites: z.number(), bees: z.number(), date });
const effect = z.strictObject({
  active: z.string(),
  colonies: z.array(z.string()),
  before: counted,
  after: counted,
  effectFrac: z.number(),
  lowFrac: z.number(),
  highFrac: z.number(),
  interval: z.string(),
  growthMeanwhile: z.strictObject({ slow: z.number(), mid: z.number(), fast: z.number() }),
  passFrac: share,
  chancePassFrac: share,
  verdict: z.enum(['passed', 'failed', 'not-told', 'nothing-before']),
});

const yard = z.strictObject({
  yard: z.string(),
  yardName: z.string(),
  climate: z.looseObject({ name: z.string() }),
  lowBy: date.describe('mites have to be low by then'),
  winterBees: z.strictObject({ from: date, to: date }).describe('weeks in which the winter bees are reared'),
  projectedTo: date.describe('the day levels are projected to'),
  windowExtrapolated: z.boolean(),
  broodEnds: z.strictObject({ p10: date, p50: date, p90: date }),
  level: level.nullable(),
  levelAtWindow: level.nullable(),
  stair: z.array(level.extend({ from: date, to: date })).describe('levels from April to December'),
  mean: levels.nullable(),
  notWashed: levels.nullable().describe('level of a colony that was not washed, on the day of the others'),
  washed: z.number(),
  colonies: z.number(),
  washNext: z.array(z.string()).describe('colonies whose wash would tell most, the first first'),
  treatments: z.array(treatment).describe('every form of every active ingredient; none is advised'),
  effects: z.array(effect).describe('what treatments did, by washes before and after'),
  broodlessTreatmentFrom: date,
});

export const output = z.strictObject({
  yards: z.array(yard).describe('a yard with its window, levels and treatments'),
  colonies: z.array(colony).describe('a line per living colony, by yard, most chances above the level first'),
  records: z
    .array(
      z.strictObject({
        yard: z.string(),
        colony: z.string(),
        label: z.string(),
        active: z.string(),
        product: z.string().nullable(),
        lot: z.string().nullable(),
        in: date.nullable(),
        out: date.nullable(),
        days: z.number().nullable(),
        faults: z.array(z.string()),
        overlaps: z.string().nullable(),
      }),
    )
    .describe('every treatment of every colony, for the inspector'),
  made: z.strictObject({ today: date, seed: z.number(), members: z.number() }).describe('what it was made from'),
  unread: z
    .strictObject({ lines: z.number(), byWhy: z.record(z.string(), z.number()), first: z.array(z.looseObject({ line: z.number() })) })
    .describe('what could not be read'),
  later: z.number().describe('records dated after today, kept and not used'),
});

/** A line that runs as printed in the checkout. */
export const example = 'npx winterheft mites demo/journal.jsonl --today 2026-08-10 --members 200 --units ca';
