/** A plan in the model's own terms: indices into facts, counts and steps. Made by the solver's values or by the greedy rule. */
export interface Choice {
  /** Capped combs of a group into a getter, one of its own light combs out. */
  readonly into: readonly { readonly getter: number; readonly group: number; readonly out: number; readonly count: number }[];
  /** Capped combs out of a giver, a lighter one of a group into the gap. */
  readonly outOf: readonly { readonly giver: number; readonly capped: number; readonly fill: number; readonly count: number }[];
  /** Steps of syrup and candy by getter. */
  readonly syrup: ReadonlyMap<number, number>;
  readonly candy: ReadonlyMap<number, number>;
  /** Indices into the facts' pairs. */
  readonly unite: readonly number[];
  /** Colonies to be looked at first. */
  readonly looks: readonly number[];
}
