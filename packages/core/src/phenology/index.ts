export { phenologyParameters } from '../tables/parameters-phenology.gen.ts';
export {
  type DateOdds,
  type DaySpread,
  type DistributionRules,
  type HeatBeliefs,
  isoOf,
  oddsOf,
  quantile,
  seasonDistribution,
  seasonSpan,
  spreadsOf,
} from './distribution.ts';
export { degreeDays, type HeatMethod } from './heat-sum.ts';
export {
  drawForageSums,
  drawPollenSums,
  firstFlightDays,
  firstForageDays,
  springStartDay,
} from './member-days.ts';
export {
  type BloomEvent,
  bloomRow,
  heatBelief,
  publishedSum,
  type SumSeen,
  sumMeasured,
  sumSeen,
} from './own-blooms.ts';
export { SEASON_NAMES, type SeasonName, seasonDates } from './season-dates.ts';
export { sunDay, warmHours } from './sun.ts';
export { FROST_YEAR, type FrostOdds, WEATHER_RANGES, type WeatherAnswer, type WeatherInput, weather } from './weather-answer.ts';
