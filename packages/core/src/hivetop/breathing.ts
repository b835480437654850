import { burnHoney } from '../matter/index.ts';
import { hivetopParameters } from '../tables/parameters-hivetop.gen.ts';
import { type AirFlows, airKgPerM3 } from './air-flow.ts';
import type { Assembly } from './assembly.ts';

/** Molar masses of oxygen and of air. */
const OXYGEN_TO_AIR = 31.9988 / 28.9647;
const DAY_S = 86_400;

/**
 * Air a colony must have to keep its oxygen [kg/s].
 *
 * equation  oxygen burnt / (share in air - share it stands) by volume, as mass of air
 * source    [winter-oxygen]; stoichiometry as `burnHoney`
 */
export function breathKgPerS(useKgPerDay: number): number {
  const p = hivetopParameters;
  const oxygenKgPerS = burnHoney(useKgPerDay).oxygenKg / DAY_S;
  return oxygenKgPerS / OXYGEN_TO_AIR / (p.airOxygenFrac.value - p.leastOxygenFrac.value);
}

/** Whether the draught alone brings less air than the bees need. */
export function bringsTooLittle(flows: AirFlows, useKgPerDay: number): boolean {
  return flows.openings[0]!.length > 0 && hiveInflow(flows) < breathKgPerS(useKgPerDay) * (1 - 1e-9);
}

function hiveInflow(flows: AirFlows): number {
  return flows.openings[0]!.reduce((sum, { inKgPerS }) => sum + inKgPerS, 0) + Math.max(0, ...flows.upKgPerS.slice(0, 1).map((up) => -up));
}

/** The draught, and what the bees fan in and out at the widest opening of the hive where the draught is too little. Without an opening there is none. */
export function breathing(assembly: Assembly, flows: AirFlows, useKgPerDay: number): AirFlows {
  if (!bringsTooLittle(flows, useKgPerDay)) return flows;
  const fanned = breathKgPerS(useKgPerDay) - hiveInflow(flows);
  const areas = assembly.cavities[0]!.openings.map(({ areaM2 }) => areaM2);
  const widest = areas.indexOf(Math.max(...areas));
  const hive = flows.openings[0]!.map((flow, i) =>
    i === widest ? { outKgPerS: flow.outKgPerS + fanned, inKgPerS: flow.inKgPerS + fanned } : flow,
  );
  return { ...flows, openings: [hive, ...flows.openings.slice(1)] };
}

/**
 * Gusts in and out of every opening, beside the draught.
 *
 * equation  0.025 A U both ways through each opening [m3/s]
 * source    [wind-exchange], for openings on one side of a room
 */
export function withWind(
  { cavities }: Assembly,
  flows: AirFlows,
  { windMPerS, outsideC }: { readonly windMPerS: number; readonly outsideC: number },
): AirFlows {
  if (windMPerS === 0) return flows;
  const perM2 = hivetopParameters.windExchangeFrac.value * windMPerS * airKgPerM3(outsideC);
  return {
    ...flows,
    openings: flows.openings.map((own, c) =>
      own.map(({ outKgPerS, inKgPerS }, i) => {
        const gust = perM2 * cavities[c]!.openings[i]!.areaM2;
        return { outKgPerS: outKgPerS + gust, inKgPerS: inKgPerS + gust };
      }),
    ),
  };
}
