import { describe, expect, test } from 'vitest';
import { foldHolding } from '../src/holding/index.ts';
import type { JournalRecord } from '../src/journal/index.ts';
import { heatBelief, phenologyParameters, publishedSum, type SumSeen, sumMeasured } from '../src/phenology/index.ts';
import { plan } from '../src/plan/index.ts';
import { yardSeasons } from '../src/season/index.ts';
import { epochDayOf } from '../src/units/dates.ts';
import { newMaker } from './journal-maker.ts';

const TODAY = '2026-10-01';

function journal(more: (make: ReturnType<typeof newMaker>) => JournalRecord[] = () => []): JournalRecord[] {
  const make = newMaker();
  return [
    make('yard', { name: 'Home', latDeg: 49.9, lonDeg: -97.1, elevM: 239, climatePlace: 'Winnipeg MB' }, { date: '2020-05-01' }),
    make('hive', { hive: 'hive-a', label: 'A' }, { date: '2026-05-01' }),
    make('colony-begun', { colony: 'colony-a', hive: 'hive-a', how: 'unknown' }, { date: '2026-05-01' }),
    make('weighing', { hive: 'hive-a', frontKg: 24, rearKg: 24 }, { date: '2026-09-18' }),
    ...more(make),
  ];
}

function yard(records: readonly JournalRecord[], today = TODAY) {
  const seasons = yardSeasons(foldHolding(records, { until: today }), { today, seed: 1, members: 300 });
  if (!seasons.ok) throw new Error(JSON.stringify(seasons.error));
  return seasons.value[0]!;
}
const day = (iso: string | null) => epochDayOf(iso!)!;
const forage = (records: readonly JournalRecord[]) => day(yard(records).dates.firstForage.p50);

/** Springs in which a plant bloomed so many days away from 20 May. */
const springs = (plant: string, shift: number, count: number) => (make: ReturnType<typeof newMaker>) =>
  Array.from({ length: count }, (_, i) =>
    make('bloom', { plant, stage: 'first' }, { date: new Date(Date.UTC(2025 - i, 4, 20 + shift)).toISOString().slice(0, 10) }),
  );

describe('a heat sum and the own springs', () => {
  test('without an own spring it is the published one', () => {
    for (const event of ['firstPollen', 'firstForage'] as const) {
      const { meanCd, sdCd } = publishedSum(event);
      const belief = heatBelief(event, []);
      expect(belief.meanCd).toBeCloseTo(meanCd, 9);
      expect(belief.sdCd).toBeCloseTo(sdCd, 9);
      expect([belief.springs, belief.shiftCd]).toEqual([0, 0]);
    }
  });

  test('one measured spring moves it by the share of the site, by hand', () => {
    const { meanCd, sdCd } = publishedSum('firstForage');
    const share = phenologyParameters.siteShareFrac.value;
    // normal prior and one observation: weight of the site's variance in the whole
    expect(heatBelief('firstForage', [{ sumCd: meanCd + 40, errorSdCd: 0 }]).shiftCd).toBeCloseTo(40 * share, 9);
    expect(heatBelief('firstForage', [{ sumCd: meanCd + 40, errorSdCd: 0 }]).sdCd).toBeCloseTo(
      sdCd * Math.sqrt(share * (1 - share) + 1 - share),
      9,
    );
  });

  test('few years move it little, many nearly all the way, and a worse known spring less', () => {
    const { meanCd } = publishedSum('firstForage');
    const shift = (count: number, errorSdCd = 60) =>
      heatBelief(
        'firstForage',
        Array.from({ length: count }, (): SumSeen => ({ sumCd: meanCd - 50, errorSdCd })),
      ).shiftCd;
    expect(shift(1)).toBeGreaterThan(-10);
    for (const [few, more] of [
      [1, 2],
      [2, 5],
      [5, 20],
      [20, 200],
    ] as const)
      expect(shift(more)).toBeLessThan(shift(few));
    expect(shift(2000)).toBeLessThan(-49);
    expect(shift(3, 20)).toBeLessThan(shift(3, 60));
  });
});

describe('a spring that a daily record holds', () => {
  const DAY = epochDayOf('2025-05-10')!;
  /** 20 degC on every day from 1 May, 0 before. */
  const record = (hole: number | null = null) => {
    const fromDay = epochDayOf('2025-01-01')!;
    const meanC = Float64Array.from({ length: 200 }, (_, d) => (d === hole ? Number.NaN : fromDay + d >= DAY - 9 ? 20 : 0));
    return { fromDay, meanC };
  };
  const seen = { plant: 'apple', stage: 'first', day: DAY } as const;

  test('counts with the heat it had, by hand', () => {
    // ten days of 20 degC above 6.1 degC
    expect(sumMeasured(seen, record())).toEqual({ event: 'firstForage', sumCd: expect.closeTo(139, 6), errorSdCd: 0 });
    // full bloom has its own sum, 234 against 182
    expect(sumMeasured({ ...seen, stage: 'full' }, record())!.sumCd).toBeCloseTo((139 * 182) / 234, 6);
  });

  test('with a gap in it, outside the record, or of no known plant it does not count that way', () => {
    expect(sumMeasured(seen, record(60))).toBeNull();
    expect(sumMeasured({ ...seen, day: DAY + 365 }, record())).toBeNull();
    expect(sumMeasured({ ...seen, day: DAY - 365 }, record())).toBeNull();
    expect(sumMeasured({ ...seen, plant: 'orchid' }, record())).toBeNull();
  });
});

describe('blooms in a journal', () => {
  test('late dandelions of earlier springs make forage later, early ones earlier; more springs more so', () => {
    const none = forage(journal());
    const [late1, late6] = [1, 6].map((count) => forage(journal(springs('dandelion', 20, count))));
    const early6 = forage(journal(springs('dandelion', -15, 6)));
    expect(late1!).toBeGreaterThanOrEqual(none);
    expect(late6!).toBeGreaterThan(late1!);
    expect(late6! - none).toBeLessThan(20);
    expect(early6).toBeLessThan(none);
    expect(yard(journal(springs('dandelion', 20, 6))).learnt).toMatchObject({ firstForage: { springs: 6 }, firstPollen: { springs: 0 } });
  });

  test('a bloom of this spring is the date itself, in the season and in the plan', () => {
    const today = '2027-05-20';
    const records = journal((make) => [make('bloom', { plant: 'dandelion', stage: 'first' }, { date: '2027-05-14' })]);
    const season = yard(records, today);
    expect(season.dates.firstForage).toEqual({ p10: '2027-05-14', p50: '2027-05-14', p90: '2027-05-14' });
    expect(season.own).toEqual([{ name: 'firstForage', date: '2027-05-14', from: 'bloom', plant: 'dandelion' }]);
    const holding = foldHolding(records, { until: today });
    const planned = plan(holding, { today, seed: 1, members: 60 }, { journalDigest: '', shares: false });
    if (!planned.ok) throw new Error(planned.error.kind);
    expect(planned.value.dates[0]!.dates['firstForage']!.p90).toBe('2027-05-14');
  });

  test('earlier springs reach the forecast: with late blooms a colony needs more', () => {
    const need = (records: readonly JournalRecord[]) => {
      const planned = plan(foldHolding(records), { today: TODAY, seed: 1, members: 200 }, { journalDigest: '', shares: false });
      if (!planned.ok) throw new Error(planned.error.kind);
      return planned.value.outlooks[0]!.needKg;
    };
    expect(need(journal(springs('dandelion', 20, 8)))).toBeGreaterThan(need(journal()));
  });

  test('plants of which nothing is known and blooms of another yard change nothing', () => {
    const none = yard(journal()).dates;
    expect(yard(journal(springs('orchid', 20, 5))).dates).toEqual(none);
    const away = journal((make) => [make('bloom', { plant: 'dandelion', stage: 'first' }, { date: '2025-06-01', yard: 'away' })]);
    expect(yard(away).dates).toEqual(none);
  });
});

describe('own dates in a journal', () => {
  const set = (...ownDates: readonly { name: string; date: string; yard?: string }[]) =>
    journal((make) => [make('setting', { key: 'ownDates', value: ownDates as never }, { date: '2026-09-01' })]);

  test('one of this winter overrules, one of another winter or yard does not', () => {
    expect(yard(set({ name: 'lastFeedingDay', date: '2026-09-28' })).dates.lastFeedingDay.p10).toBe('2026-09-28');
    const none = yard(journal()).dates.lastFeedingDay;
    expect(yard(set({ name: 'lastFeedingDay', date: '2025-09-28' })).dates.lastFeedingDay).toEqual(none);
    expect(yard(set({ name: 'lastFeedingDay', date: '2026-09-28', yard: 'away' })).dates.lastFeedingDay).toEqual(none);
  });

  test('a date that cannot be, a name that is none, two out of order: not used, and named', () => {
    const wrong = yard(set({ name: 'firstForage', date: '2026-12-24' }, { name: 'swarmDay', date: '2026-06-01' }));
    expect(wrong.own).toEqual([]);
    expect(wrong.refused.map(({ kind }) => kind)).toEqual(['date-order', 'unknown-choice']);
    const order = yard(set({ name: 'firstForage', date: '2027-05-01' }, { name: 'firstPollen', date: '2027-05-09' }));
    expect(order.own.map(({ name }) => name)).toEqual(['firstForage']);
    expect(order.refused).toMatchObject([{ kind: 'date-order' }]);
  });
});
