import { MATERIALS } from './materials.gen.ts';
import { TOP_ROWS } from './tops.gen.ts';
import type { Mark } from './types.ts';

export type MaterialKind = 'wood' | 'foam' | 'film' | 'air' | 'fill' | 'cloth' | 'board' | 'candy' | 'snow';

/** A material a hive's top is made of. Vapour and liquid uptake are kept apart. */
export interface Material {
  readonly key: string;
  readonly kind: MaterialKind;
  /** [kg/m3] dry, in bulk where it is loose; none where water does not go in. */
  densityKgPerM3?: number;
  /** Of wood, for its conductivity. */
  specificGravity?: number;
  /** [W/(m K)] at mean temperatures of 24, 4.4 and -3.9 °C; one figure where it hardly changes. */
  wPerMK?: number;
  coolWPerMK?: number;
  coldWPerMK?: number;
  /** [kg/(m s Pa)] */
  vapourKgPerMSPa?: number;
  /** [m2] Darcy permeability for air; none holds air back. */
  airPathM2?: number;
  emittance?: number;
  /** What it takes up from damp air. */
  readonly isotherm: 'wood' | 'jute' | 'sugar' | 'none';
  /** [kg/kg] water it holds without dripping, vapour uptake included. */
  liquidKgPerKg?: number;
  /** Volume when full of water over dry, where that is more. */
  swellFactor?: number;
  readonly source: string;
  readonly mark: Mark;
  readonly note: string;
}

/** One layer (from the cluster up) or one kind of opening of a shipped top. */
export interface TopRow {
  readonly top: string;
  readonly role: 'layer' | 'opening';
  readonly material?: string;
  thicknessM?: number;
  coversFrac?: number;
  areaM2?: number;
  heightM?: number;
  tallM?: number;
  count?: number;
  readonly piece: string;
  readonly source: string;
  readonly mark: Mark;
  readonly note: string;
}

export function materialOf(key: string): Material | undefined {
  return MATERIALS.find((material) => material.key === key);
}

export function materialKeys(): readonly string[] {
  return MATERIALS.map((material) => material.key);
}

/** Every row of the shipped tops. */
export function topRows(): readonly TopRow[] {
  return TOP_ROWS;
}
