import type { ColonyOutlook, Hive, Holding } from '@winterheft/core';
import { dayMonth, type UnitFormat } from '@winterheft/words';
import { words } from '../app/words.ts';
import { type Shape, shapeOf } from '../ui/states.tsx';
import { figure } from '../weighing/figures.ts';
import type { WalkYard } from '../weighing/walk.ts';
import type { SheetYard } from './pages.ts';

/** One hive on the paper, everything as text. */
export interface SheetRow {
  readonly hive: string;
  readonly label: string;
  readonly shape: Shape | null;
  readonly state: string;
  readonly isShort: boolean;
  /** Readings of the last weighing, front first; or one word. */
  readonly last: readonly { readonly edge: string; readonly text: string }[];
  readonly lastDay: string;
  readonly needs: string;
  readonly above: string;
  readonly stopFront: string;
  readonly stopRear: string;
}

/** The rows of a round in its order, with what is known of each colony. */
export function sheetRows(
  walk: readonly WalkYard[],
  of: { readonly holding: Holding; readonly lines: readonly ColonyOutlook[]; readonly units: UnitFormat },
): readonly SheetYard<SheetRow>[] {
  const lineByHive = new Map(of.lines.map((line) => [line.hive, line]));
  return walk.map(({ yard, hives }) => ({
    yard,
    rows: hives.map(({ hive, label }) =>
      sheetRow(label, { hive: of.holding.hives.get(hive) as Hive, line: lineByHive.get(hive), units: of.units }),
    ),
  }));
}

function sheetRow(
  label: string,
  { hive, line, units }: { readonly hive: Hive; readonly line: ColonyOutlook | undefined; readonly units: UnitFormat },
): SheetRow {
  const { last, day } = lastWeighing(hive, units);
  const shown = line === undefined ? { shape: null, state: '' } : stateOf(line);
  // Who is set aside stays shut, who is not known has nothing to be compared with.
  const answer = line === undefined || line.state === 'set aside' ? null : line;
  return {
    hive: hive.id,
    label,
    ...shown,
    isShort: line?.state === 'short',
    last,
    lastDay: day,
    needs: line === undefined ? '' : figure(units, line.needKg),
    above: answer?.aboveNeedKg == null ? '' : signed(figure(units, answer.aboveNeedKg)),
    stopFront: stop(answer?.targetFrontKg, units),
    stopRear: stop(answer?.targetRearKg, units),
  };
}

function stateOf(line: ColonyOutlook): { readonly shape: Shape; readonly state: string } {
  const { sheet } = words;
  if (line.low && line.state === 'enough') return { shape: 'low', state: sheet.low };
  const isUnseen = line.state === 'spare' && line.notes.some((note) => note.code === 'brood-not-looked-at');
  if (isUnseen) return { shape: 'look', state: sheet.spareUnseen };
  return { shape: shapeOf(line.state), state: sheet.states[line.state] };
}

function stop(kg: number | null | undefined, units: UnitFormat): string {
  return kg == null ? '' : figure(units, kg);
}

function signed(figure: string): string {
  return figure.startsWith('-') ? figure.replace('-', '−') : `+${figure}`;
}

/** Readings as they were typed, or the word, and the day. */
export function lastWeighing(hive: Hive, units: UnitFormat): { readonly last: SheetRow['last']; readonly day: string } {
  const { sheet } = words;
  const weighing = hive.weighings.at(-1);
  if (weighing === undefined) return { last: [{ edge: 'none', text: sheet.neverWeighed }], day: '' };
  const { frontKg, rearKg, word, at } = weighing;
  const day = dayMonth(at.date);
  if (frontKg === undefined && rearKg === undefined)
    return { last: [{ edge: 'word', text: word === undefined ? '' : sheet.words[word] }], day };
  const reading = (edge: string, kg: number | undefined) => ({ edge, text: kg === undefined ? '–' : tenths(units.massOf(kg)) });
  return { last: [reading('front', frontKg), reading('rear', rearKg)], day };
}

function tenths(value: number): string {
  return String(Math.round(value * 10) / 10);
}

/** Error of the readings to stop at: the middle one of all hives, for the head of the paper [kg]; null where there is none. */
export function stopSdKg(lines: readonly ColonyOutlook[]): number | null {
  const all = lines.flatMap(({ targetFrontSdKg: front, targetRearSdKg: rear }) => [front, rear]).filter((sd) => sd !== null);
  return all.sort((a, b) => a - b)[all.length >> 1] ?? null;
}
