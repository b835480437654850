import { type Bodies, DEADOUT_SIGNS } from '@winterheft/core';

/** A hive as it is being counted; kept as a draft. */
export interface Counted {
  readonly alive: boolean | null;
  readonly frames: number | null;
  readonly queen: 'seen' | 'laying' | 'absent' | null;
  readonly found: readonly (typeof DEADOUT_SIGNS)[number][];
}

export const NOT_COUNTED: Counted = { alive: null, frames: null, queen: null, found: [] };

export function readCounted(stored: unknown): Counted | null {
  if (typeof stored !== 'object' || stored === null) return null;
  const { alive, frames, queen, found } = stored as Partial<Counted>;
  const signs = Array.isArray(found) && found.every((sign) => DEADOUT_SIGNS.includes(sign)) ? found : null;
  if (signs === null || (alive !== null && typeof alive !== 'boolean') || (frames !== null && typeof frames !== 'number')) return null;
  if (queen !== null && queen !== 'seen' && queen !== 'laying' && queen !== 'absent') return null;
  return { alive: alive ?? null, frames: frames ?? null, queen, found: signs };
}

/** The record's body; null until alive or dead is said. */
export function bodyOf(colony: string, { alive, frames, queen, found }: Counted): Bodies['spring-count'] | null {
  if (alive === null) return null;
  if (!alive) return { colony, alive, ...(found.length === 0 ? {} : { found: [...found] }) };
  return {
    colony,
    alive,
    ...(frames === null ? {} : { bees: { count: frames, unit: 'frames', counting: 'covered' } }),
    ...(queen === null ? {} : { queen }),
  };
}
