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
  type LearnAnswer,
  learn,
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
  type Solve,
  type SpringAnswer,
  spring,
  type TypedEntry,
  type WatchAnswer,
  watch,
  type YardDates,
} from '@winterheft/core';
import { WorkApi } from '../background/api.ts';
import { breath, isoOf } from './breath.ts';
import { type TopsOutlook, topsOutlook } from './tops.ts';

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

/** An outlook in the making. */
export interface SoFar {
  /** Colonies that have their curve, of how many. */
  readonly ready: number;
  readonly of: number;
  /** Their lines; null where they were not asked for. */
  readonly outlooks: Outlooks | null;
}

export type Judgement = Omit<EntryJudgement, 'curve'>;

/** Cases drawn for what is shown; the first look at a holding uses the first of the same cases, which is enough to begin with. */
const MEMBERS = 1000;
const FIRST_MEMBERS = 200;
const MITES_MEMBERS = 400;
const SPRING_MEMBERS = 300;
const SEED = 1;
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
  /** The autumn that the last watch went out from. */
  private autumn: PreparedPlan | null = null;
  private fault: BadInput | null = null;
  private dates: { readonly key: string; readonly dates: readonly YardDates[] } | null = null;
  private solver: Promise<Solve> | null = null;
  /** Colonies that have their curve while the others' are being made. */
  private ready = 0;
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

  /** How far the outlook is, with the lines of the colonies that are ready; null where none is being made. */
  soFar(withLines: boolean): SoFar | null {
    const { plan, ready } = this;
    if (plan === null || this.done !== null || ready === 0) return null;
    const of = plan.evidence.length;
    if (!withLines) return { ready, of, outlooks: null };
    const part = finishPlan({ ...plan, evidence: plan.evidence.slice(0, ready) });
    return { ready, of, outlooks: this.outlooksOf(part, linesOf(part, this.holding as Holding, { shares: false })) };
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
      this.ready = 0;
      for (const evidence of plan.evidence) {
        if (turn !== this.turn) break;
        const { key, colony } = readyColony(plan, evidence);
        curves.set(key, colony.prepared);
        this.ready++;
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
        certaintyFrac: this.certaintyFrac(),
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

  /** Whom to see this week; with the course on the scale of one colony. Curves of autumn are made once and kept. */
  async watch(courseOf: string | null): Promise<Result<WatchAnswer | null>> {
    if (this.holding === null || this.plan === null) return this.nothing();
    const current = this.journal.current();
    const before = this.autumn;
    const answer = watch(current.records(), this.setting(MEMBERS), {
      unread: current.unread(),
      ...(before === null ? {} : { before }),
      ...(courseOf === null ? {} : { courseOf }),
    });
    if (!answer.ok) return answer;
    this.autumn = answer.value.prepared;
    return good(answer.value.answer);
  }

  /** The count of spring and the keeper's own factors. */
  async spring(): Promise<Result<{ readonly spring: SpringAnswer; readonly learn: LearnAnswer } | null>> {
    if (this.holding === null) return good(null);
    const current = this.journal.current();
    const setting = this.setting(SPRING_MEMBERS);
    const counted = spring(current.records(), setting, current.unread());
    if (!counted.ok) return counted;
    await breath();
    const learnt = learn(current.records(), setting, current.unread());
    return learnt.ok ? good({ spring: counted.value, learn: learnt.value }) : learnt;
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

  /** What the shipped tops would do at the first yard. */
  async tops(): Promise<Result<TopsOutlook | null>> {
    return this.plan === null ? this.nothing() : topsOutlook(this.plan, this.certaintyFrac());
  }

  private certaintyFrac(): number {
    return this.holding?.settings.certaintyFrac ?? DEFAULT_CERTAINTY;
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
