export { mitesParameters } from '../tables/parameters-mites.gen.ts';
export { type GrowthRange, miteGrowth } from './growth.ts';
export { clopperPearson, type Interval, jeffreys, wilson } from './proportion.ts';
export { WASH_BEES, WASH_CERTAINTY, WASH_DAYS_AHEAD, type WashAnswer, type WashInput, wash } from './wash.ts';
