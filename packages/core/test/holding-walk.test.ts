import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { foldHolding } from '../src/holding/index.ts';
import { type Bodies, type JournalRecord, type Kind, readJournal, recordOf, uuidv7 } from '../src/journal/index.ts';
import { isLightComb, plan, reserveForGaps } from '../src/plan/index.ts';

const demo = readJournal(readFileSync(new URL('../../../demo/journal.jsonl', import.meta.url), 'utf8')).records;
const TODAY = '2026-09-18';

/** Records of one evening after the demo's round. */
function evening(entries: readonly { [K in Kind]: { kind: K; body: Bodies[K]; date?: string } }[Kind][]): JournalRecord[] {
  return entries.map(({ kind, body, date = TODAY }, i) => {
    const ms = Date.UTC(2026, 8, 18, 22, i);
    const read = recordOf({
      id: uuidv7(ms, new Uint8Array(10)),
      yard: 'yard-mill',
      kind,
      at: { date, time: `17:${String(i).padStart(2, '0')}`, zone: '-05:00' },
      by: 'test',
      seen: `${ms}-00000-testtest`,
      body,
    });
    if (!read.ok) throw new Error(JSON.stringify(read.why));
    return read.record;
  });
}

function planOf(records: readonly JournalRecord[], today = TODAY) {
  const answer = plan(foldHolding(records), { today, seed: 1, members: 100 }, { journalDigest: 'test' });
  if (!answer.ok) throw new Error(JSON.stringify(answer.error));
  return answer.value;
}

const first = planOf(demo);
const givers = first.provision!.moves.filter(({ fromKind }) => fromKind === 'colony').map(({ from }) => from);
const giver = givers[0]!;
const getter = first.provision!.moves[0]!.to;
const line = (of: typeof first, colony: string) => of.outlooks.find((one) => one.colony === colony)!;

/** Four capped combs out of a giver into the hand. */
const taken = { from: { colony: giver }, to: { hand: giver }, frame: 'deep', count: 4, massKg: 3.6 } as const;
const light = { from: { lot: 'spare' }, to: { hand: 'spare' }, frame: 'deep-frame-drawn', count: 3, massKg: 0.6 } as const;
const spareLot = { lot: 'spare', frame: 'deep-frame-drawn', count: 9, massKg: 0.6, looked: '2026-09-12' } as const;

describe('what was put off', () => {
  test('[J40] a giver put off gives nothing in a plan of that day, and may again the day after', () => {
    const records = [...demo, ...evening([{ kind: 'refusal', body: { subject: giver, what: 'give' } }])];
    const moves = planOf(records).provision!.moves;
    expect(moves.length).toBeGreaterThan(0);
    expect(moves.some(({ from }) => from === giver)).toBe(false);
    expect(planOf(records, '2026-09-19').provision!.moves.some(({ from }) => from === giver)).toBe(true);
  });

  test.each([
    ['get', (of: typeof first) => of.provision!.moves.some(({ to }) => to === getter)],
    ['look', (of: typeof first) => of.provision!.moves.some(({ to }) => to === getter)],
  ] as const)('[J40] combs at a getter are put off by "%s"', (what, has) => {
    expect(has(first)).toBe(true);
    expect(has(planOf([...demo, ...evening([{ kind: 'refusal', body: { subject: getter, what } }])]))).toBe(false);
  });

  test('[J40] syrup, candy and uniting are put off one by one', () => {
    const { syrup, candy, unite } = first.provision!;
    expect(Math.min(syrup.length + candy.length, unite.length)).toBeGreaterThan(0);
    for (const { to } of syrup)
      expect(
        planOf([...demo, ...evening([{ kind: 'refusal', body: { subject: to, what: 'syrup' } }])]).provision!.syrup.some(
          (s) => s.to === to,
        ),
      ).toBe(false);
    for (const { to } of candy)
      expect(
        planOf([...demo, ...evening([{ kind: 'refusal', body: { subject: to, what: 'candy' } }])]).provision!.candy.some(
          (s) => s.to === to,
        ),
      ).toBe(false);
    const { from } = unite[0]!;
    expect(
      planOf([...demo, ...evening([{ kind: 'refusal', body: { subject: from, what: 'unite' } }])]).provision!.unite.some(
        (u) => u.from === from,
      ),
    ).toBe(false);
  });
});

describe('gaps and hand', () => {
  test('[J41] light combs in hand are put by for a gap, and what is left of it is said', () => {
    const holding = foldHolding([
      ...demo,
      ...evening([
        { kind: 'bank-lot', body: spareLot },
        { kind: 'swap', body: taken },
        { kind: 'swap', body: light },
      ]),
    ]);
    const { gaps, inHand } = reserveForGaps(holding);
    expect(gaps).toMatchObject([{ colony: giver, depth: 'deep', count: 4, left: 1, fills: [{ from: 'spare', count: 3 }] }]);
    expect(inHand).toMatchObject([{ from: giver, count: 4 }]);
  });

  test('[J41] a plan from what is in hand uses the capped combs there, and none of a colony that has shown signs since', () => {
    const out = evening([{ kind: 'swap', body: taken }]);
    const fromHand = (of: typeof first) =>
      of.provision!.moves.filter(({ fromKind }) => fromKind === 'hand').reduce((n, { count }) => n + count, 0);
    expect(fromHand(planOf([...demo, ...out]))).toBe(4);
    const sick = evening([
      { kind: 'swap', body: taken },
      { kind: 'look', body: { colony: giver, brood: 'signs' } },
    ]);
    expect(fromHand(planOf([...demo, ...sick]))).toBe(0);
  });

  test('[J41] a comb is light by its mass, or where it was not weighed by its name', () => {
    expect(isLightComb('deep-frame-drawn')).toBe(true);
    expect(isLightComb('deep')).toBe(false);
    expect(isLightComb('deep', 0.6)).toBe(true);
    expect(isLightComb('deep-frame-drawn', 3.6)).toBe(false);
  });
});

describe('after the weighing of the same day', () => {
  test('[J42] combs taken in the evening are gone from what was weighed in the afternoon', () => {
    const weighed = givers.find((id) => line(first, id).weighedOn === TODAY) ?? giver;
    const after = planOf([...demo, ...evening([{ kind: 'swap', body: { ...taken, from: { colony: weighed }, to: { hand: weighed } } }])]);
    // four combs of 3.6 kg, of which the drawn comb itself is 0.6 kg (data/parts.csv): 12 kg of stores
    expect(line(first, weighed).hasKg! - line(after, weighed).hasKg!).toBeCloseTo(12, 1);
  });

  test('[J42] a look at the brood alone changes nothing of what a colony holds', () => {
    const after = planOf([...demo, ...evening([{ kind: 'look', body: { colony: giver, brood: 'clean' } }])]);
    expect(line(after, giver).hasKg).toBe(line(first, giver).hasKg);
    expect(line(after, giver).hasSdKg).toBe(line(first, giver).hasSdKg);
    expect(line(after, giver).lookedOn).toBe(TODAY);
  });
});
