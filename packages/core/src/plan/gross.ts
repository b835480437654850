import type { Hive, Holding, Weighing } from '../holding/index.ts';
import type { Settings } from '../journal/index.ts';
import { type BadInput, bad, good, inRange, type Result } from '../result/index.ts';
import { PARTS } from '../tables/parts.gen.ts';
import {
  bothEdgesError,
  type Edge,
  type FrontShare,
  fromBothEdges,
  fromOneEdgeKg,
  type LeverGeometry,
  learnFrontShare,
  measuredShareSdFrac,
  oneEdgeError,
  plausibleGrossRange,
  plausibleShareRange,
  readingError,
  readingOfShareKg,
  sdOf,
  standardGeometry,
  standardScale,
  wordWeight,
} from '../weigh/index.ts';

/** How this keeper weighs: geometry from the settings, front share and words learnt from the hives weighed so far. */
export interface WeighingWays {
  readonly geometry: LeverGeometry;
  readonly share: FrontShare;
  readonly words: readonly { readonly word: 'heavy' | 'fair' | 'light'; readonly deepBoxes: number; readonly totalKg: number }[];
}

export interface Gross {
  readonly kg: number;
  /** The scale's own error, shared by all it weighs, and the rest [kg]. */
  readonly sharedSdKg: number;
  readonly ownSdKg: number;
  readonly basis: 'both' | Edge | 'word';
  readonly scale: string;
  /** Share the front edge bears: measured on this hive, or the keeper's. */
  readonly frontShareFrac: number;
  readonly shareSdFrac: number;
}

/** [m] Height of a deep box, by which boxes of other depths are counted. */
const DEEP_M = 0.244;

/** Height of a hive in deep boxes; 2 where its build is not known. */
export function deepBoxesOf(parts: Weighing['parts']): number {
  let heightM = 0;
  for (const { part: key, count } of parts ?? []) {
    const part = PARTS.find((row) => row.key === key);
    if (part?.kind === 'box') heightM += part.heightM * count;
  }
  return heightM === 0 ? 2 : Math.min(5, Math.max(0.5, heightM / DEEP_M));
}

export function waysOf(holding: Holding): WeighingWays {
  const geometry = geometryOf(holding.settings);
  const both = [...holding.hives.values()]
    .flatMap((hive) => hive.weighings.slice(-1))
    .flatMap((w) => {
      if (w.frontKg === undefined || w.rearKg === undefined) return [];
      const lever = { ...geometry, ...(w.liftM === undefined ? {} : { liftM: w.liftM }) };
      const { totalKg, frontShareFrac } = fromBothEdges(w.frontKg, w.rearKg, lever);
      if (impossible(w, { totalKg, frontShareFrac }) !== null) return [];
      return [{ frontShareFrac, totalKg, word: w.word, deepBoxes: deepBoxesOf(w.parts) }];
    });
  return {
    geometry,
    share: learnFrontShare(both),
    words: both.flatMap(({ word, deepBoxes, totalKg }) => (word === undefined ? [] : [{ word, deepBoxes, totalKg }])),
  };
}

function geometryOf(settings: Settings): LeverGeometry {
  return { ...standardGeometry(), ...settings.hooks };
}

/** Weight of the whole hive from what was read; null where nothing was; or why the readings cannot be. */
export function grossOf(weighing: Weighing, ways: WeighingWays): Result<Gross | null> {
  const geometry = weighing.liftM === undefined ? ways.geometry : { ...ways.geometry, liftM: weighing.liftM };
  const scale = weighing.stepKg === undefined ? standardScale() : { ...standardScale(), stepKg: weighing.stepKg };
  const name = weighing.scale ?? 'scale';
  const { frontKg, rearKg, word } = weighing;
  if (frontKg !== undefined && rearKg !== undefined) {
    const { totalKg, frontShareFrac } = fromBothEdges(frontKg, rearKg, geometry);
    const refused = impossible(weighing, { totalKg, frontShareFrac });
    if (refused !== null) return bad(refused);
    const parts = bothEdgesError({ frontKg, rearKg, totalKg }, geometry, scale);
    const shareSdFrac = measuredShareSdFrac({ frontKg, rearKg, frontShareFrac }, geometry, scale);
    return good({ kg: totalKg, ...split(parts), basis: 'both', scale: name, frontShareFrac, shareSdFrac });
  }
  const share = { frontShareFrac: ways.share.frontShareFrac, shareSdFrac: ways.share.sdFrac };
  const edge: Edge | null = frontKg !== undefined ? 'front' : rearKg !== undefined ? 'rear' : null;
  if (edge !== null) {
    const readingKg = (edge === 'front' ? frontKg : rearKg)!;
    const totalKg = fromOneEdgeKg(readingKg, edge, share.frontShareFrac, geometry);
    const refused = impossible(weighing, { totalKg });
    if (refused !== null) return bad(refused);
    const parts = oneEdgeError(
      { edge, readingKg, totalKg },
      { frontShareFrac: share.frontShareFrac, sdFrac: share.shareSdFrac },
      geometry,
      scale,
    );
    return good({ kg: totalKg, ...split(parts), basis: edge, scale: name, ...share });
  }
  if (word === undefined) return good(null);
  const weight = wordWeight(word, deepBoxesOf(weighing.parts), ways.words);
  return good({ kg: weight.totalKg, sharedSdKg: 0, ownSdKg: weight.sdKg, basis: 'word', scale: 'hand', ...share });
}

/** Why readings cannot be of one hive: edges too unlike, or a weight no hive has; null where they can. */
function impossible(weighing: Weighing, of: { readonly totalKg: number; readonly frontShareFrac?: number }): BadInput | null {
  const share = plausibleShareRange();
  if (of.frontShareFrac !== undefined && !(of.frontShareFrac >= share.low && of.frontShareFrac <= share.high)) {
    return { kind: 'implausible', field: 'frontKg', value: weighing.frontKg!, unit: 'kg', why: 'edges-not-one-hive' };
  }
  const { lowKg, highKg } = plausibleGrossRange();
  const total = inRange(weighing.frontKg === undefined ? 'rearKg (whole hive)' : 'frontKg (whole hive)', of.totalKg, {
    low: lowKg,
    high: highKg,
    unit: 'kg',
  });
  return total.ok ? null : total.error;
}

function split(parts: Parameters<typeof sdOf>[0]): { sharedSdKg: number; ownSdKg: number } {
  return { sharedSdKg: parts.calibrationKg, ownSdKg: sdOf({ ...parts, calibrationKg: 0 }) };
}

/** What each edge will show when the whole hive weighs `grossKg`, with the error of that reading. */
export function targetsOf(grossKg: number, of: { gross: Gross | null; ways: WeighingWays }) {
  const { geometry, share } = of.ways;
  const frontShareFrac = of.gross?.frontShareFrac ?? share.frontShareFrac;
  const sdFrac = of.gross?.shareSdFrac ?? share.sdFrac;
  const at = (edge: Edge) => {
    const readingKg = readingOfShareKg(grossKg, frontShareFrac, geometry, edge);
    const ownShare = edge === 'front' ? frontShareFrac : 1 - frontShareFrac;
    return {
      kg: readingKg,
      sdKg: sdOf(readingError({ edge, readingKg, totalKg: grossKg }, { ownShare, sdFrac }, geometry, standardScale())),
    };
  };
  return { front: at('front'), rear: at('rear') };
}

/** The last weighing that says anything; null where there is none. */
export function lastWeighing(hive: Hive): Weighing | null {
  return hive.weighings.at(-1) ?? null;
}
