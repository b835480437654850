import type { Choice } from './choice.ts';
import { type Facts, type Getter, isLighter, type Pair } from './facts.ts';

const ENOUGH_KG = 1e-9;

/**
 * A plan without a solver, by rules a keeper can follow: unite what is too small, then cover the colonies in order of what they lack,
 * the least first, with the comb that just covers it, from the bank before another colony; then syrup, then candy.
 *
 * It keeps every rule but is not the best plan; the answer says so.
 */
export function greedyChoice(facts: Facts): Choice {
  const work = new Work(facts);
  work.unite();
  const order = facts.getters.map((_, r) => r).sort((a, b) => work.shortOf(a) - work.shortOf(b));
  for (const r of order) if (!work.isGone(facts.getters[r]!.colony)) work.cover(r);
  return work.choice();
}

interface Swap {
  readonly group: number;
  readonly out: number;
  readonly gainKg: number;
  /** Null where the comb comes from the bank. */
  readonly source: { readonly giver: number; readonly capped: number; readonly fill: number } | null;
}

/** What is left while the plan is made. */
class Work {
  private readonly facts: Facts;
  private readonly bankLeft: number[];
  private readonly lightLeft: number[];
  private readonly spareLeftKg: number[];
  private readonly cappedLeft: number[][];
  private feedersLeft: number;
  private sugarLeftKg: number;
  private readonly united: number[] = [];
  private readonly looks = new Set<number>();
  private readonly into = new Map<string, { getter: number; group: number; out: number; count: number }>();
  private readonly outOf = new Map<string, { giver: number; capped: number; fill: number; count: number }>();
  private readonly syrup = new Map<number, number>();
  private readonly candy = new Map<number, number>();

  constructor(facts: Facts) {
    this.facts = facts;
    this.bankLeft = facts.groups.map((g) => g.bankCount);
    this.lightLeft = facts.groups.map((g) => g.shedCount);
    this.spareLeftKg = facts.givers.map((g) => g.spareKg);
    this.cappedLeft = facts.givers.map((g) => g.capped.map((c) => c.lot.count));
    this.feedersLeft = facts.case.feeders;
    this.sugarLeftKg = facts.case.sugarKg + facts.case.rules.buySugarUpToKg;
  }

  choice(): Choice {
    return {
      into: [...this.into.values()],
      outOf: [...this.outOf.values()],
      syrup: this.syrup,
      candy: this.candy,
      unite: this.united,
      looks: [...this.looks],
    };
  }

  isGone(colony: number): boolean {
    return this.unions().some((p) => p.from === colony);
  }

  /** Short beyond the tolerance, with what a united colony brings or asks. */
  shortOf(getter: number): number {
    const { colony, baseKg } = this.facts.getters[getter]!;
    return baseKg + this.unions().reduce((kg, p) => kg + (p.into === colony ? p.extraKg : 0), 0);
  }

  unite(): void {
    const { pairs } = this.facts;
    const byExtra = pairs.map((_, k) => k).sort((a, b) => pairs[a]!.extraKg - pairs[b]!.extraKg);
    for (const k of byExtra) {
      const pair = pairs[k]!;
      if (this.unions().some((p) => p.from === pair.from || p.into === pair.into)) continue;
      this.united.push(k);
      for (const side of [pair.from, pair.into]) if (!this.facts.case.colonies[side]!.looked) this.looks.add(side);
      this.facts.givers.forEach((giver, d) => {
        if (giver.colony === pair.from) this.spareLeftKg[d] = 0;
        if (giver.colony === pair.into) this.spareLeftKg[d]! -= Math.max(0, pair.extraKg);
      });
    }
  }

  cover(r: number): void {
    const getter = this.facts.getters[r]!;
    let shortKg = this.shortOf(r);
    const outLeft = getter.out.map((o) => o.lot.count);
    while (shortKg > ENOUGH_KG) {
      const swap = this.bestSwap(getter, outLeft, shortKg);
      if (!swap) break;
      this.place(r, swap);
      outLeft[swap.out]! -= 1;
      shortKg -= swap.gainKg;
    }
    const { syrupStepKg, syrupStepSugarKg, leastSyrupSteps, candyStepKg, candyStepSugarKg } = this.facts;
    if (shortKg > ENOUGH_KG && this.feedersLeft > 0) {
      const steps = this.steps(shortKg, { least: leastSyrupSteps, most: getter.syrupSteps }, syrupStepKg, syrupStepSugarKg);
      if (steps > 0) {
        this.syrup.set(r, steps);
        this.feedersLeft -= 1;
        shortKg -= steps * syrupStepKg;
      }
    }
    if (shortKg > ENOUGH_KG) {
      const steps = this.steps(shortKg, { least: 1, most: getter.candySteps }, candyStepKg, candyStepSugarKg);
      if (steps > 0) this.candy.set(r, steps);
    }
  }

  private steps(shortKg: number, { least, most }: { least: number; most: number }, stepKg: number, sugarKg: number): number {
    const wanted = Math.max(least, Math.ceil(shortKg / stepKg - ENOUGH_KG));
    const had = Math.min(most, wanted, Math.floor(this.sugarLeftKg / sugarKg + ENOUGH_KG));
    const steps = had < least ? 0 : had;
    this.sugarLeftKg -= steps * sugarKg;
    return steps;
  }

  /** The swap that covers most, among those the one that is least too much, the bank before a colony. */
  private bestSwap(getter: Getter, outLeft: readonly number[], shortKg: number): Swap | null {
    let best: Swap | null = null;
    const rank = (s: Swap) => [-Math.min(s.gainKg, shortKg), s.gainKg, s.source ? 1 : 0];
    getter.out.forEach(({ lot, group: own }, out) => {
      if (outLeft[out] === 0) return;
      this.facts.groups.forEach((group, g) => {
        if (group.frame !== lot.frame || group.scope !== this.facts.groups[own]!.scope || !isLighter(lot.massKg, group.massKg)) return;
        const source = this.bankLeft[g]! > 0 ? null : this.giverFor(g, getter.releases ? own : null);
        if (source === undefined) return;
        const swap = { group: g, out, gainKg: group.massKg - lot.massKg, source };
        if (best === null || isBefore(rank(swap), rank(best))) best = swap;
      });
    });
    return best;
  }

  /** A giver that can spare a comb of the group and close the gap, also with the getter's own light comb. */
  private giverFor(group: number, own: number | null): Swap['source'] | undefined {
    const { givers, groups } = this.facts;
    for (const [giver, { capped }] of givers.entries()) {
      for (const [c, { lot, group: g }] of capped.entries()) {
        if (g !== group || this.cappedLeft[giver]![c] === 0) continue;
        const fills = groups.flatMap((fill, h) => {
          const there = this.lightLeft[h]! > 0 || (fill.bankFillCount > 0 && this.bankLeft[h]! > 0) || h === own;
          const fits = fill.frame === lot.frame && fill.scope === groups[group]!.scope && isLighter(fill.massKg, lot.massKg);
          return there && fits && lot.massKg - fill.massKg <= this.spareLeftKg[giver]! + ENOUGH_KG ? [h] : [];
        });
        const fill = fills.includes(own ?? -1) ? own! : fills[0];
        if (fill !== undefined) return { giver, capped: c, fill };
      }
    }
    return undefined;
  }

  private place(r: number, swap: Swap): void {
    const getter = this.facts.getters[r]!;
    const colony = this.facts.case.colonies[getter.colony]!;
    if (getter.needsLook && !colony.looked) this.looks.add(getter.colony);
    if (getter.releases) this.lightLeft[getter.out[swap.out]!.group]! += 1;
    bump(this.into, `${r} ${swap.group} ${swap.out}`, { getter: r, group: swap.group, out: swap.out });
    if (swap.source === null) {
      this.bankLeft[swap.group]! -= 1;
      return;
    }
    const { giver, capped, fill } = swap.source;
    const { colony: from, capped: lots, needsLook } = this.facts.givers[giver]!;
    if (needsLook) this.looks.add(from);
    this.cappedLeft[giver]![capped]! -= 1;
    this.spareLeftKg[giver]! -= lots[capped]!.lot.massKg - this.facts.groups[fill]!.massKg;
    if (this.lightLeft[fill]! > 0) this.lightLeft[fill]! -= 1;
    else this.bankLeft[fill]! -= 1;
    bump(this.outOf, `${giver} ${capped} ${fill}`, { giver, capped, fill });
  }

  private unions(): readonly Pair[] {
    return this.united.map((k) => this.facts.pairs[k]!);
  }
}

function bump<T>(into: Map<string, T & { count: number }>, key: string, item: T): void {
  into.set(key, { ...item, count: (into.get(key)?.count ?? 0) + 1 });
}

function isBefore(a: readonly number[], b: readonly number[]): boolean {
  for (let i = 0; i < a.length; i++) if (Math.abs(a[i]! - b[i]!) > ENOUGH_KG) return a[i]! < b[i]!;
  return false;
}
