// Made by scripts/compile-tables.mjs from data/parameters/plan.csv. Do not edit.
import type { Parameter } from './types.ts';

export const planParameters = {
  lookGoodDays: { value: 30, unit: "days", low: 14, high: 45, distribution: "fixed", source: "own-judgement", mark: "JUDGEMENT", note: "a count of combs or bees is taken as what is in the hive for so long" },
  weighingOldDays: { value: 21, unit: "days", low: 10, high: 30, distribution: "fixed", source: "own-judgement", mark: "JUDGEMENT", note: "an older weighing is still used and said to be old" },
  spareFromKg: { value: 2, unit: "kg", low: 1, high: 3, distribution: "fixed", source: "own-judgement", mark: "JUDGEMENT", note: "a colony is called spare from so much above its need: about what one frame gives" },
  partFullFrac: { value: 0.5, unit: "1", low: 0.3, high: 0.7, distribution: "fixed", source: "own-judgement", mark: "JUDGEMENT", note: "honey on a comb called part full against a capped one" },
  feedSinceSdFrac: { value: 0.25, unit: "1", low: 0.15, high: 0.4, distribution: "fixed", source: "own-judgement", mark: "JUDGEMENT", note: "error of the stores made from feed taken since the weighing as a share of the span of the published yields" },
  combSinceSdFrac: { value: 0.15, unit: "1", low: 0.1, high: 0.25, distribution: "fixed", source: "own-judgement", mark: "JUDGEMENT", note: "error of the honey on combs moved since the weighing" },
  cappedGuessFrac: { value: 0.6, unit: "1", low: 0.4, high: 0.8, distribution: "fixed", source: "own-judgement", mark: "JUDGEMENT", note: "share of the stores taken to be in whole capped combs where nobody counted; a look comes before any of them moves" },
  keptFrames: { value: 4, unit: "frames", low: 3, high: 6, distribution: "fixed", source: "own-judgement", mark: "JUDGEMENT", note: "combs taken to hold bees and brood where nobody counted" },
  lightLeftFrames: { value: 1, unit: "frames", low: 1, high: 2, distribution: "fixed", source: "own-judgement", mark: "JUDGEMENT", note: "combs at least that are not counted as capped" },
  unionUseExponent: { value: 0.75, unit: "1", low: 0.6, high: 0.85, distribution: "fixed", source: "own-judgement", mark: "JUDGEMENT", note: "use grows with bees to this power: the model's size law between small and big clusters" },
} satisfies Record<string, Parameter>;
