// Made by scripts/compile-tables.mjs from data/climate/character.csv. Do not edit.
import type { DailyCharacter } from './climate-types.ts';

export const dailyCharacters = {
  albertaFoothills: {
    sdC: [9.5, 8.5, 6.9, 4.9, 4.1, 3.1, 2.8, 3.2, 4.1, 4.7, 6.6, 8.5],
    r1: [0.84, 0.85, 0.83, 0.82, 0.75, 0.71, 0.69, 0.7, 0.76, 0.8, 0.8, 0.82],
    r5: [0.16, 0.3, 0.39, 0.29, 0.15, 0.02, 0.16, 0.09, 0.19, 0.29, 0.18, 0.27],
    skew: [-0.6, -0.5, -0.7, -0.8, -0.1, 0.6, 0.2, 0, -0.2, -0.6, -0.6, -0.6],
    sdMeanC: [2.6, 4.8, 3.1, 2.2, 1.9, 0.9, 1.1, 1.2, 2, 2.1, 3.4, 4.8],
    source: "DAILY-SPREAD",
    mark: "COMPUTED",
  },
  montreal: {
    sdC: [7, 6.4, 5.3, 4, 3.9, 3.4, 3, 3.2, 3.8, 4.2, 4.3, 6.2],
    r1: [0.69, 0.71, 0.71, 0.7, 0.66, 0.63, 0.67, 0.68, 0.66, 0.65, 0.64, 0.69],
    r5: [0.13, 0.16, 0.16, 0.16, 0.12, 0.01, 0.05, 0.07, 0.03, 0.08, 0.09, 0.17],
    sdMeanC: [3, 2.9, 2.2, 1.6, 1.6, 1, 0.9, 1.2, 1.4, 1.6, 1.4, 2.9],
    source: "DAILY-SPREAD",
    mark: "COMPUTED",
  },
} satisfies Record<string, DailyCharacter>;
