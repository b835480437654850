import { iceSaturationPa, waterSaturationPa } from '../matter/index.ts';
import { hivetopParameters } from '../tables/parameters-hivetop.gen.ts';
import type { Assembly, Node } from './assembly.ts';
import { BAND, solveBanded, stream, tie, tieToKnown } from './banded.ts';
import { filmConvectionWPerM2K, spaceConvectionWPerM2K, vapourFilmKgPerM2SPa } from './films.ts';
import { type Climate, hiveOpenings } from './thermal.ts';
import { vapourUptake, wetsAtRhFrac } from './uptake.ts';

/** Water of a top [kg] by place: lower walls, air of the hive's cool part, upper walls, then the nodes of the stack (place = node + BELOW). */
export interface Water {
  readonly kg: Float64Array;
  readonly iceKg: Float64Array;
}

/** What a step did with the vapour [kg/s], by place, and what left. */
export interface VapourStep {
  readonly uptakeKgPerS: Float64Array;
  readonly vapourPa: Float64Array;
  readonly outKgPerS: number;
  readonly settled: boolean;
}

export const BELOW = 3;
export const LOWER_WALL = 0;
const COOL_AIR = 1;
export const UPPER_WALL = 2;
const WARM_AIR = BELOW;
const VAPOUR_TO_AIR = 0.621945;
const PRESSURE_PA = 101_325;
const AIR_SHARE_PER_PA = VAPOUR_TO_AIR / PRESSURE_PA;
/** Vapour that even a tight layer lets through, so that every place has a neighbour [kg/(s Pa)]. */
const TIGHTEST_KG_PER_S_PA = 1e-20;
/** Moving air outside at 25 W/(m2 K). */
const OUTSIDE_CONVECTION_W_PER_M2K = 25;

/** A place water can settle: its temperature, and what it is made of. */
export interface Place {
  readonly tempC: number;
  readonly dryKg: number;
  readonly isotherm: 'wood' | 'jute' | 'sugar' | 'none';
  /** Air holds vapour up to saturation over water; what is more is fog, which settles on what is beside it. */
  readonly air: boolean;
}

export function placesOf(assembly: Assembly, climate: Climate, outsideC: number): Place[] {
  const { shell, nodes } = assembly;
  const wallAt = (airC: number, wall: { shareFrac: number; dryKg: number }): Place => ({
    tempC: outsideC + wall.shareFrac * (airC - outsideC),
    dryKg: wall.dryKg,
    isotherm: wall.dryKg > 0 ? 'wood' : 'none',
    air: false,
  });
  return [
    wallAt(climate.restC, shell.lowerWall),
    { tempC: climate.restC, dryKg: 0, isotherm: 'none', air: true },
    wallAt(climate.tempsC[0]!, shell.upperWall),
    ...nodes.map(({ kind, dryKg, material }, i) => ({
      tempC: climate.tempsC[i]!,
      dryKg,
      isotherm: material?.isotherm ?? ('none' as const),
      air: kind === 'air',
    })),
  ];
}

/** Where what settles at a place comes to lie: there, or where air's fog goes: the wall beside it, the face above it. */
export function liesAt({ nodes }: Assembly, place: number): number {
  if (place === COOL_AIR) return LOWER_WALL;
  if (place === WARM_AIR) return UPPER_WALL;
  return place >= BELOW && nodes[place - BELOW]!.kind === 'air' ? place + 1 : place;
}

/** Vapour pressure at which water settles there without end: over ice below freezing, lower over sugar; over water in air, as fog. */
export function settlesAtPa({ tempC, isotherm, air }: Place): number {
  if (air) return waterSaturationPa(tempC);
  return wetsAtRhFrac(isotherm) * (tempC < 0 ? iceSaturationPa(tempC) : waterSaturationPa(tempC));
}

/** Water bound in the material when damp air settles on it [kg]; what is more lies free, as drops or frost. */
export function boundKg(place: Place): number {
  if (place.dryKg === 0) return 0;
  return place.dryKg * vapourUptake(place.isotherm, settlesAtPa(place) / waterSaturationPa(place.tempC), place.tempC)[0];
}

/**
 * Vapour pressures over a step, and what every place takes up, by implicit steps: a place is either damp (what it holds follows its
 * humidity) or wet (its pressure stands at saturation and it takes what comes). Which of the two is found by trial.
 *
 * seconds   length of the step; 0 asks for the steady state without any uptake but dew and frost
 * returns   uptake by place; what came from the bees is what was taken up and what left, to rounding
 */
export function balanceVapour(
  assembly: Assembly,
  climate: Climate,
  of: {
    readonly outsideC: number;
    readonly outsidePa: number;
    readonly sourceKgPerS: number;
    readonly seconds: number;
    readonly water: Water;
    /** Change of a pressure between rounds that is let pass. */
    readonly withinFrac: number;
  },
): VapourStep {
  const places = placesOf(assembly, climate, of.outsideC);
  const n = places.length;
  const settles = places.map(settlesAtPa);
  const full = places.map((place) => waterSaturationPa(place.tempC));
  const bound = places.map(boundKg);
  const base = conductances(assembly, climate, of);
  const wet = places.map((place, i) => !place.air && of.seconds > 0 && of.water.kg[i]! > bound[i]! * (1 + 1e-12) + 1e-15);
  let pressures = Float64Array.from(settles, (pa) => Math.min(pa, of.outsidePa));
  const uptake = new Float64Array(n);
  let settled = false;
  for (let round = 0; round < 60 && !settled; round++) {
    const a = base.a.slice();
    const b = base.b.slice();
    for (let i = 0; i < n; i++) {
      if (wet[i]) {
        // Held at its saturation: a tie so strong that the rest does not show; the uptake is read from the neighbours.
        fix(a, b, i, settles[i]!);
      } else if (of.seconds > 0 && !places[i]!.air) {
        const [slope, constant] = dampLine(places[i]!, { pa: pressures[i]!, fullPa: full[i]!, kg: of.water.kg[i]!, seconds: of.seconds });
        tieToKnown(a, b, i, slope, 0);
        b[i]! -= constant;
      }
    }
    solveBanded(n, a, b);
    residuals(base, b, uptake);
    settled = true;
    for (let i = 0; i < n; i++) {
      if (wet[i]) {
        const left = of.seconds > 0 && !places[i]!.air ? of.water.kg[i]! + uptake[i]! * of.seconds - bound[i]! : uptake[i]!;
        if (left < -1e-15) {
          wet[i] = false;
          settled = false;
        }
      } else if (b[i]! > settles[i]! * (1 + 1e-10)) {
        wet[i] = true;
        settled = false;
      }
      if (!wet[i] && Math.abs(b[i]! - pressures[i]!) > of.withinFrac * settles[i]! && places[i]!.dryKg > 0 && round < 40) settled = false;
    }
    pressures = b;
  }
  return { uptakeKgPerS: uptake, vapourPa: pressures, outKgPerS: base.leaving(pressures), settled };
}

/** Uptake of a damp place as a line in its pressure, around the last guess [kg/(s Pa)], [kg/s]. Bare faces give off what they have. */
function dampLine(
  place: Place,
  at: { pa: number; fullPa: number; kg: number; seconds: number },
): readonly [slope: number, constant: number] {
  const rh = Math.min(1, at.pa / at.fullPa);
  const [held, slope] = vapourUptake(place.isotherm, rh, place.tempC);
  const perPa = (place.dryKg * slope) / at.fullPa / at.seconds;
  return [perPa, (place.dryKg * held - at.kg) / at.seconds - perPa * rh * at.fullPa];
}

function fix(a: Float64Array, b: Float64Array, i: number, value: number): void {
  for (let k = 0; k < BAND; k++) a[i * BAND + k] = 0;
  a[i * BAND + 2] = 1;
  b[i] = value;
}

interface Base {
  readonly a: Float64Array;
  readonly b: Float64Array;
  leaving(pressures: Float64Array): number;
}

/** What flows into each place beyond what flows out, before any uptake [kg/s]. */
function residuals({ a, b }: Base, pressures: Float64Array, into: Float64Array): void {
  const n = pressures.length;
  for (let i = 0; i < n; i++) {
    let sum = b[i]!;
    for (let k = -2; k <= 2; k++) {
      const j = i + k;
      if (j >= 0 && j < n) sum -= a[i * BAND + 2 + k]! * pressures[j]!;
    }
    into[i] = sum;
  }
}

function conductances(assembly: Assembly, climate: Climate, of: { outsideC: number; outsidePa: number; sourceKgPerS: number }): Base {
  const { nodes, links, layers, cavities, shell } = assembly;
  const areaM2 = shell.insideLengthM * shell.insideWidthM;
  const n = nodes.length + BELOW;
  const a = new Float64Array(n * BAND);
  const b = new Float64Array(n);
  const hiveC = climate.tempsC[0]!;
  const wallFilm = vapourFilmKgPerM2SPa(filmConvectionWPerM2K('sideways'), hiveC);
  tie(a, LOWER_WALL, COOL_AIR, wallFilm * shell.lowerWall.areaM2);
  tie(a, UPPER_WALL, WARM_AIR, wallFilm * shell.upperWall.areaM2);
  // Air that sinks along combs and walls while as much rises: part of the heat that goes down goes with it.
  const mixing = (shell.downWPerK * hivetopParameters.mixingShareFrac.value) / hivetopParameters.airHeatJPerKgK.value;
  tie(a, COOL_AIR, WARM_AIR, mixing * AIR_SHARE_PER_PA);
  links.forEach((link, i) => {
    const at = (climate.tempsC[i]! + climate.tempsC[i + 1]!) / 2;
    const direction = climate.tempsC[i]! >= climate.tempsC[i + 1]! ? 'up' : 'down';
    let perM2: number;
    if (link.kind === 'film') {
      perM2 = vapourFilmKgPerM2SPa(link.layer < 0 ? filmConvectionWPerM2K(direction) : 2 * spaceConvectionWPerM2K(direction), at);
    } else {
      const { material, coversFrac, thicknessM } = layers[link.layer]!;
      const open =
        coversFrac < 1
          ? ((1 - coversFrac) * vapourFilmKgPerM2SPa(spaceConvectionWPerM2K(direction), at) * thicknessM) / link.thicknessM
          : 0;
      perM2 = (coversFrac * (material.vapourKgPerMSPa ?? 0)) / link.thicknessM + open;
    }
    tie(a, i + BELOW, i + BELOW + 1, Math.max(TIGHTEST_KG_PER_S_PA, areaM2 * perM2));
  });
  const skin = areaM2 * vapourFilmKgPerM2SPa(OUTSIDE_CONVECTION_W_PER_M2K, of.outsideC);
  tieToKnown(a, b, n - 1, skin, of.outsidePa);
  b[WARM_AIR]! += of.sourceKgPerS;
  const outs: { place: number; inShare: number; outShare: number }[] = [];
  const open = (place: number, inKgPerS: number, outKgPerS: number) => {
    outs.push({ place, inShare: inKgPerS * AIR_SHARE_PER_PA, outShare: outKgPerS * AIR_SHARE_PER_PA });
    tieToKnown(a, b, place, inKgPerS * AIR_SHARE_PER_PA, of.outsidePa);
  };
  const { lowIn, lowOut, highIn, highOut } = hiveOpenings(assembly, climate.flows);
  open(COOL_AIR, lowIn, lowOut);
  open(WARM_AIR, highIn, highOut);
  const rising = (lowIn - lowOut) * AIR_SHARE_PER_PA;
  if (rising > 0) stream(a, WARM_AIR, COOL_AIR, rising);
  else stream(a, COOL_AIR, WARM_AIR, -rising);
  cavities.forEach(({ node }, c) => {
    if (c > 0) for (const { inKgPerS, outKgPerS } of climate.flows.openings[c]!) open(node + BELOW, inKgPerS, outKgPerS);
    const up = climate.flows.upKgPerS[c]! * AIR_SHARE_PER_PA;
    const next = cavities[c + 1];
    if (next === undefined || up === 0) return;
    for (let i = node + BELOW; i < next.node + BELOW; i++) {
      if (up > 0) stream(a, i + 1, i, up);
      else stream(a, i, i + 1, -up);
    }
  });
  return {
    a,
    b,
    leaving: (pressures) =>
      outs.reduce((sum, { place, inShare, outShare }) => sum + outShare * pressures[place]! - inShare * of.outsidePa, 0) +
      skin * (pressures[n - 1]! - of.outsidePa),
  };
}

/** Liquid over what a place can hold runs off: into a fill below that takes it up, else onto the bees; from the walls it runs down. Ice stays. [kg] */
export function drip(assembly: Assembly, water: Water, places: readonly Place[]): { readonly fellKg: number; readonly ranDownKg: number } {
  const { nodes, shell } = assembly;
  const filmKgPerM2 = hivetopParameters.filmHoldsKgPerM2.value;
  const overflow = (i: number, capacityKg: number) => {
    const over = places[i]!.tempC < 0 ? 0 : Math.max(0, water.kg[i]! - Math.max(capacityKg, boundKg(places[i]!)));
    water.kg[i]! -= over;
    return over;
  };
  // A drop on a fill goes into it; on a board it stands on the face.
  const lands = (node: Node, below: Node | undefined) => node.catches || (node.kind === 'face' && below?.catches !== true);
  let falling = 0;
  for (let i = nodes.length - 1; i >= 0; i--) {
    const node = nodes[i]!;
    if (node.kind === 'air') continue;
    if (falling > 0 && lands(node, nodes[i - 1])) {
      water.kg[i + BELOW]! += falling;
      falling = 0;
    }
    falling += overflow(i + BELOW, node.capacityKg);
  }
  let ranDownKg = 0;
  for (const [place, wall] of [
    [LOWER_WALL, shell.lowerWall],
    [UPPER_WALL, shell.upperWall],
  ] as const) {
    ranDownKg += overflow(place, filmKgPerM2 * wall.areaM2 + boundKg(places[place]!));
  }
  return { fellKg: falling, ranDownKg };
}
