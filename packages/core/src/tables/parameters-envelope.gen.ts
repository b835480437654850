// Made by scripts/compile-tables.mjs from data/parameters/envelope.csv. Do not edit.
import type { Parameter } from './types.ts';

export const envelopeParameters = {
  pineWPerMK: { value: 0.11, unit: "W/(m·K)", low: 0.1, high: 0.14, distribution: "fixed", source: "softwood-conductivity", mark: "READ", note: "white pine and spruce at 12 % moisture across the grain" },
  plywoodWPerMK: { value: 0.12, unit: "W/(m·K)", low: 0.1, high: 0.14, distribution: "fixed", source: "softwood-conductivity", mark: "DERIVED", note: "as softwood" },
  epsWPerMK: { value: 0.036, unit: "W/(m·K)", low: 0.034, high: 0.04, distribution: "fixed", source: "insulation-conductivity", mark: "READ", note: "expanded polystyrene, R 3.6 to 4.2 an inch" },
  xpsWPerMK: { value: 0.029, unit: "W/(m·K)", low: 0.028, high: 0.032, distribution: "fixed", source: "insulation-conductivity", mark: "READ", note: "50 mm is 1.724 m2K/W" },
  shavingsWPerMK: { value: 0.06, unit: "W/(m·K)", low: 0.05, high: 0.08, distribution: "fixed", source: "envelope-memory", mark: "MEMORY", note: "dry loose shavings" },
  corrugatedWPerMK: { value: 0.06, unit: "W/(m·K)", low: 0.045, high: 0.09, distribution: "fixed", source: "envelope-judgement", mark: "JUDGEMENT", note: "twin-wall plastic with the air in it" },
  feltWPerMK: { value: 0.17, unit: "W/(m·K)", low: 0.12, high: 0.25, distribution: "fixed", source: "envelope-memory", mark: "MEMORY", note: "roofing felt" },
  filmWallM2KPerW: { value: 0.12, unit: "m2K/W", low: 0.1, high: 0.13, distribution: "fixed", source: "film-resistance", mark: "READ", note: "still air at a wall, 0.68 h.ft2.F/Btu" },
  filmCeilingM2KPerW: { value: 0.107, unit: "m2K/W", low: 0.1, high: 0.12, distribution: "fixed", source: "film-resistance", mark: "READ", note: "still air under a ceiling, heat up, 0.61 h.ft2.F/Btu" },
  filmFloorM2KPerW: { value: 0.162, unit: "m2K/W", low: 0.15, high: 0.18, distribution: "fixed", source: "film-resistance", mark: "READ", note: "still air on a floor, heat down, 0.92 h.ft2.F/Btu" },
  filmOutsideM2KPerW: { value: 0.03, unit: "m2K/W", low: 0.02, high: 0.06, distribution: "fixed", source: "film-resistance", mark: "READ", note: "moving air outside, 0.17 h.ft2.F/Btu; the wide side is a sheltered stand" },
  filmUnderM2KPerW: { value: 0.081, unit: "m2K/W", low: 0.03, high: 0.12, distribution: "fixed", source: "film-resistance", mark: "READ", note: "sheltered air under the floor, semi-exterior 0.46 h.ft2.F/Btu" },
  airSpaceM2KPerW: { value: 0.15, unit: "m2K/W", low: 0.12, high: 0.18, distribution: "fixed", source: "envelope-memory", mark: "MEMORY", note: "closed air layer with heat going up: under a lid or in an empty rim" },
  wrapGapM2KPerW: { value: 0.09, unit: "m2K/W", low: 0.02, high: 0.17, distribution: "fixed", source: "envelope-judgement", mark: "JUDGEMENT", note: "air caught behind a wrap; half of a closed layer because it leaks" },
  pocketWidthM: { value: 0.3, unit: "m", low: 0.25, high: 0.36, distribution: "fixed", source: "near-cluster", mark: "JUDGEMENT", note: "width and length of the air the cluster warms" },
  pocketHeightM: { value: 0.2, unit: "m", low: 0.16, high: 0.26, distribution: "fixed", source: "near-cluster", mark: "JUDGEMENT", note: "its height: a winter cluster of 2 kg is about as tall" },
  downWPerMK: { value: 0.3, unit: "W/(m·K)", low: 0.15, high: 0.55, distribution: "fixed", source: "near-cluster", mark: "DERIVED", note: "combs and bee spaces from the warm air down: honey 0.54, still air 0.025, wax between" },
  dischargeCoefficient: { value: 0.61, unit: "1", low: 0.6, high: 0.65, distribution: "fixed", source: "orifice-memory", mark: "MEMORY", note: "sharp-edged opening" },
  entranceM2: { value: 0.0025, unit: "m2", low: 0.0005, high: 0.005, distribution: "fixed", source: "entrance-pages", mark: "JUDGEMENT", note: "lower entrance as keepers reduce it: published slots run from 3/4 in to 3 in wide" },
  upperOpeningM2: { value: 0.00015, unit: "m2", low: 0, high: 0.0005, distribution: "fixed", source: "upper-entrance", mark: "READ", note: "notch of 1 by 1.5 cm in the inner cover: the upper entrance with which colonies ate less" },
  airExcessK: { value: 15, unit: "K", low: 5, high: 30, distribution: "fixed", source: "near-cluster", mark: "JUDGEMENT", note: "air around the cluster against outside when the draught is reckoned" },
} satisfies Record<string, Parameter>;
