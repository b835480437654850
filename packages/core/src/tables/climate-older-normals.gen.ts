// Made by scripts/compile-tables.mjs from data/climate/older-normals.csv. Do not edit.
import type { OlderNormals } from './climate-types.ts';

export const olderNormals: OlderNormals[] = [
  { normals: "CANADA35", warmingC: [2, 1.3, 0.5, 0.75, 0.75, 0.75, 0.75, 0.75, 0.75, 0.75, 0.8, 2.2], source: "NORMALS-SHIFT", mark: "COMPUTED", note: "1991-2020 minus 1960-1994, median of 14 Canadian places; April to October published only as 0.5 to 1, its middle is used" },
  { normals: "COMONTHLY", warmingC: [0.75, 0.75, 0.75, 0.75, 0.75, 0.75, 0.75, 0.75, 0.75, 0.75, 0.75, 0.75], source: "NORMALS-SHIFT", mark: "MEMORY", note: "1968-1997 recalled as 0.5 to 1 degC cold for today, no month shape known; the middle is used" },
];
