import { mitesParameters, WASH_BEES, WASH_CERTAINTY, WASH_DAYS_AHEAD, WASH_METHODS } from '@winterheft/core';
import * as z from 'zod';

export const input = z.strictObject({
  bees: z.number().int().min(WASH_BEES.low).max(WASH_BEES.high).describe('bees washed [count]'),
  mites: z
    .number()
    .int()
    .min(0)
    .max(WASH_BEES.high)
    .describe('mites found [count]; not more than bees, the sample is taken as bees with or without one'),
  certaintyFrac: z
    .number()
    .min(WASH_CERTAINTY.low)
    .max(WASH_CERTAINTY.high)
    .default(mitesParameters.washCertaintyFrac.value)
    .describe('certainty of the interval, both sides together'),
  method: z
    .enum(WASH_METHODS)
    .default('alcohol')
    .describe('how the mites were got off; a sugar roll is divided by the share of the mites it finds'),
  thresholdFrac: z.number().min(0.0001).max(0.5).optional().describe('the level above which you treat, in mites per bee: 0.02 is 2 in 100'),
  daysAhead: z
    .number()
    .min(WASH_DAYS_AHEAD.low)
    .max(WASH_DAYS_AHEAD.high)
    .optional()
    .describe('days to a date that matters, with brood and untreated [days]'),
});

const ends = z.strictObject({ low: z.number().describe('lower end'), high: z.number().describe('upper end') });

export const output = z.strictObject({
  rateFrac: z.number().describe('mites per bee washed'),
  lowFrac: z.number().describe('lower end of the interval'),
  highFrac: z.number().describe('upper end of the interval; mites crowd on some bees, so the real doubt is wider'),
  interval: z
    .literal('clopper-pearson')
    .describe('name of the interval: exact binomial, shown because it never covers the truth less often than it says'),
  otherIntervals: z
    .strictObject({ wilson: ends, wilsonCorrected: ends, jeffreys: ends })
    .describe('other usual intervals of the same count: Wilson plain and with continuity correction, Jeffreys; too short at some levels'),
  chanceAboveFrac: z
    .number()
    .optional()
    .describe('with thresholdFrac: chance that the true level is above it, the count alone known (Jeffreys)'),
  decision: z
    .enum(['above', 'not-told', 'below', 'withheld'])
    .optional()
    .describe('with thresholdFrac; withheld where too few bees were washed'),
  notes: z
    .array(z.enum(['few-bees', 'sugar-corrected', 'recovery-not-known', 'higher-than-published']))
    .describe('what has to be known of this count'),
  insteadMites: z.array(z.number()).optional().describe('counts that may have been meant where this one is higher than any published'),
  aheadMitesPerBee: z
    .strictObject({
      low: z.number().describe('the lower end growing slowly'),
      mid: z.number().describe('the rate found growing as usual'),
      high: z.number().describe('the upper end growing fast'),
    })
    .optional()
    .describe('with daysAhead: mites per bee then; mites brought in from other colonies come on top'),
});

export const example = { bees: 300, mites: 5, thresholdFrac: 0.02 };
