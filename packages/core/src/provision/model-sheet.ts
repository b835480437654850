import { provisionParameters } from '../tables/parameters-provision.gen.ts';
import type { Facts } from './facts.ts';
import { ModelDraft } from './model-draft.ts';

export type Term = [name: string, factor: number];

/** A swap at a getter as a variable: comb of a group in, one of its own light combs out. */
export interface IntoVariable {
  readonly name: string;
  readonly getter: number;
  readonly group: number;
  readonly out: number;
}
/** A swap at a giver as a variable: one of its capped combs out, a light comb of a group into the gap. */
export interface OutOfVariable {
  readonly name: string;
  readonly giver: number;
  readonly capped: number;
  readonly fill: number;
}

/** The model while it is written: rows and variables, the three aims, and what the parts of the yard share. */
export class ModelSheet {
  readonly draft = new ModelDraft();
  readonly losses: Term[] = [];
  readonly cost: Term[] = [];
  readonly openings: Term[] = [];
  /** Uses of combs by group: as capped combs (givers negative), as fillers of gaps (getters' light combs negative). */
  readonly cappedUse: Term[][];
  readonly lightUse: Term[][];
  readonly feeders: Term[] = [];
  readonly sugar: Term[] = [];
  readonly into: IntoVariable[] = [];
  readonly outOf: OutOfVariable[] = [];
  /** Names by colony; null where nothing can be done there or nothing has to be looked at. */
  readonly open: readonly (string | null)[];
  readonly look: readonly (string | null)[];
  /** Names by pair. */
  readonly unite: readonly string[];
  readonly facts: Facts;
  readonly perMinute: number;

  constructor(facts: Facts) {
    const { colonies, rules, prices } = facts.case;
    const p = provisionParameters;
    this.facts = facts;
    this.perMinute = prices.workPerHour / 60;
    this.cappedUse = facts.groups.map(() => []);
    this.lightUse = facts.groups.map(() => []);
    const acting = new Set([...facts.getters, ...facts.givers].map((x) => x.colony));
    for (const pair of facts.pairs) acting.add(pair.from).add(pair.into);
    this.open = colonies.map((c, i) => {
      if (!acting.has(i)) return null;
      const name = this.choice(`o${i}`);
      this.cost.push([name, this.perMinute * p.openMinutes.value]);
      this.openings.push([name, c.openingWeight]);
      return name;
    });
    this.look = colonies.map((c, i) => {
      if (c.looked || !acting.has(i) || !rules.allowLookSteps || c.flag !== null) return null;
      const name = this.choice(`l${i}`);
      this.cost.push([name, this.perMinute * p.lookMinutes.value]);
      this.openings.push([name, c.openingWeight]);
      return name;
    });
    this.unite = facts.pairs.map((pair, k) => {
      const name = this.choice(`u${k}`);
      this.cost.push([name, this.perMinute * p.uniteMinutes.value]);
      for (const side of [pair.from, pair.into]) {
        this.draft.row(
          `uo${k}_${side}`,
          [
            [name, 1],
            [this.open[side]!, -1],
          ],
          null,
          0,
        );
        const look = this.look[side];
        if (look)
          this.draft.row(
            `ul${k}_${side}`,
            [
              [name, 1],
              [look, -1],
            ],
            null,
            0,
          );
      }
      return name;
    });
    const one = this.draft.variable('one', 1, 1, {});
    colonies.forEach((c, i) => {
      const gone = this.gone(i);
      this.draft.row(`gone${i}`, gone, null, 1);
      this.draft.row(
        `taken${i}`,
        facts.pairs.flatMap((pair, k): Term[] => (pair.into === i ? [[this.unite[k]!, 1]] : [])),
        null,
        1,
      );
      if (!c.small) return;
      this.losses.push([one, p.tooSmallLossFrac.value]);
      for (const [name] of gone) this.losses.push([name, -p.tooSmallLossFrac.value]);
    });
  }

  /** Done or not. */
  choice(name: string): string {
    return this.draft.variable(name, 0, 1, { whole: true });
  }

  /** How many. */
  count(name: string, high: number): string {
    return this.draft.variable(name, 0, high, { whole: true });
  }

  /** One where the colony is united into another. */
  gone(colony: number): Term[] {
    return this.facts.pairs.flatMap((pair, k): Term[] => (pair.from === colony ? [[this.unite[k]!, 1]] : []));
  }

  /** What a colony lacks more when it takes in another: the extra times the choice. */
  taken(colony: number): Term[] {
    return this.facts.pairs.flatMap((pair, k): Term[] => (pair.into === colony ? [[this.unite[k]!, pair.extraKg]] : []));
  }

  /** Swaps at a hive open it, follow a look where one is needed, and are none where the colony is united away. */
  swaps(hive: { colony: number; needsLook: boolean; tag: string; most: number }, swaps: readonly Term[]): void {
    const { colony, tag, most } = hive;
    this.draft.row(`${tag}o`, [...swaps, [this.open[colony]!, -most]], null, 0);
    if (hive.needsLook) this.draft.row(`${tag}l`, [...swaps, [this.look[colony]!, -most]], null, 0);
    const gone = this.gone(colony);
    if (gone.length > 0) this.draft.row(`${tag}u`, [...swaps, ...gone.map(([name]): Term => [name, most])], null, most);
  }
}
