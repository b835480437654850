/** A cell that a spreadsheet would run as a formula when it begins so. */
const FORMULA = /^[\s\u00a0\ufeff]*[=+\-@\t\r]/;
const PLAIN_NUMBER = /^-?\d+(?:\.\d+)?(?:e[+-]?\d+)?$/i;

/**
 * One cell of a CSV file.
 *
 * Text that a spreadsheet would take for a formula gets a single quote before it; figures of ours stay figures.
 *
 * source    RFC 4180 for quoting
 * checked   kit.test.ts
 */
export function csvCell(value: string | number): string {
  if (typeof value === 'number') return Number.isFinite(value) ? String(value) : '';
  const safe = FORMULA.test(value) && !PLAIN_NUMBER.test(value) ? `'${value}` : value;
  return /[",\r\n]/.test(safe) || safe !== safe.trim() ? `"${safe.replaceAll('"', '""')}"` : safe;
}

/** Rows as CSV, lines ended by CR LF. */
export function csvOf(rows: readonly (readonly (string | number)[])[]): string {
  return rows.map((row) => `${row.map(csvCell).join(',')}\r\n`).join('');
}
