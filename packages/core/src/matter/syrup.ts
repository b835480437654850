import { type BadInput, bad, good, inRange, type Result } from '../result/index.ts';
import { matterParameters } from '../tables/parameters-matter.gen.ts';
import { saturationFrac, saturationTempC } from './solubility.ts';
import { isYieldExtrapolated, type StoresRange, storesFromSugarKg } from './stores-from-sugar.ts';
import { SYRUP_TEMP_RANGE, sucroseDensityKgPerM3, waterDensityKgPerM3 } from './sucrose.ts';

export interface SyrupInput {
  readonly sugarKg?: number | undefined;
  readonly waterKg?: number | undefined;
  /** Sugar to water, for example "2:1". Means nothing without `basis`. */
  readonly ratio?: string | undefined;
  readonly basis?: 'mass' | 'volume' | undefined;
  readonly volumeL?: number | undefined;
  readonly tempC?: number | undefined;
}

export interface SyrupAnswer {
  readonly sugarFrac: number;
  readonly densityKgPerM3: number;
  readonly volumeL: number;
  readonly sugarKg: number;
  readonly waterKg: number;
  readonly massKg: number;
  /** Kilograms of stores by two rules that disagree and the experiment between them; plan on `low`. */
  readonly storesKg: StoresRange;
  /** True where the strength lies outside the experiment's. */
  readonly storesExtrapolated: boolean;
  /** Below this the syrup can grain; null where it never does above 0 degC, or does up to 100 degC. */
  readonly saturationTempC: number | null;
  /** The same by the two other published relations, lowest and highest of all three. */
  readonly saturationTempRangeC: { readonly low: number; readonly high: number } | null;
  readonly supersaturated: boolean;
}

export const SYRUP_AMOUNT_KG = { low: 0.01, high: 5000, unit: 'kg' } as const;
export const SYRUP_AMOUNT_L = { low: 0.01, high: 5000, unit: 'L' } as const;
/** A strength that can be stirred at all; syrup for bees lies between 0.33 and 0.70. */
const SYRUP_STRENGTH = { low: 0.01, high: 0.85, unit: 'kg sugar per kg' } as const;

const WAYS = [
  ['sugarKg', 'waterKg'],
  ['ratio', 'basis', 'volumeL'],
  ['ratio', 'basis', 'sugarKg'],
];
/** Shown where a ratio cannot be read; any a:b goes. */
const RATIO_EXAMPLES = ['2:1', '5:3', '3:2', '1:1', '1:0.63'];

/**
 * What a syrup is: strength, density, volume, what it becomes in the combs, when it grains.
 *
 * input       sugarKg and waterKg; or ratio with basis and one of volumeL, sugarKg. Volumes are not additive: 1 kg sugar
 *             and 0.5 kg water make 1.13 L. By volume, sugar is poured loose and water measured at 20 degC.
 * returns     the answer, or what is wrong with the input
 * source      [icumsa-sps4], [vavrinecz-1962], [sugar-cup]; stores as in `storesPerSugarKg`
 * checked     checks/sugar.ts, sugar.test.ts
 */
export function syrup(input: SyrupInput): Result<SyrupAnswer> {
  const tempC = input.tempC ?? matterParameters.syrupTempC.value;
  const temp = inRange('tempC', tempC, SYRUP_TEMP_RANGE);
  if (!temp.ok) return temp;
  const amounts = input.ratio === undefined ? fromMasses(input) : fromRatio(input, input.ratio, tempC);
  if (!amounts.ok) return amounts;
  const { sugarKg, waterKg } = amounts.value;
  const massKg = sugarKg + waterKg;
  const sugarFrac = sugarKg / massKg;
  const densityKgPerM3 = sucroseDensityKgPerM3(sugarFrac, tempC);
  return good({
    sugarFrac,
    densityKgPerM3,
    volumeL: (massKg / densityKgPerM3) * 1000,
    sugarKg,
    waterKg,
    massKg,
    storesKg: storesFromSugarKg(sugarKg, sugarFrac),
    storesExtrapolated: isYieldExtrapolated(sugarFrac),
    saturationTempC: saturationTempC(sugarFrac),
    saturationTempRangeC: saturationSpreadC(sugarFrac),
    supersaturated: sugarFrac > saturationFrac(tempC),
  });
}

interface Amounts {
  readonly sugarKg: number;
  readonly waterKg: number;
}

function fromMasses(input: SyrupInput): Result<Amounts> {
  if (input.basis !== undefined) return bad({ kind: 'missing', field: 'ratio' });
  if (input.volumeL !== undefined) return bad({ kind: 'conflict', fields: ['volumeL'], why: 'volume-needs-ratio' });
  if (input.sugarKg === undefined && input.waterKg === undefined) return bad({ kind: 'missing-all', ways: WAYS });
  const sugar = inRange('sugarKg', input.sugarKg, SYRUP_AMOUNT_KG);
  if (!sugar.ok) return sugar;
  const water = inRange('waterKg', input.waterKg, SYRUP_AMOUNT_KG);
  if (!water.ok) return water;
  const strength = inRange('sugarKg/(sugarKg+waterKg)', sugar.value / (sugar.value + water.value), SYRUP_STRENGTH);
  return strength.ok ? good({ sugarKg: sugar.value, waterKg: water.value }) : strength;
}

function fromRatio(input: SyrupInput, ratio: string, tempC: number): Result<Amounts> {
  if (input.waterKg !== undefined) return bad({ kind: 'conflict', fields: ['ratio', 'waterKg'], why: 'ratio-or-water' });
  if (input.basis === undefined) return bad({ kind: 'missing', field: 'basis' });
  if (input.basis !== 'mass' && input.basis !== 'volume') {
    return bad({ kind: 'unknown-choice', field: 'basis', value: String(input.basis), choices: ['mass', 'volume'] });
  }
  const strength = strengthOf(ratio, input.basis);
  if (!strength.ok) return strength;
  if (input.volumeL !== undefined && input.sugarKg !== undefined) {
    return bad({ kind: 'conflict', fields: ['volumeL', 'sugarKg'], why: 'volume-or-sugar' });
  }
  if (input.volumeL === undefined) {
    if (input.sugarKg === undefined) return bad({ kind: 'missing-all', ways: [['volumeL'], ['sugarKg']] });
    const sugar = inRange('sugarKg', input.sugarKg, SYRUP_AMOUNT_KG);
    return sugar.ok ? good({ sugarKg: sugar.value, waterKg: sugar.value / strength.value - sugar.value }) : sugar;
  }
  const volume = inRange('volumeL', input.volumeL, SYRUP_AMOUNT_L);
  if (!volume.ok) return volume;
  const massKg = (volume.value / 1000) * sucroseDensityKgPerM3(strength.value, tempC);
  return good({ sugarKg: massKg * strength.value, waterKg: massKg * (1 - strength.value) });
}

/** Mass fraction of sugar in a syrup mixed sugar to water by mass, or by the volume of poured sugar and of water. */
function strengthOf(ratio: string, basis: 'mass' | 'volume'): Result<number, BadInput> {
  const parts = /^\s*(\d{1,4}(?:\.\d{1,4})?)\s*:\s*(\d{1,4}(?:\.\d{1,4})?)\s*$/.exec(ratio);
  if (!parts) return bad({ kind: 'unknown-choice', field: 'ratio', value: ratio, choices: RATIO_EXAMPLES });
  const sugarPerL = basis === 'mass' ? 1 : matterParameters.sugarKgPerL.value;
  const waterPerL = basis === 'mass' ? 1 : waterDensityKgPerM3(20) / 1000;
  const sugar = Number(parts[1]) * sugarPerL;
  const water = Number(parts[2]) * waterPerL;
  return inRange('ratio', sugar / (sugar + water), SYRUP_STRENGTH);
}

function saturationSpreadC(sugarFrac: number): { low: number; high: number } | null {
  const temps = (['vavrinecz', 'charles', 'herzfeld'] as const).map((relation) => saturationTempC(sugarFrac, relation));
  const known = temps.filter((t) => t !== null);
  return known.length === 0 ? null : { low: Math.min(...known), high: Math.max(...known) };
}
