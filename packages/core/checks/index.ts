import type { Check } from './check.ts';

export { type Check, passes } from './check.ts';

/** Every published figure that is compared with ours, by topic. A test asserts that no file of this folder is left out. */
export const checksByTopic: Readonly<Record<string, readonly Check[]>> = {};

export const allChecks: readonly Check[] = Object.values(checksByTopic).flat();
