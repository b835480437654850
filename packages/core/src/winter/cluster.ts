import type { WinterValues } from './parameters.ts';

/**
 * Heat a kilogram of clustered bees loses per kelvin, by the size of the cluster.
 *
 * massKg      mass of bees [kg], above 0
 * returns     [W/(kg·K)]; clusterWPerKgK at 2 kg; about massKg^-1/2 for small clusters, massKg^-1/4 for large ones
 * equation    c(m) = C0 (m/2)^-1/4 [(1 + (b/m)^2) / (1 + (b/2)^2)]^1/8, b = sizeBendKg
 * valid       measured 0.005 to 1.2 kg (exponent -0.48); above that from honey use by colony size
 * source      [southwick-1985], [harbo-1983]; the form is ours: smooth, and made of square roots so that every engine agrees
 * checked     checks/winter.ts: use per bee at 4,400, 8,900 and 34,000 bees
 */
export function clusterWPerKgK(massKg: number, p: WinterValues): number {
  if (!(massKg > 0)) throw new RangeError(`clusterWPerKgK: massKg is ${massKg} kg, must be above 0`);
  const bend = p.sizeBendKg / massKg;
  const bendAt2 = p.sizeBendKg / 2;
  return p.clusterWPerKgK * eighthRoot((1 + bend * bend) / (1 + bendAt2 * bendAt2)) * Math.sqrt(Math.sqrt(2 / massKg));
}

function eighthRoot(x: number): number {
  return Math.sqrt(Math.sqrt(Math.sqrt(x)));
}

/** A smooth max(x, 0): exact far from 0, `width`/2 above it at 0. */
function softPositive(x: number, width: number): number {
  return (x + Math.sqrt(x * x + width * width)) / 2;
}

/** Resting metabolism of bees at a temperature [W/kg]: Q10 rise from 20 °C. Source: [schmolz-2002]. */
export function basalWPerKg(tempC: number, p: WinterValues): number {
  return p.basalWPerKg * p.basalQ10 ** ((tempC - 20) / 10);
}

/** Activity on warm days [W/kg]: nothing in the cold, then growing over `warmSpanK`. Source: [harbo-1983] and field weights. */
export function warmWPerKg(tempC: number, p: WinterValues): number {
  const over = tempC - p.warmFromC;
  return p.warmWPerKgK * (softPositive(over, p.warmWidthK) - softPositive(over - p.warmSpanK, p.warmWidthK));
}

/**
 * Heat of a broodless cluster in its hive, in the cold and without activity.
 *
 * The cluster keeps its heart at Ts and loses heat to the air around it; that air is warmed by the heat on its way out through
 * the hive. While the air around is colder than Tmin the loss follows the difference; above it the cluster loosens and saves nothing more.
 *
 * massKg        bees [kg]; tempC outside [°C]; hiveWPerK conductance of the hive around the cluster [W/K], above 0
 * returns       heatW [W] and aroundC, the air around the cluster [°C]
 * equation      G (Ta - T) = m c (Ts - smin(Ta, Tmin)), smin(x, y) = (x + y - sqrt((x - y)^2 + s^2)) / 2, solved in closed form
 * valid         -45 to +20 °C; below about -10 °C no single hive has been weighed: extrapolated
 * source        series of cluster and hive: own, from [melathopoulos] (0.1 W/kg/K, least use at 5 to 10 °C)
 * checked       checks/winter.ts; winter-laws.test.ts (more insulation never costs more, smooth, least use between -3 and +10 °C)
 */
export function clusterHeat(
  massKg: number,
  tempC: number,
  setting: { hiveWPerK: number; values: WinterValues },
): { heatW: number; aroundC: number } {
  const { hiveWPerK: G, values: p } = setting;
  if (!(G > 0)) throw new RangeError(`clusterHeat: hiveWPerK is ${G} W/K, must be above 0`);
  const a = massKg * clusterWPerKgK(massKg, p);
  const half = a / 2;
  const A = G + half;
  const cold = tempC - p.looseTempC;
  const B = G * cold + a * (p.clusterTempC - p.looseTempC);
  const D = A * A - half * half;
  const over = (A * B + half * Math.sqrt(B * B + p.looseWidthK * p.looseWidthK * D)) / D;
  return { heatW: G * (over - cold), aroundC: over + p.looseTempC };
}

/**
 * Honey a colony of a given size eats in a day at a given temperature, brood apart.
 *
 * bees [count], tempC [°C], hiveWPerK [W/K]; broodNestFrac 0 to 1: share of a full brood nest (heat only)
 * returns   [kg/day]
 */
export function dailyUseKg(
  bees: number,
  tempC: number,
  setting: { hiveWPerK: number; values: WinterValues; broodNestFrac?: number },
): number {
  const p = setting.values;
  const massKg = bees * p.beeMassKg;
  const cold = clusterHeat(massKg, tempC, setting).heatW;
  const basal = massKg * basalWPerKg(tempC, p);
  const width = massKg * p.basalWidthWPerKg;
  const resting = (cold + basal + Math.sqrt((cold - basal) ** 2 + width * width)) / 2;
  const heatW = (resting + massKg * warmWPerKg(tempC, p)) * (1 + p.broodHeatFrac * (setting.broodNestFrac ?? 0));
  return (heatW * 86400) / p.honeyJPerKg;
}

/** Eggs a day so many days after brood begins, before the colony's own limits. Gompertz curve. */
export function eggsOnRamp(daysSinceStart: number, p: WinterValues): number {
  if (daysSinceStart < 0) return 0;
  return p.eggsPlateauPerDay * Math.exp(-p.eggsRampDepth * Math.exp(-p.eggsRampPerDay * daysSinceStart));
}
