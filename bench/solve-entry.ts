export { type LpModel, provision, toLp } from '../packages/core/src/provision/index.ts';
export { mediumYard } from '../packages/core/test/provision/yards.ts';
export { loadHighs } from '../packages/solver/src/index.ts';
