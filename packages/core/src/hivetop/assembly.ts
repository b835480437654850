import type { Material } from '../tables/materials.ts';
import { hivetopParameters } from '../tables/parameters-hivetop.gen.ts';
import { type FlowCavity, type FlowOpening, layersM3PerSPa } from './air-flow.ts';
import type { HiveShell } from './hive-shell.ts';

/** A layer that was read. */
export interface Layer {
  readonly material: Material;
  readonly thicknessM: number;
  readonly coversFrac: number;
  readonly dryKg: number;
  /** Index in the stack as the keeper gave it; null for an absorbent that was put in. */
  readonly given: number | null;
  readonly lowM: number;
}

/** A point of the stack with a temperature and a vapour pressure: air, a face between layers, or a slice of one. */
export interface Node {
  readonly kind: 'air' | 'face' | 'slice';
  readonly heightM: number;
  /** Layer of a slice, or the layer whose lower face it is; null on top of all and for the air of the hive. */
  readonly layer: number | null;
  readonly dryKg: number;
  readonly material: Material | null;
  /** Water it holds before it drips [kg]. */
  readonly capacityKg: number;
  /** Whether drops from above are taken up here. */
  readonly catches: boolean;
  /** Heat through the rim around it [W/K]. */
  readonly sideWPerK: number;
}

/** What ties a node to the next one up. */
export type Link =
  | { readonly kind: 'film'; readonly layer: number }
  | { readonly kind: 'solid'; readonly layer: number; readonly thicknessM: number };

export interface Cavity extends FlowCavity {
  /** Its air among the nodes. */
  readonly node: number;
  readonly openings: readonly FlowOpening[];
}

export interface Assembly {
  readonly layers: readonly Layer[];
  readonly nodes: readonly Node[];
  /** links[i] between nodes i and i + 1; the last node is the outer face. */
  readonly links: readonly Link[];
  readonly cavities: readonly Cavity[];
  readonly shell: HiveShell;
  /** Lower face of each given layer among the nodes. */
  readonly lowerFace: readonly number[];
  readonly heightM: number;
}

/** Stands for the air of the hive where a film names its air space. */
export const HIVE_AIR = -1;
const FILL_SLICES = 4;
const WOOD_SLICES = 3;
const RIMMED = ['air', 'fill', 'cloth', 'candy'];
const CATCHING = ['fill', 'cloth', 'board', 'candy'];

/** Nodes, links and cavities of a stack of layers over a hive. Openings are sorted into the cavities by their heights. */
export function assemble(layers: readonly Layer[], openings: readonly FlowOpening[], shell: HiveShell): Assembly {
  const nodes: Node[] = [];
  const links: Link[] = [];
  const lowerFace: number[] = [];
  const areaM2 = shell.insideLengthM * shell.insideWidthM;
  const add = (node: Partial<Node> & Pick<Node, 'kind' | 'heightM'>) => {
    nodes.push({ layer: null, dryKg: 0, material: null, capacityKg: 0, catches: false, sideWPerK: 0, ...node });
  };
  const face = (heightM: number, layer: number | null) =>
    add({ kind: 'face', heightM, layer, capacityKg: hivetopParameters.filmHoldsKgPerM2.value * areaM2 });
  add({ kind: 'air', heightM: 0 });
  const spaces: { node: number; lowM: number; highM: number }[] = [{ node: 0, lowM: -shell.heightM, highM: 0 }];
  layers.forEach((layer, index) => {
    const { material, thicknessM, lowM, dryKg } = layer;
    const rim = RIMMED.includes(material.kind) ? shell.rimWPerMK * thicknessM : 0;
    const before = nodes.length - 1;
    if (material.kind === 'air') {
      lowerFace.push(before);
      const space = spaces.at(-1)!;
      if (nodes[before]!.kind === 'air') {
        space.highM = lowM + thicknessM;
        nodes[before] = { ...nodes[before]!, sideWPerK: nodes[before]!.sideWPerK + rim };
      } else {
        links.push({ kind: 'film', layer: index });
        add({ kind: 'air', heightM: lowM + thicknessM / 2, layer: index, sideWPerK: rim });
        spaces.push({ node: nodes.length - 1, lowM, highM: lowM + thicknessM });
      }
      return;
    }
    if (nodes[before]!.kind === 'air') {
      links.push({ kind: 'film', layer: nodes[before]!.layer ?? HIVE_AIR });
      face(lowM, index);
    } else nodes[before] = { ...nodes[before]!, layer: index };
    lowerFace.push(nodes.length - 1);
    const slices =
      material.kind === 'film'
        ? 0
        : material.kind === 'fill'
          ? FILL_SLICES
          : material.kind === 'wood' && thicknessM >= 0.01
            ? WOOD_SLICES
            : 1;
    for (let s = 0; s < slices; s++) {
      links.push({ kind: 'solid', layer: index, thicknessM: s === 0 ? thicknessM / slices / 2 : thicknessM / slices });
      add({
        kind: 'slice',
        heightM: lowM + (thicknessM * (s + 0.5)) / slices,
        layer: index,
        dryKg: dryKg / slices,
        material,
        capacityKg: ((material.liquidKgPerKg ?? 0) * dryKg) / slices,
        catches: CATCHING.includes(material.kind),
        sideWPerK: rim / slices,
      });
    }
    links.push({ kind: 'solid', layer: index, thicknessM: slices === 0 ? thicknessM : thicknessM / slices / 2 });
    face(lowM + thicknessM, null);
  });
  const top = layers.at(-1)!;
  return {
    layers,
    nodes,
    links,
    cavities: cavitiesOf({ spaces, layers, openings, areaM2 }),
    shell,
    lowerFace: lowerFace.filter((_, i) => layers[i]!.given !== null),
    heightM: top.lowM + top.thicknessM,
  };
}

function cavitiesOf(of: {
  spaces: readonly { node: number; lowM: number; highM: number }[];
  layers: readonly Layer[];
  openings: readonly FlowOpening[];
  areaM2: number;
}): Cavity[] {
  const { spaces, layers, openings, areaM2 } = of;
  return spaces.map((space, c) => {
    const next = spaces[c + 1];
    const between =
      next === undefined
        ? []
        : layers.filter(({ lowM, material }) => material.kind !== 'air' && lowM >= space.highM - 1e-12 && lowM < next.lowM - 1e-12);
    const resisting = between.map(({ thicknessM, material, coversFrac }) => ({
      thicknessM,
      airPathM2: material.airPathM2 ?? 0,
      open: coversFrac < 1,
    }));
    return {
      ...space,
      openings: openings
        .filter(({ heightM }) => cavityAt(spaces, heightM) === c)
        .map((opening) => ({ ...opening, tallM: Math.min(opening.tallM, space.highM - space.lowM) })),
      upM3PerSPa: next === undefined ? 0 : layersM3PerSPa(areaM2, resisting),
    };
  });
}

/** The cavity an opening at this height leads into: the one it stands in, else the next one below. */
export function cavityAt(spaces: readonly { readonly lowM: number }[], heightM: number): number {
  let found = 0;
  spaces.forEach(({ lowM }, c) => {
    if (heightM >= lowM) found = c;
  });
  return found;
}
