import type { Result } from '../src/result/index.ts';
import type { Mark, Parameter } from '../src/tables/types.ts';

/**
 * One published figure against ours. Tests run every check, `npm run mutants` runs them after moving a parameter,
 * and docs/checks.md prints them. `expected` is a number (then |ours - expected| <= within) or a closed range.
 */
export interface Check {
  /** A sentence that states the rule, without the figure. */
  readonly name: string;
  readonly unit: string;
  readonly expected: number | readonly [number, number];
  readonly within: number;
  /** Why the tolerance is what it is: the last printed digit, the source's own claim, a rounding. */
  readonly why: string;
  readonly source: string;
  readonly mark: Mark | 'ARITHMETIC';
  /** True where a parameter was chosen with this row in view: then it shows consistency, not proof. */
  readonly usedForSetting?: boolean;
  ours(): number;
}

export function passes(check: Check, ours: number): boolean {
  const [low, high] = typeof check.expected === 'number' ? [check.expected, check.expected] : check.expected;
  return ours >= low - check.within && ours <= high + check.within;
}

/** A check in one call, for long tables of them. */
export function row(
  name: string,
  unit: string,
  expected: Check['expected'],
  within: number,
  why: string,
  source: string,
  mark: Check['mark'],
  ours: () => number,
  usedForSetting = false,
): Check {
  return { name, unit, expected, within, why, source, mark, ours, ...(usedForSetting ? { usedForSetting } : {}) };
}

/** For a table of parameters: a check that one of them is the figure of its source, with what is expected, how near and why. */
export function figuresOf<T extends Readonly<Record<string, Parameter>>>(parameters: T) {
  return (name: keyof T & string, expected: Check['expected'], within: number, why: string): Check => {
    const { unit, source, mark } = parameters[name]!;
    return row(`${name}: figure of the source`, unit, expected, within, why, source, mark, () => parameters[name]!.value);
  };
}

/** The answer of a command, where a check asks one that must be taken. */
export function answerOf<T>(result: Result<T>): T {
  if (!result.ok) throw new Error(`a check was refused: ${JSON.stringify(result.error)}`);
  return result.value;
}
