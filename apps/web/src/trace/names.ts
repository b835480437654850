import type { Holding, TracePoint, TraceStep } from '@winterheft/core';
import { isoDateOf } from '@winterheft/core';
import { dayMonth } from '@winterheft/words';
import { words } from '../app/words.ts';

/** Label of a colony's hive, name of a lot, the shed. */
export function nameOf(point: TracePoint, holding: Holding): string {
  const { trace } = words;
  if ('shed' in point) return trace.shedName;
  if ('lot' in point) return trace.lot(point.lot);
  return labelOf(point.colony, holding);
}

export function labelOf(colony: string, holding: Holding): string {
  const one = holding.colonies.get(colony);
  const hive = one?.hive ?? one?.stays.at(-1)?.hive;
  return (hive === undefined ? null : holding.hives.get(hive)?.label) ?? colony;
}

export function stepText({ how, from, to, frame, count }: TraceStep, holding: Holding): string {
  const { trace } = words;
  const [a, b] = [nameOf(from, holding), nameOf(to, holding)];
  return how === 'combs' ? trace.steps.combs(a, b, trace.frames(count ?? 1, frame ?? '')) : trace.steps[how](a, b);
}

/** What the last looks at its brood say. */
export function looksOf(colony: string, holding: Holding): string {
  const { trace } = words;
  const one = holding.colonies.get(colony);
  const signs = one?.looks.filter(({ brood }) => brood === 'signs').at(-1);
  if (one?.flag === 'signs' && signs !== undefined) return trace.signsOn(dayMonth(isoDateOf(signs.day), true));
  const clean = one?.cleanLook ?? null;
  return clean === null ? trace.neverLooked : trace.lookedOn(dayMonth(isoDateOf(clean.day), true));
}
