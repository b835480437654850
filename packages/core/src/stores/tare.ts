import type { BuildFacts, BuildLine } from '../matter/index.ts';
import { storesParameters } from '../tables/parameters-stores.gen.ts';
import type { Part } from '../tables/parts.ts';
import { sdFromBounds } from './errors.ts';
import type { StoresAnswer, StoresInput } from './types.ts';

/** Footprint the flat rows of the parts table are for: a ten-frame box [m2]. */
const TEN_FRAME_M2 = 0.505 * 0.413;

/**
 * Mass of one piece of a part.
 *
 * Boxes, rims and boards without a weighed mass: volume of the shell or the board times the density of its material; handholds,
 * nails and paint are left out, they cancel within a few per cent. Flat parts are of ten-frame size and go with the footprint.
 *
 * part, facts   a row of the parts table and the hive it belongs to
 * returns       mass and standard deviation [kg]
 * checked       checks/parts.ts: published weights of boxes and of whole hives
 */
export function partMass(part: Part, facts: Pick<BuildFacts, 'lengthM' | 'widthM'>): { readonly massKg: number; readonly sdKg: number } {
  const footprintM2 = facts.lengthM * facts.widthM;
  switch (part.kind) {
    case 'box':
      return solid(part.material, shellM3(part.outsideLengthM, part.outsideWidthM, part));
    case 'rim':
      return solid(part.material, shellM3(facts.lengthM, facts.widthM, part));
    case 'frame':
    case 'stand':
    case 'feeder':
      return { massKg: part.massKg, sdKg: sdFromBounds(part) };
    default: {
      if (part.massKg === undefined || part.low === undefined || part.high === undefined)
        return solid(part.material, footprintM2 * part.thicknessM);
      const scale = footprintM2 / TEN_FRAME_M2;
      return { massKg: part.massKg * scale, sdKg: sdFromBounds({ low: part.low, high: part.high }) * scale };
    }
  }
}

function shellM3(lengthM: number, widthM: number, { wallM, heightM }: { readonly wallM: number; readonly heightM: number }): number {
  return (lengthM * widthM - (lengthM - 2 * wallM) * (widthM - 2 * wallM)) * heightM;
}

function solid(material: string, volumeM3: number) {
  const density =
    material === 'eps' ? storesParameters.foamKgPerM3 : material === 'xps' ? storesParameters.xpsKgPerM3 : storesParameters.pineKgPerM3;
  return { massKg: density.value * volumeM3, sdKg: sdFromBounds(density) * volumeM3 };
}

export interface Tare {
  readonly massKg: number;
  /** Error shared by all hives of the build, without and from its empty combs; error of this hive alone [kg]. */
  readonly partsSdKg: number;
  readonly combSdKg: number;
  readonly ownSdKg: number;
  readonly basis: StoresAnswer['tare']['basis'];
}

/**
 * Mass of the build without bees, stores and what stands on it for a time.
 *
 * An empty hive the keeper weighed beats own weighed parts, and those beat the table. Rows of the table err for every hive of the
 * build alike; while any of them decides, the shared error is at least `tareSdFloorKg`.
 */
export function tareOf(facts: BuildFacts, emptyHive: StoresInput['emptyHive']): Tare {
  const weighedSdKg = storesParameters.weighedSdKg.value;
  let massKg = 0;
  let partsVar = 0;
  let combSdKg = 0;
  for (const { part, count, massKg: own } of facts.lines) {
    const table = partMass(part, facts);
    massKg += count * (own ?? table.massKg);
    const sdKg = count * (own === null ? table.sdKg : weighedSdKg);
    if (part.kind === 'frame') combSdKg += sdKg;
    else partsVar += sdKg * sdKg;
  }
  const spread = storesParameters.hiveSpreadFrac.value;
  if (emptyHive !== undefined) {
    // The hive that was weighed is itself one of a spread, so it stands for the others no better than that.
    const sdKg = emptyHive.sdKg ?? Math.hypot(storesParameters.emptyHiveSdKg.value, spread * emptyHive.massKg);
    return { massKg: emptyHive.massKg, partsSdKg: sdKg, combSdKg: 0, ownSdKg: spread * emptyHive.massKg, basis: 'empty hive' };
  }
  const ownParts = facts.lines.every((line: BuildLine) => line.massKg !== null);
  const floor = ownParts ? 0 : Math.max(0, storesParameters.tareSdFloorKg.value ** 2 - combSdKg ** 2);
  return {
    massKg,
    partsSdKg: Math.sqrt(Math.max(partsVar, floor)),
    combSdKg,
    ownSdKg: spread * massKg,
    basis: ownParts ? 'own parts' : 'table',
  };
}

/** Same text for the same build, whatever the order of its lines: hives with the same key share the error of their tare. */
export function buildKey(facts: BuildFacts): string {
  return facts.lines
    .map(({ part, count, massKg }) => `${count} ${part.key}${massKg === null ? '' : ` ${massKg} kg`}`)
    .sort()
    .join(' + ');
}
