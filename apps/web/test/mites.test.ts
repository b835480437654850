import { expect, test } from 'vitest';
import { NO_WASH, readWash, washBody, washSays } from '../src/mites/wash-entry.ts';

test('more mites than bees is refused at the mites', () => {
  const result = washSays({ ...NO_WASH, bees: '5', mites: '12' }, undefined);
  expect(result).toMatchObject({ ok: false, error: { field: 'mites', high: 5 } });
});

test('no mite of 300 bees: the exact upper end is 1 - 0.025^(1/300) (Clopper and Pearson 1934, closed form at zero)', () => {
  const result = washSays({ ...NO_WASH, mites: '0' }, undefined);
  expect(result?.ok === true ? result.value.highFrac : null).toBeCloseTo(1 - 0.025 ** (1 / 300), 6);
});

test('an empty count says nothing yet; a draft of another shape is not taken', () => {
  expect(washSays(NO_WASH, undefined)).toBeNull();
  expect(readWash({ bees: 300 })).toBeNull();
  expect(washBody('c', { ...NO_WASH, mites: '7' })).toEqual({ colony: 'c', bees: 300, mites: 7, method: 'alcohol' });
});
