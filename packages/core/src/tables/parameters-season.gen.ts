// Made by scripts/compile-tables.mjs from data/parameters/season.csv. Do not edit.
import type { Parameter } from './types.ts';

export const seasonParameters = {
  seasonLatLimitDeg: { value: 66.5, unit: "deg", low: 66, high: 67, distribution: "fixed", source: "polar-circle", mark: "MEMORY", note: "polar circle: beyond it the sun stays down or up for days on end and no dates are given" },
  workerBroodDays: { value: 21, unit: "d", low: 20, high: 22, distribution: "fixed", source: "worker-21-days", mark: "READ", note: "from egg to worker bee" },
  queenIntroDays: { value: 7, unit: "d", low: 4, high: 14, distribution: "fixed", source: "own-judgement-season", mark: "JUDGEMENT", note: "from putting in a mated queen until she lays" },
  queenRearDays: { value: 28, unit: "d", low: 25, high: 35, distribution: "fixed", source: "queen-16-days", mark: "DERIVED", note: "from the egg a colony raises itself: 16 days to the queen and about 12 until she has mated and lays" },
  oldQueenYears: { value: 2, unit: "years", low: 1, high: 3, distribution: "fixed", source: "own-judgement-season", mark: "JUDGEMENT", note: "a queen in her third summer is old; younger ones lower the risk of the winter" },
  beesPerFrame: { value: 1900, unit: "bees", low: 1400, high: 2430, distribution: "fixed", source: "kauffeld-1975", mark: "READ", note: "both sides of a deep frame covered in a single layer, for reading the trade's sizes in frames" },
  workHoursPerDay: { value: 3, unit: "h", low: 1, high: 8, distribution: "fixed", source: "own-judgement-season", mark: "JUDGEMENT", note: "hours a keeper gives the bees on a day that allows it" },
  tightFrac: { value: 0.9, unit: "1", low: 0.8, high: 0.95, distribution: "fixed", source: "own-judgement-season", mark: "JUDGEMENT", note: "a task is tight when the chance that it is still time has fallen below this" },
  weighAheadDays: { value: 14, unit: "d", low: 7, high: 21, distribution: "fixed", source: "own-judgement-season", mark: "JUDGEMENT", note: "between the weighing and the end of feeding: to plan, mix, and let a usual shortage be taken" },
  checkDays: { value: 30, unit: "d", low: 21, high: 45, distribution: "fixed", source: "season-practice", mark: "PRACTICE", note: "a colony in winter is listened to once a month from outside" },
  putOffDays: { value: 7, unit: "d", low: 3, high: 14, distribution: "fixed", source: "own-judgement-season", mark: "JUDGEMENT", note: "a task put off without a date comes back after a week" },
  overShownDays: { value: 30, unit: "d", low: 14, high: 60, distribution: "fixed", source: "own-judgement-season", mark: "JUDGEMENT", note: "a task that is over by so much is no longer told" },
} satisfies Record<string, Parameter>;
