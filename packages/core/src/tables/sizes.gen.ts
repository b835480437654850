// Made by scripts/compile-tables.mjs from data/sizes.csv. Do not edit.
import type { SizeRow } from './season.ts';

export const sizeRows: SizeRow[] = [
  { where: "Queensland", when: "autumn", queen: "any", lowFrames: 6, highFrames: 6, source: "size-queensland", mark: "READ", note: "fewer are united; mild winters" },
  { where: "late-fall", when: "late-autumn", queen: "any", lowFrames: 6, highFrames: 7, source: "size-late-fall", mark: "READ", note: "fewer than 7 frames are united" },
  { where: "high-Colorado", when: "autumn", queen: "any", lowFrames: 4, highFrames: 4, source: "size-colorado", mark: "READ", note: "four survive but struggle" },
  { where: "Oregon", when: "autumn", queen: "any", lowFrames: 5, highFrames: 7, source: "size-oregon", mark: "READ", note: "a sphere of five to seven frames" },
  { where: "Minnesota", when: "autumn", queen: "any", lowFrames: 10, highFrames: 10, source: "size-minnesota", mark: "READ", note: "ten frames or more" },
  { where: "Ontario", when: "autumn", queen: "any", lowFrames: 7, highFrames: 8, source: "size-ontario", mark: "READ", note: "seven to eight frames" },
  { where: "queenless", when: "late-autumn", queen: "absent", lowFrames: 7, highFrames: 8, source: "queenless-hold", mark: "READ", note: "without a queen so many can hold until spring; fewer are united" },
];
