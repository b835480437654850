import type { Mark } from './types.ts';

/** Normals of one place. Twelve values from January; null where the source prints none. */
export interface ClimatePlace {
  readonly place: string;
  readonly country: string;
  readonly latDeg: number;
  readonly lonDeg: number;
  readonly elevM: number;
  readonly period: string;
  readonly meanC: number[];
  readonly maxC: number[] | null;
  readonly minC: number[] | null;
  readonly recordLowC: number | null;
  readonly source: string;
  readonly mark: Mark;
  readonly note: string;
}

/** How months and days scatter at one station. Twelve values from January, degC. */
export interface StationSpread {
  readonly place: string;
  readonly source: string;
  readonly period: string;
  readonly sdBetweenYearsC: number[];
  readonly sdDailyInMonthC: number[] | null;
}

/** The same by class of January mean. Seven values, October to April, degC. */
export interface ClassSpread {
  readonly januaryLowC: number | null;
  readonly januaryHighC: number;
  readonly stations: number;
  readonly sdBetweenYearsC: number[];
  readonly sdDailyInMonthC: number[];
  readonly source: string;
  readonly mark: Mark;
  readonly note: string;
}

/** Daily anomalies of one station round its smooth yearly curve. Twelve values from January. */
export interface DailyCharacter {
  readonly sdC: number[];
  readonly r1: number[];
  readonly r5: number[];
  readonly skew?: number[];
  readonly sdMeanC: number[];
  readonly source: string;
  readonly mark: Mark;
}

/** What to add to the monthly means of an older set of normals to bring it to 1991-2020. Twelve values from January, degC. */
export interface OlderNormals {
  readonly normals: string;
  readonly warmingC: number[];
  readonly source: string;
  readonly mark: Mark;
  readonly note: string;
}
