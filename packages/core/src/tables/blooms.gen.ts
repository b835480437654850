// Made by scripts/compile-tables.mjs from data/blooms.csv. Do not edit.
import type { BloomRow } from './season.ts';

export const bloomRows: BloomRow[] = [
  { plant: "silver-maple", stage: "first", event: "firstPollen", baseC: 10, sumCd: 18.9, source: "OSU-MAPLE", mark: "READ", note: "34 at base 50 degF" },
  { plant: "silver-maple", stage: "full", event: "firstPollen", baseC: 10, sumCd: 23.3, source: "OSU-MAPLE", mark: "READ", note: "42 at base 50 degF" },
  { plant: "red-maple", stage: "first", event: "firstPollen", baseC: 10, sumCd: 24.4, source: "OSU-MAPLE", mark: "READ", note: "44 at base 50 degF" },
  { plant: "speckled-alder", stage: "first", event: "firstPollen", baseC: 10, sumCd: 28.9, source: "OSU-MAPLE", mark: "READ", note: "52 at base 50 degF; pollen blown by the wind" },
  { plant: "willow", stage: "first", event: "firstPollen", baseC: null, sumCd: null, source: "practice-phenology", mark: "PRACTICE", note: "no sum found: stands for first pollen as it is" },
  { plant: "willow", stage: "full", event: "firstForage", baseC: null, sumCd: null, source: "practice-phenology", mark: "PRACTICE", note: "no sum found; full willow is the first nectar in the north" },
  { plant: "serviceberry", stage: "first", event: "firstForage", baseC: 10, sumCd: 41.7, source: "OSU-LIST", mark: "READ", note: "75 at base 50 degF" },
  { plant: "dandelion", stage: "first", event: "firstForage", baseC: null, sumCd: null, source: "practice-phenology", mark: "PRACTICE", note: "no sum found: stands for first dependable forage as it is" },
  { plant: "fruit-trees", stage: "first", event: "firstForage", baseC: null, sumCd: null, source: "practice-phenology", mark: "PRACTICE", note: "cherry, plum and pear as apple" },
  { plant: "apple", stage: "first", event: "firstForage", baseC: 6.1, sumCd: 182, source: "NEWA-APPLE", mark: "READ", note: "328 at base 43 degF" },
  { plant: "apple", stage: "full", event: "firstForage", baseC: 6.1, sumCd: 234, source: "NEWA-APPLE", mark: "READ", note: "422 at base 43 degF" },
];
