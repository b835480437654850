/** What is allowed where two fields contradict each other, by the core's code. */
const CONFLICTS: Readonly<Record<string, string | undefined>> = {
  'box-widths-differ': 'boxes of one width in one hive',
  'earlier-rank-unsolved': 'limits within which the ranks before it find a plan',
  'edges-not-one-hive': 'readings of one hive, of which each edge bears between three and seven tenths of the weight',
  'give-one': 'one of them',
  'hand-names-origin': 'frames in hand named by the colony or lot they were taken from',
  'mesh-misses-the-rim': 'an inset smaller than the wall of the rim is thick, or the mesh does not reach the wood',
  'low-below-high': 'the first of them below the second',
  'no-ice-above-freezing': 'rhIceFrac at 0.01 °C and below; above it there is no ice, give rhFrac',
  'no-lid': 'a stack whose uppermost layer, but for snow, is wood, foam, foil or board',
  'one-humidity': 'one of rhFrac, rhIceFrac, dewPointC, vapourPa',
  'points-out-of-order': 'points in order, each with more short and no smaller loss than the one before',
  'ratio-or-water': 'sugarKg with waterKg, or ratio with basis',
  'sugar-or-rim': 'sugarKg alone, or lengthM, widthM and depthM',
  'snow-inside': 'snow only on top of all layers',
  'volume-needs-ratio': 'volumeL only together with ratio and basis',
  'volume-or-sugar': 'one of volumeL and sugarKg beside the ratio',
  'rank-needs-lp': '--rank together with --lp',
  'rank-needs-solver': 'rank 1; those above it need a solver for the ones before',
  'same-colony': 'two different colonies',
  'same-name': 'a name of its own for each',
  'same-place': 'two different places',
};

/** Why a figure cannot be right, by the core's code. */
const IMPLAUSIBLE: Readonly<Record<string, string | undefined>> = {
  'hive-too-warm': 'no cluster keeps a hive so warm; allowed: heat and a build that leave its air at 40 °C or less',
  'lift-tips-hive': 'with these sizes that tips the hive over or leaves no arm to weigh with; allowed: a lift of a few millimetres',
  'levels-too-close': 'allowed: levels further apart; so close they take more bees than a colony has',
  'not-half': 'allowed: whole or half frames',
  'not-whole': 'allowed: a whole number',
  'text-too-long': 'allowed: a text of 1 to 200 characters',
  'southern-hemisphere': 'allowed: 0 to 90, the northern half of the earth; winters of the southern half are not in this version',
  'january-warmer-than-july': 'allowed: twelve means with January colder than July; winters of the southern half are not in this version',
};

export const conflictCodes: readonly string[] = Object.keys(CONFLICTS);
export const implausibleCodes: readonly string[] = Object.keys(IMPLAUSIBLE);

export const conflicts = (code: string): string => CONFLICTS[code] ?? code;
export const implausible = (code: string): string => IMPLAUSIBLE[code] ?? code;
