import { bad, good, inRange, type Result } from '../result/index.ts';
import { MITE_TREATMENTS } from '../tables/mite-treatments.gen.ts';
import type { MiteTreatment } from '../tables/mites.ts';

/** Limits the keeper typed from the label in hand. What it says rules; what it leaves open is asked for, not filled from elsewhere. */
export interface TreatmentLabel {
  readonly key: string;
  readonly product?: string | undefined;
  readonly edition?: string | undefined;
  readonly tempLowC?: number | undefined;
  readonly tempHighC?: number | undefined;
  readonly stopHighC?: number | undefined;
  readonly stopDays?: number | undefined;
  readonly durationDays?: number | undefined;
  readonly broodless?: boolean | undefined;
  readonly supersOff?: boolean | undefined;
  readonly withdrawalDays?: number | undefined;
}

/** The limits that hold for one form of an active ingredient. */
export interface TreatmentLimits {
  readonly by: 'label' | 'table';
  readonly tempBasis: 'none' | 'day-high' | 'day-mean';
  readonly tempLowC: number | null;
  readonly tempHighC: number | null;
  readonly stopHighC: number | null;
  readonly stopDays: number | null;
  readonly durationDays: number | null;
  readonly broodless: boolean;
  /** Null: only the label says. */
  readonly supersOff: boolean | null;
  readonly withdrawalDays: number | null;
}

/** A figure of the label that lies far from what was read elsewhere: asked back, never replaced. */
export interface LabelDiffers {
  readonly field: 'tempLowC' | 'tempHighC' | 'stopHighC' | 'durationDays' | 'broodless' | 'supersOff';
  readonly label: number | boolean;
  readonly read: number | boolean;
}

export const treatmentKeys = (): readonly string[] => MITE_TREATMENTS.map(({ key }) => key);
export const treatmentRows = (): readonly MiteTreatment[] => MITE_TREATMENTS;

const LABEL_TEMP = { low: -10, high: 45, unit: 'degC' } as const;
const LABEL_DAYS = { low: 1, high: 120, unit: 'days' } as const;
/** A label within so much of what was read is taken without a question. */
const NEAR_C = 3;
const NEAR_DAYS_FRAC = 0.5;

/**
 * A label's limits checked for what cannot be.
 *
 * errors   BadInput: a key not of the table, a temperature outside -10 to 45 degC (degF typed as degC), low not below high, a
 *          stop below the high limit, days outside 1 to 120
 */
export function checkedLabel(label: TreatmentLabel, field = 'label'): Result<TreatmentLabel> {
  if (!MITE_TREATMENTS.some(({ key }) => key === label.key))
    return bad({ kind: 'unknown-choice', field: `${field}.key`, value: label.key, choices: treatmentKeys() });
  for (const name of ['tempLowC', 'tempHighC', 'stopHighC'] as const) {
    if (label[name] === undefined) continue;
    const value = inRange(`${field}.${name}`, label[name], LABEL_TEMP);
    if (!value.ok) return value;
  }
  for (const name of ['durationDays', 'stopDays'] as const) {
    if (label[name] === undefined) continue;
    const value = inRange(`${field}.${name}`, label[name], LABEL_DAYS);
    if (!value.ok) return value;
  }
  if (label.tempLowC !== undefined && label.tempHighC !== undefined && !(label.tempLowC < label.tempHighC))
    return bad({ kind: 'conflict', fields: [`${field}.tempLowC`, `${field}.tempHighC`], why: 'low-below-high' });
  if (label.stopHighC !== undefined && label.tempHighC !== undefined && label.stopHighC < label.tempHighC)
    return bad({ kind: 'conflict', fields: [`${field}.tempHighC`, `${field}.stopHighC`], why: 'low-below-high' });
  return good(label);
}

/** The limits that hold: the label's, or where none was typed those of a row that may decide; null where neither is. */
export function limitsOf(row: MiteTreatment, label: TreatmentLabel | undefined): TreatmentLimits | null {
  if (label === undefined) {
    if (row.use !== 'DEFAULT') return null;
    const { tempLowC, tempHighC, stopHighC, stopDays, durationDays } = row;
    const supersOff = row.supersOn === 'no' ? true : null;
    const tempBasis = basisOf(row);
    return {
      by: 'table',
      tempBasis,
      tempLowC,
      tempHighC,
      stopHighC,
      stopDays,
      durationDays,
      broodless: row.brood === 'broodless',
      supersOff,
      withdrawalDays: null,
    };
  }
  const hasTemp = label.tempLowC !== undefined || label.tempHighC !== undefined;
  return {
    by: 'label',
    tempBasis: hasTemp ? (basisOf(row) === 'none' ? 'day-high' : basisOf(row)) : 'none',
    tempLowC: label.tempLowC ?? null,
    tempHighC: label.tempHighC ?? null,
    stopHighC: label.stopHighC ?? null,
    stopDays: label.stopDays ?? null,
    durationDays: label.durationDays ?? null,
    broodless: label.broodless ?? row.brood === 'broodless',
    supersOff: label.supersOff ?? null,
    withdrawalDays: label.withdrawalDays ?? null,
  };
}

function basisOf(row: MiteTreatment): TreatmentLimits['tempBasis'] {
  return row.tempBasis === 'day-high' || row.tempBasis === 'day-mean' ? row.tempBasis : 'none';
}

/** Where the label lies far from the row: a question to the keeper. */
export function labelDiffers(row: MiteTreatment, label: TreatmentLabel): LabelDiffers[] {
  const found: LabelDiffers[] = [];
  for (const field of ['tempLowC', 'tempHighC', 'stopHighC'] as const) {
    const [mine, read] = [label[field], row[field]];
    if (mine !== undefined && read !== null && Math.abs(mine - read) > NEAR_C) found.push({ field, label: mine, read });
  }
  const { durationDays: mine } = label;
  const { durationLowDays: low, durationHighDays: high } = row;
  if (mine !== undefined && low !== null && mine < low * (1 - NEAR_DAYS_FRAC))
    found.push({ field: 'durationDays', label: mine, read: low });
  if (mine !== undefined && high !== null && mine > high * (1 + NEAR_DAYS_FRAC))
    found.push({ field: 'durationDays', label: mine, read: high });
  if (label.broodless === false && row.brood === 'broodless') found.push({ field: 'broodless', label: false, read: true });
  if (label.supersOff === false && row.supersOn === 'no') found.push({ field: 'supersOff', label: false, read: true });
  return found;
}

/** Range of the effect to plan with; all there is where nothing was read. */
export function effectRange(
  row: MiteTreatment,
  of: { readonly broodless: boolean },
): { readonly low: number; readonly high: number; readonly known: boolean } {
  const [low, high] = of.broodless ? [row.effectLowFrac, row.effectHighFrac] : [row.effectBroodLowFrac, row.effectBroodHighFrac];
  return low === null || high === null ? { ...NOT_KNOWN, known: false } : { low, high, known: true };
}

/** From a failure in the field to full effect: what amitraz showed. */
const NOT_KNOWN = { low: 0, high: 0.99 } as const;

/** The row a journal's active ingredient stands for: by key, else the first of that active that may decide, else its first. */
export function rowOfActive(active: string): MiteTreatment | null {
  const of = MITE_TREATMENTS.filter((row) => row.key === active || row.active === active);
  return of.find((row) => row.key === active) ?? of.find((row) => row.use === 'DEFAULT') ?? of[0] ?? null;
}
