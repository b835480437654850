import { hivetopParameters } from '../tables/parameters-hivetop.gen.ts';

const GRAVITY_M_PER_S2 = 9.80665;
const DRY_AIR_J_PER_KG_K = 287.055;
const PRESSURE_PA = 101_325;
const ZERO_C_IN_K = 273.15;
/** [Pa s] of air near freezing. */
const VISCOSITY_PA_S = 1.72e-5;
/** Pressures are found to this share of the greatest there can be; what is left is put right by `closeSet`. */
const WITHIN = 1e-11;

export const airKgPerM3 = (tempC: number): number => PRESSURE_PA / (DRY_AIR_J_PER_KG_K * (tempC + ZERO_C_IN_K));

export interface FlowOpening {
  readonly areaM2: number;
  /** Height of its middle [m], and how tall it is. */
  readonly heightM: number;
  readonly tallM: number;
}

/** Air of one temperature; the first cavity, the hive, has a cooler part below `splitM`. */
export interface FlowCavity {
  readonly lowM: number;
  readonly highM: number;
  readonly openings: readonly FlowOpening[];
  /** Air let through by what lies between this cavity and the next [m3/(s Pa)]; 0: nothing, Infinity: no resistance. */
  readonly upM3PerSPa: number;
}

/** Flows of one opening [kg/s]. */
export interface OpeningFlow {
  outKgPerS: number;
  inKgPerS: number;
}

export interface AirFlows {
  /** By cavity, by opening. */
  readonly openings: readonly (readonly OpeningFlow[])[];
  /** Net flow from a cavity up into the next [kg/s]. */
  readonly upKgPerS: readonly number[];
}

interface Column {
  /** [K] is not needed: densities only. */
  readonly topKgPerM3: number;
  readonly belowKgPerM3: number;
  readonly splitM: number;
}

/** Layers one on the other: their resistances to air add up. areaM2 and thicknessM of each, permeability [m2]. */
export function layersM3PerSPa(
  areaM2: number,
  layers: readonly { readonly thicknessM: number; readonly airPathM2: number; readonly open: boolean }[],
): number {
  let resistance = 0;
  for (const { thicknessM, airPathM2, open } of layers) {
    if (open) continue;
    if (!(airPathM2 > 0)) return 0;
    resistance += (thicknessM * VISCOSITY_PA_S) / (airPathM2 * areaM2);
  }
  return resistance === 0 ? Number.POSITIVE_INFINITY : 1 / resistance;
}

/**
 * Air that moves through the openings of a stack of cavities because it is warmer inside than outside.
 *
 * The pressure of each connected set of cavities is found where as much flows in as out. Every opening is a slit as tall as it
 * is, so that one alone, or several at one height, exchange air both ways: warm out above, cold in below.
 *
 * cavities    from the hive up; temps: air of each [degC]; belowC, splitM: the cooler part of the hive under that height
 * returns     flows of openings and between cavities; what flows in and out of a set is equal to 1e-12
 * equation    dm = C b dz sqrt(2 rho |dp(z)|), dp(z) = p + g (rho_out - rho_in) z; rho of the air that flows.
 *             A set with one opening alone: C = 0.40 + 0.0045 |dT|
 * valid       still outside air; wind, which adds to it, is left out. C of one opening was fitted to doors of buildings
 * source      [ashrae-stack], mass form
 * checked     checks/hivetop.ts: two openings against computed cases; hivetop-flow.test.ts: one opening against the integral by hand
 */
export function airFlows(
  cavities: readonly FlowCavity[],
  {
    tempsC,
    belowC,
    splitM,
    outsideC,
  }: { readonly tempsC: readonly number[]; readonly belowC: number; readonly splitM: number; readonly outsideC: number },
): AirFlows {
  const outer = airKgPerM3(outsideC);
  const columns: Column[] = cavities.map((_, c) => {
    const own = airKgPerM3(tempsC[c]!);
    return { topKgPerM3: own, belowKgPerM3: c === 0 ? airKgPerM3(belowC) : own, splitM: c === 0 ? splitM : -Infinity };
  });
  const openings = cavities.map((cavity) => cavity.openings.map(() => ({ outKgPerS: 0, inKgPerS: 0 })));
  const up = new Array<number>(cavities.length).fill(0);
  for (let first = 0; first < cavities.length; ) {
    let last = first;
    while (last < cavities.length - 1 && cavities[last]!.upM3PerSPa > 0) last++;
    flowsOfSet({ cavities, columns, outer, tempsC, outsideC }, { first, last }, openings, up);
    closeSet(openings, up, { first, last });
    first = last + 1;
  }
  return { openings, upKgPerS: up };
}

interface Setting {
  readonly cavities: readonly FlowCavity[];
  readonly columns: readonly Column[];
  readonly outer: number;
  readonly tempsC: readonly number[];
  readonly outsideC: number;
}

function flowsOfSet(setting: Setting, set: { first: number; last: number }, openings: OpeningFlow[][], up: number[]): void {
  const { cavities, tempsC, outsideC } = setting;
  let count = 0;
  let holder = set.first;
  for (let c = set.first; c <= set.last; c++) {
    count += cavities[c]!.openings.length;
    if (cavities[c]!.openings.length > 0) holder = c;
  }
  if (count === 0) return;
  const p = hivetopParameters;
  const discharge =
    count === 1
      ? p.twoWayCoefficient.value + p.twoWayCoefficientPerK.value * Math.abs(tempsC[holder]! - outsideC)
      : p.dischargeCoefficient.value;
  const surplus = (pressurePa: number) => shoot(setting, { ...set, discharge, pressurePa }, openings, up);
  // No pressure is greater than that of all the air inside at the most different density, once over.
  const { lowM } = cavities[set.first]!;
  const spanM = cavities[set.last]!.highM - Math.min(lowM, 0) + 0.1;
  let widestPa = 1e-12;
  for (let c = set.first; c <= set.last; c++) {
    const { topKgPerM3, belowKgPerM3 } = setting.columns[c]!;
    const differs = Math.max(Math.abs(setting.outer - topKgPerM3), Math.abs(setting.outer - belowKgPerM3));
    widestPa = Math.max(widestPa, 2 * GRAVITY_M_PER_S2 * differs * spanM);
  }
  let [low, high] = [-widestPa, widestPa];
  let [atLow, atHigh] = [surplus(low), surplus(high)];
  if (!(atLow < 0 && atHigh > 0)) {
    surplus(0);
    return;
  }
  // Regula falsi, Illinois form, with a halving now and then: the surplus rises with the pressure throughout.
  for (let round = 0, side = 0; round < 200 && high - low > WITHIN * widestPa; round++) {
    const middle = round % 5 === 4 ? (low + high) / 2 : low - (atLow * (high - low)) / (atHigh - atLow);
    const value = surplus(middle);
    if (Math.abs(value) < 1e-15) return;
    if (value < 0) {
      [low, atLow] = [middle, value];
      if (side === -1) atHigh /= 2;
      side = -1;
    } else {
      [high, atHigh] = [middle, value];
      if (side === 1) atLow /= 2;
      side = 1;
    }
  }
  surplus((low + high) / 2);
}

/** What rounding left between in and out of a set is put on its uppermost opening, so that no air is lost or made. */
function closeSet(openings: OpeningFlow[][], up: number[], { first, last }: { first: number; last: number }): void {
  let holder = last;
  while (holder > first && openings[holder]!.length === 0) holder--;
  const opening = openings[holder]![0];
  if (opening === undefined) return;
  let rising = 0;
  for (let c = first; c <= holder; c++) {
    for (const { inKgPerS, outKgPerS } of openings[c]!) rising += inKgPerS - outKgPerS;
    if (c < holder) up[c] = rising;
  }
  for (let c = holder; c < last; c++) up[c] = 0;
  if (rising > 0) opening.outKgPerS += rising;
  else opening.inKgPerS -= rising;
}

/** Flows when the hive-side cavity of a set stands at this pressure over the outside; returns what leaves more than enters [kg/s]. */
function shoot(
  { cavities, columns, outer, tempsC }: Setting,
  set: { first: number; last: number; discharge: number; pressurePa: number },
  openings: OpeningFlow[][],
  up: number[],
): number {
  let pressure = set.pressurePa;
  let rising = 0;
  for (let c = set.first; c <= set.last; c++) {
    const { lowM, highM, openings: own, upM3PerSPa } = cavities[c]!;
    const column = columns[c]!;
    const refM = c === 0 ? 0 : lowM;
    let net = -rising;
    own.forEach((opening, i) => {
      const flow = openings[c]![i]!;
      const inner = opening.heightM >= column.splitM ? column.topKgPerM3 : column.belowKgPerM3;
      slit(
        opening,
        {
          middlePa: pressure + lift(column, outer, refM, opening.heightM),
          slopePaPerM: GRAVITY_M_PER_S2 * (outer - inner),
          inner,
          outer,
          discharge: set.discharge,
        },
        flow,
      );
      net += flow.outKgPerS - flow.inKgPerS;
    });
    if (c === set.last) return net;
    // What does not leave here goes up into the next cavity, and the layers between take their pressure for it.
    rising = -net;
    up[c] = rising;
    const carried = airKgPerM3((tempsC[c]! + tempsC[c + 1]!) / 2);
    const nextLowM = cavities[c + 1]!.lowM;
    const between = GRAVITY_M_PER_S2 * (outer - carried) * (nextLowM - highM);
    pressure +=
      lift(column, outer, refM, highM) + between - (upM3PerSPa === Number.POSITIVE_INFINITY ? 0 : rising / (carried * upM3PerSPa));
  }
  return 0;
}

/** Pressure over the outside that a column gains from one height to another [Pa]. */
function lift({ topKgPerM3, belowKgPerM3, splitM }: Column, outer: number, fromM: number, toM: number): number {
  const part = (density: number, a: number, b: number) => GRAVITY_M_PER_S2 * (outer - density) * (b - a);
  if (toM >= splitM) return part(topKgPerM3, fromM, toM);
  return part(topKgPerM3, fromM, splitM) + part(belowKgPerM3, splitM, toM);
}

/** Flow out and in through a slit with a pressure that changes over its height. */
function slit(
  { areaM2, tallM }: FlowOpening,
  at: { middlePa: number; slopePaPerM: number; inner: number; outer: number; discharge: number },
  flow: OpeningFlow,
): void {
  const half = Math.abs(at.slopePaPerM) * (tallM / 2);
  const outward = at.discharge * areaM2 * Math.sqrt(2 * at.inner);
  const inward = at.discharge * areaM2 * Math.sqrt(2 * at.outer);
  if (half <= 1e-6 * Math.abs(at.middlePa) || half === 0) {
    flow.outKgPerS = at.middlePa > 0 ? outward * Math.sqrt(at.middlePa) : 0;
    flow.inKgPerS = at.middlePa < 0 ? inward * Math.sqrt(-at.middlePa) : 0;
    return;
  }
  const [weakest, strongest] = [at.middlePa - half, at.middlePa + half];
  flow.outKgPerS = (outward * (power(strongest) - power(weakest))) / (3 * half);
  flow.inKgPerS = (inward * (power(-weakest) - power(-strongest))) / (3 * half);
}

/** x to the power 3/2, 0 below 0. */
function power(x: number): number {
  return x > 0 ? x * Math.sqrt(x) : 0;
}
