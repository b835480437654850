import { describe, expect, test, vi } from 'vitest';
import { hooksOf, hooksSetting } from '../src/settings/hooks.ts';
import { NO_RULE, ruleAsTyped, ruleOf } from '../src/setup/answers.ts';
import { partsOfBuild } from '../src/setup/builds.ts';
import { numberFault } from '../src/ui/number-fault.ts';
import { hivesInOrder } from '../src/yard/hive-order.ts';
import { labelsFault, labelsIn } from '../src/yard/labels.ts';
import { buildWords, partName } from '../src/yard/part-names.ts';

// The words are chosen by the browser's language; here there is no browser.
vi.hoisted(() => vi.stubGlobal('navigator', { languages: ['en'] }));

describe('yard', () => {
  test('hives stand in walking order: rows, places as numbers, then those without a stand by label; gone ones and other yards are left out', () => {
    const stands = new Map([
      ['s1', { row: 'B', place: 2 }],
      ['s2', { row: 'A', place: 10 }],
      ['s3', { row: 'A', place: 9 }],
    ]);
    const hive = (id: string, label: string | null, stand: string | null, more = {}) =>
      [id, { id, label, stand, yard: 'y', gone: false, ...more }] as const;
    const hives = new Map([
      hive('h1', 'B2', 's1'),
      hive('h2', 'A10', 's2'),
      hive('h3', 'A9', 's3'),
      hive('h4', 'Z10', null),
      hive('h5', 'Z9', null),
      hive('h6', 'gone', null, { gone: true }),
      hive('h7', 'other', null, { yard: 'z' }),
    ]);
    const order = hivesInOrder({ hives, stands } as unknown as Parameters<typeof hivesInOrder>[0], 'y');
    expect(order.map(({ id }) => id)).toEqual(['h3', 'h2', 'h1', 'h5', 'h4']);
  });

  test('a label may stand once in a yard, case apart, in 40 letters', () => {
    expect(labelsIn(' A1, A2;\nA3,,')).toEqual(['A1', 'A2', 'A3']);
    expect(labelsFault(['A1', 'A2'], ['B1'])).toBeNull();
    expect(labelsFault(['a1'], ['A1'])).toContain('a1');
    expect(labelsFault(['A1', 'a1'], [])).toContain('a1');
    expect(labelsFault(['x'.repeat(41)], [])).not.toBeNull();
    expect(
      labelsFault(
        Array.from({ length: 201 }, (_, i) => String(i)),
        [],
      ),
    ).toContain('200');
  });

  test('builds and parts are told as people say them, and an unknown key as it stands', () => {
    const parts = partsOfBuild({ stack: 'deep-medium', frames: 8, material: 'foam' });
    expect(buildWords(parts)).toBe('deep and medium × 8, foam');
    expect(buildWords([...parts, { part: 'stand', count: 1 }])).toBe('its own list of parts');
    expect(buildWords(undefined)).toBe('build not recorded');
    expect(partName('deep-10-wood')).toBe('deep box of 10, wood');
    expect(partName('some-new-part')).toBe('some new part');
  });
});

describe('settings', () => {
  test('hooks come back from the journal as they were set', () => {
    const hooks = { front: { where: 'board', outMm: 100 }, rear: { where: 'under', outMm: 75 } } as const;
    expect(hooksOf(hooksSetting(hooks))).toEqual(hooks);
    expect(hooksOf(undefined).front.where).toBe('under');
  });

  test('the own rule comes back as it was typed, in each unit', () => {
    const typed = { ...NO_RULE, kind: 'gross', weight: '120', colonies: '70', winters: '4', starved: '6' } as const;
    for (const units of ['metric', 'us', 'ca'] as const) {
      const { value } = ruleOf(typed, units);
      expect(ruleAsTyped(value as Parameters<typeof ruleAsTyped>[0], units)).toEqual(typed);
    }
  });

  test('a typed number is refused with what is allowed; comma and point are one', () => {
    const allowed = { low: 0.5, high: 12, unit: 'kg' };
    expect(numberFault('0,5', allowed)).toBeNull();
    expect(numberFault('', allowed)).toBeNull();
    expect(numberFault('12.1', allowed)).toBe('Allowed: 0.5 kg to 12 kg.');
    expect(numberFault('1.5', { ...allowed, whole: true })).not.toBeNull();
    expect(numberFault('twelve', allowed)).toContain('twelve');
  });
});
