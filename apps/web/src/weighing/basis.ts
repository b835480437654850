import type { Holding } from '@winterheft/core';
import type { Readings } from './records.ts';

/** What a weight rests on. */
export type Basis = 'both' | 'front' | 'rear' | 'word' | 'none';

/** What an answer rests on: the readings typed, or where none are, those recorded last. */
export function basisOf(typed: Readings, holding: Holding, hive: string): Basis {
  const recorded = holding.hives.get(hive)?.weighings.at(-1);
  const isTyped = typed.frontKg !== undefined || typed.rearKg !== undefined || typed.word !== undefined;
  const { frontKg, rearKg, word } = isTyped ? typed : (recorded ?? {});
  if (frontKg !== undefined && rearKg !== undefined) return 'both';
  if (frontKg !== undefined) return 'front';
  if (rearKg !== undefined) return 'rear';
  return word === undefined ? 'none' : 'word';
}
