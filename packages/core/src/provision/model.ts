import type { Aim } from './answer.ts';
import type { Choice } from './choice.ts';
import type { Facts } from './facts.ts';
import { type PieceVariable, writeGetter } from './model-getters.ts';
import { writeBalances, writeGiver } from './model-givers.ts';
import { ModelSheet, type Term } from './model-sheet.ts';
import type { LpModel, LpSum } from './solve.ts';

type Values = Readonly<Record<string, number>>;

/** The model of one plan: rows and variables are the same for every aim; objective and the bounds on earlier aims differ. */
export interface ProvisionModel {
  /** In the order of their rank. */
  readonly aims: readonly Aim[];
  /** The model that minimises `aim`; `kept` are earlier aims with the most they may be. */
  lp(aim: Aim, kept: readonly { readonly aim: Aim; readonly most: number }[]): LpModel;
  /** The plan in a solver's values. */
  choice(values: Values): Choice;
  /** The values of a plan, with nothing opened, fed or short that need not be. */
  values(choice: Choice): Values;
  /** Expected losses in a solver's values that come from shortage, without those of colonies too small alone. */
  shortageLosses(values: Values): number;
  /** True where a variable belongs to one of these getters or to none. */
  isFree(name: string, getters: ReadonlySet<number>): boolean;
}

/**
 * Builds the mixed-integer model of docs/spec-provision.md.
 *
 * Every swap at a hive is one variable, comb of a group in and one of the hive's own combs out. So the frames of a box stay the same
 * in number by construction, and what a swap gains is a constant.
 */
export function buildModel(facts: Facts): ProvisionModel {
  const { rules, prices, feeders, sugarKg } = facts.case;
  const sheet = new ModelSheet(facts);
  const pieces = facts.getters.map((_, r) => writeGetter(sheet, r));
  facts.givers.forEach((_, d) => {
    writeGiver(sheet, d);
  });
  writeBalances(sheet);
  if (sheet.feeders.length > feeders) sheet.draft.row('feeders', sheet.feeders, null, feeders);
  sheet.draft.row('sugar', sheet.sugar, null, sugarKg + rules.buySugarUpToKg);

  const { losses, cost, openings } = sheet;
  const worth = rules.pricePerColony;
  const sum = worth === null ? [] : [...scaled(losses, worth), ...cost, ...scaled(openings, prices.opening)];
  const sums: Record<Aim, LpSum> = { losses, cost, openings, sum };
  return {
    aims: worth === null ? ['losses', 'cost', 'openings'] : ['sum'],
    lp: (aim, kept) =>
      sheet.draft.model(
        `provision, aim ${aim}`,
        sums[aim],
        kept.map((k) => ({ name: `keep_${k.aim}`, sum: sums[k.aim], most: k.most })),
      ),
    choice: (values) => choiceOf(sheet, values),
    values: (choice) => valuesOf(sheet, pieces, choice),
    shortageLosses: (values) => losses.reduce((sum, [name, factor]) => sum + (name.startsWith('q') ? factor * (values[name] ?? 0) : 0), 0),
    isFree: (name, getters) => {
      const getter = /^[zsfkbqp](\d+)/.exec(name)?.[1];
      return getter === undefined || getters.has(Number(getter));
    },
  };
}

function scaled(sum: LpSum, by: number): Term[] {
  return sum.map(([name, factor]): Term => [name, factor * by]);
}

function choiceOf(sheet: ModelSheet, values: Values): Choice {
  const count = (name: string): number => Math.round(values[name] ?? 0);
  const gifts = (letter: 's' | 'k') =>
    new Map(sheet.facts.getters.map((_, r): [number, number] => [r, count(`${letter}${r}`)]).filter(([, n]) => n > 0));
  return {
    into: sheet.into.map(({ name, ...swap }) => ({ ...swap, count: count(name) })).filter((swap) => swap.count > 0),
    outOf: sheet.outOf.map(({ name, ...swap }) => ({ ...swap, count: count(name) })).filter((swap) => swap.count > 0),
    syrup: gifts('s'),
    candy: gifts('k'),
    unite: sheet.unite.flatMap((name, k) => (count(name) > 0 ? [k] : [])),
    looks: sheet.look.flatMap((name, i) => (name !== null && count(name) > 0 ? [i] : [])),
  };
}

function valuesOf(sheet: ModelSheet, pieces: readonly (readonly PieceVariable[])[], choice: Choice): Values {
  const { facts } = sheet;
  const { groups, getters, givers, pairs } = facts;
  const values: Record<string, number> = { one: 1 };
  const coverKg = getters.map(() => 0);
  const capped = groups.map(() => 0);
  const light = groups.map((group) => -group.shedCount);
  const opens = (colony: number) => {
    values[sheet.open[colony]!] = 1;
  };
  for (const { getter: r, group, out, count } of choice.into) {
    const getter = getters[r]!;
    const { lot, group: own } = getter.out[out]!;
    values[`z${r}_${group}_${out}`] = count;
    opens(getter.colony);
    coverKg[r]! += count * (groups[group]!.massKg - lot.massKg);
    capped[group]! += count;
    if (getter.releases) light[own]! -= count;
  }
  for (const { giver: d, capped: j, fill, count } of choice.outOf) {
    const giver = givers[d]!;
    values[`w${d}_${j}_${fill}`] = count;
    opens(giver.colony);
    capped[giver.capped[j]!.group]! -= count;
    light[fill]! += count;
  }
  groups.forEach((_, g) => {
    if (capped[g]! > 0) values[`a${g}`] = capped[g]!;
    if (light[g]! > 0) values[`c${g}`] = light[g]!;
  });
  for (const [r, steps] of choice.syrup) {
    Object.assign(values, { [`s${r}`]: steps, [`f${r}`]: 1 });
    opens(getters[r]!.colony);
    coverKg[r]! += steps * facts.syrupStepKg;
  }
  for (const [r, steps] of choice.candy) {
    Object.assign(values, { [`k${r}`]: steps, [`b${r}`]: 1 });
    coverKg[r]! += steps * facts.candyStepKg;
  }
  for (const k of choice.unite) {
    values[sheet.unite[k]!] = 1;
    opens(pairs[k]!.from);
    opens(pairs[k]!.into);
  }
  for (const i of choice.looks) values[sheet.look[i]!] = 1;
  getters.forEach(({ colony, baseKg }, r) => {
    const unions = choice.unite.map((k) => pairs[k]!);
    if (unions.some((pair) => pair.from === colony)) return;
    let shortKg = unions.reduce((kg, pair) => kg + (pair.into === colony ? pair.extraKg : 0), baseKg - coverKg[r]!);
    for (const { name, widthKg, past } of pieces[r]!) {
      if (shortKg <= 0) return;
      values[name] = Math.min(widthKg, shortKg);
      if (past !== null) values[past] = 1;
      shortKg -= widthKg;
    }
  });
  return values;
}
