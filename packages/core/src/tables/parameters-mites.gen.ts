// Made by scripts/compile-tables.mjs from data/parameters/mites.csv. Do not edit.
import type { Parameter } from './types.ts';

export const mitesParameters = {
  washCertaintyFrac: { value: 0.95, unit: "1", low: 0.9, high: 0.99, distribution: "fixed", source: "newcombe-1998", mark: "READ", note: "certainty of the interval shown with a wash unless asked otherwise" },
  doublingDays: { value: 30, unit: "days", low: 19, high: 40, distribution: "lognormal", source: "mite-growth", mark: "READ", note: "days in which the mites on the bees double while there is brood" },
  doublingFastDays: { value: 19, unit: "days", low: 19, high: 24, distribution: "fixed", source: "mite-growth", mark: "READ", note: "the fast end: bees shrinking too" },
  doublingSlowDays: { value: 40, unit: "days", low: 35, high: 40, distribution: "fixed", source: "mite-growth", mark: "DERIVED", note: "the slow end: a season's growth in south-east Finland" },
} satisfies Record<string, Parameter>;
