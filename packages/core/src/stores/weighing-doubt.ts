import {
  bothEdgesError,
  oneEdgeError,
  readingOfShareKg,
  sdOf,
  standardGeometry,
  standardScale,
  standardShareSdFrac,
  weighParameters,
} from '../weigh/index.ts';

/** A weight less sure than so many times both edges was read at one: there it is near twice as unsure and more. */
const ONE_EDGE_TIMES = 1.3;

/** Standard deviation of a hive of this weight read at both edges on a usual scale [kg]. */
export function bothEdgesSdKg(grossKg: number): number {
  const { geometry, frontKg, rearKg } = usualReadings(grossKg);
  return sdOf(bothEdgesError({ frontKg, rearKg, totalKg: grossKg }, geometry, standardScale()));
}

/** The same read at one edge. */
function oneEdgeSdKg(grossKg: number): number {
  const { geometry, frontKg } = usualReadings(grossKg);
  const share = { frontShareFrac: weighParameters.frontShareFrac.value, sdFrac: standardShareSdFrac() };
  return sdOf(oneEdgeError({ edge: 'front', readingKg: frontKg, totalKg: grossKg }, share, geometry, standardScale()));
}

/** Whether a doubt of this size about a hive of this weight is that of one edge [kg]. */
export function readAtOneEdge(sdKg: number, grossKg: number): boolean {
  return sdKg > ONE_EDGE_TIMES * bothEdgesSdKg(grossKg);
}

/**
 * Standard deviation of a hive weighed again in the way it was weighed, after its weight has changed [kg].
 *
 * A doubt smaller than a usual scale leaves comes from a better one: it stays as it is.
 */
export function weighedAgainSdKg(sdKg: number, { fromKg, toKg }: { readonly fromKg: number; readonly toKg: number }): number {
  if (readAtOneEdge(sdKg, fromKg)) return (sdKg * oneEdgeSdKg(toKg)) / oneEdgeSdKg(fromKg);
  return sdKg < bothEdgesSdKg(fromKg) ? sdKg : (sdKg * bothEdgesSdKg(toKg)) / bothEdgesSdKg(fromKg);
}

function usualReadings(grossKg: number) {
  const geometry = standardGeometry();
  const reading = (edge: 'front' | 'rear') => readingOfShareKg(grossKg, weighParameters.frontShareFrac.value, geometry, edge);
  return { geometry, frontKg: reading('front'), rearKg: reading('rear') };
}
