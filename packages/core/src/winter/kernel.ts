import { clusterWPerKgK, eggsOnRamp } from './cluster.ts';
import type { WinterValues } from './parameters.ts';
import type { YardSeason } from './season.ts';

/** What is drawn for one colony, by member. */
export interface ColonyDraws {
  /** [bees] on the first day. */
  readonly bees: Float64Array;
  /** [1/day] */
  readonly winterDeath: Float64Array;
  readonly springDeath: Float64Array;
  /** Day index on which brood begins; may be negative; Infinity: none. */
  readonly broodStart: Float64Array;
  /** Brood against the ramp [1]. */
  readonly broodScale: Float64Array;
}

/** Where the kernel writes. Reused from colony to colony. */
export interface ColonyRun {
  /** [kg/day] members x days, appetite 1. */
  readonly useKg: Float64Array;
  /** [bees] after the last day, by member. */
  readonly beesAtEnd: Float64Array;
}

/** Eggs become bees after so many days; larvae are fed around the sixth. Worker development, 21 days: any textbook. */
const BROOD_DAYS = 21;
const FED_AGE_DAYS = 6;
/** [eggs/day] how gradually the two limits of laying meet. */
const EGG_WIDTH = 20;

/**
 * The winter of one colony in every member, day by day: bees, brood and honey eaten with appetite 1 (appetite only multiplies it).
 *
 * The physics of a day is that of `dailyUseKg`, written out so that nothing is computed twice; winter-kernel.test.ts holds the two together.
 *
 * season    the yard's weather, members x days
 * draws     by member
 * hiveWPerK conductance of the hive around the cluster [W/K], above 0
 * equation  per day: cluster and hive in series, resting floor, activity, brood heat; N' = N (1 - mu) + emerged; eggs on a ramp, limited by the bees
 */
export function runColony(
  season: YardSeason,
  draws: ColonyDraws,
  setting: { hiveWPerK: number; values: WinterValues },
  run: ColonyRun,
): void {
  const p = setting.values;
  const { days, members, rows, tempC, basalWPerKg, warmWPerKg, flightIndex } = season;
  const { useKg, beesAtEnd } = run;
  const { bees, winterDeath, springDeath, broodStart, broodScale } = draws;
  if (useKg.length < members * days) throw new RangeError(`runColony: useKg has room for ${useKg.length} values, needs ${members * days}`);
  const lastOnRamp = days + 399;
  const ramp = new Float64Array(lastOnRamp + 1);
  for (let i = 0; i <= lastOnRamp; i++) ramp[i] = eggsOnRamp(i, p);
  const eggs = new Float64Array(BROOD_DAYS);
  const G = setting.hiveWPerK;
  const { beeMassKg: beeKg, looseTempC: loose, basalWidthWPerKg: basalWidth, broodFoodKg, broodHeatFrac, broodEmergeFrac } = p;
  const bend2 = p.sizeBendKg * p.sizeBendKg;
  const span = p.clusterTempC - loose;
  const width2 = p.looseWidthK * p.looseWidthK;
  const kgPerDayPerW = 86400 / p.honeyJPerKg;
  const perNest = 1 / p.broodNestCells;
  const eggsPerBee = 1 / p.beesPerEgg;
  // m c(m) = lead * m * ((1 + (b/m)^2) / m^2)^(1/8), the form of clusterWPerKgK; lead from its value at 1 kg
  const lead = clusterWPerKgK(1, p) / Math.sqrt(Math.sqrt(Math.sqrt(1 + bend2)));
  const perTurnover = 1 / p.turnoverDays;
  for (let i = 0; i < members; i++) {
    const at = rows === 1 ? 0 : i * days;
    const to = i * days;
    // a whole number, so that the loop below stays with whole numbers; later than any day: no brood
    const start = Math.min(broodStart[i]!, days + BROOD_DAYS) | 0;
    const scale = broodScale[i]!;
    const muWinter = winterDeath[i]!;
    const muRise = springDeath[i]! - muWinter;
    const flight = flightIndex[i]!;
    let n = bees[i]!;
    let cells = 0;
    for (let age = 1; age <= BROOD_DAYS; age++) {
      const since = -age - start;
      const laid = since >= 0 ? laying(ramp[since < lastOnRamp ? since : lastOnRamp]! * scale, n * eggsPerBee) : 0;
      eggs[BROOD_DAYS - age] = laid;
      cells += laid;
    }
    let slot = 0;
    let fedSlot = BROOD_DAYS - FED_AGE_DAYS;
    for (let d = 0; d < days; d++) {
      const m = n * beeKg;
      const m2 = m * m;
      const a = lead * m * Math.sqrt(Math.sqrt(Math.sqrt((m2 + bend2) / (m2 * m2))));
      const half = a * 0.5;
      const A = G + half;
      const cold = tempC[at + d]! - loose;
      const B = G * cold + a * span;
      const D = A * A - half * half;
      const heat = G * ((A * B + half * Math.sqrt(B * B + width2 * D)) / D - cold);
      const over = heat - m * basalWPerKg[at + d]!;
      const w = m * basalWidth;
      const resting = heat + 0.5 * (Math.sqrt(over * over + w * w) - over);
      const nestFrac = cells * perNest;
      const power = (resting + m * warmWPerKg[at + d]!) * (1 + broodHeatFrac * (nestFrac < 1 ? nestFrac : 1));
      useKg[to + d] = power * kgPerDayPerW + broodFoodKg * eggs[fedSlot]!;
      let turned = 0;
      if (d > flight) {
        turned = (d - flight) * perTurnover;
        turned = turned >= 1 ? 1 : turned * turned * (3 - 2 * turned);
      }
      n *= 1 - muWinter - muRise * turned;
      if (d >= start || cells > 0) {
        const emerged = eggs[slot]!;
        n += broodEmergeFrac * emerged;
        const since = d - start;
        const laid = since >= 0 ? laying(ramp[since < lastOnRamp ? since : lastOnRamp]! * scale, n * eggsPerBee) : 0;
        cells += laid - emerged;
        eggs[slot] = laid;
      }
      slot = slot + 1 === BROOD_DAYS ? 0 : slot + 1;
      fedSlot = fedSlot + 1 === BROOD_DAYS ? 0 : fedSlot + 1;
    }
    beesAtEnd[i] = n;
  }
}

/** Eggs laid when the ramp allows `onRamp` and the bees can rear `byBees`: a smooth minimum. */
function laying(onRamp: number, byBees: number): number {
  const gap = onRamp - byBees;
  const laid = 0.5 * (onRamp + byBees - Math.sqrt(gap * gap + EGG_WIDTH * EGG_WIDTH));
  return laid > 0 ? laid : 0;
}
