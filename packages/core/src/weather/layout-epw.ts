import { RawDays } from './raw-days.ts';
import type { RawStation } from './station-types.ts';
import { dayOfParts, fieldsOf, numberOf } from './table-text.ts';

/** A typical year is written into this common year: its own months come from different ones. */
const TYPICAL_YEAR = 2001;
const DRY_BULB = 6;
const HEADER_LINES = 8;
/** Fewer hours than this make no daily mean. */
const LEAST_HOURS = 20;

export function isEpw(lines: readonly string[]): boolean {
  return /^LOCATION,/.test(lines[0] ?? '');
}

/** Eight header lines, then a line an hour; 99.9 and above is missing. Each month comes from another year. */
export function readEpw(lines: readonly string[]): RawStation {
  const raw = new RawDays();
  const hours = new Map<number, { readonly line: number; sum: number; n: number }>();
  lines.slice(HEADER_LINES).forEach((text, k) => {
    const line = HEADER_LINES + k + 1;
    if (text.trim() === '') return;
    const fields = fieldsOf(text, ',');
    if (fields.length <= DRY_BULB) {
      raw.reject(line, 'line-too-short');
      return;
    }
    const day = dayOfParts(TYPICAL_YEAR, Number(fields[1]), Number(fields[2]));
    if (day === null) {
      raw.reject(line, 'not-a-date');
      return;
    }
    const value = numberOf(fields[DRY_BULB], ',');
    if (value === undefined || value >= 99.9) return;
    if (Number.isNaN(value)) {
      raw.reject(line, 'not-a-number');
      return;
    }
    const of = hours.get(day) ?? { line, sum: 0, n: 0 };
    hours.set(day, { ...of, sum: of.sum + value, n: of.n + 1 });
  });
  for (const [day, { line, sum, n }] of hours) if (n >= LEAST_HOURS) raw.add(line, day, 'mean', sum / n);
  const [, city, , , , , latDeg, lonDeg, , elevM] = fieldsOf(lines[0] ?? '', ',');
  const figure = (text: string | undefined) => {
    const value = numberOf(text, ',');
    return value === undefined || Number.isNaN(value) ? null : value;
  };
  const place = { name: city ?? null, latDeg: figure(latDeg), lonDeg: figure(lonDeg), elevM: figure(elevM) };
  return { layout: 'epw', days: raw.days, rejected: raw.rejected, unit: 'C', place };
}
