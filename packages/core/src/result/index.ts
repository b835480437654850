/**
 * What people do wrong, as plain data. The wording lives in packages/words.
 * `field` is the dotted path of the input field, as the command line names it.
 */
export type BadInput =
  | { readonly kind: 'missing'; readonly field: string }
  /** Of several ways to say one thing none was taken; each way is the fields it needs. */
  | { readonly kind: 'missing-all'; readonly ways: readonly (readonly string[])[] }
  | { readonly kind: 'not-a-number'; readonly field: string; readonly value: string }
  | {
      readonly kind: 'out-of-range';
      readonly field: string;
      readonly value: number;
      readonly unit: string;
      readonly low: number;
      readonly high: number;
    }
  | { readonly kind: 'not-a-date'; readonly field: string; readonly value: string }
  | { readonly kind: 'date-order'; readonly field: string; readonly value: string; readonly notBefore: string; readonly notAfter?: string }
  | { readonly kind: 'unknown-choice'; readonly field: string; readonly value: string; readonly choices: readonly string[] }
  | {
      readonly kind: 'conflict';
      readonly fields: readonly string[];
      readonly why: string;
      /** What stood in the fields, where the figures say what is wrong. */
      readonly values?: readonly number[];
    }
  | { readonly kind: 'implausible'; readonly field: string; readonly value: number; readonly unit: string; readonly why: string };

export type Result<T, E = BadInput> = { readonly ok: true; readonly value: T } | { readonly ok: false; readonly error: E };

export function good<T>(value: T): { readonly ok: true; readonly value: T } {
  return { ok: true, value };
}

export function bad<E>(error: E): { readonly ok: false; readonly error: E } {
  return { ok: false, error };
}

/** A number inside [low, high], or the error that says what was allowed. NaN and infinities fail. */
export function inRange(field: string, value: unknown, range: { low: number; high: number; unit: string }): Result<number> {
  if (value === undefined || value === null) return bad({ kind: 'missing', field });
  if (typeof value !== 'number' || !Number.isFinite(value)) return bad({ kind: 'not-a-number', field, value: String(value) });
  if (!(value >= range.low && value <= range.high)) {
    return bad({ kind: 'out-of-range', field, value, unit: range.unit, low: range.low, high: range.high });
  }
  return good(value);
}

/** The same fault with the path of the part it was found in before its fields. */
export function under(path: string, error: BadInput): { readonly ok: false; readonly error: BadInput } {
  const at = (field: string) => `${path}.${field}`;
  if ('field' in error) return bad({ ...error, field: at(error.field) });
  if ('ways' in error) return bad({ ...error, ways: error.ways.map((way) => way.map(at)) });
  return bad({ ...error, fields: error.fields.map(at) });
}
