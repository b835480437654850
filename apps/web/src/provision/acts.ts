import type { FieldError, Holding, Plan, Result } from '@winterheft/core';
import { append, rawText, strike } from '../app/session.ts';
import type { NewRecord } from '../store/journal-store.ts';
import { adoptedBody, type Because } from '../walk/adopted.ts';
import { recordsOfAct, recordsOfLook, recordsOfSkip, recordsOfTick } from '../walk/ticks.ts';
import type { Walk, WalkStop } from '../walk/walk.ts';

/** Why a new plan is to be taken up as soon as it is there. */
export interface Pending {
  readonly because: Because;
  readonly about: string;
}

export type Written = Result<unknown, FieldError>;

/** Takes a plan up: from now on the walk goes by it. */
export function adopt(
  plan: Plan,
  holding: Holding,
  why: { readonly because: Because; readonly about?: string; readonly before: string | null },
) {
  return append([{ yard: '*', kind: 'plan-adopted', body: { plan: { ...adoptedBody(plan, holding, why) } } }]);
}

export function tick({ stop }: WalkStop, of: { readonly walk: Walk; readonly holding: Holding }): Promise<Written> {
  return append(recordsOfTick(stop, { adopted: of.walk.adopted, holding: of.holding }));
}

export function answerLook({ stop }: WalkStop, answer: 'clean' | 'signs' | 'not-today', walk: Walk): Promise<Written> {
  return append(recordsOfLook(stop, answer, { adopted: walk.adopted }));
}

export function pass({ stop }: WalkStop): Promise<Written> {
  return append(recordsOfSkip(stop) ?? []);
}

/** Strikes everything that was recorded with the stop. */
export async function takeBack({ done }: WalkStop): Promise<void> {
  if (done === null) return;
  await strike(recordsOfAct(await rawText(), done.record));
}

/** The feed of a stop was not taken: what was counted as fed is struck, and the refusal stands instead. */
export async function refuseFeed(fed: WalkStop): Promise<Written> {
  const { stop, done } = fed;
  const { colony, yard } = stop;
  if (done === null || colony === null || (stop.kind !== 'syrup' && stop.kind !== 'candy')) return { ok: true, value: null };
  const offered = recordsOfAct(await rawText(), done.record).filter(({ kind }) => kind === 'feed');
  const strikes = offered.map(({ id, yard }): NewRecord => ({ yard, kind: 'strike', body: { target: id } }));
  const refusal: NewRecord[] = stop.kind === 'candy' ? [{ yard, kind: 'refusal', body: { subject: colony, what: 'candy' } }] : [];
  return append([...strikes, { yard, kind: 'feed', body: { colony, what: stop.kind, event: 'refused' } }, ...refusal]);
}
