import { epochDayOf, epochDayOfParts, isoDateOf } from '../units/index.ts';

/** Fields of a line: quotes are taken off (a doubled quote stands for one), blanks round a field too. */
export function fieldsOf(line: string, delimiter: string): string[] {
  if (!line.includes('"')) return line.split(delimiter).map((field) => field.trim());
  const fields: string[] = [];
  let field = '';
  let quoted = false;
  for (let i = 0; i < line.length; i++) {
    const c = line[i]!;
    if (c === '"') {
      if (quoted && line[i + 1] === '"') field += line[++i]!;
      else quoted = !quoted;
    } else if (c === delimiter && !quoted) {
      fields.push(field.trim());
      field = '';
    } else field += c;
  }
  fields.push(field.trim());
  return fields;
}

/** The delimiter that cuts a header into most fields. */
export function delimiterOf(header: string): string {
  return [',', ';', '\t'].reduce((best, one) => (fieldsOf(header, one).length > fieldsOf(header, best).length ? one : best));
}

/**
 * A number as files write it: `-12.3`, `+4`, with a comma where the fields are not cut by commas. Undefined: an empty field or one of
 * the words for nothing; NaN: no number.
 */
export function numberOf(field: string | undefined, delimiter: string): number | undefined {
  if (field === undefined || /^(|-|NA|NaN|null|M|missing)$/i.test(field)) return undefined;
  const text = delimiter === ',' ? field : field.replace(',', '.');
  return /^[+-]?(\d+\.?\d*|\.\d+)$/.test(text) ? Number(text) : Number.NaN;
}

/** Epoch day of eight digits, or null. */
export function dayOfDigits(text: string): number | null {
  const match = /^(\d{4})(\d{2})(\d{2})$/.exec(text);
  return match === null ? null : dayOfParts(Number(match[1]), Number(match[2]), Number(match[3]));
}

/** Epoch day of a date that exists, or null: 30 February is none, 29 February is one in a leap year. */
export function dayOfParts(year: number, month: number, day: number): number | null {
  if (!(year >= 1700 && year <= 2199 && month >= 1 && month <= 12 && day >= 1 && day <= 31)) return null;
  const epoch = epochDayOfParts(year, month, day);
  return isoDateOf(epoch) === `${year}-${String(month).padStart(2, '0')}-${String(day).padStart(2, '0')}` ? epoch : null;
}

export type DateOrder = 'day-first' | 'month-first';

/** How the dates of a column are written; `ask` where both orders fit every one of them. */
export function dateOrderOf(dates: readonly string[]): DateOrder | 'ask' {
  const parts = dates.flatMap((text) => {
    const match = /^(\d{1,2})[./-](\d{1,2})[./-]\d{4}/.exec(text);
    return match === null ? [] : [{ dotted: text.includes('.'), first: Number(match[1]), second: Number(match[2]) }];
  });
  if (parts.length === 0 || parts.some(({ dotted, first }) => dotted || first > 12)) return 'day-first';
  return parts.some(({ second }) => second > 12) ? 'month-first' : 'ask';
}

/** Epoch day of a date in a column: ISO with or without a time, eight digits, or numbers in an order; null: no date. */
export function dayOfText(text: string, order: DateOrder): number | null {
  const iso = /^(\d{4}-\d{2}-\d{2})(?:[T ].*)?$/.exec(text);
  if (iso !== null) return epochDayOf(iso[1]!);
  const yearFirst = /^(\d{4})[/.](\d{1,2})[/.](\d{1,2})$/.exec(text);
  if (yearFirst !== null) return dayOfParts(Number(yearFirst[1]), Number(yearFirst[2]), Number(yearFirst[3]));
  const other = /^(\d{1,2})[./-](\d{1,2})[./-](\d{4})(?:\s.*)?$/.exec(text);
  if (other === null) return dayOfDigits(text);
  const [a, b, year] = [Number(other[1]), Number(other[2]), Number(other[3])];
  return order === 'day-first' ? dayOfParts(year, b, a) : dayOfParts(year, a, b);
}
