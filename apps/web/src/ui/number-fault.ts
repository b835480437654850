import { words } from '../app/words.ts';
import { typedNumber } from './typed-number.ts';

export interface Allowed {
  readonly low: number;
  readonly high: number;
  readonly unit?: string;
  readonly whole?: boolean;
}

/** What is wrong with a typed number, as a sentence with what is allowed; null where it fits. An empty text is not yet wrong. */
export function numberFault(text: string, { low, high, unit = '', whole = false }: Allowed): string | null {
  const value = typedNumber(text);
  if (value === null) return null;
  if (Number.isNaN(value)) return words.begin.notNumber(text);
  const withUnit = (limit: number) => `${String(limit).replace('-', '−')}${unit === '' ? '' : ` ${unit}`}`;
  const fits = value >= low && value <= high && (!whole || Number.isInteger(value));
  return fits ? null : words.begin.between(withUnit(low), withUnit(high));
}
