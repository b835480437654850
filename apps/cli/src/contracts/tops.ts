import { hivetopParameters, SHIPPED_TOPS, TOP_FORECAST_MEMBERS, TOP_FORECAST_TOPS, TOP_RANGES } from '@winterheft/core';
import * as z from 'zod';
import { input as outlookInput } from './outlook.ts';
import { hiveBuild, openings, stack, output as topOutput } from './top.ts';

const ask = outlookInput.shape;

export const input = z.strictObject({
  bees: ask.bees,
  beesSdFrac: ask.beesSdFrac,
  from: ask.from,
  to: ask.to,
  dailyMeanC: ask.dailyMeanC,
  place: ask.place,
  monthlyMeanC: ask.monthlyMeanC,
  broodFrom: ask.broodFrom,
  forage: ask.forage,
  indoors: ask.indoors,
  members: ask.members,
  seed: ask.seed,
  certaintyFrac: ask.certaintyFrac,
  tops: z
    .array(
      z.strictObject({
        name: z.string().min(1).max(80).describe('what the keeper calls it'),
        shipped: z.enum(SHIPPED_TOPS).optional().describe('one of the shipped builds'),
        build: z
          .strictObject({
            stack: stack.describe('as in `top`'),
            openings: openings.default([]).describe('as in `top`'),
            absorbent: z
              .strictObject({ material: z.string().describe('as in `top`'), dryKg: z.number().describe('[kg]') })
              .optional()
              .describe('as in `top`'),
            hive: hiveBuild.optional().describe('as in `top`'),
          })
          .optional()
          .describe("the keeper's own, instead of shipped"),
        cost: z.number().min(0).max(1e6).optional().describe("of one top, in the keeper's money"),
      }),
    )
    .min(TOP_FORECAST_TOPS.low)
    .max(TOP_FORECAST_TOPS.high)
    .default(SHIPPED_TOPS.map((shipped) => ({ name: shipped, shipped })))
    .describe('tops to look at; left out: the shipped ones'),
  outsideRhFrac: z
    .number()
    .min(TOP_RANGES.outsideRhFrac.low)
    .max(TOP_RANGES.outsideRhFrac.high)
    .default(hivetopParameters.outsideRhFrac.value)
    .describe('humidity outside over water, all winter [1]'),
  candyShareFrac: z.number().min(0).max(1).default(0).describe('share of what is eaten that comes from candy while it lasts [1]'),
  topMembers: z
    .number()
    .int()
    .min(TOP_FORECAST_MEMBERS.low)
    .max(TOP_FORECAST_MEMBERS.high)
    .default(hivetopParameters.seasonMembers.value)
    .describe('winters run through each top, the first of members'),
});

const spread = (text: string, unit = 'kg') =>
  z
    .strictObject({
      p5: z.number().describe(`5 % of the winters lie at or below [${unit}]`),
      p50: z.number().describe(`the middle winter [${unit}]`),
      p95: z.number().describe(`95 % lie at or below [${unit}]`),
    })
    .describe(`${text} [${unit}]`);
const date = z.iso.date().nullable();

export const output = z.strictObject({
  tops: z
    .array(
      z.strictObject({
        name: z.string().describe('as asked'),
        needKg: z.number().describe('stores needed at the asked certainty [kg]'),
        needOverFirstKg: z.number().describe('that beside the first top [kg]'),
        useKg: spread('eaten'),
        conductanceWPerK: z.number().describe('heat of the hive with this top per kelvin, air included [W/K]'),
        waterMadeKg: spread('water made'),
        waterOutKg: spread('of it carried out'),
        waterHeldKg: spread('of it held at the end'),
        waterFrozenKg: spread('of it frozen at the end'),
        waterDrippedKg: spread('of it fallen or run down'),
        ranDownWallsKg: spread('of that, run down the walls'),
        mostFrozenKg: spread('most that hung as ice at once'),
        wetLidDays: spread('days on which a lid over air was wet', 'days'),
        frostLidDays: spread('days on which it was frosted', 'days'),
        absorbentFull: z
          .strictObject({
            p5: date.describe('5 % of the winters have it full by this date'),
            p50: date.describe('half of them'),
            p95: date.describe('95 % of them'),
            fullFrac: z.number().describe('share of winters in which it filled up [1]'),
          })
          .nullable()
          .describe('day on which the absorbent could hold no more; dates null where that share never fills it; null without one'),
        topHeatMJ: spread('heat through the top', 'MJ'),
        airHeatMJ: spread('heat with the air', 'MJ'),
        topHeatHoneyKg: spread('both as honey'),
        onScaleKg: z
          .array(spread('water a scale shows beside stores and bees').extend({ date: z.iso.date().describe('end of the week') }))
          .readonly()
          .describe('by week: in wood, fill, drops and ice'),
        scaleKg: spread('change of the weight of the hive over the span, negative: lighter'),
        candyLeftKg: spread('candy left'),
        section: topOutput.describe('this top on the cold day, as `top` answers'),
        coldDayC: z.number().describe('one day in ten of the coldest thirty is as cold [°C]'),
        coldFoamFrac: z.number().describe('share of days on which a foam was colder than it was ever tested [1]'),
        cost: z.number().nullable().describe('as given'),
      }),
    )
    .readonly()
    .describe('in the order asked; none is recommended'),
  members: z.number().describe('winters behind needs and use'),
  topMembers: z.number().describe('winters run through each top'),
  seed: z.number().describe('as asked'),
});

export const example = {
  bees: 18000,
  from: '2026-12-01',
  to: '2027-02-28',
  monthlyMeanC: [-17, -14, -7, 3, 11, 16, 19, 18, 12, 5, -5, -14],
  members: 100,
  topMembers: 10,
  tops: [
    { name: 'absorbent box', shipped: 'vented-box' as const, cost: 24 },
    { name: 'foam lid', shipped: 'sealed-foam' as const, cost: 11 },
  ],
};
