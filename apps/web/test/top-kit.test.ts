import { kit, SHIPPED_TOPS, shippedTop, topAtTemperatures } from '@winterheft/core';
import { expect, test } from 'vitest';
import { apart, layersOf, tens } from '../src/hivetop/section.ts';
import { lengthText } from '../src/kit/lengths.ts';
import { firstAnswers, kitInput, readAnswers } from '../src/topkit/kit-answers.ts';

test.each(SHIPPED_TOPS)('the layers of %s are drawn one on the other without a gap', (key) => {
  const answers = topAtTemperatures({ ...shippedTop(key), useKgPerDay: 0.045, days: 7 }, [-40, 10]);
  if (!answers.ok) throw new Error(JSON.stringify(answers.error));
  for (const answer of answers.value) {
    const layers = layersOf(key, answer);
    for (const [i, layer] of layers.entries()) {
      const before = layers[i - 1];
      expect(layer.lowM).toBeCloseTo(before === undefined ? 0 : before.lowM + before.thicknessM, 9);
    }
  }
});

test('the axis of temperatures holds every one of them, in tens', () => {
  const { lowC, highC, marks } = tens([-32, 11.4]);
  expect([lowC, highC]).toEqual([-40, 20]);
  expect(marks).toEqual([-40, -30, -20, -10, 0, 10, 20]);
});

test('labels keep their order and their distance', () => {
  expect(apart([100, 98, 40], 16, 200)).toEqual([100, 84, 40]);
});

test('lengths read as a rule does: 1 in = 25.4 mm', () => {
  expect(lengthText(0.0254 * 19.875, { lengthUnit: 'in' })).toBe('19 7/8 in');
  expect(lengthText(0.0254 / 16, { lengthUnit: 'in' })).toBe('1/16 in');
  expect(lengthText(0.0254 * 1.999, { lengthUnit: 'in' })).toBe('2 in');
  expect(lengthText(0.505, { lengthUnit: 'mm' })).toBe('505 mm');
});

test('stock of sugar is typed in the unit of the holding: 1 lb = 0.45359237 kg', () => {
  const answers = { ...firstAnswers(5, true), stock: { sugar: '10', mesh: '2' } };
  expect(kitInput(answers, true).stock).toEqual({ sugar: expect.closeTo(4.5359237, 9), mesh: 2 });
  expect(kitInput(answers, false).stock).toEqual({ sugar: 10, mesh: 2 });
});

test('what is no number is refused with the name of its field, and nothing typed is lost', () => {
  const answers = { ...firstAnswers(5, false), prices: { foam: '1,5x' } };
  const asked = kit(kitInput(answers, false));
  expect(asked.ok ? null : asked.error).toMatchObject({ field: 'prices.foam' });
  expect(readAnswers(JSON.parse(JSON.stringify(answers)))).toEqual(answers);
  expect(readAnswers({ hives: 5 })).toBeNull();
});
