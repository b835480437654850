import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  burnHoney,
  candy,
  saturationFrac,
  saturationTempC,
  storesPerSugarKg,
  sucroseDensityKgPerM3,
  sugarForStoresKg,
  syrup,
  waterDensityKgPerM3,
} from '../src/matter/index.ts';

const strength = fc.double({ min: 0.02, max: 0.84, noNaN: true });
const tempC = fc.double({ min: 0, max: 60, noNaN: true });

describe('density', () => {
  test('rises with sugar and, from 5 °C, falls with warmth', () => {
    fc.assert(
      fc.property(strength, fc.double({ min: 5, max: 59, noNaN: true }), (w, t) => {
        expect(sucroseDensityKgPerM3(w + 0.005, t)).toBeGreaterThan(sucroseDensityKgPerM3(w, t));
        expect(sucroseDensityKgPerM3(w, t + 1)).toBeLessThan(sucroseDensityKgPerM3(w, t));
      }),
    );
  });

  test('without sugar it is that of water, greatest at 4 °C', () => {
    expect(sucroseDensityKgPerM3(0, 20)).toBe(waterDensityKgPerM3(20));
    expect(waterDensityKgPerM3(4)).toBeGreaterThan(waterDensityKgPerM3(3.5));
    expect(waterDensityKgPerM3(4)).toBeGreaterThan(waterDensityKgPerM3(4.5));
  });

  test('the three-term form that goes by the same name is another curve', () => {
    // Source: that form, 385.1761 w + 154.316 w^2 + 71.52 w^3, against the handbook's 1347.2 kg/m3 at 70 %
    const threeTerm = (w: number) => waterDensityKgPerM3(20) + 385.1761 * w + 154.316 * w ** 2 + 71.52 * w ** 3;
    expect(Math.abs(threeTerm(0.7) - 1347.2)).toBeGreaterThan(1);
    expect(Math.abs(sucroseDensityKgPerM3(0.7, 20) - 1347.2)).toBeLessThan(0.67);
  });

  test.each([-0.01, 0.86, Number.NaN])('throws for a strength of %s', (w) =>
    expect(() => sucroseDensityKgPerM3(w, 20)).toThrow(RangeError),
  );
  test.each([-1, 61, Number.NaN])('throws for %s °C', (t) => expect(() => waterDensityKgPerM3(t)).toThrow(RangeError));
});

describe('solubility', () => {
  /** Copies that circulate. Expected 66.7 to 67.1 % at 20 °C: sugar plant table and Herzfeld. */
  const corrupt = {
    'tenfold small quadratic term': (t: number) => 64.397 + 0.07251 * t + 0.0002057 * t ** 2 + 3.44e-7 * t ** 3,
    'sign lost': (t: number) => 64.447 + 0.08222 * t - 1.6169e-3 * t ** 2 - 1.558e-6 * t ** 3 - 4.63e-8 * t ** 4,
  };
  test.each(Object.entries(corrupt))('the copy with %s is outside the published spread, ours inside', (_name, copy) => {
    expect(copy(20)).toBeLessThan(66.59);
    expect(saturationFrac(20) * 100).toBeGreaterThan(66.59);
    expect(saturationFrac(20) * 100).toBeLessThan(67.1);
  });

  test('rises with temperature by all three relations, which stay within 0.7 percentage points up to 80 °C', () => {
    for (let t = 0; t <= 80; t++) {
      const [a, b, c] = (['vavrinecz', 'charles', 'herzfeld'] as const).map((relation) => saturationFrac(t, relation));
      expect(Math.max(a!, b!, c!) - Math.min(a!, b!, c!)).toBeLessThan(0.007);
      if (t > 0)
        for (const relation of ['vavrinecz', 'charles', 'herzfeld'] as const)
          expect(saturationFrac(t, relation)).toBeGreaterThan(saturationFrac(t - 1, relation));
    }
  });

  test('saturation temperature undoes saturation, and is null outside 0 to 100 °C', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.01, max: 99.9, noNaN: true }), (t) => {
        expect(saturationTempC(saturationFrac(t))).toBeCloseTo(t, 6);
      }),
    );
    expect(saturationTempC(0.5)).toBeNull();
    expect(saturationTempC(0.84)).toBeNull();
  });

  test.each([-1, 101, Number.NaN])('throws for %s °C', (t) => expect(() => saturationFrac(t)).toThrow(RangeError));
});

describe('stores from sugar', () => {
  test('low is never above the measured, the measured never above the high, and thicker syrup never gives less', () => {
    fc.assert(
      fc.property(strength, (w) => {
        const here = storesPerSugarKg(w);
        expect(here.low).toBeLessThan(here.mid);
        expect(here.mid).toBeLessThan(here.high);
        expect(storesPerSugarKg(w + 0.01).mid).toBeGreaterThanOrEqual(here.mid - 1e-12);
        expect(here.low).toBeGreaterThan(0);
      }),
    );
  });

  test('the amount to buy on the low rule is the largest', () => {
    const sugar = sugarForStoresKg(10, 2 / 3);
    expect(sugar.low).toBeGreaterThan(sugar.mid);
    expect(sugar.mid).toBeGreaterThan(sugar.high);
  });

  test.each([0, -1, 0.9, Number.NaN])('throws for a strength of %s', (w) => expect(() => storesPerSugarKg(w)).toThrow(RangeError));
});

describe('syrup', () => {
  test('mass is kept, and every way of asking gives the same syrup', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.1, max: 100, noNaN: true }),
        fc.double({ min: 0.2, max: 4, noNaN: true }),
        tempC,
        (sugarKg, waterPerSugar, t) => {
          const ratio = `1:${waterPerSugar.toFixed(3)}`;
          const waterKg = sugarKg * Number(waterPerSugar.toFixed(3));
          const mixed = syrup({ sugarKg, waterKg, tempC: t });
          const byRatio = syrup({ ratio, basis: 'mass', sugarKg, tempC: t });
          if (!mixed.ok || !byRatio.ok) throw new Error('refused');
          const byVolume = syrup({ ratio, basis: 'mass', volumeL: mixed.value.volumeL, tempC: t });
          if (!byVolume.ok) throw new Error('refused');
          expect(mixed.value.massKg).toBeCloseTo(sugarKg + waterKg, 9);
          for (const other of [byRatio.value, byVolume.value]) {
            expect(other.sugarKg).toBeCloseTo(sugarKg, 6);
            expect(other.waterKg).toBeCloseTo(waterKg, 6);
          }
        },
      ),
    );
  });

  test.each([0.5, 2 / 3, 1, 1.5])('sugar with %s its mass of water takes less room than crystals and water apart', (waterKg) => {
    // Source: sugar crystals 1.587 kg/L (from memory); water 0.9982 kg/L
    const result = syrup({ sugarKg: 1, waterKg });
    expect(result.ok && result.value.volumeL).toBeLessThan(1 / 1.587 + waterKg / 0.9982);
    expect(result.ok && result.value.volumeL).toBeGreaterThan(0.98 * (1 / 1.587 + waterKg / 0.9982));
  });

  test('2:1 by volume is thinner than 2:1 by mass', () => {
    const [mass, volume] = (['mass', 'volume'] as const).map((basis) => syrup({ ratio: '2:1', basis, volumeL: 10 }));
    if (!mass?.ok || !volume?.ok) throw new Error('refused');
    expect(volume.value.sugarFrac).toBeLessThan(mass.value.sugarFrac);
  });

  test('the cold 2:1 is told to grain, the warm one is not, the thin one never', () => {
    const told = (t: number, ratio: string) => {
      const result = syrup({ ratio, basis: 'mass', sugarKg: 1, tempC: t });
      return result.ok ? result.value.supersaturated : null;
    };
    expect([told(5, '2:1'), told(25, '2:1'), told(0, '1:1')]).toEqual([true, false, false]);
  });

  test.each([
    [
      {},
      {
        kind: 'missing-all',
        ways: [
          ['sugarKg', 'waterKg'],
          ['ratio', 'basis', 'volumeL'],
          ['ratio', 'basis', 'sugarKg'],
        ],
      },
    ],
    [{ sugarKg: 1 }, { kind: 'missing', field: 'waterKg' }],
    [
      { sugarKg: 0, waterKg: 1 },
      { kind: 'out-of-range', field: 'sugarKg', low: 0.01 },
    ],
    [
      { sugarKg: -3, waterKg: 1 },
      { kind: 'out-of-range', field: 'sugarKg' },
    ],
    [
      { sugarKg: Number.NaN, waterKg: 1 },
      { kind: 'not-a-number', field: 'sugarKg' },
    ],
    [
      { sugarKg: 100, waterKg: 1 },
      { kind: 'out-of-range', field: 'sugarKg/(sugarKg+waterKg)' },
    ],
    [
      { ratio: '2:1', sugarKg: 1 },
      { kind: 'missing', field: 'basis' },
    ],
    [
      { ratio: '2:1', basis: 'mass' as const },
      { kind: 'missing-all', ways: [['volumeL'], ['sugarKg']] },
    ],
    [
      { ratio: 'two to one', basis: 'mass' as const, sugarKg: 1 },
      { kind: 'unknown-choice', field: 'ratio' },
    ],
    [
      { ratio: '0:1', basis: 'mass' as const, sugarKg: 1 },
      { kind: 'out-of-range', field: 'ratio' },
    ],
    [
      { ratio: '2:1', basis: 'mass' as const, sugarKg: 1, volumeL: 1 },
      { kind: 'conflict', why: 'volume-or-sugar' },
    ],
    [
      { ratio: '2:1', basis: 'mass' as const, sugarKg: 1, waterKg: 1 },
      { kind: 'conflict', why: 'ratio-or-water' },
    ],
    [{ volumeL: 1 }, { kind: 'conflict', why: 'volume-needs-ratio' }],
    [
      { basis: 'mass' as const, sugarKg: 1, waterKg: 1 },
      { kind: 'missing', field: 'ratio' },
    ],
    [
      { sugarKg: 1, waterKg: 1, tempC: 90 },
      { kind: 'out-of-range', field: 'tempC', high: 60 },
    ],
  ])('refuses %j and says why', (input, error) => {
    expect(syrup(input)).toMatchObject({ ok: false, error });
  });
});

describe('candy and honey', () => {
  test('a rim and the sugar it takes ask for the same candy', () => {
    const rim = candy({ lengthM: 0.467, widthM: 0.375, depthM: 0.04 });
    if (!rim.ok) throw new Error('refused');
    expect(rim.value.volumeL).toBeCloseTo(0.467 * 0.375 * 40, 9);
    const again = candy({ sugarKg: rim.value.sugarKg });
    expect(again.ok && again.value.massKg).toBeCloseTo(rim.value.massKg, 9);
    expect(rim.value.cautions).toContain('no-acid');
  });

  test.each([
    [{}, { kind: 'missing-all', ways: [['lengthM', 'widthM', 'depthM'], ['sugarKg']] }],
    [
      { lengthM: 0.4, widthM: 0.3 },
      { kind: 'missing', field: 'depthM' },
    ],
    [
      { lengthM: 19, widthM: 0.3, depthM: 0.04 },
      { kind: 'out-of-range', field: 'lengthM' },
    ],
    [
      { sugarKg: 2, depthM: 0.04 },
      { kind: 'conflict', why: 'sugar-or-rim' },
    ],
    [{ sugarKg: 0 }, { kind: 'out-of-range', field: 'sugarKg' }],
  ])('candy refuses %j and says why', (input, error) => expect(candy(input)).toMatchObject({ ok: false, error }));

  test('burning keeps mass: dry honey and oxygen become water and carbon dioxide', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.001, max: 50, noNaN: true }), fc.double({ min: 0.12, max: 0.25, noNaN: true }), (kg, moisture) => {
        const { waterKg, carbonDioxideKg, oxygenKg } = burnHoney(kg, moisture);
        const burntKg = waterKg + carbonDioxideKg - oxygenKg - kg * moisture;
        // within: molar masses rounded to a part in 10,000, and the half percent of solids that is no sugar
        expect(burntKg).toBeGreaterThan(kg * (1 - moisture) * 0.99);
        expect(burntKg).toBeLessThan(kg * (1 - moisture) * 1.001);
      }),
    );
  });

  test.each([
    [-1, 0.17],
    [Number.NaN, 0.17],
    [1, 0.5],
  ])('throws for %s kg at %s moisture', (kg, moisture) => {
    expect(() => burnHoney(kg, moisture)).toThrow(RangeError);
  });
});
