import { weighParameters } from '../tables/parameters-weigh.gen.ts';
import { type Edge, type LeverGeometry, pullArmM, pullArmPerTiltM, readingOfShareKg, tiltOf, weightSpanM } from './lever.ts';

/** What the scale and the hand do to a reading. */
export interface ScaleErrors {
  /** Smallest step shown [kg]. */
  readonly stepKg: number;
  /** The scale's own error as a share of the reading, standard deviation; one draw for everything this scale weighs. */
  readonly calibrationFrac: number;
  /** One edge read again, standard deviation [kg]. */
  readonly scatterKg: number;
}

/** Standard deviations of one total by cause [kg]. `calibrationKg` is shared by all hives of one scale; the others are each hive's own. */
export interface ErrorParts {
  readonly stepKg: number;
  readonly scatterKg: number;
  readonly calibrationKg: number;
  readonly liftKg: number;
  readonly hookKg: number;
  readonly centreHeightKg: number;
  readonly shareKg: number;
}

/** Standard deviation of a figure rounded to steps of one. */
const STEP_SD = 1 / Math.sqrt(12);

export function standardScale(): ScaleErrors {
  const p = weighParameters;
  return { stepKg: p.scaleStepKg.value, calibrationFrac: p.scaleCalibrationFrac.value, scatterKg: p.readingScatterKg.value };
}

export function sdOf(parts: ErrorParts): number {
  return Math.hypot(...Object.values(parts));
}

/** Errors of a total from both edges. Each edge has its own lift, hook, step and scatter. First order in each. */
export function bothEdgesError(
  readings: { readonly frontKg: number; readonly rearKg: number; readonly totalKg: number },
  geometry: LeverGeometry,
  scale: ScaleErrors,
): ErrorParts {
  const { frontKg, rearKg, totalKg } = readings;
  const span = weightSpanM(geometry);
  const armRatio = Math.hypot(pullArmM(geometry, 'front'), pullArmM(geometry, 'rear')) / span;
  const perLift = (reading: number, edge: Edge) =>
    (totalKg * geometry.centreHeightM + reading * pullArmPerTiltM(geometry, edge)) / span / geometry.baseDepthM;
  return {
    stepKg: armRatio * scale.stepKg * STEP_SD,
    scatterKg: armRatio * scale.scatterKg,
    calibrationKg: totalKg * scale.calibrationFrac,
    liftKg: weighParameters.liftSdM.value * Math.hypot(perLift(frontKg, 'front'), perLift(rearKg, 'rear')),
    hookKg: (weighParameters.overhangSdM.value * Math.hypot(frontKg, rearKg)) / span,
    centreHeightKg: (weighParameters.centreHeightSdM.value * 2 * tiltOf(geometry) * totalKg) / span,
    shareKg: 0,
  };
}

/** Errors of a total from one edge, `shareSdFrac` being the doubt about the front share. First order in each. */
export function oneEdgeError(
  reading: { readonly edge: Edge; readonly readingKg: number; readonly totalKg: number },
  share: { readonly frontShareFrac: number; readonly sdFrac: number },
  geometry: LeverGeometry,
  scale: ScaleErrors,
): ErrorParts {
  const { edge, readingKg, totalKg } = reading;
  const ownShare = edge === 'front' ? share.frontShareFrac : 1 - share.frontShareFrac;
  const kgPerReadingKg = 1 / readingOfShareKg(1, share.frontShareFrac, geometry, edge);
  const parts = readingError({ edge, readingKg, totalKg }, { ...share, ownShare }, geometry, scale);
  return {
    stepKg: parts.stepKg * kgPerReadingKg,
    scatterKg: parts.scatterKg * kgPerReadingKg,
    calibrationKg: parts.calibrationKg * kgPerReadingKg,
    liftKg: parts.liftKg * kgPerReadingKg,
    hookKg: parts.hookKg * kgPerReadingKg,
    centreHeightKg: parts.centreHeightKg * kgPerReadingKg,
    shareKg: parts.shareKg * kgPerReadingKg,
  };
}

/** Errors of the reading one edge of a hive of known weight will show. */
export function readingError(
  reading: { readonly edge: Edge; readonly readingKg: number; readonly totalKg: number },
  share: { readonly ownShare: number; readonly sdFrac: number },
  geometry: LeverGeometry,
  scale: ScaleErrors,
): ErrorParts {
  const { edge, readingKg, totalKg } = reading;
  const arm = pullArmM(geometry, edge);
  return {
    stepKg: scale.stepKg * STEP_SD,
    scatterKg: scale.scatterKg,
    calibrationKg: readingKg * scale.calibrationFrac,
    liftKg:
      (weighParameters.liftSdM.value * Math.abs(totalKg * geometry.centreHeightM + readingKg * pullArmPerTiltM(geometry, edge))) /
      arm /
      geometry.baseDepthM,
    hookKg: (weighParameters.overhangSdM.value * readingKg) / arm,
    centreHeightKg: (weighParameters.centreHeightSdM.value * tiltOf(geometry) * totalKg) / arm,
    shareKg: (readingKg / share.ownShare) * share.sdFrac,
  };
}

/** Doubt about a front share found from one reading at each edge. */
export function measuredShareSdFrac(
  readings: { readonly frontKg: number; readonly rearKg: number; readonly frontShareFrac: number },
  geometry: LeverGeometry,
  scale: ScaleErrors,
): number {
  const own = Math.hypot(scale.scatterKg, scale.stepKg * STEP_SD);
  const relative = (reading: number, edge: Edge) => Math.hypot(own / reading, weighParameters.overhangSdM.value / pullArmM(geometry, edge));
  const s = readings.frontShareFrac;
  return s * (1 - s) * Math.hypot(relative(readings.frontKg, 'front'), relative(readings.rearKg, 'rear'));
}
