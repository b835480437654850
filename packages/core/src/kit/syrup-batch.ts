import { type SyrupAnswer, syrup } from '../matter/index.ts';
import { provisionParameters } from '../provision/index.ts';
import { bad, good, inRange, type Result } from '../result/index.ts';
import { kitParameters } from '../tables/parameters-kit.gen.ts';
import { imperialGallonToL, imperialQuartToL, lbToKg, usGallonToL, usQuartToL } from '../units/index.ts';

/** What an amount is given in. A gallon is never bare: US and imperial differ by a fifth. */
export const SYRUP_UNITS = ['L', 'US gal', 'US qt', 'imp gal', 'imp qt', 'kg sugar', 'lb sugar'] as const;
export type SyrupUnit = (typeof SYRUP_UNITS)[number];

export interface SyrupBatchInput {
  /** Sugar to water, for example 2:1. */
  readonly ratio: string;
  readonly basis: 'mass' | 'volume';
  readonly amount: number;
  readonly unit: SyrupUnit;
  readonly tempC?: number | undefined;
  /** Coldest the syrup will stand at before it is taken [degC]: for the warning that it grains. */
  readonly standsAtC?: number | undefined;
  readonly hives?: number | undefined;
  /** Days until the last feeding day. */
  readonly daysToLastFeeding?: number | undefined;
  readonly containerL?: number | undefined;
  readonly sugarBagKg?: number | undefined;
  readonly jarL?: number | undefined;
}

export interface SyrupJars {
  /** Jarfuls in all and to a hive. */
  readonly fills: number;
  readonly fillsPerHive: number;
  /** On every hive at one time, so that all is taken in time. */
  readonly atOnce: number;
  readonly jars: number;
  readonly holes: number;
  readonly holeM: number;
  readonly daysNeeded: number;
  /** Syrup a hive cannot take in time [L]; 0 where all is taken. */
  readonly leftPerHiveL: number;
}

export interface SyrupBatch {
  readonly syrup: SyrupAnswer;
  readonly perHiveL: number;
  readonly sugarBags: number;
  readonly sugarBagKg: number;
  readonly containers: number;
  readonly containerL: number;
  /** True where it may grain at the temperature it stands at. */
  readonly grains: boolean;
  /** null without a number of days. */
  readonly jars: SyrupJars | null;
}

const TO_LITRES: Readonly<Partial<Record<SyrupUnit, (amount: number) => number>>> = {
  L: (amount) => amount,
  'US gal': usGallonToL,
  'US qt': usQuartToL,
  'imp gal': imperialGallonToL,
  'imp qt': imperialQuartToL,
};

export const SYRUP_BATCH_RANGES = {
  hives: { low: 1, high: 500, unit: 'hives' },
  daysToLastFeeding: { low: 0, high: 150, unit: 'days' },
  containerL: { low: 0.5, high: 1500, unit: 'L' },
  sugarBagKg: { low: 0.5, high: 1500, unit: 'kg' },
  jarL: { low: 0.2, high: 10, unit: 'L' },
  standsAtC: { low: -20, high: 60, unit: '°C' },
} as const;

/**
 * A batch of syrup: what to buy and pour, whether it grains, how many jars so that it is taken before the last feeding day.
 *
 * input     ratio with basis, an amount in a unit, for so many hives together
 * returns   the syrup as `syrup` tells it, bags, containers, jars; or what is wrong
 * source    uptake as in provision, jars [kit-practice]
 * checked   kit.test.ts
 */
export function syrupBatch(input: SyrupBatchInput): Result<SyrupBatch> {
  if (!SYRUP_UNITS.includes(input.unit))
    return bad({ kind: 'unknown-choice', field: 'unit', value: String(input.unit), choices: SYRUP_UNITS });
  const p = kitParameters;
  const given = {
    hives: input.hives ?? 1,
    containerL: input.containerL ?? p.containerL.value,
    sugarBagKg: input.sugarBagKg ?? p.sugarBagKg.value,
    jarL: input.jarL ?? p.jarL.value,
  };
  for (const [field, value] of Object.entries(given)) {
    const checked = inRange(field, value, SYRUP_BATCH_RANGES[field as keyof typeof given]);
    if (!checked.ok) return checked;
  }
  if (!Number.isInteger(given.hives)) return bad({ kind: 'implausible', field: 'hives', value: given.hives, unit: '', why: 'not-whole' });
  const stands = inRange('standsAtC', input.standsAtC ?? 5, SYRUP_BATCH_RANGES.standsAtC);
  if (!stands.ok) return stands;
  const litres = TO_LITRES[input.unit];
  const sugarKg = input.unit === 'lb sugar' ? lbToKg(input.amount) : input.amount;
  const made = syrup({
    ratio: input.ratio,
    basis: input.basis,
    tempC: input.tempC,
    ...(litres === undefined ? { sugarKg } : { volumeL: litres(input.amount) }),
  });
  if (!made.ok) return made;
  const { volumeL, saturationTempRangeC, saturationTempC, supersaturated } = made.value;
  const perHiveL = volumeL / given.hives;
  const jars = jarsFor(input, { perHiveL, ...given });
  if (!jars.ok) return jars;
  return good({
    syrup: made.value,
    perHiveL,
    sugarBags: Math.ceil(made.value.sugarKg / given.sugarBagKg - 1e-9),
    sugarBagKg: given.sugarBagKg,
    containers: Math.ceil(volumeL / given.containerL - 1e-9),
    containerL: given.containerL,
    grains: supersaturated || (saturationTempC !== null && (saturationTempRangeC?.high ?? saturationTempC) > stands.value),
    jars: jars.value,
  });
}

function jarsFor(input: SyrupBatchInput, of: { perHiveL: number; hives: number; jarL: number }): Result<SyrupJars | null> {
  if (input.daysToLastFeeding === undefined) return good(null);
  const days = inRange('daysToLastFeeding', input.daysToLastFeeding, SYRUP_BATCH_RANGES.daysToLastFeeding);
  if (!days.ok) return days;
  const p = kitParameters;
  const { perHiveL, hives, jarL } = of;
  const perJar = p.jarTakenLPerDay.value;
  const most = p.jarsOverHive.value;
  const needed = days.value > 0 ? Math.ceil(perHiveL / (days.value * perJar) - 1e-9) : most;
  const fillsPerHive = Math.ceil(perHiveL / jarL - 1e-9);
  const atOnce = Math.max(1, Math.min(most, needed, fillsPerHive));
  const takenLPerDay = Math.min(atOnce * perJar, provisionParameters.uptakeLPerDay.value);
  return good({
    fills: fillsPerHive * hives,
    fillsPerHive,
    atOnce,
    jars: atOnce * hives,
    holes: p.jarHoles.value,
    holeM: p.jarHoleM.value,
    daysNeeded: perHiveL / takenLPerDay,
    leftPerHiveL: Math.max(0, perHiveL - takenLPerDay * days.value),
  });
}
