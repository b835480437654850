import type { Colony, Holding } from '../holding/index.ts';
import { miteStanding, mitesParameters, winterLoss, yardSeasonOfMites } from '../mites/index.ts';
import type { StateNote } from './types.ts';

/** Enough for a chance to one in twenty; its own seed, so that a plan's seed does not move a verdict. */
const MEMBERS = 200;
const SEED = 1;

/**
 * What mites say against a line that stores alone would call safe: above the level, or not counted since the last treatment.
 *
 * Above from an even chance on. A colony never washed and never treated this year gets the second note too.
 */
export function miteNoteOf(
  colony: Colony,
  of: { readonly holding: Holding; readonly today: number },
): Extract<StateNote, { code: 'mites-above-threshold' | 'mites-unknown' }> | null {
  const yard = of.holding.yards.get(colony.yard);
  if (yard === undefined) return null;
  const season = yardSeasonOfMites(yard, { holding: of.holding, today: of.today, seed: SEED, members: MEMBERS });
  const standing = miteStanding(colony, season);
  const last = standing.groups.at(-1);
  const chanceFrac = standing.chanceAboveWindowFrac;
  if (
    last !== undefined &&
    last.bees >= mitesParameters.leastBees.value &&
    chanceFrac !== null &&
    chanceFrac >= mitesParameters.noteChanceFrac.value
  ) {
    const loss = winterLoss(standing.chanceWarnWindowFrac ?? chanceFrac);
    return { code: 'mites-above-threshold', chanceFrac, lossLowFrac: loss.lowFrac, lossHighFrac: loss.highFrac };
  }
  const treatedSince = colony.treatments.some((one) => {
    const day = (one.out ?? one.in)!.day;
    return day <= of.today && day > (last?.day ?? Number.NEGATIVE_INFINITY);
  });
  return last === undefined || treatedSince ? { code: 'mites-unknown' } : null;
}
