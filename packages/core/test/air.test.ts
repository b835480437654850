import { createRequire } from 'node:module';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { air, dewPointC, frostPointC, iceSaturationPa, waterSaturationPa } from '../src/matter/index.ts';

/** Outside reference: psychrolib 1.1.1 (ASHRAE 2017). Below 0.01 °C all it does is over ICE, so humidity there goes in as `rhIceFrac`. */
const psychrolib = createRequire(import.meta.url)('psychrolib');
psychrolib.SetUnitSystem(psychrolib.SI);

describe('against psychrolib', () => {
  test('saturation over ice from -60 to 0 °C, over water from 0.1 to 55 °C', () => {
    // within: 300 ppm, the reference's own tolerance; 0.1 % below -45 °C, where the two ice formulas part
    for (let t = -60; t <= 0; t += 0.5)
      expect(Math.abs(iceSaturationPa(t) / psychrolib.GetSatVapPres(t) - 1)).toBeLessThan(t < -45 ? 1e-3 : 3e-4);
    for (let t = 0.1; t <= 55; t += 0.5) expect(Math.abs(waterSaturationPa(t) / psychrolib.GetSatVapPres(t) - 1)).toBeLessThan(3e-4);
  });

  test('humidity ratio, density and dew or frost point of random air', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -40, max: 45, noNaN: true }),
        fc.double({ min: 0.05, max: 1, noNaN: true }),
        fc.double({ min: 70000, max: 105000, noNaN: true }),
        (tempC, rh, pressurePa) => {
          fc.pre(Math.abs(tempC) > 0.02);
          const ours = air(tempC < 0 ? { tempC, pressurePa, rhIceFrac: rh } : { tempC, pressurePa, rhFrac: rh });
          if (!ours.ok) throw new Error(JSON.stringify(ours.error));
          const { vapourPa, humidityRatio, densityKgPerM3 } = ours.value;
          // within: the saturation formulas differ by up to 300 ppm (500 ppm over ice at -40)
          expect(Math.abs(vapourPa / psychrolib.GetVapPresFromRelHum(tempC, rh) - 1)).toBeLessThan(5e-4);
          expect(Math.abs(humidityRatio / psychrolib.GetHumRatioFromVapPres(vapourPa, pressurePa) - 1)).toBeLessThan(1e-5);
          expect(Math.abs(densityKgPerM3 / psychrolib.GetMoistAirDensity(tempC, humidityRatio, pressurePa) - 1)).toBeLessThan(1e-5);
          const point = vapourPa > 611.66 ? ours.value.dewPointC : ours.value.frostPointC!;
          expect(Math.abs(point - psychrolib.GetTDewPointFromVapPres(tempC, vapourPa))).toBeLessThan(0.02);
        },
      ),
      { numRuns: 500 },
    );
  });

  test('a station’s humidity below freezing put in as if it were over ice comes out a fifth too dry: ours does not', () => {
    // -20 °C, 80 % as a station reports it: 0.8 times 125.6 Pa over water (Hyland-Wexler), not 0.8 times 103.26 Pa over ice
    const ours = air({ tempC: -20, rhFrac: 0.8 });
    const trapPa = psychrolib.GetVapPresFromRelHum(-20, 0.8);
    expect(ours.ok && ours.value.vapourPa).toBeGreaterThan(trapPa * 1.2);
    expect(ours.ok && Math.abs(ours.value.vapourPa - 100.5)).toBeLessThan(0.2);
  });
});

test('ice saturation agrees with the WMO formula of 2000', () => {
  const T0 = 273.16;
  for (let t = -60; t <= 0; t += 5) {
    const r = T0 / (t + 273.15);
    const wmoPa = 100 * 10 ** (-9.09685 * (r - 1) - 3.56654 * Math.log10(r) + 0.87682 * (1 - 1 / r) + 0.78614);
    // within: 0.3 %; Goff's formula of 1965 is that far from newer ones at -60 °C
    expect(Math.abs(iceSaturationPa(t) / wmoPa - 1)).toBeLessThan(3e-3);
  }
});

describe('laws', () => {
  test('ice holds less than supercooled water, the two meet at the triple point', () => {
    for (let t = -60; t < 0; t++) expect(iceSaturationPa(t)).toBeLessThan(waterSaturationPa(t));
    expect(Math.abs(iceSaturationPa(0.01) / waterSaturationPa(0.01) - 1)).toBeLessThan(1e-4);
  });

  test('points undo saturation; frost point lies between dew point and temperature', () => {
    fc.assert(
      fc.property(fc.double({ min: -55, max: 50, noNaN: true }), fc.double({ min: 0.01, max: 1, noNaN: true }), (tempC, rhFrac) => {
        const result = air({ tempC, rhFrac });
        if (!result.ok) throw new Error(JSON.stringify(result.error));
        const { vapourPa, dewPointC: dew, frostPointC: frost } = result.value;
        expect(waterSaturationPa(dew)).toBeCloseTo(vapourPa, 6);
        expect(dew).toBeLessThanOrEqual(tempC + 1e-9);
        if (frost === null) expect(vapourPa).toBeGreaterThan(611);
        else expect(frost).toBeGreaterThanOrEqual(dew - 1e-3);
      }),
    );
  });

  test('the same air however its humidity is given', () => {
    const base = air({ tempC: -8, rhFrac: 0.7 });
    if (!base.ok) throw new Error('refused');
    const { vapourPa, dewPointC: dew, rhIceFrac } = base.value;
    for (const input of [{ vapourPa }, { dewPointC: dew }, { rhIceFrac: rhIceFrac! }]) {
      const other = air({ tempC: -8, ...input });
      expect(other.ok && other.value.vapourPa).toBeCloseTo(vapourPa, 6);
    }
  });
});

test.each([
  [{ tempC: 20 }, { kind: 'missing-all', ways: [['rhFrac'], ['rhIceFrac'], ['dewPointC'], ['vapourPa']] }],
  [
    { tempC: 20, rhFrac: 0.5, vapourPa: 100 },
    { kind: 'conflict', why: 'one-humidity' },
  ],
  [
    { tempC: 20, rhFrac: 50 },
    { kind: 'out-of-range', field: 'rhFrac', high: 1 },
  ],
  [
    { tempC: 20, rhFrac: 0 },
    { kind: 'out-of-range', field: 'rhFrac' },
  ],
  [
    { tempC: 20, rhIceFrac: 0.5 },
    { kind: 'conflict', why: 'no-ice-above-freezing' },
  ],
  [
    { tempC: -20, rhIceFrac: 1.4 },
    { kind: 'out-of-range', field: 'rhIceFrac' },
  ],
  [
    { tempC: 10, dewPointC: 12 },
    { kind: 'out-of-range', field: 'dewPointC', high: 10 },
  ],
  [
    { tempC: 10, vapourPa: 5000 },
    { kind: 'out-of-range', field: 'vapourPa' },
  ],
  [
    { tempC: 90, rhFrac: 0.5 },
    { kind: 'out-of-range', field: 'tempC' },
  ],
  [
    { tempC: Number.NaN, rhFrac: 0.5 },
    { kind: 'not-a-number', field: 'tempC' },
  ],
  [
    { tempC: 10, rhFrac: 0.5, pressurePa: 1013.25 },
    { kind: 'out-of-range', field: 'pressurePa' },
  ],
])('refuses %j and says why', (input, error) => expect(air(input)).toMatchObject({ ok: false, error }));

test('callers’ slips throw', () => {
  expect(() => iceSaturationPa(1)).toThrow(RangeError);
  expect(() => waterSaturationPa(60)).toThrow(RangeError);
  expect(() => dewPointC(Number.NaN)).toThrow(RangeError);
  expect(() => dewPointC(1e6)).toThrow(RangeError);
  expect(frostPointC(700)).toBeNull();
});
