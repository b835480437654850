import type { WorldKind } from './kinds.ts';
import type { Dice } from './random.ts';
import { DAYS, dayOfYear, SPRING } from './weather.ts';

/**
 * What a colony of the world eats. A hand-drawn curve, not the product's mechanism: a floor, a straight line into the cold, flight on
 * warm days, and brood along an S-curve of the calendar.
 *
 * Published weights it was drawn through: 39 +- 13 g a day for 16,500 bees at 3.5 degC without brood (32 colonies, Sweden, PLOS ONE
 * 16:e0258398); 2 to 3 kg in March and 4 to 5 kg in April (Swedish club advice); about double with brood (Russian handbook).
 */
const FLOOR_G = 42;
const COLD_G_PER_K = 0.9;
const COLD_BELOW_C = 4;
const FLIGHT_G_PER_K = 3.2;
const FLIGHT_FROM_C = 8;
const FLIGHT_SPAN_K = 10;
const BROOD_G = 160;
const BROOD_WIDTH_DAYS = 13;
const USUAL_BEES = 20_000;
/** Bees lost a day, of those there are. */
const DEATH_FRAC = 0.003;
/** Forage counts from this sum of warm degrees above 4 degC since 1 March [K days]; the product has another base and sum. */
const FORAGE_ABOVE_C = 4;
const FORAGE_SUM = 85;
/** Syrup is taken on a day whose mean is at least this [degC]; the first five days go by with buying and mixing. */
const FEEDING_FROM_C = 8;
const FEEDING_FROM_DAY = 5;

/** Use without brood [g/day], of a colony of middling appetite. */
export function winterUseG(bees: number, tempC: number, sizeExponent: number): number {
  const size = bees / USUAL_BEES;
  const cold = COLD_G_PER_K * Math.max(0, COLD_BELOW_C - tempC);
  const flight = FLIGHT_G_PER_K * size * Math.max(0, Math.min(FLIGHT_SPAN_K, tempC - FLIGHT_FROM_C));
  return (FLOOR_G + cold) * size ** sizeExponent + flight;
}

/** What brood adds [g/day] on a day of the year, for a nest that is half grown on `middle`. */
export function broodUseG(bees: number, day: number, middle: number, sizeExponent: number): number {
  const grown = 1 / (1 + Math.exp(-(day - middle) / BROOD_WIDTH_DAYS));
  return BROOD_G * grown * (bees / USUAL_BEES) ** sizeExponent;
}

export interface Year {
  readonly dailyC: readonly number[];
  /** First day that feeds the bees, of the run. */
  readonly forageDay: number;
  /** Days from the round on which syrup is taken. */
  readonly feedingDays: number;
  /** Day of the year when brood is half grown. */
  readonly broodMiddle: number;
  /** Longest run of daily means at or below -20 degC [days]. */
  readonly coldRunDays: number;
}

/** The year of a yard: forage by warm degrees, brood by the end of the real cold. */
export function yearOf(dailyC: readonly number[], dice: Dice): Year {
  const plants = dice.factor(0.18);
  let [sum, run, coldRunDays, lastHard, feedingDays] = [0, 0, 0, 60, 0];
  let forageDay = DAYS - 1;
  dailyC.forEach((tempC, day) => {
    const ofYear = dayOfYear(day);
    if (ofYear >= SPRING.from && ofYear < SPRING.to) sum += Math.max(0, tempC - FORAGE_ABOVE_C);
    if (sum >= FORAGE_SUM * plants && forageDay === DAYS - 1) forageDay = day;
    if (ofYear > SPRING.to && ofYear < 320 && day >= FEEDING_FROM_DAY && tempC >= FEEDING_FROM_C) feedingDays++;
    run = tempC <= -20 ? run + 1 : 0;
    coldRunDays = Math.max(coldRunDays, run);
    if (ofYear < 130 && tempC <= -8) lastHard = ofYear;
  });
  return { dailyC, forageDay, feedingDays, broodMiddle: Math.max(72, Math.min(112, lastHard + 4 + 6 * dice.normal())), coldRunDays };
}

/** 1 March, 1 April, 22 April and 13 May, of the run: the days on which hives can be lifted again. */
export const LIFT_DAYS = [181, 212, 233, 254] as const;
export const LIFT_DATES = ['2027-03-01', '2027-04-01', '2027-04-22', '2027-05-13'] as const;

export interface TrueUse {
  /** Stores a colony needed on 1 September to reach forage [kg], known only when the winter is over. */
  readonly needKg: number;
  /** Of that eaten by each lift [kg]; all of it where forage came before. */
  readonly byLiftKg: readonly number[];
  /** What it never reaches [kg]. */
  readonly unreachedKg: number;
  readonly beesAtLift: readonly number[];
}

export function trueUse(colony: { bees: number; appetite: number; unreachedKg: number }, year: Year, kind: WorldKind): TrueUse {
  const factor = (colony.appetite * kind.level) / 1000;
  let [usedG, bees] = [0, colony.bees];
  const byLiftKg: number[] = [];
  const beesAtLift: number[] = [];
  for (let day = 0; day < DAYS; day++) {
    if ((LIFT_DAYS as readonly number[]).includes(day)) {
      byLiftKg.push(usedG * factor);
      beesAtLift.push(bees);
    }
    if (day >= year.forageDay) continue;
    const ofYear = dayOfYear(day);
    usedG += winterUseG(bees, year.dailyC[day] ?? 0, kind.sizeExponent);
    if (ofYear < SPRING.to) usedG += broodUseG(bees, ofYear, year.broodMiddle, kind.sizeExponent);
    bees *= 1 - DEATH_FRAC;
  }
  const unreachedKg = colony.unreachedKg + 0.02 * year.coldRunDays;
  return { needKg: usedG * factor + unreachedKg, byLiftKg, unreachedKg, beesAtLift };
}
