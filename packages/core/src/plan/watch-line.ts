import type { Colony, Hive, Holding, Weighing } from '../holding/index.ts';
import { matterParameters, storesPerSugarKg } from '../matter/index.ts';
import { frameNamed } from '../stores/index.ts';
import { storesParameters } from '../tables/parameters-stores.gen.ts';
import { isoDateOf } from '../units/index.ts';
import { courseOf, type Observation, updateColony, type WinterUpdate, watchParameters } from '../watch/index.ts';
import { colonyLine } from './colony-line.ts';
import { doubtOf, takenSugarKg } from './evidence.ts';
import { type Gross, grossOf } from './gross.ts';
import type { PreparedPlan, ReadyColony } from './prepare.ts';
import type { RefusedWeighing, Rescue, WatchAct, WatchLine, WatchReason } from './watch-types.ts';

interface Of {
  /** Made on the day of the autumn round. */
  readonly plan: PreparedPlan;
  readonly autumn: Holding;
  readonly holding: Holding;
  /** As it is now. */
  readonly colony: Colony;
  readonly today: number;
  readonly certaintyFrac: number;
  readonly withCourse: boolean;
  /** False where no hive was weighed in autumn. */
  readonly weighed: boolean;
}

/** One colony of the watch: its forecast, why it is on the list, what to do. */
export function watchLine(ready: ReadyColony, of: Of): WatchLine {
  const { colony, holding, today } = of;
  const hive = holding.hives.get(colony.hive ?? colony.stays.at(-1)?.hive ?? '') ?? ready.evidence.hive;
  const { gross } = ready.evidence;
  const line = colonyLine(ready, { plan: of.plan, holding: of.autumn, run: null });
  const since = weighingsSince(hive, { ready, of });
  const signs = colony.signs.filter(({ day }) => day > of.plan.today && day <= today);
  const known = of.weighed && line.hasKg !== null;
  const given = givenSince(colony, { from: of.plan.today, to: today });
  const belief = { prepared: ready.prepared, storesKg: (line.hasKg ?? 0) + given.storesKg, doubt: doubtOf(ready.evidence) };
  const update = known
    ? updateColony(belief, { observations: [...since.seen, ...heard(signs)], today, certaintyFrac: of.certaintyFrac })
    : null;
  const last = hive.weighings.filter(({ day }) => day <= today).at(-1) ?? null;
  const reasons = reasonsOf(update, { signs, last, today, known, certaintyFrac: of.certaintyFrac, autumnDay: of.plan.today });
  const rescue = update === null || Math.max(update.addKg, update.addNowKg) === 0 ? null : rescueOf(update, today);
  return {
    colony: colony.id,
    hive: hive.id,
    yard: hive.yard,
    label: hive.label ?? hive.id,
    update: update === null ? null : withoutWeights(update),
    lastLifted: last === null ? null : isoDateOf(last.day),
    aliveFrac: update?.aliveFrac ?? null,
    lifts: since.lifts,
    empty: gross === null || line.hasKg === null ? null : { kg: gross.kg - line.hasKg, sdKg: line.hasSdKg ?? 0 },
    course:
      update === null || gross === null || !of.withCourse
        ? null
        : courseOf(belief, { weights: update.weights, grossKg: gross.kg + given.grossKg, holdFrac: update.holdFrac }),
    scaleNowKg: update === null || gross === null ? null : scaleNow(gross.kg + given.grossKg, update),
    reasons,
    acts: actsOf(reasons),
    rescue: reasons.some(({ code }) => code === 'short-until-forage' || code === 'may-run-out-soon') ? rescue : null,
    refused: since.refused,
  };
}

function withoutWeights({ weights: _, ...rest }: WinterUpdate): Omit<WinterUpdate, 'weights'> {
  return rest;
}

/** Weighings after the autumn round as changes against it; a hive frozen to its stand on that day is not weighed. */
function weighingsSince(
  hive: Hive,
  { ready, of }: { ready: ReadyColony; of: Of },
): {
  seen: Observation[];
  refused: RefusedWeighing[];
  lifts: { on: string; grossKg: number; iceKg: number }[];
} {
  const first = ready.evidence.gross;
  const seen: Observation[] = [];
  const refused: RefusedWeighing[] = [];
  const lifts: { on: string; grossKg: number; iceKg: number }[] = [];
  for (const weighing of hive.weighings) {
    if (weighing.day <= of.plan.today || weighing.day > of.today) continue;
    const on = isoDateOf(weighing.day);
    if (of.colony.signs.some(({ sign, day }) => sign === 'frozen-down' && day === weighing.day)) {
      refused.push({ code: 'frozen-down', on });
      continue;
    }
    if (!sameWood(weighing, hive, of.plan.today)) {
      refused.push({ code: 'other-build', on });
      continue;
    }
    const gross = grossOf(weighing, of.plan.ways);
    if (!gross.ok) refused.push({ code: 'impossible', on, fault: gross.error });
    else if (gross.value !== null && first !== null) {
      const given = givenSince(of.colony, { from: of.plan.today, to: weighing.day });
      lifts.push({ on, grossKg: gross.value.kg, iceKg: watchParameters.snowIceKg.value });
      seen.push({
        kind: 'weight',
        day: weighing.day,
        changeKg: gross.value.kg - first.kg - given.grossKg,
        sdKg: twoReadings(first, gross.value),
      });
    }
  }
  return { seen, refused, lifts };
}

/** Whether the hive was of the same parts on both days: else its weights say nothing about what was eaten. */
function sameWood(weighing: Weighing, hive: Hive, autumnDay: number): boolean {
  const then = hive.builds.filter(({ day }) => day <= autumnDay).at(-1)?.parts ?? null;
  const text = (parts: Weighing['parts']) =>
    (parts ?? [])
      .map(({ part, count }) => `${count} ${part}`)
      .sort()
      .join('+');
  return text(then) === text(weighing.parts);
}

/** Error of the difference of two weighings [kg]: the scale's own falls out where it was the same one. */
function twoReadings(a: Gross, b: Gross): number {
  const shared = a.scale === b.scale ? 0 : Math.hypot(a.sharedSdKg, b.sharedSdKg);
  return Math.hypot(a.ownSdKg, b.ownSdKg, shared);
}

/** Feed and combs that came and went after one day, up to another: what they weighed and the stores they are [kg]. */
function givenSince(colony: Colony, { from, to }: { from: number; to: number }): { grossKg: number; storesKg: number } {
  let [grossKg, storesKg] = [0, 0];
  const within = ({ day }: { readonly day: number }) => day > from && day <= to;
  for (const feed of colony.feeds.filter(within)) {
    const sugarKg = takenSugarKg(feed);
    const becomes = feed.what === 'syrup' ? storesPerSugarKg(storesParameters.syrupSugarFrac.value).low : 1;
    grossKg += sugarKg * (feed.what === 'syrup' ? becomes : 1 + matterParameters.candyWaterPerSugarFrac.value);
    storesKg += sugarKg * becomes;
  }
  for (const { frame, count, massKg, direction } of colony.moves.filter(within)) {
    const comb = frameNamed(frame);
    if (comb === undefined) continue;
    const oneKg = massKg ?? comb.massKg + comb.cappedNetKg;
    const sign = direction === 'into' ? 1 : -1;
    grossKg += sign * count * oneKg;
    storesKg += sign * count * Math.max(0, oneKg - comb.massKg);
  }
  return { grossKg, storesKg };
}

function heard(signs: Colony['signs']): Observation[] {
  return signs.flatMap(({ sign, day }): Observation[] => {
    if (sign === 'silent') return [{ kind: 'silent', day }];
    return sign === 'alive' || sign === 'frost-plume' ? [{ kind: 'alive', day }] : [];
  });
}

function scaleNow(grossKg: number, update: WinterUpdate) {
  const at = (eaten: number, extra: number) => grossKg - eaten + extra;
  const { eatenKg } = update;
  const ice = watchParameters.snowIceKg.value;
  return { p5: at(eatenKg.p95, 0), p50: at(eatenKg.p50, ice / 2), p95: at(eatenKg.p5, ice) };
}

function reasonsOf(
  update: WinterUpdate | null,
  of: { signs: Colony['signs']; last: Weighing | null; today: number; known: boolean; certaintyFrac: number; autumnDay: number },
): WatchReason[] {
  const reasons: WatchReason[] = [];
  const p = watchParameters;
  if (update !== null) {
    if (update.soonFrac >= p.nearChanceFrac.value)
      reasons.push({ code: 'may-run-out-soon', chanceFrac: update.soonFrac, days: p.nearDays.value });
    if (update.addKg > 0) reasons.push({ code: 'short-until-forage', addKg: update.addKg, holdFrac: update.holdFrac });
    for (const { day, which, chanceFrac } of update.surprises.slice(-1))
      reasons.push({ code: 'reading-surprises', on: isoDateOf(day), which, chanceFrac });
  }
  const sign = of.signs.at(-1);
  const today = of.signs.filter(({ day }) => day === sign?.day);
  for (const { sign: kind, day } of today)
    if (kind === 'silent' || kind === 'frozen-down' || kind === 'wet-lid') reasons.push({ code: kind, on: isoDateOf(day) });
  if (!of.known) reasons.push({ code: 'not-weighed-in-autumn' });
  const days = of.last === null ? null : of.today - of.last.day;
  // midwinter: from then on a lift tells more than it did
  if (days !== null && days > p.oldLiftDays.value && isMidwinter(of.today) && (update === null || update.holdFrac < SURE_FRAC))
    reasons.push(of.last!.day <= of.autumnDay ? { code: 'never-lifted-since-autumn', days } : { code: 'lift-is-old', days });
  return reasons;
}

/** A colony as sure as this to hold is not lifted for its own sake. */
const SURE_FRAC = 0.99;

/** From the winter solstice to the end of May. */
function isMidwinter(day: number): boolean {
  const monthDay = isoDateOf(day).slice(5);
  return monthDay >= '12-21' || monthDay <= '05-31';
}

/** What to do for each reason, once each, in the order of the hands: listen, clear, lift, look, feed. */
function actsOf(reasons: readonly WatchReason[]): WatchAct[] {
  const acts = new Set<WatchAct>();
  const codes = new Set(reasons.map(({ code }) => code));
  if (codes.has('frozen-down')) acts.add('free-it-first');
  if (reasons.length > 0) acts.add('clear-opening').add('read-frost');
  if (codes.has('silent') || codes.has('may-run-out-soon')) acts.add('tap-and-listen');
  if (codes.has('reading-surprises')) acts.add('lift-again');
  else if (codes.has('lift-is-old') || codes.has('never-lifted-since-autumn') || codes.has('not-weighed-in-autumn')) acts.add('lift');
  if (codes.has('wet-lid')) acts.add('look-under-lid');
  if (codes.has('may-run-out-soon')) acts.add('give-candy');
  return [...acts];
}

/** Candy for what is missing: one kilogram of sugar is taken as one of stores, for it is eaten as it is. */
function rescueOf(update: WinterUpdate, today: number): Rescue {
  const slabKg = watchParameters.candySlabKg.value;
  const slabsFor = (kg: number) => (kg <= 0 ? 0 : Math.ceil(kg / slabKg - 1e-9));
  const early = update.runOut.p5;
  return {
    storesKg: update.addKg,
    slabsNow: slabsFor(update.addNowKg),
    slabs: Math.max(slabsFor(update.addNowKg), slabsFor(update.addKg)),
    slabKg,
    slabDays: update.useKgPerDay > 0 ? slabKg / update.useKgPerDay : 0,
    by: early === null || early < isoDateOf(today) ? isoDateOf(today) : early,
    lidFromC: watchParameters.quickLidC.value,
  };
}
