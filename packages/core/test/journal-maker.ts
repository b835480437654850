import { type Bodies, type JournalRecord, type Kind, uuidv7 } from '../src/journal/index.ts';

/** Fields a test wants to choose itself; the rest is filled in. */
interface Chosen {
  readonly id?: string;
  readonly yard?: string;
  readonly date?: string;
  readonly time?: string;
  readonly zone?: string;
  readonly seen?: string;
  readonly by?: string;
}

/** A stamp from small numbers, for tests that are about their order. */
export function stampAt(ms: number, device = 'device01'): string {
  return `${String(ms).padStart(13, '0')}-00000-${device}`;
}

export function idAt(number: number): string {
  return uuidv7(
    1_790_000_000_000 + number,
    Uint8Array.from({ length: 10 }, (_, i) => (number * 31 + i * 7) & 0xff),
  );
}

/** Writes records one after the other: ids and stamps rise, all on 1 September 2026 unless said otherwise. */
export function newMaker() {
  let number = 0;
  return <K extends Kind>(
    kind: K,
    body: Bodies[K],
    { id, yard, date, time, zone, seen, by }: Chosen = {},
  ): JournalRecord & { readonly kind: K } => {
    number++;
    const at = { date: date ?? '2026-09-01', ...(time === undefined ? {} : { time }), ...(zone === undefined ? {} : { zone }) };
    return {
      id: id ?? idAt(number),
      yard: yard ?? 'home',
      kind,
      at,
      by: by ?? 'keeper',
      seen: seen ?? stampAt(1000 + number),
      body,
    } as unknown as JournalRecord & { readonly kind: K };
  };
}

/** A yard, a hive with a build and a colony in it: what most tests about a holding begin with. */
export function oneColony(make: ReturnType<typeof newMaker>, name = 'a', date = '2026-05-01'): JournalRecord[] {
  return [
    make('yard', { name: 'Home', latDeg: 53.8, lonDeg: -101.2 }, { date }),
    make('hive', { hive: `hive-${name}`, label: name.toUpperCase() }, { date }),
    make('build', { hive: `hive-${name}`, parts: [{ part: 'deep-10-wood', count: 2 }] }, { date }),
    make('colony-begun', { colony: `colony-${name}`, hive: `hive-${name}`, how: 'unknown' }, { date }),
  ];
}
