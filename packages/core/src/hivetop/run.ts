import { burnHoney, iceSaturationPa, waterSaturationPa } from '../matter/index.ts';
import { hivetopParameters } from '../tables/parameters-hivetop.gen.ts';
import type { Assembly } from './assembly.ts';
import { breathing, bringsTooLittle, withWind } from './breathing.ts';
import { BELOW, balanceVapour, boundKg, drip, LOWER_WALL, liesAt, placesOf, UPPER_WALL, type VapourStep, type Water } from './moisture.ts';
import { airInKgPerS, balanceHeat, type Climate, type Drive, firstClimate, flowsAt } from './thermal.ts';
import type { TopHeat } from './top-types.ts';
import { vapourUptake } from './uptake.ts';

export const DAY_S = 86_400;
const FULL_STEPS = 20;
/** However warm it is outside, a hive with bees is so much warmer [K]. */
const LEAST_EXCESS_K = 3;

/** One day outside and of the colony. */
export interface TopDay {
  readonly outsideC: number;
  readonly outsideRhFrac: number;
  readonly useKgPerDay: number;
  readonly clusterW: number;
  readonly candyUseKg: number;
  readonly windMPerS: number;
  /** Air of the hive above which bees rid themselves of heat, in flight or by fanning [degC]; null: all of it stays. */
  readonly shedAboveC: number | null;
}

/** Everything that is carried from one day to the next. */
export interface TopState {
  readonly assembly: Assembly;
  readonly climate: Climate;
  readonly water: Water;
  /** What was in it at the start, bound in wood and fill [kg]. */
  readonly startKg: number;
  /** Sums since the start. */
  readonly sums: {
    madeKg: number;
    outKg: number;
    drippedKg: number;
    ranDownKg: number;
    heatInJ: number;
    heatOutJ: number;
    waterHeatJ: number;
  };
  /** Heat of melting and freezing, and of vapour that settled after the last balance of heat: given off over the next step [J]. */
  readonly owedJ: Float64Array;
  readonly latentW: Float64Array;
  /** Vapour pressures of the last step, by place [Pa]. */
  vapourPa: Float64Array;
  candyKg: number;
  /** Candy that lay in it at the start, dry [kg]. */
  readonly candyAtStartKg: number;
}

/** What one step showed. */
export interface TopStep {
  readonly heat: TopHeat;
  readonly vapour: VapourStep;
  readonly airInKgPerS: number;
  readonly outsideAboveIce: boolean;
  /** Whether the draught alone would bring the bees too little air. */
  readonly beesFan: boolean;
}

export interface Patience {
  /** Largest change of a temperature between rounds that is let pass [K], and most rounds. */
  readonly withinK: number;
  readonly rounds: number;
  /** Change of a vapour pressure that is let pass, against saturation. */
  readonly withinFrac: number;
}

/** Vapour outside; more than ice leaves in the air has fallen as hoar before it comes in [Pa]. */
export function outsideVapourPa(tempC: number, rhFrac: number): { readonly pa: number; readonly aboveIce: boolean } {
  const pa = rhFrac * waterSaturationPa(tempC);
  if (tempC >= 0) return { pa, aboveIce: false };
  const icePa = iceSaturationPa(tempC);
  return { pa: Math.min(pa, icePa), aboveIce: pa > icePa * (1 + 1e-9) };
}

/** Heat the cluster gives to the air when it burns so much honey and its water leaves as vapour [W]. */
export function clusterHeatW(useKgPerDay: number): number {
  const { energyMJ, waterKg } = burnHoney(useKgPerDay);
  return Math.max(0, energyMJ * 1e6 - waterKg * hivetopParameters.latentVaporizeJPerKg.value) / DAY_S;
}

/**
 * A top at the start of its time: temperatures in balance, wood and fill at rest with the air outside as it is where they are. So
 * whatever they take up from then on is water of the bees, and without bees nothing moves.
 */
export function startTop(assembly: Assembly, day: TopDay): TopState {
  const places = assembly.nodes.length + BELOW;
  const water: Water = { kg: new Float64Array(places), iceKg: new Float64Array(places) };
  const candyKg = assembly.nodes.reduce((sum, { material, dryKg }) => sum + (material?.kind === 'candy' ? dryKg : 0), 0);
  const state: TopState = {
    assembly,
    climate: firstClimate(assembly, day),
    water,
    startKg: 0,
    sums: { madeKg: 0, outKg: 0, drippedKg: 0, ranDownKg: 0, heatInJ: 0, heatOutJ: 0, waterHeatJ: 0 },
    owedJ: new Float64Array(places),
    latentW: new Float64Array(places),
    vapourPa: new Float64Array(places),
    candyKg,
    candyAtStartKg: candyKg,
  };
  settle(state, day, { seconds: 0, withinK: 1e-6, rounds: 60, withinFrac: 1e-9 });
  const { pa } = outsideVapourPa(day.outsideC, day.outsideRhFrac);
  placesOf(assembly, state.climate, day.outsideC).forEach((place, i) => {
    if (place.dryKg > 0) water.kg[i] = place.dryKg * vapourUptake(place.isotherm, pa / waterSaturationPa(place.tempC), place.tempC)[0];
  });
  state.latentW.fill(0);
  return { ...state, startKg: water.kg.reduce((sum, kg) => sum + kg, 0) };
}

/** Air of the hive with no water in it, once heat and draught are in balance [degC]. */
export function dryInsideC(assembly: Assembly, day: TopDay): number {
  const climate = firstClimate(assembly, day);
  const n = assembly.nodes.length;
  const drive: Drive = {
    outsideC: day.outsideC,
    clusterW: day.clusterW,
    moistureFrac: new Float64Array(n),
    wet: new Uint8Array(n),
    latentW: new Float64Array(n),
    wallLatentW: [0, 0],
  };
  for (let round = 0; round < 20; round++) {
    balanceHeat(assembly, climate, drive);
    climate.flows = flowsAt(assembly, climate, day.outsideC);
  }
  return climate.tempsC[0]!;
}

/** One step of a top. Changes `state`; every kilogram and joule of it is in `sums`. */
export function stepTop(
  state: TopState,
  day: TopDay,
  seconds: number,
  patience: Patience = { withinK: 1e-3, rounds: 12, withinFrac: 1e-6 },
): TopStep {
  const { assembly, climate, water, sums, owedJ } = state;
  const drinkKg = eatCandy(state, (day.candyUseKg * seconds) / DAY_S);
  const madeKg = (burnHoney(day.useKgPerDay).waterKg * seconds) / DAY_S;
  const step = settle(state, day, { seconds, ...patience, drinkKg, madeKg });
  const { vapour, heat, usedLatentW, nowLatentW } = step;
  sums.madeKg += madeKg;
  sums.outKg += vapour.outKgPerS * seconds;
  sums.heatInJ += heat.clusterW * seconds;
  sums.heatOutJ += (heat.topW + heat.rimW + heat.wallsW + heat.belowW + heat.airW) * seconds;
  const places = placesOf(assembly, climate, day.outsideC);
  const vaporize = hivetopParameters.latentVaporizeJPerKg.value;
  const freeze = hivetopParameters.latentFreezeJPerKg.value;
  for (let i = 0; i < places.length; i++) {
    const uptakeKg = vapour.uptakeKgPerS[i]! * seconds;
    water.kg[liesAt(assembly, i)]! += uptakeKg;
    sums.waterHeatJ += uptakeKg * vaporize;
    owedJ[i] = owedJ[i]! - paidW(owedJ[i]!, seconds) * seconds + (nowLatentW[i]! - usedLatentW[i]!) * seconds;
  }
  const { fellKg, ranDownKg } = drip(assembly, water, places);
  sums.drippedKg += fellKg + ranDownKg;
  sums.ranDownKg += ranDownKg;
  for (let i = 0; i < places.length; i++) {
    const ice = places[i]!.tempC < 0 ? Math.max(0, water.kg[i]! - boundKg(places[i]!)) : 0;
    owedJ[i]! += (ice - water.iceKg[i]!) * freeze;
    sums.waterHeatJ += (ice - water.iceKg[i]!) * freeze;
    water.iceKg[i] = ice;
  }
  return {
    heat,
    vapour,
    airInKgPerS: airInKgPerS(climate.flows),
    outsideAboveIce: outsideVapourPa(day.outsideC, day.outsideRhFrac).aboveIce,
    beesFan: step.beesFan,
  };
}

/** Most that is paid back of heat still owed [W]: a layer wrapped in foam would swing if a day's debt came back in a day. */
const MOST_PAID_W = 2;

function paidW(owedJ: number, seconds: number): number {
  return Math.max(-MOST_PAID_W, Math.min(MOST_PAID_W, owedJ / seconds));
}

/** Air, heat and vapour in turn until temperatures stand. */
function settle(
  state: TopState,
  day: TopDay,
  of: Patience & { readonly seconds: number; readonly drinkKg?: number; readonly madeKg?: number },
) {
  const { assembly, climate, water } = state;
  const { outsideC } = day;
  const { pa: outsidePa } = outsideVapourPa(outsideC, day.outsideRhFrac);
  const { seconds } = of;
  const steady = seconds === 0;
  const sourceKgPerS = steady ? burnHoney(day.useKgPerDay).waterKg / DAY_S : ((of.madeKg ?? 0) + (of.drinkKg ?? 0)) / seconds;
  const n = assembly.nodes.length + BELOW;
  const owedW = steady ? new Float64Array(n) : state.owedJ.map((joule) => paidW(joule, seconds));
  const vaporize = hivetopParameters.latentVaporizeJPerKg.value;
  let latentW = state.latentW.map((w, i) => w + owedW[i]!);
  let vapour: VapourStep;
  let heat: TopHeat;
  let usedLatentW: Float64Array;
  let keptFrac = 1;
  let round = 0;
  let beesFan = bringsTooLittle(climate.flows, day.useKgPerDay);
  const before = new Float64Array(assembly.nodes.length);
  for (;;) {
    before.set(climate.tempsC);
    const restBefore = climate.restC;
    usedLatentW = latentW;
    heat = balanceHeat(assembly, climate, driveOf(state, { ...day, clusterW: day.clusterW * keptFrac }, usedLatentW));
    if (day.shedAboveC !== null) {
      const room = Math.max(LEAST_EXCESS_K, day.shedAboveC - outsideC);
      const fits = Math.min(1, (keptFrac * room) / Math.max(1e-9, climate.tempsC[0]! - outsideC));
      if (fits < keptFrac) heat = balanceHeat(assembly, climate, driveOf(state, { ...day, clusterW: day.clusterW * fits }, usedLatentW));
      keptFrac = fits;
    }
    vapour = balanceVapour(assembly, climate, { outsideC, outsidePa, sourceKgPerS, seconds, water, withinFrac: of.withinFrac });
    round++;
    let moved = Math.abs(climate.restC - restBefore);
    climate.tempsC.forEach((t, i) => {
      moved = Math.max(moved, Math.abs(t - before[i]!));
    });
    if (moved <= of.withinK || round >= of.rounds) break;
    // Flows and the heat of water push back on what moved them; where full steps swing to and fro, half steps are taken.
    const step = round < FULL_STEPS ? 1 : 0.5;
    if (step < 1) {
      climate.tempsC.forEach((t, i) => {
        climate.tempsC[i] = t + step * (before[i]! - t);
      });
      climate.restC += step * (restBefore - climate.restC);
    }
    const draught = withWind(assembly, flowsAt(assembly, climate, outsideC), day);
    beesFan = bringsTooLittle(draught, day.useKgPerDay);
    climate.flows = beesFan ? breathing(assembly, draught, day.useKgPerDay) : draught;
    latentW = latentW.map((w, i) => w + step * (vapour.uptakeKgPerS[i]! * vaporize + owedW[i]! - w));
  }
  state.vapourPa = vapour.vapourPa;
  const nowLatentW = vapour.uptakeKgPerS.map((kg, i) => kg * vaporize + owedW[i]!);
  state.latentW.set(vapour.uptakeKgPerS.map((kg) => kg * vaporize));
  return { heat, vapour, usedLatentW, nowLatentW, beesFan };
}

function driveOf(state: TopState, day: TopDay, latentW: Float64Array): Drive {
  const { assembly, water } = state;
  const kg = water.kg;
  return {
    outsideC: day.outsideC,
    clusterW: day.clusterW,
    moistureFrac: Float64Array.from(assembly.nodes, ({ dryKg }, i) => (dryKg > 0 ? kg[i + BELOW]! / dryKg : 0)),
    wet: Uint8Array.from(assembly.nodes, ({ dryKg }, i) => (dryKg === 0 && kg[i + BELOW]! > 1e-9 ? 1 : 0)),
    latentW: latentW.subarray(BELOW),
    wallLatentW: [latentW[UPPER_WALL]!, latentW[LOWER_WALL]!],
  };
}

/** Takes candy away, and with it the water it had taken up, which the bees drink and breathe out. Returns that water [kg]. */
function eatCandy(state: TopState, kg: number): number {
  const eaten = Math.min(kg, state.candyKg);
  if (!(eaten > 0)) return 0;
  const share = eaten / state.candyKg;
  state.candyKg -= eaten;
  let drunk = 0;
  state.assembly.nodes.forEach(({ material }, i) => {
    if (material?.kind !== 'candy') return;
    const taken = (state.water.kg[i + BELOW]! - state.water.iceKg[i + BELOW]!) * share;
    state.water.kg[i + BELOW]! -= taken;
    drunk += taken;
  });
  return drunk;
}

/** Held (bound and liquid, beyond the start), frozen [kg]. */
export function heldAndFrozen({ water, startKg }: TopState): { readonly heldKg: number; readonly frozenKg: number } {
  let [all, frozenKg] = [0, 0];
  for (let i = 0; i < water.kg.length; i++) {
    all += water.kg[i]!;
    frozenKg += water.iceKg[i]!;
  }
  return { heldKg: all - frozenKg - startKg, frozenKg };
}
