import type { Holding, Yard } from '../holding/index.ts';
import { hiveConductance } from '../matter/index.ts';
import { bad, good, type Result } from '../result/index.ts';
import { type YardSpring, yardSpring } from '../season/index.ts';
import { epochDayOf, epochDayOfParts, partsOf } from '../units/index.ts';
import { type Climate, climateForPlace, climateFromMonthly, climateFromRecord, climateNear } from '../weather/index.ts';
import {
  type ColonyRun,
  drawSeason,
  type LevelBelief,
  levelAfter,
  levelPrior,
  makeRun,
  type PreparedColony,
  prepareColony,
  type WinterValues,
  winterValues,
  type YardSeason,
} from '../winter/index.ts';
import { type Evidence, evidenceOf } from './evidence.ts';
import { type WeighingWays, waysOf } from './gross.ts';
import type { PlanSetting } from './types.ts';

export interface PreparedYard {
  readonly yard: Yard;
  readonly climate: Climate;
  readonly season: YardSeason;
  /** What the keeper's own dates and blooms say of this winter here. */
  readonly spring: YardSpring;
}

/** A colony with its curve, ready to be judged. */
export interface ReadyColony {
  readonly evidence: Evidence;
  readonly prepared: PreparedColony;
}

export interface PreparedPlan {
  readonly setting: PlanSetting;
  readonly today: number;
  readonly fromDay: number;
  readonly toDay: number;
  readonly ways: WeighingWays;
  readonly values: WinterValues;
  readonly level: LevelBelief;
  readonly yards: ReadonlyMap<string, PreparedYard>;
  readonly colonies: readonly ReadyColony[];
  /** Keyed by what each curve was made from, to be handed to the next preparation. */
  readonly curves: ReadonlyMap<string, PreparedColony>;
}

/** Everything a plan rests on but the curves. */
export interface OpenPlan extends Omit<PreparedPlan, 'colonies'> {
  readonly evidence: readonly Evidence[];
}

/**
 * Weather and dates of every yard and what is known of every living colony: a curve can then be made for one colony at a time.
 *
 * `before` is an earlier preparation: weather drawn and curves made from the same inputs are taken over.
 */
export function openPlan(holding: Holding, setting: PlanSetting, before?: OpenPlan | PreparedPlan): Result<OpenPlan> {
  const today = epochDayOf(setting.today);
  if (today === null) return bad({ kind: 'not-a-date', field: 'today', value: setting.today });
  if (![...holding.colonies.values()].some((colony) => colony.ended === null))
    return bad({ kind: 'missing', field: 'journal (a living colony)' });
  const { fromDay, toDay } = winterAhead(today);
  const values = winterValues();
  const yards = new Map<string, PreparedYard>();
  for (const yard of holding.yards.values()) {
    const known = before?.yards.get(yard.id);
    const climate = climateOf(yard, setting);
    if (!climate.ok) return climate;
    const spring = yardSpring(holding, { yard, climate: climate.value, today, seed: setting.seed });
    const same =
      before !== undefined &&
      known !== undefined &&
      sameRun(before, { setting, fromDay, toDay }) &&
      climateKey(known.climate) === climateKey(climate.value) &&
      known.spring.key === spring.key;
    const season = same
      ? known.season
      : drawSeason(climate.value, {
          seed: setting.seed,
          entity: yard.id,
          fromDay,
          days: toDay - fromDay + 1,
          members: setting.members,
          values,
          forageDay: spring.days.firstForage,
          forageSum: spring.beliefs?.firstForage,
        });
    yards.set(yard.id, { yard, climate: same ? known.climate : climate.value, season, spring });
  }
  const ways = waysOf(holding);
  const evidence = livingColonies(holding, ways, today).filter((one) => yards.has(one.hive.yard));
  if (evidence.length === 0) return bad({ kind: 'missing', field: 'journal (a living colony in a hive)' });
  const level = levelOfKeeper(holding, { evidence, yards, setting, values });
  const curves = new Map(before?.curves ?? []);
  return good({ setting, today, fromDay, toDay, ways, values, level, yards, evidence, curves });
}

/** The same with the curve of every living colony: all that takes time, and nothing that a weighing changes. */
export function preparePlan(holding: Holding, setting: PlanSetting, before?: PreparedPlan): Result<PreparedPlan> {
  const opened = openPlan(holding, setting, before);
  return opened.ok ? good(finishPlan(opened.value)) : opened;
}

/** Makes the curves that are missing and forgets those that no colony has any more. */
export function finishPlan({ evidence, ...plan }: OpenPlan): PreparedPlan {
  const room: { run: ColonyRun | null } = { run: null };
  const curves = new Map(plan.curves);
  const ready = evidence.map((one) => {
    const made = readyColony({ ...plan, curves }, one, room);
    curves.set(made.key, made.colony.prepared);
    return made;
  });
  return { ...plan, colonies: ready.map(({ colony }) => colony), curves: new Map(ready.map(({ key, colony }) => [key, colony.prepared])) };
}

/**
 * A colony with its curve: the one that was made from the same inputs, or a new one. Equal colonies share theirs.
 *
 * room   the arrays of a run, made once and overwritten by every colony
 */
export function readyColony(
  plan: Pick<PreparedPlan, 'setting' | 'values' | 'level' | 'yards' | 'curves'>,
  evidence: Evidence,
  room: { run: ColonyRun | null } = { run: null },
): { readonly key: string; readonly colony: ReadyColony } {
  const { setting, values, level } = plan;
  const yard = plan.yards.get(evidence.hive.yard)!;
  const { fromDay } = yard.season;
  const hiveWPerK = conductanceOf(evidence, values);
  const { bees, beesSdFrac } = evidence;
  const key = [
    fromDay,
    yard.season.days,
    setting.seed,
    setting.members,
    evidence.hive.yard,
    climateKey(yard.climate),
    yard.spring.key,
    bees,
    beesSdFrac,
    hiveWPerK,
    level.median,
    level.logSd,
  ].join('|');
  const known = plan.curves.get(key);
  if (known !== undefined) return { key, colony: { evidence, prepared: known } };
  room.run ??= makeRun(yard.season);
  const draw = { seed: setting.seed, members: setting.members, fromDay, bees, beesSdFrac, pins: {} };
  const prepared = prepareColony({ season: yard.season, draw, level, hiveWPerK, values }, room.run);
  return { key, colony: { evidence, prepared } };
}

/** Everything of a climate that its years are drawn from, as far as two climates of one yard can differ. */
function climateKey({ name, monthlyMeanC, placeErrorSdC, own }: Climate): string {
  return [name, ...monthlyMeanC, placeErrorSdC, own?.fromDay, own?.meanC.length].join('|');
}

function sameRun(
  before: Pick<PreparedPlan, 'fromDay' | 'toDay' | 'setting'>,
  now: { setting: PlanSetting; fromDay: number; toDay: number },
): boolean {
  return (
    before.fromDay === now.fromDay &&
    before.toDay === now.toDay &&
    before.setting.seed === now.setting.seed &&
    before.setting.members === now.setting.members
  );
}

/**
 * The span of the forecast: from today to the end of June that follows the winter. In June, July and August it begins on
 * 1 September, for what a colony will have then is not known yet: the stores are taken as they are.
 */
function winterAhead(today: number): { fromDay: number; toDay: number } {
  const { year, month } = partsOf(today);
  const spring = month <= 5 ? year : year + 1;
  const fromDay = month >= 6 && month <= 8 ? epochDayOfParts(year, 9, 1) : today;
  return { fromDay, toDay: epochDayOfParts(spring, 6, 30) };
}

function climateOf(yard: Yard, setting: PlanSetting): Result<Climate> {
  const base = climateWithoutRecord(yard, setting);
  return !base.ok || setting.record === undefined ? base : climateFromRecord(setting.record, { base: base.value, yard });
}

function climateWithoutRecord(yard: Yard, setting: PlanSetting): Result<Climate> {
  if (setting.place !== undefined) return climateForPlace(setting.place);
  if (yard.monthlyMeanC !== undefined) return climateFromMonthly(yard.monthlyMeanC, { latDeg: yard.latDeg });
  if (yard.climatePlace !== undefined) return climateForPlace(yard.climatePlace);
  return climateNear(yard.latDeg, yard.lonDeg, yard.elevM);
}

function livingColonies(holding: Holding, ways: WeighingWays, today: number): Evidence[] {
  const all: Evidence[] = [];
  for (const colony of holding.colonies.values()) {
    if (colony.ended !== null || colony.hive === null) continue;
    const hive = holding.hives.get(colony.hive);
    if (hive === undefined || hive.gone) continue;
    all.push(evidenceOf(colony, { hive, holding, ways, today }));
  }
  return all;
}

/** Conductance of the hive around the cluster [W/K]; bare wood where the build cannot be read. */
function conductanceOf(evidence: Evidence, values: WinterValues): number {
  const conductance = hiveConductance([...evidence.build, ...(evidence.hive.top?.parts ?? [])]);
  return conductance.ok ? conductance.value.wPerK : values.bareHiveWPerK;
}

/** The keeper's record weighed on the colony in the middle of their sizes. */
function levelOfKeeper(
  holding: Holding,
  of: { evidence: readonly Evidence[]; yards: ReadonlyMap<string, PreparedYard>; setting: PlanSetting; values: WinterValues },
): LevelBelief {
  const { learnt, ownRule: rule } = holding.settings;
  // winters of the keeper's own say more than a rule remembered, and hold the same deaths
  if (learnt !== undefined) return { median: learnt.levelMedian, logSd: learnt.levelLogSd };
  const bySize = [...of.evidence].sort((a, b) => a.bees - b.bees || (a.colony.id < b.colony.id ? -1 : 1));
  const middle = bySize[bySize.length >> 1];
  if (rule === undefined || rule.grossKg === undefined || middle === undefined) return levelPrior();
  const storesKg = ruleStoresOf(rule.grossKg, middle);
  if (storesKg === null) return levelPrior();
  const { setting, values } = of;
  const season = of.yards.get(middle.hive.yard)!.season;
  const draw = {
    seed: setting.seed,
    members: setting.members,
    fromDay: season.fromDay,
    bees: middle.bees,
    beesSdFrac: middle.beesSdFrac,
    pins: {},
  };
  return levelAfter(
    { storesKg, colonies: rule.colonies, starved: rule.starved },
    { season, draw, hiveWPerK: conductanceOf(middle, values), values },
  );
}

/** Stores a target gross weight leaves in this colony's hive [kg]; null where its build is not known. */
export function ruleStoresOf(grossKg: number, evidence: Evidence): number | null {
  const answer = evidence.stores;
  if (answer === null) return null;
  return Math.max(0, grossKg - answer.tare.massKg - answer.bees.massKg);
}
