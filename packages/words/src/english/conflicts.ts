/** What is allowed where two fields contradict each other, by the core's code. */
const CONFLICTS: Readonly<Record<string, string | undefined>> = {
  'give-one': 'one of them',
  'hand-names-origin': 'frames in hand named by the colony or lot they were taken from',
  'no-ice-above-freezing': 'rhIceFrac at 0.01 °C and below; above it there is no ice, give rhFrac',
  'one-humidity': 'one of rhFrac, rhIceFrac, dewPointC, vapourPa',
  'ratio-or-water': 'sugarKg with waterKg, or ratio with basis',
  'sugar-or-rim': 'sugarKg alone, or lengthM, widthM and depthM',
  'volume-needs-ratio': 'volumeL only together with ratio and basis',
  'volume-or-sugar': 'one of volumeL and sugarKg beside the ratio',
  'rank-needs-lp': '--rank together with --lp',
  'same-colony': 'two different colonies',
  'same-place': 'two different places',
};

/** Why a figure cannot be right, by the core's code. */
const IMPLAUSIBLE: Readonly<Record<string, string | undefined>> = {
  'edges-not-one-hive':
    'beside that rearKg it cannot belong to one hive; allowed: readings of which each edge bears between three and seven tenths of the weight',
  'lift-tips-hive': 'with these sizes that tips the hive over or leaves no arm to weigh with; allowed: a lift of a few millimetres',
  'not-whole': 'allowed: a whole number',
  'southern-hemisphere': 'allowed: 0 to 90, the northern half of the earth; winters of the southern half are not in this version',
  'january-warmer-than-july': 'allowed: twelve means with January colder than July; winters of the southern half are not in this version',
};

export const conflictCodes: readonly string[] = Object.keys(CONFLICTS);
export const implausibleCodes: readonly string[] = Object.keys(IMPLAUSIBLE);

/** Codes are words joined by dashes; anything with a space is a sentence already. */
export const isCode = (why: string): boolean => !why.includes(' ');
export const conflicts = (code: string): string => CONFLICTS[code] ?? code;
export const implausible = (code: string): string => IMPLAUSIBLE[code] ?? code;
