// Made by scripts/compile-tables.mjs from data/climate/spread-by-class.csv. Do not edit.
import type { ClassSpread } from './climate-types.ts';

/** October to April. */
export const classSpreads: ClassSpread[] = [
  { januaryLowC: null, januaryHighC: -30, stations: 3, sdBetweenYearsC: [2, 2.6, 3.1, 3.1, 3.8, 3.2, 2.2], sdDailyInMonthC: [5.7, 7.7, 5.2, 4.9, 5.4, 7.1, 5.6], source: "DAILY-SPREAD", mark: "COMPUTED", note: "medians over stations" },
  { januaryLowC: -30, januaryHighC: -22, stations: 15, sdBetweenYearsC: [1.6, 2.8, 2.7, 2.9, 3, 2.9, 1.9], sdDailyInMonthC: [4.9, 6.7, 5.8, 5.1, 5.6, 6.2, 4.5], source: "DAILY-SPREAD", mark: "COMPUTED", note: "medians over stations" },
  { januaryLowC: -22, januaryHighC: -16, stations: 33, sdBetweenYearsC: [1.9, 3.5, 4.1, 4.4, 3.9, 3.1, 2.4], sdDailyInMonthC: [4.6, 7, 7.1, 7.2, 6.6, 5.7, 4.8], source: "DAILY-SPREAD", mark: "COMPUTED", note: "medians over stations" },
  { januaryLowC: -16, januaryHighC: -12, stations: 39, sdBetweenYearsC: [2, 3.4, 3.7, 3.4, 3.9, 3, 2.5], sdDailyInMonthC: [4.5, 6.1, 6.6, 6.9, 6.3, 5.3, 4.6], source: "DAILY-SPREAD", mark: "COMPUTED", note: "medians over stations" },
  { januaryLowC: -12, januaryHighC: -8, stations: 51, sdBetweenYearsC: [1.8, 2.9, 3.6, 3.1, 3.8, 2.8, 1.8], sdDailyInMonthC: [4.2, 4.9, 6, 6.9, 6.2, 4.7, 4], source: "DAILY-SPREAD", mark: "COMPUTED", note: "medians over stations" },
  { januaryLowC: -8, januaryHighC: -4, stations: 85, sdBetweenYearsC: [1.8, 2.6, 3.3, 3, 3.6, 2.6, 1.6], sdDailyInMonthC: [3.9, 4.2, 4.9, 5.7, 5.3, 4, 4], source: "DAILY-SPREAD", mark: "COMPUTED", note: "medians over stations" },
  { januaryLowC: -4, januaryHighC: 0, stations: 99, sdBetweenYearsC: [1.7, 2.2, 2.7, 2.7, 3.1, 2.2, 1.6], sdDailyInMonthC: [3.7, 3.9, 4.2, 4.7, 4.2, 3.6, 3.9], source: "DAILY-SPREAD", mark: "COMPUTED", note: "medians over stations" },
  { januaryLowC: 0, januaryHighC: 4, stations: 25, sdBetweenYearsC: [1.6, 1.7, 2.1, 2.1, 2.6, 1.8, 1.4], sdDailyInMonthC: [3.1, 3.4, 3.6, 3.6, 3.4, 3.3, 3.5], source: "DAILY-SPREAD", mark: "COMPUTED", note: "medians over stations" },
];
