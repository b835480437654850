import { hiveConductance, readBuild } from '../matter/index.ts';
import { good, type Result } from '../result/index.ts';
import { materialOf } from '../tables/materials.ts';
import { envelopeParameters } from '../tables/parameters-envelope.gen.ts';
import { hivetopParameters } from '../tables/parameters-hivetop.gen.ts';
import { type Build, standardBuild } from '../tables/parts.ts';
import { filmM2KPerW } from './films.ts';
import { woodWPerMK } from './uptake.ts';

/** Water a wall's inner face meets. */
export interface Wall {
  readonly areaM2: number;
  /** Temperature of its inner face: outside + share x (air - outside). */
  readonly shareFrac: number;
  /** Dry wood that takes part [kg]; 0 for foam. */
  readonly dryKg: number;
}

/** The hive under the top: where its heat goes but upward. */
export interface HiveShell {
  readonly insideLengthM: number;
  readonly insideWidthM: number;
  readonly heightM: number;
  /** Height of the warm air around the cluster under the top bars [m]. */
  readonly pocketHeightM: number;
  readonly wallsWPerK: number;
  readonly downWPerK: number;
  readonly restWPerK: number;
  readonly upperWall: Wall;
  readonly lowerWall: Wall;
  /** Share at a corner, where the film is thicker. */
  readonly cornerShareFrac: number;
  /** Rim of wood around a cavity in the top [W/K per metre of height]. */
  readonly rimWPerMK: number;
  readonly rimPerimeterM: number;
}

/** Film at a corner in the standard for mould on walls [m2K/W]. Source: ISO 13788 (from memory). */
const CORNER_FILM_M2K_PER_W = 0.25;
const AIR_DRY_FRAC = 0.12;

/** Default hive: two deep ten-frame boxes of wood. */
export const usualHive = (): Build => standardBuild(['deep', 'deep'], 10);

/**
 * Heat paths of a hive other than its lid: walls beside the warm air, down through the combs, walls and floor of the rest.
 *
 * build    its lid is left out: the top comes on its own
 * source   as `hiveConductance`
 */
export function hiveShell(build: Build = usualHive()): Result<HiveShell> {
  const read = readBuild(build, 'hive');
  if (!read.ok) return read;
  const conductance = hiveConductance(build);
  if (!conductance.ok) return conductance;
  const { parts, whole } = conductance.value;
  const { boxes, lengthM, widthM } = read.value;
  const first = boxes[0]!.part;
  const insideLengthM = lengthM - 2 * first.wallM;
  const insideWidthM = widthM - 2 * first.wallM;
  const perimeterM = 2 * (insideLengthM + insideWidthM);
  const heightM = boxes.reduce((sum, { part, count }) => sum + part.heightM * count, 0);
  const pocketHeightM = Math.min(envelopeParameters.pocketHeightM.value, heightM);
  const downWPerK = (envelopeParameters.downWPerMK.value * insideLengthM * insideWidthM) / (heightM / 2);
  const wallM2 = perimeterM * heightM;
  const filmM2KPerW = envelopeParameters.filmWallM2KPerW.value;
  const wallWPerM2K = whole.wallsWPerK / wallM2;
  const besideFrac = parts.wallsWPerK / whole.wallsWPerK;
  const pine = materialOf('pine')!;
  const wall = (frac: number): Wall => ({
    areaM2: wallM2 * frac,
    shareFrac: 1 - wallWPerM2K * filmM2KPerW,
    dryKg: first.material === 'pine' ? wallM2 * frac * hivetopParameters.wallActiveM.value * pine.densityKgPerM3! : 0,
  });
  const behind = 1 / wallWPerM2K - filmM2KPerW;
  return good({
    insideLengthM,
    insideWidthM,
    heightM,
    pocketHeightM,
    wallsWPerK: parts.wallsWPerK,
    downWPerK,
    restWPerK: 1 / (1 / parts.belowWPerK - 1 / downWPerK),
    upperWall: wall(besideFrac),
    lowerWall: wall(1 - besideFrac),
    cornerShareFrac: behind / (behind + CORNER_FILM_M2K_PER_W),
    rimWPerMK: perimeterM / rimM2KPerW(),
    rimPerimeterM: perimeterM,
  });
}

/** A rim of pine between the still air of a cavity and the wind [m2K/W]. */
function rimM2KPerW(): number {
  const p = hivetopParameters;
  const wood = p.rimWallM.value / woodWPerMK(materialOf('pine')!.specificGravity!, AIR_DRY_FRAC);
  return filmM2KPerW('sideways', p.filmEmittance.value) + wood + p.filmOutsideM2KPerW.value;
}
