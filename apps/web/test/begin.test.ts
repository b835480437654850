import { foldHolding, recordOf, uuidv7 } from '@winterheft/core';
import { describe, expect, test } from 'vitest';
import { labelsOf, newAnswers, ruleOf, typedKg } from '../src/setup/answers.ts';
import { choiceOfParts, partsOfBuild, STACKS } from '../src/setup/builds.ts';
import { type NewName, recordsOf } from '../src/setup/records.ts';
import { typedNumber } from '../src/ui/typed-number.ts';

const PLACE = { name: 'Somewhere', country: 'CA', region: 'MB', latDeg: 53.8, lonDeg: -101.2, elevM: 270 };
const counting = (): NewName => {
  let n = 0;
  return (of) => `${of}${n++}`;
};

describe('what is typed', () => {
  test.each([
    ['51.5', 51.5],
    ['51,5', 51.5],
    ['.5', 0.5],
    ['5.', 5],
    ['−101.2', -101.2],
    ['', null],
  ])('"%s" is read as %s', (text, value) => expect(typedNumber(text)).toBe(value));

  test.each(['1,000.5', '5 1', '1e3', 'abc', '--2', '.'])('"%s" is no number', (text) => expect(typedNumber(text)).toBeNaN());

  test('a pound is 0.45359237 kg (NIST Handbook 44, appendix C)', () => {
    expect(typedKg('1', 'us')).toBe(0.45359237);
    expect(typedKg('1', 'ca')).toBe(0.45359237);
    expect(typedKg('1', 'metric')).toBe(1);
  });
});

describe('labels', () => {
  const rows = { labelWay: 'rows', perRow: '2', ownLabels: '' } as const;

  test('rows carry letters and go on after Z', () => {
    expect(labelsOf(rows, 3).labels).toEqual(['A1', 'A2', 'B1']);
    expect(labelsOf({ ...rows, perRow: '1' }, 28).labels.slice(-3)).toEqual(['Z1', 'AA1', 'AB1']);
  });

  test('own labels that are doubled, too long or too few are refused', () => {
    const own = (ownLabels: string, count: number) => labelsOf({ labelWay: 'own', perRow: '', ownLabels }, count).fault;
    expect(own('red\nblue\nred', 3)).toEqual({ kind: 'twice', label: 'red' });
    expect(own('x'.repeat(41), 1)?.kind).toBe('long');
    // U+0000 is a control character, U+202E turns the reading direction (Unicode general categories Cc and Cf)
    expect(own('a\u0000b', 1)).toEqual({ kind: 'unseen', label: 'a·b' });
    expect(own('\u202Eevil', 1)?.kind).toBe('unseen');
    expect(own('red, blue', 3)).toEqual({ kind: 'count', labels: 2 });
    expect(own('red\n\n blue ; green', 3)).toBeNull();
  });
});

test('every build that can be chosen is found again in its parts', () => {
  for (const stack of STACKS) {
    for (const frames of [10, 8, 5] as const) {
      for (const material of ['wood', 'foam'] as const) {
        expect(choiceOfParts([...partsOfBuild({ stack, frames, material })].reverse())).toEqual({ stack, frames, material });
      }
    }
  }
});

test('more starved than wintered is refused; a rule without winters is taken', () => {
  const rule = { kind: 'gross', weight: '110', colonies: '10', winters: '', starved: '2' } as const;
  expect(ruleOf(rule, 'us').value).toEqual({ grossKg: 110 * 0.45359237, colonies: 10, starved: 2 });
  expect(ruleOf({ ...rule, starved: '11' }, 'us').fault).toBe('starved-too-many');
  expect(ruleOf({ ...rule, weight: '' }, 'us').fault).toBe('weight');
});

test('Begin writes records the journal takes, and they fold to the hives that were settled, without a clash', () => {
  const rule = { kind: 'front', weight: '55', colonies: '10', winters: '3', starved: '0' } as const;
  const answers = { ...newAnswers('Home yard', 'ca'), place: PLACE, count: '26', labelWay: 'rows' as const, rule };
  const settled = recordsOf(answers, counting());
  const at = { date: '2026-09-18' };
  const records = settled!.records.map(({ yard, kind, body }, i) => {
    const seen = `${String(i).padStart(13, '0')}-00000-testtest`;
    const read = recordOf({ id: uuidv7(i, new Uint8Array(10)), yard, kind, at, by: 'keeper', seen, body });
    if (!read.ok) throw new Error(JSON.stringify(read.why));
    return read.record;
  });
  const holding = foldHolding(records);
  expect(holding.clashes).toEqual([]);
  expect([...holding.hives.values()].map((hive) => hive.label)).toEqual(labelsOf(answers, 26).labels);
  expect([...holding.hives.values()].every((hive) => hive.colonies.length === 1 && hive.builds.length === 1)).toBe(true);
  expect(holding.settings.units).toBe('ca');
  expect(holding.settings.ownRule?.frontKg).toBe(55 * 0.45359237);
});

test('nothing is written while the place, the count or a label is missing', () => {
  const answers = { ...newAnswers('Home yard', 'metric'), place: PLACE, count: '3' };
  expect(recordsOf(answers, counting())).not.toBeNull();
  expect(recordsOf({ ...answers, place: null }, counting())).toBeNull();
  for (const count of ['', '0', '501', '2.5', 'x']) expect(recordsOf({ ...answers, count }, counting())).toBeNull();
  expect(recordsOf({ ...answers, labelWay: 'own' as const, ownLabels: 'a\na\nb' }, counting())).toBeNull();
});
