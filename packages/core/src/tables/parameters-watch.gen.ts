// Made by scripts/compile-tables.mjs from data/parameters/watch.csv. Do not edit.
import type { Parameter } from './types.ts';

export const watchParameters = {
  snowIceKg: { value: 1.5, unit: "kg", low: 0, high: 4, distribution: "fixed", source: "own-judgement", mark: "JUDGEMENT", note: "snow on the lid and ice at the entrance that a scale in winter may weigh with the hive after it was brushed off; one-sided: it only adds" },
  liftSdKg: { value: 1, unit: "kg", low: 0.5, high: 2, distribution: "fixed", source: "own-judgement", mark: "JUDGEMENT", note: "more error of a lift in the cold than in autumn: stiff hands and a hive half frozen to its stand" },
  tailFreedom: { value: 4, unit: "1", low: 3, high: 8, distribution: "fixed", source: "own-judgement", mark: "JUDGEMENT", note: "degrees of freedom of Student's t by which readings are weighed; one wild reading then costs little" },
  leastEffectiveFrac: { value: 0.04, unit: "1", low: 0.02, high: 0.1, distribution: "fixed", source: "own-judgement", mark: "JUDGEMENT", note: "share of the cases that must go on counting after an update; where readings leave fewer they are given less weight until so many do" },
  surpriseFrac: { value: 0.01, unit: "1", low: 0.002, high: 0.05, distribution: "fixed", source: "own-judgement", mark: "JUDGEMENT", note: "chance under which a reading is called surprising" },
  silentWhenAliveFrac: { value: 0.15, unit: "1", low: 0.05, high: 0.3, distribution: "fixed", source: "own-judgement", mark: "JUDGEMENT", note: "how often a living cluster is not heard through the wood at a tap" },
  heardWhenDeadFrac: { value: 0.02, unit: "1", low: 0.005, high: 0.05, distribution: "fixed", source: "own-judgement", mark: "JUDGEMENT", note: "how often something is taken for bees in a dead hive" },
  nearDays: { value: 21, unit: "days", low: 14, high: 28, distribution: "fixed", source: "own-judgement", mark: "JUDGEMENT", note: "a colony that may run out within so many days is checked this week" },
  nearChanceFrac: { value: 0.05, unit: "1", low: 0.02, high: 0.1, distribution: "fixed", source: "own-judgement", mark: "JUDGEMENT", note: "chance to run out within nearDays from which a colony is on this week's list" },
  oldLiftDays: { value: 14, unit: "days", low: 7, high: 28, distribution: "fixed", source: "weighty-matters", mark: "READ", note: "hives are lifted every fortnight from midwinter" },
  quickLidC: { value: -7, unit: "°C", low: -10, high: 4, distribution: "fixed", source: "quick-lid", mark: "READ", note: "the lid is lifted for some seconds above 20 °F and in little wind; others wait for the 30s or 40s °F; below that only a colony that starves otherwise" },
  candySlabKg: { value: 2.5, unit: "kg", low: 1, high: 5, distribution: "fixed", source: "own-judgement", mark: "JUDGEMENT", note: "candy laid on the top bars at one visit" },
  unforeseenFrac: { value: 0.02, unit: "1", low: 0.005, high: 0.05, distribution: "fixed", source: "own-judgement", mark: "JUDGEMENT", note: "share of colonies that do what no case foresaw: robbed, leaking, sharing the hive with mice, or hardly eating; so small that it counts only where readings ask for it" },
} satisfies Record<string, Parameter>;
