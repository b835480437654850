import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import { conflictCodes, implausibleCodes } from '../src/english/conflicts.ts';
import { formCodes } from '../src/english/faults.ts';
import { english, type Fault, unitOfField, type Words } from '../src/index.ts';

type IsLanguage<T> = T extends Words ? true : false;

const core = fileURLToPath(new URL('../../core/src', import.meta.url));
const sources = readdirSync(core, { recursive: true })
  .map(String)
  // why a line of a station file is left out is a closed type: a language that lacks one does not compile
  .filter((name) => name.endsWith('.ts') && !name.endsWith('.gen.ts') && !name.endsWith('weather/station.ts'))
  .map((name) => readFileSync(join(core, name), 'utf8'));
const found = (pattern: RegExp) => [...new Set(sources.flatMap((text) => [...text.matchAll(pattern)].map((match) => match[1] ?? '')))];

describe('nothing is left without words', () => {
  test('a language that leaves out a sentence does not compile', () => {
    const whole: IsLanguage<typeof english> = true;
    const lacking: IsLanguage<Omit<Words, 'stateWords'>> = false;
    const lackingInside: IsLanguage<Omit<Words, 'cautions'> & { readonly cautions: Omit<Words['cautions'], 'lifting'> }> = false;
    expect([whole, lacking, lackingInside]).toEqual([true, false, false]);
  });

  test('every code of a contradiction or an implausible figure in the core has a sentence', () => {
    const codes = [...found(/why: '([a-z]+(?:-[a-z]+)*)'/g), ...found(/conflict\('([a-z-]+)'\)/g)];
    expect(codes.length).toBeGreaterThan(8);
    expect(codes.filter((code) => !conflictCodes.includes(code) && !implausibleCodes.includes(code))).toEqual([]);
  });

  test('the core says why by code, never in a sentence', () => {
    expect(found(/why: (['`][^'`]*[ $][^'`]*['`])/g)).toEqual([]);
  });

  test('every code of a form in the core has a sentence', () => {
    const codes = [...found(/pattern\('([a-z0-9-]+)'/g), ...found(/form: '([a-z0-9-]+)'/g)];
    expect(codes.length).toBeGreaterThan(5);
    expect(codes.filter((code) => !formCodes.includes(code))).toEqual([]);
  });

  test('no caution is empty, and those for lifting, stings, cold, disease and local rules are there', () => {
    expect(Object.keys(english.cautions)).toEqual(
      expect.arrayContaining(['lifting', 'stings', 'cold', 'disease', 'localRules', 'treatments']),
    );
    for (const text of Object.values(english.cautions)) expect(text.length).toBeGreaterThan(40);
  });
});

describe('chances are counted', () => {
  test.each([
    [0.05, '1 chance in 20'],
    [0.95, '19 chances in 20'],
    [0.5, '10 chances in 20'],
    [0.975, '98 chances in 100'],
    [0.995, 'more than 199 chances in 200'],
    [0.01, '1 chance in 100'],
    [0.99, '99 chances in 100'],
    [0.004, 'less than 1 chance in 200'],
    [0.996, 'more than 199 chances in 200'],
    [0, 'less than 1 chance in 200'],
    [1, 'more than 199 chances in 200'],
  ])('%d is %s', (frac, words) => {
    expect(english.chanceWords(frac)).toBe(words);
  });

  test('what is no share is refused', () => {
    for (const frac of [-0.01, 1.01, Number.NaN]) expect(() => english.chanceWords(frac)).toThrow(RangeError);
  });

  test('a narrow column has the same chance', () => {
    expect(english.chanceShort(0.6)).toBe('12 in 20');
    expect(english.chanceShort(1)).toBe('>199 in 200');
  });
});

describe('a fault is one line that names field, value and what is allowed', () => {
  const FAULTS: readonly (readonly [Fault, RegExp])[] = [
    [{ kind: 'missing', field: 'bees' }, /^bees is missing; allowed: /],
    [
      { kind: 'missing-all', ways: [['frontKg'], ['rearKg'], ['frontKg', 'rearKg']] },
      /^frontKg and rearKg are missing; allowed: frontKg, or rearKg, or both$/,
    ],
    [
      { kind: 'missing-all', ways: [['lengthM', 'widthM', 'depthM'], ['sugarKg']] },
      /^lengthM, widthM, depthM and sugarKg are missing; allowed: lengthM, widthM and depthM, or sugarKg$/,
    ],
    [{ kind: 'not-a-number', field: 'frontKg', value: '12,5' }, /12,5.*allowed.*12\.5/],
    [{ kind: 'out-of-range', field: 'frontKg', value: 900, unit: '', low: 0, high: 150 }, /^frontKg is 900 kg; allowed: 0 to 150 kg$/],
    [{ kind: 'not-a-date', field: 'from', value: '2026-02-30' }, /2026-02-30.*allowed.*2026-09-14/],
    [{ kind: 'date-order', field: 'to', value: '2026-01-01', notBefore: '2026-03-01' }, /allowed: 2026-03-01 or later/],
    [{ kind: 'unknown-choice', field: 'basis', value: 'cup', choices: ['mass', 'volume'] }, /"cup"; allowed: mass or volume/],
    [{ kind: 'conflict', fields: ['a', 'b'], why: 'one-humidity' }, /^a and b cannot stand together; allowed: /],
    [{ kind: 'conflict', fields: ['a', 'b'], why: 'same-name' }, /^a and b cannot stand together; allowed: a name of its own for each$/],
    [{ kind: 'implausible', field: 'latDeg', value: -40, unit: 'deg', why: 'southern-hemisphere' }, /-40 deg.*allowed/],
    [{ kind: 'unknown-field', field: 'frontkg', known: ['frontKg'] }, /frontkg is not a field here; allowed: frontKg/],
    [{ kind: 'wrong-length', field: 'months', length: 11, low: 12, high: 12, unit: 'entries' }, /11 entries; allowed: 12$/],
    [{ kind: 'not-a-multiple', field: 'count', value: 0.3, step: 0.5 }, /0\.3; allowed: steps of 0\.5/],
    [{ kind: 'too-deep', field: 'value', deepest: 64 }, /allowed: 64 levels/],
    [{ kind: 'no-file', name: 'x.json' }, /"x\.json" does not exist; allowed/],
  ];
  test.each(FAULTS)('%j', (fault, sentence) => {
    const text = english.faultSentence(fault);
    expect(text).toMatch(sentence);
    expect(text).not.toMatch(/\n|undefined|NaN|\[object/);
  });

  test('the unit of a field is the end of its name', () => {
    expect([
      unitOfField('frontKg'),
      unitOfField('tempC'),
      unitOfField('hive.conductanceWPerK'),
      unitOfField('liftM'),
      unitOfField('ratio'),
    ]).toEqual(['kg', '°C', 'W/K', 'm', '']);
  });

  test('limits of the schema join a missing field', () => {
    expect(english.faultSentence({ kind: 'missing', field: 'bees' }, { low: 500, high: 100_000 })).toBe(
      'bees is missing; allowed: 500 to 100000 bees',
    );
  });
});
