export { climateFromMonthly, drawWeather } from '../packages/core/src/weather/index.ts';
export { clusterWPerKgK, eggsOnRamp } from '../packages/core/src/winter/cluster.ts';
export { drawColony } from '../packages/core/src/winter/draws.ts';
export { runColony } from '../packages/core/src/winter/kernel.ts';
export { winterValues } from '../packages/core/src/winter/parameters.ts';
export { prepareSeason } from '../packages/core/src/winter/season.ts';
