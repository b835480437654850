import { weighParameters } from '../tables/parameters-weigh.gen.ts';

/** How a hive is lifted at one edge while it turns on the other. Lengths in metres. */
export interface LeverGeometry {
  /** Front to rear of the base. */
  readonly baseDepthM: number;
  /** How far in from each edge the line lies on which the hive turns. */
  readonly pivotInsetM: number;
  /** How far the hook sticks out beyond the edge; negative inside it. */
  readonly frontOverhangM: number;
  readonly rearOverhangM: number;
  /** Height of the hook above the base. */
  readonly frontHookHeightM: number;
  readonly rearHookHeightM: number;
  /** Height of the centre of mass above the base. */
  readonly centreHeightM: number;
  /** How far the edge is lifted when the scale is read. */
  readonly liftM: number;
  /** How far the pull leans over the hive [degrees]; negative away from it. */
  readonly pullLeanDeg: number;
}

export type Edge = 'front' | 'rear';

/** Lifting the standard ten-frame hive of two deep boxes with a hook under its edges. */
export function standardGeometry(): LeverGeometry {
  const p = weighParameters;
  return {
    baseDepthM: p.baseDepthM.value,
    pivotInsetM: p.pivotInsetM.value,
    frontOverhangM: p.frontOverhangM.value,
    rearOverhangM: p.rearOverhangM.value,
    frontHookHeightM: p.frontHookHeightM.value,
    rearHookHeightM: p.rearHookHeightM.value,
    centreHeightM: p.centreHeightM.value,
    liftM: p.liftM.value,
    pullLeanDeg: p.pullLeanDeg.value,
  };
}

/** Tangent of the tilt: lift over the depth of the base. */
export const tiltOf = (geometry: LeverGeometry): number => geometry.liftM / geometry.baseDepthM;

/** Distance from the pivot to the line of the pull, in units of cos(tilt) [m]. A pull that leans over the hive helps to tip it. */
export function pullArmM(geometry: LeverGeometry, edge: Edge): number {
  const { outM, upM, leanRad } = hookOf(geometry, edge);
  const tilt = tiltOf(geometry);
  return (outM - upM * tilt) * Math.cos(leanRad) + (upM + outM * tilt) * Math.sin(leanRad);
}

/** How the arm of the pull grows with the tangent of the tilt [m]. */
export function pullArmPerTiltM(geometry: LeverGeometry, edge: Edge): number {
  const { outM, upM, leanRad } = hookOf(geometry, edge);
  return outM * Math.sin(leanRad) - upM * Math.cos(leanRad);
}

/** The hook from the pivot, the hive standing. */
function hookOf(geometry: LeverGeometry, edge: Edge) {
  const overhang = edge === 'front' ? geometry.frontOverhangM : geometry.rearOverhangM;
  return {
    outM: geometry.baseDepthM - geometry.pivotInsetM + overhang,
    upM: edge === 'front' ? geometry.frontHookHeightM : geometry.rearHookHeightM,
    leanRad: (geometry.pullLeanDeg * Math.PI) / 180,
  };
}

/** What the arms of the weight about the two pivots add up to [m]: the base less both insets, less what tilting takes from each side. */
export function weightSpanM(geometry: LeverGeometry): number {
  return geometry.baseDepthM - 2 * geometry.pivotInsetM - 2 * geometry.centreHeightM * tiltOf(geometry);
}

/**
 * What a scale shows that lifts one edge.
 *
 * massKg           the whole hive [kg]
 * centreFromRearM  centre of mass from the rear edge [m]
 * returns          reading [kg]
 * equation         front: F = W [(x - d) - h tan(tilt)] / a, rear: x becomes L - x; a pull straight up has a = (L - d + o) - y tan(tilt),
 *                  one that leans by phi over the hive a cos(phi) + [y + (L - d + o) tan(tilt)] sin(phi)
 * source           [tilt-examples]: moments about the resting edge
 * checked          checks/weigh.ts; weigh.test.ts by virtual work
 */
export function edgeReadingKg(massKg: number, centreFromRearM: number, geometry: LeverGeometry, edge: Edge): number {
  const x = edge === 'front' ? centreFromRearM : geometry.baseDepthM - centreFromRearM;
  return (massKg * (x - geometry.pivotInsetM - geometry.centreHeightM * tiltOf(geometry))) / pullArmM(geometry, edge);
}

export interface BothEdges {
  readonly totalKg: number;
  readonly centreFromRearM: number;
  /** Share of the weight the front edge bears; free of how the hooks stick out. */
  readonly frontShareFrac: number;
}

/**
 * Weight and its place from one reading at each edge. The weight does not depend on where the honey sits.
 *
 * frontKg, rearKg   readings [kg]
 * equation          W = (F_f a_f + F_r a_r) / (L - 2d - 2 h tan(tilt)),  a = arm of the pull
 */
export function fromBothEdges(frontKg: number, rearKg: number, geometry: LeverGeometry): BothEdges {
  const front = frontKg * pullArmM(geometry, 'front');
  const both = front + rearKg * pullArmM(geometry, 'rear');
  const span = weightSpanM(geometry);
  const frontShareFrac = front / both;
  return {
    totalKg: both / span,
    centreFromRearM: geometry.pivotInsetM + geometry.centreHeightM * tiltOf(geometry) + frontShareFrac * span,
    frontShareFrac,
  };
}

/** Reading at one edge of a hive of this weight, of which the front edge bears `frontShareFrac` [kg]. */
export function readingOfShareKg(massKg: number, frontShareFrac: number, geometry: LeverGeometry, edge: Edge): number {
  const share = edge === 'front' ? frontShareFrac : 1 - frontShareFrac;
  return (massKg * share * weightSpanM(geometry)) / pullArmM(geometry, edge);
}

/** Weight from one edge and the share the front edge is taken to bear [kg]. */
export function fromOneEdgeKg(readingKg: number, edge: Edge, frontShareFrac: number, geometry: LeverGeometry): number {
  return readingKg / readingOfShareKg(1, frontShareFrac, geometry, edge);
}
