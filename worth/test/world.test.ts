import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { doNothing, perfectKnowledge } from '../arms/bounds.ts';
import { outcomeOf } from '../arms/gift.ts';
import { journalOf } from '../arms/journal.ts';
import { rules } from '../arms/rules.ts';
import { type KeeperRow, starvedAt, sugarAt, sweepOf } from '../study.ts';
import { broodUseG, winterUseG } from '../world/colony.ts';
import { keeperOf } from '../world/keeper.ts';

describe('the world', () => {
  it('imports nothing of the product', () => {
    const folder = new URL('../world/', import.meta.url);
    for (const file of readdirSync(folder)) {
      for (const [, from] of readFileSync(new URL(file, folder), 'utf8').matchAll(/from '([^']+)'/g)) expect(from, file).toMatch(/^\.\//);
    }
  });

  it('eats what was weighed: 39 +- 13 g a day at 3.5 degC, 2 to 3 kg in March, about double with brood', () => {
    // 32 colonies, south-west Sweden, PLOS ONE 16:e0258398; Swedish club advice for March; Russian handbook for the doubling
    expect(Math.abs(winterUseG(16_500, 3.5, 0.5) - 39)).toBeLessThan(13);
    const march = 0.031 * (winterUseG(15_000, -4, 0.5) + broodUseG(15_000, 75, 92, 0.5));
    expect(march).toBeGreaterThan(2);
    expect(march).toBeLessThan(3);
    const april = winterUseG(13_000, 3, 0.5);
    expect((april + broodUseG(13_000, 105, 95, 0.5)) / april).toBeGreaterThan(1.7);
  });

  it('gives the same keeper for the same number and seed, another for another', () => {
    const hives = (id: number, seed: number) => keeperOf(id, seed).hives.map(({ is }) => is.storesKg);
    expect(hives(3, 1)).toEqual(hives(3, 1));
    expect(hives(3, 1)).not.toEqual(hives(3, 2));
  });

  it('writes into the journal only what a keeper saw', () => {
    const keeper = keeperOf(0, 1);
    const text = JSON.stringify(journalOf(keeper));
    for (const { is } of keeper.hives) expect(text).not.toContain(String(is.use.needKg));
  });
});

describe('the arms', () => {
  const keepers = Array.from({ length: 28 }, (_, id) => keeperOf(id, 9));
  const starved = (arm: Parameters<typeof outcomeOf>[1], setting: number) =>
    keepers.reduce((sum, keeper) => sum + outcomeOf(keeper, arm, setting).starved, 0);

  it('knowledge beforehand is never worse than doing nothing, and with all its sugar loses only what no room or winter lets live', () => {
    expect(starved(perfectKnowledge, 1)).toBeLessThan(0.2 * starved(doNothing, 0));
  });

  it('more sugar never starves more under any rule of feeding alone', () => {
    for (const arm of rules.filter(({ name }) => !name.startsWith('even out'))) {
      const losses = arm.settings.map((setting) => starved(arm, setting));
      for (let i = 1; i < losses.length; i++)
        expect(losses[i], `${arm.name} ${arm.settings[i]}`).toBeLessThanOrEqual(losses[i - 1] as number);
    }
  });

  it('each rule is swept at eight settings or more', () => {
    for (const arm of rules) expect(arm.settings.length, arm.name).toBeGreaterThanOrEqual(8);
  });
});

describe('reading a sweep', () => {
  const row: KeeperRow = { id: 0, world: 'w', climate: 'c', colonies: 10, starved: [[8, 4, 2]], sugarKg: [[0, 40, 80]] };
  const sweep = sweepOf([row], 0, [1, 2, 3]);

  it('stands on the straight lines between settings, and at its ends beyond them', () => {
    expect(starvedAt(sweep, 2)).toBeCloseTo(0.6, 12);
    expect(starvedAt(sweep, 6)).toBeCloseTo(0.3, 12);
    expect(starvedAt(sweep, 99)).toBeCloseTo(0.2, 12);
    expect(sugarAt(sweep, 0.6)).toBeCloseTo(2, 12);
    expect(sugarAt(sweep, 0.1)).toBeNull();
  });
});
