import type { At, Bodies, Hive, Holding } from '@winterheft/core';
import type { Units } from '@winterheft/words';
import type { NewRecord } from '../store/journal-store.ts';
import { type Entry, type Fields, hasSeen, type Seen } from './entry.ts';
import { type HiveFacts, hiveFacts } from './hive-facts.ts';
import { readingKg } from './typing.ts';

export type Scale = Pick<Bodies['weighing'], 'scale' | 'stepKg' | 'liftM'>;

/** The scale of the last weighing in the holding: its name, step and lift go with the next readings. */
export function scaleOf(holding: Holding): Scale {
  let latest: { readonly minute: number; readonly scale: Scale } | null = null;
  for (const hive of holding.hives.values()) {
    const weighing = hive.weighings.findLast(({ frontKg, rearKg }) => frontKg !== undefined || rearKg !== undefined);
    if (weighing === undefined || (latest !== null && weighing.minute <= latest.minute)) continue;
    const { minute, scale, stepKg, liftM } = weighing;
    latest = {
      minute,
      scale: {
        ...(scale === undefined ? {} : { scale }),
        ...(stepKg === undefined ? {} : { stepKg }),
        ...(liftM === undefined ? {} : { liftM }),
      },
    };
  }
  return latest?.scale ?? {};
}

/** To the gram: finer than any hook scale, and no tail of a conversion in the file. */
const gram = (kg: number) => Math.round(kg * 1000) / 1000;

export interface Readings {
  readonly frontKg?: number | undefined;
  readonly rearKg?: number | undefined;
  readonly word?: 'heavy' | 'fair' | 'light' | undefined;
}

/** What stands in the fields, in kilograms. */
export function readingsOf(
  { front, rear, word }: Pick<Fields, 'front' | 'rear' | 'word'>,
  units: Units,
): Pick<Bodies['weighing'], 'frontKg' | 'rearKg' | 'word'> {
  const [frontKg, rearKg] = [readingKg(front, units), readingKg(rear, units)];
  return {
    ...(frontKg === null ? {} : { frontKg: gram(frontKg) }),
    ...(rearKg === null ? {} : { rearKg: gram(rearKg) }),
    ...(word === null ? {} : { word }),
  };
}

/** The weighing an entry makes; null where neither a reading nor a word was given. */
export function weighingBody(entry: Entry, of: { hive: string; units: Units; scale: Scale }): Bodies['weighing'] | null {
  const readings = readingsOf(entry, of.units);
  const hasReading = readings.frontKg !== undefined || readings.rearKg !== undefined;
  if (!hasReading && readings.word === undefined) return null;
  return { hive: of.hive, ...readings, ...(hasReading ? of.scale : {}) };
}

/** What was seen inside as the body of a look, without its colony; null where nothing was. */
export function lookOf(seen: Seen, facts: Pick<HiveFacts, 'topFrame' | 'belowFrame'>): Omit<Bodies['look'], 'colony'> | null {
  if (!hasSeen(seen)) return null;
  const { bees, top, below, brood } = seen;
  const capped = [
    ...(top === null || top === 0 ? [] : [{ frame: facts.topFrame, count: top, where: 'top' as const }]),
    ...(below === null || below === 0 || facts.belowFrame === null
      ? []
      : [{ frame: facts.belowFrame, count: below, where: 'below' as const }]),
  ];
  return {
    ...(bees === null ? {} : { bees: { count: bees, unit: 'frames', counting: 'covered' } }),
    ...(top === null && below === null ? {} : { capped }),
    ...(brood === null ? {} : { brood }),
  };
}

/** The records the fields of a hive make: a weighing, a look, both or none. */
export function recordsOfEntry(
  entry: Entry,
  { hive, holding, units, at }: { readonly hive: Hive; readonly holding: Holding; readonly units: Units; readonly at?: At },
): readonly NewRecord[] {
  const [colony] = hive.colonies;
  const weighing = weighingBody(entry, { hive: hive.id, units, scale: scaleOf(holding) });
  const look = colony === undefined ? null : lookOf(entry.seen, hiveFacts(hive));
  const of = { yard: hive.yard, ...(at === undefined ? {} : { at }) };
  return [
    ...(weighing === null ? [] : [{ ...of, kind: 'weighing' as const, body: weighing }]),
    ...(look === null || colony === undefined ? [] : [{ ...of, kind: 'look' as const, body: { colony, ...look } }]),
  ];
}

type Weighing = Hive['weighings'][number];
type Look = NonNullable<ReturnType<Holding['colonies']['get']>>['looks'][number];

/**
 * What was weighed and seen at one hive written to another one, as corrections of the records there are.
 *
 * The look goes along where it was written with the weighing: at the same minute.
 */
export function movedRecords(holding: Holding, from: Hive, to: Hive): readonly NewRecord[] {
  const weighing = from.weighings.at(-1);
  if (weighing === undefined) return [];
  const [was, becomes] = [from.colonies.at(-1), to.colonies.at(-1)];
  const look = holding.colonies.get(was ?? '')?.looks.findLast(({ minute }) => minute === weighing.minute);
  const change = (target: string, body: Bodies['weighing'] | Bodies['look']): NewRecord => ({
    yard: from.yard,
    kind: 'correct',
    body: { target, body },
  });
  return [
    change(weighing.record, { ...weighingOnly(weighing), hive: to.id }),
    ...(look === undefined || becomes === undefined ? [] : [change(look.record, { ...lookOnly(look), colony: becomes })]),
  ];
}

function weighingOnly({ frontKg, rearKg, word, scale, liftM, stepKg }: Weighing): Omit<Bodies['weighing'], 'hive'> {
  return present({ frontKg, rearKg, word, scale, liftM, stepKg });
}

function lookOnly({ bees, capped, partFull, pollenFrames, emptyCombs, brood }: Look): Omit<Bodies['look'], 'colony'> {
  return present({ bees, capped, partFull, pollenFrames, emptyCombs, brood });
}

/** Without the fields that were not given. */
function present<T extends object>(fields: T): { [K in keyof T]?: Exclude<T[K], undefined> } {
  return Object.fromEntries(Object.entries(fields).filter(([, value]) => value !== undefined)) as ReturnType<typeof present<T>>;
}
