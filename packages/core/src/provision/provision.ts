import { bad, good, type Result } from '../result/index.ts';
import { provisionParameters } from '../tables/parameters-provision.gen.ts';
import type { Aim, ProvisionAnswer, RankResult } from './answer.ts';
import { assemble, scoreOf } from './assemble.ts';
import type { Case } from './case.ts';
import type { Choice } from './choice.ts';
import { type Facts, factsOf } from './facts.ts';
import { greedyChoice } from './greedy.ts';
import type { ProvisionInput } from './input.ts';
import { toLp } from './lp-text.ts';
import { buildModel, type ProvisionModel } from './model.ts';
import { readProvisionInput } from './read-input.ts';
import { reasonsOf } from './reasons.ts';
import { recheck } from './recheck.ts';
import type { Solve, SolveResult } from './solve.ts';

const UNIT: Record<Aim, string> = { losses: 'colonies', cost: 'money', openings: 'openings', sum: 'money' };
/** Gap that never matters, in the unit of the aim: a thousandth of a colony, a hundredth of money. Openings are counted out. */
const GAP_ABS: Record<Aim, number> = { losses: 0.005, cost: 0.01, openings: 0, sum: 0.01 };
/** Added to an earlier aim's value before it is kept, so that its own plan still keeps it after rounding. */
const ROUNDING = 1e-6;

type Solved = Extract<SolveResult, { status: 'solved' }>;

/**
 * Who gives what to whom: swaps of frames, looks, syrup, candy and uniting.
 *
 * With a solver the aims are solved one after the other, each keeping what the earlier ones reached (within the tolerances of the
 * parameter table); the plan is the best found and `gapFrac` says how far from proof it is. Without one, or where it finds nothing
 * within its limits, a greedy plan is made and marked so.
 *
 * input       colonies with what they hold and need [kg], frame bank, sugar, feeders, days, prices, rules
 * returns     the plan, or the first field that cannot be used
 * throws      Error where our own plan breaks a rule (a bug; never returned)
 * source      docs/spec-provision.md
 * checked     provision-brute.test.ts: against a search that enumerates moves; provision-cbc.test.ts: against a second solver
 */
export function provision(input: ProvisionInput, tools: { readonly solve?: Solve } = {}): Result<ProvisionAnswer> {
  const read = readProvisionInput(input);
  if (!read.ok) return read;
  const kase = read.value;
  const facts = factsOf(kase);
  const model = buildModel(facts);
  const solved = tools.solve ? solveRanks(kase, model, tools.solve, greedyChoice(facts)) : [];
  const last = solved.at(-1);
  return good(answerOf(facts, model.aims, { solved, choice: last ? model.choice(last.values) : greedyChoice(facts) }));
}

/**
 * The model of one rank as LP text, with the earlier ranks as rows.
 *
 * rank        1, 2 or 3 (1 alone where the aims are one sum)
 * solve       needed above rank 1, whose best values become rows
 */
export function provisionLp(input: ProvisionInput, rank: number, solve?: Solve): Result<string> {
  const read = readProvisionInput(input);
  if (!read.ok) return read;
  const facts = factsOf(read.value);
  const model = buildModel(facts);
  const aim = model.aims[rank - 1];
  if (aim === undefined) return bad({ kind: 'out-of-range', field: 'rank', value: rank, unit: 'rank', low: 1, high: model.aims.length });
  if (rank > 1 && !solve)
    return bad({ kind: 'conflict', fields: ['rank'], why: 'ranks above the first need a solver for the ones before' });
  const solved = rank > 1 ? solveRanks(read.value, model, solve!, greedyChoice(facts), rank - 1) : [];
  if (solved.length < rank - 1)
    return bad({ kind: 'conflict', fields: ['rank', 'rules.nodes'], why: 'an earlier rank found no plan within its limits' });
  return good(toLp(model.lp(aim, keptOf(read.value, model.aims, solved))));
}

/** Solves the aims in order, each starting from the plan of the one before. Ends early where the first finds nothing. */
function solveRanks(kase: Case, model: ProvisionModel, solve: Solve, first: Choice, ranks = model.aims.length): readonly Solved[] {
  const solved: Solved[] = [];
  for (const aim of model.aims.slice(0, ranks)) {
    const before = solved.at(-1);
    const result = solve(model.lp(aim, keptOf(kase, model.aims, solved)), {
      gapFrac: kase.rules.gapFrac,
      gapAbs: GAP_ABS[aim],
      nodes: kase.rules.nodes,
      brakeSeconds: kase.rules.brakeSeconds,
      start: model.values(before ? model.choice(before.values) : first),
    });
    if (result.status === 'infeasible' || result.status === 'unbounded')
      throw new Error(`provision: the model of ${aim} is ${result.status}`);
    if (result.status !== 'solved') break;
    solved.push(result);
  }
  return solved;
}

function keptOf(kase: Case, aims: readonly Aim[], solved: readonly Solved[]): readonly { aim: Aim; most: number }[] {
  return solved.map(({ objective }, i) => {
    const aim = aims[i]!;
    const more = aim === 'losses' ? kase.rules.lossToleranceColonies : Math.abs(objective) * provisionParameters.costToleranceFrac.value;
    return { aim, most: objective + more + ROUNDING };
  });
}

function answerOf(
  facts: Facts,
  aims: readonly Aim[],
  plan: { readonly solved: readonly Solved[]; readonly choice: Choice },
): ProvisionAnswer {
  const kase = facts.case;
  const deeds = assemble(facts, plan.choice);
  const score = scoreOf(kase, deeds);
  const { expectedLosses, cost, openings } = score.totals;
  const achieved: Record<Aim, number> = {
    losses: expectedLosses,
    cost,
    openings,
    sum: (kase.rules.pricePerColony ?? 0) * expectedLosses + cost + kase.prices.opening * openings,
  };
  const ranks = aims.map((aim, i): RankResult => {
    const solved = plan.solved[i];
    return {
      aim,
      unit: UNIT[aim],
      objective: solved?.objective ?? achieved[aim],
      achieved: achieved[aim],
      bound: solved?.bound ?? null,
      gapFrac: solved?.gapFrac ?? null,
      endedBy: solved?.endedBy ?? null,
      nodes: solved?.nodes ?? 0,
    };
  });
  const answer = {
    method: plan.solved.length > 0 ? ('solved' as const) : ('greedy' as const),
    ...deeds,
    uncovered: score.uncovered,
    objective: ranks.map((r) => r.objective),
    bound: ranks[0]!.bound,
    gapFrac: ranks[0]!.gapFrac,
    ranks,
    order: deeds.steps.map((s) => s.id),
    totals: score.totals,
    solver: plan.solved[0]?.solver ?? null,
  };
  const faults = recheck(kase, answer);
  if (faults.length > 0) throw new Error(`provision: the plan breaks its own rules: ${faults.join('; ')}`);
  return { ...answer, reasons: reasonsOf(facts, deeds, score, ranks) };
}
