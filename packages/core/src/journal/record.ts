import { type At, at, compareText, minuteOf } from './at.ts';
import { canonicalText } from './canonical.ts';
import { id, shortLine } from './fields.ts';
import { type Bodies, bodyShapes, isKind, type Kind, recordId } from './kinds.ts';
import { type FieldError, pattern } from './shape.ts';
import { STAMP } from './stamp.ts';

/** One thing that happened. Never edited: `correct` replaces the body of one, `strike` withdraws one. */
export interface RecordOf<K extends Kind> {
  /** UUID version 7. */
  readonly id: string;
  /** The yard it happened in, or `*` where it belongs to the whole holding. */
  readonly yard: string;
  readonly kind: K;
  readonly at: At;
  /** Who wrote it. */
  readonly by: string;
  /** Hybrid logical clock stamp of the writing device. */
  readonly seen: string;
  readonly body: Bodies[K];
}

export type JournalRecord = { [K in Kind]: RecordOf<K> }[Kind];

/** Why a line was not read. `torn`: the last line, cut off in the middle. */
export type Why =
  | { readonly kind: 'torn' }
  | { readonly kind: 'not-json' }
  | { readonly kind: 'not-a-record'; readonly error: FieldError }
  | { readonly kind: 'newer'; readonly version: number; readonly readUpTo: number }
  | { readonly kind: 'unknown-kind'; readonly name: string };

const stamp = pattern('stamp', STAMP);
const FIELDS = ['id', 'yard', 'kind', 'at', 'by', 'seen', 'body', 'v'];
const FIELD_SET = new Set(FIELDS);

/** The record in a parsed line of the current version, or why it is none. The bodies are checked, never changed. */
export function recordOf(raw: unknown): { readonly ok: true; readonly record: JournalRecord } | { readonly ok: false; readonly why: Why } {
  const fault = (error: FieldError) => ({ ok: false, why: { kind: 'not-a-record', error } }) as const;
  if (typeof raw !== 'object' || raw === null || Array.isArray(raw)) {
    return fault({ kind: 'wrong-type', field: '', value: String(raw).slice(0, 40), allowed: 'object' });
  }
  const fields = raw as Record<string, unknown>;
  const own = (name: string) => (Object.hasOwn(fields, name) ? fields[name] : undefined);
  const kind = own('kind');
  if (typeof kind === 'string' && !isKind(kind)) return { ok: false, why: { kind: 'unknown-kind', name: kind.slice(0, 40) } };
  if (!isKind(kind)) return fault({ kind: 'missing', field: 'kind' });
  const error =
    recordId.check(own('id'), 'id') ??
    (own('yard') === '*' ? null : id.check(own('yard'), 'yard')) ??
    at.check(own('at'), 'at') ??
    shortLine.check(own('by'), 'by') ??
    stamp.check(own('seen'), 'seen') ??
    bodyShapes[kind].check(own('body'), 'body');
  if (error) return fault(error);
  for (const name of Object.keys(fields)) {
    if (!FIELD_SET.has(name)) return fault({ kind: 'unknown-field', field: name.slice(0, 40), known: FIELDS });
  }
  const record = {
    id: fields['id'],
    yard: fields['yard'],
    kind,
    at: fields['at'],
    by: fields['by'],
    seen: fields['seen'],
    body: fields['body'],
  };
  return { ok: true, record: record as unknown as JournalRecord };
}

/** The line a record is written as, without its line end. Records of version 1 carry no `v`. */
export function lineOf(record: JournalRecord): string {
  const { id: recordName, yard, kind, at: when, by, seen, body } = record;
  return `{"id":${JSON.stringify(recordName)},"yard":${JSON.stringify(yard)},"kind":${JSON.stringify(kind)},"at":${canonicalText(when)},"by":${JSON.stringify(by)},"seen":${JSON.stringify(seen)},"body":${canonicalText(body)}}`;
}

/** Records in the order of what happened: by instant, then by stamp, then by id. Total, and the same on every device. */
export function inOrder<R extends JournalRecord>(records: readonly R[]): R[] {
  const dated = records.map((record) => ({ record, minute: minuteOf(record.at) }));
  dated.sort((a, b) => a.minute - b.minute || compareText(a.record.seen, b.record.seen) || compareText(a.record.id, b.record.id));
  return dated.map(({ record }) => record);
}
