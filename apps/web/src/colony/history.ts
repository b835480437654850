import type { Colony, Holding, Place } from '@winterheft/core';
import { type AppWords, shortened, type UnitFormat } from '@winterheft/words';

/** One thing that happened to a colony, and the record it stands in. */
export interface Event {
  readonly record: string;
  readonly date: string;
  readonly minute: number;
  readonly text: string;
}

interface Told {
  readonly holding: Holding;
  readonly units: UnitFormat;
  readonly history: AppWords['colony']['history'];
}

interface Happened {
  readonly record: string;
  readonly at: { readonly date: string };
  readonly minute: number;
}

/** All that is recorded of a colony, newest first: what was weighed in its hives while it lived there, and what was done in it. */
export function historyOf(colony: Colony, of: Told): readonly Event[] {
  const { holding, units, history } = of;
  const events: Event[] = [];
  const add = (of: Happened | null, text: string) => {
    if (of !== null) events.push({ record: of.record, date: of.at.date, minute: of.minute, text });
  };
  const label = (id: string) => holding.hives.get(holding.colonies.get(id)?.hive ?? '')?.label ?? id;
  const place = (of: Place): string =>
    'colony' in of ? label(of.colony) : 'lot' in of ? shortened(of.lot, 24) : 'hand' in of ? history.hand : history.shed;
  for (const hive of holding.hives.values())
    for (const weighing of hive.weighings)
      if (weighing.colonies.includes(colony.id)) {
        const parts = [
          ...(weighing.frontKg === undefined ? [] : [history.front(units.mass(weighing.frontKg))]),
          ...(weighing.rearKg === undefined ? [] : [history.rear(units.mass(weighing.rearKg))]),
          ...(weighing.word === undefined ? [] : [history.words[weighing.word] ?? weighing.word]),
        ];
        add(weighing, history.weighing(parts.join(', ')));
      }
  for (const look of colony.looks) {
    const parts = [
      ...(look.bees === undefined ? [] : [history.lookBees(`${look.bees.count} ${look.bees.unit}`)]),
      ...(look.capped ?? []).map((capped) => history.capped(capped.count, capped.where)),
      ...(look.pollenFrames === undefined ? [] : [history.pollen(look.pollenFrames)]),
      ...(look.brood === undefined ? [] : [history.brood[look.brood] ?? look.brood]),
    ];
    add(look, history.look(parts.join(', ')));
  }
  for (const feed of colony.feeds) {
    const amount =
      feed.sugarKg !== undefined
        ? history.sugar(units.mass(feed.sugarKg))
        : feed.litres !== undefined
          ? units.volume(feed.litres)
          : feed.massKg !== undefined
            ? units.mass(feed.massKg)
            : '';
    add(feed, history.feed(history.feedWhat[feed.what] ?? feed.what, history.feeds[feed.event] ?? feed.event, amount));
  }
  for (const move of colony.moves) {
    const says = move.direction === 'into' ? history.moveIn : history.moveOut;
    add(move, says(move.count, move.frame, place(move.other)));
  }
  for (const wash of colony.washes) add(wash, history.wash(wash.mites, wash.bees));
  for (const treatment of colony.treatments) {
    add(treatment.in, history.treatmentIn(treatment.product ?? treatment.active));
    add(treatment.out, history.treatmentOut(treatment.product ?? treatment.active));
  }
  for (const queen of colony.queens) add(queen, history.queen(queen.state));
  for (const sign of colony.signs) add(sign, history.signs[sign.sign] ?? sign.sign);
  for (const count of colony.springCounts) add(count, history.spring(count.alive));
  for (const split of colony.splits) add(split, history.split);
  add(colony.begun, history.begun);
  const known = new Set(events.map((event) => event.record));
  for (const stay of colony.stays)
    if (!known.has(stay.from.record)) add(stay.from, history.placed(holding.hives.get(stay.hive)?.label ?? stay.hive));
  add(colony.ended, history.ended);
  return events.sort((a, b) => b.minute - a.minute || (a.record < b.record ? 1 : -1));
}
