import { type Element, RawDays } from './raw-days.ts';
import type { RawStation, StationPlace } from './station-types.ts';
import { dayOfDigits, dayOfParts, fieldsOf, numberOf } from './table-text.ts';

const NOWHERE: StationPlace = { name: null, latDeg: null, lonDeg: null, elevM: null };

const ELEMENTS: Readonly<Record<string, Element>> = { TMAX: 'max', TMIN: 'min', TAVG: 'mean' };

export function isGhcnDly(lines: readonly string[]): boolean {
  return lines.slice(0, 5).some((line) => /^[A-Z0-9_-]{11}\d{6}[A-Z0-9]{4}[ -]*\d/.test(line));
}

/** Fixed width, a month and element a line: 31 times value, three flags. Tenths of a degree; -9999 missing; a quality flag is a failed check. */
export function readGhcnDly(lines: readonly string[]): RawStation {
  const raw = new RawDays();
  lines.forEach((text, at) => {
    const element = ELEMENTS[text.slice(17, 21)];
    if (element === undefined) return;
    const [year, month] = [Number(text.slice(11, 15)), Number(text.slice(15, 17))];
    if (dayOfParts(year, month, 1) === null) {
      raw.reject(at + 1, 'not-a-date');
      return;
    }
    for (let d = 0; d < 31; d++) {
      const cell = text.slice(21 + 8 * d, 29 + 8 * d);
      const day = dayOfParts(year, month, d + 1);
      if (cell.trim() === '' || day === null) continue;
      const value = numberOf(cell.slice(0, 5).trim(), ',');
      if (value === -9999) continue;
      if (cell.slice(6, 7).trim() !== '') raw.reject(at + 1, 'quality-flag');
      else raw.add(at + 1, day, element, value);
    }
  });
  const id = lines[0]?.slice(0, 11) ?? null;
  return { layout: 'ghcn-dly', days: raw.days, rejected: raw.rejected, unit: 'tenths-C', place: { ...NOWHERE, name: id } };
}

export function isGhcnLong(lines: readonly string[]): boolean {
  return /^"?[A-Z0-9_-]{11}"?,"?\d{8}"?,"?[A-Z0-9]{4}"?,/.test(lines[0] ?? '');
}

/** `id,yyyymmdd,element,value,m,q,s,time` without a header. Tenths of a degree. */
export function readGhcnLong(lines: readonly string[]): RawStation {
  const raw = new RawDays();
  lines.forEach((text, at) => {
    const [, date, name, value, , quality] = fieldsOf(text, ',');
    const element = ELEMENTS[name ?? ''];
    if (text.trim() === '' || element === undefined) return;
    const day = dayOfDigits(date ?? '');
    if (day === null) {
      raw.reject(at + 1, 'not-a-date');
      return;
    }
    if (quality !== undefined && quality !== '') {
      raw.reject(at + 1, 'quality-flag');
      return;
    }
    const read = numberOf(value, ',');
    raw.add(at + 1, day, element, read === -9999 ? undefined : read);
  });
  const name = fieldsOf(lines[0] ?? '', ',')[0] ?? null;
  return { layout: 'ghcn-csv', days: raw.days, rejected: raw.rejected, unit: 'tenths-C', place: { ...NOWHERE, name } };
}

export function isNoaaWide(lines: readonly string[]): boolean {
  const head = fieldsOf(lines[0] ?? '', ',').map((field) => field.toUpperCase());
  return head.includes('STATION') && head.includes('DATE') && head.some((field) => ELEMENTS[field] !== undefined);
}

/**
 * A row a day with `STATION`, `DATE` and elements by name: the file of one station (tenths of a degree, quality in `..._ATTRIBUTES`) or an
 * export of daily summaries (whole degrees of a unit no column names). No thermometer in air has shown more than 58 °C or 135 °F, so
 * a larger figure tells tenths.
 *
 * Where several stations stand in one file only the first is read; rows of others are another place.
 */
export function readNoaaWide(lines: readonly string[]): RawStation {
  const raw = new RawDays();
  const head = fieldsOf(lines[0] ?? '', ',').map((field) => field.toUpperCase());
  const column = (name: string) => head.indexOf(name);
  const first = fieldsOf(lines[1] ?? '', ',');
  const station = first[column('STATION')];
  let largest = 0;
  lines.slice(1).forEach((text, k) => {
    const line = k + 2;
    if (text.trim() === '') return;
    const fields = fieldsOf(text, ',');
    if (fields[column('STATION')] !== station) return;
    const day = dayOfIsoOrDigits(fields[column('DATE')] ?? '');
    if (day === null) {
      raw.reject(line, 'not-a-date');
      return;
    }
    for (const [name, element] of Object.entries(ELEMENTS)) {
      if (column(name) < 0) continue;
      const quality = fields[column(`${name}_ATTRIBUTES`)]?.split(',')[1] ?? '';
      const value = numberOf(fields[column(name)], ',');
      if (value === undefined || value === -9999 || value === 9999) continue;
      if (quality.trim() !== '') raw.reject(line, 'quality-flag');
      else raw.add(line, day, element, value);
      largest = Math.max(largest, Math.abs(value));
    }
  });
  const tenths = largest > 135;
  const placed = (name: string) => numberOf(first[column(name)], ',') ?? null;
  const place = {
    name: first[column('NAME')] ?? station ?? null,
    latDeg: placed('LATITUDE'),
    lonDeg: placed('LONGITUDE'),
    elevM: placed('ELEVATION'),
  };
  return {
    layout: tenths ? 'ghcn-csv' : 'noaa-summaries',
    days: raw.days,
    rejected: raw.rejected,
    unit: tenths ? 'tenths-C' : null,
    place,
  };
}

function dayOfIsoOrDigits(text: string): number | null {
  return dayOfDigits(text.replace(/^(\d{4})-(\d{2})-(\d{2}).*$/, '$1$2$3'));
}
