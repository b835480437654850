import { mitesParameters, WASH_BEES, WASH_CERTAINTY, WASH_DAYS_AHEAD } from '@winterheft/core';
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
  daysAhead: z
    .number()
    .min(WASH_DAYS_AHEAD.low)
    .max(WASH_DAYS_AHEAD.high)
    .optional()
    .describe('days to a date that matters, with brood and untreated [days]'),
});

export const output = z.strictObject({
  rateFrac: z.number().describe('mites per bee washed'),
  lowFrac: z.number().describe('lower end of the interval'),
  highFrac: z.number().describe('upper end of the interval; mites crowd on some bees, so the real doubt is wider'),
  interval: z.literal('clopper-pearson').describe('name of the interval: exact binomial'),
  aheadMitesPerBee: z
    .strictObject({
      low: z.number().describe('the lower end growing slowly'),
      mid: z.number().describe('the rate found growing as usual'),
      high: z.number().describe('the upper end growing fast'),
    })
    .optional()
    .describe('with daysAhead: mites per bee then; mites brought in from other colonies come on top'),
});

export const example = { bees: 300, mites: 5 };
