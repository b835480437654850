// Made by scripts/compile-tables.mjs from data/parameters/learn.csv. Do not edit.
import type { Parameter } from './types.ts';

export const learnParameters = {
  colonyLogSd: { value: 0.16, unit: "1", low: 0.12, high: 0.2, distribution: "fixed", source: "own-judgement", mark: "JUDGEMENT", note: "one colony against another of the same keeper, of the logarithm of what it eats; the spread of the winter model's appetite" },
  yearLogSd: { value: 0.1, unit: "1", low: 0.05, high: 0.2, distribution: "fixed", source: "own-judgement", mark: "JUDGEMENT", note: "one winter against another of the same keeper beyond its weather, of the same logarithm; it keeps one odd year from swinging the level" },
  yieldLogSd: { value: 0.1, unit: "1", low: 0.05, high: 0.15, distribution: "fixed", source: "own-judgement", mark: "JUDGEMENT", note: "one keeper's yield of stores from sugar against the published ones, of its logarithm; 0.95 to 1.25 kg are published for 2:1" },
  yieldReadingSdKg: { value: 1.4, unit: "kg", low: 1, high: 2, distribution: "fixed", source: "own-judgement", mark: "JUDGEMENT", note: "error of the difference of two weighings a few weeks apart, with what was eaten and dried in between" },
  insulationLogSd: { value: 0.2, unit: "1", low: 0.1, high: 0.3, distribution: "fixed", source: "own-judgement", mark: "JUDGEMENT", note: "one way of insulating against the model's, of the logarithm of what colonies under it eat; published gains run from nothing to a quarter" },
  feedSpanDays: { value: 45, unit: "days", low: 30, high: 60, distribution: "fixed", source: "own-judgement", mark: "JUDGEMENT", note: "two weighings further apart say too little about what a feed became" },
  regionalLossFrac: { value: 0.27, unit: "1", low: 0.164, high: 0.455, distribution: "fixed", source: "capa-losses", mark: "READ", note: "Canada, mean of the winters 2007 to 2022; the best and the worst national winter of those years in brackets" },
} satisfies Record<string, Parameter>;
