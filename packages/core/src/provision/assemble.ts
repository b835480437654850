import { provisionParameters } from '../tables/parameters-provision.gen.ts';
import type { CandyGift, LookStep, Move, ProvisionAnswer, Step, SyrupGift, Uncovered, Uniting } from './answer.ts';
import type { Case } from './case.ts';
import type { Choice } from './choice.ts';
import type { Facts } from './facts.ts';
import { lossAt } from './loss-curve.ts';
import { type CappedComb, type Placed, stepsOf, type Walk, walkOf } from './walk.ts';

/** The parts of an answer that say what is done. */
export interface Deeds {
  readonly moves: readonly Move[];
  readonly looks: readonly LookStep[];
  readonly syrup: readonly SyrupGift[];
  readonly candy: readonly CandyGift[];
  readonly unite: readonly Uniting[];
  readonly steps: readonly Step[];
}

/** A choice in the words of the answer, with the walk that does it. */
export function assemble(facts: Facts, choice: Choice): Deeds {
  const { colonies, rules } = facts.case;
  const walk = walkOf(facts, choice);
  const { moves, moveOf } = movesOf(walk);
  const idOf = (getter: number) => colonies[facts.getters[getter]!.colony]!.id;
  const syrup = [...choice.syrup].map(([getter, steps]) => ({
    id: `syrup:${idOf(getter)}`,
    to: idOf(getter),
    litres: round(steps * rules.syrupStepL),
    sugarKg: round(steps * facts.syrupStepSugarKg),
    storesKg: round(steps * facts.syrupStepKg),
  }));
  const candy = [...choice.candy].map(([getter, steps]) => ({
    id: `candy:${idOf(getter)}`,
    to: idOf(getter),
    sugarKg: round(steps * facts.candyStepSugarKg),
    storesKg: round(steps * facts.candyStepKg),
  }));
  const unite = choice.unite.map((k) => {
    const pair = facts.pairs[k]!;
    const [from, into] = [colonies[pair.from]!, colonies[pair.into]!];
    return { id: `unite:${from.id}`, from: from.id, into: into.id, needKg: pair.needKg, queenKnown: from.queenKnown && into.queenKnown };
  });
  return { moves, looks: walk.looks, syrup, candy, unite, steps: stepsOf(walk, moveOf, (step) => `${step.do}:${step.colony}`) };
}

function movesOf(walk: Walk): { readonly moves: readonly Move[]; moveOf(comb: CappedComb): string } {
  const like = new Map<string, Placed[]>();
  for (const placed of walk.placed) {
    const { capped, out } = placed;
    const key = JSON.stringify([
      capped.from,
      placed.to,
      placed.frame,
      capped.massKg,
      out.massKg,
      out.goesTo,
      placed.held,
      capped.fill?.from ?? null,
      capped.fill?.massKg ?? null,
    ]);
    like.set(key, [...(like.get(key) ?? []), placed]);
  }
  const nameOf = new Map<CappedComb, string>();
  const moves = [...like.values()].map((swaps, i): Move => {
    const { to, frame, capped, out, outSdKg, held } = swaps[0]!;
    const count = swaps.length;
    for (const swap of swaps) nameOf.set(swap.capped, `m${i + 1}`);
    return {
      id: `m${i + 1}`,
      from: capped.from,
      fromKind: capped.fromKind,
      to,
      frame,
      count,
      massKg: capped.massKg,
      gainKg: round(count * (capped.massKg - out.massKg)),
      // one lot's error is shared by all of its combs
      gainSdKg: round(count * Math.hypot(capped.massSdKg, outSdKg)),
      out: { frame, massKg: out.massKg, to: out.goesTo, held },
      fill: capped.fill && { from: capped.fill.from, fromKind: capped.fill.fromKind, massKg: capped.fill.massKg },
      giverLossKg: capped.fill ? round(count * (capped.massKg - capped.fill.massKg)) : 0,
    };
  });
  return {
    moves,
    moveOf: (comb) => {
      const name = nameOf.get(comb);
      if (name === undefined) throw new RangeError('provision: a comb was taken and not placed');
      return name;
    },
  };
}

export interface Score {
  readonly uncovered: readonly Uncovered[];
  readonly totals: ProvisionAnswer['totals'];
}

/** What the deeds come to, by the aims. */
export function scoreOf(kase: Case, deeds: Deeds): Score {
  const { rules, prices } = kase;
  const p = provisionParameters;
  const gainKg = new Map<string, number>();
  const add = (id: string, kg: number) => gainKg.set(id, (gainKg.get(id) ?? 0) + kg);
  for (const move of deeds.moves) {
    add(move.to, move.gainKg);
    if (move.fromKind === 'colony') add(move.from, -move.giverLossKg);
  }
  for (const gift of [...deeds.syrup, ...deeds.candy]) add(gift.to, gift.storesKg);
  const uncovered: Uncovered[] = [];
  let expectedLosses = 0;
  for (const c of kase.colonies) {
    if (deeds.unite.some((u) => u.from === c.id)) continue;
    const union = deeds.unite.find((u) => u.into === c.id);
    const joined = union ? kase.colonies.find((x) => x.id === union.from)!.hasKg : 0;
    const shortKg = (union?.needKg ?? c.needKg) - c.hasKg - joined - (gainKg.get(c.id) ?? 0);
    const lossFrac = lossAt(c.curve, shortKg - rules.needToleranceKg);
    if (shortKg > rules.needToleranceKg) uncovered.push({ colony: c.id, kg: round(shortKg), lossFrac: round(lossFrac) });
    expectedLosses += c.small ? p.tooSmallLossFrac.value + (1 - p.tooSmallLossFrac.value) * lossFrac : lossFrac;
  }

  const placed = deeds.moves.reduce((n, m) => n + m.count, 0);
  const taken = deeds.moves.filter((m) => m.fromKind === 'colony').reduce((n, m) => n + m.count, 0);
  const opened = new Set([
    ...deeds.moves.flatMap((m) => (m.fromKind === 'colony' ? [m.from, m.to] : [m.to])),
    ...deeds.syrup.map((s) => s.to),
    ...deeds.unite.flatMap((u) => [u.from, u.into]),
  ]);
  const weightOf = (id: string) => kase.colonies.find((c) => c.id === id)!.openingWeight;
  const litres = deeds.syrup.reduce((l, s) => l + s.litres, 0);
  const candyKg = deeds.candy.reduce((kg, c) => kg + c.sugarKg, 0);
  const sugarKg = deeds.syrup.reduce((kg, s) => kg + s.sugarKg, 0) + candyKg;
  const minutes =
    opened.size * p.openMinutes.value +
    (placed + taken) * p.swapMinutes.value +
    deeds.looks.length * p.lookMinutes.value +
    deeds.syrup.length * p.feederMinutes.value +
    litres * p.litreMinutes.value +
    deeds.candy.length * p.candyMinutes.value +
    candyKg * p.candyKgMinutes.value +
    deeds.unite.length * p.uniteMinutes.value;
  const fromBankKg = deeds.moves.reduce((kg, m) => kg + m.gainKg - m.giverLossKg, 0);
  const openings =
    [...opened, ...deeds.looks.map((l) => l.colony)].reduce((n, id) => n + weightOf(id), 0) +
    deeds.candy.length * p.openingWeightAfterGluing.value;
  return {
    uncovered,
    totals: {
      expectedLosses: round(expectedLosses),
      cost: round((prices.workPerHour / 60) * minutes + prices.sugarPerKg * sugarKg + prices.honeyPerKg * fromBankKg),
      openings: round(openings),
      minutes: round(minutes),
      sugarKg: round(sugarKg),
      buySugarKg: round(Math.max(0, sugarKg - kase.sugarKg)),
    },
  };
}

/** Rounded to a millionth, so that sums of decimals read as they were typed. */
function round(value: number): number {
  return Math.round(value * 1e6) / 1e6 + 0;
}
