import { readFileSync } from 'node:fs';
import {
  foldHolding,
  type Holding,
  type JournalRecord,
  lineOf,
  type Plan,
  plan,
  readJournal,
  recordOf,
  type Solve,
  uuidv7,
} from '@winterheft/core';
import { loadHighs } from '@winterheft/solver';
import { beforeAll, describe, expect, test } from 'vitest';
import type { NewRecord } from '../src/store/journal-store.ts';
import { adoptedBody, type Because } from '../src/walk/adopted.ts';
import { boxesAlong } from '../src/walk/box.ts';
import { changesBetween } from '../src/walk/changes.ts';
import { balancesOf, figuresOf } from '../src/walk/figures.ts';
import { boxCount, Hand, SLOTS } from '../src/walk/hand.ts';
import { recordsOfAct, recordsOfLook, recordsOfSkip, recordsOfTick } from '../src/walk/ticks.ts';
import { type WalkStop, walkOf } from '../src/walk/walk.ts';

const TODAY = '2026-09-18';
const demo = readJournal(readFileSync(new URL('../../../demo/journal.jsonl', import.meta.url), 'utf8')).records;

let solve: Solve;
beforeAll(async () => {
  solve = await loadHighs();
});

/** A journal that is written on, as the app writes: one act, one millisecond. */
class Writer {
  records: JournalRecord[] = [...demo];
  private ms = Date.UTC(2026, 8, 18, 22, 0);

  holding(): Holding {
    return foldHolding(this.records);
  }

  write(entries: readonly NewRecord[]): readonly JournalRecord[] {
    this.ms += 60_000;
    const clock = new Date(this.ms - 5 * 3_600_000).toISOString();
    const written = entries.map(({ yard, kind, body }, i) => {
      const read = recordOf({
        id: uuidv7(
          this.ms,
          Uint8Array.from({ length: 10 }, (_, k) => (k < 2 ? 0 : (this.ms / 60_000 + i * 7 + k) & 255)),
        ),
        yard,
        kind,
        at: { date: clock.slice(0, 10), time: clock.slice(11, 16), zone: '-05:00' },
        by: 'test',
        seen: `${this.ms}-${String(i).padStart(5, '0')}-testtest`,
        body,
      });
      if (!read.ok) throw new Error(JSON.stringify(read.why));
      return read.record;
    });
    this.records.push(...written);
    return written;
  }

  plan(): Plan {
    const answer = plan(this.holding(), { today: TODAY, seed: 1, members: 100 }, { solve, journalDigest: 'test' });
    if (!answer.ok) throw new Error(JSON.stringify(answer.error));
    return answer.value;
  }

  adopt(because: Because, about?: string): void {
    const before = because === 'start' ? null : (walkOf(this.holding())?.adopted.fact.record ?? null);
    this.write([
      { yard: '*', kind: 'plan-adopted', body: { plan: { ...adoptedBody(this.plan(), this.holding(), { because, about, before }) } } },
    ]);
  }

  walk() {
    const walk = walkOf(this.holding());
    if (walk === null) throw new Error('no walk');
    return walk;
  }

  tick({ stop }: WalkStop): readonly JournalRecord[] {
    const of = { adopted: this.walk().adopted, holding: this.holding() };
    return this.write(stop.kind === 'look' ? recordsOfLook(stop, 'clean', of) : recordsOfTick(stop, of));
  }
}

/** Frames by colony as the moves have them, against the start. */
function framesMoved(holding: Holding): ReadonlyMap<string, number> {
  return new Map(
    [...holding.colonies.values()].map((colony) => [
      colony.id,
      colony.moves.reduce((n, move) => n + (move.direction === 'into' ? move.count : -move.count), 0),
    ]),
  );
}

describe('a walk from the first stop to the last', () => {
  test('frames are conserved, the box is never below empty, and the records fold back to what was shown', () => {
    const writer = new Writer();
    const before = writer.holding();
    const banked = [...before.lots.values()].reduce((n, lot) => n + lot.count, 0);
    writer.adopt('start');
    let halts = 0;
    for (let { now } = writer.walk(); now !== null; now = writer.walk().now) {
      expect(now.waits).toBeNull();
      writer.tick(now);
      const { inHand } = writer.walk();
      const box = boxCount(inHand);
      expect(box).toEqual(now.box);
      expect(Math.min(box.capped, box.light)).toBeGreaterThanOrEqual(0);
      expect(box.capped + box.light).toBeLessThanOrEqual(SLOTS);
      expect(writer.holding().clashes).toEqual([]);
      halts += 1;
      // every comb that left a colony or the bank hangs in another colony, in the hand or in the shed
      const holding = writer.holding();
      const lots = [...holding.lots.values()].reduce((n, lot) => n + lot.count, 0);
      const shed = (holding.kit.get('deep-frame-drawn')?.count ?? 0) - (before.kit.get('deep-frame-drawn')?.count ?? 0);
      const inHives = [...framesMoved(holding).values()].reduce((n, count) => n + count, 0);
      expect(inHives + lots - banked + shed + box.capped + box.light).toBe(0);
    }
    expect(halts).toBeGreaterThan(10);
    expect(writer.walk().isOver).toBe(true);
    expect(writer.walk().inHand).toEqual([]);
    // no box has more or fewer frames than before
    expect([...framesMoved(writer.holding()).values()].every((n) => n === 0)).toBe(true);
  });

  test('at the end every colony that got holds what the plan said, and nobody is below its need but those the plan names', () => {
    const writer = new Writer();
    writer.adopt('start');
    const { adopted } = writer.walk();
    const balances = [...balancesOf(adopted.plan, adopted.stops)];
    for (let { now } = writer.walk(); now !== null; now = writer.walk().now) writer.tick(now);
    const after = writer.plan();
    const last = new Map(balances.map(([id, balance]) => [adopted.stops.find((stop) => stop.id === id)?.colony, balance]));
    let compared = 0;
    for (const stop of adopted.stops.filter(({ kind }) => kind === 'swap')) {
      const line = after.outlooks.find(({ colony }) => colony === stop.colony);
      if (line?.hasKg === undefined || line.hasKg === null) continue;
      // combs are weighed as the plan takes them; syrup counts by the lower of two published yields both times
      expect(Math.abs(line.hasKg - (last.get(stop.colony)?.afterKg ?? 0))).toBeLessThan(0.3);
      compared += 1;
    }
    expect(compared).toBeGreaterThan(5);
    // the plan left nothing open, so nobody whose combs moved is short any more: within the tolerance of needs (data/parameters/provision.csv)
    expect(adopted.plan.provision!.uncovered).toEqual([]);
    // (a need made anew is a little higher, as what went in is known less well than what was weighed)
    for (const stop of adopted.stops.filter(({ kind }) => kind === 'swap')) {
      const { hasKg } = after.outlooks.find(({ colony }) => colony === stop.colony)!;
      expect(hasKg!).toBeGreaterThan(last.get(stop.colony)!.needKg - 0.25 - 0.3);
    }
    const { shortKg, coveredKg } = figuresOf(adopted.plan, adopted.plan.provision!);
    expect(coveredKg).toBeLessThanOrEqual(shortKg);
  });

  test('a stop taken back leaves the holding as it was before', () => {
    const writer = new Writer();
    writer.adopt('start');
    for (let n = 0; n < 4; n++) writer.tick(writer.walk().now!);
    const shown = JSON.stringify({ hand: writer.walk().inHand, lots: [...writer.holding().lots] });
    const now = writer.walk().now!;
    writer.tick(now);
    const done = writer.walk().stops.find(({ stop }) => stop.id === now.stop.id)!.done!;
    const act = recordsOfAct(writer.records.map(lineOf).join('\n'), done.record);
    expect(act.length).toBeGreaterThan(1);
    writer.write(act.map(({ id, yard }) => ({ yard, kind: 'strike', body: { target: id } })));
    expect(writer.walk().now?.stop.id).toBe(now.stop.id);
    expect(JSON.stringify({ hand: writer.walk().inHand, lots: [...writer.holding().lots] })).toBe(shown);
  });
});

describe('the picture of the box', () => {
  test('slots hold at every stop what the walk says is in hand, and a comb keeps its slot until it leaves', () => {
    const writer = new Writer();
    writer.adopt('start');
    const { adopted, stops } = writer.walk();
    const boxes = boxesAlong(adopted.start, adopted.stops, (from) => writer.holding().lots.has(from));
    const counted = boxes.map(({ after }) => ({
      capped: after.filter((hangs) => hangs === 'bank' || hangs === 'capped').length,
      light: after.filter((hangs) => hangs === 'light').length,
    }));
    expect(counted).toEqual(stops.map(({ box }) => box));
    expect(Math.max(...boxes.map(({ after }) => after.length))).toBe(SLOTS);
    boxes.slice(1).forEach(({ before }, i) => {
      expect(before).toEqual(boxes[i]!.after);
    });
    // a stop turns no more slots than it moves combs
    boxes.forEach(({ before, after }, i) => {
      const turned = after.filter((hangs, slot) => hangs !== before[slot]).length;
      expect(turned).toBeLessThanOrEqual(adopted.stops[i]!.flows.reduce((n, { count }) => n + count, 0));
    });
  });

  test('a plan of another format is passed over, the one before stays', () => {
    const writer = new Writer();
    writer.adopt('start');
    const { fact } = writer.walk().adopted;
    writer.write([{ yard: '*', kind: 'plan-adopted', body: { plan: { format: 2, stops: [] } } }]);
    expect(writer.walk().adopted.fact.record).toBe(fact.record);
  });
});

describe('what comes out otherwise', () => {
  test('a feed that was not taken counts for nothing, and the new plan gives none of it again', () => {
    const short = new Set(new Writer().plan().provision!.moves.map(({ to }) => to));
    // a colony that gets no comb is fed, where bees, feeders and days allow it
    const refusing = (colony: string) => {
      const writer = new Writer();
      writer.write([{ yard: '*', kind: 'refusal', body: { subject: colony, what: 'get' } }]);
      return writer;
    };
    const fed = [...short].find((colony) =>
      refusing(colony)
        .plan()
        .provision!.syrup.some(({ to }) => to === colony),
    )!;
    const writer = refusing(fed);
    const before = writer.plan().outlooks.find(({ colony }) => colony === fed)!.hasKg!;
    writer.adopt('start');
    const at = writer.walk().stops.find(({ stop }) => stop.kind === 'syrup' && stop.colony === fed)!;
    const offered = writer.tick(at).find(({ kind }) => kind === 'feed')!;
    expect(writer.plan().outlooks.find(({ colony }) => colony === fed)!.hasKg!).toBeGreaterThan(before);
    writer.write([
      { yard: offered.yard, kind: 'strike', body: { target: offered.id } },
      { yard: offered.yard, kind: 'feed', body: { colony: fed, what: 'syrup', event: 'refused' } },
    ]);
    const after = writer.plan();
    expect(after.outlooks.find(({ colony }) => colony === fed)!.hasKg!).toBe(before);
    expect(after.provision!.syrup.some(({ to }) => to === fed)).toBe(false);
  });

  test('signs of disease take the giver out, and the new plan starts from what is in hand', () => {
    const writer = new Writer();
    writer.adopt('start');
    const look = writer.walk().stops.find(({ stop }) => stop.kind === 'look' && gives(writer.walk().stops, stop.colony))!;
    expect(look).toBeDefined();
    writer.write(recordsOfLook(look.stop, 'signs', writer.walk()));
    const old = writer.walk().adopted;
    writer.adopt('look', look.stop.colony!);
    const { adopted, stops } = writer.walk();
    expect(touched(stops, look.stop.colony!)).toBe(false);
    expect(adopted.before).toBe(old.fact.record);
    const changes = changesBetween(old, adopted);
    expect(changes.find(({ colony }) => colony === look.stop.colony)).toMatchObject({ isKg: 0 });
  });

  test('a giver passed by after others were opened: no comb is lost and every open gap is closed', () => {
    const writer = new Writer();
    writer.adopt('start');
    // until a gap stands open
    while (writer.walk().now !== null && openGaps(writer.holding()) === 0) writer.tick(writer.walk().now!);
    expect(openGaps(writer.holding())).toBeGreaterThan(0);
    const giver = writer
      .walk()
      .stops.find(({ stop, done }) => done === null && stop.kind === 'swap' && recordsOfSkip(stop)?.[0]?.body !== undefined)!;
    writer.write(recordsOfSkip(giver.stop)!);
    const hand = new Hand(writer.walk().inHand);
    writer.adopt('skip', giver.stop.colony!);
    expect(new Hand(writer.walk().inHand).combs).toEqual(hand.combs);
    for (let { now } = writer.walk(); now !== null; now = writer.walk().now) {
      expect(now.waits).toBeNull();
      writer.tick(now);
      expect(writer.holding().clashes).toEqual([]);
    }
    expect(writer.walk().inHand).toEqual([]);
    expect(openGaps(writer.holding())).toBe(0);
  });
});

function gives(stops: readonly WalkStop[], colony: string | null): boolean {
  return stops.some(
    ({ stop }) => stop.colony === colony && recordsOfSkip(stop)?.some(({ body }) => 'what' in body && body.what === 'give'),
  );
}

function touched(stops: readonly WalkStop[], colony: string): boolean {
  return stops.some(({ stop }) => JSON.stringify(stop.flows).includes(`"${colony}"`));
}

/** Frames that hives are short of against the start of the walk. */
function openGaps(holding: Holding): number {
  return [...framesMoved(holding).values()].reduce((n, count) => n + Math.max(0, -count), 0);
}
