import type { Holding } from '../holding/index.ts';
import { planParameters } from '../tables/parameters-plan.gen.ts';
import { provisionParameters } from '../tables/parameters-provision.gen.ts';
import { isoDateOf } from '../units/index.ts';
import { type ColonyRun, judgeColony, sharesOf } from '../winter/index.ts';
import { doubtOf, type Evidence } from './evidence.ts';
import { targetsOf } from './gross.ts';
import { miteNoteOf } from './mite-note.ts';
import { type OpenPlan, type ReadyColony, ruleStoresOf } from './prepare.ts';
import type { ColonyOutlook, State, StateNote } from './types.ts';

/** What a line needs of a plan: the same before and after its curves are made. */
type PlanBase = Omit<OpenPlan, 'evidence'>;

/** What a colony has: stores at the weighing, what came and went since, less what it has eaten since then. */
function holdsKg(evidence: Evidence, eatenSinceKg: number): number | null {
  return evidence.stores === null ? null : Math.max(0, evidence.stores.storesKg + evidence.sinceKg - eatenSinceKg);
}

/**
 * The line of one colony: fast enough for every digit of a weighing, for the curve is there already.
 *
 * `run` is the room for the shares of doubt, which run the model again; without it they are null.
 */
export function colonyLine(ready: ReadyColony, of: { plan: PlanBase; holding: Holding; run: ColonyRun | null }): ColonyOutlook {
  const { evidence, prepared } = ready;
  const { plan, holding } = of;
  const certaintyFrac = holding.settings.certaintyFrac ?? 0.95;
  const eaten = eatenSince(ready, plan);
  const hasKg = holdsKg(evidence, eaten);
  const doubt = doubtOf(evidence);
  const judged = judgeColony(prepared, { kg: hasKg, doubt }, certaintyFrac);
  const aboveNeedKg = hasKg === null ? null : hasKg - judged.needKg;
  const low = isLow(evidence, judged.contactKg);
  const state = stateOf(evidence, { aboveNeedKg, winterableAlone: judged.winterableAlone });
  const grossKg = grossNow(evidence, eaten);
  const targets =
    grossKg === null || hasKg === null
      ? null
      : targetsOf(Math.max(1, grossKg + judged.needKg - hasKg), { gross: evidence.gross, ways: plan.ways });
  const rule = holding.settings.ownRule;
  const ruleKg = rule?.grossKg === undefined ? null : ruleStoresOf(rule.grossKg, evidence);
  const hasSdKg = hasKg === null ? null : Math.hypot(evidence.stores!.sdKg, evidence.sinceSdKg);
  return {
    ...prepared.usage,
    ...judged,
    chancesIn20: judged.holdFrac === null ? null : Math.round(20 * (1 - judged.holdFrac)),
    colony: evidence.colony.id,
    hive: evidence.hive.id,
    yard: evidence.hive.yard,
    label: evidence.hive.label ?? evidence.hive.id,
    state,
    low: low && (state === 'enough' || state === 'spare'),
    hasKg,
    hasSdKg,
    aboveNeedKg,
    bees: evidence.bees,
    weighedOn: evidence.weighedDay === null ? null : isoDateOf(evidence.weighedDay),
    lookedOn: evidence.colony.cleanLook === null ? null : isoDateOf(evidence.colony.cleanLook.day),
    targetFrontKg: targets?.targetFrontKg ?? null,
    targetRearKg: targets?.targetRearKg ?? null,
    targetFrontSdKg: targets?.targetFrontSdKg ?? null,
    targetRearSdKg: targets?.targetRearSdKg ?? null,
    stores: evidence.stores,
    doubtShares: of.run === null ? null : sharesOf(prepared, doubt, of.run),
    notes: notesOf(evidence, {
      plan,
      holding,
      low,
      contactKg: judged.contactKg,
      aboveNeedKg,
      lightKg: judged.lightForWinter === true ? hasKg : null,
    }),
    ownRule: ruleKg === null ? null : { storesKg: ruleKg, verdict: hasKg === null ? 'unknown' : hasKg >= ruleKg ? 'enough' : 'short' },
    members: plan.setting.members,
    seed: plan.setting.seed,
  };
}

/** Honey eaten between the weighing and today [kg]: days times the first day's median use, for the curve begins today. */
function eatenSince({ evidence, prepared }: ReadyColony, plan: PlanBase): number {
  const day = evidence.weighedDay ?? evidence.look?.day ?? plan.today;
  return Math.max(0, plan.today - day) * (prepared.usage.dailyUseKg[0] ?? 0);
}

/** Gross weight today, as far as it can be told: read, or built up from parts, bees and counted stores. */
function grossNow(evidence: Evidence, eatenKg: number): number | null {
  if (evidence.gross !== null) return evidence.gross.kg + evidence.sinceKg - eatenKg;
  const answer = evidence.stores;
  return answer === null ? null : answer.tare.massKg + answer.bees.massKg + answer.storesKg;
}

/** True where the honey counted in the top box is less than the longest spell of cold wants. */
function isLow(evidence: Evidence, contactKg: number): boolean {
  const contact = evidence.stores?.contact;
  return contact !== null && contact !== undefined && contact.kg < contactKg;
}

function stateOf(evidence: Evidence, of: { aboveNeedKg: number | null; winterableAlone: boolean }): State {
  if (evidence.colony.flag !== null) return 'set aside';
  if (of.aboveNeedKg === null) return 'unknown';
  if (!of.winterableAlone) return 'too small alone';
  if (of.aboveNeedKg < -provisionParameters.needToleranceKg.value) return 'short';
  return of.aboveNeedKg >= planParameters.spareFromKg.value && !evidence.stores!.weightOnly ? 'spare' : 'enough';
}

function notesOf(
  evidence: Evidence,
  of: { plan: PlanBase; holding: Holding; low: boolean; contactKg: number; aboveNeedKg: number | null; lightKg: number | null },
): StateNote[] {
  const notes: StateNote[] = [];
  const { stores, colony, gross, weighedDay } = evidence;
  const lookDays = of.holding.settings.lookDays ?? 30;
  const toleranceKg = provisionParameters.needToleranceKg.value;
  if (colony.flag !== null) notes.push({ code: 'signs-of-disease' });
  const mites = miteNoteOf(colony, { holding: of.holding, today: of.plan.today });
  if (mites?.code === 'mites-above-threshold') notes.push(mites);
  if (of.aboveNeedKg !== null && of.aboveNeedKg < 0 && of.aboveNeedKg >= -toleranceKg)
    notes.push({ code: 'short-within-tolerance', shortKg: -of.aboveNeedKg, toleranceKg });
  for (const fault of evidence.refused) notes.push({ code: 'record-refused', fault });
  if (gross === null) notes.push({ code: 'not-weighed' });
  else if (gross.basis === 'word') notes.push({ code: 'by-word', word: evidence.hive.weighings.at(-1)?.word ?? '' });
  if (weighedDay !== null && of.plan.today - weighedDay > planParameters.weighingOldDays.value)
    notes.push({ code: 'weighed-long-ago', days: of.plan.today - weighedDay });
  const clean = colony.cleanLook;
  if (clean === null || of.plan.today - clean.day > lookDays)
    notes.push({ code: 'brood-not-looked-at', lastLook: clean === null ? null : isoDateOf(clean.day) });
  if (stores?.provisional) notes.push({ code: 'provisional', weighAgainOn: stores.provisional.weighAgainOn });
  if (stores?.weightOnly && of.aboveNeedKg !== null && of.aboveNeedKg >= planParameters.spareFromKg.value)
    notes.push({ code: 'spare-on-weight-alone' });
  if (of.low) notes.push({ code: 'low-in-top-box', holdsKg: stores!.contact!.kg, wantsKg: of.contactKg });
  const { beeMassKg, leastWithoutWoodKg: leastKg } = of.plan.values;
  if (of.lightKg !== null) notes.push({ code: 'light-for-winter', massKg: of.lightKg + evidence.bees * beeMassKg, leastKg });
  if (stores?.notes.includes('bees-assumed') ?? true) notes.push({ code: 'bees-assumed', bees: evidence.bees });
  if (evidence.buildAssumed) notes.push({ code: 'build-assumed' });
  if (mites?.code === 'mites-unknown') notes.push(mites);
  return notes;
}
