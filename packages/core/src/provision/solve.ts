/**
 * A linear model with whole-number variables, as plain data, and the shape of whatever solves it.
 * The core never loads a solver: `Solve` comes in as an argument (packages/solver gives one).
 */

/** One variable. Names follow `toLp`: letters, digits and underscores, beginning with a letter other than e. */
export interface LpVariable {
  readonly name: string;
  readonly low: number;
  readonly high: number;
  readonly whole: boolean;
}

/** A sum of factor times variable, as pairs [name, factor]. */
export type LpSum = readonly (readonly [name: string, factor: number])[];

/** low <= sum <= high; a side that is not there is null. */
export interface LpRow {
  readonly name: string;
  readonly sum: LpSum;
  readonly low: number | null;
  readonly high: number | null;
}

/** Always to be minimised. `title` is a comment on top of the file. */
export interface LpModel {
  readonly title: string;
  readonly variables: readonly LpVariable[];
  readonly rows: readonly LpRow[];
  readonly objective: LpSum;
}

/** Limits are counts, so that the same input gives the same answer; the clock is only an emergency brake. */
export interface SolveLimits {
  /** Stop when (objective - bound) / objective is no larger. */
  readonly gapFrac: number;
  /** Stop when objective - bound is no larger, in units of the objective. */
  readonly gapAbs: number;
  readonly nodes: number;
  readonly brakeSeconds: number;
  /** A plan that keeps every row, to start from. */
  readonly start?: Readonly<Record<string, number>>;
}

/** What stopped the solver: proof within the gap, the count of nodes, or the emergency brake. */
export type EndedBy = 'gap' | 'nodes' | 'clock';

export type SolveResult =
  | {
      readonly status: 'solved';
      readonly values: Readonly<Record<string, number>>;
      readonly objective: number;
      /** No plan can be better than this. */
      readonly bound: number;
      /** (objective - bound) / |objective|; 0 where the two agree. */
      readonly gapFrac: number;
      readonly endedBy: EndedBy;
      readonly nodes: number;
      /** Name and version. */
      readonly solver: string;
    }
  | { readonly status: 'infeasible' | 'unbounded' | 'nothing-found'; readonly endedBy: EndedBy | 'proof'; readonly solver: string };

export type Solve = (model: LpModel, limits: SolveLimits) => SolveResult;
