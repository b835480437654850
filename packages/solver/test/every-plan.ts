import type { ProvisionColony, ProvisionInput } from '@winterheft/core';
import { provisionParameters as p } from '../../core/src/tables/parameters-provision.gen.ts';
import { dice } from '../../core/test/provision/yards.ts';

/**
 * A second way to the best plan: goes through every plan of a very small yard, written from the rules of docs/spec-provision.md alone.
 * It shares no code with the model: no groups, no rows, no loss pieces. Feed comes in big steps so that the plans can be counted out.
 */

/** Invented S-shaped losses: slow, steep, flat. */
const CURVE = [
  { shortKg: 0, lossFrac: 0 },
  { shortKg: 3, lossFrac: 0.06 },
  { shortKg: 6, lossFrac: 0.5 },
  { shortKg: 9, lossFrac: 0.7 },
];
function lossOf(shortKg: number): number {
  if (shortKg <= 0) return 0;
  if (shortKg <= 3) return 0.02 * shortKg;
  if (shortKg <= 6) return 0.06 + (0.44 / 3) * (shortKg - 3);
  return Math.min(0.7, 0.5 + (0.2 / 3) * (shortKg - 6));
}

export const SYRUP_STEP_L = 3;
export const CANDY_STEP_KG = 2;
/** 2:1 by mass at 20 °C holds 0.884 kg sugar a litre (CRC Handbook); 7 lb of stores from the 7.38 lb sugar of a US gallon. */
const SUGAR_KG_PER_L = 0.884;
const STORES_PER_SUGAR = 7 / 7.38;
const LIGHT_KG = 0.6;

export function smallYard(seed: number): ProvisionInput {
  const d = dice(seed + 1000);
  const n = d.whole(3, 4);
  const colonies = Array.from({ length: n }, (_, i): ProvisionColony => {
    const gives = i === 0 || (i === 3 && d.chance(0.5));
    const needKg = 20;
    return {
      id: `C${i}`,
      yard: d.chance(0.8) ? 'N' : 'S',
      bees: i === n - 1 && d.chance(0.4) ? 5000 : 20_000,
      hasKg: gives ? needKg + d.whole(10, 80) / 10 : needKg - d.whole(5, d.pick([25, 95])) / 10,
      hasSdKg: 1,
      needKg,
      looked: d.chance(0.8),
      flag: d.chance(0.12) ? 'signs' : null,
      capped: gives ? [{ frame: 'deep', count: d.whole(1, 2), massKg: d.pick([2.6, 3.6]) }] : [],
      emptyCombs: [{ frame: 'deep', count: d.whole(0, 2), massKg: LIGHT_KG }],
      candyRimKg: d.pick([0, CANDY_STEP_KG]),
      uptakeLPerDay: 1.5,
      refusesSyrup: d.chance(0.15),
      lossCurve: CURVE,
      at: i,
    };
  });
  return {
    colonies,
    bank: d.chance(0.6)
      ? [{ lot: 'L', yard: d.pick(['N', 'N', 'S']), frame: 'deep', count: d.whole(1, 2), massKg: 3.1, looked: d.chance(0.8) }]
      : [],
    shed: d.chance(0.7) ? [{ lot: 'S', yard: 'N', frame: 'deep', count: 1, massKg: 0.9, looked: true }] : [],
    sugarKg: d.pick([0, 2.8, 6, 20]),
    feeders: d.whole(0, 2),
    daysToLastFeeding: d.pick([1, 5.5, 8]),
    rules: { needToleranceKg: 0, gapFrac: 0, nodes: 100_000, syrupStepL: SYRUP_STEP_L, leastSyrupL: seed % 3 === 0 ? 2 * SYRUP_STEP_L : 0 },
  };
}

export interface Best {
  /** Least expected losses [colonies]. */
  readonly losses: number;
  /** Losses when nothing is done. */
  readonly idle: number;
  /** Least money and work among the plans whose losses are no more than `keep` [money]. */
  readonly cost: number;
}

interface Way {
  readonly combs: number;
  readonly gainKg: readonly number[];
  readonly fromHives: number;
  readonly opened: ReadonlySet<number>;
}

/** The best plans of a small yard; `keep` limits the losses of the plans whose cost counts. */
export function bestOf(input: ProvisionInput, keep = Number.POSITIVE_INFINITY): Best {
  const { colonies } = input;
  const crosses = input.rules?.crossYards === true;
  const together = (a: string, b: string) => a === b || crosses;
  const clean = (c: ProvisionColony) => c.looked === true && !c.flag;
  const small = (c: ProvisionColony) => c.bees < 7500;
  const best = { losses: Number.POSITIVE_INFINITY, idle: 0, cost: Number.POSITIVE_INFINITY };
  const wage = 15 / 60;

  for (const unions of waysToUnite(input, { together, clean, small })) {
    const gone = new Set(unions.map(([from]) => from));
    const needKg = colonies.map((c) => c.needKg);
    const hasKg = colonies.map((c) => c.hasKg);
    for (const [from, into] of unions) {
      needKg[into]! += colonies[from]!.needKg;
      hasKg[into]! += colonies[from]!.hasKg;
    }
    const mayGet = (i: number) => !gone.has(i) && colonies[i]!.hasKg < colonies[i]!.needKg;
    // a giver that takes in another may not count on the other's combs, only on its own
    const spareKg = colonies.map((c, i) => (gone.has(i) ? 0 : Math.min(c.hasKg - c.needKg, hasKg[i]! - needKg[i]!)));
    for (const way of waysToSwap(input, { together, clean, mayGet, spareKg })) {
      for (const { syrup, candy } of waysToFeed(input, mayGet)) {
        const fed = syrup.reduce((n, x) => n + x, 0) * SYRUP_STEP_L;
        const candyKg = candy.reduce((n, x) => n + x, 0) * CANDY_STEP_KG;
        const sugarKg = fed * SUGAR_KG_PER_L + candyKg;
        if (sugarKg > (input.sugarKg ?? 0) + 1e-9) continue;
        let losses = 0;
        colonies.forEach((c, i) => {
          if (gone.has(i)) return;
          const feedKg = (syrup[i]! * SYRUP_STEP_L * SUGAR_KG_PER_L + candy[i]! * CANDY_STEP_KG) * STORES_PER_SUGAR;
          const lossFrac = lossOf(needKg[i]! - hasKg[i]! - way.gainKg[i]! - feedKg);
          losses += small(c) ? 0.5 + 0.5 * lossFrac : lossFrac;
        });
        best.losses = Math.min(best.losses, losses);
        if (losses > keep) continue;
        const opened = new Set([...way.opened, ...syrup.flatMap((n, i) => (n > 0 ? [i] : [])), ...unions.flat()]);
        const minutes =
          opened.size * p.openMinutes.value +
          (way.combs + way.fromHives) * p.swapMinutes.value +
          syrup.filter((n) => n > 0).length * p.feederMinutes.value +
          fed * p.litreMinutes.value +
          candy.filter((n) => n > 0).length * p.candyMinutes.value +
          candyKg * p.candyKgMinutes.value +
          unions.length * p.uniteMinutes.value;
        best.cost = Math.min(best.cost, wage * minutes + 1.2 * sugarKg);
      }
    }
  }
  best.idle = colonies.reduce((sum, c) => sum + (small(c) ? 0.5 + 0.5 * lossOf(c.needKg - c.hasKg) : lossOf(c.needKg - c.hasKg)), 0);
  return best;
}

interface Who {
  together(a: string, b: string): boolean;
  clean(c: ProvisionColony): boolean;
  small(c: ProvisionColony): boolean;
}

function waysToUnite(input: ProvisionInput, who: Who): (readonly (readonly [number, number])[])[] {
  const { colonies } = input;
  let ways: (readonly (readonly [number, number])[])[] = [[]];
  if (input.rules?.unite === false) return ways;
  colonies.forEach((s, from) => {
    if (!who.small(s) || !who.clean(s)) return;
    ways = ways.flatMap((way) => [
      way,
      ...colonies.flatMap((t, into) => {
        const fits = !who.small(t) && who.clean(t) && who.together(s.yard, t.yard) && !way.some(([, other]) => other === into);
        const enough = t.hasKg < t.needKg || s.hasKg + t.hasKg >= s.needKg + t.needKg - 1e-9;
        return fits && enough ? [[...way, [from, into] as const]] : [];
      }),
    ]);
  });
  return ways;
}

/** Every number of combs from every source to every getter, with every way of closing the gaps. */
function* waysToSwap(
  input: ProvisionInput,
  who: { together: Who['together']; clean: Who['clean']; mayGet(i: number): boolean; spareKg: readonly number[] },
): Generator<Way> {
  const { colonies } = input;
  const sources = [
    ...(input.bank ?? []).filter((l) => l.looked === true).map((l) => ({ hive: -1, yard: l.yard, massKg: l.massKg, count: l.count })),
    ...colonies.flatMap((c, hive) =>
      c.hasKg > c.needKg && who.clean(c) && (who.spareKg[hive] ?? 0) > 0
        ? (c.capped ?? []).map((l) => ({ hive, yard: c.yard, massKg: l.massKg, count: l.count }))
        : [],
    ),
  ];
  const getters = colonies.flatMap((c, i) => (who.mayGet(i) && who.clean(c) ? [i] : []));
  const outLeft = colonies.map((c) => (c.emptyCombs ?? []).reduce((n, l) => n + l.count, 0));
  const gainKg = colonies.map(() => 0);
  const outOf = colonies.map(() => 0);
  const taken = sources.map(() => 0);

  function* place(s: number, g: number): Generator<Way> {
    if (s === sources.length) {
      yield* close(0, { shedLeft: (input.shed ?? []).filter((l) => l.looked === true).map((l) => l.count), lightUsed: 0 });
      return;
    }
    if (g === getters.length) {
      yield* place(s + 1, 0);
      return;
    }
    const source = sources[s]!;
    const i = getters[g]!;
    const most = who.together(source.yard, colonies[i]!.yard) ? Math.min(source.count - taken[s]!, outLeft[i]! - outOf[i]!) : 0;
    for (let n = 0; n <= most; n++) {
      taken[s]! += n;
      outOf[i]! += n;
      gainKg[i]! += n * (source.massKg - LIGHT_KG);
      yield* place(s, g + 1);
      taken[s]! -= n;
      outOf[i]! -= n;
      gainKg[i]! -= n * (source.massKg - LIGHT_KG);
    }
  }

  /** Closes the gaps of the sources one after the other with combs of the shed or with getters' light combs of the same yard. */
  function* close(s: number, left: { shedLeft: readonly number[]; lightUsed: number }): Generator<Way> {
    if (s === sources.length) {
      const opened = new Set([
        ...sources.flatMap((x, k) => (x.hive >= 0 && taken[k]! > 0 ? [x.hive] : [])),
        ...getters.filter((i) => outOf[i]! > 0),
      ]);
      yield {
        combs: taken.reduce((n, x) => n + x, 0),
        fromHives: sources.reduce((n, x, k) => n + (x.hive >= 0 ? taken[k]! : 0), 0),
        gainKg: [...gainKg],
        opened,
      };
      return;
    }
    const source = sources[s]!;
    if (source.hive < 0 || taken[s] === 0) {
      yield* close(s + 1, left);
      return;
    }
    // light combs are told by yard: those that came out in the giver's yard (all, where yards may exchange)
    const light = getters.filter((i) => who.together(colonies[i]!.yard, source.yard)).reduce((n, i) => n + outOf[i]!, 0);
    const usedHere =
      sources.slice(0, s).reduce((n, x, k) => n + (x.hive >= 0 && who.together(x.yard, source.yard) ? taken[k]! : 0), 0) -
      shedUsed(left.shedLeft);
    const shedMost = (input.shed ?? []).map((l, k) => (who.together(l.yard, source.yard) ? Math.min(left.shedLeft[k]!, taken[s]!) : 0));
    for (let fromShed = 0; fromShed <= (shedMost[0] ?? 0); fromShed++) {
      const fromGetters = taken[s]! - fromShed;
      if (fromGetters > light - Math.max(0, usedHere)) continue;
      const lossKg = fromShed * (source.massKg - 0.9) + fromGetters * (source.massKg - LIGHT_KG);
      if (lossKg > who.spareKg[source.hive]! + 1e-9) continue;
      gainKg[source.hive]! -= lossKg;
      yield* close(s + 1, { shedLeft: left.shedLeft.map((n, k) => (k === 0 ? n - fromShed : n)), lightUsed: left.lightUsed + fromGetters });
      gainKg[source.hive]! += lossKg;
    }
  }
  const shedAll = (input.shed ?? []).filter((l) => l.looked === true).map((l) => l.count);
  const shedUsed = (shedLeft: readonly number[]) => shedAll.reduce((n, x, k) => n + x - shedLeft[k]!, 0);
  yield* place(0, 0);
}

function waysToFeed(input: ProvisionInput, mayGet: (i: number) => boolean): { syrup: number[]; candy: number[] }[] {
  const days = Math.max(0, (input.daysToLastFeeding ?? 0) - 3);
  let ways: { syrup: number[]; candy: number[] }[] = [{ syrup: [], candy: [] }];
  input.colonies.forEach((c, i) => {
    const syrupMost = mayGet(i) && c.refusesSyrup !== true ? Math.floor(((c.uptakeLPerDay ?? 0) * days) / SYRUP_STEP_L + 1e-9) : 0;
    const candyMost = mayGet(i) ? Math.floor((c.candyRimKg ?? 0) / CANDY_STEP_KG + 1e-9) : 0;
    const counts = (most: number) => Array.from({ length: most + 1 }, (_, n) => n);
    ways = ways.flatMap(({ syrup, candy }) =>
      counts(syrupMost).flatMap((s) => counts(candyMost).map((k) => ({ syrup: [...syrup, s], candy: [...candy, k] }))),
    );
  });
  const leastL = input.rules?.leastSyrupL ?? 0;
  return ways.filter(
    ({ syrup }) => syrup.filter((n) => n > 0).length <= (input.feeders ?? 0) && syrup.every((n) => n === 0 || n * SYRUP_STEP_L >= leastL),
  );
}
