import { type Climate, climateNear, type Result, seasonDistribution, yearlyCurve } from '@winterheft/core';

export interface Place {
  readonly latDeg: number;
  readonly lonDeg: number;
  readonly elevM: number | null;
}

interface DateSpread {
  readonly p10: string | null;
  readonly p50: string | null;
  readonly p90: string | null;
}

/** The winter of a place, for the picture a keeper begins with. */
export interface PlaceWinter {
  readonly climate: Climate;
  /** Daily means over 365 days from 1 January [degC]. */
  readonly dailyMeanC: Float64Array;
  /** Standard deviation of a day's mean round that course [degC]: months and days drawn together. */
  readonly dailySdC: Float64Array;
  readonly lastFeedingDay: DateSpread;
  readonly firstForage: DateSpread;
}

/** Enough for dates that are shown to the day with their spread; the plan draws its own. */
const PICTURE_MEMBERS = 200;
const PICTURE_SEED = 1;

/** `winter` is named by its first year. */
export function winterOf({ latDeg, lonDeg, elevM }: Place, winter: number): Result<PlaceWinter> {
  const climate = climateNear(latDeg, lonDeg, elevM ?? undefined);
  if (!climate.ok) return climate;
  const { monthlyMeanC, monthlySdMeanC, dailySdC } = climate.value;
  const spread = monthlySdMeanC.map((between, month) => Math.hypot(between, dailySdC[month] as number));
  const { lastFeedingDay, firstForage } = seasonDistribution(climate.value, { seed: PICTURE_SEED, year: winter, members: PICTURE_MEMBERS });
  return {
    ok: true,
    value: { climate: climate.value, dailyMeanC: yearlyCurve(monthlyMeanC), dailySdC: yearlyCurve(spread), lastFeedingDay, firstForage },
  };
}
