import { kgToLb, lbToKg } from '@winterheft/core';
import type { Units } from '@winterheft/words';
import { typedNumber } from '../ui/typed-number.ts';

type Digit = '0' | '1' | '2' | '3' | '4' | '5' | '6' | '7' | '8' | '9';
export type PadKey = Digit | 'mark' | 'delete';

const MOST_DIGITS = 4;
/** A key that comes twice within this is one press of a stiff glove [ms]. */
const BOUNCE_MS = 80;

const digitsIn = (text: string) => text.replace('.', '').length;

/**
 * The text of a reading after one more key, with `.` as its mark.
 *
 * No leading zeros, one mark at most, four digits at most: a key that would break this changes nothing.
 */
export function textAfter(text: string, key: PadKey): string {
  if (key === 'delete') return text === '0.' ? '' : text.slice(0, -1);
  if (key === 'mark') return text.includes('.') || digitsIn(text) >= MOST_DIGITS ? text : `${text === '' ? '0' : text}.`;
  if (text === '0') return key;
  return digitsIn(text) >= MOST_DIGITS ? text : text + key;
}

/** A whole reading as typed into a field or stored in a draft, in the form `textAfter` makes; null where it is none. */
export function cleanText(typed: string): string | null {
  let text = '';
  for (const character of typed.trim().replace(',', '.')) {
    const key = character === '.' ? 'mark' : /^\d$/.test(character) ? (character as Digit) : null;
    if (key === null) return null;
    const next = textAfter(text, key);
    if (next === text) return null;
    text = next;
  }
  return text;
}

/** True where this press is the same key bouncing. */
export function isBounce(last: { readonly key: string; readonly atMs: number } | null, key: string, atMs: number): boolean {
  return last !== null && last.key === key && atMs - last.atMs < BOUNCE_MS && atMs >= last.atMs;
}

/** The reading as it is shown: exactly what was keyed, with the mark of the keeper's language. */
export function shownText(text: string, mark: string): string {
  return text.replace('.', mark);
}

/** The decimal mark of a language. */
export function markOf(language: string | undefined): string {
  return (1.5).toLocaleString(language).replace(/\d/g, '') || '.';
}

/** The reading in kilograms; null where nothing stands there, or nothing but a mark. */
export function readingKg(text: string, units: Units): number | null {
  const typed = typedNumber(text);
  if (typed === null || Number.isNaN(typed) || typed === 0) return null;
  return units === 'metric' ? typed : lbToKg(typed);
}

/** A recorded mass as somebody would type it: tenths, none where they are nought. */
export function textOfKg(kg: number, units: Units): string {
  return String(Math.round((units === 'metric' ? kg : kgToLb(kg)) * 10) / 10);
}

export interface KgSpan {
  readonly lowKg: number;
  readonly highKg: number;
}

/**
 * What a text says of the reading it is or becomes.
 *
 * `growing`: not a weight of this hive yet, one or more digits on it can be. `impossible`: no further digit makes it one.
 */
export type Standing = 'empty' | 'growing' | 'plausible' | 'impossible';

export function standingOf(text: string, span: KgSpan, units: Units): Standing {
  if (text === '') return 'empty';
  const kg = readingKg(text, units);
  if (kg !== null && kg >= span.lowKg && kg <= span.highKg) return 'plausible';
  return canGrowInto(text, span, units) ? 'growing' : 'impossible';
}

/** Whether a weight in the span begins with these characters. */
function canGrowInto(text: string, span: KgSpan, units: Units): boolean {
  const room = MOST_DIGITS - digitsIn(text);
  if (text.includes('.')) return overlaps(text, 10 ** -(text.length - text.indexOf('.') - 1), span, units) && room > 0;
  for (let more = 0; more <= room; more++) {
    if (overlaps(text + '0'.repeat(more), 10 ** more, span, units)) return true;
  }
  return false;
}

/** Whether a weight from this figure up to (without) this much more lies in the span. */
function overlaps(text: string, width: number, { lowKg, highKg }: KgSpan, units: Units): boolean {
  const from = Number(text);
  const kg = (value: number) => (units === 'metric' ? value : lbToKg(value));
  return kg(from) <= highKg && kg(from + width) > lowKg;
}

/** The same digits with the mark one place to the left or to the right, where that is a weight of this hive. */
export function tenfoldTexts(text: string, span: KgSpan, units: Units): readonly string[] {
  return [shifted(text, -1), shifted(text, 1)].filter((other) => standingOf(other, span, units) === 'plausible');
}

function shifted(text: string, places: -1 | 1): string {
  const [whole = '', part = ''] = text.split('.');
  const digits = whole + part;
  const at = whole.length + places;
  const left =
    digits
      .slice(0, Math.max(0, at))
      .padEnd(at, '0')
      .replace(/^0+(?=\d)/, '') || '0';
  const right = at < 0 ? digits.padStart(digits.length - at, '0') : digits.slice(at);
  return right === '' ? left : `${left}.${right}`;
}
