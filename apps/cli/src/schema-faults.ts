import { bad, good, type Result } from '@winterheft/core';
import { type Allowed, type Fault, listed, type Wanted } from '@winterheft/words';
import * as z from 'zod';

/** A fault with what the schema allows at that place. */
export interface SchemaFault {
  readonly fault: Fault;
  readonly allowed: Allowed;
}

type Issue = z.core.$ZodIssue;
type Path = readonly PropertyKey[];
interface JsonSchema {
  readonly [key: string]: unknown;
}

/** `colonies[3].hasKg` */
function fieldName(path: Path): string {
  const name = path.reduce<string>(
    (text, step) => (typeof step === 'number' ? `${text}[${step}]` : text === '' ? String(step) : `${text}.${String(step)}`),
    '',
  );
  return name === '' ? 'the input' : name;
}

function valueAt(input: unknown, path: Path): unknown {
  let value = input;
  for (const step of path) {
    if (typeof value !== 'object' || value === null || !Object.hasOwn(value, step)) return undefined;
    value = (value as Record<PropertyKey, unknown>)[step];
  }
  return value;
}

/** A value as a person would recognise it: text as it stands, lists and objects by their kind and size. */
function shown(value: unknown): string {
  if (typeof value === 'string') return value;
  if (Array.isArray(value)) return `a list of ${value.length}`;
  if (typeof value === 'object' && value !== null) return `an object of ${listed(Object.keys(value).slice(0, 4), 'and') || 'nothing'}`;
  return String(value);
}

function quotedIfText(value: unknown): string {
  return typeof value === 'string' ? `"${value}"` : shown(value);
}

/** The numeric limits the JSON Schema names at a path; the first of several alternatives that names any. */
function limitsAt(schema: JsonSchema | undefined, path: Path): Allowed {
  if (schema === undefined) return {};
  const alternatives = (schema['anyOf'] ?? schema['oneOf']) as readonly JsonSchema[] | undefined;
  if (alternatives !== undefined) {
    for (const alternative of alternatives) {
      const limits = limitsAt(alternative, path);
      if (limits.low !== undefined || limits.high !== undefined) return limits;
    }
    return {};
  }
  const [step, ...rest] = path;
  if (step === undefined) {
    const low = schema['minimum'] ?? schema['exclusiveMinimum'];
    const high = schema['maximum'] ?? schema['exclusiveMaximum'];
    return {
      ...(typeof low === 'number' && low > Number.MIN_SAFE_INTEGER ? { low } : {}),
      ...(typeof high === 'number' && high < Number.MAX_SAFE_INTEGER ? { high } : {}),
    };
  }
  if (typeof step === 'number') return limitsAt(schema['items'] as JsonSchema | undefined, rest);
  const properties = schema['properties'] as Record<string, JsonSchema> | undefined;
  const own = properties !== undefined && Object.hasOwn(properties, step) ? properties[String(step)] : undefined;
  return limitsAt(own ?? (schema['additionalProperties'] as JsonSchema | undefined), rest);
}

/** The field names the JSON Schema knows at a path. */
function fieldsAt(schema: JsonSchema | undefined, path: Path): readonly string[] {
  if (schema === undefined) return [];
  const alternatives = (schema['anyOf'] ?? schema['oneOf']) as readonly JsonSchema[] | undefined;
  if (alternatives !== undefined) return [...new Set(alternatives.flatMap((alternative) => fieldsAt(alternative, path)))];
  const [step, ...rest] = path;
  const properties = schema['properties'] as Record<string, JsonSchema> | undefined;
  if (step === undefined) return Object.keys(properties ?? {});
  if (typeof step === 'number') return fieldsAt(schema['items'] as JsonSchema | undefined, rest);
  return fieldsAt(properties?.[String(step)] ?? (schema['additionalProperties'] as JsonSchema | undefined), rest);
}

const WANTED: Readonly<Record<string, Wanted>> = {
  object: 'object',
  record: 'object',
  array: 'list',
  tuple: 'list',
  string: 'text',
  boolean: 'true or false',
  null: 'null',
  int: 'whole number',
};

function faultOf(issue: Issue, input: unknown, schema: JsonSchema): Fault {
  const field = fieldName(issue.path);
  const value = valueAt(input, issue.path);
  switch (issue.code) {
    case 'invalid_type':
      if (value === undefined) return { kind: 'missing', field };
      if (issue.expected === 'number') return { kind: 'not-a-number', field, value: shown(value) };
      return { kind: 'wrong-type', field, value: quotedIfText(value), allowed: WANTED[issue.expected] ?? 'other' };
    case 'too_small':
    case 'too_big': {
      const limits = limitsAt(schema, issue.path);
      const low = limits.low ?? (issue.code === 'too_small' ? Number(issue.minimum) : Number.NEGATIVE_INFINITY);
      const high = limits.high ?? (issue.code === 'too_big' ? Number(issue.maximum) : Number.POSITIVE_INFINITY);
      if (typeof value === 'number') return { kind: 'out-of-range', field, value, unit: '', low, high };
      if (Array.isArray(value))
        return { kind: 'wrong-length', field, length: value.length, low: Number.isFinite(low) ? low : 0, high, unit: 'entries' };
      const most = issue.code === 'too_big' ? `text of at most ${issue.maximum} letters` : `text of at least ${issue.minimum} letters`;
      return { kind: 'wrong-form', field, value: shown(value), form: most };
    }
    case 'unrecognized_keys': {
      const key = issue.keys[0] ?? '';
      return { kind: 'unknown-field', field: fieldName([...issue.path, key]), known: fieldsAt(schema, issue.path) };
    }
    case 'invalid_value':
      if (value === undefined) return { kind: 'missing', field };
      return { kind: 'unknown-choice', field, value: shown(value), choices: issue.values.map(String) };
    case 'invalid_format':
      if (issue.format === 'date' || (issue.format === 'regex' && issue.message === 'date'))
        return { kind: 'not-a-date', field, value: shown(value) };
      return {
        kind: 'wrong-form',
        field,
        value: shown(value),
        form: issue.message.startsWith('Invalid') ? String(issue.path.at(-1)) : issue.message,
      };
    case 'not_multiple_of':
      return { kind: 'wrong-type', field, value: shown(value), allowed: 'whole number' };
    case 'invalid_union':
      return unionFault(issue, input, schema);
    case 'custom':
      return { kind: 'rule', field, value: quotedIfText(value), says: issue.message };
    default:
      return { kind: 'wrong-form', field, value: shown(value), form: issue.message };
  }
}

/** Of several alternatives the one that got furthest tells the most. */
function unionFault(issue: Extract<Issue, { code: 'invalid_union' }>, input: unknown, schema: JsonSchema): Fault {
  const deepest = issue.errors
    .filter((errors) => errors.length > 0)
    .sort((a, b) => a.length - b.length || (b[0]?.path.length ?? 0) - (a[0]?.path.length ?? 0))[0]?.[0];
  const field = fieldName(issue.path);
  const value = valueAt(input, issue.path);
  if (value === undefined) return { kind: 'missing', field };
  if (deepest === undefined) return { kind: 'wrong-type', field, value: quotedIfText(value), allowed: 'other' };
  return faultOf({ ...deepest, path: [...issue.path, ...deepest.path] } as Issue, input, schema);
}

/** The input as the schema gives it back (defaults filled in), or the first fault as data. */
export function checked<T extends z.ZodType>(schema: T, input: unknown): Result<z.output<T>, SchemaFault> {
  if (typeof input !== 'object' || input === null || Array.isArray(input)) {
    return bad({ fault: { kind: 'wrong-type', field: 'the input', value: quotedIfText(input), allowed: 'object' }, allowed: {} });
  }
  const parsed = schema.safeParse(input);
  if (parsed.success) return good(parsed.data);
  const json = jsonSchemaOf(schema);
  const issue = parsed.error.issues[0]!;
  const fault = faultOf(issue, input, json);
  return bad({ fault, allowed: limitsAt(json, issue.path) });
}

/** A fault the core found, with what the schema and the input say about its fields. */
export function explained(fault: Fault, schema: z.ZodType, input: unknown): SchemaFault {
  if (fault.kind === 'conflict') {
    const values = fault.fields
      .map((field) => valueAt(input, pathOf(field)))
      .map((value) => (value === undefined ? undefined : quotedIfText(value)));
    return { fault, allowed: { values } };
  }
  if (fault.kind !== 'missing' && fault.kind !== 'not-a-number') return { fault, allowed: {} };
  return { fault, allowed: limitsAt(jsonSchemaOf(schema), pathOf(fault.field)) };
}

/** `colonies[3].hasKg` and `colonies.3.hasKg` as a path. */
function pathOf(field: string): Path {
  return field.split(/[.[\]]+/).flatMap((step) => (step === '' ? [] : [/^\d+$/.test(step) ? Number(step) : step]));
}

function jsonSchemaOf(schema: z.ZodType): JsonSchema {
  return z.toJSONSchema(schema, { io: 'input', unrepresentable: 'any' }) as JsonSchema;
}
