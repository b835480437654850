import { heft, type WeighingWays } from '@winterheft/core';

const SWAPPED_SDS = 3;

/**
 * Whether two readings look as if they stood in each other's field.
 *
 * Only where the front's share is more than three standard deviations from what this keeper's hives show, and the share the other way round is not.
 */
export function looksSwapped(frontKg: number, rearKg: number, { geometry, share }: Pick<WeighingWays, 'geometry' | 'share'>): boolean {
  const distance = (front: number, rear: number) => {
    const weighed = heft({ ...geometry, frontKg: front, rearKg: rear });
    return weighed.ok ? Math.abs(weighed.value.frontShareFrac - share.frontShareFrac) / share.sdFrac : Number.POSITIVE_INFINITY;
  };
  return distance(frontKg, rearKg) > SWAPPED_SDS && distance(rearKg, frontKg) <= SWAPPED_SDS;
}
