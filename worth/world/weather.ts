import type { Climate } from './climates.ts';
import type { WorldKind } from './kinds.ts';
import type { Dice } from './random.ts';

/** Day 0 is 1 September; the year is run to 15 June. */
export const DAYS = 288;
const START_DAY_OF_YEAR = 244;
/** Nothing grows and nobody feeds between these days of the year: they part autumn from spring. */
export const SPRING = { from: 60, to: 200 };

/** Error of a place's normals for a keeper's own site: published for the Nov-Mar mean of the nearest of 512 stations [degC]. */
const SITE_SD_C = 1.3;
/** Winter against winter [degC]; the whole winter's published spread is 1.5 to 2.7. */
const WINTER_SD_C = 1.7;
const SPRING_LATE_C = -4;

/**
 * One keeper's daily means from 1 September to 15 June [degC].
 *
 * Straight lines between mid-month means, a shift for the site, one for the winter (heavy tails), noise of two speeds, and spells of
 * cold air of 3 to 25 days that come only from November to March. None of it is the product's generator.
 */
export function weatherOf(climate: Climate, kind: WorldKind, dice: Dice): number[] {
  const siteC = SITE_SD_C * dice.normal();
  const winterC = WINTER_SD_C * dice.heavy(4);
  const late = dice.uniform() < kind.lateSpringFrac;
  const spells = spellsOf(dice);
  const days: number[] = [];
  let [slowC, fastC] = [0, 0];
  for (let day = 0; day < DAYS; day++) {
    slowC = 0.93 * slowC + 0.9 * dice.normal();
    fastC = 0.55 * fastC + 2.1 * dice.heavy(5);
    const cold = season(day, 74, 204);
    const spring = late && day > 189 && day < 269 ? SPRING_LATE_C : 0;
    days.push(normalC(climate, day) + siteC * cold + winterC * cold + spring + (slowC + fastC) * (0.6 + 0.5 * cold) + (spells[day] ?? 0));
  }
  return days;
}

/** Day of the year, 1 to 365, of a day of the run. */
export function dayOfYear(day: number): number {
  return ((START_DAY_OF_YEAR + day - 1) % 365) + 1;
}

function normalC(climate: Climate, day: number): number {
  const month = (dayOfYear(day) / 365) * 12 - 0.5;
  const low = Math.floor(month);
  const at = (index: number) => climate.monthlyMeanC[(index + 12) % 12] ?? 0;
  return at(low) + (month - low) * (at(low + 1) - at(low));
}

/** 1 between the two days, falling to 0 within 45 days outside. */
function season(day: number, from: number, to: number): number {
  return Math.max(0, Math.min(1, 1 - Math.max(from - day, day - to) / 45));
}

/** Cold spells: about three a winter, each with a length, a depth and a soft beginning and end. */
function spellsOf(dice: Dice): number[] {
  const drop: number[] = new Array(DAYS).fill(0);
  for (let day = 61 + 40 * dice.waiting(); day < 209; day += 40 * dice.waiting()) {
    const length = Math.min(25, 3 + 5 * dice.waiting());
    const depthC = Math.min(16, 3 + 4 * dice.waiting());
    for (let i = 0; i <= length; i++) {
      const at = Math.floor(day) + i;
      if (at < DAYS) drop[at] = Math.min(drop[at] ?? 0, -depthC * Math.sin((Math.PI * (i + 0.5)) / (length + 1)) ** 0.5);
    }
    day += length;
  }
  return drop;
}
