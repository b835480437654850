export { type LoadOptions, loadHighs } from './highs.ts';
