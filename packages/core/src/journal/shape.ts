import type { BadInput } from '../result/index.ts';
import { epochDayOf } from '../units/index.ts';

/** What is wrong with one field of a record: which field, what stood there, what is allowed. Worded only in the shells. */
export type FieldError =
  | BadInput
  | {
      readonly kind: 'wrong-type';
      readonly field: string;
      readonly value: string;
      readonly allowed: 'text' | 'list' | 'object' | 'true or false';
    }
  | { readonly kind: 'wrong-form'; readonly field: string; readonly value: string; readonly form: string }
  | {
      readonly kind: 'wrong-length';
      readonly field: string;
      readonly length: number;
      readonly low: number;
      readonly high: number;
      readonly unit: 'characters' | 'entries';
    }
  | { readonly kind: 'not-a-multiple'; readonly field: string; readonly value: number; readonly step: number }
  | { readonly kind: 'unknown-field'; readonly field: string; readonly known: readonly string[] }
  | { readonly kind: 'too-deep'; readonly field: string; readonly deepest: number };

/**
 * The form of a value and, at the same time, its type. `check` gives null where the value fits; it never changes the value.
 * Hand-written because a field error must name field, value and what is allowed, and because the app may not build code from text at run time.
 */
export interface Shape<T> {
  readonly check: (value: unknown, field: string) => FieldError | null;
  /** Carries the type only; never set. */
  readonly type?: T;
}

export type Of<S> = S extends Shape<infer T> ? T : never;
type Shapes = Readonly<Record<string, Shape<unknown>>>;
type ObjectOf<R extends Shapes, O extends Shapes> = { readonly [K in keyof R]: Of<R[K]> } & { readonly [K in keyof O]?: Of<O[K]> };

/** Nesting a free JSON value may have; deeper text could exhaust the stack when it is written back. */
const DEEPEST = 64;

/** A value shortened for an error, so that a monstrous one does not flood the screen. */
function shown(value: unknown): string {
  const text =
    typeof value === 'string'
      ? value
      : Array.isArray(value)
        ? 'a list'
        : value !== null && typeof value === 'object'
          ? 'an object'
          : String(value);
  return text.length > 40 ? `${text.slice(0, 39)}…` : text;
}

export function number(low: number, high: number, unit: string): Shape<number> {
  return {
    check(value, field) {
      if (value === undefined || value === null) return { kind: 'missing', field };
      if (typeof value !== 'number' || !Number.isFinite(value)) return { kind: 'not-a-number', field, value: shown(value) };
      return value >= low && value <= high ? null : { kind: 'out-of-range', field, value, unit, low, high };
    },
  };
}

/** A number in steps, for example whole bees or half frames. `step` is a power of two or 1, so that the test is exact. */
export function stepped(step: number, low: number, high: number, unit: string): Shape<number> {
  const range = number(low, high, unit);
  return {
    check(value, field) {
      const error = range.check(value, field);
      if (error) return error;
      return Number.isInteger((value as number) / step) ? null : { kind: 'not-a-multiple', field, value: value as number, step };
    },
  };
}

/** Text of one line: 1 to `longest` characters, no control characters. */
export function line(longest: number): Shape<string> {
  return {
    check(value, field) {
      if (value === undefined || value === null) return { kind: 'missing', field };
      if (typeof value !== 'string') return { kind: 'wrong-type', field, value: shown(value), allowed: 'text' };
      if (!(value.length >= 1 && value.length <= longest)) {
        return { kind: 'wrong-length', field, length: value.length, low: 1, high: longest, unit: 'characters' };
      }
      // Control characters and lone halves of a surrogate pair: both would not survive every way of writing the file.
      return /[\p{Cc}\p{Cs}]/u.test(value) ? { kind: 'wrong-form', field, value: shown(value), form: 'line' } : null;
    },
  };
}

/** Text that fits a pattern; `form` is the code the shells word. */
export function pattern(form: string, expression: RegExp): Shape<string> {
  return {
    check(value, field) {
      if (value === undefined || value === null) return { kind: 'missing', field };
      if (typeof value !== 'string') return { kind: 'wrong-type', field, value: shown(value), allowed: 'text' };
      return expression.test(value) ? null : { kind: 'wrong-form', field, value: shown(value), form };
    },
  };
}

/** A calendar date that exists, 1900 to 2199. */
export const isoDate: Shape<string> = {
  check(value, field) {
    if (value === undefined || value === null) return { kind: 'missing', field };
    return typeof value === 'string' && epochDayOf(value) !== null ? null : { kind: 'not-a-date', field, value: shown(value) };
  },
};

export const flag: Shape<boolean> = {
  check(value, field) {
    if (value === undefined || value === null) return { kind: 'missing', field };
    return typeof value === 'boolean' ? null : { kind: 'wrong-type', field, value: shown(value), allowed: 'true or false' };
  },
};

export function choice<const C extends readonly string[]>(choices: C): Shape<C[number]> {
  return {
    check(value, field) {
      if (value === undefined || value === null) return { kind: 'missing', field };
      return choices.includes(value as string) ? null : { kind: 'unknown-choice', field, value: shown(value), choices };
    },
  };
}

export function list<T>(entry: Shape<T>, low: number, high: number): Shape<readonly T[]> {
  return {
    check(value, field) {
      if (value === undefined || value === null) return { kind: 'missing', field };
      if (!Array.isArray(value)) return { kind: 'wrong-type', field, value: shown(value), allowed: 'list' };
      if (!(value.length >= low && value.length <= high))
        return { kind: 'wrong-length', field, length: value.length, low, high, unit: 'entries' };
      for (let i = 0; i < value.length; i++) {
        const error = entry.check(value[i], `${field}.${i}`);
        if (error) return error;
      }
      return null;
    },
  };
}

/** An object with exactly these fields: one it does not know may change what the others mean, so nothing is read by half. */
export function object<R extends Shapes, O extends Shapes = Record<never, never>>(required: R, optional?: O): Shape<ObjectOf<R, O>> {
  const optionalShapes: Shapes = optional ?? {};
  const known = [...Object.keys(required), ...Object.keys(optionalShapes)];
  const knownSet = new Set(known);
  const requiredEntries = Object.entries(required);
  const optionalEntries = Object.entries(optionalShapes);
  return {
    check(value, field) {
      const notObject = checkObject(value, field);
      if (notObject) return notObject;
      const body = value as Record<string, unknown>;
      for (const [key, shape] of requiredEntries) {
        const error = shape.check(Object.hasOwn(body, key) ? body[key] : undefined, join(field, key));
        if (error) return error;
      }
      for (const [key, shape] of optionalEntries) {
        if (!Object.hasOwn(body, key) || body[key] === undefined) continue;
        const error = shape.check(body[key], join(field, key));
        if (error) return error;
      }
      for (const key of Object.keys(body)) {
        if (!knownSet.has(key)) return { kind: 'unknown-field', field: join(field, shown(key)), known };
      }
      return null;
    },
  };
}

/** The shape, and a rule over its fields. */
export function where<T>(shape: Shape<T>, rule: (value: T, field: string) => FieldError | null): Shape<T> {
  return { check: (value, field) => shape.check(value, field) ?? rule(value as T, field) };
}

/** The first of the shapes whose telling field is there. */
export function oneOf<T>(shapeByField: Readonly<Record<string, Shape<T>>>): Shape<T> {
  const fields = Object.keys(shapeByField);
  return {
    check(value, field) {
      const notObject = checkObject(value, field);
      if (notObject) return notObject;
      for (const key of fields) {
        if (Object.hasOwn(value as object, key)) return (shapeByField[key] as Shape<T>).check(value, field);
      }
      return {
        kind: 'unknown-choice',
        field,
        value: Object.keys(value as object)
          .slice(0, 3)
          .map(shown)
          .join(', '),
        choices: fields,
      };
    },
  };
}

/** A table of figures by name. */
export function figures(low: number, high: number, unit: string): Shape<Readonly<Record<string, number>>> {
  const figure = number(low, high, unit);
  return {
    check(value, field) {
      const notObject = checkObject(value, field);
      if (notObject) return notObject;
      const keys = Object.keys(value as object);
      if (keys.length > 50) return { kind: 'wrong-length', field, length: keys.length, low: 0, high: 50, unit: 'entries' };
      for (const key of keys) {
        if (!/^[A-Za-z][0-9A-Za-z-]{0,39}$/.test(key))
          return { kind: 'wrong-form', field: join(field, shown(key)), value: shown(key), form: 'id' };
        const error = figure.check((value as Record<string, unknown>)[key], join(field, key));
        if (error) return error;
      }
      return null;
    },
  };
}

/** Any JSON value that is not absent and not nested beyond what can be written back. */
export const anyJson: Shape<unknown> = {
  check(value, field) {
    if (value === undefined) return { kind: 'missing', field };
    return isDeeper(value, DEEPEST) ? { kind: 'too-deep', field, deepest: DEEPEST } : null;
  },
};

/** Any JSON object, otherwise as `anyJson`. */
export const anyObject: Shape<Readonly<Record<string, unknown>>> = {
  check: (value, field) => checkObject(value, field) ?? anyJson.check(value, field),
};

function checkObject(value: unknown, field: string): FieldError | null {
  if (value === undefined || value === null) return { kind: 'missing', field };
  return typeof value === 'object' && !Array.isArray(value) ? null : { kind: 'wrong-type', field, value: shown(value), allowed: 'object' };
}

function join(field: string, key: string): string {
  return field === '' ? key : `${field}.${key}`;
}

function isDeeper(value: unknown, levels: number): boolean {
  if (value === null || typeof value !== 'object') return false;
  return levels === 0 || Object.values(value).some((inner) => isDeeper(inner, levels - 1));
}
