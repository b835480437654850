import { writeFileSync } from 'node:fs';
import { lineOf, recordOf, standardBuild, uuidv7 } from '../packages/core/src/index.ts';

const DAY_MS = 86_400_000;
const iso = (ms: number) => new Date(ms).toISOString().slice(0, 10);

interface Sizes {
  readonly colonies: number;
  readonly records: number;
  /** Colonies of many sizes in hives of many builds, so that few are worked out together. */
  readonly differing?: boolean;
}

const COUNTINGS = ['covered', 'occupied', 'packed'];
const BUILDS = [['deep'], ['deep', 'deep'], ['deep', 'medium'], ['deep', 'deep', 'medium'], ['medium', 'medium']] as const;

/** Writes a journal of invented weighings and looks over six years, as many records as asked for, ending yesterday. */
export function writeBigJournal(file: string, { colonies, records, differing = false }: Sizes): void {
  const lines: string[] = [];
  const end = Date.now() - DAY_MS;
  const begin = end - 6 * 365 * DAY_MS;
  const add = (ms: number, kind: string, body: Readonly<Record<string, unknown>>) => {
    const n = lines.length;
    const random = new Uint8Array(10);
    new DataView(random.buffer).setUint32(4, n);
    const read = recordOf({
      id: uuidv7(ms, random),
      yard: kind === 'setting' ? '*' : 'y1',
      kind,
      at: { date: iso(ms), time: '12:00', zone: '+00:00' },
      by: 'keeper',
      seen: `${String(ms).padStart(13, '0')}-${String(n % 100_000).padStart(5, '0')}-bench001`,
      body,
    });
    if (!read.ok) throw new Error(`${kind}: ${JSON.stringify(read.why)}`);
    lines.push(lineOf(read.record));
  };
  const partsOf = (i: number) =>
    standardBuild(differing ? (BUILDS[i % 5] ?? []) : ['deep', 'deep'], 10).map(({ part, count }) => ({ part, count }));
  const beesOf = (i: number) => ({
    count: differing ? 3 + (i % 34) / 2 : 7,
    unit: 'frames',
    counting: differing ? COUNTINGS[i % 3] : 'covered',
  });
  add(begin, 'yard', { name: 'Bench yard', latDeg: 53.8, lonDeg: -101.2, elevM: 270 });
  add(begin, 'setting', { key: 'units', value: 'ca' });
  for (let i = 1; i <= colonies; i++) {
    add(begin, 'stand', { stand: `s${i}`, row: '1', place: i });
    add(begin, 'hive', { hive: `h${i}`, label: `${i}`, stand: `s${i}` });
    add(begin, 'build', { hive: `h${i}`, parts: partsOf(i) });
    add(begin, 'colony-begun', { colony: `c${i}`, hive: `h${i}`, how: 'unknown' });
  }
  const rest = records - lines.length;
  for (let n = 0; n < rest; n++) {
    const i = (n % colonies) + 1;
    const ms = begin + Math.floor(((n + 1) / (rest + 1)) * (end - 8 * DAY_MS - begin));
    if (Math.floor(n / colonies) % 4 === 3) {
      add(ms, 'look', { colony: `c${i}`, bees: beesOf(i), brood: 'clean' });
    } else {
      const frontKg = 22 + ((n * 7) % 100) / 10;
      add(ms, 'weighing', { hive: `h${i}`, frontKg, rearKg: Math.round((frontKg + ((n * 3) % 20) / 10) * 10) / 10 });
    }
  }
  writeFileSync(file, `${lines.join('\n')}\n`);
}
