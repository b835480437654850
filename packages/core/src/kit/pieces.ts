import { type ShippedTop, shippedTop } from '../hivetop/index.ts';
import { bad, good, inRange, type Result } from '../result/index.ts';
import { materialOf } from '../tables/materials.ts';
import { kitParameters } from '../tables/parameters-kit.gen.ts';
import { partOf } from '../tables/parts.ts';

/** What lies on one hive, by the hive's footprint [m]. */
export interface Footprint {
  readonly outsideLengthM: number;
  readonly outsideWidthM: number;
  readonly insideLengthM: number;
  readonly insideWidthM: number;
  readonly wallM: number;
}

/** Pieces of one top: what is sawn, cut and filled. */
export interface TopPieces {
  readonly footprint: Footprint;
  /** Foam as large as the hive outside; null without foam. */
  readonly foam: { readonly material: string; readonly thicknessM: number; readonly foilFaced: boolean } | null;
  /** Rims: each two long boards over the ends and two short ones between them. */
  readonly rims: readonly { readonly use: 'absorbent box' | 'candy rim'; readonly heightM: number }[];
  /** Mesh short of the rim all round, under cloth; and cloth as large as the hive outside. */
  readonly mesh: number;
  /** Openings of that mesh [m], and whether they keep mice out. */
  readonly meshPitchM: number;
  readonly keepsMiceOut: boolean;
  readonly cloth: number;
  readonly fill: { readonly material: string; readonly depthM: number; readonly kg: number } | null;
  readonly ventHoles: number;
  readonly ventHoleM: number;
  readonly lidM: number;
}

/** Hive widths by frames. */
export const KIT_FRAMES = [5, 8, 10] as const;

export function footprintOf(frames: (typeof KIT_FRAMES)[number]): Footprint {
  const part = partOf(`deep-${frames}-wood`);
  if (part?.kind !== 'box') throw new RangeError(`footprintOf: the table has no box for ${frames} frames`);
  const { outsideLengthM, outsideWidthM, wallM } = part;
  return { outsideLengthM, outsideWidthM, wallM, insideLengthM: outsideLengthM - 2 * wallM, insideWidthM: outsideWidthM - 2 * wallM };
}

/** Pieces of a shipped top for a hive of that width. */
export function topPieces(key: ShippedTop, frames: (typeof KIT_FRAMES)[number]): TopPieces {
  const p = kitParameters;
  const { stack } = shippedTop(key);
  const footprint = footprintOf(frames);
  const kinds = stack.map((layer) => ({ ...layer, kind: materialOf(layer.material)!.kind }));
  const foam = kinds.find(({ kind }) => kind === 'foam');
  const fill = kinds.find(({ kind }) => kind === 'fill');
  const depthM = p.topBoxHeightM.value * p.fillShareFrac.value;
  const lid = kinds.at(-1)!;
  return {
    footprint,
    foam:
      foam === undefined
        ? null
        : { material: foam.material, thicknessM: foam.thicknessM, foilFaced: kinds.some(({ kind }) => kind === 'film') },
    rims: [
      ...(fill === undefined ? [] : [{ use: 'absorbent box' as const, heightM: p.topBoxHeightM.value }]),
      ...(kinds.some(({ kind }) => kind === 'candy') ? [{ use: 'candy rim' as const, heightM: p.candyRimHeightM.value }] : []),
    ],
    mesh: fill === undefined ? 0 : 1,
    meshPitchM: p.meshPitchM.value,
    keepsMiceOut: p.meshPitchM.value <= p.mouseGapM.value,
    cloth: kinds.some(({ kind }) => kind === 'cloth') ? 1 : 0,
    fill:
      fill === undefined
        ? null
        : {
            material: fill.material,
            depthM,
            kg: (materialOf(fill.material)!.densityKgPerM3 ?? 0) * footprint.insideLengthM * footprint.insideWidthM * depthM,
          },
    ventHoles: key === 'vented-box' ? p.ventHoles.value : 0,
    ventHoleM: p.ventHoleM.value,
    lidM: lid.thicknessM,
  };
}

/** Mesh of one top [m]: outside of the hive less the inset on every side. Refused where nothing is left, or it would not reach the wood. */
export function meshSize(
  { outsideLengthM, outsideWidthM, wallM }: Footprint,
  insetM: number,
): Result<{ readonly lengthM: number; readonly widthM: number }> {
  const inset = inRange('meshInsetM', insetM, { low: 0, high: wallM, unit: 'm' });
  if (!inset.ok) return inset;
  if (inset.value >= wallM) return bad({ kind: 'conflict', fields: ['meshInsetM'], why: 'mesh-misses-the-rim' });
  return good({ lengthM: outsideLengthM - 2 * insetM, widthM: outsideWidthM - 2 * insetM });
}
