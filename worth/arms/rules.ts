import type { WorldHive } from '../world/keeper.ts';
import type { Arm } from './gift.ts';

/** The trade's rules, each with a sweep of its setting; the best setting is looked for in the same world and climate. */
const range = (from: number, to: number, step: number): number[] =>
  Array.from({ length: Math.round((to - from) / step) + 1 }, (_, i) => from + i * step);

const grossKg = ({ seen }: WorldHive) => seen.frontKg + seen.rearKg;
/** Stores a rule of the trade expects of 1 kg of sugar; its setting is swept, so that the figure only names the scale. */
const EXPECTED_YIELD = 1;
/** One candy board [kg of sugar], and what a hive may have lost by March before the keeper of that rule gives it one [kg]. */
const CANDY_KG = 5;
const MARCH_LESS_KG = 13;

const target: Arm = {
  name: 'one target gross',
  setting: 'front and rear together [kg]',
  settings: range(38, 74, 2),
  gifts: ({ hives }, kg) => hives.map((hive) => ({ sugarKg: (kg - grossKg(hive)) / EXPECTED_YIELD, combsKg: 0 })),
};

const frontReading: Arm = {
  name: 'one front reading',
  setting: 'front edge [kg]',
  settings: range(17, 37, 1),
  gifts: ({ hives }, kg) => hives.map((hive) => ({ sugarKg: (2 * (kg - hive.seen.frontKg)) / EXPECTED_YIELD, combsKg: 0 })),
};

const sameForAll: Arm = {
  name: 'feed all the same',
  setting: 'sugar a hive [kg]',
  settings: range(0, 28, 2),
  gifts: ({ hives }, kg) => hives.map(() => ({ sugarKg: kg, combsKg: 0 })),
};

const untilRefused: Arm = {
  name: 'feed until refused',
  setting: 'longest time on offer [days]',
  settings: [0, 2, 4, 6, 8, 10, 12, 15, 18, 22, 26, 30],
  gifts: ({ hives }, days) => hives.map((hive) => ({ sugarKg: days * hive.is.uptakeKgPerDay, combsKg: 0 })),
};

const evenOut: Arm = {
  name: 'even out, then all the same',
  setting: 'sugar a hive [kg]',
  settings: range(0, 28, 2),
  gifts: ({ hives }, kg) => {
    const meanKg = hives.reduce((sum, hive) => sum + grossKg(hive), 0) / hives.length;
    return hives.map((hive) => ({ sugarKg: kg, combsKg: meanKg - grossKg(hive) }));
  },
};

const evenToTarget: Arm = {
  name: 'even out, then one target gross',
  setting: 'front and rear together [kg]',
  settings: range(38, 74, 2),
  gifts: ({ hives }, kg) => {
    const meanKg = hives.reduce((sum, hive) => sum + grossKg(hive), 0) / hives.length;
    return hives.map((hive) => ({ sugarKg: (kg - meanKg) / EXPECTED_YIELD, combsKg: meanKg - grossKg(hive) }));
  },
};

/** Not one of the trade's five, and stronger: the target of autumn, and candy in March for what is below a share of it by then. */
export const targetAndCandy: Arm = {
  name: 'one target gross, candy in March',
  setting: 'front and rear together in autumn [kg]; 13 kg less in March',
  settings: range(38, 74, 2),
  gifts: target.gifts,
  candyKg: (_, kg, { lifts }) =>
    lifts.length > 1 ? [] : (lifts[0] ?? []).map(({ frontKg, rearKg }) => (frontKg + rearKg < kg - MARCH_LESS_KG ? CANDY_KG : 0)),
};

export const rules: readonly Arm[] = [target, frontReading, sameForAll, untilRefused, evenOut, evenToTarget];
