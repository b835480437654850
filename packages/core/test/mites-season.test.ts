import { describe, expect, test } from 'vitest';
import { foldHolding } from '../src/holding/index.ts';
import type { JournalRecord, Kind } from '../src/journal/index.ts';
import {
  betaGrid,
  checkedLabel,
  labelDiffers,
  levelStair,
  levelsOnDay,
  limitsOf,
  mites,
  projectLevels,
  shareAt,
  startChances,
  treatmentRows,
} from '../src/mites/index.ts';
import { miteNoteOf } from '../src/plan/mite-note.ts';
import { epochDayOf } from '../src/units/index.ts';
import { newMaker } from './journal-maker.ts';

const dayOf = (iso: string) => epochDayOf(iso)!;
const row = (key: string) => treatmentRows().find((one) => one.key === key)!;

function journal() {
  const make = newMaker();
  const records: JournalRecord[] = [];
  const put = (kind: Kind, body: object, date: string) => void records.push(make(kind, body as never, { date }));
  put('yard', { name: 'Creek', latDeg: 50, lonDeg: -97, elevM: 240 }, '2026-04-20');
  for (const name of ['a', 'b', 'c']) {
    put('hive', { hive: `hive-${name}`, label: name.toUpperCase() }, '2026-04-20');
    put('build', { hive: `hive-${name}`, parts: [{ part: 'deep-10-wood', count: 2 }] }, '2026-04-20');
    put('colony-begun', { colony: `colony-${name}`, hive: `hive-${name}`, how: 'unknown' }, '2026-04-20');
  }
  return { records, put };
}

const answered = (records: readonly JournalRecord[], today: string) => {
  const answer = mites(foldHolding(records, { until: today }), { today, seed: 1, members: 300 });
  if (!answer.ok) throw new Error(JSON.stringify(answer.error));
  return answer.value;
};
const colonyOf = (records: readonly JournalRecord[], today: string, name: string) =>
  answered(records, today).colonies.find(({ colony }) => colony === `colony-${name}`)!;
const washed = (count: number, bees = 300, date = '2026-08-05', name = 'a') => {
  const made = journal();
  made.put('wash', { colony: `colony-${name}`, bees, mites: count, method: 'alcohol' }, date);
  return made;
};

describe('levels ahead', () => {
  const base = { fromDay: dayOf('2026-06-01'), toDay: dayOf('2026-07-15'), seed: 4, entity: 'a', yard: 'y', members: 200, bees: 20000 };
  const brood = new Float64Array(200).fill(dayOf('2026-10-01'));
  const start = betaGrid({ a: 3.5, b: 297.5 });

  test('nothing grows without brood, everything grows with it', () => {
    const none = projectLevels({ ...base, start, broodEndDays: new Float64Array(200).fill(dayOf('2026-05-01')) });
    expect([...levelsOnDay(none, base.toDay)]).toEqual([...levelsOnDay(none, base.fromDay)]);
    const some = projectLevels({ ...base, start, broodEndDays: brood });
    expect(shareAt(levelsOnDay(some, base.toDay), 0.5)).toBeGreaterThan(2 * shareAt(levelsOnDay(some, base.fromDay), 0.5));
  });

  test('a treatment of a known effect leaves just that share', () => {
    const acts = [{ fromDay: dayOf('2026-06-10'), toDay: dayOf('2026-06-20'), effectLowFrac: 0.8, effectHighFrac: 0.8 }];
    const with_ = projectLevels({ ...base, start, broodEndDays: brood, treatments: acts });
    const without = projectLevels({ ...base, start, broodEndDays: brood });
    const ratio = levelsOnDay(with_, base.toDay).map((level, i) => level / levelsOnDay(without, base.toDay)[i]!);
    for (const one of ratio) expect(one).toBeCloseTo(0.2, 9);
  });

  test('another colony or more members change no case of this one', () => {
    const small = projectLevels({ ...base, members: 100, start, broodEndDays: brood });
    const large = projectLevels({ ...base, start, broodEndDays: brood });
    expect([...small.levels]).toEqual([...large.levels.subarray(0, small.levels.length)]);
  });
});

describe('the level of the season', () => {
  test('one level a day from April to December, little brood in October no alarm below ten in a hundred', () => {
    const stair = levelStair({ fromDay: dayOf('2026-04-01'), toDay: dayOf('2026-12-31') }, { broodEndDay: dayOf('2026-10-08') });
    expect(stair.map(({ key }) => key)).toEqual(['wash-spring', 'wash-summer', 'wash-august', 'wash-autumn-brood', 'wash-autumn-little']);
    for (let i = 1; i < stair.length; i++) expect(dayOf(stair[i]!.from)).toBe(dayOf(stair[i - 1]!.to) + 1);
    expect(stair.at(-1)).toMatchObject({ from: '2026-10-08', treat: 0.1 });
  });

  test('the keeper’s own figure overrules and says so', () => {
    const { records, put } = washed(4);
    put('setting', { key: 'miteLevels', value: [{ key: 'wash-august', treat: 0.05 }] }, '2026-08-01');
    const before = colonyOf(washed(4).records, '2026-08-06', 'a');
    expect(colonyOf(records, '2026-08-06', 'a').chanceAboveNowFrac!).toBeLessThan(before.chanceAboveNowFrac!);
    expect(answered(records, '2026-08-06').yards[0]!.level).toMatchObject({ by: 'own', treat: 0.05 });
  });

  test('a level below its warning, a level not known, a label that cannot be: refused with the setting named', () => {
    for (const [key, value, field] of [
      ['miteLevels', [{ key: 'wash-august', warn: 0.05 }], 'settings.miteLevels.0.warn'],
      ['miteLevels', [{ key: 'wash-moon', warn: 0.05 }], 'settings.miteLevels.0.key'],
      ['labels', [{ key: 'formic-strips', tempLowC: 30, tempHighC: 10 }], 'settings.labels.0.tempLowC'],
    ] as const) {
      const { records, put } = washed(4);
      put('setting', { key, value }, '2026-08-01');
      const answer = mites(foldHolding(records), { today: '2026-08-06', seed: 1, members: 50 });
      expect(answer.ok).toBe(false);
      expect(JSON.stringify(answer)).toContain(field);
    }
  });
});

describe('what is due', () => {
  test('far above: treat by the day mites have to be low', () => {
    expect(colonyOf(washed(12).records, '2026-08-06', 'a').due[0]).toMatchObject({ what: 'treat', by: '2026-08-18' });
  });

  test('none found: wash again later, in September at the latest', () => {
    const due = colonyOf(washed(0).records, '2026-08-06', 'a').due;
    expect(due[0]!.what).toBe('wash');
    expect(due[0]!.by! <= '2026-09-10').toBe(true);
    const late = colonyOf(washed(0, 300, '2026-08-25').records, '2026-08-26', 'a').due;
    expect(late[0]).toMatchObject({ what: 'wash', by: '2026-09-10', reason: 'autumn' });
  });

  test('twelve bees: shown, nothing decided', () => {
    const line = colonyOf(washed(2, 12).records, '2026-08-06', 'a');
    expect(line.washes[0]).toMatchObject({ enoughBees: false });
    expect(line.due.map(({ what }) => what)).toEqual(['wash-more-bees']);
  });

  test('a second wash within three days is added to the first', () => {
    const { records, put } = washed(7);
    put('wash', { colony: 'colony-a', bees: 300, mites: 7, method: 'alcohol' }, '2026-08-06');
    expect(colonyOf(records, '2026-08-06', 'a').washes).toMatchObject([{ mites: 14, bees: 600 }]);
  });

  test('after a treatment its effect is to be washed, and the level is carried through it', () => {
    const { records, put } = washed(12);
    const before = colonyOf(records, '2026-08-06', 'a').chanceAboveWindowFrac!;
    put('treatment-in', { colony: 'colony-a', active: 'formic-acid', product: 'x', lot: '1' }, '2026-08-07');
    expect(colonyOf(records, '2026-08-08', 'a').due[0]).toMatchObject({ what: 'treatment-in' });
    put('treatment-out', { colony: 'colony-a', active: 'formic-acid' }, '2026-08-14');
    const after = colonyOf(records, '2026-08-15', 'a');
    expect(after.due).toContainEqual({ what: 'wash-after-treatment', by: '2026-08-28', reason: 'treated-since' });
    expect(after.chanceAboveWindowFrac!).toBeLessThan(before);
  });

  test('more mites than bees is not used and said', () => {
    const { records } = washed(400, 300);
    const line = colonyOf(records, '2026-08-06', 'a');
    expect(line.washes).toEqual([]);
    expect(line.refused).toMatchObject([{ kind: 'out-of-range', value: 400, high: 300 }]);
  });

  test('colonies not washed are judged by the yard, wider', () => {
    const { records } = washed(6);
    const [own, other] = ['a', 'b'].map((name) => colonyOf(records, '2026-08-06', name));
    expect(other!.basis).toBe('yard');
    expect(other!.now!.p95 - other!.now!.p5).toBeGreaterThan(own!.now!.p95 - own!.now!.p5);
    expect(colonyOf(journal().records, '2026-08-06', 'a')).toMatchObject({
      basis: 'nothing',
      now: null,
      due: [{ what: 'wash', reason: 'never-washed' }],
    });
  });

  test('what treatments did is told from washes before and after', () => {
    const { records, put } = washed(30);
    put('treatment-in', { colony: 'colony-a', active: 'formic-acid', product: 'x', lot: '1' }, '2026-08-07');
    put('treatment-out', { colony: 'colony-a', active: 'formic-acid' }, '2026-08-14');
    put('wash', { colony: 'colony-a', bees: 300, mites: 10, method: 'alcohol' }, '2026-08-28');
    const [effect] = answered(records, '2026-08-29').yards[0]!.effects;
    expect(effect).toMatchObject({ active: 'formic-acid', verdict: 'failed', before: { mites: 30 }, after: { mites: 10 } });
    expect(effect!.effectFrac).toBeCloseTo(2 / 3, 10);
  });
});

describe('treatments', () => {
  const yardDays = (tempC: number, fromIso = '2026-08-01') => ({
    tempsC: new Float64Array(100).fill(tempC),
    fromDay: dayOf(fromIso),
    days: 100,
    members: 1,
    rangeC: new Array<number>(12).fill(10),
    broodEndDays: new Float64Array([dayOf('2026-10-01')]),
  });

  test('rows that are not marked as default decide nothing without the label', () => {
    for (const one of treatmentRows()) {
      expect(limitsOf(one, undefined) === null, one.key).toBe(one.use !== 'DEFAULT');
      if (one.use === 'DEFAULT') expect([one.mark, one.effectMark], one.key).not.toContain('MEMORY');
    }
  });

  test('every acid has gloves, goggles, first aid and disposal beside it', () => {
    for (const one of treatmentRows().filter(({ active }) => active.endsWith('acid')))
      for (const code of ['acid-gloves', 'goggles', 'eyes-15-min', 'skin-water', 'swallowed-call', 'rest-as-label'])
        expect(one.cautions, one.key).toContain(code);
  });

  test('a start keeps its limits by the day’s high, not in a heat that does harm, not with brood where none may be', () => {
    const strips = limitsOf(row('formic-strips'), undefined)!;
    expect(startChances(yardDays(20), strips).every((share) => share === 1)).toBe(true);
    expect(startChances(yardDays(4), strips).some((share) => share > 0)).toBe(false);
    const hot = yardDays(20);
    hot.tempsC[12] = 30;
    expect([...startChances(hot, strips).subarray(8, 14)]).toEqual([1, 1, 0, 0, 0, 1]);
    const trickled = startChances(yardDays(5), limitsOf(row('oxalic-dribble'), undefined)!);
    expect(trickled[dayOf('2026-09-30') - dayOf('2026-08-01')]).toBe(0);
    expect(trickled[dayOf('2026-10-01') - dayOf('2026-08-01')]).toBe(1);
  });

  test('thymol goes by the mean of its days', () => {
    const thymol = limitsOf(row('thymol'), undefined)!;
    expect(startChances(yardDays(15.1), thymol)[0]).toBe(1);
    expect(startChances(yardDays(14.9), thymol)[0]).toBe(0);
  });

  test('a label far from what was read is asked back, one in Fahrenheit refused', () => {
    const label = { key: 'formic-strips', tempLowC: 10, tempHighC: 25, durationDays: 14 };
    expect(labelDiffers(row('formic-strips'), label).map(({ field }) => field)).toEqual(['tempHighC', 'durationDays']);
    expect(limitsOf(row('amitraz-strips'), { key: 'amitraz-strips', durationDays: 42 })).toMatchObject({ by: 'label', durationDays: 42 });
    expect(checkedLabel({ key: 'formic-strips', tempHighC: 85 })).toMatchObject({ ok: false, error: { kind: 'out-of-range' } });
    expect(checkedLabel({ key: 'moon-dust' })).toMatchObject({ ok: false, error: { kind: 'unknown-choice' } });
  });

  test('the book: lots, dates, overlaps, what is missing', () => {
    const { records, put } = journal();
    put('treatment-in', { colony: 'colony-a', active: 'formic-acid', product: 'x', lot: 'L7' }, '2026-08-07');
    put('treatment-in', { colony: 'colony-a', active: 'amitraz' }, '2026-08-10');
    put('treatment-out', { colony: 'colony-a', active: 'formic-acid' }, '2026-08-14');
    put('treatment-out', { colony: 'colony-b', active: 'thymol' }, '2026-08-15');
    expect(answered(records, '2026-08-20').records).toMatchObject([
      { active: 'formic-acid', lot: 'L7', in: '2026-08-07', out: '2026-08-14', days: 7, faults: ['overlap'], overlaps: 'amitraz' },
      { active: 'amitraz', lot: null, faults: ['no-product', 'no-lot', 'still-in', 'overlap'], overlaps: 'formic-acid' },
      { active: 'thymol', in: null, faults: ['out-without-in'] },
    ]);
  });
});

describe('set against loss', () => {
  test('more mites, more loss, and the plan says so whatever the stores', () => {
    const loss = (count: number) => colonyOf(washed(count).records, '2026-08-06', 'a').winterLoss!;
    expect(loss(12).lowFrac).toBeGreaterThan(loss(0).lowFrac);
    expect(loss(12).highFrac).toBeGreaterThan(loss(0).highFrac);
    const note = (records: readonly JournalRecord[]) => {
      const holding = foldHolding(records);
      return miteNoteOf(holding.colonies.get('colony-a')!, { holding, today: dayOf('2026-09-12') });
    };
    expect(note(washed(12).records)).toMatchObject({ code: 'mites-above-threshold' });
    expect(note(washed(0).records)).toBeNull();
    expect(note(journal().records)).toEqual({ code: 'mites-unknown' });
  });
});

test('a day that is none, too few cases, a holding without colonies: said', () => {
  const holding = foldHolding(journal().records);
  expect(mites(holding, { today: '2026-02-30', seed: 1, members: 50 })).toMatchObject({ ok: false, error: { kind: 'not-a-date' } });
  expect(mites(holding, { today: '2026-08-06', seed: 1, members: 5 })).toMatchObject({ ok: false, error: { kind: 'out-of-range' } });
  expect(mites(foldHolding([]), { today: '2026-08-06', seed: 1, members: 50 })).toMatchObject({ ok: false, error: { kind: 'missing' } });
});
