import type { Arm } from './gift.ts';

/** The floor: nothing is done. */
export const doNothing: Arm = {
  name: 'do nothing',
  setting: 'none',
  settings: [0],
  gifts: ({ hives }) => hives.map(() => ({ sugarKg: 0, combsKg: 0 })),
};

/**
 * The ceiling: the winter is known beforehand. What one hive has too much goes to those with too little; only the rest is fed, the least
 * shortages first when there is not sugar enough. Its setting is the share of the sugar that all would want.
 */
export const perfectKnowledge: Arm = {
  name: 'perfect knowledge',
  setting: 'share of the sugar wanted',
  settings: [0, 0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 1],
  gifts: (keeper, share) => {
    const short = keeper.hives.map(({ is }, i) => ({ i, kg: is.use.needKg - is.storesKg })).sort((a, b) => a.kg - b.kg);
    const combsKg = new Array<number>(keeper.hives.length).fill(0);
    const sugarKg = new Array<number>(keeper.hives.length).fill(0);
    let spareKg = short.reduce((sum, one) => sum + Math.max(0, -one.kg), 0);
    const givenKg = Math.min(
      spareKg,
      short.reduce((sum, one) => sum + Math.max(0, one.kg), 0),
    );
    const giving = spareKg === 0 ? 0 : givenKg / spareKg;
    spareKg = givenKg;
    for (const { i, kg } of short.filter((one) => one.kg > 0).reverse()) {
      const inKg = Math.min(spareKg, kg);
      spareKg -= inKg;
      combsKg[i] = inKg / keeper.combFactor;
    }
    for (const { i, kg } of short) if (kg < 0) combsKg[i] = (kg * giving) / keeper.combFactor;
    const wants = short.map(({ i, kg }) => ({ i, kg: Math.max(0, kg - (combsKg[i] ?? 0) * keeper.combFactor) })).filter(({ kg }) => kg > 0);
    wants.sort((a, b) => a.kg - b.kg);
    let leftKg = share * wants.reduce((sum, one) => sum + one.kg, 0);
    for (const { i, kg } of wants) {
      const fedKg = kg * 1.000001;
      if (fedKg > leftKg && share < 1) break;
      leftKg -= fedKg;
      sugarKg[i] = fedKg / keeper.storesPerSugar;
    }
    return keeper.hives.map((_, i) => ({ sugarKg: sugarKg[i] ?? 0, combsKg: combsKg[i] ?? 0 }));
  },
};
