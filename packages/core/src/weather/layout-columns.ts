import { bad, good, type Result } from '../result/index.ts';
import { type Element, RawDays } from './raw-days.ts';
import type { RawStation, StationFault, StationLayout, StationOptions, StationPlace } from './station-types.ts';
import { dateOrderOf, dayOfText, delimiterOf, fieldsOf, numberOf } from './table-text.ts';

/** A header may stand below a preamble of station data and legend; no known one is longer. */
const PREAMBLE_LINES = 40;

const DATE = /^(date|date\/time|mess_datum|datum|day|time|timestamp|valid|yyyymmdd|datetime|date_time|fecha|dato|pvm)\b/i;
const NAMES: readonly (readonly [Element, RegExp])[] = [
  ['max', /^(max|tmax|t_max|txk|tx|high|maximum|temp_max|temperature_max|temperature_2m_max)/i],
  ['min', /^(min|tmin|t_min|tnk|tn|low|minimum|temp_min|temperature_min|temperature_2m_min)/i],
  ['mean', /^(mean|tmean|t_mean|tavg|tmk|tg|avg|average|temp|temperature|tmed|mittel)/i],
];
/** Columns whose names begin like a temperature and are none. */
const OTHER = /(flag|quality|humid|wind|gust|soil|ground|dew|hour|time|precip|rain|snow|degree days|days|attributes)/i;

interface Columns {
  readonly at: number;
  readonly delimiter: string;
  readonly head: readonly string[];
  readonly date: number;
  readonly elements: ReadonlyMap<Element, number>;
}

function columnsOf(line: string, at: number): Columns | null {
  const delimiter = delimiterOf(line);
  const head = fieldsOf(line, delimiter);
  const date = head.findIndex((name) => DATE.test(name));
  const elements = new Map<Element, number>();
  head.forEach((name, column) => {
    if (column === date || OTHER.test(name)) return;
    const known = NAMES.find(([, pattern]) => pattern.test(name));
    if (known !== undefined && !elements.has(known[0])) elements.set(known[0], column);
  });
  const enough = elements.has('mean') || (elements.has('max') && elements.has('min'));
  return date >= 0 && enough ? { at, delimiter, head, date, elements } : null;
}

/** The unit a header names: `(°C)`, `[degF]`, `meanC`, `tmax_f`. A sign that did not survive its encoding is passed over. */
function unitOfHeader(name: string): 'C' | 'F' | null {
  const match = /(?:[([]\s*\S?\s*(?:deg(?:rees)?\s*)?|°\s*|_|deg\s*|(?<=[a-z]))([CF])\s*[)\]]?$/.exec(name) ?? /_([cf])$/.exec(name);
  const word = /celsius|centigrade/i.test(name) ? 'C' : /fahrenheit/i.test(name) ? 'F' : null;
  return word ?? (match === null ? null : (match[1]!.toUpperCase() as 'C' | 'F'));
}

function layoutOf({ head }: Columns): StationLayout {
  if (head[0]?.toUpperCase() === 'STATIONS_ID') return 'dwd-daily';
  return head.some((name) => /^(Data Quality|Climate ID)$/i.test(name)) || /^date\/time$/i.test(head[0] ?? '') ? 'canada-daily' : 'plain';
}

/**
 * A table with a row a day and names over its columns: Environment Canada (with or without a preamble), the German weather service,
 * and any other with a date and a mean, or a date, a minimum and a maximum.
 *
 * The unit is that of the names over the columns; a daily file of the German service is in degrees Celsius.
 */
export function readColumns(lines: readonly string[], options: StationOptions): Result<RawStation, StationFault> {
  const found = lines.slice(0, PREAMBLE_LINES).reduce<Columns | null>((known, line, at) => known ?? columnsOf(line, at), null);
  if (found === null) {
    const first = lines.find((line) => line.trim() !== '') ?? '';
    const head = fieldsOf(first, delimiterOf(first));
    return bad(head.length > 1 ? { kind: 'no-columns', columns: head.slice(0, 12) } : { kind: 'no-layout', firstLine: first.slice(0, 60) });
  }
  const layout = layoutOf(found);
  const { delimiter, head, date, elements } = found;
  const rows = lines.slice(found.at + 1).map((text, k) => ({ line: found.at + k + 2, fields: fieldsOf(text, delimiter), text }));
  const order = options.dateOrder ?? dateOrderOf(rows.map(({ fields }) => fields[date] ?? ''));
  if (order === 'ask') return bad({ kind: 'which-date-order', example: rows[0]?.fields[date] ?? '' });
  const raw = new RawDays();
  for (const { line, fields, text } of rows) {
    if (text.trim() === '') continue;
    const day = dayOfText(fields[date] ?? '', order);
    if (day === null) {
      raw.reject(line, 'not-a-date');
      continue;
    }
    if (fields.length <= Math.max(...elements.values())) {
      raw.reject(line, 'line-too-short');
      continue;
    }
    for (const [element, column] of elements) {
      const value = numberOf(fields[column], delimiter);
      raw.add(line, day, element, value !== undefined && value <= -999 ? undefined : value);
    }
  }
  const units = [...new Set([...elements.values()].map((column) => unitOfHeader(head[column]!)))];
  const named = units.length === 1 ? units[0]! : null;
  const unit = layout === 'dwd-daily' ? 'C' : named;
  return good({ layout, days: raw.days, rejected: raw.rejected, unit, place: placeOf(lines, found) });
}

/** Station data in columns of their own, or as `"Latitude","49.92"` in the preamble. */
function placeOf(lines: readonly string[], { at, delimiter, head }: Columns): StationPlace {
  const first = fieldsOf(lines[at + 1] ?? '', delimiter);
  const told = (pattern: RegExp): string | undefined => {
    const column = head.findIndex((name) => pattern.test(name));
    if (column >= 0) return first[column];
    const row = lines
      .slice(0, at)
      .map((line) => fieldsOf(line, delimiter))
      .find(([name]) => pattern.test(name ?? ''));
    return row?.[1];
  };
  const figure = (pattern: RegExp) => {
    const value = numberOf(told(pattern), delimiter);
    return value === undefined || Number.isNaN(value) ? null : value;
  };
  return {
    name: told(/^(station name|stations_id|name|station)$/i) ?? null,
    latDeg: figure(/^latitude/i),
    lonDeg: figure(/^longitude/i),
    elevM: figure(/^elevation/i),
  };
}
