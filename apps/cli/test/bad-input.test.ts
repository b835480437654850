import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { looksLikeTrace, runCommand } from './run-command.ts';

const folder = mkdtempSync(join(tmpdir(), 'winterheft-'));
afterAll(() => rmSync(folder, { recursive: true }));
const file = (name: string, content: string | Uint8Array) => {
  const path = join(folder, name);
  writeFileSync(path, content);
  return path;
};

/** Exit 2, one line on standard error that holds every piece, nothing on standard output. */
async function refused(argv: readonly string[], input: string | Uint8Array | null, pieces: readonly (string | RegExp)[]) {
  const { code, out, err } = await runCommand(argv, input);
  expect(out).toBe('');
  expect(err.endsWith('\n') && err.split('\n').length === 2, `one line: ${err}`).toBe(true);
  expect(looksLikeTrace(err), err).toBe(false);
  expect(err.length).toBeLessThan(1200);
  for (const piece of pieces) expect(err).toMatch(piece);
  expect(code).toBe(2);
}

describe('a line that names the field, the value and what is allowed', () => {
  const CASES: readonly (readonly [what: string, command: string, input: string, pieces: readonly (string | RegExp)[]])[] = [
    ['a hive that weighs nothing', 'heft', '{"frontKg":0,"rearKg":20}', ['frontKg', /\b0\b/, 'allowed']],
    ['a hive as heavy as a car', 'heft', '{"frontKg":900}', ['frontKg', '900', 'kg', 'allowed']],
    ['a negative weight', 'heft', '{"frontKg":-3}', ['frontKg', '-3', 'allowed']],
    ['letters', 'heft', '{"frontKg":"heavy"}', ['frontKg', 'heavy', 'a number']],
    ['a decimal comma', 'heft', '{"frontKg":"12,5"}', ['frontKg', '12,5', '12.5']],
    ['a number in quotes', 'heft', '{"frontKg":"12.5"}', ['frontKg', '12.5', 'without quotes']],
    ['null for a number', 'heft', '{"frontKg":null}', ['frontKg', 'null', 'a number']],
    ['a list for a number', 'heft', '{"frontKg":[1,2]}', ['frontKg', 'a list of 2', 'a number']],
    ['a number too large to hold', 'heft', '{"frontKg":1e999}', ['frontKg', 'Infinity', 'a number']],
    ['NaN', 'heft', '{"frontKg":NaN}', ['not JSON', 'column 12', 'one JSON object']],
    ['no reading at all', 'heft', '{}', ['frontKg and rearKg are missing', 'frontKg, or rearKg, or both']],
    ['neither a rim nor sugar', 'candy', '{}', ['missing', 'lengthM, widthM and depthM, or sugarKg']],
    ['nothing of a syrup', 'syrup', '{}', ['sugarKg and waterKg, or ratio, basis and volumeL, or ratio, basis and sugarKg']],
    ['no humidity', 'air', '{"tempC":3}', ['rhFrac, or rhIceFrac, or dewPointC, or vapourPa']],
    [
      'nothing weighed and nothing counted',
      'stores',
      '{"build":[{"part":"deep-10-wood","count":1}]}',
      ['grossKg, or word, or cappedFrames'],
    ],
    ['no weather', 'outlook', '{"bees":15000,"from":"2026-09-30","to":"2027-05-01"}', ['dailyMeanC, or place, or monthlyMeanC']],
    [
      'edges that cannot belong to one hive',
      'heft',
      '{"frontKg":5,"rearKg":60}',
      [/frontKg \(5 kg\) and rearKg \(60 kg\)/, 'one hive', 'allowed'],
    ],
    ['an unknown field', 'heft', '{"frontkg":12}', ['frontkg', 'not a field', 'frontKg']],
    ['a prototype key', 'heft', '{"frontKg":12,"__proto__":{"rearKg":3}}', ['__proto__', 'not a field']],
    ['a constructor key', 'wash', '{"bees":300,"mites":3,"constructor":1}', ['constructor', 'not a field']],
    ['a missing field', 'wash', '{"bees":300}', ['mites', 'missing', '0 to']],
    ['more mites than bees', 'wash', '{"bees":100,"mites":101}', ['mites', '101', 'allowed']],
    ['half a bee', 'wash', '{"bees":300.5,"mites":1}', ['bees', '300.5', 'whole']],
    ['a list for the whole', 'wash', '[1,2]', ['input', 'a list of 2', 'object']],
    ['a number for the whole', 'wash', '7', ['input', '7', 'object']],
    ['null for the whole', 'wash', 'null', ['input', 'null', 'object']],
    ['a ratio without its basis', 'syrup', '{"ratio":"2:1","sugarKg":3}', ['basis', 'missing']],
    ['a ratio of words', 'syrup', '{"ratio":"two to one","basis":"mass","sugarKg":3}', ['ratio', 'two to one', '2:1']],
    ['an unknown basis', 'syrup', '{"ratio":"2:1","basis":"weight","sugarKg":3}', ['basis', 'weight', 'mass or volume']],
    ['two humidities', 'air', '{"tempC":3,"rhFrac":0.5,"dewPointC":1}', ['rhFrac', 'dewPointC', 'one of']],
    ['a percentage for a share', 'air', '{"tempC":3,"rhFrac":80}', ['rhFrac', '80', 'allowed']],
    ['a dew point above the temperature', 'air', '{"tempC":3,"dewPointC":9}', ['dewPointC', '9', 'allowed']],
    ['candy both ways', 'candy', '{"sugarKg":3,"lengthM":0.4}', ['sugarKg', 'lengthM']],
    [
      'a date that does not exist',
      'outlook',
      '{"bees":15000,"from":"2026-02-30","to":"2027-05-01","place":"The Pas MB"}',
      ['from', '2026-02-30', 'date'],
    ],
    [
      'an end before the beginning',
      'outlook',
      '{"bees":15000,"from":"2026-09-30","to":"2026-09-01","place":"The Pas MB"}',
      ['to', '2026-09-01', 'later'],
    ],
    ['no bees', 'outlook', '{"bees":0,"from":"2026-09-30","to":"2027-05-01","place":"The Pas MB"}', ['bees', '0 bees', 'allowed']],
    ['an ambiguous place', 'outlook', '{"bees":15000,"from":"2026-09-30","to":"2027-05-01","place":"Fort"}', ['place', 'Fort', ' or ']],
    ['an unknown place', 'weather', '{"place":"Atlantis"}', ['place', 'Atlantis', '--places']],
    [
      'eleven months',
      'outlook',
      '{"bees":15000,"from":"2026-09-30","to":"2027-05-01","monthlyMeanC":[1,2,3,4,5,6,7,8,9,10,11]}',
      ['monthlyMeanC', '11 entries', '12'],
    ],
    [
      'months of the southern half',
      'outlook',
      '{"bees":15000,"from":"2026-09-30","to":"2027-05-01","monthlyMeanC":[20,20,18,14,10,7,6,7,10,14,17,19]}',
      ['monthlyMeanC', 'January'],
    ],
    ['a text cut in the middle', 'wash', '{"bees":300,"mi', ['not JSON', 'line 1']],
    ['two objects', 'wash', '{"bees":300,"mites":3}{"bees":1}', ['not JSON', 'column 23']],
    ['a trailing comma', 'wash', '{"bees":300,\n"mites":3,\n}', ['not JSON', 'line 3, column 1']],
    ['nothing', 'wash', '', ['empty']],
    ['white space', 'wash', ' \n ', ['empty']],
  ];
  test.each(CASES)('%s (%s)', async (_what, command, input, pieces) => {
    await refused([command, '-'], input, pieces);
    await refused([command, '--json'], input, pieces);
  });

  test('a monstrous field name and value are cut', async () => {
    await refused(['wash', '-'], JSON.stringify({ bees: 300, mites: 3, ['x'.repeat(10_000)]: 1 }), ['x…', 'not a field']);
    await refused(['wash', '-'], JSON.stringify({ bees: 'y'.repeat(100_000), mites: 3 }), ['bees', 'y…']);
  });

  test('control characters never reach the terminal', async () => {
    const { err } = await runCommand(['wash', '-'], JSON.stringify({ bees: '\u001b[31m\u0007\nred\u202e', mites: 3 }));
    expect(err.replace('\n', '')).not.toMatch(/\p{Cc}|\u202e/u);
  });

  test('deep nesting is refused, not fatal', async () => {
    await refused(['wash', '-'], `{"bees":${'['.repeat(100_000)}${']'.repeat(100_000)},"mites":1}`, ['bees']);
    await refused(['wash', '-'], '['.repeat(100_000), ['not JSON']);
  });
});

describe('files', () => {
  test.each([
    ['a file that is not there', () => join(folder, 'none.json'), ['none.json', 'does not exist']],
    ['a folder', () => folder, ['is a folder']],
    ['a binary file', () => file('binary.json', new Uint8Array([0, 159, 146, 150, 0, 1])), ['not text']],
    ['an empty file', () => file('empty.json', ''), ['empty']],
    ['text that is no JSON', () => file('notes.json', 'weigh hive 7 again\n'), ['not JSON', 'line 1, column 1']],
  ] as const)('%s', async (_what, path, pieces) => {
    await refused(['heft', path()], null, pieces);
  });

  test('nothing to read where nobody pipes anything', async () => {
    await refused(['heft'], null, ['nothing to read']);
  });

  test('a byte order mark is no fault', async () => {
    expect((await runCommand(['wash', file('bom.json', '\ufeff{"bees":300,"mites":3}'), '--json'])).code).toBe(0);
  });
});

describe('options', () => {
  test.each([
    [['hefty'], ['hefty', 'heft, ', 'plan']],
    [
      ['heft', '--unit', 'us'],
      ['--unit', 'allowed'],
    ],
    [
      ['heft', '--units', 'stone'],
      ['stone', 'metric, us, ca'],
    ],
    [['heft', '--units'], ['--units']],
    [['heft', 'a', 'b'], ['argument']],
    [
      ['schema', 'hefty'],
      ['hefty', 'heft, '],
    ],
    [['schema'], ['command']],
    [['weather', '--place', ''], ['place']],
  ] as const)('%j', async (argv, pieces) => {
    await refused(argv, null, pieces);
  });

  test('help and schema go to standard output with exit code 0', async () => {
    for (const argv of [[], ['--help'], ['heft', '--help'], ['help', 'heft'], ['schema', 'heft'], ['weather', '--places']]) {
      const { code, out, err } = await runCommand(argv);
      expect([code, err], argv.join(' ')).toEqual([0, '']);
      expect(out.length).toBeGreaterThan(100);
    }
  });

  test('a mistake of our own ends with 1 and says whose it is', async () => {
    const { code, out, err } = await runCommand(['wash', 'x'], null, async () => {
      throw new Error('disk on fire');
    });
    expect([code, out]).toEqual([1, '']);
    expect(err).toMatch(/mistake of the program[\s\S]*disk on fire/);
  });
});
