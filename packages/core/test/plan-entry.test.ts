import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { foldHolding } from '../src/holding/index.ts';
import { type JournalRecord, readJournal, recordOf } from '../src/journal/index.ts';
import { colonyDetail, judgeEntry, linesOf, openPlan, preparePlan, type TypedEntry } from '../src/plan/index.ts';

const { records } = readJournal(readFileSync(new URL('../../../demo/journal.jsonl', import.meta.url), 'utf8'));
const setting = { today: '2026-09-18', seed: 1, members: 200 };
const holding = foldHolding(records, { until: setting.today });
const opened = openPlan(holding, setting);
if (!opened.ok) throw new Error(JSON.stringify(opened.error));
const whole = opened.value;
const hiveOf = (label: string) => [...holding.hives.values()].find((hive) => hive.label === label)!;

let made = 0;
/** A record of the plan's day, as a device would write it after all others. */
function written(kind: string, body: Record<string, unknown>): JournalRecord {
  const n = String(++made).padStart(4, '0');
  const read = recordOf({
    id: `01a0c5e0-0000-7000-8000-00000000${n}`,
    yard: hiveOf('B4').yard,
    kind,
    at: { date: setting.today },
    by: 'test',
    seen: `1790000000000-0${n}-testtest`,
    body,
  });
  if (!read.ok) throw new Error(JSON.stringify(read.why));
  return read.record;
}

function judged(hive: string, entry: TypedEntry) {
  const answer = judgeEntry(whole, { holding, hive, entry });
  if (!answer.ok) throw new Error(JSON.stringify(answer.error));
  return answer.value;
}

function recorded(label: string, extra: readonly JournalRecord[]) {
  const after = foldHolding([...records, ...extra], { until: setting.today });
  const prepared = preparePlan(after, setting);
  if (!prepared.ok) throw new Error(JSON.stringify(prepared.error));
  return linesOf(prepared.value, after, { shares: false }).find((line) => line.label === label)!;
}

describe('an entry before it is a record', () => {
  const entries: readonly { readonly label: string; readonly entry: TypedEntry }[] = [
    { label: 'B4', entry: { frontKg: 25.5, rearKg: 27 } },
    { label: 'A1', entry: { frontKg: 31 } },
    { label: 'C3', entry: { word: 'light' } },
  ];
  for (const { label, entry } of entries) {
    test(`${label} is judged as it will be once ${JSON.stringify(entry)} is written`, () => {
      const hive = hiveOf(label);
      const { line, refused } = judged(hive.id, entry);
      expect(refused).toEqual([]);
      const later = recorded(label, [written('weighing', { hive: hive.id, ...entry })]);
      expect(line).toEqual(later);
    });
  }

  test('a look with bees, capped frames and clean brood is judged as it will be once it is written', () => {
    const hive = hiveOf('B4');
    const look = {
      bees: { count: 7, unit: 'frames' as const, counting: 'covered' as const },
      capped: [{ frame: 'deep-drawn', count: 4, where: 'top' as const }],
      brood: 'clean' as const,
    };
    const { line } = judged(hive.id, { look });
    const later = recorded('B4', [written('look', { colony: hive.colonies[0], ...look })]);
    expect(line.bees).toBe(later.bees);
    expect(line).toEqual(later);
  });

  test('a reading ten times too large is refused with the figure that would fit, and left out', () => {
    const hive = hiveOf('B4');
    const before = judged(hive.id, { frontKg: 24.5 });
    const { refused, line, ranges } = judged(hive.id, { frontKg: 24.5, rearKg: 245 });
    expect(refused).toEqual([{ edge: 'rear', readingKg: 245, range: ranges.rear, insteadKg: [24.5] }]);
    expect(line).toEqual(before.line);
  });
});

describe('cases and the course of stores', () => {
  const prepared = preparePlan(holding, setting);
  if (!prepared.ok) throw new Error('no plan');
  const lines = linesOf(prepared.value, holding, { shares: false });

  test('twenty cases stand in order, agree with the quantiles of the run-out date, and as many count as run out before forage', () => {
    let compared = 0;
    for (const line of lines) {
      if (line.cases === null || line.runOut === null) continue;
      compared++;
      expect(line.cases).toHaveLength(20);
      const dates = line.cases.map((day) => day ?? '9999');
      expect([...dates].sort()).toEqual(dates);
      // the middle date lies between the tenth and the eleventh case, the 5 % date between the first and the second
      const p50 = line.runOut.p50 ?? '9999';
      expect(dates[9]! <= p50 && p50 <= dates[10]!).toBe(true);
      const p5 = line.runOut.p5 ?? '9999';
      expect(dates[0]! <= p5 && p5 <= dates[1]!).toBe(true);
      // half a case is the most that counting in twentieths can be off
      expect(Math.abs(line.chancesIn20! / 20 - (1 - line.holdFrac!))).toBeLessThanOrEqual(0.025 + 1e-9);
    }
    expect(compared).toBeGreaterThan(20);
  });

  test('stores only fall, begin at what the colony has, and are gone at the median run-out date', () => {
    const short = lines.find(({ state, runOut }) => state === 'short' && runOut?.p50)!;
    const { line, fan } = colonyDetail(prepared.value, { holding, colony: short.colony })!;
    expect(fan!.days[0]).toBe(setting.today);
    for (const band of [fan!.p5, fan!.p50, fan!.p95])
      for (let i = 1; i < band.length; i++) expect(band[i]!).toBeLessThanOrEqual(band[i - 1]!);
    // errors are drawn round what it has: the middle of 200 draws lies within 3 standard errors
    expect(Math.abs(fan!.p50[0]! - line.hasKg!)).toBeLessThan((3 * 1.25 * line.hasSdKg!) / Math.sqrt(200));
    const at = fan!.days.findIndex((day) => day >= short.runOut!.p50!);
    // what is out of reach stays in the hive: the reserve of a kilogram or two is still there on the day the colony has run out
    expect(fan!.p50[at]!).toBeLessThan(line.needParts.reserveKg + 1);
    const shares = Object.values(line.doubtShares!).reduce((sum, share) => sum + share, 0);
    expect(Math.abs(shares - 1)).toBeLessThan(1e-9);
  });
});
