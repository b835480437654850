import {
  type BadInput,
  bad,
  type ColonyDetail,
  type ColonyOutlook,
  colonyDetail,
  datesOf,
  type EndedColony,
  type EntryJudgement,
  endedColonies,
  finishPlan,
  good,
  type Holding,
  judgeEntry,
  linesOf,
  type MitesAnswer,
  mites,
  type OpenPlan,
  openPlan,
  type Plan,
  type PreparedPlan,
  planFrom,
  type Result,
  readyColony,
  SHIPPED_TOPS,
  type ShippedTop,
  type Solve,
  type TopForecast,
  type TypedEntry,
  topForecast,
  type YardDates,
} from '@winterheft/core';
import { WorkApi } from '../background/api.ts';

/** Every colony's line in the order of risk, and what they rest on. */
export interface Outlooks {
  readonly lines: readonly ColonyOutlook[];
  readonly ended: readonly EndedColony[];
  readonly dates: readonly YardDates[];
  readonly made: {
    readonly today: string;
    readonly seed: number;
    readonly members: number;
    readonly certaintyFrac: number;
    readonly from: string;
    readonly to: string;
    readonly records: number;
  };
}

/** The shipped tops over the winter of one yard, for a colony of its middle size. */
export interface TopsOutlook {
  readonly tops: readonly { readonly key: ShippedTop; readonly forecast: TopForecast }[];
  readonly yard: string;
  readonly bees: number;
  readonly from: string;
  readonly to: string;
  readonly winters: number;
}

export type Judgement = Omit<EntryJudgement, 'curve'>;

/** Cases drawn for what is shown; the first look at a holding uses the first of the same cases, which is enough to begin with. */
const MEMBERS = 1000;
const FIRST_MEMBERS = 200;
const MITES_MEMBERS = 400;
const SEED = 1;
/** Winters run through each top, and cases its need is read from: few, for every winter is run day by day through every layer. */
const TOP_WINTERS = 20;
const TOP_MEMBERS = 200;
const DEFAULT_CERTAINTY = 0.95;

/**
 * Holds the journal a second time, in a worker of its own, and computes with it: a solver that takes its time keeps nobody from typing.
 * What is asked while curves are being made is answered in between, for they are made one colony at a time.
 */
export class Planner {
  private readonly journal = new WorkApi();
  private holding: Holding | null = null;
  private records = 0;
  private today = '';
  private plan: OpenPlan | null = null;
  private done: PreparedPlan | null = null;
  private fault: BadInput | null = null;
  private dates: { readonly key: string; readonly dates: readonly YardDates[] } | null = null;
  private solver: Promise<Solve> | null = null;
  /** Grows with every change of the journal or the day: work for an older one stops. */
  private turn = 0;

  async open(databaseName: string | null, today: string): Promise<void> {
    const snapshot = await this.journal.open(databaseName, 0);
    this.take(snapshot, today);
  }

  /** Takes in what has been added to the journal since. */
  async catchUp(unsaved: readonly string[], today: string): Promise<void> {
    const before = this.holding;
    const snapshot = await this.journal.catchUp(unsaved);
    if (snapshot.holding !== before || today !== this.today) this.take(snapshot, today);
  }

  private take({ holding, records }: { readonly holding: Holding; readonly records: number }, today: string): void {
    this.turn++;
    this.holding = holding;
    this.records = records;
    this.today = today;
    const opened = openPlan(holding, this.setting(this.plan?.setting.members ?? FIRST_MEMBERS), this.plan ?? undefined);
    this.fault = opened.ok ? null : opened.error;
    this.plan = opened.ok ? opened.value : null;
    this.done = null;
  }

  private setting(members: number) {
    return { today: this.today, seed: SEED, members };
  }

  /**
   * The lines of all colonies: at the first call from fewer cases, then from all.
   *
   * settled   false where the same will be asked again for more cases
   */
  async outlooks(): Promise<Result<{ readonly outlooks: Outlooks; readonly settled: boolean } | null>> {
    const done = await this.finished();
    if (done === null) return this.nothing();
    const lines = linesOf(done, this.holding as Holding, { shares: false });
    return good({ outlooks: this.outlooksOf(done, lines), settled: done.setting.members === MEMBERS });
  }

  private nothing(): Result<null> {
    return this.fault === null ? good(null) : bad(this.fault);
  }

  /** From now on with all cases; the next `outlooks` takes its time. */
  settle(): void {
    if (this.holding === null || this.plan === null || this.plan.setting.members === MEMBERS) return;
    const opened = openPlan(this.holding, this.setting(MEMBERS));
    if (!opened.ok) return;
    this.turn++;
    this.plan = opened.value;
    this.done = null;
  }

  /** The plan with the curve of every colony; begins again where something newer comes in between. Null: there is none to be made. */
  private async finished(): Promise<PreparedPlan | null> {
    for (;;) {
      const { plan, turn } = this;
      if (plan === null || this.done !== null) return this.done;
      const curves = plan.curves as Map<string, PreparedPlan['colonies'][number]['prepared']>;
      for (const evidence of plan.evidence) {
        if (turn !== this.turn) break;
        const { key, colony } = readyColony(plan, evidence);
        curves.set(key, colony.prepared);
        await breath();
      }
      if (turn === this.turn) this.done = finishPlan(plan);
    }
  }

  /** The same whether few or all cases are drawn for the colonies: a date that moved by a day between two answers would be believed less. */
  private knownDates(plan: PreparedPlan): readonly YardDates[] {
    const key = JSON.stringify([this.today, [...plan.yards.values()].map(({ yard, climate }) => [yard, climate.name])]);
    if (this.dates?.key !== key) this.dates = { key, dates: datesOf(plan, MEMBERS) };
    return this.dates.dates;
  }

  private outlooksOf(plan: PreparedPlan, lines: readonly ColonyOutlook[]): Outlooks {
    const holding = this.holding as Holding;
    return {
      lines,
      ended: endedColonies(holding, plan.today),
      dates: this.knownDates(plan),
      made: {
        ...plan.setting,
        certaintyFrac: holding.settings.certaintyFrac ?? DEFAULT_CERTAINTY,
        from: isoOf(plan.fromDay),
        to: isoOf(plan.toDay),
        records: this.records,
      },
    };
  }

  /** One hive with what is being typed. */
  async judge(hive: string, entry: TypedEntry): Promise<Result<Judgement>> {
    if (this.holding === null || this.plan === null) return bad(this.fault ?? { kind: 'missing', field: 'journal (a living colony)' });
    const judged = judgeEntry(this.plan, { holding: this.holding, hive, entry });
    if (!judged.ok) return judged;
    const { curve, ...judgement } = judged.value;
    (this.plan.curves as Map<string, unknown>).set(...curve);
    return good(judgement);
  }

  /** Mites of every yard and colony. */
  async mites(): Promise<Result<MitesAnswer | null>> {
    return this.holding === null ? good(null) : mites(this.holding, this.setting(MITES_MEMBERS));
  }

  async detail(colony: string): Promise<Result<ColonyDetail | null>> {
    const done = await this.finished();
    return done === null ? this.nothing() : good(colonyDetail(done, { holding: this.holding as Holding, colony }));
  }

  /** The whole plan with its provision, from all cases. `wasmUrl` null: the browser refuses the solver, the plan is greedy and says so. */
  async solve(wasmUrl: string | null): Promise<Result<Plan | null>> {
    this.settle();
    const solve = wasmUrl === null ? undefined : await this.loadedSolver(wasmUrl);
    const done = await this.finished();
    if (done === null) return this.nothing();
    const current = this.journal.current();
    return planFrom(done, this.holding as Holding, { solve, journalDigest: current.digest(), unread: current.unread(), shares: false });
  }

  /** What the shipped tops would do at the first yard, one after another so that other questions are answered in between. */
  async tops(): Promise<Result<TopsOutlook | null>> {
    const { plan } = this;
    const [first] = plan?.yards.values() ?? [];
    if (plan === null || first === undefined) return this.nothing();
    const here = plan.evidence.filter(({ hive }) => hive.yard === first.yard.id);
    const counts = (here.length === 0 ? plan.evidence : here).map(({ bees }) => bees).sort((a, b) => a - b);
    const bees = counts[Math.floor(counts.length / 2)];
    if (bees === undefined) return this.nothing();
    const span = { from: isoOf(plan.fromDay), to: isoOf(plan.toDay) };
    const tops: { key: ShippedTop; forecast: TopForecast }[] = [];
    for (const key of SHIPPED_TOPS) {
      const answer = topForecast({
        ...span,
        bees,
        monthlyMeanC: first.climate.monthlyMeanC,
        members: TOP_MEMBERS,
        topMembers: TOP_WINTERS,
        seed: SEED,
        certaintyFrac: this.holding?.settings.certaintyFrac ?? DEFAULT_CERTAINTY,
        tops: [{ name: key, shipped: key }],
      });
      if (!answer.ok) return answer;
      tops.push({ key, forecast: answer.value.tops[0] as TopForecast });
      await breath();
    }
    return good({ tops, yard: first.yard.name, bees, ...span, winters: TOP_WINTERS });
  }

  private async loadedSolver(wasmUrl: string): Promise<Solve | undefined> {
    this.solver ??= import('@winterheft/solver').then(({ loadHighs }) => loadHighs({ locateFile: () => wasmUrl }));
    // a browser that refuses the module leaves the greedy plan, marked as such
    return this.solver.catch(() => {
      this.solver = null;
      return undefined;
    });
  }
}

function isoOf(day: number): string {
  return new Date(day * 86_400_000).toISOString().slice(0, 10);
}

/** Lets what has been asked meanwhile be answered. */
function breath(): Promise<void> {
  return new Promise((resolve) => setTimeout(resolve, 0));
}
