/**
 * A number as people type it: one decimal mark, point or comma, a minus in front, no grouping.
 *
 * returns     the number; null for an empty text; NaN where it is none
 */
export function typedNumber(text: string): number | null {
  const plain = text.trim().replace('−', '-').replace(',', '.');
  if (plain === '') return null;
  return /^[+-]?(\d+\.?\d*|\.\d+)$/.test(plain) ? Number(plain) : Number.NaN;
}
