// Made by scripts/compile-tables.mjs from data/parameters/phenology.csv. Do not edit.
import type { Parameter } from './types.ts';

export const phenologyParameters = {
  feedingMeanC: { value: 10, unit: "degC", low: 8, high: 12, distribution: "fixed", source: "SYRUP-LIMIT", mark: "READ", note: "night-day mean at which syrup in the hive is still taken; cold nights cool it for the whole day" },
  settledDays: { value: 3, unit: "d", low: 2, high: 5, distribution: "fixed", source: "practice-phenology", mark: "PRACTICE", note: "days in a row that make a spell; one warm day does not open a feeding season, one cold one does not close the cluster" },
  clusterMaxC: { value: 14, unit: "degC", low: 13, high: 18, distribution: "fixed", source: "CLUSTER-57F", mark: "READ-2", note: "the cluster is well formed at 57 degF; it begins at 64 degF" },
  flightMaxC: { value: 10, unit: "degC", low: 8, high: 13, distribution: "fixed", source: "FLIGHT-KOVAC", mark: "READ", note: "lower limit of flight; sun is needed too and is not counted" },
  flightFromDayOfYear: { value: 32, unit: "d", low: 15, high: 60, distribution: "fixed", source: "practice-phenology", mark: "PRACTICE", note: "first flight is looked for from 1 February; earlier thaws are chance" },
  pollenBaseC: { value: 10, unit: "degC", low: 9.4, high: 10.6, distribution: "fixed", source: "OSU-MAPLE", mark: "READ", note: "base 50 degF; the sum begins on 1 January (from memory)" },
  pollenSumCd: { value: 24.4, unit: "degC d", low: 18.9, high: 28.9, distribution: "fixed", source: "OSU-MAPLE", mark: "READ", note: "first bloom of red maple, 44 at base 50 degF; silver maple 34, speckled alder 52" },
  forageBaseC: { value: 6.1, unit: "degC", low: 5.5, high: 6.7, distribution: "fixed", source: "NEWA-APPLE", mark: "READ", note: "base 43 degF" },
  forageSumCd: { value: 182, unit: "degC d", low: 136, high: 228, distribution: "normal", source: "NEWA-APPLE", mark: "READ", note: "first blossom of apple, 328 at base 43 degF: fruit bloom and dandelion as first dependable forage" },
  forageSumSdCd: { value: 28, unit: "degC d", low: 20, high: 36, distribution: "fixed", source: "NEWA-APPLE", mark: "READ", note: "51 at base 43 degF; eastern sites, the keeper's own bloom dates are better" },
  frostSplitDayOfYear: { value: 196, unit: "d", low: 180, high: 210, distribution: "fixed", source: "practice-phenology", mark: "PRACTICE", note: "15 July parts last frosts from first ones" },
  guardMinC: { value: 4, unit: "degC", low: 4, high: 9.4, distribution: "fixed", source: "mouse-nights", mark: "READ", note: "nights in the 40s degF send mice indoors; the low end is used, for a guard shut too early hinders nothing but a mouse already in" },
  gluingMaxC: { value: 20, unit: "degC", low: 15, high: 25, distribution: "fixed", source: "PROPOLIS-20C", mark: "READ-2", note: "afternoon at which propolis is sticky outside the cluster; colder it is hard and brittle and cracks stay open" },
  coldMeanC: { value: -10, unit: "degC", low: -15, high: -5, distribution: "fixed", source: "practice-phenology", mark: "PRACTICE", note: "daily mean below which lids freeze down and nothing is fitted any more" },
  cleansingMaxC: { value: 9, unit: "degC", low: 8, high: 10, distribution: "fixed", source: "memory-cleansing", mark: "MEMORY", note: "short flights to void on a still day with sun; flight for work wants 10" },
  cleansingFromDayOfYear: { value: 1, unit: "d", low: 1, high: 32, distribution: "fixed", source: "practice-phenology", mark: "PRACTICE", note: "the first cleansing flight of a winter is looked for from 1 January" },
  pollenSumSdCd: { value: 3, unit: "degC d", low: 2, high: 5, distribution: "fixed", source: "OSU-MAPLE", mark: "DERIVED", note: "first trees with pollen 34 to 52 at base 50 degF taken as the 5 and 95 % ends" },
  siteShareFrac: { value: 0.5, unit: "1", low: 0.3, high: 0.8, distribution: "fixed", source: "practice-phenology", mark: "JUDGEMENT", note: "share of the variance of a heat sum that belongs to the site and stays from year to year; the rest is new every spring" },
  frameMinC: { value: 15, unit: "degC", low: 12, high: 16, distribution: "fixed", source: "opening-limits", mark: "READ", note: "afternoon from which frames are lifted; a quick look under the lid is done colder" },
} satisfies Record<string, Parameter>;
