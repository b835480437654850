/** READ, READ-2 (second-hand), DERIVED, COMPUTED, MEMORY (recalled), PRACTICE (common practice, no source), JUDGEMENT (ours, reasoned). */
export type Mark = 'READ' | 'READ-2' | 'DERIVED' | 'COMPUTED' | 'MEMORY' | 'PRACTICE' | 'JUDGEMENT';

/** How a parameter is drawn: not at all, or between its 5th and 95th percentile `low` and `high`. */
export type Distribution = 'fixed' | 'normal' | 'lognormal' | 'uniform';

/** A figure that decides something, with where it came from. `low` and `high` are its 5 % and 95 % bounds. */
export interface Parameter {
  value: number;
  readonly unit: string;
  readonly low: number;
  readonly high: number;
  readonly distribution: Distribution;
  readonly source: string;
  readonly mark: Mark;
  readonly note: string;
}
