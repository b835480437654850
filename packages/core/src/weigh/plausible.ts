import { weighParameters } from '../tables/parameters-weigh.gen.ts';
import { type Edge, type LeverGeometry, readingOfShareKg, standardGeometry } from './lever.ts';

export interface KgRange {
  readonly lowKg: number;
  readonly highKg: number;
}

/** From an all but empty nucleus in foam to four full deep boxes. */
export function plausibleGrossRange(): KgRange {
  return { lowKg: weighParameters.grossLowestKg.value, highKg: weighParameters.grossHighestKg.value };
}

/** Shares of the weight an edge can bear in one hive. */
export function plausibleShareRange(): { readonly low: number; readonly high: number } {
  return { low: weighParameters.frontShareLowestFrac.value, high: weighParameters.frontShareHighestFrac.value };
}

/**
 * What one edge of a hive can read at all.
 *
 * gross       weights in question, default any hive; give the build's own range to ask about a figure out by ten
 * returns     from the lightest hive leaning the other way to the heaviest leaning this way [kg]
 */
export function plausibleEdgeRange(
  edge: Edge,
  geometry: LeverGeometry = standardGeometry(),
  gross: KgRange = plausibleGrossRange(),
): KgRange {
  const { low, high } = plausibleShareRange();
  const [least, most] = edge === 'front' ? [low, high] : [high, low];
  return {
    lowKg: readingOfShareKg(gross.lowKg, least, geometry, edge),
    highKg: readingOfShareKg(gross.highKg, most, geometry, edge),
  };
}

/** Figures ten times smaller or larger that would fit where this one does not: a decimal point missed or doubled. */
export function tenfoldCandidatesKg(readingKg: number, range: KgRange): readonly number[] {
  const fits = (kg: number) => kg >= range.lowKg && kg <= range.highKg;
  if (fits(readingKg)) return [];
  // Decimal text, so that 245 offers 24.5 and not a binary neighbour of it.
  return [Number(`${readingKg}e-1`), Number(`${readingKg}e1`)].filter(fits);
}
