import { describe, expect, test } from 'vitest';
import { SHIPPED_TOPS, shippedTop, topSeason } from '../src/hivetop/index.ts';
import { type TopForecastInput, topForecast } from '../src/winter/index.ts';

const INPUT: TopForecastInput = {
  bees: 18000,
  from: '2026-11-01',
  to: '2027-04-15',
  monthlyMeanC: [-17, -14, -7, 3, 11, 16, 19, 18, 12, 5, -5, -14],
  members: 100,
  topMembers: 10,
  seed: 7,
  tops: SHIPPED_TOPS.map((shipped) => ({ name: shipped, shipped })),
};

function forecast(change: Partial<TopForecastInput> = {}) {
  const result = topForecast({ ...INPUT, ...change });
  if (!result.ok) throw new Error(JSON.stringify(result.error));
  return result.value;
}

describe('a top through the winters of a forecast', () => {
  test('every run accounts for its water and its heat to 1e-9', () => {
    const days = 150;
    const members = 3;
    const tempC = Float64Array.from(
      { length: members * days },
      (_, i) => -8 - 14 * Math.sin((Math.PI * (i % days)) / days) + 6 * Math.sin(i * 1.3),
    );
    const useKg = new Float64Array(members * days).fill(0.05);
    for (const name of SHIPPED_TOPS) {
      const runs = topSeason(shippedTop(name), {
        days,
        members,
        rows: members,
        tempC,
        useKg,
        candyShareFrac: name === 'vented-box' ? 0.2 : 0,
      });
      if (!runs.ok) throw new Error(JSON.stringify(runs.error));
      expect(runs.value.unclosedFrac).toBeLessThan(1e-9);
      for (let m = 0; m < members; m++) {
        const { waterMadeKg, waterOutKg, waterHeldKg, waterFrozenKg, waterDrippedKg } = runs.value;
        expect(waterOutKg[m]! + waterHeldKg[m]! + waterFrozenKg[m]! + waterDrippedKg[m]!).toBeCloseTo(waterMadeKg[m]!, 9);
      }
    }
  });

  test('the four shipped tops stand in the order asked, with needs that follow the heat they let go', () => {
    const { tops } = forecast();
    expect(tops.map(({ name }) => name)).toEqual(SHIPPED_TOPS);
    const of = (name: string) => tops.find((top) => top.name === name)!;
    expect(of('sealed-foam').conductanceWPerK).toBeLessThan(of('bare-lid').conductanceWPerK);
    expect(of('sealed-foam').needKg).toBeLessThanOrEqual(of('bare-lid').needKg);
    expect(of('vented-box').needOverFirstKg).toBe(0);
    expect(of('vented-box').waterOutKg.p50).toBeGreaterThan(of('sealed-foam').waterOutKg.p50);
    expect(of('vented-box').absorbentFull).not.toBeNull();
    expect(of('bare-lid').absorbentFull).toBeNull();
    for (const top of tops) {
      expect(top.waterMadeKg.p5).toBeLessThanOrEqual(top.waterMadeKg.p95);
      expect(top.onScaleKg.length).toBe(23);
      expect(top.section.surfaces.length).toBeGreaterThan(0);
    }
  });

  test('most ice at once in a sealed foam hive is of the order keepers see leave on the first warm day', () => {
    // 1 to 2 kg of frozen condensate, foam hives, central Finland: one keeper; within a factor of two of that range
    const sealed = forecast({ tops: [{ name: 'sealed', shipped: 'sealed-foam' }] }).tops[0]!;
    expect(sealed.mostFrozenKg.p50).toBeGreaterThan(0.5);
    expect(sealed.mostFrozenKg.p50).toBeLessThan(4);
  });

  test('same seed, same answer; a top’s figures do not hang on which others are asked', () => {
    const alone = forecast({ tops: [{ name: 'bare-lid', shipped: 'bare-lid' }] }).tops[0]!;
    const among = forecast().tops.find(({ name }) => name === 'bare-lid')!;
    expect({ ...among, needOverFirstKg: 0 }).toEqual({ ...alone, needOverFirstKg: 0 });
  });

  test('a faulty top is named with its place', () => {
    const result = topForecast({
      ...INPUT,
      tops: [{ name: 'x', build: { stack: [{ material: 'burlap', thicknessM: 0.002 }], openings: [] } }],
    });
    expect(result.ok ? null : result.error).toMatchObject({ kind: 'conflict', fields: ['tops[0].build.stack'], why: 'no-lid' });
    expect(topForecast({ ...INPUT, tops: [] }).ok).toBe(false);
    expect(topForecast({ ...INPUT, tops: [{ name: 'x' }] }).ok).toBe(false);
  });
});
