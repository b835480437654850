import { type Parameter, phenologyParameters, planParameters, storesParameters, weighParameters, winterParameters } from '@winterheft/core';

export type SourceGroup = 'use' | 'stores' | 'weigh' | 'forage' | 'state';

/** The tables of figures an answer rests on, by what they decide. */
export const sourceGroups: readonly { readonly name: SourceGroup; readonly rows: Readonly<Record<string, Parameter>> }[] = [
  { name: 'use', rows: winterParameters },
  { name: 'stores', rows: storesParameters },
  { name: 'weigh', rows: weighParameters },
  { name: 'forage', rows: phenologyParameters },
  { name: 'state', rows: planParameters },
];

/** `clusterWPerKgK` as words: cluster W per kg K. */
export function nameWords(name: string): string {
  return name
    .replace(/([a-z0-9])([A-Z])/g, '$1 $2')
    .replace(/([A-Z])(?=[A-Z][a-z])/g, '$1 ')
    .toLowerCase();
}
