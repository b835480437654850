import { MITE_LEVELS } from '../tables/mite-levels.gen.ts';
import type { MiteLevel } from '../tables/mites.ts';
import type { Mark } from '../tables/types.ts';
import { epochDayOfParts, isoDateOf, partsOf } from '../units/index.ts';

/** The keeper's own figures for a level of the table. */
export interface OwnLevel {
  readonly key: string;
  readonly warn?: number | undefined;
  readonly treat?: number | undefined;
  readonly never?: number | undefined;
}

export type Brood = 'brood' | 'little';

/** A level as it holds on a day, with where it came from. */
export interface LevelOnDay {
  readonly key: string;
  readonly warn: number;
  readonly treat: number;
  readonly never: number | null;
  /** `own`: the keeper's figures. */
  readonly by: 'table' | 'own';
  readonly place: string;
  readonly source: string;
  readonly mark: Mark;
  readonly note: string;
}

/** Keys of the table, for the settings. */
export const levelKeys = (): readonly string[] => MITE_LEVELS.map(({ key }) => key);

/** The row of the table that holds on a day; null where none does (January to March for a wash). */
export function levelRow(
  day: number,
  of: { readonly method: 'wash' | 'board'; readonly brood: Brood; readonly colony?: 'production' | 'young' | undefined },
): MiteLevel | null {
  const date = isoDateOf(day).slice(5);
  const rows = MITE_LEVELS.filter(
    (row) =>
      row.method === of.method &&
      row.from <= date &&
      date <= row.to &&
      (row.brood === 'any' || row.brood === of.brood) &&
      (row.colony === 'any' || row.colony === (of.colony ?? 'production')),
  );
  return rows[0] ?? null;
}

/** The level of a wash on a day, the keeper's figures first. */
export function levelOn(day: number, of: { readonly brood: Brood; readonly own?: readonly OwnLevel[] | undefined }): LevelOnDay | null {
  const row = levelRow(day, { method: 'wash', brood: of.brood });
  return row === null ? null : withOwn(row, of.own ?? []);
}

function withOwn(row: MiteLevel, own: readonly OwnLevel[]): LevelOnDay {
  const { key, place, source, mark, note } = row;
  const mine = own.filter((one) => one.key === key).at(-1);
  return {
    key,
    warn: mine?.warn ?? row.warn ?? row.treat,
    treat: mine?.treat ?? row.treat,
    never: mine?.never ?? row.never,
    by: mine === undefined ? 'table' : 'own',
    place,
    source,
    mark,
    note,
  };
}

export interface LevelStep extends LevelOnDay {
  readonly from: string;
  readonly to: string;
}

/** The stair of levels over a span: one step for every run of days under the same row. `broodEndDay` parts much brood from little. */
export function levelStair(
  span: { readonly fromDay: number; readonly toDay: number },
  of: { readonly broodEndDay: number; readonly own?: readonly OwnLevel[] | undefined },
): LevelStep[] {
  const steps: LevelStep[] = [];
  for (let day = span.fromDay; day <= span.toDay; day++) {
    const level = levelOn(day, { brood: day < of.broodEndDay ? 'brood' : 'little', own: of.own });
    if (level === null) continue;
    const last = steps.at(-1);
    if (last !== undefined && last.key === level.key && last.to === isoDateOf(day - 1))
      steps[steps.length - 1] = { ...last, to: isoDateOf(day) };
    else steps.push({ ...level, from: isoDateOf(day), to: isoDateOf(day) });
  }
  return steps;
}

/** Epoch day of a day of the year. */
export function dayOfYearIn(year: number, dayOfYear: number): number {
  return epochDayOfParts(year, 1, 1) + Math.round(dayOfYear) - 1;
}

export function yearOf(day: number): number {
  return partsOf(day).year;
}
