import { CANDY_DEPTH_M, CANDY_SIDE_M, CANDY_SUGAR_KG } from '@winterheft/core';
import * as z from 'zod';

const side = z.number().min(CANDY_SIDE_M.low).max(CANDY_SIDE_M.high);

export const input = z.strictObject({
  lengthM: side.optional().describe('inside length of the rim [m]; with widthM and depthM, or sugarKg alone'),
  widthM: side.optional().describe('inside width of the rim [m]'),
  depthM: z.number().min(CANDY_DEPTH_M.low).max(CANDY_DEPTH_M.high).optional().describe('depth of candy in it [m]'),
  sugarKg: z.number().min(CANDY_SUGAR_KG.low).max(CANDY_SUGAR_KG.high).optional().describe('sugar to use up [kg]'),
});

export const output = z.strictObject({
  sugarKg: z.number().describe('white sugar [kg]'),
  waterKg: z.number().describe('water [kg]'),
  massKg: z.number().describe('damp, as packed; most of the water dries off [kg]'),
  volumeL: z.number().describe('what it fills, about a fifth more or less by how hard it is packed [L]'),
  cautions: z
    .array(z.enum(['no-acid', 'no-boiling', 'white-sugar-only', 'open-briefly', 'not-wet-on-cluster']))
    .readonly()
    .describe('what to mind, as codes'),
});

export const example = { lengthM: 0.467, widthM: 0.375, depthM: 0.038 };
