import { epochDayOfParts, partsOf } from '../units/index.ts';

/** Days before each month in the 365-day climatological year, and 365 at the end. */
export const MONTH_STARTS = [0, 31, 59, 90, 120, 151, 181, 212, 243, 273, 304, 334, 365] as const;
export const YEAR_DAYS = 365;

/** Position of a calendar day in the climatological year, 0 for 1 January; 29 February shares the place of the 28th. */
export function yearIndexOf(epochDay: number): number {
  const { month, day } = partsOf(epochDay);
  return MONTH_STARTS[month - 1]! + (month === 2 && day === 29 ? 27 : day - 1);
}

/** Month, 0 for January, of a position in the climatological year. */
export function monthOfIndex(index: number): number {
  let month = 0;
  while (index >= MONTH_STARTS[month + 1]!) month++;
  return month;
}

/** First epoch day of a winter, 1 June of the year it is named by. */
export function winterStartDay(winterYear: number): number {
  return epochDayOfParts(winterYear, 6, 1);
}

/** The winter an epoch day belongs to: 1 June to 31 May, named by its first year. */
export function winterYearOf(epochDay: number): number {
  const { year, month } = partsOf(epochDay);
  return month >= 6 ? year : year - 1;
}
