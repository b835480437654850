import { mitesParameters } from '../tables/parameters-mites.gen.ts';

/** What the level of mites does to the winter, as a range; all causes of death together. */
export interface WinterLoss {
  readonly lowFrac: number;
  readonly highFrac: number;
  readonly chanceAboveFrac: number;
  readonly sources: readonly string[];
}

/**
 * Winter loss to be expected at a chance of being above the level that already raised it.
 *
 * No curve of loss over mites could be read: this is a bracket. Not above: between the loss of colonies without a mite and that of infested ones
 * (Ontario, 408 colonies). Above: between that of infested ones and that of untreated ones that all died (Gotland).
 *
 * equation    low = (1 - c) clean + c infested, high = (1 - c) infested + c untreated
 * valid       a chance c; winters of those places. It is the loss by all causes, not one that mites add
 * source      [guzman-2010] table III, [gotland-2014], [morfin-2024] for the level
 * checked     checks/mites.ts
 */
export function winterLoss(chanceAboveFrac: number): WinterLoss {
  if (!(chanceAboveFrac >= 0 && chanceAboveFrac <= 1))
    throw new RangeError(`winterLoss: chanceAboveFrac is ${chanceAboveFrac}, must be 0 to 1`);
  const { lossCleanFrac: clean, lossInfestedFrac: infested, lossUntreatedFrac: untreated } = mitesParameters;
  const mix = (below: number, above: number) => (1 - chanceAboveFrac) * below + chanceAboveFrac * above;
  return {
    lowFrac: mix(clean.value, infested.value),
    highFrac: mix(infested.value, untreated.value),
    chanceAboveFrac,
    sources: ['guzman-2010', 'gotland-2014', 'morfin-2024'],
  };
}
