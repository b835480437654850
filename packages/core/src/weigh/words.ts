import { weighParameters } from '../tables/parameters-weigh.gen.ts';
import { pooledVariance } from './front-share.ts';

/** What a hand says that lifted one edge a little. */
export type HeftWord = 'heavy' | 'fair' | 'light';
export const HEFT_WORDS: readonly HeftWord[] = ['heavy', 'fair', 'light'];

export interface WordWeight {
  readonly totalKg: number;
  readonly sdKg: number;
  /** How many weighed hives of that word it rests on. */
  readonly hives: number;
}

/**
 * What a word means in kilograms, learnt from hives the keeper hefted and weighed.
 *
 * Without such hives it is a default from published least and target weights, and very wide: a word is no weighing.
 *
 * word        what the keeper called it
 * deepBoxes   height of the hive in ten-frame deep boxes, 0.5 to 5; each further box adds what the second did
 * weighed     hives with a word and a weight, of any height
 * returns     mean, standard deviation for one hive [kg]
 * equation    default: fair and heavy from the table, light as far below fair as heavy is above; then the keeper's mean
 *             difference from it, shrunk as in `learnFrontShare`
 * throws      RangeError for a height outside that
 * source      [ontario-checklist], [capa-targets], [own-judgement-weigh]
 * checked     checks/weigh.ts, weigh.test.ts
 */
export function wordWeight(
  word: HeftWord,
  deepBoxes: number,
  weighed: readonly { readonly word: HeftWord; readonly deepBoxes: number; readonly totalKg: number }[] = [],
): WordWeight {
  const own = weighed.filter((hive) => hive.word === word).map((hive) => hive.totalKg - defaultKg(word, hive.deepBoxes));
  const stepKg = defaultKg('heavy', deepBoxes) - defaultKg('fair', deepBoxes);
  const sdKg = weighParameters.wordSdStepsFrac.value * stepKg;
  const mean = own.length === 0 ? 0 : own.reduce((sum, kg) => sum + kg, 0) / own.length;
  const hiveVar = pooledVariance(
    sdKg ** 2,
    own.reduce((sum, kg) => sum + (kg - mean) ** 2, 0),
    own.length,
  );
  const precision = 1 / sdKg ** 2 + own.length / hiveVar;
  return {
    totalKg: defaultKg(word, deepBoxes) + (own.length * mean) / hiveVar / precision,
    sdKg: Math.sqrt(1 / precision + hiveVar),
    hives: own.length,
  };
}

function defaultKg(word: HeftWord, deepBoxes: number): number {
  if (!(deepBoxes >= 0.5 && deepBoxes <= 5)) throw new RangeError(`wordWeight: deepBoxes is ${deepBoxes}, must be 0.5 to 5`);
  const p = weighParameters;
  const fair = p.wordFairSingleKg.value + (deepBoxes - 1) * (p.wordFairDoubleKg.value - p.wordFairSingleKg.value);
  const heavy = p.wordHeavySingleKg.value + (deepBoxes - 1) * (p.wordHeavyDoubleKg.value - p.wordHeavySingleKg.value);
  return word === 'heavy' ? heavy : word === 'fair' ? fair : 2 * fair - heavy;
}
