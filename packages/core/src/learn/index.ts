export { learnParameters } from '../tables/parameters-learn.gen.ts';
export { type AppetiteLearnt, type Evidence, type Factor, learnAppetite, learnFactor } from './factors.ts';
