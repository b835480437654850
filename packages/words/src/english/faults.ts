import type { Why } from '@winterheft/core';
import type { Allowed, Fault, Wanted } from '../fault.ts';
import { unitOfField } from '../fault.ts';
import { listed, shortened } from '../text.ts';
import { conflicts, implausible } from './conflicts.ts';

const quoted = (value: string) => `"${shortened(value, 60)}"`;
const named = (field: string) => (field === '' ? 'the line' : shortened(field, 80));
const list = (items: readonly string[]) =>
  listed(
    items.map((item) => shortened(item, 40)),
    'and',
  );
const choice = (items: readonly string[]) =>
  listed(
    items.map((item) => shortened(item, 40)),
    'or',
  );

const WANTED: Record<Wanted, string> = {
  object: 'an object in braces { }',
  list: 'a list in brackets [ ]',
  text: 'text in quotes',
  'true or false': 'true or false',
  'whole number': 'a whole number',
  null: 'null',
  other: 'what the schema says (winterheft schema COMMAND)',
};

const FORMS: Readonly<Record<string, string>> = {
  line: 'one line of text without control characters',
  id: 'letters, digits, dot, dash and underscore, 60 at most, beginning with a letter or digit',
  key: 'letters, digits, dot, dash and underscore, 60 at most, beginning with a letter or digit',
  time: 'a time of day such as 14:30',
  zone: 'an offset from UTC such as -06:00',
  stamp: 'the stamp of a device clock, as this program writes it',
  'uuid-v7': 'a UUID of version 7, as this program writes it',
  digest: '8 to 128 hexadecimal digits',
  ratio: 'sugar to water with a colon, such as 2:1',
};
export const formCodes: readonly string[] = Object.keys(FORMS);
const form = (code: string) => (Object.hasOwn(FORMS, code) ? FORMS[code]! : code);

function withUnit(value: number | string, unit: string): string {
  return unit === '' ? `${value}` : `${value} ${unit}`;
}

/** `0 to 150 kg`, `0 kg or more`, or nothing where no limit is known. */
function span(low: number | undefined, high: number | undefined, unit: string): string {
  if (low !== undefined && high !== undefined) return low === high ? withUnit(low, unit) : withUnit(`${low} to ${high}`, unit);
  if (low !== undefined) return `${withUnit(low, unit)} or more`;
  if (high !== undefined) return `${withUnit(high, unit)} or less`;
  return '';
}

function number(field: string, value: string, allowed: Allowed): string {
  const range = span(allowed.low, allowed.high, unitOfField(field));
  if (/^\s*-?\d+,\d+\s*$/.test(value)) {
    return `${named(field)} is ${quoted(value)}; allowed: a number with a decimal point and no quotes, such as ${value.trim().replace(',', '.')}${range === '' ? '' : `, from ${range}`}`;
  }
  return `${named(field)} is ${quoted(value)}; allowed: a number${range === '' ? '' : ` from ${range}`}, without quotes`;
}

/** Fields that contradict each other, with their values where they are known, and what is allowed instead. */
function conflict(fault: Extract<Fault, { kind: 'conflict' }>, allowed: Allowed): string {
  const { fields, why } = fault;
  const values = fault.values?.map((value, i) => withUnit(value, unitOfField(fields[i] ?? ''))) ?? allowed.values ?? [];
  const told = fields.map((field, i) => (values[i] === undefined ? named(field) : `${named(field)} (${shortened(values[i], 40)})`));
  const subject = `${list(told)} cannot ${fields.length === 1 ? 'be so' : 'stand together'}`;
  return `${subject}; allowed: ${conflicts(why)}`;
}

/** None of several ways to say one thing: `a and b are missing; allowed: a, or b, or both`. */
function missingAll(ways: readonly (readonly string[])[]): string {
  const fields = [...new Set(ways.flat())];
  const told = ways.map((way) => (fields.length === 2 && way.length === 2 ? 'both' : list(way)));
  return `${list(fields)} are missing; allowed: ${told.join(', or ')}`;
}

/** Why a line of a journal was not read. */
export function whyUnread(why: Why): string {
  switch (why.kind) {
    case 'torn':
      return 'the last line is cut off in the middle';
    case 'not-json':
      return 'not JSON';
    case 'not-a-record':
      return faultSentence(why.error);
    case 'newer':
      return `written by a newer version (${why.version}; this one reads up to ${why.readUpTo})`;
    case 'unknown-kind':
      return `the kind "${shortened(why.name, 40)}" is not known here; it may come from a newer version`;
  }
}

/** One line that names the field, what was given and what is allowed. */
export function faultSentence(fault: Fault, allowed: Allowed = {}): string {
  switch (fault.kind) {
    case 'missing':
      return `${named(fault.field)} is missing; allowed: ${span(allowed.low, allowed.high, unitOfField(fault.field)) || 'it has to be given'}`;
    case 'missing-all':
      return missingAll(fault.ways);
    case 'not-a-number':
      return number(fault.field, fault.value, allowed);
    case 'out-of-range': {
      const unit = fault.unit || unitOfField(fault.field);
      const low = Number.isFinite(fault.low) ? fault.low : undefined;
      const high = Number.isFinite(fault.high) ? fault.high : undefined;
      return `${named(fault.field)} is ${withUnit(fault.value, unit)}; allowed: ${span(low, high, unit)}`;
    }
    case 'not-a-date':
      return `${named(fault.field)} is ${quoted(fault.value)}; allowed: a date of the calendar from 1900 to 2199, written like 2026-09-14`;
    case 'date-order':
      return `${named(fault.field)} is ${shortened(fault.value, 60)}; allowed: ${shortened(fault.notBefore, 60)} ${fault.notAfter === undefined ? 'or later' : `to ${shortened(fault.notAfter, 60)}`}`;
    case 'unknown-choice':
      return `${named(fault.field)} is ${quoted(fault.value)}; allowed: ${choice(fault.choices) || 'a name that winterheft weather --places lists'}`;
    case 'conflict':
      return conflict(fault, allowed);
    case 'implausible':
      return `${named(fault.field)} is ${withUnit(fault.value, fault.unit || unitOfField(fault.field))}; ${implausible(fault.why)}`;
    case 'unknown-field':
      return `${named(fault.field)} is not a field here; allowed: ${list(fault.known)}`;
    case 'wrong-type':
      return `${named(fault.field)} is ${shortened(fault.value, 60)}; allowed: ${WANTED[fault.allowed]}`;
    case 'wrong-length':
      return `${named(fault.field)} has ${fault.length} ${fault.unit}; allowed: ${span(fault.low, Number.isFinite(fault.high) ? fault.high : undefined, '')}`;
    case 'wrong-form':
      return `${named(fault.field)} is ${quoted(fault.value)}; allowed: ${form(fault.form)}`;
    case 'not-a-multiple':
      return `${named(fault.field)} is ${fault.value}; allowed: ${fault.step === 1 ? 'whole numbers' : `steps of ${fault.step}`}`;
    case 'too-deep':
      return `${named(fault.field)} is nested too deep; allowed: ${fault.deepest} levels`;
    case 'rule':
      return `${named(fault.field)} is ${shortened(fault.value, 60)}; allowed: ${shortened(fault.says, 300)}`;
    case 'not-json':
      return `${shortened(fault.name, 80)} is not JSON at line ${fault.line}, column ${fault.column}, near ${quoted(fault.near)}; allowed: one JSON object`;
    case 'no-input':
      return 'nothing to read; allowed: the name of a file, or - and the input on standard input';
    case 'not-a-journal':
      return `${shortened(fault.name, 80)} is not a journal: line ${fault.first.line} is not a record (${whyUnread(fault.first.why)})${fault.lines === 1 ? '' : `, nor is any other of its ${fault.lines} lines`}; allowed: one record a line, as this program writes it`;
    case 'empty':
      return `${shortened(fault.name, 80)} is empty; allowed: one JSON object, or for plan a journal`;
    case 'not-text':
      return `${shortened(fault.name, 80)} is not text; allowed: text in UTF-8`;
    case 'no-file':
      return `${quoted(fault.name)} does not exist; allowed: the name of a file that can be read, or - for standard input`;
    case 'directory':
      return `${quoted(fault.name)} is a folder; allowed: the name of a file that can be read, or - for standard input`;
    case 'unreadable':
      return `${quoted(fault.name)} cannot be read (${shortened(fault.code, 40)}); allowed: the name of a file that can be read, or - for standard input`;
    case 'too-big':
      return `${shortened(fault.name, 80)} is larger than ${fault.megabytes} MB; allowed: up to ${fault.megabytes} MB`;
    case 'option':
      return shortened(fault.says, 400);
  }
}
