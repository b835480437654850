import { type EndedBy, type LpModel, type Solve, type SolveLimits, type SolveResult, toLp } from '@winterheft/core';
import load, { type Highs, type Model } from 'highs';

/** How the solver's module finds its binary; needed in a browser, not in Node. */
export interface LoadOptions {
  readonly locateFile?: (file: string) => string;
}

/** Share of the work spent on looking for plans: four times the solver's own setting halves the time to a good plan on scarce yards. */
const HEURISTIC_EFFORT = 0.2;
/** Of the objective, where a rounding of the last digits would otherwise count as a gap. */
const SAME = 1e-9;

/**
 * Loads HiGHS (WebAssembly, one thread) and gives a synchronous `Solve`.
 *
 * The model goes in as LP text, the very text that `--lp` prints. Limits are counts (gap, nodes) with a fixed random seed,
 * so that the same model gives the same answer; the clock is the emergency brake and named when it ended the run.
 *
 * options     `locateFile` gives the address of highs.wasm where it does not lie beside the script
 * returns     Solve; every call has a solver of its own, freed before it returns
 * throws      Error where the text is refused or the solver breaks
 */
export async function loadHighs(options: LoadOptions = {}): Promise<Solve> {
  const highs = await load(options);
  return (model, limits) => {
    const run = highs.createModel({ format: 'lp', data: toLp(model) });
    try {
      return solved(highs, run, { model, limits });
    } finally {
      run.dispose();
    }
  };
}

function solved(highs: Highs, run: Model, asked: { model: LpModel; limits: SolveLimits }): SolveResult {
  const { model, limits } = asked;
  const { modelStatus, solutionStatus } = highs.constants;
  const solver = `HiGHS ${highs.version.string}`;
  run.options.set({
    output_flag: false,
    random_seed: 0,
    mip_heuristic_effort: HEURISTIC_EFFORT,
    mip_rel_gap: limits.gapFrac,
    mip_abs_gap: limits.gapAbs,
    mip_max_nodes: limits.nodes,
    time_limit: limits.brakeSeconds,
  });
  // the reader numbers columns by first mention, not by our order
  const names = Array.from({ length: run.getLp().numCols }, (_, i) => run.getColName(i));
  const { start } = limits;
  if (start) run.setSolution({ colValue: Float64Array.from(names, (name) => start[name] ?? 0) });
  run.run();

  const status = run.getModelStatus();
  const endedBy: EndedBy = status === modelStatus.timeLimit ? 'clock' : status === modelStatus.solutionLimit ? 'nodes' : 'gap';
  if (status === modelStatus.infeasible) return { status: 'infeasible', endedBy: 'proof', solver };
  if (status === modelStatus.unbounded || status === modelStatus.unboundedOrInfeasible)
    return { status: 'unbounded', endedBy: 'proof', solver };
  if (run.info.get('primal_solution_status') !== solutionStatus.feasible) return { status: 'nothing-found', endedBy, solver };
  const { colValue } = run.getSolution();
  const objective = run.getObjectiveValue();
  const hasWhole = model.variables.some((v) => v.whole);
  // without whole numbers the optimum is its own bound and the solver reports none
  const bound = hasWhole ? Math.min(Number(run.info.get('mip_dual_bound')), objective) : objective;
  const gap = objective - bound;
  return {
    status: 'solved',
    values: Object.fromEntries(names.map((name, i) => [name, colValue[i] ?? 0])),
    objective,
    bound,
    gapFrac: gap <= SAME * Math.max(1, Math.abs(objective)) ? 0 : gap / Math.abs(objective),
    endedBy,
    nodes: hasWhole ? Number(run.info.get('mip_node_count')) : 0,
    solver,
  };
}
