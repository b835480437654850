export { MONTH_STARTS, monthOfIndex, winterYearOf, yearIndexOf } from './calendar.ts';
export { choiceNotes, type Neighbour, nearest, placeErrorC, unlikenessKm } from './choice.ts';
export { type Climate, type ClimateNote, type ClimateSource, withoutSpread } from './climate.ts';
export { type DrawSpan, drawWeather } from './draw.ts';
export { type WeatherModel, weatherModel } from './model.ts';
export { type MonthMoments, monthMoments } from './moments.ts';
export { climateForPlace, climateFromMonthly, climateNear, type PlaceLine, places } from './places.ts';
export { persistence, rangeOf, type Spread, skewOf, spreadOfClass } from './spread.ts';
export { yearlyCurve } from './yearly-curve.ts';
