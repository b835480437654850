import { type Parameter, phenologyParameters, planParameters, storesParameters, weighParameters, winterParameters } from '@winterheft/core';
import type { FigureWords } from '@winterheft/words';

export type SourceGroup = keyof FigureWords['names'];

/** The tables of figures an answer rests on, by what they decide. */
export const sourceGroups: readonly { readonly name: SourceGroup; readonly rows: Readonly<Record<string, Parameter>> }[] = [
  { name: 'use', rows: winterParameters },
  { name: 'stores', rows: storesParameters },
  { name: 'weigh', rows: weighParameters },
  { name: 'forage', rows: phenologyParameters },
  { name: 'state', rows: planParameters },
];

/** What a figure of a group is called. */
export function figureName({ names }: FigureWords, group: SourceGroup, name: string): string {
  const called: Readonly<Record<string, string>> = names[group];
  return called[name] ?? name;
}

/** Its unit as it is read; empty for a bare number. */
export function unitName({ units }: FigureWords, unit: string): string {
  return units[unit] ?? unit;
}
