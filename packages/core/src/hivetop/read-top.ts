import { bad, good, inRange, type Result } from '../result/index.ts';
import { type Material, materialKeys, materialOf } from '../tables/materials.ts';
import { hivetopParameters } from '../tables/parameters-hivetop.gen.ts';
import type { FlowOpening } from './air-flow.ts';
import { type Assembly, assemble, cavityAt, type Layer } from './assembly.ts';
import { type HiveShell, hiveShell } from './hive-shell.ts';
import type { TopBuild, TopLayer, TopNote } from './top-types.ts';

export const TOP_RANGES = {
  outsideC: { low: -60, high: 30, unit: '°C' },
  outsideRhFrac: { low: 0, high: 1, unit: 'of saturation' },
  useKgPerDay: { low: 0, high: 0.5, unit: 'kg/day' },
  clusterHeatW: { low: 0, high: 100, unit: 'W' },
  windMPerS: { low: 0, high: 15, unit: 'm/s' },
  days: { low: 0.1, high: 400, unit: 'days' },
  thicknessM: { low: 0.00001, high: 2, unit: 'm' },
  coversFrac: { low: 0.1, high: 1, unit: '' },
  dryKg: { low: 0.01, high: 40, unit: 'kg' },
  areaM2: { low: 1e-6, high: 0.2, unit: 'm2' },
  tallM: { low: 0.001, high: 0.4, unit: 'm' },
  heightM: { low: -2, high: 4, unit: 'm' },
} as const;
export const TOP_LAYERS = { low: 1, high: 16, unit: 'layers' } as const;
const MOST_OPENINGS = 24;
const LIDS = ['wood', 'foam', 'film', 'board'];

export interface ReadTop {
  readonly assembly: Assembly;
  /** Index in the assembly's layers of the absorbent; null without one. */
  readonly absorbent: number | null;
  readonly notes: readonly TopNote[];
}

/**
 * Reads a build: layers, absorbent, openings.
 *
 * returns   the assembly; or what cannot be: an unknown material, no lid, zero thickness, an opening larger than the wall it is in
 *           or above the lid, snow inside
 */
export function readTop(build: TopBuild): Result<ReadTop> {
  const shell = hiveShell(build.hive);
  if (!shell.ok) return shell;
  const count = inRange('stack.length', build.stack.length, TOP_LAYERS);
  if (!count.ok) return count;
  const read = readLayers(build, shell.value);
  if (!read.ok) return read;
  const { layers, absorbent, notes } = read.value;
  const openings = readOpenings(build, { shell: shell.value, layers });
  if (!openings.ok) return openings;
  const assembly = assemble(layers, openings.value, shell.value);
  const fill = absorbent === null ? null : layers[absorbent]!;
  const swollen = fill !== null && (fill.material.swellFactor ?? 1) > 1 && layers[absorbent! + 1]?.material.kind !== 'air';
  return good({ assembly, absorbent, notes: swollen ? [...notes, 'fill-has-no-room'] : notes });
}

function readLayers(build: TopBuild, shell: HiveShell): Result<{ layers: Layer[]; absorbent: number | null; notes: TopNote[] }> {
  const areaM2 = shell.insideLengthM * shell.insideWidthM;
  const rows: { material: Material; layer: TopLayer; given: number | null }[] = [];
  for (const [i, layer] of build.stack.entries()) {
    const material = materialOf(layer.material);
    if (material === undefined)
      return bad({ kind: 'unknown-choice', field: `stack[${i}].material`, value: String(layer.material), choices: materialKeys() });
    const thick = inRange(`stack[${i}].thicknessM`, layer.thicknessM, TOP_RANGES.thicknessM);
    if (!thick.ok) return thick;
    const covers = inRange(`stack[${i}].coversFrac`, layer.coversFrac ?? 1, TOP_RANGES.coversFrac);
    if (!covers.ok) return covers;
    if (layer.dryKg !== undefined) {
      const dry = inRange(`stack[${i}].dryKg`, layer.dryKg, TOP_RANGES.dryKg);
      if (!dry.ok) return dry;
    }
    rows.push({ material, layer, given: i });
  }
  const lid = rows.filter(({ material }) => material.kind !== 'snow').at(-1);
  if (lid === undefined || !LIDS.includes(lid.material.kind)) return bad({ kind: 'conflict', fields: ['stack'], why: 'no-lid' });
  if (rows.some(({ material }, i) => material.kind === 'snow' && rows.slice(i + 1).some((other) => other.material.kind !== 'snow')))
    return bad({ kind: 'conflict', fields: ['stack'], why: 'snow-inside' });
  const notes: TopNote[] = [];
  const absorbent = placeAbsorbent(build, { rows, areaM2, notes });
  if (!absorbent.ok) return absorbent;
  let lowM = 0;
  const layers = rows.map(({ material, layer, given }): Layer => {
    const coversFrac = layer.coversFrac ?? 1;
    const dryKg = layer.dryKg ?? (material.densityKgPerM3 ?? 0) * areaM2 * layer.thicknessM * coversFrac;
    const made = { material, thicknessM: layer.thicknessM, coversFrac, dryKg, given, lowM };
    lowM += layer.thicknessM;
    return made;
  });
  return good({ layers, absorbent: absorbent.value, notes });
}

/** The absorbent is the layer of its material; where the stack has none it is laid at the bottom of the lowest cavity above the hive's, or lowest of all. */
function placeAbsorbent(
  build: TopBuild,
  of: { rows: { material: Material; layer: TopLayer; given: number | null }[]; areaM2: number; notes: TopNote[] },
): Result<number | null> {
  const { rows, areaM2, notes } = of;
  if (build.absorbent === undefined) {
    const fill = rows.findIndex(({ material }) => material.kind === 'fill');
    return good(fill < 0 ? null : fill);
  }
  const material = materialOf(build.absorbent.material);
  if (material === undefined || material.isotherm === 'none') {
    const choices = materialKeys().filter((key) => materialOf(key)!.isotherm !== 'none');
    return bad({ kind: 'unknown-choice', field: 'absorbent.material', value: String(build.absorbent.material), choices });
  }
  const dry = inRange('absorbent.dryKg', build.absorbent.dryKg, TOP_RANGES.dryKg);
  if (!dry.ok) return dry;
  const at = rows.findIndex((row) => row.material === material);
  if (at >= 0) {
    rows[at] = { ...rows[at]!, layer: { ...rows[at]!.layer, dryKg: dry.value } };
    return good(at);
  }
  const thicknessM = dry.value / ((material.densityKgPerM3 ?? 0) * areaM2);
  const first = rows.findIndex((row) => row.material.kind !== 'air');
  const above = rows.findIndex((row, i) => i > first && row.material.kind === 'air');
  const place = above < 0 ? first : above;
  rows.splice(place, 0, { material, layer: { material: material.key, thicknessM, dryKg: dry.value }, given: null });
  notes.push('absorbent-placed-lowest');
  return good(place);
}

function readOpenings(build: TopBuild, of: { shell: HiveShell; layers: readonly Layer[] }): Result<FlowOpening[]> {
  const { shell, layers } = of;
  const many = inRange('openings.length', build.openings.length, { low: 0, high: MOST_OPENINGS, unit: 'openings' });
  if (!many.ok) return many;
  const topM = layers.at(-1)!.lowM + layers.at(-1)!.thicknessM;
  const openings: FlowOpening[] = [];
  const usedM2 = new Map<number, number>();
  for (const [i, { areaM2, heightM, tallM }] of build.openings.entries()) {
    const height = inRange(`openings[${i}].heightM`, heightM, { low: -shell.heightM, high: topM, unit: 'm' });
    if (!height.ok) return height;
    const area = inRange(`openings[${i}].areaM2`, areaM2, TOP_RANGES.areaM2);
    if (!area.ok) return area;
    const tall = inRange(
      `openings[${i}].tallM`,
      tallM ?? Math.min(hivetopParameters.openingTallM.value, Math.sqrt((4 * areaM2) / Math.PI)),
      TOP_RANGES.tallM,
    );
    if (!tall.ok) return tall;
    const spaces = cavitySpaces(layers, shell);
    const c = cavityAt(spaces, heightM);
    const wallM2 = shell.rimPerimeterM * (spaces[c]!.highM - spaces[c]!.lowM);
    const used = (usedM2.get(c) ?? 0) + areaM2;
    usedM2.set(c, used);
    if (used > wallM2)
      return bad({
        kind: 'out-of-range',
        field: `openings[${i}].areaM2`,
        value: areaM2,
        unit: 'm2',
        low: 0,
        high: Math.floor((wallM2 - used + areaM2) * 1e5) / 1e5,
      });
    openings.push({ areaM2, heightM, tallM: tall.value });
  }
  return good(openings);
}

/** Cavities by height: the hive with the air spaces right above it, then every other air space. */
function cavitySpaces(layers: readonly Layer[], shell: HiveShell): { lowM: number; highM: number }[] {
  const spaces = [{ lowM: -shell.heightM, highM: 0 }];
  let joined = true;
  for (const { material, lowM, thicknessM } of layers) {
    if (material.kind !== 'air') joined = false;
    else if (joined) spaces[0]!.highM = lowM + thicknessM;
    else if (spaces.at(-1)!.highM === lowM && spaces.length > 1) spaces.at(-1)!.highM = lowM + thicknessM;
    else spaces.push({ lowM, highM: lowM + thicknessM });
  }
  return spaces;
}
