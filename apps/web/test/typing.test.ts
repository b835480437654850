import { describe, expect, test } from 'vitest';
import {
  cleanText,
  isBounce,
  type PadKey,
  readingKg,
  shownText,
  standingOf,
  tenfoldTexts,
  textAfter,
  textOfKg,
} from '../src/weighing/typing.ts';

const typed = (keys: string) =>
  [...keys].reduce((text, key) => textAfter(text, key === '.' ? 'mark' : key === '<' ? 'delete' : (key as PadKey)), '');

describe('what stands there is what was keyed', () => {
  test.each([
    ['51.5', '51.5'],
    ['0', '0'],
    ['05', '5'],
    ['00', '0'],
    ['.5', '0.5'],
    ['5.1.5', '5.15'],
    ['12345', '1234'],
    ['1234.', '1234'],
    ['123.45', '123.4'],
    ['51.5<<', '51'],
    ['.<', ''],
    ['<', ''],
  ])('%s gives %s', (keys, text) => {
    expect(typed(keys)).toBe(text);
  });

  test('shown with the mark of the language, and taken with either mark', () => {
    expect(shownText('51.5', ',')).toBe('51,5');
    expect(cleanText('51,5')).toBe('51.5');
    expect(cleanText('51.5')).toBe('51.5');
  });

  test.each(['5a', '1,2,3', '12345', '-5', '5 5'])('a field does not take %s', (text) => {
    expect(cleanText(text)).toBeNull();
  });
});

test('the same key within 80 ms is one press, another key or a later one is not', () => {
  const last = { key: '5', atMs: 1000 };
  expect(isBounce(last, '5', 1079)).toBe(true);
  expect(isBounce(last, '5', 1080)).toBe(false);
  expect(isBounce(last, '4', 1010)).toBe(false);
  expect(isBounce(null, '5', 1000)).toBe(false);
});

// 1 lb is 0.453 592 37 kg exactly (international pound).
test('pounds are read as kilograms and shown as they were typed', () => {
  expect(readingKg('51.5', 'ca')).toBeCloseTo(51.5 * 0.45359237, 9);
  expect(readingKg('23.4', 'metric')).toBe(23.4);
  expect(readingKg('0.', 'metric')).toBeNull();
  for (const text of ['51.5', '102', '7.3']) expect(textOfKg(readingKg(text, 'us') as number, 'us')).toBe(text);
});

describe('a reading against what its edge can show', () => {
  const span = { lowKg: 9, highKg: 60 };
  test.each([
    ['', 'empty'],
    ['5', 'growing'],
    ['8', 'impossible'],
    ['4', 'growing'],
    ['8.', 'impossible'],
    ['9', 'plausible'],
    ['60', 'plausible'],
    ['6', 'growing'],
    ['61', 'impossible'],
    ['600', 'impossible'],
    ['5.15', 'impossible'],
    ['0.', 'impossible'],
    ['0', 'growing'],
  ])('%s is %s', (text, standing) => {
    // A zero is followed by a digit that takes its place; all else follows from the span.
    expect(standingOf(text, span, 'metric')).toBe(standing);
  });

  test('digits out by ten are offered with their mark moved, where that is a weight', () => {
    expect(tenfoldTexts('540', span, 'metric')).toEqual(['54.0']);
    expect(tenfoldTexts('5.4', span, 'metric')).toEqual(['54']);
    expect(tenfoldTexts('5', span, 'metric')).toEqual(['50']);
    expect(tenfoldTexts('0.54', span, 'metric')).toEqual([]);
    expect(tenfoldTexts('9999', span, 'metric')).toEqual([]);
  });
});
