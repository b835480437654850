import {
  CANDY_BOARDS,
  CANDY_DEPTH_M,
  CANDY_SIDE_M,
  CANDY_SUGAR_KG,
  CANDY_USE_KG,
  KIT_ITEMS,
  KIT_RANGES,
  KIT_SIZES,
  SHIPPED_TOPS,
  SYRUP_BATCH_RANGES,
  SYRUP_UNITS,
} from '@winterheft/core';
import * as z from 'zod';
import { output as syrupOutput } from './syrup.ts';

const between = ({ low, high }: { low: number; high: number }) => z.number().min(low).max(high);
const byItem = (text: string, range: { low: number; high: number }) =>
  z.strictObject(Object.fromEntries(KIT_ITEMS.map((item) => [item, between(range).optional().describe(item)]))).describe(text);

const syrup = z.strictObject({
  ratio: z.string().describe('sugar to water, for example 2:1'),
  basis: z.enum(['mass', 'volume']).describe('of the ratio'),
  amount: z.number().positive().max(100_000).describe('for all hives together, in unit'),
  unit: z.enum(SYRUP_UNITS).describe('what the amount is in; a US gallon is 3.785 L, an imperial one 4.546 L'),
  tempC: z.number().min(0).max(60).optional().describe('at which it is measured [°C]'),
  standsAtC: between(SYRUP_BATCH_RANGES.standsAtC).optional().describe('coldest it stands at before it is taken [°C]; left out: 5'),
  hives: between(SYRUP_BATCH_RANGES.hives).int().optional().describe('that share it; left out: all'),
  daysToLastFeeding: between(SYRUP_BATCH_RANGES.daysToLastFeeding)
    .optional()
    .describe('days until the last feeding day; with it jars are told'),
  containerL: between(SYRUP_BATCH_RANGES.containerL).optional().describe('container it is carried in [L]'),
  sugarBagKg: between(SYRUP_BATCH_RANGES.sugarBagKg).optional().describe('bag of sugar [kg]'),
  jarL: between(SYRUP_BATCH_RANGES.jarL).optional().describe('jar [L]'),
});
const candy = z.strictObject({
  lengthM: between(CANDY_SIDE_M).optional().describe('inside of the rim [m]; left out: of the hive'),
  widthM: between(CANDY_SIDE_M).optional().describe('inside of the rim [m]'),
  depthM: between(CANDY_DEPTH_M).optional().describe('of candy [m]; or sugarKg'),
  sugarKg: between(CANDY_SUGAR_KG).optional().describe('for one board [kg]'),
  boards: between(CANDY_BOARDS).int().optional().describe('how many; left out: one to a hive'),
  useKgPerDay: between(CANDY_USE_KG).optional().describe('what a colony eats [kg honey/day]'),
  clusterDate: z.iso.date().optional().describe('date after which no flying days are expected'),
  kind: z.enum(['no-cook', 'boiled']).optional().describe('left out: no-cook'),
});

export const input = z.strictObject({
  hives: between(KIT_RANGES.hives).int().describe('hives to build for'),
  top: z.enum(SHIPPED_TOPS).optional().describe('top to build'),
  frames: z
    .union([z.literal(5), z.literal(8), z.literal(10)])
    .default(10)
    .describe('width of the hives in frames'),
  syrup: syrup.optional().describe('syrup to mix'),
  candy: candy.optional().describe('candy boards to make'),
  stock: byItem('what lies in the shed: pieces, kilograms of fill and sugar', KIT_RANGES.stock).optional(),
  prices: byItem('for one sheet, board, roll, metre, bag or jar, in own money', KIT_RANGES.prices).optional(),
  sizes: z
    .strictObject(
      Object.fromEntries(
        KIT_SIZES.map((name) => [
          name,
          between({ ...KIT_RANGES.sizes, low: 0 })
            .optional()
            .describe(`[${unitOf(name)}]`),
        ]),
      ),
    )
    .optional()
    .describe('trade sizes other than the usual'),
});

function unitOf(name: string): string {
  if (name.endsWith('Kg')) return 'kg';
  return name.endsWith('L') ? 'L' : 'm';
}

const nullable = (text: string) => z.number().nullable().describe(text);
const patterns = z
  .array(
    z.strictObject({
      heightM: z.number().describe('width of the board [m]'),
      boards: z.number().describe('boards'),
      atLeast: z.number().describe('no way of cutting needs fewer'),
      patterns: z
        .array(
          z.strictObject({
            boards: z.number().describe('cut so'),
            piecesM: z.array(z.number()).readonly().describe('lengths in order [m]'),
            leftM: z.number().describe('left over [m]'),
          }),
        )
        .readonly()
        .describe('how'),
    }),
  )
  .readonly()
  .nullable()
  .describe('how boards are cut');
const sheetCut = z
  .strictObject({
    fromOne: z.number().describe('pieces from one'),
    sheets: z.number().describe('sheets or rolls'),
    over: z.number().describe('pieces over'),
    layout: z
      .array(
        z.strictObject({
          xM: z.number().describe('[m]'),
          yM: z.number().describe('[m]'),
          lengthM: z.number().describe('as it lies [m]'),
          widthM: z.number().describe('as it lies [m]'),
        }),
      )
      .readonly()
      .describe('pieces on a full one'),
  })
  .nullable()
  .describe('how sheets are cut');

export const output = z.strictObject({
  hives: z.number().describe('as asked'),
  top: z.enum(SHIPPED_TOPS).nullable().describe('as asked'),
  lines: z
    .array(
      z.strictObject({
        item: z.enum(KIT_ITEMS).describe('what'),
        piece: z
          .strictObject({
            lengthM: nullable('[m]'),
            widthM: nullable('[m]'),
            thicknessM: nullable('[m]'),
            kg: nullable('[kg]'),
            material: z.string().nullable().describe('of what'),
          })
          .describe('one piece'),
        unit: z.enum(['pieces', 'kg']).describe('of need, have and more'),
        need: z.number().describe('in all'),
        have: z.number().describe('in the shed'),
        more: z.number().describe('still to make or buy'),
        buyUnit: z.enum(['sheets', 'boards', 'rolls', 'm', 'bags', 'jars']).describe('of buy'),
        buy: z.number().describe('to buy'),
        price: nullable('for one of them'),
        cost: nullable('price times buy'),
        sheetCut,
        boardCut: patterns,
      }),
    )
    .readonly()
    .describe('the list'),
  things: z.number().describe('lines on which something is bought'),
  cost: nullable('of what has a price; null where nothing has'),
  unpriced: z.array(z.enum(KIT_ITEMS)).readonly().describe('bought without a price'),
  pieces: z
    .strictObject({
      footprint: z
        .strictObject({
          outsideLengthM: z.number().describe('[m]'),
          outsideWidthM: z.number().describe('[m]'),
          insideLengthM: z.number().describe('[m]'),
          insideWidthM: z.number().describe('[m]'),
          wallM: z.number().describe('[m]'),
        })
        .describe('of the hive'),
      foam: z
        .strictObject({
          material: z.string().describe('foam'),
          thicknessM: z.number().describe('[m]'),
          foilFaced: z.boolean().describe('shiny side down'),
        })
        .nullable()
        .describe('in the lid'),
      rims: z
        .array(z.strictObject({ use: z.enum(['absorbent box', 'candy rim']).describe('for'), heightM: z.number().describe('[m]') }))
        .readonly()
        .describe('boxes to build'),
      mesh: z.number().describe('to a hive'),
      meshPitchM: z.number().describe('openings of the mesh [m]'),
      keepsMiceOut: z.boolean().describe('whether they are below the widest slot published to keep mice out'),
      cloth: z.number().describe('to a hive'),
      fill: z
        .strictObject({
          material: z.string().describe('of what'),
          depthM: z.number().describe('dry [m]'),
          kg: z.number().describe('dry [kg]'),
        })
        .nullable()
        .describe('of one box'),
      ventHoles: z.number().describe('holes to a box, common practice'),
      ventHoleM: z.number().describe('across [m]'),
      lidM: z.number().describe('thickness of the lid [m]'),
    })
    .nullable()
    .describe('of one top'),
  syrup: z
    .strictObject({
      syrup: syrupOutput.describe('as `syrup` answers'),
      perHiveL: z.number().describe('[L]'),
      sugarBags: z.number().describe('bags'),
      sugarBagKg: z.number().describe('of this size [kg]'),
      containers: z.number().describe('containers'),
      containerL: z.number().describe('of this size [L]'),
      grains: z.boolean().describe('it may grain where it stands'),
      jars: z
        .strictObject({
          fills: z.number().describe('jarfuls in all'),
          fillsPerHive: z.number().describe('to a hive'),
          atOnce: z.number().describe('on a hive at one time'),
          jars: z.number().describe('jars for that'),
          holes: z.number().describe('in a lid, common practice'),
          holeM: z.number().describe('across [m]'),
          daysNeeded: z.number().describe('until all is taken [days]'),
          leftPerHiveL: z.number().describe('not taken in time [L]'),
        })
        .nullable()
        .describe('null without daysToLastFeeding'),
    })
    .nullable()
    .describe('the batch'),
  candy: z
    .strictObject({
      kind: z.enum(['no-cook', 'boiled']).describe('recipe'),
      boards: z.number().describe('boards'),
      sugarKg: z.number().describe('in one [kg]'),
      waterKg: z.number().describe('in one [kg]'),
      massKg: z.number().describe('of one, damp [kg]'),
      volumeL: z.number().describe('of one [L]'),
      allSugarKg: z.number().describe('in all [kg]'),
      allWaterKg: z.number().describe('in all [kg]'),
      dryHours: z.number().describe('set and dry before it goes on [h]'),
      cook: z
        .strictObject({ hardC: z.number().describe('[°C]'), softC: z.number().describe('[°C]'), stirAtC: z.number().describe('[°C]') })
        .nullable()
        .describe('end of cooking for hard and soft candy, and where it is stirred white; null for no-cook'),
      lastsHours: nullable('one board, nothing else eaten [h]'),
      lastsDays: nullable('the same [days]'),
      onFrom: z.iso.date().nullable().describe('goes on from this date'),
      onAboveC: z.number().describe('the lid is lifted above this, for seconds [°C]'),
      cautions: z
        .array(
          z.enum([
            'no-acid',
            'no-boiling',
            'white-sugar-only',
            'open-briefly',
            'not-wet-on-cluster',
            'hot-sugar-burns',
            'after-warm-days',
            'heat-makes-harm',
          ]),
        )
        .readonly()
        .describe('what to mind'),
    })
    .nullable()
    .describe('the boards'),
});

export const example = {
  hives: 12,
  top: 'vented-box' as const,
  syrup: { ratio: '2:1', basis: 'mass' as const, amount: 10, unit: 'US gal' as const, daysToLastFeeding: 14 },
  candy: { depthM: 0.03, useKgPerDay: 0.04, clusterDate: '2026-11-20' },
  stock: { foam: 3, fill: 10, jars: 8 },
  prices: { foam: 36, boards: 7, mesh: 21, cloth: 4, fill: 6.5, lid: 42, sugar: 19, jars: 1.2 },
};
