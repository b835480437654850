import { epochDayOfParts, partsOf } from '../units/index.ts';

/** The winter a local day belongs to, named by its first year: winter 2026 is 1 June 2026 to 31 May 2027. */
export function winterOf(epochDay: number): number {
  const { year, month } = partsOf(epochDay);
  return month >= 6 ? year : year - 1;
}

/** First and last epoch day of a winter, both inclusive. */
export function winterSpan(winter: number): { readonly fromDay: number; readonly toDay: number } {
  return { fromDay: epochDayOfParts(winter, 6, 1), toDay: epochDayOfParts(winter + 1, 5, 31) };
}
