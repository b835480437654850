import { AUTUMN_SYRUP_SUGAR_FRAC, PROVISION_RANGES, provisionParameters as p, winterParameters } from '@winterheft/core';
import * as z from 'zod';

const range = (name: keyof typeof PROVISION_RANGES) => z.number().min(PROVISION_RANGES[name].low).max(PROVISION_RANGES[name].high);
const looked = z
  .union([z.boolean(), z.string(), z.null()])
  .describe(
    'last look at the brood without signs of disease: its date, true (within the days a look holds), false or null (none, which means unknown, not healthy)',
  );
const comb = z.strictObject({
  frame: z.string().describe('kind of frame; only like is swapped for like'),
  count: range('count').int().describe('how many'),
  massKg: range('massKg').describe('one whole comb: wood, wax and what is in it [kg]'),
  massSdKg: range('massSdKg').optional().describe('error of massKg, shared by the lot [kg]'),
  pollenLast: z.boolean().optional().describe('holds the last pollen: never leaves'),
});
const lot = z.strictObject({
  lot: z.string().describe('name of the lot'),
  yard: z.string().describe('yard where it hangs'),
  frame: z.string().describe('kind of frame'),
  count: range('count').int().describe('how many'),
  massKg: range('massKg').describe('one whole comb [kg]'),
  massSdKg: range('massSdKg').optional().describe('error of massKg [kg]'),
  looked: looked.optional(),
  inHand: z.boolean().optional().describe('taken in this walk and not yet placed'),
});
const colony = z.strictObject({
  id: z.string().describe('name of the colony'),
  yard: z.string().describe('yard it stands in'),
  bees: range('bees').describe('bees [count]'),
  hasKg: range('hasKg').describe('stores it holds [kg]'),
  hasSdKg: range('hasSdKg').describe('standard deviation of hasKg [kg]'),
  needKg: range('needKg').describe('stores it needs at the asked certainty [kg]'),
  build: z.unknown().optional().describe('kept for the caller; not used'),
  looked: looked.optional(),
  flag: z.union([z.boolean(), z.string(), z.null()]).optional().describe('set aside: true or the reason'),
  capped: z.array(comb).default([]).describe('capped combs it could give'),
  emptyCombs: z.array(comb).default([]).describe('light combs it could hand out'),
  at: z
    .union([
      z.number(),
      z.string(),
      z.tuple([z.number(), z.number()]),
      z.strictObject({ row: z.string().describe('row of stands'), place: z.number().describe('number in the row') }),
      z.null(),
    ])
    .optional()
    .describe('where it stands, for the walk: a number along the row, a label such as B12, [x, y] in metres, or row and place'),
  lossCurve: z
    .array(
      z.strictObject({
        shortKg: range('shortKg').describe('kilograms below the need'),
        lossFrac: range('frac').describe('chance of loss it adds'),
      }),
    )
    .optional()
    .describe('chance of loss by shortage; left out: from hasSdKg and the spread of use'),
  candyRimKg: range('candyRimKg').default(p.candyRimKg.value).describe('sugar its rim takes as candy [kg]'),
  uptakeLPerDay: range('uptakeLPerDay')
    .optional()
    .describe(`syrup it takes a day [L]; left out: ${p.uptakeLPer1000BeesPerDay.value} a thousand bees, at most ${p.uptakeLPerDay.value}`),
  refusesSyrup: z.boolean().default(false).describe('left syrup standing'),
  gluingOver: z.boolean().optional().describe('opened joints are not glued any more'),
  mayGive: z.boolean().default(true).describe('false: gives nothing, its stores are too little known'),
  mayUnite: z.boolean().default(true).describe('false: is not united with another'),
  tooSmall: z.boolean().optional().describe('too small to winter alone; left out: by rules.winterableBees'),
  queen: z.enum(['seen', 'unknown']).default('unknown').describe('whether its queen was seen'),
});

export const input = z.strictObject({
  colonies: z.array(colony).min(1).describe('all colonies, givers and getters alike'),
  bank: z.array(lot).default([]).describe('lots of banked capped frames'),
  shed: z.array(lot).default([]).describe('light combs without a colony: they close the gaps of givers'),
  sugarKg: range('sugarKg').default(0).describe('sugar on hand [kg]'),
  feeders: range('feeders').int().default(0).describe('feeders, one for each colony that is fed'),
  daysToLastFeeding: range('daysToLastFeeding').default(0).describe('days until syrup is no longer taken'),
  unions: z
    .array(
      z.strictObject({
        from: z.string().describe('colony given up'),
        into: z.string().describe('colony that takes it in'),
        needKg: range('needKg').describe('need of both [kg]'),
      }),
    )
    .optional()
    .describe('what two colonies would need together'),
  prices: z
    .strictObject({
      sugarPerKg: range('price').default(p.sugarPerKg.value).describe('money a kilogram'),
      workPerHour: range('price').default(p.workPerHour.value).describe('money an hour'),
      honeyPerKg: range('price').default(0).describe('money a kilogram of banked stores'),
      opening: range('price').default(p.openingPrice.value).describe('money an opening, where pricePerColony makes one sum of all aims'),
    })
    .prefault({})
    .describe("the keeper's prices"),
  rules: z
    .strictObject({
      today: z.iso.date().optional().describe('day of the plan; left out: the newest look stands in for it, and the answer says so'),
      lookDays: range('lookDays').default(p.lookDays.value).describe('days a look holds'),
      allowLookSteps: z.boolean().default(false).describe('may ask for a look first'),
      holdLightCombs: z.boolean().default(false).describe('light combs of colonies not looked at are kept apart'),
      crossYards: z.boolean().default(false).describe('combs may go between yards'),
      unite: z.boolean().default(true).describe('colonies too small alone may be united'),
      winterableBees: range('bees').default(winterParameters.minBeesAlone.value).describe('least size to winter alone [bees]'),
      certaintyFrac: range('certaintyFrac').default(p.certaintyFrac.value).describe('certainty the needs were made for'),
      needToleranceKg: range('needToleranceKg').default(p.needToleranceKg.value).describe('a shortage below this does not count [kg]'),
      lossToleranceColonies: range('lossToleranceColonies')
        .default(p.lossToleranceColonies.value)
        .describe('expected losses given up for less cost [colonies]'),
      gluingOver: z.boolean().default(false).describe('the last gluing days are over'),
      ripeningDays: range('ripeningDays').default(p.ripeningDays.value).describe('last feeding days left for drying'),
      syrupSugarFrac: range('syrupSugarFrac').default(AUTUMN_SYRUP_SUGAR_FRAC).describe('sugar by mass of the syrup'),
      syrupStepL: range('syrupStepL').default(p.syrupStepL.value).describe('amounts of syrup are multiples of this [L]'),
      leastSyrupL: range('leastSyrupL').default(p.leastSyrupL.value).describe('no colony is fed less syrup than this [L]'),
      buySugarUpToKg: range('sugarKg').default(0).describe('sugar that may be bought [kg]'),
      pricePerColony: range('price').optional().describe('one sum instead of ranks: what a colony is worth'),
      gapFrac: range('gapFrac').default(p.gapFrac.value).describe('relative gap at which the solver may stop'),
      nodes: range('nodes').int().default(p.nodes.value).describe('nodes for each rank'),
      brakeSeconds: range('brakeSeconds').default(p.brakeSeconds.value).describe('emergency brake [s]'),
    })
    .prefault({})
    .describe("the keeper's rules and the solver's limits"),
});

const text = z.string();
const number = z.number();
export const output = z.strictObject({
  method: z.enum(['solved', 'greedy']).describe('greedy where no solver ran'),
  moves: z
    .array(
      z.strictObject({
        id: text,
        from: text,
        fromKind: z.enum(['colony', 'bank', 'hand']),
        to: text,
        frame: text,
        count: number,
        massKg: number,
        gainKg: number,
        gainSdKg: number,
        out: z.strictObject({ frame: text, massKg: number, to: text, held: z.boolean() }),
        fill: z.strictObject({ from: text, fromKind: z.enum(['colony', 'bank', 'shed']), massKg: number }).nullable(),
        giverLossKg: number,
      }),
    )
    .describe('swaps: a capped comb in, a light one out'),
  looks: z.array(z.strictObject({ id: text, colony: text })).describe('looks at the brood to make first'),
  syrup: z.array(z.strictObject({ id: text, to: text, litres: number, sugarKg: number, storesKg: number })).describe('syrup to feed'),
  candy: z.array(z.strictObject({ id: text, to: text, sugarKg: number, storesKg: number })).describe('candy to lay on'),
  unite: z
    .array(z.strictObject({ id: text, from: text, into: text, needKg: number, queenKnown: z.boolean() }))
    .describe('colonies to unite'),
  uncovered: z.array(z.strictObject({ colony: text, kg: number, lossFrac: number })).describe('what stays short'),
  objective: z.array(number).describe('a number per rank: expected losses, cost, openings; or one sum'),
  bound: number.nullable().describe('no plan is better in the first rank; null without a solver'),
  gapFrac: number.nullable().describe('relative gap of the first rank'),
  ranks: z
    .array(
      z.strictObject({
        aim: z.enum(['losses', 'cost', 'openings', 'sum']),
        unit: text,
        objective: number,
        achieved: number,
        bound: number.nullable(),
        gapFrac: number.nullable(),
        endedBy: text.nullable(),
        nodes: number,
      }),
    )
    .describe('how each rank ended'),
  reasons: z
    .array(z.looseObject({ code: text, figures: z.record(text, z.union([number, text, z.null()])) }))
    .describe('why, as codes with figures'),
  order: z.array(text).describe('ids of steps in the order of the walk'),
  steps: z.array(z.strictObject({ id: text, do: text, colony: text, ref: text })).describe('one thing done at one hive'),
  totals: z
    .strictObject({ expectedLosses: number, cost: number, openings: number, minutes: number, sugarKg: number, buySugarKg: number })
    .describe('sums over the plan'),
  solver: text.nullable().describe('name and version'),
});

export const example = {
  colonies: [
    {
      id: 'A1',
      yard: 'mill',
      bees: 18000,
      hasKg: 40,
      hasSdKg: 2,
      needKg: 30,
      looked: '2026-09-12',
      capped: [{ frame: 'deep', count: 6, massKg: 3.6 }],
      emptyCombs: [{ frame: 'deep', count: 4, massKg: 0.6 }],
    },
    {
      id: 'A2',
      yard: 'mill',
      bees: 15000,
      hasKg: 22,
      hasSdKg: 2,
      needKg: 29,
      looked: '2026-09-12',
      capped: [{ frame: 'deep', count: 2, massKg: 3.6 }],
      emptyCombs: [{ frame: 'deep', count: 6, massKg: 0.6 }],
    },
  ],
  bank: [{ lot: 'clover', yard: 'mill', frame: 'deep', count: 1, massKg: 3.5, looked: '2026-09-01' }],
  sugarKg: 20,
  feeders: 2,
  daysToLastFeeding: 10,
  rules: { today: '2026-09-18' },
};
