import { ENVELOPE_RANGES, OUTLOOK_RANGES, winterParameters } from '@winterheft/core';
import * as z from 'zod';

const range = (name: keyof typeof OUTLOOK_RANGES) => z.number().min(OUTLOOK_RANGES[name].low).max(OUTLOOK_RANGES[name].high);
const date = z.iso.date();
const massKg = z.number();
const spread = (unit: string) =>
  z.strictObject({
    p5: z.number().describe(`5 % of the cases lie at or below [${unit}]`),
    p50: z.number().describe(`the middle case [${unit}]`),
    p95: z.number().describe(`95 % of the cases lie at or below [${unit}]`),
  });
const dateSpread = z.strictObject({
  p5: date.nullable().describe('date by which 5 % of the cases are there; null when that share never is by `to`'),
  p50: date.nullable().describe('the same for half of the cases'),
  p95: date.nullable().describe('the same for 95 % of the cases'),
});

export const input = z.strictObject({
  bees: range('bees').describe('bees on the first day [count]'),
  beesSdFrac: range('beesSdFrac').default(winterParameters.beesSdFrac.value).describe('standard deviation of that count as a share of it'),
  storesKg: range('storesKg').optional().describe('what the colony is thought to hold [kg]; left out: only the need is told'),
  storesSdKg: range('storesSdKg').default(0).describe('standard deviation of storesKg [kg]'),
  storesSdParts: z
    .strictObject({
      tareKg: range('storesSdKg').describe('of the empty hive [kg]'),
      scaleKg: range('storesSdKg').describe('of everything measured on this hive [kg]'),
    })
    .optional()
    .describe('how storesSdKg splits; left out: half of the variance each'),
  hive: z
    .strictObject({
      conductanceWPerK: range('conductanceWPerK').optional().describe('heat lost per kelvin around the cluster [W/K]'),
      build: z
        .array(
          z.strictObject({
            part: z.string().describe('key of the parts table'),
            count: z.number().describe('how many'),
            massKg: z.number().optional().describe('own weight of one piece [kg]'),
          }),
        )
        .optional()
        .describe('parts the hive is made of, instead of conductanceWPerK'),
      windMPerS: z
        .number()
        .min(ENVELOPE_RANGES.windMPerS.low)
        .max(ENVELOPE_RANGES.windMPerS.high)
        .optional()
        .describe('with a build: wind along its walls [m/s]; left out: moving air of the code tables'),
      snowFrac: z
        .number()
        .min(ENVELOPE_RANGES.snowFrac.low)
        .max(ENVELOPE_RANGES.snowFrac.high)
        .optional()
        .describe('with a build: share of the height of its walls in snow; 1: to the eaves'),
    })
    .default({ conductanceWPerK: winterParameters.bareHiveWPerK.value })
    .describe('left out: bare wood with a top vent'),
  from: date.describe('first day'),
  to: date.describe('last day, inclusive'),
  dailyMeanC: z
    .array(range('dailyMeanC'))
    .optional()
    .describe('daily means [°C], first value for `from`; then the weather is taken as certain'),
  place: z.string().optional().describe('a place listed by `winterheft weather --places`'),
  monthlyMeanC: z
    .array(range('dailyMeanC'))
    .length(12)
    .optional()
    .describe('monthly means [°C] from January; their spread is taken from places like it'),
  broodFrom: date.nullable().optional().describe('first day of brood; null: none; left out: drawn around 15 February'),
  forage: date
    .nullable()
    .optional()
    .describe('first day of dependable forage; null: none before `to`; left out: from the heat sum of the weather'),
  indoors: z.boolean().default(false).describe(`wintered in a room kept at ${winterParameters.indoorTempC.value} °C`),
  members: range('members').int().default(1000).describe('cases drawn'),
  seed: z.number().int().default(1).describe('same seed, same answer'),
  certaintyFrac: range('certaintyFrac').default(0.95).describe('share of the cases that must hold'),
  ownRule: z
    .strictObject({
      grossKg: range('grossKg').describe('weight of the whole hive the keeper has aimed at [kg]'),
      colonies: range('colonies').int().describe('colonies wintered by it'),
      starved: range('colonies').int().describe('of them starved'),
    })
    .optional()
    .describe("the keeper's own rule and record: evidence on how much their colonies eat"),
  fixed: z.record(z.string(), z.number()).default({}).describe('parameter name to value: pinned, neither drawn nor doubted'),
});

export const output = z.strictObject({
  useKg: spread('kg')
    .extend({ mean: massKg.describe('mean of the cases [kg]') })
    .describe('what would be eaten if stores had no end'),
  dailyUseKg: z.array(massKg).describe('median by day [kg]'),
  monthlyUseKg: z.array(spread('kg').extend({ month: z.string().describe('year and month') })).describe('by month [kg]'),
  beesAtEnd: spread('bees').describe('bees after the last day'),
  runOut: dateSpread.nullable().describe('when the stores end; null without storesKg'),
  holdFrac: z.number().nullable().describe('share of the cases that hold until forage; null without storesKg'),
  needKg: massKg.describe('smallest stores with which the asked share holds [kg]'),
  needParts: z
    .strictObject({
      broodlessKg: massKg.describe('mean use until brood begins [kg]'),
      broodKg: massKg.describe('mean use from then until forage [kg]'),
      reserveKg: massKg.describe('honey out of reach [kg]'),
      doubtKg: massKg.describe('what the doubt adds [kg]'),
    })
    .describe('add up to needKg'),
  doubtShares: z
    .strictObject({
      weather: z.number().describe('share of the variance'),
      appetite: z.number().describe('what the colony eats against the model, its deaths and brood'),
      bees: z.number().describe('the count of bees'),
      tare: z.number().describe('the weight of the empty hive'),
      scale: z.number().describe('everything measured on this hive'),
      forage: z.number().describe('the day of forage'),
    })
    .describe('add up to 1; all 0 when nothing is in doubt'),
  scaleKg: spread('kg').describe('change of the hive’s weight from `from` to `to`, negative: lighter; frost may hide a part'),
  extrapolating: z.boolean().describe('true where the model goes beyond what was measured'),
  extrapolatingBecause: z
    .array(z.enum(['below-weighed-cold', 'fewer-bees-than-measured', 'more-bees-than-measured', 'forage-after-to']))
    .describe('where it goes beyond'),
  winterableAlone: z.boolean().describe('false below the least size to be wintered alone'),
  lightForWinter: z
    .boolean()
    .nullable()
    .describe(
      'true where bees and stores are lighter than an autumn hive should be without its wood; null without storesKg and outside autumn',
    ),
  contactKg: massKg.describe('what the combs at the cluster must hold for the longest spell of cold [kg]'),
  hiveWPerK: z.number().describe('heat lost per kelvin around the cluster [W/K]'),
  forageDate: dateSpread.describe('first dependable forage'),
  climate: z
    .strictObject({
      name: z.string().describe('place, or the station of the record'),
      placeErrorSdC: z.number().describe('standard deviation of the error of the winter mean for the yard [°C]'),
      notes: z.array(z.looseObject({ code: z.string() })).describe('what has to be said of where the weather comes from'),
    })
    .nullable()
    .describe('null where the daily means were given'),
  ownRule: z
    .strictObject({
      storesKg: massKg.describe('stores the rule leaves [kg]'),
      verdict: z.enum(['enough', 'short', 'unknown']),
      levelMedian: z.number().describe('what the colonies are taken to eat against the model, after the record'),
      levelLogSd: z.number().describe('standard deviation of its logarithm'),
    })
    .nullable()
    .describe('the keeper’s rule on this colony; null where none was given'),
  members: z.number().describe('cases drawn'),
  seed: z.number().describe('seed of the random numbers'),
});

export const example = {
  bees: 16000,
  storesKg: 24,
  storesSdKg: 2.5,
  hive: { conductanceWPerK: 0.9 },
  from: '2026-09-18',
  to: '2027-06-30',
  place: 'The Pas MB',
  members: 400,
};
