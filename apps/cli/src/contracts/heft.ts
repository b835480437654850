import {
  EDGE_READING_KG,
  FRONT_SHARE_SD,
  GEOMETRY_RANGES,
  plausibleGrossRange,
  plausibleShareRange,
  READING_SCATTER_KG,
  SCALE_CALIBRATION,
  SCALE_STEP_KG,
  standardShareSdFrac,
  weighParameters,
} from '@winterheft/core';
import * as z from 'zod';

const within = ({ low, high }: { readonly low: number; readonly high: number }) => z.number().min(low).max(high);
const length = (field: Exclude<keyof typeof GEOMETRY_RANGES, 'pullLeanDeg'>, meaning: string) =>
  within(GEOMETRY_RANGES[field]).default(weighParameters[field].value).describe(`${meaning} [m]`);
const gross = plausibleGrossRange();

export const input = z.strictObject({
  frontKg: within(EDGE_READING_KG).optional().describe('what the scale shows lifting the front edge [kg]; this, rearKg or both'),
  rearKg: within(EDGE_READING_KG).optional().describe('what the scale shows lifting the rear edge [kg]'),
  baseDepthM: length('baseDepthM', 'front to rear of the base'),
  pivotInsetM: length('pivotInsetM', 'how far in from each edge the hive turns'),
  frontOverhangM: length(
    'frontOverhangM',
    'how far the front hook sticks out beyond the edge; 0.05 to 0.10 on a landing board, negative inside',
  ),
  rearOverhangM: length('rearOverhangM', 'the same at the rear'),
  frontHookHeightM: length('frontHookHeightM', 'height of the front hook above the base'),
  rearHookHeightM: length('rearHookHeightM', 'the same at the rear'),
  centreHeightM: length('centreHeightM', 'height of the centre of the hive above its base: one deep box about 0.17, two 0.30, three 0.45'),
  liftM: length('liftM', 'how far the edge is lifted when read'),
  pullLeanDeg: within(GEOMETRY_RANGES.pullLeanDeg)
    .default(weighParameters.pullLeanDeg.value)
    .describe('how far the pull leans over the hive [degrees]; negative away from it'),
  scaleStepKg: within(SCALE_STEP_KG).default(weighParameters.scaleStepKg.value).describe('smallest step the scale shows [kg]'),
  scaleCalibrationFrac: within(SCALE_CALIBRATION)
    .default(weighParameters.scaleCalibrationFrac.value)
    .describe('standard deviation of the scale’s own error as a share of the reading'),
  readingScatterKg: within(READING_SCATTER_KG)
    .default(weighParameters.readingScatterKg.value)
    .describe('standard deviation of one edge read again [kg]'),
  frontShareFrac: within(plausibleShareRange())
    .default(weighParameters.frontShareFrac.value)
    .describe('share of the weight the front edge bears, used where one edge was read'),
  frontShareSdFrac: within(FRONT_SHARE_SD).default(standardShareSdFrac()).describe('standard deviation of that share'),
  needGrossKg: z
    .number()
    .min(gross.lowKg)
    .max(gross.highKg)
    .optional()
    .describe('weight of the whole hive to reach [kg]; then the readings to stop at are told'),
});

const sd = (cause: string) => z.number().describe(`from ${cause} [kg]`);

export const output = z.strictObject({
  totalKg: z.number().describe('weight of the whole hive [kg]'),
  sdKg: z.number().describe('its standard deviation [kg]'),
  basis: z.enum(['both', 'front', 'rear']).describe('edges it rests on'),
  frontShareFrac: z.number().describe('share of the weight the front edge bears: found from both edges, else as given'),
  frontShareSdFrac: z.number().describe('its standard deviation'),
  sdParts: z
    .strictObject({
      stepKg: sd('the step of the scale'),
      scatterKg: sd('reading again'),
      calibrationKg: sd('the scale itself, the same for every hive it weighs'),
      liftKg: sd('how far it was lifted'),
      hookKg: sd('where the hook sat'),
      centreHeightKg: sd('how high the centre lies'),
      shareKg: sd('the front share; 0 where both edges were read'),
    })
    .describe('standard deviations by cause; their squares add up to that of sdKg'),
  targetFrontKg: z.number().optional().describe('with needGrossKg: reading at the front edge to stop at [kg]'),
  targetFrontSdKg: z.number().optional().describe('its standard deviation [kg]'),
  targetRearKg: z.number().optional().describe('reading at the rear edge to stop at [kg]'),
  targetRearSdKg: z.number().optional().describe('its standard deviation [kg]'),
});

export const example = { frontKg: 18.5, rearKg: 21, frontOverhangM: 0.05, needGrossKg: 52 };
