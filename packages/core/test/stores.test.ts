import { describe, expect, test } from 'vitest';
import { type StoresInput, stores } from '../src/stores/index.ts';
import { standardBuild } from '../src/tables/parts.ts';
import { type HeftAnswer, heft } from '../src/weigh/index.ts';

const build = standardBuild(['deep', 'deep'], 10);
const base: StoresInput = { build, grossKg: 52, framesOfBees: 8, date: '2026-09-18' };
const ask = (change: Partial<StoresInput> = {}) => {
  const answer = stores({ ...base, ...change });
  if (!answer.ok) throw new Error(JSON.stringify(answer.error));
  return answer.value;
};

describe('stores', () => {
  test('the squares of the error parts add up to that of the whole', () => {
    for (const change of [{}, { cappedFrames: [{ frame: 'deep', count: 5, where: 'top' as const }] }, { snowIceKg: 3 }]) {
      const { errorParts, sdKg } = ask(change);
      const sum = Object.values(errorParts).reduce((total, kg) => total + kg * kg, 0);
      expect(Math.abs(sum - sdKg * sdKg)).toBeLessThan(1e-9);
    }
  });

  test('the tare errs by at least 2.5 kg until an empty hive of the build was weighed, and then by less', () => {
    expect(ask().tare.sharedSdKg).toBeGreaterThanOrEqual(2.5);
    expect(ask().weightOnly).toBe(true);
    const weighed = ask({ emptyHive: { massKg: 26 } });
    expect(weighed.tare.sharedSdKg).toBeLessThan(2.5);
    expect(weighed.weightOnly).toBe(false);
  });

  test('a kilogram more on the scale is a kilogram more of stores; a weighed part beats the table', () => {
    expect(ask({ grossKg: 53 }).storesKg - ask().storesKg).toBeCloseTo(1, 9);
    const heavier = build.map((line) => (line.part === 'telescoping-cover' ? { ...line, massKg: 5.86 } : line));
    // the table's cover weighs 3.86 kg
    expect(ask().storesKg - ask({ build: heavier }).storesKg).toBeCloseTo(2, 6);
  });

  test('counting capped frames narrows the answer, and joins what weight and count say', () => {
    const counted = ask({
      cappedFrames: [
        { frame: 'deep', count: 6, where: 'top' },
        { frame: 'deep', count: 1, where: 'below' },
      ],
    });
    expect(counted.sdKg).toBeLessThan(ask().sdKg);
    const [low, high] = [counted.byWeight!.kg, counted.byCount!.kg].sort((a, b) => a - b);
    expect(counted.storesKg).toBeGreaterThanOrEqual(low!);
    expect(counted.storesKg).toBeLessThanOrEqual(high!);
    expect(counted.contact?.frames).toBe(6);
  });

  test('water of recent syrup is not stores, within three days the weight is provisional, and after two weeks it is stores', () => {
    const fed = (date: string) => ask({ syrupGiven: [{ date, sugarKg: 8 }] });
    expect(fed('2026-09-17').storesKg).toBeLessThan(ask().storesKg);
    expect(fed('2026-09-17').provisional).not.toBeNull();
    expect(fed('2026-09-10').provisional).toBeNull();
    expect(fed('2026-09-01').storesKg).toBeCloseTo(ask().storesKg, 9);
  });

  test('a seam of bees counts like a frame of bees, and only one way of counting is given', () => {
    expect(ask({ framesOfBees: undefined, seamsOfBees: 8 })).toEqual(ask({ framesOfBees: 8 }));
    expect(ask({ framesOfBees: undefined, seamsOfBees: 7 }).notes).not.toContain('bees-assumed');
    const both = stores({ ...base, seamsOfBees: 8 });
    expect(both).toEqual({ ok: false, error: { kind: 'conflict', fields: ['framesOfBees', 'seamsOfBees'], why: 'give-one' } });
  });

  test('a weight without an error has the one of a weighing at both edges', () => {
    for (const kg of [18, 26, 36]) {
      const both = heft({ frontKg: kg, rearKg: kg });
      if (!both.ok) throw new Error('readings were refused');
      const { totalKg, sdKg } = both.value;
      expect(ask({ grossKg: totalKg }).errorParts.scaleKg).toBeCloseTo(sdKg, 9);
    }
  });

  test('a hive read at both edges is not sent to its second edge, one read at one edge is', () => {
    const both = heft({ frontKg: 26, rearKg: 25 });
    const front = heft({ frontKg: 26 });
    if (!both.ok || !front.ok) throw new Error('readings were refused');
    const named = (weighing: HeftAnswer) =>
      ask({ grossKg: weighing.totalKg, grossSdKg: weighing.sdKg }).measurements.map(({ what }) => what);
    expect(named(front.value)).toContain('second-edge');
    expect(named(both.value)).not.toContain('second-edge');
  });

  test.each<[string, Partial<StoresInput>, string]>([
    ['more seams than there are places', { framesOfBees: undefined, seamsOfBees: 30 }, 'seamsOfBees'],
    ['more frames than the boxes hold', { cappedFrames: [{ frame: 'deep', count: 40, where: 'top' }] }, 'cappedFrames'],
    ['a part nobody knows', { build: [{ part: 'deep-12-wood', count: 1 }] }, 'part'],
    ['no box', { build: [{ part: 'solid-floor', count: 1 }] }, 'build'],
    ['a weight too small for this build', { grossKg: 6 }, 'grossKg'],
    ['neither weight nor count', { grossKg: undefined }, 'grossKg'],
    ['frames of bees below nothing', { framesOfBees: -1 }, 'framesOfBees'],
    ['syrup from tomorrow', { syrupGiven: [{ date: '2026-09-19', sugarKg: 1 }] }, '2026-09-1'],
    ['a weight that is no number', { grossKg: Number.NaN }, 'grossKg'],
  ])('%s is refused by name', (_, change, field) => {
    const answer = stores({ ...base, ...change });
    expect(answer.ok).toBe(false);
    expect(JSON.stringify(answer)).toContain(field);
  });
});
