import type { Solve } from '../packages/core/src/provision/index.ts';
import { doNothing, perfectKnowledge } from './arms/bounds.ts';
import { type Arm, outcomeOf } from './arms/gift.ts';
import { rules, targetAndCandy } from './arms/rules.ts';
import { USUAL_CERTAINTY, winterheftArms } from './arms/winterheft.ts';
import { keeperOf } from './world/keeper.ts';
import { diceOf } from './world/random.ts';

/** What one keeper's winter came to under every arm and setting: colonies starved and sugar used, in the order of `armsOf`. */
export interface KeeperRow {
  readonly id: number;
  readonly world: string;
  readonly climate: string;
  readonly colonies: number;
  /** arms x settings */
  readonly starved: readonly (readonly number[])[];
  readonly sugarKg: readonly (readonly number[])[];
}

export interface ArmInfo {
  readonly name: string;
  readonly setting: string;
  readonly settings: readonly number[];
  readonly what: 'product' | 'half' | 'rule' | 'stronger' | 'bound';
}

const armsOf = (solve: Solve): { arm: Arm; what: ArmInfo['what'] }[] => {
  const { autumn, watched } = winterheftArms(solve);
  return [
    { arm: watched, what: 'product' },
    { arm: autumn, what: 'half' },
    ...rules.map((arm) => ({ arm, what: 'rule' as const })),
    { arm: targetAndCandy, what: 'stronger' },
    { arm: doNothing, what: 'bound' },
    { arm: perfectKnowledge, what: 'bound' },
  ];
};

export function armInfos(solve: Solve): ArmInfo[] {
  return armsOf(solve).map(({ arm: { name, setting, settings }, what }) => ({ name, setting, settings, what }));
}

/** Keepers `from`, `from + step`, ... below `keepers`. */
export function playKeepers(of: { seed: number; keepers: number; from: number; step: number; solve: Solve }): KeeperRow[] {
  const arms = armsOf(of.solve);
  const rows: KeeperRow[] = [];
  for (let id = of.from; id < of.keepers; id += of.step) {
    const keeper = keeperOf(id, of.seed);
    const outcomes = arms.map(({ arm }) => arm.settings.map((setting) => outcomeOf(keeper, arm, setting)));
    rows.push({
      id,
      world: keeper.kind.name,
      climate: keeper.climate.name,
      colonies: keeper.hives.length,
      starved: outcomes.map((arm) => arm.map(({ starved }) => starved)),
      sugarKg: outcomes.map((arm) => arm.map(({ sugarKg }) => sugarKg)),
    });
  }
  return rows;
}

export interface Point {
  readonly setting: number;
  /** Per colony [kg]. */
  readonly sugarKg: number;
  readonly starvedFrac: number;
}

/** An arm's sweep over some keepers, a point per setting. */
export function sweepOf(rows: readonly KeeperRow[], arm: number, settings: readonly number[]): Point[] {
  const colonies = rows.reduce((sum, row) => sum + row.colonies, 0);
  return settings.map((setting, k) => ({
    setting,
    sugarKg: rows.reduce((sum, row) => sum + (row.sugarKg[arm]?.[k] ?? 0), 0) / colonies,
    starvedFrac: rows.reduce((sum, row) => sum + (row.starved[arm]?.[k] ?? 0), 0) / colonies,
  }));
}

/** Share starved of a sweep at an amount of sugar, on the straight lines between its settings; its end beyond them. */
export function starvedAt(sweep: readonly Point[], sugarKg: number): number {
  return along(sweep, { x: (point) => point.sugarKg, y: (point) => point.starvedFrac, at: sugarKg });
}

/** Sugar a sweep uses for a share starved; null where no setting loses so few. */
export function sugarAt(sweep: readonly Point[], starvedFrac: number): number | null {
  if (Math.min(...sweep.map((point) => point.starvedFrac)) > starvedFrac) return null;
  // the least sugar at which the line comes down to that share
  const sorted = [...sweep].sort((a, b) => a.sugarKg - b.sugarKg);
  for (let i = 0; i < sorted.length; i++) {
    const [before, here] = [sorted[i - 1], sorted[i] as Point];
    if (here.starvedFrac > starvedFrac) continue;
    if (before === undefined || before.starvedFrac === here.starvedFrac) return here.sugarKg;
    const part = (before.starvedFrac - starvedFrac) / (before.starvedFrac - here.starvedFrac);
    return before.sugarKg + part * (here.sugarKg - before.sugarKg);
  }
  return null;
}

function along(sweep: readonly Point[], of: { x: (point: Point) => number; y: (point: Point) => number; at: number }): number {
  const sorted = [...sweep].sort((a, b) => of.x(a) - of.x(b));
  const first = sorted[0] as Point;
  if (of.at <= of.x(first)) return of.y(first);
  for (let i = 1; i < sorted.length; i++) {
    const [low, high] = [sorted[i - 1] as Point, sorted[i] as Point];
    if (of.at > of.x(high)) continue;
    return of.y(low) + ((of.at - of.x(low)) / (of.x(high) - of.x(low))) * (of.y(high) - of.y(low));
  }
  return of.y(sorted.at(-1) as Point);
}

export interface Comparison {
  readonly certainty: number;
  readonly product: Point;
  /** The rule that loses least at the product's sugar, its share, and product against it. */
  readonly bestRule: string;
  readonly ruleStarvedFrac: number;
  readonly lossRatio: number | null;
  /** The rule that needs least sugar for the product's losses; null where none loses so few at any setting. */
  readonly thriftyRule: string | null;
  readonly ruleSugarKg: number | null;
  readonly sugarRatio: number | null;
}

/** Which arms are held against each other. */
export interface Sides {
  readonly product: ArmInfo['what'];
  readonly against: ArmInfo['what'];
}
const USUAL_SIDES: Sides = { product: 'product', against: 'rule' };

/** The product at each certainty against the best rule at its best setting, over rows of one world and climate or of several. */
export function compare(cells: readonly (readonly KeeperRow[])[], infos: readonly ArmInfo[], of: Sides = USUAL_SIDES): Comparison[] {
  const products = infos.findIndex(({ what }) => what === of.product);
  const rulesAt = infos.flatMap(({ what }, i) => (what === of.against ? [i] : []));
  const settings = infos[products]?.settings ?? [];
  const rows = cells.flat();
  const pooled = (arm: number) => sweepOf(rows, arm, infos[arm]?.settings ?? []);
  const share = (cell: readonly KeeperRow[]) =>
    cell.reduce((sum, row) => sum + row.colonies, 0) / rows.reduce((sum, row) => sum + row.colonies, 0);
  return settings.map((certainty, k) => {
    const product = pooled(products)[k] as Point;
    // each rule at the product's sugar of that world and climate: its setting is free in each of them
    const losses = rulesAt.map((arm) =>
      cells.reduce((sum, cell) => {
        const own = sweepOf(cell, products, settings)[k] as Point;
        return sum + share(cell) * starvedAt(sweepOf(cell, arm, infos[arm]?.settings ?? []), own.sugarKg);
      }, 0),
    );
    const sugars = rulesAt.map((arm) =>
      cells.reduce<number | null>((sum, cell) => {
        const own = sweepOf(cell, products, settings)[k] as Point;
        const kg = sugarAt(sweepOf(cell, arm, infos[arm]?.settings ?? []), own.starvedFrac);
        return sum === null || kg === null ? null : sum + share(cell) * kg;
      }, 0),
    );
    const least = losses.indexOf(Math.min(...losses));
    const known = sugars.filter((kg): kg is number => kg !== null);
    const ruleSugarKg = known.length === 0 ? null : Math.min(...known);
    const ruleStarvedFrac = losses[least] ?? 0;
    return {
      certainty,
      product,
      bestRule: infos[rulesAt[least] ?? 0]?.name ?? '',
      ruleStarvedFrac,
      lossRatio: ruleStarvedFrac === 0 ? null : product.starvedFrac / ruleStarvedFrac,
      thriftyRule: ruleSugarKg === null ? null : (infos[rulesAt[sugars.indexOf(ruleSugarKg)] ?? 0]?.name ?? null),
      ruleSugarKg,
      sugarRatio: ruleSugarKg === null || ruleSugarKg === 0 ? null : product.sugarKg / ruleSugarKg,
    };
  });
}

/** Rows by world and climate. */
export function cellsOf(rows: readonly KeeperRow[]): KeeperRow[][] {
  const cells = new Map<string, KeeperRow[]>();
  for (const row of rows) {
    const key = `${row.world}/${row.climate}`;
    cells.set(key, [...(cells.get(key) ?? []), row]);
  }
  return [...cells.values()];
}

/** 5 and 95 % of the two ratios at one certainty when the keepers are drawn anew, with replacement, within each cell. */
export function intervals(cells: readonly (readonly KeeperRow[])[], infos: readonly ArmInfo[], draws: number) {
  const dice = diceOf('bootstrap');
  const losses: number[] = [];
  const sugars: number[] = [];
  for (let draw = 0; draw < draws; draw++) {
    const drawn = cells.map((cell) => cell.map(() => cell[Math.floor(dice.uniform() * cell.length)] as KeeperRow));
    const at = compare(drawn, infos).find(({ certainty }) => certainty === USUAL_CERTAINTY);
    if (at?.lossRatio != null) losses.push(at.lossRatio);
    if (at?.sugarRatio != null) sugars.push(at.sugarRatio);
  }
  return { lossRatio: range(losses), sugarRatio: range(sugars) };
}

function range(values: number[]): { low: number; high: number } | null {
  if (values.length === 0) return null;
  const sorted = values.sort((a, b) => a - b);
  const at = (part: number) => sorted[Math.round(part * (sorted.length - 1))] as number;
  return { low: at(0.05), high: at(0.95) };
}
