export { type Key, keyOf, normalAt, uniformAt } from './keyed.ts';
export { normalQuantile } from './normal.ts';
export { stratifiedNormals, stratifiedUniforms } from './stratified.ts';
