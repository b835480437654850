import { LIFT_DAYS } from '../world/colony.ts';
import type { WorldHive, WorldKeeper } from '../world/keeper.ts';

/** What an arm does for one hive: sugar it offers, and stores it moves in or (negative) out by combs, as planned. */
export interface Gift {
  readonly sugarKg: number;
  readonly combsKg: number;
}

export interface Outcome {
  readonly colonies: number;
  readonly starved: number;
  readonly sugarKg: number;
}

export interface Arm {
  readonly name: string;
  /** What its setting means, with its unit. */
  readonly setting: string;
  readonly settings: readonly number[];
  /** A gift for each hive of the keeper, at one setting. */
  gifts(keeper: WorldKeeper, setting: number): readonly Gift[];
  /** Sugar as candy [kg] at one lift, from what the scale shows then and before; left out: the arm does nothing in winter. */
  candyKg?(keeper: WorldKeeper, setting: number, of: Winter): readonly number[];
}

/** What a keeper knows at a lift: readings of all lifts so far, what was taken in autumn, and the candy given at earlier lifts. */
export interface Winter {
  readonly lifts: readonly (readonly Edges[])[];
  readonly taken: readonly Taken[];
  readonly candy: readonly (readonly number[])[];
}

export interface Edges {
  readonly frontKg: number;
  readonly rearKg: number;
}

/** What a hive took in autumn, as its keeper saw [kg of sugar]. */
export interface Taken {
  readonly sugarKg: number;
  readonly candySugarKg: number;
}

/**
 * The winter itself: what was offered and not taken is not used; a hive whose stores end before forage starves, and what it would have
 * got later is not used.
 */
export function outcomeOf(keeper: WorldKeeper, arm: Arm, setting: number): Outcome {
  const gifts = arm.gifts(keeper, setting);
  const { hives } = keeper;
  const taken = hives.map((hive, i) => {
    const gift = gifts[i] ?? { sugarKg: 0, combsKg: 0 };
    return takenBy(hive, { keeper, withCombsKg: combsKg(keeper, i, gift), offeredKg: gift.sugarKg });
  });
  const givenKg = hives.map((_, i) => {
    const { sugarKg, candySugarKg } = taken[i] as Taken;
    return combsKg(keeper, i, gifts[i]) + (sugarKg + candySugarKg) * keeper.storesPerSugar;
  });
  let sugarKg = taken.reduce((sum, one) => sum + one.sugarKg + one.candySugarKg, 0);
  const alive = hives.map(() => true);
  const lifts: Edges[][] = [];
  const candy: number[][] = [];
  for (let k = 0; arm.candyKg !== undefined && k < LIFT_DAYS.length; k++) {
    hives.forEach(({ is }, i) => {
      if ((givenKg[i] as number) < (is.use.byLiftKg[k] as number) + is.use.unreachedKg) alive[i] = false;
    });
    lifts.push(hives.map((hive, i) => hive.lifted(k, givenKg[i] as number)));
    const wished = arm.candyKg(keeper, setting, { lifts, taken, candy });
    const laid = hives.map(({ is }, i) => (alive[i] ? Math.min(wished[i] ?? 0, is.candyKg) : 0));
    laid.forEach((kg, i) => {
      sugarKg += kg;
      givenKg[i] = (givenKg[i] as number) + kg * keeper.storesPerSugar;
    });
    candy.push(laid);
  }
  const starved = hives.filter(({ is }, i) => !alive[i] || (givenKg[i] as number) < is.use.needKg).length;
  return { colonies: hives.length, starved, sugarKg };
}

/** Stores once combs have been moved [kg]. */
function combsKg(keeper: WorldKeeper, i: number, gift: Gift | undefined): number {
  return Math.max(0, (keeper.hives[i]?.is.storesKg ?? 0) + (gift?.combsKg ?? 0) * keeper.combFactor);
}

/** Syrup while days are warm, only into the room there is; then candy under the lid for what is left of the offer. */
function takenBy(hive: WorldHive, of: { keeper: WorldKeeper; withCombsKg: number; offeredKg: number }): Taken {
  const offeredKg = Math.max(0, of.offeredKg);
  const roomKg = Math.max(0, hive.is.roomKg - of.withCombsKg) / of.keeper.storesPerSugar;
  const sugarKg = Math.min(offeredKg, roomKg, of.keeper.year.feedingDays * hive.is.uptakeKgPerDay);
  return { sugarKg, candySugarKg: Math.min(offeredKg - sugarKg, hive.is.candyKg) };
}
