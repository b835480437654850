// Made by scripts/compile-tables.mjs from data/parameters/weather.csv. Do not edit.
import type { Parameter } from './types.ts';

export const weatherParameters = {
  slowTimeDays: { value: 25, unit: "d", low: 20, high: 30, distribution: "fixed", source: "WEATHER-MODEL", mark: "JUDGEMENT", note: "time constant of the slow part of the daily anomaly; lets neighbouring months agree a little so that whole winters differ as published" },
  distancePerHeightKmPerM: { value: 0.5, unit: "km/m", low: 0.3, high: 1, distribution: "fixed", source: "PLACE-ERROR", mark: "COMPUTED", note: "a metre of height difference counts as half a kilometre when a place is chosen" },
  placeErrorTo100KmC: { value: 1.2, unit: "degC", low: 1.1, high: 1.3, distribution: "fixed", source: "PLACE-ERROR", mark: "COMPUTED", note: "error of the Nov-Mar mean of three places within 100 km; middle of the printed 1.1 to 1.3" },
  placeErrorTo200KmC: { value: 1.8, unit: "degC", low: 1.5, high: 2.1, distribution: "fixed", source: "PLACE-ERROR", mark: "COMPUTED", note: "same 100 to 200 km" },
  placeErrorTo400KmC: { value: 2.6, unit: "degC", low: 2.2, high: 3, distribution: "fixed", source: "PLACE-ERROR", mark: "COMPUTED", note: "same 200 to 400 km" },
  placeErrorBeyondC: { value: 4.2, unit: "degC", low: 3.5, high: 5, distribution: "fixed", source: "PLACE-ERROR", mark: "COMPUTED", note: "beyond 400 km; printed for the single nearest place only" },
  namedPlaceErrorC: { value: 1.3, unit: "degC", low: 0, high: 1.7, distribution: "fixed", source: "PLACE-ERROR", mark: "JUDGEMENT", note: "a yard near a named place: the printed error of one place within 100 km chosen by distance and height is 1.2 to 1.4" },
  farKm: { value: 200, unit: "km", low: 150, high: 300, distribution: "fixed", source: "PLACE-ERROR", mark: "COMPUTED", note: "a chosen place farther away than this is said" },
  steepM: { value: 300, unit: "m", low: 200, high: 400, distribution: "fixed", source: "PLACE-ERROR", mark: "COMPUTED", note: "a chosen place higher or lower by more than this is said" },
  mildJanuaryC: { value: -12, unit: "degC", low: -16, high: -8, distribution: "fixed", source: "DAILY-SPREAD", mark: "JUDGEMENT", note: "at this January mean and above winters carry the full cold tail of the Alberta foothills" },
  siberianJanuaryC: { value: -30, unit: "degC", low: -34, high: -28, distribution: "fixed", source: "DAILY-SPREAD", mark: "JUDGEMENT", note: "at this January mean and below the winter skew is that of the Siberian high" },
  siberianSkewFrac: { value: 0.2, unit: "1", low: 0, high: 0.4, distribution: "fixed", source: "DAILY-SPREAD", mark: "COMPUTED", note: "skewness of winter days in the Siberian high; middle of the printed 0 to 0.4" },
  frostC: { value: 0, unit: "degC", low: -0.5, high: 0.5, distribution: "fixed", source: "NWS-FROST", mark: "READ", note: "a daily minimum at or below this is a freeze" },
  gapBridgeDays: { value: 5, unit: "d", low: 3, high: 10, distribution: "fixed", source: "own-judgement", mark: "JUDGEMENT", note: "a gap of so many days in a daily record is bridged by a straight line; the correlation of daily anomalies has fallen to 0.1 to 0.4 after five days" },
  ensembleWinters: { value: 8, unit: "winters", low: 5, high: 15, distribution: "fixed", source: "own-judgement", mark: "JUDGEMENT", note: "so many whole winters of the keeper's own record become the ensemble; fewer correct the stochastic years" },
  recordYears: { value: 30, unit: "years", low: 20, high: 30, distribution: "fixed", source: "WMO-1203", mark: "MEMORY", note: "only the latest so many years of a long record are used: the length of a climatological normal" },
  leastRecordDays: { value: 330, unit: "d", low: 300, high: 365, distribution: "fixed", source: "own-judgement", mark: "JUDGEMENT", note: "a shorter daily record is refused: it says nothing about a year" },
  coldestNightBelowC: { value: 5.3, unit: "degC", low: 2.4, high: 8.9, distribution: "fixed", source: "PLACE-ERROR", mark: "COMPUTED", note: "the lowest nightly minimum of a record lies so far below its lowest daily mean: median of 87 Canadian stations, 10 to 90 % of them" },
} satisfies Record<string, Parameter>;
