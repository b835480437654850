import { describe, expect, test } from 'vitest';
import { foldHolding } from '../src/holding/index.ts';
import type { JournalRecord } from '../src/journal/index.ts';
import { plan } from '../src/plan/index.ts';
import {
  lastDayOf,
  type SeasonTask,
  seasonTasks,
  sizeOf,
  TASK_CODES,
  type TaskFacts,
  taskRecord,
  yardSeasons,
  yearRows,
} from '../src/season/index.ts';
import { taskRows } from '../src/tables/tasks.gen.ts';
import { epochDayOf } from '../src/units/dates.ts';
import { newMaker } from './journal-maker.ts';

type Make = ReturnType<typeof newMaker>;
const NO_FACTS: TaskFacts = { plan: null, mites: null };
const START = { date: '2026-05-01' };
const PARTS = [
  { part: 'solid-floor', count: 1 },
  { part: 'deep-10-wood', count: 2 },
  { part: 'deep-frame-drawn', count: 20 },
];

/** Two colonies at Winnipeg; what follows is the test's own. */
function journal(more: (make: Make) => JournalRecord[] = () => []): JournalRecord[] {
  const make = newMaker();
  const hive = (name: string) => [
    make('hive', { hive: `hive-${name}`, label: name.toUpperCase() }, START),
    make('build', { hive: `hive-${name}`, parts: PARTS }, START),
    make('colony-begun', { colony: `colony-${name}`, hive: `hive-${name}`, how: 'unknown' }, START),
  ];
  return [
    make('yard', { name: 'Home', latDeg: 49.9, lonDeg: -97.1, elevM: 239, climatePlace: 'Winnipeg MB' }, START),
    ...hive('a'),
    ...hive('b'),
    ...more(make),
  ];
}

function tasks(records: readonly JournalRecord[], today: string, facts: TaskFacts = NO_FACTS): Map<string, SeasonTask> {
  const holding = foldHolding(records, { until: today });
  const seasons = yardSeasons(holding, { today, seed: 1, members: 60 });
  if (!seasons.ok) throw new Error(JSON.stringify(seasons.error));
  return new Map(seasonTasks(holding, { today, seasons: seasons.value, facts }).map((task) => [task.code, task]));
}

const PROVISION = { looks: [], moves: [], syrup: [], candy: [], unite: [], uncovered: [] };
const outlook = (colony: string, state = 'short') => ({ colony, yard: 'home', state, bees: 20_000, notes: [] });

describe('tasks of the season', () => {
  test('every code has its row in the table, and every row its code', () => {
    expect(taskRows.map(({ code }) => code).sort()).toEqual([...TASK_CODES].sort());
  });

  test('they stand in the order of their last days, each once a yard', () => {
    const all = [...tasks(journal(), '2026-08-25').values()];
    const days = all.map(({ lastDay }) => lastDay.p50 ?? '9999');
    expect(days).toEqual([...days].sort());
    expect(new Set(all.map(({ id }) => id)).size).toBe(all.length);
    expect(all.length).toBeGreaterThan(8);
  });

  test('a record of the season finishes a task: weighed one by one, then done', () => {
    const weigh = (hives: readonly string[]) =>
      tasks(
        journal((make) => hives.map((hive) => make('weighing', { hive, frontKg: 24, rearKg: 24 }, { date: '2026-08-28' }))),
        '2026-09-01',
      ).get('weigh')!;
    expect([weigh([]).colonies.length, weigh([]).doneCount]).toEqual([2, 0]);
    const half = weigh(['hive-a']);
    expect([half.colonies, half.doneCount, half.state]).toEqual([['colony-b'], 1, 'open']);
    expect(half.hoursNeeded).toBeLessThan(weigh([]).hoursNeeded);
    const all = weigh(['hive-a', 'hive-b']);
    expect([all.colonies, all.doneCount, all.state, all.hoursNeeded]).toEqual([[], 2, 'done', 0]);
  });

  test('a weighing of last year does not count for this one', () => {
    const records = journal((make) => [make('weighing', { hive: 'hive-a', frontKg: 24, rearKg: 24 }, { date: '2026-05-20' })]);
    expect(tasks(records, '2026-09-01').get('weigh')!.colonies).toHaveLength(2);
  });

  test('weighing comes so much before the last feeding day that what is missing can still be taken and ripened', () => {
    const all = tasks(journal(), '2026-08-25');
    const holding = foldHolding(journal());
    const seasons = yardSeasons(holding, { today: '2026-08-25', seed: 1, members: 60 });
    if (!seasons.ok) throw new Error('seasons');
    const last = seasons.value[0]!.dates.lastFeedingDay.p50!;
    expect(all.get('weigh')!.binds).toBe('lastFeedingDay');
    expect(epochDayOf(last)! - epochDayOf(all.get('weigh')!.lastDay.p50!)!).toBeGreaterThan(10);
    const shifted = lastDayOf(seasons.value[0]!, 'lastFeedingDay', -17);
    expect(shifted.odds.p50).toBe(all.get('weigh')!.lastDay.p50);
  });

  test('more syrup has to be begun earlier', () => {
    const begin = (litres: number) =>
      epochDayOf(
        tasks(journal(), '2026-08-25', {
          mites: null,
          plan: {
            outlooks: [outlook('colony-a')],
            provision: { ...PROVISION, syrup: [{ to: 'colony-a', litres, sugarKg: litres * 0.8 }] },
          },
        }).get('feed-syrup')!.lastDay.p50!,
      )!;
    // by hand: 1.31 L a day for 20,000 bees at 0.0656 L per thousand: 12 L take 10 days, 3 L take 3
    expect(begin(3) - begin(12)).toBe(7);
  });

  test('as the year goes on a task waits, opens, grows tight, is late, is over, and is left out', () => {
    const state = (today: string) => tasks(journal(), today).get('autumn-look')?.state;
    expect(['2026-07-10', '2026-08-25', '2026-10-03', '2026-10-20', '2026-12-24'].map(state)).toEqual([
      'waiting',
      'open',
      expect.stringMatching(/tight|late/),
      'over',
      undefined,
    ]);
    const late = tasks(journal(), '2026-10-20').get('autumn-look')!;
    expect(late.stillTimeFrac).toBeLessThanOrEqual(0.1);
    expect([late.workDaysLeft, late.hoursLeft]).toEqual([0, 0]);
    expect(late.lateDays).toBe(-late.daysLeft!);
  });

  test('the chance that it is still time falls by the day, and the hours left with it', () => {
    let before = [1, Number.POSITIVE_INFINITY];
    for (const today of ['2026-09-01', '2026-09-10', '2026-09-20', '2026-09-28', '2026-10-05', '2026-10-15']) {
      const task = tasks(journal(), today).get('autumn-look')!;
      expect(task.stillTimeFrac).toBeLessThanOrEqual(before[0]!);
      expect(task.hoursLeft).toBeLessThanOrEqual(before[1]!);
      before = [task.stillTimeFrac, task.hoursLeft];
    }
    expect(before[0]).toBeLessThan(0.5);
  });

  test('warmer work has fewer days than work that any day allows, and work due sooner takes its hours', () => {
    const all = [...tasks(journal(), '2026-09-05').values()];
    const look = all.find(({ code }) => code === 'autumn-look')!;
    expect(look.workDaysLeft).toBeLessThan(look.daysLeft! + 1);
    for (const task of all) {
      expect(task.hoursBefore).toBeGreaterThanOrEqual(0);
      // within: three figures rounded to tenths
      expect(Math.abs(task.slackHours - (task.hoursLeft - task.hoursNeeded - task.hoursBefore))).toBeLessThanOrEqual(0.2);
    }
  });
});

describe('what the keeper says of a task', () => {
  const say = (act: Parameters<typeof taskRecord>[1], more: { today?: string; until?: string; on?: string } = {}) => {
    const task = tasks(journal(), '2026-11-01').get('wrap')!;
    const until = more.until === undefined ? undefined : epochDayOf(more.until)!;
    const record = taskRecord(task, act, until);
    return tasks(
      journal((make) => [make('task', record.body as never, { date: more.on ?? '2026-11-01' })]),
      more.today ?? '2026-11-02',
    ).get('wrap')!;
  };

  test('done, not this year, later: each is a record, and the task follows', () => {
    expect([say('done').state, say('done').doneCount]).toEqual(['done', 2]);
    expect(say('not-this-year').state).toBe('not-this-year');
    const later = say('later', { until: '2026-11-09' });
    expect([later.state, later.putOffUntil, later.colonies.length]).toEqual(['put-off', '2026-11-09', 2]);
    expect(say('later', { until: '2026-11-09', today: '2026-11-09' }).state).toBe('open');
    expect(say('later').putOffUntil).toBe('2026-11-08');
  });

  test('what was said last winter does not hold for this one', () => {
    expect(say('not-this-year', { on: '2026-05-20', today: '2026-11-02' }).state).toBe('open');
  });

  test('a word for one colony leaves the others to do', () => {
    const records = journal((make) => [make('task', { task: 'wrap', state: 'done', subjects: ['colony-a'] }, { date: '2026-11-01' })]);
    const wrap = tasks(records, '2026-11-02').get('wrap')!;
    expect([wrap.colonies, wrap.doneCount, wrap.state]).toEqual([['colony-b'], 1, 'open']);
  });

  test('listening is done for a month, not for the winter', () => {
    const check = (today: string) =>
      tasks(
        journal((make) => ['a', 'b'].map((name) => make('sign', { colony: `colony-${name}`, sign: 'alive' }, { date: '2027-01-05' }))),
        today,
      ).get('winter-check')!;
    expect(check('2027-01-06').lastDay.p50).toBe('2027-02-04');
    expect([check('2027-02-04').state, check('2027-02-10').state]).toEqual(['open', 'late']);
  });
});

describe('queens and size', () => {
  const queens = (state: 'absent' | 'laying', bornYear: number | undefined, today: string, facts = NO_FACTS) =>
    tasks(
      journal((make) => [
        make('queen', { colony: 'colony-a', state, ...(bornYear === undefined ? {} : { bornYear }) }, { date: '2026-07-01' }),
      ]),
      today,
      facts,
    );

  test('a missing or an old queen is replaced until the climate allows no more, then the colony is handed to uniting', () => {
    const missing = queens('absent', undefined, '2026-08-10');
    expect(missing.get('requeen')).toMatchObject({ colonies: ['colony-a'], state: 'open', figures: { queenless: 1 } });
    expect(missing.get('unite')).toBeUndefined();
    const late = queens('absent', undefined, '2026-09-10');
    expect(late.get('requeen')!.state).toBe('over');
    expect(late.get('unite')).toMatchObject({ colonies: ['colony-a'], figures: { queenless: 1 } });
    expect(queens('laying', 2024, '2026-08-10').get('requeen')!.colonies).toEqual(['colony-a']);
    expect(queens('laying', 2025, '2026-08-10').get('requeen')).toBeUndefined();
  });

  test('a colony the outlook calls too small alone is handed to uniting', () => {
    const facts: TaskFacts = { mites: null, plan: { outlooks: [outlook('colony-b', 'too small alone')], provision: PROVISION } };
    expect(tasks(journal(), '2026-09-10', facts).get('unite')!.colonies).toEqual(['colony-b']);
  });

  test('without a queen, too late for a new one and with too few bees to hold, a colony stands among the unions of a plan', () => {
    const unions = (state: 'absent' | 'laying', frames: number, today = '2026-09-20') => {
      const records = journal((make) => [
        ...['a', 'b'].map((name) => make('weighing', { hive: `hive-${name}`, frontKg: 24, rearKg: 24 }, { date: today })),
        make('queen', { colony: 'colony-a', state }, { date: '2026-07-01' }),
        make('look', { colony: 'colony-a', bees: { count: frames, unit: 'frames', counting: 'covered' }, brood: 'clean' }, { date: today }),
        make('look', { colony: 'colony-b', bees: { count: 12, unit: 'frames', counting: 'covered' }, brood: 'clean' }, { date: today }),
      ]);
      const holding = foldHolding(records, { until: today });
      const planned = plan(holding, { today, seed: 1, members: 60 }, { journalDigest: '', shares: false });
      if (!planned.ok) throw new Error(JSON.stringify(planned.error));
      return planned.value.provision!.unite.map(({ from, into }) => [from, into]);
    };
    expect(unions('absent', 5)).toEqual([['colony-a', 'colony-b']]);
    expect(unions('laying', 5)).toEqual([]);
    expect(unions('absent', 10)).toEqual([]);
    expect(unions('absent', 5, '2026-08-20')).toEqual([]);
  });

  test('size: the more bees the fewer rules say too few; without a queen the bar is higher', () => {
    let before = Number.POSITIVE_INFINITY;
    for (let bees = 0; bees <= 30_000; bees += 500) {
      const below = sizeOf(bees, 'there').rules.filter(({ stands }) => stands === 'below').length;
      expect(below).toBeLessThanOrEqual(before);
      before = below;
    }
    expect([2000, 9000, 30_000].map((bees) => sizeOf(bees, 'there').verdict)).toEqual(['unite', 'doubtful', 'alone']);
    expect(sizeOf(9000, 'absent').verdict).toBe('unite');
    expect(sizeOf(30_000, 'absent').verdict).toBe('doubtful');
    for (const rule of sizeOf(9000, 'there').rules) expect(rule.source).not.toBe('');
    expect(() => sizeOf(Number.NaN, 'there')).toThrow(RangeError);
  });
});

test('the year sheet has every date and every task in the order of days', () => {
  const holding = foldHolding(journal());
  const seasons = yardSeasons(holding, { today: '2026-08-25', seed: 1, members: 60 });
  if (!seasons.ok) throw new Error('seasons');
  const rows = yearRows(seasons.value, seasonTasks(holding, { today: '2026-08-25', seasons: seasons.value, facts: NO_FACTS }));
  expect(rows.map(({ p50 }) => p50)).toEqual(rows.map(({ p50 }) => p50).sort());
  expect(rows.filter(({ kind }) => kind === 'date')).toHaveLength(20);
  expect(rows.filter(({ kind }) => kind === 'task').length).toBeGreaterThan(8);
});

describe('yard seasons', () => {
  const ask = (today: string, members = 60) => yardSeasons(foldHolding(journal()), { today, seed: 1, members });

  test('no date, too few cases, an unknown place: refused', () => {
    expect(ask('2026-02-30')).toMatchObject({ ok: false, error: { kind: 'not-a-date', field: 'today' } });
    expect(ask('2026-09-01', 5)).toMatchObject({ ok: false, error: { kind: 'out-of-range', field: 'members' } });
    const nowhere = yardSeasons(foldHolding(journal()), { today: '2026-09-01', seed: 1, members: 60, place: 'Atlantis' });
    expect(nowhere).toMatchObject({ ok: false, error: { kind: 'unknown-choice' } });
  });

  test('days run from today, afternoons from cold to warm, and twenty of them', () => {
    const seasons = ask('2026-10-05');
    if (!seasons.ok) throw new Error('seasons');
    const { days, year } = seasons.value[0]!;
    expect([days[0]!.date, days.at(-1)!.date, year]).toEqual(['2026-10-05', '2027-07-31', 2026]);
    for (const { afternoonsC } of days.slice(0, 30)) expect(afternoonsC).toEqual([...afternoonsC].sort((a, b) => a - b));
    expect(days[0]!.afternoonsC).toHaveLength(20);
  });
});
