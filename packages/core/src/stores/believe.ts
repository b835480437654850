import { bad, good, type Result } from '../result/index.ts';
import { storesParameters } from '../tables/parameters-stores.gen.ts';
import { type Bees, beesOf } from './bees.ts';
import { cappedNetKg, countedStores } from './counted.ts';
import { waterToDry } from './drying.ts';
import { type Estimate, joined, sdFromBounds } from './errors.ts';
import { onHiveMass } from './on-hive.ts';
import type { StoresCase } from './read-input.ts';
import { type Tare, tareOf } from './tare.ts';
import { bothEdgesSdKg } from './weighing-doubt.ts';

interface Part {
  readonly massKg: number;
  readonly sdKg: number;
}

/** All that is known of one hive's stores and of what is not stores. */
export interface Belief {
  readonly stores: Estimate;
  readonly byWeight: Estimate | null;
  readonly byCount: Estimate | null;
  readonly tare: Tare;
  readonly bees: Bees;
  readonly pollen: Part;
  readonly onHive: Part;
  readonly water: Part;
  readonly snow: Part;
  /** Honey when every comb is full and fat [kg]. */
  readonly fullKg: number;
}

/** A weight further from the possible than so many of its standard deviations is of another hive, or mistyped. */
const DEVIATIONS = 3;

/** Pollen by its combs where they were counted, else a usual amount for so many combs; brood where it was counted. */
function pollenAndBrood({ facts, input }: StoresCase): Part {
  const p = storesParameters;
  const countSd = p.beeCountSdFrames.value;
  const pollen: Part =
    input.pollenFrames === undefined
      ? { massKg: p.pollenPerCombKg.value * facts.framePlaces, sdKg: sdFromBounds(p.pollenPerCombKg) * facts.framePlaces }
      : {
          massKg: p.pollenFrameKg.value * input.pollenFrames,
          sdKg: Math.hypot(sdFromBounds(p.pollenFrameKg) * input.pollenFrames, p.pollenFrameKg.value * countSd),
        };
  const frames = input.broodFrames ?? 0;
  const broodSd = frames === 0 ? 0 : Math.hypot(sdFromBounds(p.broodFrameKg) * frames, p.broodFrameKg.value * countSd);
  return { massKg: pollen.massKg + p.broodFrameKg.value * frames, sdKg: Math.hypot(pollen.sdKg, broodSd) };
}

/**
 * Joins the weighing and the count of combs into one estimate of the stores.
 *
 * returns   the estimate, each way by itself, and the parts taken off the weight; or the error of a weight that cannot belong to
 *           this build: more than three standard deviations lighter than the hive without bees and stores, or heavier than with
 *           every comb fat with honey. A little lighter is kept: that is how a starving colony in a light hive looks.
 */
export function believe(given: StoresCase): Result<Belief> {
  const { facts, input, fed } = given;
  const p = storesParameters;
  const tare = tareOf(facts, input.emptyHive);
  const bees = beesOf(facts, input);
  const pollen = pollenAndBrood(given);
  const onHive = onHiveMass(facts, input.onHive);
  const water = waterToDry(fed);
  const snowKg = input.snowIceKg ?? 0;
  const snow: Part = { massKg: snowKg, sdKg: p.snowSdFrac.value * snowKg };
  const byCount = input.cappedFrames === undefined ? null : countedStores(facts, input);
  const fullKg = facts.frames.reduce((sum, { part, count }) => sum + cappedNetKg(part.depth).kg * count, 0) * p.fullestFactor.value;
  let byWeight: Estimate | null = null;
  if (input.grossKg !== undefined) {
    const scaleSdKg = input.grossSdKg ?? bothEdgesSdKg(input.grossKg);
    const bareKg = tare.massKg + onHive.massKg + snow.massKg;
    const bareSdKg = Math.hypot(scaleSdKg, tare.partsSdKg, tare.combSdKg, tare.ownSdKg, onHive.sdKg, snow.sdKg);
    const high = bareKg + bees.massKg + pollen.massKg + water.massKg + fullKg + DEVIATIONS * bareSdKg;
    const low = Math.max(0, bareKg - DEVIATIONS * bareSdKg);
    if (!(input.grossKg >= low && input.grossKg <= high)) {
      return bad({
        kind: 'out-of-range',
        field: 'grossKg (for this build)',
        value: input.grossKg,
        unit: 'kg',
        low: rounded(low),
        high: rounded(high),
      });
    }
    byWeight = {
      kg: input.grossKg - bareKg - bees.massKg - pollen.massKg - water.massKg,
      errors: {
        scale: scaleSdKg,
        tare: -tare.partsSdKg,
        comb: -tare.combSdKg,
        hive: -tare.ownSdKg,
        bees: -bees.sdKg,
        pollen: -pollen.sdKg,
        onHive: -onHive.sdKg,
        water: -water.sdKg,
        snow: -snow.sdKg,
      },
    };
  }
  const stores = byWeight && byCount ? joined(byWeight, byCount) : (byWeight ?? byCount);
  if (stores === null) return bad({ kind: 'missing-all', ways: [['grossKg'], ['cappedFrames']] });
  return good({ stores, byWeight, byCount, tare, bees, pollen, onHive, water, snow, fullKg });
}

/** For error texts: a bound in kilograms and tenths. */
function rounded(kg: number): number {
  return Math.round(kg * 10) / 10;
}
