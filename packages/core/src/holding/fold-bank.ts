import type { JournalRecord, Place, RecordOf } from '../journal/index.ts';
import { clash, colonyOf, factOf, happeningOf, type LotDraft, mention, noteEarly, type Work } from './work.ts';

interface Frames {
  readonly frame: string;
  readonly count: number;
  readonly massKg?: number;
}

function lotOf(work: Work, name: string, record: JournalRecord): LotDraft {
  mention(work, 'lot', name, record);
  let lot = work.lots.get(name);
  if (lot === undefined) {
    lot = {
      id: name,
      yard: record.yard,
      frame: null,
      count: 0,
      massKg: null,
      from: null,
      strips: false,
      begun: null,
      base: [],
      flows: [],
      counted: 0,
    };
    work.lots.set(name, lot);
  }
  return lot;
}

/** Frames moved on the same day before the lot was written down still count: the lot adds its frames to what has moved. */
export function foldBankLot(work: Work, record: RecordOf<'bank-lot'>): void {
  const { lot: name, frame, count, massKg, from, crop, looked, strips } = record.body;
  const lot = lotOf(work, name, record);
  if (from !== undefined) mention(work, 'colony', from, record);
  if (lot.begun !== null) clash(work, { kind: 'begun-twice', thing: 'lot', name, records: [lot.begun.record, record.id] });
  lot.count += count - lot.counted;
  work.lots.set(name, {
    id: name,
    yard: record.yard,
    frame,
    count: lot.count,
    massKg,
    from: from ?? null,
    strips: strips ?? false,
    ...(crop === undefined ? {} : { crop }),
    ...(looked === undefined ? {} : { looked }),
    begun: happeningOf(record),
    base: [...lot.base, record.id],
    flows: lot.flows,
    counted: count,
  });
}

/** A count is the truth of its moment: what moved before it is settled by it. */
export function foldBankCount(work: Work, record: RecordOf<'bank-count'>): void {
  const lot = lotOf(work, record.body.lot, record);
  if (lot.begun === null) noteEarly(work, 'lot', lot.id, record);
  lot.count = record.body.count;
  lot.counted = record.body.count;
  lot.base = [record.id];
  lot.flows = [];
}

export function foldKitCount(work: Work, record: RecordOf<'kit-count'>): void {
  work.holding.kit.set(record.body.item, factOf(record));
  work.kitFlows.set(record.body.item, [record.id]);
}

export function foldSwap(work: Work, record: RecordOf<'swap'>): void {
  const { from, to, out, ...frames } = record.body;
  flow(work, record, { from, to, frames });
  if (out !== undefined) flow(work, record, { from: to, to: out.to, frames: out });
}

function flow(
  work: Work,
  record: JournalRecord,
  { from, to, frames }: { readonly from: Place; readonly to: Place; readonly frames: Frames },
): void {
  move(work, record, { place: from, other: to, frames, sign: -1 });
  move(work, record, { place: to, other: from, frames, sign: 1 });
}

interface End {
  readonly place: Place;
  readonly other: Place;
  readonly frames: Frames;
  readonly sign: 1 | -1;
}

function move(work: Work, record: JournalRecord, end: End): void {
  const { place, sign, frames } = end;
  if ('colony' in place) moveColony(work, record, place.colony, end);
  else if ('lot' in place) {
    const lot = lotOf(work, place.lot, record);
    if (lot.begun === null) noteEarly(work, 'lot', lot.id, record);
    else if (lot.frame !== frames.frame) {
      clash(work, {
        kind: 'lot-frame-differs',
        lot: lot.id,
        frames: [lot.frame as string, frames.frame],
        records: [lot.begun.record, record.id],
      });
    }
    lot.count += sign * frames.count;
    if (lot.flows.at(-1) !== record.id) lot.flows.push(record.id);
  } else if ('hand' in place) moveHand(work, record, place.hand, end);
  else moveShed(work, record, end);
}

/** Combs also leave a colony that has ended: what it left is cleared away. */
function moveColony(work: Work, record: JournalRecord, name: string, { frames, sign, other }: End): void {
  const { frame, count, massKg } = frames;
  colonyOf(work, name, record, { mayFollowEnd: sign < 0 }).moves.push({
    ...happeningOf(record),
    direction: sign < 0 ? 'out-of' : 'into',
    frame,
    count,
    ...(massKg === undefined ? {} : { massKg }),
    other,
  });
}

function moveHand(work: Work, record: JournalRecord, from: string, { frames, sign }: End): void {
  const key = `${from} ${frames.frame}`;
  const known = work.inHand.get(key) ?? { from, frame: frames.frame, count: 0, records: [] };
  known.count += sign * frames.count;
  if (sign > 0 && frames.massKg !== undefined) known.massKg = frames.massKg;
  if (known.records.at(-1) !== record.id) known.records.push(record.id);
  work.inHand.set(key, known);
}

/** Frames in the shed are kit: their count moves with the swaps once they have been counted. */
function moveShed(work: Work, record: JournalRecord, { frames, sign }: End): void {
  const counted = work.holding.kit.get(frames.frame);
  if (counted === undefined) return;
  work.holding.kit.set(frames.frame, { ...counted, count: counted.count + sign * frames.count });
  (work.kitFlows.get(frames.frame) as string[]).push(record.id);
}
