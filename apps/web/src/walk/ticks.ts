import { type Bodies, framePart, type Holding, type JournalRecord, readJournal } from '@winterheft/core';
import type { NewRecord } from '../store/journal-store.ts';
import type { Adopted } from './adopted.ts';
import { frameOf } from './frames.ts';
import { Hand } from './hand.ts';
import { unloadFlows } from './shed-stops.ts';
import type { Stop } from './stop.ts';

/** What can be put off for the day; the next plan of that day leaves it out. */
export type PutOff = 'look' | 'give' | 'get' | 'syrup' | 'candy' | 'unite';

/** The records of a stop that was done as planned. */
export function recordsOfTick(stop: Stop, of: { readonly adopted: Adopted; readonly holding: Holding }): readonly NewRecord[] {
  return [...deedsOf(stop, of), doneRecord(stop, of.adopted)];
}

/** The records of a look's answer. A look put off is no look; either way the stop is done with. */
export function recordsOfLook(
  stop: Stop,
  answer: 'clean' | 'signs' | 'not-today',
  of: { readonly adopted: Adopted },
): readonly NewRecord[] {
  const { yard } = stop;
  const colony = colonyOf(stop);
  const record: NewRecord =
    answer === 'not-today'
      ? { yard, kind: 'refusal', body: { subject: colony, what: 'look' } }
      : { yard, kind: 'look', body: { colony, brood: answer } };
  return [record, doneRecord(stop, of.adopted)];
}

/** The records of a stop the keeper passes by; null where it cannot be: a gap must be closed and the box emptied. */
export function recordsOfSkip(stop: Stop): readonly NewRecord[] | null {
  const what = putOffOf(stop);
  return what === null || stop.colony === null ? null : [{ yard: stop.yard, kind: 'refusal', body: { subject: stop.colony, what } }];
}

export function putOffOf({ kind, flows }: Stop): PutOff | null {
  switch (kind) {
    case 'look':
    case 'syrup':
    case 'candy':
    case 'unite':
      return kind;
    case 'shed':
      return null;
    case 'swap': {
      const gives = flows.some(({ from, out, ...combs }) => !frameOf('colony' in from ? combs : (out ?? LIGHT)).isLight);
      if (gives) return 'give';
      return flows.some(({ out }) => out !== undefined) ? 'get' : null;
    }
  }
}

const LIGHT = { frame: 'deep', massKg: 0 };

function deedsOf(stop: Stop, { holding }: { readonly holding: Holding }): NewRecord[] {
  const { yard } = stop;
  switch (stop.kind) {
    case 'swap':
      return swaps(stop.flows, { yard, holding });
    case 'shed':
      return swaps(flowsAtShed(stop, holding), { yard, holding });
    case 'look':
      return [];
    case 'syrup': {
      const { litres, sugarKg } = stop.syrup ?? { litres: 0, sugarKg: 0 };
      const body = { colony: colonyOf(stop), what: 'syrup', event: 'offered', litres, sugarKg, ratio: '2:1', basis: 'mass' } as const;
      return [{ yard, kind: 'feed', body }];
    }
    case 'candy':
      return [{ yard, kind: 'feed', body: { colony: colonyOf(stop), what: 'candy', event: 'offered', sugarKg: stop.candy?.sugarKg ?? 0 } }];
    case 'unite':
      return [{ yard, kind: 'colonies-united', body: { from: stop.union?.from ?? '', into: stop.union?.into ?? '' } }];
  }
}

/** At the end of a yard everything that is in hand is hung up, whatever the plan thought there would be. */
function flowsAtShed(stop: Stop, holding: Holding): Stop['flows'] {
  const isUnloading = stop.flows.every(({ from }) => 'hand' in from);
  if (!isUnloading) return stop.flows;
  const planned = new Set(stop.flows.map(({ from, frame }) => ('hand' in from ? `${from.hand} ${frame}` : '')));
  const own = holding.inHand.filter(({ from, frame, count }) => count > 0 && planned.has(`${from} ${frame}`));
  return unloadFlows(new Hand(own), [], holding);
}

function swaps(flows: Stop['flows'], of: { readonly yard: string; readonly holding: Holding }): NewRecord[] {
  const { yard, holding } = of;
  const begun = new Set<string>();
  return flows.flatMap((body): NewRecord[] => {
    const record: NewRecord = { yard, kind: 'swap', body };
    const { to, from } = body;
    if (!('lot' in to) || holding.lots.has(to.lot) || begun.has(to.lot) || !('hand' in from)) return [record];
    begun.add(to.lot);
    return [{ yard, kind: 'bank-lot', body: newLot(to.lot, { ...body, from: from.hand }, holding) }, record];
  });
}

/** A lot begins empty; the swap that follows fills it. */
function newLot(
  lot: string,
  combs: { readonly from: string; readonly frame: string; readonly massKg?: number },
  holding: Holding,
): Bodies['bank-lot'] {
  const { from, frame, massKg } = combs;
  const colony = holding.colonies.get(from);
  const looked = colony?.cleanLook?.at.date;
  const usual = framePart(frameOf(combs).depth, 'drawn');
  return {
    lot,
    frame,
    count: 0,
    massKg: massKg ?? usual.massKg + usual.cappedNetKg,
    ...(colony === undefined ? {} : { from }),
    ...(looked === undefined ? {} : { looked }),
    strips: colony?.treatments.some(({ out }) => out === null) ?? false,
  };
}

function doneRecord(stop: Stop, adopted: Adopted): NewRecord {
  return { yard: stop.yard, kind: 'step-done', body: { plan: adopted.fact.record, step: stop.id } };
}

function colonyOf(stop: Stop): string {
  if (stop.colony === null) throw new RangeError(`recordsOfTick: ${stop.id} is at no colony`);
  return stop.colony;
}

/**
 * The records that were written in one act with another one: their ids carry the same millisecond, their stamps the same device.
 * They are what an untick strikes.
 */
export function recordsOfAct(journal: string, record: string): readonly JournalRecord[] {
  const lines = journal.split('\n');
  const device = /"seen":"\d{13}-\d{5}-([0-9a-z]{8})"/.exec(lines.find((line) => line.includes(`"id":"${record}"`)) ?? '')?.[1];
  if (device === undefined) return [];
  const same = lines.filter((line) => line.includes(`"id":"${record.slice(0, 13)}`) && line.includes(`-${device}"`));
  return readJournal(same.join('\n')).records.filter(({ kind }) => kind !== 'strike' && kind !== 'correct');
}
