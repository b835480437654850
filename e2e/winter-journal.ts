import { readFileSync, writeFileSync } from 'node:fs';
import { demoJournal } from './app.ts';

interface Line {
  readonly id: string;
  readonly yard: string;
  readonly kind: string;
  readonly at: { readonly date: string };
  readonly by: string;
  readonly body: { readonly hive?: string; readonly frontKg?: number; readonly rearKg?: number };
}

/** The day on which the winter of this journal is looked at. */
export const WINTER_DAY = '2027-03-05';

/** Invented losses of weight since September, front and rear together [kg], by hive: B4 eats more than any case, A1 as most. */
const LIFTS: readonly (readonly [hive: string, date: string, lessKg: number])[] = [
  ['hive-a1', '2027-01-14', 5],
  ['hive-b4', '2027-01-14', 9],
  ['hive-b4', '2027-03-02', 14],
  ['hive-c2', '2027-03-02', 7.5],
];
const SIGNS = [
  ['colony-b7', 'silent'],
  ['colony-c8', 'frozen-down'],
  ['colony-a6', 'wet-lid'],
] as const;

/** The demo holding with a winter in it: some hives lifted again, some signs noted. Written to a file. */
export function writeWinterJournal(file: string): void {
  const text = readFileSync(demoJournal, 'utf8').trimEnd();
  const lines = text.split('\n').map((line) => JSON.parse(line) as Line);
  let number = 0;
  const record = (of: Line, kind: string, date: string, body: object) => {
    const id = `${of.id.slice(0, -8)}beef${String(number).padStart(4, '0')}`;
    const seen = `${1_830_000_000_000 + number++}-00000-device01`;
    return JSON.stringify({ id, yard: of.yard, kind, at: { date }, by: of.by, seen, body });
  };
  const lifts = LIFTS.map(([hive, date, lessKg]) => {
    const first = lines.find(({ kind, body }) => kind === 'weighing' && body.hive === hive) as Line;
    const reading = (kg = 0) => Math.round((kg - lessKg / 2) * 4) / 4;
    return record(first, 'weighing', date, { hive, frontKg: reading(first.body.frontKg), rearKg: reading(first.body.rearKg) });
  });
  const yardOf = (colony: string) =>
    lines.find(({ kind, body }) => kind === 'weighing' && body.hive === colony.replace('colony', 'hive')) as Line;
  const signs = SIGNS.map(([colony, sign]) => record(yardOf(colony), 'sign', '2027-03-02', { colony, sign }));
  writeFileSync(file, `${[text, ...lifts, ...signs].join('\n')}\n`);
}
