export { MONTH_STARTS, monthOfIndex, winterStartDay, winterYearOf, YEAR_DAYS, yearIndexOf } from './calendar.ts';
export { choiceNotes, distanceKm, type Neighbour, nearest, placeErrorC, unlikenessKm } from './choice.ts';
export { type Climate, type ClimateNote, type ClimateSource, checkedMonthlyMeans, MONTHLY_MEAN_RANGE, withoutSpread } from './climate.ts';
export { type DrawSpan, drawWeather } from './draw.ts';
export { type WeatherModel, weatherModel } from './model.ts';
export { type MonthMoments, monthMoments } from './moments.ts';
export { climateForPlace, climateFromMonthly, climateNear, type PlaceLine, places } from './places.ts';
export { persistence, rangeOf, type Spread, skewOf, spreadOfClass, spreadOfPlace, stationMedians } from './spread.ts';
export { blendedMonths, yearlyCurve } from './yearly-curve.ts';
