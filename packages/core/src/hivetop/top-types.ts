import type { Build } from '../tables/parts.ts';

/** One layer of a top, from the cluster up. */
export interface TopLayer {
  readonly material: string;
  readonly thicknessM: number;
  /** Share of the area it covers; the rest is open to air. Candy boards leave a way up. Default 1. */
  readonly coversFrac?: number | undefined;
  /** Dry mass [kg] where it was weighed; default from thickness and density. */
  readonly dryKg?: number | undefined;
}

export interface TopOpening {
  readonly areaM2: number;
  /** Height of its middle above the top bars of the upper box [m]; negative below. */
  readonly heightM: number;
  /** How tall it is [m]; default a 19 mm hole, or less where its area is smaller. */
  readonly tallM?: number | undefined;
}

/** A hive and its top. */
export interface TopBuild {
  readonly stack: readonly TopLayer[];
  readonly openings: readonly TopOpening[];
  readonly absorbent?: { readonly material: string; readonly dryKg: number } | undefined;
  /** The hive under it; default two deep ten-frame boxes of wood. Its own lid is not looked at. */
  readonly hive?: Build | undefined;
}

export interface TopInput extends TopBuild {
  readonly outsideC: number;
  /** Over liquid water; default the parameter. */
  readonly outsideRhFrac?: number | undefined;
  /** Honey eaten [kg/day]. */
  readonly useKgPerDay: number;
  /** Heat the cluster gives to the air around it [W]; default what burning sets free less what evaporating its water takes. */
  readonly clusterHeatW?: number | undefined;
  /** Of the use, taken from candy in the stack [kg/day]. */
  readonly candyUseKgPerDay?: number | undefined;
  readonly days?: number | undefined;
  /** At the hive [m/s]; gusts in and out of openings beside the draught. Default 0, still air. */
  readonly windMPerS?: number | undefined;
}

/** What is to be told with the figures. */
export type TopNote =
  | 'foam-below-test-range'
  | 'two-way-opening'
  | 'no-opening'
  | 'bees-fan-for-air'
  | 'outside-air-above-ice'
  | 'heat-does-not-match-use'
  | 'wood-below-table'
  | 'absorbent-placed-lowest'
  | 'fill-has-no-room'
  | 'absorbent-full'
  | 'candy-eaten';

export interface TopSurface {
  /** Material of the layer whose lower face this is. */
  readonly layer: string;
  readonly tempC: number;
  readonly wet: boolean;
  readonly frost: boolean;
  /** Water on it [kg], liquid or ice. */
  readonly waterKg: number;
  /** Height of the face above the top bars [m]. */
  readonly heightM: number;
  /** Where water begins to settle at the vapour that stands there: dew point over water, frost point over ice below freezing [degC]. */
  readonly dewPointC: number;
  readonly frostPointC: number | null;
}

/** A place that is not a layer's face. */
export interface TopPlace {
  readonly place: 'upper walls' | 'lower walls' | 'upper corners' | 'fill';
  readonly tempC: number;
  readonly wet: boolean;
  readonly frost: boolean;
  readonly waterKg: number;
}

export interface TopWater {
  readonly waterMadeKg: number;
  readonly waterOutKg: number;
  readonly waterHeldKg: number;
  readonly waterFrozenKg: number;
  readonly waterDrippedKg: number;
}

export interface TopHeat {
  /** From the cluster, and set free where vapour settles less what melting or drying took [W]. */
  readonly clusterW: number;
  readonly latentW: number;
  readonly topW: number;
  readonly rimW: number;
  readonly wallsW: number;
  readonly belowW: number;
  readonly airW: number;
}

export interface TopFill {
  readonly material: string;
  readonly dryKg: number;
  readonly depthM: number;
  /** Height of the air space over it [m], dry and when swollen with what it can hold. */
  readonly freeM: number;
  readonly swollenDepthM: number;
  readonly heldKg: number;
  /** What it can take from damp air, and as liquid in all [kg]. */
  readonly vapourCapacityKg: number;
  readonly liquidCapacityKg: number;
}

export interface TopAnswer extends TopWater {
  readonly surfaces: readonly TopSurface[];
  readonly dewPointC: number;
  readonly frostPointC: number | null;
  readonly airflowKgPerS: number;
  /** Of what dripped, the part that ran down the walls; the rest fell from above. */
  readonly ranDownWallsKg: number;
  readonly insideC: number;
  readonly places: readonly TopPlace[];
  readonly heat: TopHeat;
  readonly fill: TopFill | null;
  /** First day on which the absorbent could hold no more; null within the days asked. */
  readonly absorbentFullDay: number | null;
  readonly candyLeftKg: number | null;
  readonly notes: readonly TopNote[];
}
