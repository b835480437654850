import { describe, expect, test } from 'vitest';
import { doubtCauses, type OutlookInput, outlook, winterParameters } from '../src/winter/index.ts';

const base: OutlookInput = {
  bees: 16000,
  storesKg: 24,
  storesSdKg: 2,
  hive: { conductanceWPerK: 1.2 },
  from: '2026-09-18',
  to: '2027-06-30',
  place: 'The Pas MB',
  members: 400,
};
const ask = (input: OutlookInput) => {
  const answer = outlook(input);
  if (!answer.ok) throw new Error(JSON.stringify(answer.error));
  return answer.value;
};

describe('an outlook', () => {
  test('the shares of doubt add up to one, and are what freezing each cause takes off', () => {
    const { doubtShares } = ask(base);
    const sum = doubtCauses.reduce((total, cause) => total + doubtShares[cause], 0);
    expect(Math.abs(sum - 1)).toBeLessThan(1e-9);
    // frozen from outside: a date of forage without doubt has no share, a count without error has none, weighed without error none
    expect(ask({ ...base, forage: '2027-06-01' }).doubtShares.forage).toBe(0);
    expect(ask({ ...base, beesSdFrac: 0 }).doubtShares.bees).toBe(0);
    const sure = ask({ ...base, storesSdKg: 0 }).doubtShares;
    expect(sure.tare + sure.scale).toBe(0);
    const daily = Array.from({ length: 286 }, (_, d) => -5 + 15 * Math.cos((2 * Math.PI * (d + 60)) / 365));
    const { place: _, ...withoutPlace } = base;
    expect(ask({ ...withoutPlace, dailyMeanC: daily }).doubtShares.weather).toBe(0);
  });

  test('with everything pinned and flat weather the band has no width', () => {
    const { place: _, ...withoutPlace } = base;
    const fixed = Object.fromEntries(Object.entries(winterParameters).map(([name, row]) => [name, row.value]));
    const answer = ask({
      ...withoutPlace,
      dailyMeanC: Array.from({ length: 286 }, () => -6),
      forage: '2027-05-20',
      beesSdFrac: 0,
      storesSdKg: 0,
      fixed,
      members: 50,
    });
    expect(answer.useKg.p95 - answer.useKg.p5).toBe(0);
    expect(answer.runOut?.p5).toBe(answer.runOut?.p95);
    expect(doubtCauses.every((cause) => answer.doubtShares[cause] === 0)).toBe(true);
    expect(Math.abs(answer.needParts.doubtKg)).toBeLessThan(1e-9);
  });

  test('a hive lighter in autumn than a review asks for without its wood is flagged, and only in autumn', () => {
    // 20 kg less 16,000 bees of 0.12 g: 18.1 kg of stores
    expect(ask({ ...base, storesKg: 17.5 }).lightForWinter).toBe(true);
    expect(ask({ ...base, storesKg: 18.7 }).lightForWinter).toBe(false);
    expect(ask({ ...base, storesKg: undefined }).lightForWinter).toBe(null);
    expect(ask({ ...base, storesKg: 8, from: '2027-02-15' }).lightForWinter).toBe(null);
  });

  test('need rises with the asked certainty, falls with insulation, and the same seed gives the same answer', () => {
    const need = (input: Partial<OutlookInput>) => ask({ ...base, ...input }).needKg;
    expect(need({ certaintyFrac: 0.99 })).toBeGreaterThan(need({ certaintyFrac: 0.9 }));
    expect(need({ hive: { conductanceWPerK: 0.4 } })).toBeLessThan(need({ hive: { conductanceWPerK: 1.5 } }));
    expect(ask(base)).toEqual(ask(base));
    expect(need({ seed: 2 })).not.toBe(need({ seed: 1 }));
  });

  test('months and days add up to the whole', () => {
    const fixedNone = ask({ ...base, members: 21 });
    expect(fixedNone.dailyUseKg).toHaveLength(286);
    expect(fixedNone.monthlyUseKg.map(({ month }) => month)).toEqual([
      '2026-09',
      '2026-10',
      '2026-11',
      '2026-12',
      '2027-01',
      '2027-02',
      '2027-03',
      '2027-04',
      '2027-05',
      '2027-06',
    ]);
    const pinned = ask({
      ...base,
      members: 20,
      beesSdFrac: 0,
      fixed: Object.fromEntries(Object.entries(winterParameters).map(([n, r]) => [n, r.value])),
    });
    const days = pinned.dailyUseKg.reduce((sum, kg) => sum + kg, 0);
    const months = pinned.monthlyUseKg.reduce((sum, { p50 }) => sum + p50, 0);
    // medians of days and of months against the median of the sum: members differ only by weather here
    expect(Math.abs(days / pinned.useKg.p50 - 1)).toBeLessThan(0.1);
    expect(Math.abs(months / pinned.useKg.p50 - 1)).toBeLessThan(0.1);
  });

  test('a record of deaths raises the need, survivors lower it, and both verdicts are told', () => {
    const rule = (colonies: number, starved: number) => ask({ ...base, ownRule: { grossKg: 45, colonies, starved } });
    expect(rule(40, 30).needKg).toBeGreaterThan(ask(base).needKg);
    expect(rule(40, 0).needKg).toBeLessThan(ask(base).needKg);
    expect(rule(0, 0).needKg).toBe(ask(base).needKg);
    expect(rule(40, 0).ownRule?.verdict).toBe('enough');
  });

  test.each<[string, Partial<OutlookInput>, string]>([
    ['no bees', { bees: 0 }, 'bees'],
    ['a million bees', { bees: 1_000_000 }, 'bees'],
    ['no number', { bees: Number.NaN }, 'bees'],
    ['an end before the beginning', { to: '2026-09-17' }, 'to'],
    ['a day that does not exist', { from: '2027-02-29' }, 'from'],
    ['two weathers', { monthlyMeanC: Array.from({ length: 12 }, () => 0) }, 'dailyMeanC'],
    ['forage before the beginning', { forage: '2026-09-01' }, 'forage'],
    ['a parameter that is none', { fixed: { luck: 1 } }, 'fixed'],
    ['a certainty of one', { certaintyFrac: 1 }, 'certaintyFrac'],
    ['half a member', { members: 100.5 }, 'members'],
    ['more starved than there were', { ownRule: { grossKg: 50, colonies: 3, starved: 4 } }, 'ownRule.starved'],
    ['a place nobody knows', { place: 'Nowhere in particular' }, 'place'],
  ])('%s is refused by name', (_, change, field) => {
    const answer = outlook({ ...base, ...change });
    expect(answer.ok).toBe(false);
    expect(JSON.stringify(answer)).toContain(`"${field}`);
  });
});
