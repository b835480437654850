export { phenologyParameters } from '../tables/parameters-phenology.gen.ts';
export { type DateOdds, type DistributionRules, quantile, seasonDistribution } from './distribution.ts';
export { degreeDays, type HeatMethod } from './heat-sum.ts';
export { drawForageSums, firstFlightDays, firstForageDays, heatSumDays, type MemberTemps, springStartDay } from './member-days.ts';
export { type DailySeries, SEASON_NAMES, type SeasonDates, type SeasonName, type SeasonRules, seasonDates } from './season-dates.ts';
export { FROST_YEAR, type FrostOdds, WEATHER_RANGES, type WeatherAnswer, type WeatherInput, weather } from './weather-answer.ts';
