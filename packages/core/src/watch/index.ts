export { watchParameters } from '../tables/parameters-watch.gen.ts';
export { courseOf, type ScaleCourse } from './course.ts';
export { type ProbableCause, probableCause } from './deadout.ts';
export type { AutumnBelief, FactorBelief, Observation, Surprise, WinterUpdate } from './types.ts';
export { updateColony } from './update.ts';
