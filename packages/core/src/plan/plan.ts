import type { Holding } from '../holding/index.ts';
import type { UnreadLine } from '../journal/index.ts';
import { type ProvisionAnswer, provision, type Solve } from '../provision/index.ts';
import { bad, good, type Result } from '../result/index.ts';
import { seasonOdds, siteSeason } from '../season/index.ts';
import { epochDayOf, isoDateOf } from '../units/index.ts';
import { winterYearOf } from '../weather/index.ts';
import { makeRun } from '../winter/index.ts';
import { colonyLine } from './colony-line.ts';
import { tablesDigest, textDigest } from './digest.ts';
import { type PreparedPlan, type PreparedYard, preparePlan } from './prepare.ts';
import { provisionInputOf } from './provide.ts';
import { tasksOf } from './tasks.ts';
import type { ColonyOutlook, EndedColony, Plan, PlanSetting, YardDates } from './types.ts';

/** Changes when the same inputs may give another plan. */
export const PLAN_VERSION = 1;
export const CODE_VERSION = '0.1.0';

/** So many unread lines and later records are named. */
const SHOWN = 10;

export interface PlanTools {
  /** The solver; left out: a greedy provision, marked as such. */
  readonly solve?: Solve | undefined;
  /** An earlier preparation whose curves may be taken over. */
  readonly before?: PreparedPlan | undefined;
  /** Digest of the journal the holding was folded from. */
  readonly journalDigest: string;
  /** Lines of the journal that could not be read, to be named. */
  readonly unread?: readonly UnreadLine[] | undefined;
  /** False: without the shares of doubt, which take three more runs of the model for every colony. */
  readonly shares?: boolean | undefined;
}

/**
 * The plan: what each colony has and needs and when it would run out, who gets what from where, the dates that bind.
 *
 * A pure function of its arguments: same holding, day, seed and solver, same plan. Other colonies, their order and their names
 * change no figure of a colony, only what is given to it.
 *
 * holding   folded from a journal
 * setting   today, seed, cases, and a place that overrules the yards' own
 * errors    BadInput: no living colony, a place not known, a date that is none
 */
export function plan(holding: Holding, setting: PlanSetting, tools: PlanTools): Result<Plan> {
  const prepared = preparePlan(holding, setting, tools.before);
  return prepared.ok ? planFrom(prepared.value, holding, tools) : prepared;
}

/** The same from a preparation that stands already. */
export function planFrom(prepared: PreparedPlan, holding: Holding, tools: PlanTools): Result<Plan> {
  const outlooks = linesOf(prepared, holding, { shares: tools.shares ?? true });
  const dates = datesOf(prepared);
  const lastFeeding = dates.map(({ dates: of }) => of['lastFeedingDay']?.p50 ?? null);
  const provided = provide(outlooks, { prepared, holding, tools, lastFeeding: lastFeeding[0] ?? null });
  if (!provided.ok) return provided;
  return good({
    outlooks,
    ended: endedColonies(holding, prepared.today),
    provision: provided.value,
    dates,
    tasks: tasksOf(outlooks, { provision: provided.value, lastFeeding: lastFeeding[0] ?? null, holding }),
    unread: {
      lines: holding.unread.lines,
      byWhy: holding.unread.byWhy,
      first: (tools.unread ?? []).slice(0, SHOWN).map(({ line, why }) => ({ line, why })),
    },
    clashes: holding.clashes,
    later: holding.later.length,
    laterRecords: holding.later.slice(0, SHOWN),
    made: {
      planVersion: PLAN_VERSION,
      codeVersion: CODE_VERSION,
      journalDigest: tools.journalDigest,
      tablesDigest: tablesDigest(),
      weatherDigest: textDigest(JSON.stringify([...prepared.yards.values()].map(({ climate }) => climate))),
      today: prepared.setting.today,
      seed: prepared.setting.seed,
      members: prepared.setting.members,
      certaintyFrac: holding.settings.certaintyFrac ?? 0.95,
      solver: provided.value?.solver ?? null,
      endedBy: provided.value?.ranks[0]?.endedBy ?? null,
      from: isoDateOf(prepared.fromDay),
      to: isoDateOf(prepared.toDay),
    },
  });
}

/**
 * Lines in the order of risk: least chance to hold first, then by the day by which one case in twenty has run out.
 *
 * shares   also the shares of doubt, which run the model three times more for every colony; else they are null
 */
export function linesOf(prepared: PreparedPlan, holding: Holding, { shares }: { readonly shares: boolean }): ColonyOutlook[] {
  const first = prepared.colonies[0];
  const run = first === undefined || !shares ? null : makeRun(first.prepared.season);
  const lines = prepared.colonies.map((ready) => colonyLine(ready, { plan: prepared, holding, run }));
  const risk = (line: ColonyOutlook) => line.holdFrac ?? 0;
  const early = (line: ColonyOutlook) => line.runOut?.p5 ?? '9999';
  return lines.sort((a, b) => risk(a) - risk(b) || compare(early(a), early(b)) || compare(a.label, b.label) || compare(a.colony, b.colony));
}

function compare(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}

/** The dates of this winter in every yard, from as many cases as the plan unless told otherwise. */
export function datesOf(prepared: PreparedPlan, members = prepared.setting.members): YardDates[] {
  return [...prepared.yards.values()].map((yard) => yardDates(yard, { prepared, members }));
}

function yardDates(yard: PreparedYard, of: { prepared: PreparedPlan; members: number }): YardDates {
  const { spring, climate } = yard;
  const draw = { seed: of.prepared.setting.seed, year: spring.year, members: of.members, entity: yard.yard.id };
  const site = { climate, latDeg: yard.yard.latDeg, ownLowByDayOfYear: spring.ownLowByDayOfYear };
  const { spreads } = siteSeason(site, { ...draw, beliefs: spring.beliefs, ownDays: spring.days });
  return {
    yard: yard.yard.id,
    yardName: yard.yard.name,
    climate: { name: climate.name, notes: climate.notes },
    dates: seasonOdds(spreads),
  };
}

function provide(
  outlooks: readonly ColonyOutlook[],
  of: { prepared: PreparedPlan; holding: Holding; tools: PlanTools; lastFeeding: string | null },
): Result<ProvisionAnswer | null> {
  const last = of.lastFeeding === null ? null : epochDayOf(of.lastFeeding);
  const daysToLastFeeding = last === null ? 0 : Math.max(0, last - of.prepared.today);
  const input = provisionInputOf(outlooks, { plan: of.prepared, holding: of.holding, daysToLastFeeding });
  if (input.colonies.length === 0) return good(null);
  const answer = provision(input, of.tools.solve === undefined ? {} : { solve: of.tools.solve });
  return answer.ok ? answer : bad(answer.error);
}

export function endedColonies(holding: Holding, today: number): EndedColony[] {
  const winter = winterYearOf(today);
  return [...holding.colonies.values()].flatMap((colony) => {
    if (colony.ended === null || winterYearOf(colony.ended.day) !== winter) return [];
    const lastHive = colony.stays.at(-1)?.hive;
    const label = (lastHive === undefined ? null : holding.hives.get(lastHive)?.label) ?? colony.id;
    return [
      { colony: colony.id, yard: colony.yard, label, state: 'ended' as const, how: colony.ended.how, on: isoDateOf(colony.ended.day) },
    ];
  });
}
