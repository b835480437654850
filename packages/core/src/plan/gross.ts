import type { Holding, Weighing } from '../holding/index.ts';
import { good, type Result } from '../result/index.ts';
import { PARTS } from '../tables/parts.gen.ts';
import {
  type Edge,
  type FrontShare,
  type HeftAnswer,
  heft,
  type LeverGeometry,
  learnFrontShare,
  readingsToStopAt,
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
  readonly frontShareSdFrac: number;
}

/** [m] Height of a deep box, by which boxes of other depths are counted. */
const DEEP_M = 0.244;

/** Height of a hive in deep boxes; 2 where its build is not known. */
function deepBoxesOf(parts: Weighing['parts']): number {
  let heightM = 0;
  for (const { part: key, count } of parts ?? []) {
    const part = PARTS.find((row) => row.key === key);
    if (part?.kind === 'box') heightM += part.heightM * count;
  }
  return heightM === 0 ? 2 : Math.min(5, Math.max(0.5, heightM / DEEP_M));
}

export function waysOf(holding: Holding): WeighingWays {
  const geometry = { ...standardGeometry(), ...holding.settings.hooks };
  const both = [...holding.hives.values()]
    .flatMap((hive) => hive.weighings.slice(-1))
    .flatMap((weighing) => {
      if (weighing.frontKg === undefined || weighing.rearKg === undefined) return [];
      const weighed = heftOf(weighing, geometry);
      if (!weighed.ok) return [];
      const { totalKg, frontShareFrac } = weighed.value;
      return [{ frontShareFrac, totalKg, word: weighing.word, deepBoxes: deepBoxesOf(weighing.parts) }];
    });
  return {
    geometry,
    share: learnFrontShare(both),
    words: both.flatMap(({ word, deepBoxes, totalKg }) => (word === undefined ? [] : [{ word, deepBoxes, totalKg }])),
  };
}

function heftOf(weighing: Weighing, geometry: LeverGeometry, share?: FrontShare): Result<HeftAnswer> {
  const { frontKg, rearKg, liftM, stepKg } = weighing;
  return heft({
    ...geometry,
    ...(liftM === undefined ? {} : { liftM }),
    frontKg,
    rearKg,
    scaleStepKg: stepKg,
    frontShareFrac: share?.frontShareFrac,
    frontShareSdFrac: share?.sdFrac,
  });
}

/** Weight of the whole hive from what was read; null where nothing was; or why the readings cannot be. */
export function grossOf(weighing: Weighing, ways: WeighingWays): Result<Gross | null> {
  const { frontKg, rearKg, word } = weighing;
  if (frontKg === undefined && rearKg === undefined) {
    if (word === undefined) return good(null);
    const weight = wordWeight(word, deepBoxesOf(weighing.parts), ways.words);
    return good({ kg: weight.totalKg, sharedSdKg: 0, ownSdKg: weight.sdKg, basis: 'word', scale: 'hand', ...keepersShare(ways) });
  }
  const weighed = heftOf(weighing, ways.geometry, ways.share);
  if (!weighed.ok) return weighed;
  const { totalKg, basis, frontShareFrac, frontShareSdFrac, sdParts } = weighed.value;
  return good({
    kg: totalKg,
    sharedSdKg: sdParts.calibrationKg,
    ownSdKg: sdOf({ ...sdParts, calibrationKg: 0 }),
    basis,
    scale: weighing.scale ?? 'scale',
    frontShareFrac,
    frontShareSdFrac,
  });
}

function keepersShare({ share }: WeighingWays) {
  return { frontShareFrac: share.frontShareFrac, frontShareSdFrac: share.sdFrac };
}

/** What each edge will show when the whole hive weighs `grossKg`, with the error of that reading. */
export function targetsOf(grossKg: number, of: { gross: Gross | null; ways: WeighingWays }) {
  return readingsToStopAt(grossKg, of.gross ?? keepersShare(of.ways), { geometry: of.ways.geometry, scale: standardScale() });
}
