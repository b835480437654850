import type { LpModel, LpRow, LpSum, LpVariable } from './solve.ts';

/** Figures that come out of subtractions are cut to this many digits, so that 0.1 + 0.2 does not fill the file with nines. */
const DIGITS = 12;

/** Gathers variables and rows. An empty row is left out where it holds anyway and is a bug where it does not. */
export class ModelDraft {
  private readonly variables: LpVariable[] = [];
  private readonly rows: LpRow[] = [];

  variable(name: string, low: number, high: number, kind: { whole?: boolean }): string {
    this.variables.push({ name, low, high: clean(high), whole: kind.whole === true });
    return name;
  }

  row(name: string, sum: LpSum, low: number | null, high: number | null): void {
    if (sum.length === 0) {
      if ((low ?? 0) > 0 || (high ?? 0) < 0) throw new RangeError(`provision model: row ${name} cannot hold`);
      return;
    }
    this.rows.push({ name, sum: collected(sum), low: low === null ? null : clean(low), high: high === null ? null : clean(high) });
  }

  model(title: string, objective: LpSum, kept: readonly { name: string; sum: LpSum; most: number }[]): LpModel {
    const extra = kept
      .filter((k) => k.sum.length > 0)
      .map((k) => ({ name: k.name, sum: collected(k.sum), low: null, high: clean(k.most) }));
    return { title, variables: this.variables, rows: [...this.rows, ...extra], objective: collected(objective) };
  }
}

/** One term per variable, in the order of first mention; terms that cancel are dropped unless nothing would be left. */
function collected(sum: LpSum): LpSum {
  const factors = new Map<string, number>();
  for (const [name, factor] of sum) factors.set(name, (factors.get(name) ?? 0) + factor);
  const terms = [...factors].map(([name, factor]): [string, number] => [name, clean(factor)]);
  const left = terms.filter(([, factor]) => factor !== 0);
  return left.length > 0 ? left : terms.slice(0, 1);
}

function clean(value: number): number {
  return Number(value.toPrecision(DIGITS));
}
