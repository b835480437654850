import { EDGE_READING_KG } from '@winterheft/core';
import type { Units } from '@winterheft/words';
import type { Edge, Fields } from './entry.ts';
import { type KgSpan, readingKg, standingOf, tenfoldTexts } from './typing.ts';

export type Spans = Readonly<Record<Edge, KgSpan>>;

/** A reading that is asked about before the round goes on. */
export interface Question {
  readonly edge: Edge;
  readonly text: string;
  /** The same digits as they can be meant. */
  readonly instead: readonly string[];
  /** It can be insisted on: the journal takes it, and says that it is not reckoned with. */
  readonly canInsist: boolean;
}

/** A reading that is a weight of this hive, or that the keeper has said is right. */
export function isSettled(fields: Fields, edge: Edge, spans: Spans, units: Units): boolean {
  return fields.sure[edge] === fields[edge] || standingOf(fields[edge], spans[edge], units) === 'plausible';
}

/**
 * What has to be settled first, or null.
 *
 * leaving   the edge that is being left: there a figure that could still grow is asked about too
 */
export function questionOf(fields: Fields, of: { spans: Spans; units: Units; leaving: Edge | null }): Question | null {
  const { spans, units, leaving } = of;
  for (const edge of ['front', 'rear'] as const) {
    const text = fields[edge];
    if (text === '' || isSettled(fields, edge, spans, units)) continue;
    if (standingOf(text, spans[edge], units) === 'growing' && leaving !== edge) continue;
    const kg = readingKg(text, units);
    return {
      edge,
      text,
      instead: tenfoldTexts(text, spans[edge], units),
      canInsist: kg !== null && kg >= EDGE_READING_KG.low && kg <= EDGE_READING_KG.high,
    };
  }
  return null;
}

/** What the big key does: on to the other edge, to the next hive with or without a record, or nothing. */
export type BigKey = { readonly to: 'edge'; readonly edge: Edge } | { readonly to: 'next' } | { readonly to: 'skip' };

export function bigKeyOf(fields: Fields, of: { pane: 'keys' | 'seen' | 'word'; begun: boolean }): BigKey {
  if (of.pane !== 'word' && fields.edge === 'front' && fields.front !== '' && fields.rear === '') return { to: 'edge', edge: 'rear' };
  return of.begun ? { to: 'next' } : { to: 'skip' };
}
