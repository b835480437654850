import { bad, good, type Result } from '../result/index.ts';
import type { Aim, ProvisionAnswer, RankResult } from './answer.ts';
import { assemble, scoreOf } from './assemble.ts';
import type { Choice } from './choice.ts';
import { type Facts, factsOf } from './facts.ts';
import { greedyChoice } from './greedy.ts';
import type { ProvisionInput } from './input.ts';
import { toLp } from './lp-text.ts';
import { buildModel } from './model.ts';
import { readProvisionInput } from './read-input.ts';
import { reasonsOf } from './reasons.ts';
import { recheck } from './recheck.ts';
import { keptOf, type Solved, solveAims } from './search.ts';
import type { Solve } from './solve.ts';

const UNIT: Record<Aim, string> = { losses: 'colonies', cost: 'money', openings: 'openings', sum: 'money' };

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
  const first = greedyChoice(facts);
  const solved = tools.solve ? solveAims({ kase, model, getters: facts.getters.length, solve: tools.solve, first }) : [];
  const last = solved.at(-1);
  // the plan without what the solver left switched on for nothing
  const choice = last ? model.choice(model.values(model.choice(last.values))) : first;
  return good(answerOf(facts, model.aims, { solved, choice }));
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
  if (rank > 1 && !solve) return bad({ kind: 'conflict', fields: ['rank'], why: 'rank-needs-solver' });
  const search = { kase: read.value, model, getters: facts.getters.length, first: greedyChoice(facts) };
  const solved = solve && rank > 1 ? solveAims({ ...search, solve }, rank - 1) : [];
  if (solved.length < rank - 1) return bad({ kind: 'conflict', fields: ['rank', 'rules.nodes'], why: 'earlier-rank-unsolved' });
  return good(toLp(model.lp(aim, keptOf(read.value, model, solved))));
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
    // a later aim may have mended an earlier one on the way
    const objective = Math.min(solved?.objective ?? Number.POSITIVE_INFINITY, achieved[aim]);
    const bound = solved ? Math.min(solved.bound, objective) : null;
    return {
      aim,
      unit: UNIT[aim],
      objective,
      achieved: achieved[aim],
      bound,
      gapFrac: bound === null ? null : gapOf(objective, bound),
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

/** (objective - bound) / objective; 0 where they agree to the rounding of the answer. */
function gapOf(objective: number, bound: number): number {
  return objective - bound <= 2e-6 ? 0 : (objective - bound) / Math.abs(objective);
}
