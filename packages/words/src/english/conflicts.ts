/** What is allowed where two fields contradict each other, by the core's code. */
const CONFLICTS: Readonly<Record<string, string>> = {
  'same-colony': 'two different colonies',
  'same-place': 'two different places',
};

/** Why a figure cannot be right, by the core's code. */
const IMPLAUSIBLE: Readonly<Record<string, string>> = {
  'southern-hemisphere': 'allowed: 0 to 90, the northern half of the earth; winters of the southern half are not in this version',
  'january-warmer-than-july': 'allowed: twelve means with January colder than July; winters of the southern half are not in this version',
};

export const conflictCodes: readonly string[] = Object.keys(CONFLICTS);
export const implausibleCodes: readonly string[] = Object.keys(IMPLAUSIBLE);

/** A code with a sentence gives it; anything else is a sentence already. */
export const conflicts = (why: string): string => (Object.hasOwn(CONFLICTS, why) ? CONFLICTS[why]! : why);
export const implausible = (why: string): string => (Object.hasOwn(IMPLAUSIBLE, why) ? IMPLAUSIBLE[why]! : why);
