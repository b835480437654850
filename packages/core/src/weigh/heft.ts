import { bad, good, inRange, type Result } from '../result/index.ts';
import { weighParameters } from '../tables/parameters-weigh.gen.ts';
import {
  type Edge,
  fromBothEdges,
  fromOneEdgeKg,
  type LeverGeometry,
  pullArmM,
  readingOfShareKg,
  standardGeometry,
  weightSpanM,
} from './lever.ts';
import { plausibleEdgeRange, plausibleGrossRange, plausibleShareRange } from './plausible.ts';
import {
  bothEdgesError,
  type ErrorParts,
  measuredShareSdFrac,
  oneEdgeError,
  readingError,
  type ScaleErrors,
  sdOf,
  standardScale,
} from './reading-error.ts';

type Given<T> = { readonly [K in keyof T]?: T[K] | undefined };

export interface HeftInput extends Given<LeverGeometry> {
  readonly frontKg?: number | undefined;
  readonly rearKg?: number | undefined;
  readonly scaleStepKg?: number | undefined;
  readonly scaleCalibrationFrac?: number | undefined;
  readonly readingScatterKg?: number | undefined;
  /** Share of the weight the front edge bears; used where only one edge was read. */
  readonly frontShareFrac?: number | undefined;
  readonly frontShareSdFrac?: number | undefined;
  readonly needGrossKg?: number | undefined;
}

export interface HeftAnswer {
  readonly totalKg: number;
  readonly sdKg: number;
  readonly basis: 'both' | Edge;
  readonly frontShareFrac: number;
  readonly frontShareSdFrac: number;
  /** Standard deviations by cause [kg]. */
  readonly sdParts: ErrorParts;
  /** With needGrossKg: what this scale will show at each edge when the need is met, and how well that is known. */
  readonly targetFrontKg?: number;
  readonly targetFrontSdKg?: number;
  readonly targetRearKg?: number;
  readonly targetRearSdKg?: number;
}

export const GEOMETRY_RANGES = {
  baseDepthM: { low: 0.3, high: 0.8, unit: 'm' },
  pivotInsetM: { low: 0, high: 0.1, unit: 'm' },
  frontOverhangM: { low: -0.1, high: 0.2, unit: 'm' },
  rearOverhangM: { low: -0.1, high: 0.2, unit: 'm' },
  frontHookHeightM: { low: -0.1, high: 0.8, unit: 'm' },
  rearHookHeightM: { low: -0.1, high: 0.8, unit: 'm' },
  centreHeightM: { low: 0.05, high: 1, unit: 'm' },
  liftM: { low: 0, high: 0.1, unit: 'm' },
  pullLeanDeg: { low: -20, high: 20, unit: 'degrees' },
} as const satisfies Record<keyof LeverGeometry, { low: number; high: number; unit: string }>;
export const SCALE_STEP_KG = { low: 0.001, high: 5, unit: 'kg' } as const;
export const SCALE_CALIBRATION = { low: 0, high: 0.2, unit: 'of the reading' } as const;
export const READING_SCATTER_KG = { low: 0, high: 10, unit: 'kg' } as const;
export const FRONT_SHARE_SD = { low: 0, high: 0.2, unit: 'of the weight' } as const;
/** Less of the base than this left to weigh with, and a small slip in lift or height decides the answer. */
const LEAST_SPAN = 0.4;

/** Doubt about the front share where the keeper's own hives have not shown it. */
export function standardShareSdFrac(): number {
  return Math.hypot(weighParameters.frontShareKeeperSdFrac.value, weighParameters.frontShareHiveSdFrac.value);
}

/**
 * Weight of a hive from a reading at its front edge, its rear edge, or both.
 *
 * Both edges give the weight wherever the honey sits. One edge needs the front share, and is several times less sure.
 *
 * input       readings, geometry and scale; what is not given is a standard ten-frame hive of two deep boxes, hook under its edges
 * returns     total and its standard deviation [kg]; with needGrossKg the readings to stop at. Or what is wrong with the input:
 *             a reading no hive gives, two readings that cannot belong to one hive, a lift that would tip it
 * source      [tilt-examples]; errors as in `bothEdgesError`
 * checked     checks/weigh.ts, weigh.test.ts
 */
export function heft(input: HeftInput): Result<HeftAnswer> {
  const geometry = geometryOf(input);
  if (!geometry.ok) return geometry;
  const scale = scaleOf(input);
  if (!scale.ok) return scale;
  const share = shareOf(input);
  if (!share.ok) return share;
  const need = input.needGrossKg === undefined ? good(undefined) : inRange('needGrossKg', input.needGrossKg, grossRange());
  if (!need.ok) return need;
  const measured = measure(input, geometry.value, scale.value, share.value);
  if (!measured.ok) return measured;
  return good({
    ...measured.value,
    ...(need.value === undefined ? {} : readingsToStopAt(need.value, measured.value, { geometry: geometry.value, scale: scale.value })),
  });
}

function measure(
  input: HeftInput,
  geometry: LeverGeometry,
  scale: ScaleErrors,
  share: { frontShareFrac: number; sdFrac: number },
): Result<HeftAnswer> {
  const front = input.frontKg === undefined ? undefined : edgeReading('front', input.frontKg, geometry);
  if (front && !front.ok) return front;
  const rear = input.rearKg === undefined ? undefined : edgeReading('rear', input.rearKg, geometry);
  if (rear && !rear.ok) return rear;
  if (front && rear) return measureBoth(front.value, rear.value, geometry, scale);
  const edge = front ? 'front' : 'rear';
  const reading = front ?? rear;
  if (!reading) return bad({ kind: 'missing-all', ways: [['frontKg'], ['rearKg'], ['frontKg', 'rearKg']] });
  const totalKg = fromOneEdgeKg(reading.value, edge, share.frontShareFrac, geometry);
  const sdParts = oneEdgeError({ edge, readingKg: reading.value, totalKg }, share, geometry, scale);
  return good({ totalKg, sdKg: sdOf(sdParts), basis: edge, frontShareFrac: share.frontShareFrac, frontShareSdFrac: share.sdFrac, sdParts });
}

function measureBoth(frontKg: number, rearKg: number, geometry: LeverGeometry, scale: ScaleErrors): Result<HeftAnswer> {
  const { totalKg, frontShareFrac } = fromBothEdges(frontKg, rearKg, geometry);
  const plausible = plausibleShareRange();
  if (!(frontShareFrac >= plausible.low && frontShareFrac <= plausible.high)) {
    return bad({ kind: 'conflict', fields: ['frontKg', 'rearKg'], values: [frontKg, rearKg], why: 'edges-not-one-hive' });
  }
  const gross = grossRange();
  if (!(totalKg >= gross.low && totalKg <= gross.high)) {
    return bad({ kind: 'out-of-range', field: 'frontKg+rearKg', value: rounded(totalKg), ...gross });
  }
  const sdParts = bothEdgesError({ frontKg, rearKg, totalKg }, geometry, scale);
  const frontShareSdFrac = measuredShareSdFrac({ frontKg, rearKg, frontShareFrac }, geometry, scale);
  return good({ totalKg, sdKg: sdOf(sdParts), basis: 'both', frontShareFrac, frontShareSdFrac, sdParts });
}

/** What a scale will show at each edge when the whole hive weighs `grossKg`, and how well that is known [kg]. */
export function readingsToStopAt(
  grossKg: number,
  share: { readonly frontShareFrac: number; readonly frontShareSdFrac: number },
  ways: { readonly geometry: LeverGeometry; readonly scale: ScaleErrors },
) {
  const { geometry, scale } = ways;
  const target = (edge: Edge) => {
    const kg = readingOfShareKg(grossKg, share.frontShareFrac, geometry, edge);
    const ownShare = edge === 'front' ? share.frontShareFrac : 1 - share.frontShareFrac;
    const sdKg = sdOf(
      readingError({ edge, readingKg: kg, totalKg: grossKg }, { ownShare, sdFrac: share.frontShareSdFrac }, geometry, scale),
    );
    return { kg, sdKg };
  };
  const [front, rear] = [target('front'), target('rear')];
  return { targetFrontKg: front.kg, targetFrontSdKg: front.sdKg, targetRearKg: rear.kg, targetRearSdKg: rear.sdKg };
}

function edgeReading(edge: Edge, readingKg: number, geometry: LeverGeometry): Result<number> {
  const { lowKg, highKg } = plausibleEdgeRange(edge, geometry);
  const field = edge === 'front' ? 'frontKg' : 'rearKg';
  return inRange(field, readingKg, { low: rounded(lowKg), high: rounded(highKg), unit: 'kg' });
}

function geometryOf(input: HeftInput): Result<LeverGeometry> {
  const geometry: Record<keyof LeverGeometry, number> = { ...standardGeometry() };
  for (const field of Object.keys(GEOMETRY_RANGES) as (keyof LeverGeometry)[]) {
    const value = inRange(field, input[field] ?? geometry[field], GEOMETRY_RANGES[field]);
    if (!value.ok) return value;
    geometry[field] = value.value;
  }
  const least = LEAST_SPAN * geometry.baseDepthM;
  const spans = [weightSpanM(geometry), pullArmM(geometry, 'front'), pullArmM(geometry, 'rear')];
  if (!spans.every((span) => span >= least)) {
    return bad({ kind: 'implausible', field: 'liftM', value: geometry.liftM, unit: 'm', why: 'lift-tips-hive' });
  }
  return good(geometry);
}

function scaleOf(input: HeftInput): Result<ScaleErrors> {
  const standard = standardScale();
  const step = inRange('scaleStepKg', input.scaleStepKg ?? standard.stepKg, SCALE_STEP_KG);
  if (!step.ok) return step;
  const calibration = inRange('scaleCalibrationFrac', input.scaleCalibrationFrac ?? standard.calibrationFrac, SCALE_CALIBRATION);
  if (!calibration.ok) return calibration;
  const scatter = inRange('readingScatterKg', input.readingScatterKg ?? standard.scatterKg, READING_SCATTER_KG);
  if (!scatter.ok) return scatter;
  return good({ stepKg: step.value, calibrationFrac: calibration.value, scatterKg: scatter.value });
}

function shareOf(input: HeftInput): Result<{ frontShareFrac: number; sdFrac: number }> {
  const share = inRange('frontShareFrac', input.frontShareFrac ?? weighParameters.frontShareFrac.value, {
    ...plausibleShareRange(),
    unit: 'of the weight',
  });
  if (!share.ok) return share;
  const sd = inRange('frontShareSdFrac', input.frontShareSdFrac ?? standardShareSdFrac(), FRONT_SHARE_SD);
  return sd.ok ? good({ frontShareFrac: share.value, sdFrac: sd.value }) : sd;
}

function grossRange() {
  const { lowKg, highKg } = plausibleGrossRange();
  return { low: lowKg, high: highKg, unit: 'kg' };
}

/** Limits are shown to people: three figures that count are enough. */
function rounded(kg: number): number {
  return Number(kg.toPrecision(3));
}
