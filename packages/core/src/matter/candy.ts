import { bad, good, inRange, type Result } from '../result/index.ts';
import { matterParameters } from '../tables/parameters-matter.gen.ts';

/** Said with every recipe; the shell words them. */
export type CandyCaution = 'no-acid' | 'no-boiling' | 'white-sugar-only' | 'open-briefly' | 'not-wet-on-cluster';

export interface CandyInput {
  readonly lengthM?: number | undefined;
  readonly widthM?: number | undefined;
  readonly depthM?: number | undefined;
  readonly sugarKg?: number | undefined;
}

export interface CandyAnswer {
  readonly sugarKg: number;
  readonly waterKg: number;
  /** Damp, as packed; most of the water dries off. */
  readonly massKg: number;
  readonly volumeL: number;
  readonly cautions: readonly CandyCaution[];
}

export const CANDY_SIDE_M = { low: 0.05, high: 0.7, unit: 'm' } as const;
export const CANDY_DEPTH_M = { low: 0.005, high: 0.2, unit: 'm' } as const;
export const CANDY_SUGAR_KG = { low: 0.05, high: 500, unit: 'kg' } as const;
const RIM = ['lengthM', 'widthM', 'depthM'] as const;

/**
 * Sugar and water for no-cook candy, to fill a rim or to use up an amount of sugar.
 *
 * No acid and no boiling in this recipe: acid and heat make hydroxymethylfurfural, which harms bees. Other circulating
 * recipes hold vinegar or cream of tartar.
 *
 * input       inside lengthM, widthM, depthM of the rim; or sugarKg
 * returns     masses, the volume it packs to (about +-20 % by how hard it is packed), cautions as codes
 * source      [candy-no-cook], [candy-block-sizes]; cautions [candy-acid], [nbu-feeding], [candy-opening]
 * checked     checks/sugar.ts
 */
export function candy(input: CandyInput): Result<CandyAnswer> {
  const waterPerSugar = matterParameters.candyWaterPerSugarFrac.value;
  const packedKgPerL = matterParameters.candyPackedKgPerL.value;
  const sugar = input.sugarKg === undefined ? sugarToFill(input, packedKgPerL / (1 + waterPerSugar)) : sugarGiven(input);
  if (!sugar.ok) return sugar;
  const massKg = sugar.value * (1 + waterPerSugar);
  return good({
    sugarKg: sugar.value,
    waterKg: sugar.value * waterPerSugar,
    massKg,
    volumeL: massKg / packedKgPerL,
    cautions: ['no-acid', 'no-boiling', 'white-sugar-only', 'open-briefly', 'not-wet-on-cluster'],
  });
}

function sugarToFill(input: CandyInput, sugarKgPerL: number): Result<number> {
  if (RIM.every((field) => input[field] === undefined)) return bad({ kind: 'missing-all', ways: [RIM, ['sugarKg']] });
  const length = inRange('lengthM', input.lengthM, CANDY_SIDE_M);
  if (!length.ok) return length;
  const width = inRange('widthM', input.widthM, CANDY_SIDE_M);
  if (!width.ok) return width;
  const depth = inRange('depthM', input.depthM, CANDY_DEPTH_M);
  if (!depth.ok) return depth;
  return good(length.value * width.value * depth.value * 1000 * sugarKgPerL);
}

function sugarGiven(input: CandyInput): Result<number> {
  const sized = RIM.filter((field) => input[field] !== undefined);
  if (sized.length > 0) return bad({ kind: 'conflict', fields: ['sugarKg', ...sized], why: 'sugar-or-rim' });
  return inRange('sugarKg', input.sugarKg, CANDY_SUGAR_KG);
}
