import { hivetopParameters } from '../tables/parameters-hivetop.gen.ts';
import { type AirFlows, airFlows } from './air-flow.ts';
import { type Assembly, HIVE_AIR } from './assembly.ts';
import { BAND, solveBanded, stream, tie, tieToKnown } from './banded.ts';
import { filmConvectionWPerM2K, pairEmittance, radiantWPerM2K, spaceConvectionWPerM2K } from './films.ts';
import type { TopHeat } from './top-types.ts';
import { conductivityWPerMK } from './uptake.ts';

/** Temperatures and flows of a top at one moment. `restC` is the hive below the warm air; tempsC by node. */
export interface Climate {
  readonly tempsC: Float64Array;
  restC: number;
  flows: AirFlows;
}

/** What drives a step, and what the water in it does. By node where not said. */
export interface Drive {
  readonly outsideC: number;
  readonly clusterW: number;
  /** Water per dry mass of slices; whether a face is wet or frosted, which makes foil dull. */
  readonly moistureFrac: Float64Array;
  readonly wet: Uint8Array;
  /** Heat set free at nodes [W]. */
  readonly latentW: Float64Array;
  /** At the upper and lower walls. */
  readonly wallLatentW: readonly [number, number];
}

/** A link never carries more than this [W/(m2 K)]: a millimetre of wood; it keeps thin films from swallowing digits. */
const MOST_W_PER_M2K = 5000;

/** Conductances of the links, and of the radiation past each air node, at the temperatures as they stand [W/K]. */
function conductances(
  assembly: Assembly,
  temps: Float64Array,
  drive: Drive,
): { readonly links: Float64Array; readonly across: Float64Array } {
  const { nodes, links, layers, shell } = assembly;
  const areaM2 = shell.insideLengthM * shell.insideWidthM;
  const emittanceOf = (face: number) => {
    if (drive.wet[face] === 1) return hivetopParameters.filmEmittance.value;
    // The layer that shows: above its lower face, or under its upper one.
    const above = nodes[face]!.layer;
    const layer = nodes[face + 1]?.kind === 'air' || above === null ? layerBelow(assembly, face) : above;
    return layers[layer]?.material.emittance ?? hivetopParameters.filmEmittance.value;
  };
  const across = new Float64Array(nodes.length);
  const values = Float64Array.from(links, (link, i) => {
    if (link.kind === 'film') {
      const direction = temps[i]! >= temps[i + 1]! ? 'up' : 'down';
      if (link.layer === HIVE_AIR)
        return areaM2 * (filmConvectionWPerM2K(direction) + emittanceOf(i + 1) * radiantWPerM2K((temps[i]! + temps[i + 1]!) / 2));
      return areaM2 * 2 * spaceConvectionWPerM2K(direction);
    }
    const { material, coversFrac } = layers[link.layer]!;
    const slice = nodes[i]!.kind === 'slice' ? i : i + 1;
    const solid =
      coversFrac *
      Math.min(MOST_W_PER_M2K, conductivityWPerMK(material, (temps[i]! + temps[i + 1]!) / 2, drive.moistureFrac[slice]!) / link.thicknessM);
    // A way left open carries heat as an air space of the layer's depth does; its parts in series make the whole.
    const share = link.thicknessM / layers[link.layer]!.thicknessM;
    const open = coversFrac < 1 ? ((1 - coversFrac) * spaceConvectionWPerM2K(temps[i]! >= temps[i + 1]! ? 'up' : 'down')) / share : 0;
    return areaM2 * (solid + open);
  });
  for (let i = 1; i < nodes.length - 1; i++) {
    if (nodes[i]!.kind !== 'air') continue;
    across[i] = areaM2 * pairEmittance(emittanceOf(i - 1), emittanceOf(i + 1)) * radiantWPerM2K((temps[i - 1]! + temps[i + 1]!) / 2);
  }
  return { links: values, across };
}

function layerBelow({ links }: Assembly, face: number): number {
  const link = links[face - 1];
  return link?.kind === 'solid' ? link.layer : HIVE_AIR;
}

/** Flows at the temperatures of a climate. */
export function flowsAt(assembly: Assembly, climate: Climate, outsideC: number): AirFlows {
  const { cavities, shell } = assembly;
  return airFlows(cavities, {
    tempsC: cavities.map(({ node }) => climate.tempsC[node]!),
    belowC: climate.restC,
    splitM: -shell.pocketHeightM,
    outsideC,
  });
}

/** Sums of what enters and leaves the hive's cool part and its warm part through their openings [kg/s]. */
export function hiveOpenings({ cavities, shell }: Assembly, flows: AirFlows) {
  const sums = { lowIn: 0, lowOut: 0, highIn: 0, highOut: 0 };
  cavities[0]!.openings.forEach(({ heightM }, i) => {
    const { inKgPerS, outKgPerS } = flows.openings[0]![i]!;
    if (heightM < -shell.pocketHeightM) {
      sums.lowIn += inKgPerS;
      sums.lowOut += outKgPerS;
    } else {
      sums.highIn += inKgPerS;
      sums.highOut += outKgPerS;
    }
  });
  return sums;
}

/**
 * Temperatures in balance with given flows, conductances at the temperatures as they stand. Writes `climate`.
 *
 * returns   heat by way [W]: what the cluster gives and what water sets free leaves through top, rim, walls, below and with the air
 * equation  at every node: sum of conductance x difference + streams of air + sources = 0
 */
export function balanceHeat(assembly: Assembly, climate: Climate, drive: Drive): TopHeat {
  const { nodes, shell, cavities } = assembly;
  const { outsideC } = drive;
  const { tempsC: temps, flows } = climate;
  const p = hivetopParameters;
  const heat = p.airHeatJPerKgK.value;
  const areaM2 = shell.insideLengthM * shell.insideWidthM;
  const outerWPerK = areaM2 / p.filmOutsideM2KPerW.value;
  const { links, across } = conductances(assembly, temps, drive);
  const n = nodes.length + 1;
  const a = new Float64Array(n * BAND);
  const b = new Float64Array(n);
  // Temperatures over the outside: what is known is then zero, and digits are kept.
  const { lowIn, lowOut, highIn } = hiveOpenings(assembly, flows);
  tieToKnown(a, b, 0, shell.restWPerK + lowIn * heat, 0);
  tie(a, 0, 1, shell.downWPerK);
  const rising = lowIn - lowOut;
  if (rising >= 0) stream(a, 1, 0, rising * heat);
  else stream(a, 0, 1, -rising * heat);
  tieToKnown(a, b, 1, shell.wallsWPerK + highIn * heat, 0);
  const [upper, lower] = drive.wallLatentW;
  b[1]! += drive.clusterW + upper * shell.upperWall.shareFrac;
  b[0]! += lower * shell.lowerWall.shareFrac;
  nodes.forEach((node, i) => {
    if (node.sideWPerK > 0) tieToKnown(a, b, i + 1, node.sideWPerK, 0);
    b[i + 1]! += drive.latentW[i]!;
    if (i < links.length) tie(a, i + 1, i + 2, links[i]!);
    if (across[i]! > 0) tie(a, i, i + 2, across[i]!);
  });
  tieToKnown(a, b, nodes.length, outerWPerK, 0);
  cavities.forEach(({ node }, c) => {
    if (c > 0) for (const { inKgPerS } of flows.openings[c]!) tieToKnown(a, b, node + 1, inKgPerS * heat, 0);
    const up = flows.upKgPerS[c]!;
    const next = cavities[c + 1];
    if (next === undefined || up === 0) return;
    for (let i = node; i < next.node; i++) {
      if (up > 0) stream(a, i + 2, i + 1, up * heat);
      else stream(a, i + 1, i + 2, -up * heat);
    }
  });
  solveBanded(n, a, b);
  climate.restC = outsideC + b[0]!;
  for (let i = 0; i < nodes.length; i++) temps[i] = outsideC + b[i + 1]!;
  return heatByWay(assembly, { over: b, flows, drive, outerWPerK });
}

/** The same heat counted at the borders only: through the skin, and with the air that leaves. */
function heatByWay(
  assembly: Assembly,
  { over, flows, drive, outerWPerK }: { over: Float64Array; flows: AirFlows; drive: Drive; outerWPerK: number },
): TopHeat {
  const { nodes, shell, cavities } = assembly;
  const heat = hivetopParameters.airHeatJPerKgK.value;
  const { lowOut, highOut } = hiveOpenings(assembly, flows);
  let airW = heat * (lowOut * over[0]! + highOut * over[1]!);
  for (let c = 1; c < cavities.length; c++) {
    for (const { outKgPerS } of flows.openings[c]!) airW += heat * outKgPerS * over[cavities[c]!.node + 1]!;
  }
  const [upper, lower] = drive.wallLatentW;
  return {
    clusterW: drive.clusterW,
    latentW: drive.latentW.reduce((sum, w) => sum + w, 0) + upper + lower,
    topW: outerWPerK * over[nodes.length]!,
    rimW: nodes.reduce((sum, { sideWPerK }, i) => sum + sideWPerK * over[i + 1]!, 0),
    wallsW: shell.wallsWPerK * over[1]! + upper * (1 - shell.upperWall.shareFrac),
    belowW: shell.restWPerK * over[0]! + lower * (1 - shell.lowerWall.shareFrac),
    airW,
  };
}

/** Air that comes in through all openings [kg/s]. */
export function airInKgPerS(flows: AirFlows): number {
  return flows.openings.flat().reduce((sum, { inKgPerS }) => sum + inKgPerS, 0);
}

/** A climate to begin with: a hive a little warmer than outside. */
export function firstClimate(assembly: Assembly, drive: { outsideC: number; clusterW: number }): Climate {
  const tempsC = new Float64Array(assembly.nodes.length);
  const n = assembly.nodes.length;
  for (let i = 0; i < n; i++) tempsC[i] = drive.outsideC + (drive.clusterW * (n - i)) / n;
  const climate: Climate = { tempsC, restC: drive.outsideC + drive.clusterW / 2, flows: { openings: [], upKgPerS: [] } };
  climate.flows = flowsAt(assembly, climate, drive.outsideC);
  return climate;
}
