/**
 * Units people type and read, against the SI units everything is computed in. All are exact by definition;
 * a function `xToY` takes x and gives y. Pounds, Fahrenheit and gallons live here and in the shells, nowhere else.
 *
 * source      NIST Handbook 44, appendix C (inch, pound, US gallon); Weights and Measures Act 1985, schedule 1 (imperial
 *             gallon); International Table calorie: 1 Btu/lb = 2326 J/kg. Keys [nist-hb44], [wma-1985], [nist-sp811]
 * checked     checks/units.ts against printed tables and GNU units; units.test.ts for the round trips
 */
const KG_PER_LB = 0.45359237;
const OZ_PER_LB = 16;
const M_PER_INCH = 0.0254;
const INCHES_PER_FOOT = 12;
const CUBIC_INCHES_PER_US_GALLON = 231;
const L_PER_US_GALLON = CUBIC_INCHES_PER_US_GALLON * M_PER_INCH ** 3 * 1000;
const L_PER_IMPERIAL_GALLON = 4.54609;
const QUARTS_PER_GALLON = 4;
const PINTS_PER_GALLON = 8;
const CUPS_PER_US_GALLON = 16;
const US_FLUID_OUNCES_PER_GALLON = 128;
const CELSIUS_PER_FAHRENHEIT = 5 / 9;
const J_PER_BTU = 2326 * KG_PER_LB;
const S_PER_HOUR = 3600;
/** One unit of thermal resistance as printed on insulation, h ft2 degF/Btu [m2 K/W]. */
const RSI_PER_R = (S_PER_HOUR * (M_PER_INCH * INCHES_PER_FOOT) ** 2 * CELSIUS_PER_FAHRENHEIT) / J_PER_BTU;

export const lbToKg = (lb: number): number => lb * KG_PER_LB;
export const kgToLb = (kg: number): number => kg / KG_PER_LB;
export const ozToKg = (oz: number): number => (oz / OZ_PER_LB) * KG_PER_LB;
export const kgToOz = (kg: number): number => (kg / KG_PER_LB) * OZ_PER_LB;

export const inchToM = (inches: number): number => inches * M_PER_INCH;
export const mToInch = (m: number): number => m / M_PER_INCH;
export const footToM = (feet: number): number => feet * INCHES_PER_FOOT * M_PER_INCH;
export const mToFoot = (m: number): number => m / (INCHES_PER_FOOT * M_PER_INCH);

export const usGallonToL = (gallons: number): number => gallons * L_PER_US_GALLON;
export const lToUsGallon = (litres: number): number => litres / L_PER_US_GALLON;
export const usQuartToL = (quarts: number): number => (quarts / QUARTS_PER_GALLON) * L_PER_US_GALLON;
export const lToUsQuart = (litres: number): number => (litres / L_PER_US_GALLON) * QUARTS_PER_GALLON;
export const usPintToL = (pints: number): number => (pints / PINTS_PER_GALLON) * L_PER_US_GALLON;
export const lToUsPint = (litres: number): number => (litres / L_PER_US_GALLON) * PINTS_PER_GALLON;
export const usCupToL = (cups: number): number => (cups / CUPS_PER_US_GALLON) * L_PER_US_GALLON;
export const lToUsCup = (litres: number): number => (litres / L_PER_US_GALLON) * CUPS_PER_US_GALLON;
export const usFlOzToL = (flOz: number): number => (flOz / US_FLUID_OUNCES_PER_GALLON) * L_PER_US_GALLON;
export const lToUsFlOz = (litres: number): number => (litres / L_PER_US_GALLON) * US_FLUID_OUNCES_PER_GALLON;

export const imperialGallonToL = (gallons: number): number => gallons * L_PER_IMPERIAL_GALLON;
export const lToImperialGallon = (litres: number): number => litres / L_PER_IMPERIAL_GALLON;
export const imperialQuartToL = (quarts: number): number => (quarts / QUARTS_PER_GALLON) * L_PER_IMPERIAL_GALLON;
export const lToImperialQuart = (litres: number): number => (litres / L_PER_IMPERIAL_GALLON) * QUARTS_PER_GALLON;
export const imperialPintToL = (pints: number): number => (pints / PINTS_PER_GALLON) * L_PER_IMPERIAL_GALLON;
export const lToImperialPint = (litres: number): number => (litres / L_PER_IMPERIAL_GALLON) * PINTS_PER_GALLON;

export const fahrenheitToC = (fahrenheit: number): number => (fahrenheit - 32) * CELSIUS_PER_FAHRENHEIT;
export const cToFahrenheit = (celsius: number): number => celsius / CELSIUS_PER_FAHRENHEIT + 32;

export const btuToJ = (btu: number): number => btu * J_PER_BTU;
export const jToBtu = (joules: number): number => joules / J_PER_BTU;
/** Thermal resistance, h ft2 degF/Btu to m2 K/W. */
export const rValueToM2KPerW = (rValue: number): number => rValue * RSI_PER_R;
export const m2KPerWToRValue = (m2KPerW: number): number => m2KPerW / RSI_PER_R;
/** Thermal conductivity, Btu in/(h ft2 degF) to W/(m K). */
export const btuInchToWPerMK = (btuInch: number): number => (btuInch * M_PER_INCH) / RSI_PER_R;
export const wPerMKToBtuInch = (wPerMK: number): number => (wPerMK * RSI_PER_R) / M_PER_INCH;

/** Density, pounds per US gallon to kg/m3. In vacuum: a scale in air shows about 0.1 % less (`poundsPerUsGallonInAir`). */
export const lbPerUsGallonToKgPerM3 = (lbPerGallon: number): number => (lbPerGallon * KG_PER_LB * 1000) / L_PER_US_GALLON;
export const kgPerM3ToLbPerUsGallon = (kgPerM3: number): number => ((kgPerM3 / 1000) * L_PER_US_GALLON) / KG_PER_LB;
export const lbPerImperialGallonToKgPerM3 = (lbPerGallon: number): number => (lbPerGallon * KG_PER_LB * 1000) / L_PER_IMPERIAL_GALLON;
export const kgPerM3ToLbPerImperialGallon = (kgPerM3: number): number => ((kgPerM3 / 1000) * L_PER_IMPERIAL_GALLON) / KG_PER_LB;
