import type { FieldError, UnreadLine } from '@winterheft/core';

/** What can be wrong with what was handed to a shell before the core ever sees it. */
export type InputFault =
  | { readonly kind: 'wrong-type'; readonly field: string; readonly value: string; readonly allowed: Wanted }
  | { readonly kind: 'rule'; readonly field: string; readonly value: string; readonly says: string }
  | { readonly kind: 'not-json'; readonly name: string; readonly line: number; readonly column: number; readonly near: string }
  | { readonly kind: 'no-input' }
  | { readonly kind: 'not-a-journal'; readonly name: string; readonly lines: number; readonly first: UnreadLine }
  | { readonly kind: 'empty'; readonly name: string }
  | { readonly kind: 'not-text'; readonly name: string }
  | { readonly kind: 'no-file'; readonly name: string }
  | { readonly kind: 'directory'; readonly name: string }
  | { readonly kind: 'unreadable'; readonly name: string; readonly code: string }
  | { readonly kind: 'too-big'; readonly name: string; readonly megabytes: number }
  | { readonly kind: 'option'; readonly says: string };

export type Wanted = 'object' | 'list' | 'text' | 'true or false' | 'whole number' | 'null' | 'other';

export type Fault = FieldError | InputFault;

/** What the schema says about the field at fault, where it says anything. */
export interface Allowed {
  readonly low?: number;
  readonly high?: number;
  /** What stands in the fields that contradict each other, in their order. */
  readonly values?: readonly (string | undefined)[];
}

const UNITS: readonly (readonly [RegExp, string])[] = [
  [/KgPerM3$/, 'kg/m³'],
  [/KgPerDay$/, 'kg a day'],
  [/KgPerS$/, 'kg/s'],
  [/WPerK$/, 'W/K'],
  [/WPerM2K$/, 'W/(m² K)'],
  [/(^k|K)g$/, 'kg'],
  [/MeanC$|TempC$|^tempC$|OutsideC$|outsideC$|C$/, '°C'],
  [/M2$/, 'm²'],
  [/M$/, 'm'],
  [/Deg$/, 'degrees'],
  [/Mm$/, 'mm'],
  [/Pa$/, 'Pa'],
  [/W$/, 'W'],
  [/(^l|L)itres$|L$/, 'L'],
  [/([dD])ays(To.*)?$/, 'days'],
  [/^bees$/, 'bees'],
  [/^mites$/, 'mites'],
];

/** The unit the end of a field's name promises (`frontKg` is in kg), or nothing. */
export function unitOfField(field: string): string {
  const name =
    field
      .replace(/\[\d+\]$/, '')
      .split('.')
      .pop() ?? field;
  return UNITS.find(([end]) => end.test(name))?.[1] ?? '';
}
