import jstat from 'jstat';
import { expect, test } from 'vitest';
import { lossAt, lossCurve } from '../src/provision/index.ts';
import { lossPieces } from '../src/provision/loss-curve.ts';
import { provisionParameters } from '../src/tables/parameters-provision.gen.ts';

interface NormalLaw {
  inv(share: number, mean: number, sd: number): number;
  cdf(x: number, mean: number, sd: number): number;
}
/** A second library's normal law; its types are declared only as far as the product uses it. */
const { normal } = jstat as unknown as { readonly normal: NormalLaw };

const CASES = [
  { needKg: 20, hasSdKg: 2.5, certaintyFrac: 0.95 },
  { needKg: 12, hasSdKg: 1, certaintyFrac: 0.9 },
  { needKg: 30, hasSdKg: 4, certaintyFrac: 0.99 },
];

test.each(CASES)(
  '[P15] the loss curve is the chance that use and error of reading exceed what is there, less the chance the need leaves: %o',
  (one) => {
    const { needKg, hasSdKg, certaintyFrac } = one;
    const z = normal.inv(certaintyFrac, 0, 1);
    const f = provisionParameters.useSpreadFrac.value;
    // the mean use that makes this the need, found by halving: need = use + z sqrt(sd2 + (f use)2)
    let [low, high] = [0, needKg];
    for (let i = 0; i < 60; i++) {
      const use = (low + high) / 2;
      if (use + z * Math.hypot(hasSdKg, f * use) < needKg) low = use;
      else high = use;
    }
    const spreadKg = Math.hypot(hasSdKg, f * low);
    const curve = lossCurve(needKg, hasSdKg, certaintyFrac);
    let largest = 0;
    for (let shortKg = 0; shortKg <= needKg; shortKg += 0.05) {
      const exact = normal.cdf(needKg - low, 0, spreadKg) - normal.cdf(needKg - shortKg - low, 0, spreadKg);
      largest = Math.max(largest, Math.abs(lossAt(curve, shortKg) - exact));
    }
    // chords of an S-shaped curve: no more than three losses in a hundred off, and at the points themselves nothing
    expect(largest).toBeLessThan(0.03);
    for (const { shortKg, lossFrac } of curve.slice(1)) {
      const exact = normal.cdf(needKg - low, 0, spreadKg) - normal.cdf(needKg - shortKg - low, 0, spreadKg);
      expect(Math.abs(lossFrac - exact)).toBeLessThan(1e-6);
    }
  },
);

test('[P15] what is not short of need costs nothing, and the curve never falls', () => {
  const curve = lossCurve(20, 2, 0.95);
  expect(lossAt(curve, 0)).toBe(0);
  expect(lossAt(curve, -5)).toBe(0);
  for (let kg = 0; kg < 30; kg += 0.5) expect(lossAt(curve, kg + 0.5)).toBeGreaterThanOrEqual(lossAt(curve, kg));
  expect(lossAt(curve, 100)).toBeCloseTo(0.99 - 0.05, 9);
});

test('[P15] pieces add up to the curve, and each flatter one is marked', () => {
  const curve = lossCurve(20, 2, 0.95);
  for (const highKg of [0.5, 3, 9, 15, 20]) {
    const pieces = lossPieces(curve, highKg);
    expect(pieces.reduce((kg, piece) => kg + piece.widthKg, 0)).toBeCloseTo(highKg, 9);
    expect(pieces.reduce((loss, piece) => loss + piece.widthKg * piece.perKg, 0)).toBeCloseTo(lossAt(curve, highKg), 9);
    pieces.slice(1).forEach((piece, i) => {
      expect(piece.flatter).toBe(piece.perKg < pieces[i]!.perKg - 1e-12);
    });
  }
});
