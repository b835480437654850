import { describe, expect, it } from 'vitest';
import type { JournalRecord } from '../src/journal/index.ts';
import { learn, spring } from '../src/plan/index.ts';
import { countOdds } from '../src/plan/spring.ts';
import { probableCause } from '../src/watch/index.ts';
import { newMaker } from './journal-maker.ts';

const PARTS = [
  { part: 'solid-floor', count: 1 },
  { part: 'deep-10-wood', count: 2 },
  { part: 'deep-frame-drawn', count: 20 },
  { part: 'telescoping-cover', count: 1 },
];
const NAMES = ['a', 'b', 'c', 'd', 'e', 'f'];

/** Six hives of 48 kg in September; a winter in which each lost `lessKg` by 1 March; C and D found dead in April. */
function winter(lessKg: number): JournalRecord[] {
  const make = newMaker();
  const records: JournalRecord[] = [make('yard', { name: 'Home', latDeg: 53.97, lonDeg: -101.09, elevM: 272 }, { date: '2026-05-01' })];
  for (const name of NAMES) {
    const hive = `hive-${name}`;
    records.push(
      make('hive', { hive, label: name.toUpperCase() }, { date: '2026-05-01' }),
      make('build', { hive, parts: PARTS }, { date: '2026-05-01' }),
      make('colony-begun', { colony: `colony-${name}`, hive, how: 'unknown' }, { date: '2026-05-01' }),
      make('weighing', { hive, frontKg: 24, rearKg: 24 }, { date: '2026-09-18' }),
      make('weighing', { hive, frontKg: 24 - lessKg / 2, rearKg: 24 - lessKg / 2 }, { date: '2027-03-01' }),
    );
  }
  const count = (name: string, body: { alive: boolean; storesKg?: number; found?: readonly never[] | readonly string[] }) =>
    make('spring-count', { colony: `colony-${name}`, ...body } as never, { date: '2027-04-25' });
  records.push(
    count('a', { alive: true, storesKg: 6 }),
    count('b', { alive: true }),
    count('c', { alive: false, found: ['heads-in-cells', 'no-honey-near', 'cluster-a-fist'] }),
    count('d', { alive: false, found: ['sunken-greasy-caps'] }),
  );
  return records;
}

const SETTING = { today: '2027-05-10', seed: 1, members: 200 };
function counted(records: readonly JournalRecord[], today = SETTING.today) {
  const answer = spring(records, { ...SETTING, today });
  if (!answer.ok) throw new Error(JSON.stringify(answer.error));
  return answer.value;
}

describe('the count of spring', () => {
  it('counts who was seen, leaves out who was not, and sets the loss against the region', () => {
    const answer = counted(winter(8));
    expect([answer.winter, answer.colonies, answer.survivors, answer.notCounted]).toEqual([2026, 6, 2, ['E', 'F']]);
    expect(answer.loss!.frac).toBe(0.5);
    // Jeffreys interval of 2 in 4: quantiles of Beta(2.5, 2.5), by its symmetry around 1/2
    expect(answer.loss!.lowFrac + answer.loss!.highFrac).toBeCloseTo(1, 9);
    expect(answer.region.lossFrac).toBe(0.27);
  });

  it('holds every counted colony once against what was said in autumn, and its stores too', () => {
    const answer = counted(winter(8));
    expect(answer.said.reduce((sum, { colonies }) => sum + colonies, 0)).toBe(4);
    expect(answer.said.reduce((sum, { died }) => sum + died, 0)).toBe(2);
    expect(answer.stores.map(({ label, seenKg }) => [label, seenKg])).toEqual([['A', 6]]);
    expect(answer.stores[0]!.saidKg.p5).toBeLessThan(answer.stores[0]!.saidKg.p95);
  });

  it('what was seen after autumn does not make what was said wiser', () => {
    expect(counted(winter(4)).said).toEqual(counted(winter(12)).said);
  });

  it('reads hunger from its signs, and stops at a sign of brood disease', () => {
    const [c, d] = counted(winter(8)).deadouts;
    expect([c!.label, c!.named, c!.notifiable]).toEqual(['C', 'starved', false]);
    expect([d!.label, d!.named, d!.notifiable]).toEqual(['D', null, true]);
  });

  it('refuses a day outside spring', () => {
    const answer = spring(winter(8), { ...SETTING, today: '2027-01-10' });
    expect(answer.ok ? null : answer.error).toMatchObject({ kind: 'date-order', notBefore: '2027-03-01' });
  });
});

describe('odds of a count', () => {
  it('are the binomial where all are alike', () => {
    // n = 10, p = 0.3: 0.0282, 0.1211, 0.2335, 0.2668, any table of the binomial
    const odds = countOdds(new Array(10).fill(0.3));
    for (const [k, chance] of [0.0282, 0.1211, 0.2335, 0.2668].entries()) expect(odds[k]).toBeCloseTo(chance, 4);
    expect(odds.reduce((sum, one) => sum + one, 0)).toBeCloseTo(1, 12);
  });

  it('of unlike ones add up to their mean', () => {
    const losses = [0.02, 0.5, 0.9, 0.1];
    const mean = countOdds(losses).reduce((sum, chance, k) => sum + k * chance, 0);
    expect(mean).toBeCloseTo(1.52, 12);
  });
});

describe('a dead hive', () => {
  it('without any sign is unsure, and causes add up', () => {
    const { causes, named } = probableCause([]);
    expect(named).toBeNull();
    expect(causes.reduce((sum, { chanceFrac }) => sum + chanceFrac, 0)).toBeCloseTo(1, 12);
  });

  it('is read as the trade reads it: heads in cells and a tiny cluster starved, specks in a strong hive mites', () => {
    expect(probableCause(['heads-in-cells', 'no-honey-near']).named).toBe('starved');
    expect(probableCause(['mite-specks', 'honey-left', 'few-bees-left']).named).toBe('mites');
    expect(probableCause(['gnawed']).named).toBe('mice');
  });

  it('with signs that speak against each other is unsure', () => {
    expect(probableCause(['heads-in-cells', 'mite-specks']).named).toBeNull();
  });
});

describe('learning from a journal', () => {
  const learnt = (records: readonly JournalRecord[]) => {
    const answer = learn(records, SETTING);
    if (!answer.ok) throw new Error(JSON.stringify(answer.error));
    return answer.value.appetite;
  };

  it('a winter in which all ate much raises the level, one in which all ate little lowers it, neither by all it says', () => {
    const [much, little] = [learnt(winter(14)), learnt(winter(4))];
    expect(much.level.after.median).toBeGreaterThan(much.level.before.median);
    expect(little.level.after.median).toBeLessThan(little.level.before.median);
    expect(much.winters).toHaveLength(1);
    expect(much.winters[0]!.colonies).toBe(6);
    expect(much.nextWinter.logSd).toBeGreaterThan(much.level.after.logSd);
  });

  it('without a lift in winter nothing is learnt', () => {
    const { level, winters } = learnt(winter(8).filter(({ at }) => at.date !== '2027-03-01'));
    expect(level.after.logSd).toBeCloseTo(level.before.logSd, 12);
    expect(level.after.median).toBeCloseTo(level.before.median, 12);
    expect(winters).toEqual([]);
  });
});
