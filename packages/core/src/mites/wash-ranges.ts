export const WASH_BEES = { low: 1, high: 20000, unit: 'bees' } as const;
export const WASH_CERTAINTY = { low: 0.5, high: 0.9999, unit: '' } as const;
export const WASH_DAYS_AHEAD = { low: 0, high: 200, unit: 'days' } as const;
export const WASH_METHODS = ['alcohol', 'sugar', 'co2'] as const;
export type WashMethod = (typeof WASH_METHODS)[number];
