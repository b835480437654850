import { STORES_RANGES } from '@winterheft/core';
import * as z from 'zod';

const range = (name: keyof typeof STORES_RANGES) => z.number().min(STORES_RANGES[name].low).max(STORES_RANGES[name].high);
const partLine = z.strictObject({
  part: z.string().describe('key of the parts table'),
  count: z.number().describe('how many'),
  massKg: z.number().optional().describe('own weight of one piece [kg]; beats the table'),
});
const date = z.iso.date();
const estimate = z.strictObject({ kg: z.number().describe('stores [kg]'), sdKg: z.number().describe('standard deviation [kg]') });
const worth = z.strictObject({
  what: z.enum([
    'weigh',
    'second-edge',
    'weigh-empty-hive',
    'count-capped-frames',
    'count-frames-of-bees',
    'weigh-on-hive',
    'wait-and-weigh',
    'weigh-capped-frame',
    'clear-snow',
    'count-pollen-frames',
  ]),
  sdKg: z.number().describe('standard deviation once it is done [kg]'),
  minutes: z.number().describe('how long it takes [min]'),
  afterDays: z.number().describe('days to wait before it can be done'),
});

export const input = z.strictObject({
  build: z.array(partLine).describe('what the hive is made of: boxes, frames, floor, covers'),
  grossKg: range('grossKg').optional().describe('the whole hive as it stands [kg]'),
  grossSdKg: range('grossSdKg')
    .optional()
    .describe(
      'standard deviation of grossKg [kg]; left out: that of heft from both edges with its defaults, 1.4 kg at 30 kg and 1.9 kg at 70 kg',
    ),
  word: z.enum(['heavy', 'fair', 'light']).optional().describe('what a hand said, where nothing was weighed'),
  emptyHive: z
    .strictObject({
      massKg: z.number().describe('one empty hive of this build, combs included [kg]'),
      sdKg: z.number().optional().describe('its error [kg]'),
    })
    .optional()
    .describe('an empty hive the keeper weighed'),
  bees: range('bees').optional().describe('bees [count]'),
  beesSdFrac: range('beesSdFrac').optional().describe('standard deviation of bees as a share of it'),
  framesOfBees: range('framesOfBees').optional().describe('frames of bees [frames]; instead of bees or seamsOfBees'),
  seamsOfBees: range('seamsOfBees').optional().describe('seams of bees, the gaps between combs [seams]; a seam counts like a frame'),
  counting: z.enum(['packed', 'covered', 'occupied']).optional().describe('what one frame or seam of bees means; left out: covered'),
  cappedFrames: z
    .array(
      z.strictObject({
        frame: z.string().describe('deep, medium or shallow'),
        count: z.number().describe('how many, halves allowed'),
        where: z.enum(['top', 'below']).describe('top box, or below it'),
        massKg: z.number().optional().describe('one such frame as it hangs there [kg]'),
        fullFrac: z.number().optional().describe('how full, 0 to 1; left out: 1'),
      }),
    )
    .optional()
    .describe('full capped combs counted'),
  countCovers: z.enum(['all', 'top']).optional().describe('whether every comb was looked at; left out: all where a frame below is named'),
  pollenFrames: range('pollenFrames').optional().describe('combs full of pollen'),
  broodFrames: range('broodFrames').optional().describe('combs full of brood'),
  onHive: z
    .strictObject({
      feeder: z.string().optional().describe('key of a feeder that is not in the build'),
      syrupKg: z.number().optional().describe('syrup left in it [kg]'),
      candyKg: z.number().optional().describe('candy left [kg]'),
      topParts: z.array(partLine).optional().describe('parts above the boxes that are not in the build'),
      waterKg: z.number().optional().describe('water taken up by absorbents [kg]'),
      otherKg: z.number().optional().describe('anything else that stood on it [kg]'),
      weighed: z.boolean().optional().describe('true where all of this was weighed'),
    })
    .optional()
    .describe('what stood on the hive that day'),
  syrupGiven: z
    .array(
      z.strictObject({
        date: date.describe('day it was given'),
        sugarKg: z.number().describe('sugar in it [kg]'),
        waterKg: z.number().optional().describe('water in it [kg]; left out: 2:1 by mass'),
      }),
    )
    .optional()
    .describe('syrup of the last two weeks'),
  snowIceKg: range('snowIceKg').optional().describe('snow and ice on the hive [kg]'),
  date: date.optional().describe('day of the weighing or look'),
});

export const output = z.strictObject({
  storesKg: z.number().describe('what the bees can eat [kg]'),
  sdKg: z.number().describe('standard deviation [kg]'),
  errorParts: z
    .strictObject({
      scaleKg: z.number().describe('scale and lift'),
      tareKg: z.number().describe("the build's mass, shared by its hives"),
      hiveKg: z.number().describe('this hive against others of its build'),
      beesKg: z.number().describe('bees'),
      pollenKg: z.number().describe('pollen and brood'),
      lotKg: z.number().describe('honey on a capped comb, shared by a lot'),
      framesKg: z.number().describe('counting combs'),
      onHiveKg: z.number().describe('what stood on it'),
      waterKg: z.number().describe('water still to dry'),
      snowKg: z.number().describe('snow and ice'),
    })
    .describe('standard deviation by cause [kg]; squares add up to that of sdKg'),
  measureNext: worth.nullable().describe('the single measurement that cuts sdKg most'),
  measurements: z.array(worth).describe('all that could be measured, best first'),
  provisional: z.strictObject({ weighAgainOn: date }).nullable().describe('set within three days of syrup'),
  weightOnly: z.boolean().describe('rests on weight and a build nobody weighed empty: never called spare'),
  byWeight: estimate.nullable().describe('from the weight alone'),
  byCount: estimate.nullable().describe('from the combs alone'),
  tare: z
    .strictObject({
      massKg: z.number(),
      sharedSdKg: z.number(),
      ownSdKg: z.number(),
      basis: z.enum(['table', 'own parts', 'empty hive']),
      buildKey: z.string(),
    })
    .describe('the empty hive [kg]'),
  bees: z.strictObject({ count: z.number(), massKg: z.number(), sdKg: z.number() }).describe('bees taken off the weight'),
  contact: z
    .strictObject({ frames: z.number(), kg: z.number(), sdKg: z.number() })
    .nullable()
    .describe('capped honey counted in the top box; null where nobody looked'),
  notes: z
    .array(z.enum(['below-empty', 'above-full', 'bees-assumed', 'weight-and-count-disagree', 'lower-combs-assumed']))
    .describe('what to know about the answer'),
});

export const example = {
  build: [
    { part: 'solid-floor', count: 1 },
    { part: 'deep-10-wood', count: 2 },
    { part: 'deep-frame-drawn', count: 20 },
    { part: 'inner-cover', count: 1 },
    { part: 'telescoping-cover', count: 1 },
  ],
  grossKg: 52,
  framesOfBees: 8,
  cappedFrames: [{ frame: 'deep', count: 6, where: 'top' as const }],
  date: '2026-09-18',
};
