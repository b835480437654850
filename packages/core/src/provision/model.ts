import { provisionParameters } from '../tables/parameters-provision.gen.ts';
import type { Aim } from './answer.ts';
import type { Choice } from './choice.ts';
import { type Facts, isLighter } from './facts.ts';
import { lossPieces } from './loss-curve.ts';
import { ModelDraft } from './model-draft.ts';
import type { LpModel, LpSum } from './solve.ts';

const WHOLE = { whole: true } as const;

/** The model of one yard plan: the rows are the same for every aim, only the objective and the bounds on earlier aims differ. */
export interface ProvisionModel {
  /** The model that minimises `aim`; `kept` are earlier aims with the most they may be. */
  lp(aim: Aim, kept: readonly { readonly aim: Aim; readonly most: number }[]): LpModel;
  /** The plan in a solver's values. */
  choice(values: Readonly<Record<string, number>>): Choice;
  aims: readonly Aim[];
  values(choice: Choice): Record<string, number>;
}

/**
 * Builds the mixed-integer model. Rules are numbered in docs/spec-provision.md; the row names carry what they bind.
 *
 * Every swap is one variable: comb of a group in, one of the hive's own combs out. So the frames of a box stay the
 * same in number by construction, and the gain of a swap is a constant.
 */
export function buildModel(facts: Facts): ProvisionModel {
  const draft = new ModelDraft();
  const { groups, getters, givers, pairs } = facts;
  const kase = facts.case;
  const price = kase.prices;
  const perMinute = price.workPerHour / 60;
  const p = provisionParameters;
  const losses: [string, number][] = [];
  const cost: [string, number][] = [];
  const openings: [string, number][] = [];
  const one = draft.variable('one', 1, 1, {});

  const supply = groups.map((g) => g.bankCount + g.giverCount);
  const light = groups.map((g) => g.bankFillCount + g.shedCount + g.lightCount);
  const cappedUse: [string, number][][] = groups.map(() => []);
  const lightUse: [string, number][][] = groups.map(() => []);

  const open = kase.colonies.map((c, i) => {
    const acts =
      getters.some((g) => g.colony === i) || givers.some((g) => g.colony === i) || pairs.some((q) => q.from === i || q.into === i);
    if (!acts) return null;
    const name = draft.variable(`o${i}`, 0, 1, WHOLE);
    cost.push([name, perMinute * p.openMinutes.value]);
    openings.push([name, c.openingWeight]);
    return name;
  });
  const look = kase.colonies.map((c, i) => {
    if (c.looked || open[i] === null || !kase.rules.allowLookSteps || c.flag !== null) return null;
    const name = draft.variable(`l${i}`, 0, 1, WHOLE);
    cost.push([name, perMinute * p.lookMinutes.value]);
    openings.push([name, c.openingWeight]);
    return name;
  });
  const unite = pairs.map((pair, k) => {
    const name = draft.variable(`u${k}`, 0, 1, WHOLE);
    cost.push([name, perMinute * p.uniteMinutes.value]);
    for (const side of [pair.from, pair.into]) {
      draft.row(
        `uo${k}_${side}`,
        [
          [name, 1],
          [open[side]!, -1],
        ],
        null,
        0,
      );
      if (look[side] !== null && !kase.colonies[side]!.looked)
        draft.row(
          `ul${k}_${side}`,
          [
            [name, 1],
            [look[side]!, -1],
          ],
          null,
          0,
        );
    }
    return name;
  });
  const unitesOf = (colony: number, side: 'from' | 'into'): [string, number][] =>
    pairs.flatMap((pair, k): [string, number][] => (pair[side] === colony ? [[unite[k]!, 1]] : []));
  kase.colonies.forEach((c, i) => {
    const gone = unitesOf(i, 'from');
    draft.row(`gone${i}`, gone, null, 1);
    draft.row(`taken${i}`, unitesOf(i, 'into'), null, 1);
    if (c.small) {
      losses.push([one, p.tooSmallLossFrac.value]);
      for (const [name] of gone) losses.push([name, -p.tooSmallLossFrac.value]);
    }
  });

  const into: { name: string; getter: number; group: number; out: number }[] = [];
  const syrup: { name: string; getter: number }[] = [];
  const candy: { name: string; getter: number }[] = [];
  const feederSum: [string, number][] = [];
  const pieceNames: { name: string; widthKg: number; past: string | null }[][] = [];
  const sugarSum: [string, number][] = [];
  getters.forEach((getter, r) => {
    const c = kase.colonies[getter.colony]!;
    const opened = open[getter.colony]!;
    const gone = unitesOf(getter.colony, 'from');
    const covers: [string, number][] = [];
    const swaps: [string, number][] = [];
    getter.out.forEach(({ lot, group: own }, j) => {
      const ofLot: [string, number][] = [];
      groups.forEach((group, g) => {
        const sameKind = group.frame === lot.frame && group.scope === groups[own]!.scope;
        const high = Math.min(lot.count, supply[g]!);
        if (!sameKind || high === 0 || !isLighter(lot.massKg, group.massKg)) return;
        const name = draft.variable(`z${r}_${g}_${j}`, 0, high, WHOLE);
        const gainKg = group.massKg - lot.massKg;
        into.push({ name, getter: r, group: g, out: j });
        covers.push([name, gainKg]);
        swaps.push([name, 1]);
        ofLot.push([name, 1]);
        cappedUse[g]!.push([name, 1]);
        if (getter.releases) lightUse[own]!.push([name, -1]);
        cost.push([name, perMinute * p.swapMinutes.value + price.honeyPerKg * gainKg]);
      });
      draft.row(`has${r}_${j}`, ofLot, null, lot.count);
    });
    if (swaps.length > 0) {
      const leastGainKg = Math.min(...covers.map(([, gainKg]) => gainKg));
      const most = Math.min(
        getter.out.reduce((n, o) => n + o.lot.count, 0),
        Math.ceil(getter.mostKg / leastGainKg - 1e-9),
      );
      draft.row(`zo${r}`, [...swaps, [opened, -most]], null, 0);
      if (getter.needsLook) draft.row(`zl${r}`, [...swaps, [look[getter.colony]!, -most]], null, 0);
      if (gone.length > 0) draft.row(`zu${r}`, [...swaps, ...gone.map(([v]): [string, number] => [v, most])], null, most);
    }
    if (getter.syrupSteps > 0) {
      const steps = draft.variable(`s${r}`, 0, getter.syrupSteps, WHOLE);
      const feeder = draft.variable(`f${r}`, 0, 1, WHOLE);
      draft.row(
        `sf${r}`,
        [
          [steps, 1],
          [feeder, -getter.syrupSteps],
        ],
        null,
        0,
      );
      draft.row(
        `fo${r}`,
        [
          [feeder, 1],
          [opened, -1],
        ],
        null,
        0,
      );
      draft.row(`fu${r}`, gone.length > 0 ? [[feeder, 1], ...gone] : [], null, 1);
      syrup.push({ name: steps, getter: r });
      covers.push([steps, facts.syrupStepKg]);
      feederSum.push([feeder, 1]);
      sugarSum.push([steps, facts.syrupStepSugarKg]);
      cost.push([steps, price.sugarPerKg * facts.syrupStepSugarKg + perMinute * p.litreMinutes.value * kase.rules.syrupStepL]);
      cost.push([feeder, perMinute * p.feederMinutes.value]);
    }
    if (getter.candySteps > 0) {
      const steps = draft.variable(`k${r}`, 0, getter.candySteps, WHOLE);
      const board = draft.variable(`b${r}`, 0, 1, WHOLE);
      draft.row(
        `kb${r}`,
        [
          [steps, 1],
          [board, -getter.candySteps],
        ],
        null,
        0,
      );
      draft.row(`ku${r}`, gone.length > 0 ? [[board, 1], ...gone] : [], null, 1);
      candy.push({ name: steps, getter: r });
      covers.push([steps, facts.candyStepKg]);
      sugarSum.push([steps, facts.candyStepSugarKg]);
      cost.push([steps, (price.sugarPerKg + perMinute * p.candyKgMinutes.value) * facts.candyStepSugarKg]);
      cost.push([board, perMinute * p.candyMinutes.value]);
      openings.push([board, p.openingWeightAfterGluing.value]);
    }

    const weight = c.small ? 1 - p.tooSmallLossFrac.value : 1;
    const pieces = lossPieces(c.curve, getter.mostKg).map((piece, k) => ({
      ...piece,
      name: draft.variable(`q${r}_${k}`, 0, piece.widthKg, {}),
    }));
    pieceNames.push(pieces.map((q, k) => ({ name: q.name, widthKg: q.widthKg, past: q.flatter ? `p${r}_${k}` : null })));
    pieces.forEach((piece, k) => {
      losses.push([piece.name, weight * piece.perKg]);
      if (!piece.flatter) return;
      // a flatter piece would be used before a steeper one: all before it must be full first
      const past = draft.variable(`p${r}_${k}`, 0, 1, WHOLE);
      pieces.forEach((other, m) => {
        if (m < k)
          draft.row(
            `pf${r}_${k}_${m}`,
            [
              [other.name, 1],
              [past, -other.widthKg],
            ],
            0,
            null,
          );
        else
          draft.row(
            `pt${r}_${k}_${m}`,
            [
              [other.name, 1],
              [past, -other.widthKg],
            ],
            null,
            0,
          );
      });
    });
    const extra = pairs.flatMap((pair, k): [string, number][] => (pair.into === getter.colony ? [[unite[k]!, -pair.extraKg]] : []));
    const relieved = Math.max(0, getter.baseKg);
    draft.row(
      `need${r}`,
      [...pieces.map((q): [string, number] => [q.name, 1]), ...covers, ...extra, ...gone.map(([v]): [string, number] => [v, relieved])],
      getter.baseKg,
      null,
    );
  });
  if (feederSum.length > kase.feeders) draft.row('feeders', feederSum, null, kase.feeders);
  draft.row('sugar', sugarSum, null, kase.sugarKg + kase.rules.buySugarUpToKg);

  const outOf: { name: string; giver: number; capped: number; fill: number }[] = [];
  givers.forEach((giver, d) => {
    const gone = unitesOf(giver.colony, 'from');
    const taken = pairs.flatMap((pair, k): [string, number][] =>
      pair.into === giver.colony && pair.extraKg > 0 ? [[unite[k]!, pair.extraKg]] : [],
    );
    const gives: [string, number][] = [];
    const swaps: [string, number][] = [];
    giver.capped.forEach(({ lot, group: own }, j) => {
      const ofLot: [string, number][] = [];
      groups.forEach((group, h) => {
        const sameKind = group.frame === lot.frame && group.scope === groups[own]!.scope;
        const lossKg = lot.massKg - group.massKg;
        const high = Math.min(lot.count, light[h]!, Math.floor(giver.spareKg / Math.max(lossKg, 1e-9) + 1e-9));
        if (!sameKind || high <= 0 || !isLighter(group.massKg, lot.massKg)) return;
        const name = draft.variable(`w${d}_${j}_${h}`, 0, high, WHOLE);
        outOf.push({ name, giver: d, capped: j, fill: h });
        gives.push([name, lossKg]);
        swaps.push([name, 1]);
        ofLot.push([name, 1]);
        cappedUse[own]!.push([name, -1]);
        lightUse[h]!.push([name, 1]);
        cost.push([name, perMinute * p.swapMinutes.value - price.honeyPerKg * lossKg]);
      });
      draft.row(`gap${d}_${j}`, ofLot, null, lot.count);
    });
    if (swaps.length === 0) return;
    const most = Math.min(
      giver.capped.reduce((n, g) => n + g.lot.count, 0),
      Math.floor(giver.spareKg / Math.min(...gives.map(([, kg]) => kg)) + 1e-9),
    );
    draft.row(`own${d}`, [...gives, ...taken], null, giver.spareKg);
    draft.row(`wo${d}`, [...swaps, [open[giver.colony]!, -most]], null, 0);
    if (giver.needsLook) draft.row(`wl${d}`, [...swaps, [look[giver.colony]!, -most]], null, 0);
    if (gone.length > 0) draft.row(`wu${d}`, [...swaps, ...gone.map(([v]): [string, number] => [v, most])], null, most);
  });

  groups.forEach((group, g) => {
    if (cappedUse[g]!.length === 0 && !lightUse[g]!.some(([, factor]) => factor > 0)) return;
    const fromBank: [string, number][] = group.bankCount > 0 ? [[draft.variable(`a${g}`, 0, group.bankCount, WHOLE), 1]] : [];
    const asFill: [string, number][] = group.bankFillCount > 0 ? [[draft.variable(`c${g}`, 0, group.bankCount, WHOLE), 1]] : [];
    draft.row(`bank${g}`, [...fromBank, ...asFill], null, group.bankCount);
    draft.row(`comb${g}`, [...cappedUse[g]!, ...fromBank.map(([v]): [string, number] => [v, -1])], 0, 0);
    draft.row(`fill${g}`, [...lightUse[g]!, ...asFill.map(([v]): [string, number] => [v, -1])], null, group.shedCount);
  });

  const sums: Record<Aim, LpSum> = { losses, cost, openings, sum: [] };
  if (kase.rules.pricePerColony !== null) {
    const scaled = (sum: LpSum, by: number) => sum.map(([name, factor]): [string, number] => [name, factor * by]);
    sums.sum = [...scaled(losses, kase.rules.pricePerColony), ...cost, ...scaled(openings, price.opening)];
  }
  const valuesOf = (choice: Choice): Record<string, number> => {
    const v: Record<string, number> = { one: 1 };
    const add = (name: string, by: number) => {
      v[name] = (v[name] ?? 0) + by;
    };
    const opens = (colony: number) => {
      v[open[colony]!] = 1;
    };
    const cover = getters.map(() => 0);
    const use = groups.map(() => ({ capped: 0, light: 0 }));
    for (const x of choice.into) {
      const getter = getters[x.getter]!;
      add(`z${x.getter}_${x.group}_${x.out}`, x.count);
      opens(getter.colony);
      cover[x.getter]! += x.count * (groups[x.group]!.massKg - getter.out[x.out]!.lot.massKg);
      use[x.group]!.capped += x.count;
      if (getter.releases) use[getter.out[x.out]!.group]!.light -= x.count;
    }
    for (const x of choice.outOf) {
      const giver = givers[x.giver]!;
      add(`w${x.giver}_${x.capped}_${x.fill}`, x.count);
      opens(giver.colony);
      use[giver.capped[x.capped]!.group]!.capped -= x.count;
      use[x.fill]!.light += x.count;
    }
    for (const [r, n] of choice.syrup) {
      v[`s${r}`] = n;
      v[`f${r}`] = 1;
      opens(getters[r]!.colony);
      cover[r]! += n * facts.syrupStepKg;
    }
    for (const [r, n] of choice.candy) {
      v[`k${r}`] = n;
      v[`b${r}`] = 1;
      cover[r]! += n * facts.candyStepKg;
    }
    for (const k of choice.unite) {
      v[unite[k]!] = 1;
      opens(pairs[k]!.from);
      opens(pairs[k]!.into);
    }
    for (const i of choice.looks) v[look[i]!] = 1;
    getters.forEach((getter, r) => {
      let shortKg = getter.baseKg - cover[r]!;
      for (const k of choice.unite) {
        if (pairs[k]!.into === getter.colony) shortKg += pairs[k]!.extraKg;
        if (pairs[k]!.from === getter.colony) shortKg = 0;
      }
      for (const piece of pieceNames[r]!) {
        const kg = Math.min(piece.widthKg, Math.max(0, shortKg));
        if (kg > 0) {
          v[piece.name] = kg;
          if (piece.past !== null) v[piece.past] = 1;
        }
        shortKg -= kg;
      }
    });
    use.forEach((u, g) => {
      if (u.capped > 0) v[`a${g}`] = u.capped;
      const more = u.light - groups[g]!.shedCount;
      if (more > 0) v[`c${g}`] = more;
    });
    return v;
  };
  const counted = (values: Readonly<Record<string, number>>, name: string): number => Math.round(values[name] ?? 0);
  return {
    aims: kase.rules.pricePerColony === null ? ['losses', 'cost', 'openings'] : ['sum'],
    lp: (aim, kept) =>
      draft.model(
        `provision, aim ${aim}`,
        sums[aim],
        kept.map((k) => ({ name: `keep_${k.aim}`, sum: sums[k.aim], most: k.most })),
      ),
    values: valuesOf,
    choice: (values) => ({
      into: into.map(({ name, ...rest }) => ({ ...rest, count: counted(values, name) })).filter((x) => x.count > 0),
      outOf: outOf.map(({ name, ...rest }) => ({ ...rest, count: counted(values, name) })).filter((x) => x.count > 0),
      syrup: new Map(syrup.map((s): [number, number] => [s.getter, counted(values, s.name)]).filter(([, n]) => n > 0)),
      candy: new Map(candy.map((s): [number, number] => [s.getter, counted(values, s.name)]).filter(([, n]) => n > 0)),
      unite: unite.flatMap((name, k) => (counted(values, name) > 0 ? [k] : [])),
      looks: look.flatMap((name, i) => (name !== null && counted(values, name) > 0 ? [i] : [])),
    }),
  };
}
