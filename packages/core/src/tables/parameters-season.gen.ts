// Made by scripts/compile-tables.mjs from data/parameters/season.csv. Do not edit.
import type { Parameter } from './types.ts';

export const seasonParameters = {
  gluingMaxC: { value: 18, unit: "degC", low: 16, high: 21, distribution: "fixed", source: "memory-gluing", mark: "MEMORY", note: "daytime high at which bees still work propolis; it hardens below about that warmth" },
  seasonLatLimitDeg: { value: 66.5, unit: "deg", low: 66, high: 67, distribution: "fixed", source: "memory-gluing", mark: "MEMORY", note: "polar circle: no dates are given beyond it" },
} satisfies Record<string, Parameter>;
