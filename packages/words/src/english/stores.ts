import type { Measurement, StoresAnswer, StoresNote } from '@winterheft/core';

export const stores = {
  stores: 'stores the bees can eat',
  byWeight: 'by weight',
  byCount: 'by counted combs',
  empty: 'empty hive',
  bees: 'bees',
  beesOf: (count: string, mass: string) => `${count}, ${mass}`,
  contact: 'capped in the top box',
  error: 'error from',
  measureNext: 'measure next',
  provisional: 'provisional',
  weighAgain: (date: string) => `syrup is still being dried; weigh again on ${date}`,
  worth: (what: string, error: string) => `${what} (the error falls to ${error})`,
  nothing: 'nothing would cut the error',
  afterDays: (days: number) => `in ${days} ${days === 1 ? 'day' : 'days'}`,
  weightOnly:
    'Rests on weight alone and on a build nobody has weighed empty: do not call this colony spare before one empty hive of the build was on the scale.',
  basis: { table: 'by the parts table', 'own parts': 'own weighed parts', 'empty hive': 'weighed empty' } satisfies Record<
    StoresAnswer['tare']['basis'],
    string
  >,
  parts: {
    scaleKg: 'scale and lift',
    tareKg: 'build',
    hiveKg: 'this hive against others of its build',
    beesKg: 'bees',
    pollenKg: 'pollen and brood',
    lotKg: 'honey on a comb',
    framesKg: 'counting combs',
    onHiveKg: 'what stands on the hive',
    waterKg: 'water in syrup',
    snowKg: 'snow and ice',
  } satisfies Record<keyof StoresAnswer['errorParts'], string>,
  notes: {
    'below-empty': 'The weight is below that of the empty hive and its bees: check the reading and the build.',
    'above-full': 'More than the combs of this build can hold: check the reading and the build.',
    'bees-assumed': 'Nobody counted the bees; a usual number was taken.',
    'weight-and-count-disagree': 'Weight and counted combs disagree by more than their errors: check both.',
    'lower-combs-assumed': 'Only the top box was counted; the combs below are assumed.',
  } satisfies Record<StoresNote, string>,
} as const;

/** What to do for each measurement, as somebody would say it in the yard. */
export const measurements: Record<Measurement, string> = {
  weigh: 'weigh the hive',
  'second-edge': 'weigh the other edge too',
  'weigh-empty-hive': 'weigh one empty hive of this build',
  'count-capped-frames': 'count the capped frames',
  'count-frames-of-bees': 'count the frames of bees',
  'weigh-on-hive': 'weigh what stands on the hive',
  'wait-and-weigh': 'wait until the syrup is dried in, then weigh',
  'weigh-capped-frame': 'hang one capped frame on the scale',
  'clear-snow': 'clear snow and ice, then weigh',
  'count-pollen-frames': 'count the frames of pollen',
};
