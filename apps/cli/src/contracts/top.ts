import { hivetopParameters, materialKeys, TOP_LAYERS, TOP_RANGES } from '@winterheft/core';
import * as z from 'zod';

const range = (name: keyof typeof TOP_RANGES) => z.number().min(TOP_RANGES[name].low).max(TOP_RANGES[name].high);
const keys = materialKeys();
export const material = z.enum(keys as [string, ...string[]]);

export const layer = z.strictObject({
  material: material.describe('what it is; "air space" is an empty one, "foil" a shiny side'),
  thicknessM: range('thicknessM').describe('[m]'),
  coversFrac: range('coversFrac').optional().describe('share of the area it covers, the rest open to air; left out: all'),
  dryKg: range('dryKg').optional().describe('dry mass [kg]; left out: from thickness and density'),
});
export const opening = z.strictObject({
  areaM2: range('areaM2').describe('free area [m2]'),
  heightM: range('heightM').describe('height of its middle above the top bars of the upper box, negative below [m]'),
  tallM: range('tallM').optional().describe('how tall it is [m]; left out: a 19 mm hole, or less where its area is smaller'),
});
export const hiveBuild = z.array(
  z.strictObject({
    part: z.string().describe('key of the parts table'),
    count: z.number().describe('how many'),
    massKg: z.number().optional().describe('own weight of one piece [kg]'),
  }),
);
export const stack = z.array(layer).min(TOP_LAYERS.low).max(TOP_LAYERS.high);
export const openings = z.array(opening).max(24);

export const input = z.strictObject({
  outsideC: range('outsideC').describe('air outside [°C]'),
  outsideRhFrac: range('outsideRhFrac')
    .default(hivetopParameters.outsideRhFrac.value)
    .describe('humidity outside over liquid water, as stations give it [1]'),
  useKgPerDay: range('useKgPerDay').describe('honey eaten [kg/day]: it makes the water'),
  clusterHeatW: range('clusterHeatW')
    .optional()
    .describe('heat the cluster gives to the air around it [W]; left out: what that honey sets free less what evaporating its water takes'),
  stack: stack.describe('layers from the cluster up; the uppermost, but for snow, must hold air back'),
  openings: openings.default([]).describe('of the hive and its top'),
  absorbent: z
    .strictObject({ material: material.describe('fill or cloth that takes up water'), dryKg: range('dryKg').describe('dry mass [kg]') })
    .optional()
    .describe('mass of the layer of that material; where the stack has none it is laid in the lowest cavity above the hive'),
  days: range('days').default(1).describe('days of this weather'),
  windMPerS: range('windMPerS').default(0).describe('wind at the hive [m/s]: gusts in and out of every opening'),
  candyUseKgPerDay: range('useKgPerDay').default(0).describe('of useKgPerDay, eaten from candy in the stack [kg/day]'),
  hive: hiveBuild.optional().describe('the hive under the top; left out: two deep ten-frame boxes of wood'),
});

const kg = (text: string) => z.number().describe(`${text} [kg]`);
export const answer = {
  surfaces: z
    .array(
      z.strictObject({
        layer: z.string().describe('material of the layer'),
        tempC: z.number().describe('of its lower face [°C]'),
        wet: z.boolean().describe('drops stand on it'),
        frost: z.boolean().describe('frost stands on it'),
        waterKg: kg('on it, liquid or ice'),
        heightM: z.number().describe('of the face above the top bars [m]'),
        dewPointC: z.number().describe('of the air at it, over water [°C]'),
        frostPointC: z.number().nullable().describe('of the air at it, over ice; null where dew comes first [°C]'),
      }),
    )
    .readonly()
    .describe('lower face of each layer, from the cluster up'),
  dewPointC: z.number().describe('of the air around the cluster, over water [°C]'),
  frostPointC: z.number().nullable().describe('the same over ice [°C]'),
  waterMadeKg: kg('water made by the bees'),
  waterOutKg: kg('of it carried out with the air and through the lid'),
  waterHeldKg: kg('of it held by wood, fill, candy and as drops'),
  waterFrozenKg: kg('of it hanging as ice'),
  waterDrippedKg: kg('of it fallen or run down'),
  ranDownWallsKg: kg('of waterDrippedKg, run down the walls'),
  airflowKgPerS: z.number().describe('air in through the openings, as much as out [kg/s]'),
  insideC: z.number().describe('air around the cluster [°C]'),
  places: z
    .array(
      z.strictObject({
        place: z.enum(['upper walls', 'lower walls', 'upper corners', 'fill']).describe('where'),
        tempC: z.number().describe('of its face; of the coldest slice of a fill [°C]'),
        wet: z.boolean().describe('drops'),
        frost: z.boolean().describe('frost'),
        waterKg: kg('drops or ice there'),
      }),
    )
    .readonly()
    .describe('places beside the layers'),
  heat: z
    .strictObject({
      clusterW: z.number().describe('from the cluster [W]'),
      latentW: z.number().describe('set free by settling water, less what drying took [W]'),
      topW: z.number().describe('out through the lid [W]'),
      rimW: z.number().describe('through rims of the top [W]'),
      wallsW: z.number().describe('through walls beside the warm air [W]'),
      belowW: z.number().describe('down and out through the rest of the hive [W]'),
      airW: z.number().describe('with the air [W]'),
    })
    .describe('on the last day; the last five add up to the first two'),
  fill: z
    .strictObject({
      material: z.string().describe('what it is'),
      dryKg: kg('dry'),
      depthM: z.number().describe('dry [m]'),
      freeM: z.number().describe('empty height over it [m]'),
      swollenDepthM: z.number().describe('with the water it holds [m]'),
      heldKg: kg('water in it, what it came with included'),
      vapourCapacityKg: kg('what it can take from damp air'),
      liquidCapacityKg: kg('what it can hold before it drips'),
    })
    .nullable()
    .describe('the absorbent; null without one'),
  absorbentFullDay: z.number().nullable().describe('first day on which it could hold no more; null within the days asked'),
  candyLeftKg: z.number().nullable().describe('dry [kg]; null without candy'),
  notes: z
    .array(
      z.enum([
        'foam-below-test-range',
        'two-way-opening',
        'no-opening',
        'bees-fan-for-air',
        'outside-air-above-ice',
        'heat-does-not-match-use',
        'wood-below-table',
        'absorbent-placed-lowest',
        'fill-has-no-room',
        'absorbent-full',
        'candy-eaten',
      ]),
    )
    .readonly()
    .describe('what to know about these figures, as codes'),
};
export const output = z.strictObject(answer);

export const example = {
  outsideC: -18,
  useKgPerDay: 0.045,
  stack: [
    { material: 'air space', thicknessM: 0.0095 },
    { material: 'burlap', thicknessM: 0.002 },
    { material: 'shavings', thicknessM: 0.08 },
    { material: 'air space', thicknessM: 0.04 },
    { material: 'foil', thicknessM: 0.0001 },
    { material: 'xps', thicknessM: 0.05 },
    { material: 'pine', thicknessM: 0.019 },
  ],
  openings: [
    { areaM2: 0.0007, heightM: -0.45 },
    { areaM2: 0.0003, heightM: 0.11 },
  ],
  absorbent: { material: 'shavings', dryKg: 1.6 },
  days: 30,
};
