import { provisionParameters } from '../tables/parameters-provision.gen.ts';
import type { Aim } from './answer.ts';
import type { Case } from './case.ts';
import type { Choice } from './choice.ts';
import type { ProvisionModel } from './model.ts';
import type { LpModel, Solve, SolveResult } from './solve.ts';

/** Gap that does not matter, for each unit of the asked relative gap: at 1 % half a hundredth of a colony, a tenth of money. Openings are counted out. */
const GAP_ABS: Record<Aim, number> = { losses: 0.5, cost: 10, openings: 0, sum: 10 };
/** Money, work and openings are solved to so many times the asked gap. */
const LATER_GAPS = 2;
/** Losses by shortage below this are none: every colony has its need. */
const NO_LOSSES = 1e-6;
/** Added to an earlier aim's value before it is kept, so that its own plan still keeps it after rounding. */
const ROUNDING = 1e-6;

export type Solved = Extract<SolveResult, { status: 'solved' }>;

/** A case, its model, the solver and the plan to begin with. */
export interface Search {
  readonly kase: Case;
  readonly model: ProvisionModel;
  readonly getters: number;
  readonly solve: Solve;
  readonly first: Choice;
}

/**
 * Solves the aims in order, each starting from the plan of the one before and keeping what the earlier aims reached.
 *
 * The first aim is solved to the asked gap. The later ones have weak bounds (a hive is opened or it is not), so their plans are found
 * in parts where the yard is large: a few getters at a time free, the rest as they are, then the whole for the bound.
 * Everything is limited by counts, so the same input gives the same plan. Ends early where the first aim finds nothing.
 */
export function solveAims(search: Search, ranks = search.model.aims.length): readonly Solved[] {
  const { kase, model, solve } = search;
  const p = provisionParameters;
  const solved: Solved[] = [];
  for (const aim of model.aims.slice(0, ranks)) {
    const before = solved.at(-1);
    const lp = model.lp(aim, keptOf(kase, model, solved));
    let start = model.values(before ? model.choice(before.values) : search.first);
    const isLarge = search.getters > p.partGetters.value * 2;
    if (before && isLarge) start = improved(search, { lp, aim, start });
    const result = solve(lp, {
      gapFrac: before ? LATER_GAPS * kase.rules.gapFrac : kase.rules.gapFrac,
      gapAbs: GAP_ABS[aim] * kase.rules.gapFrac,
      nodes: !before ? kase.rules.nodes : isLarge ? 1 : Math.min(kase.rules.nodes, p.laterNodes.value),
      brakeSeconds: kase.rules.brakeSeconds,
      start,
    });
    if (result.status === 'infeasible' || result.status === 'unbounded')
      throw new Error(`provision: the model of ${aim} is ${result.status}`);
    if (result.status !== 'solved') break;
    solved.push(before || aim !== 'losses' ? result : covered(search, lp, result));
  }
  return solved;
}

/** Where the bound leaves it open whether every colony can have its need, that is found out: an absolute gap must not hide it. */
function covered(search: Search, lp: LpModel, found: Solved): Solved {
  const { kase, model, solve } = search;
  const short = model.shortageLosses(found.values);
  if (short <= NO_LOSSES || found.bound > found.objective - short + NO_LOSSES) return found;
  const nodes = Math.min(kase.rules.nodes, provisionParameters.laterNodes.value);
  const result = solve(lp, { gapFrac: 0, gapAbs: 0, nodes, brakeSeconds: kase.rules.brakeSeconds, start: found.values });
  return result.status === 'solved' && result.objective <= found.objective ? result : found;
}

/** Earlier aims with the most they may be in the ranks that follow. Where every colony has its need, none may fall short for money. */
export function keptOf(kase: Case, model: ProvisionModel, solved: readonly Solved[]): readonly { aim: Aim; most: number }[] {
  return solved.map(({ objective, values }, i) => {
    const aim = model.aims[i]!;
    const losses = model.shortageLosses(values) > NO_LOSSES ? kase.rules.lossToleranceColonies : 0;
    const more = aim === 'losses' ? losses : Math.abs(objective) * provisionParameters.costToleranceFrac.value;
    return { aim, most: objective + more + ROUNDING };
  });
}

/** A plan no worse than `start`: every few getters in turn are planned anew while the others stay, givers and bank always free. */
function improved(
  search: Search,
  from: { lp: LpModel; aim: Aim; start: Readonly<Record<string, number>> },
): Readonly<Record<string, number>> {
  const { kase, model, solve, getters } = search;
  const { lp, aim } = from;
  const p = provisionParameters;
  const parts = Math.ceil(getters / p.partGetters.value);
  let { start } = from;
  for (let part = 0; part < parts; part++) {
    const free = new Set(Array.from({ length: getters }, (_, r) => r).filter((r) => r % parts === part));
    const held = start;
    const variables = lp.variables.map((v) => (model.isFree(v.name, free) ? v : { ...v, low: held[v.name] ?? 0, high: held[v.name] ?? 0 }));
    const result = solve(
      { ...lp, variables },
      {
        gapFrac: kase.rules.gapFrac,
        gapAbs: GAP_ABS[aim] * kase.rules.gapFrac,
        nodes: p.partNodes.value,
        brakeSeconds: kase.rules.brakeSeconds,
        start,
      },
    );
    if (result.status === 'solved') start = model.values(model.choice(result.values));
  }
  return start;
}
