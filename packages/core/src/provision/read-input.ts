import { storesPerSugarKg, sucroseDensityKgPerM3 } from '../matter/index.ts';
import { type BadInput, bad, good, inRange, type Result } from '../result/index.ts';
import { provisionParameters as parameters } from '../tables/parameters-provision.gen.ts';
import { winterParameters } from '../tables/parameters-winter.gen.ts';
import { epochDayOf, isoDateOf } from '../units/index.ts';
import { type Case, type CaseColony, type CaseLot, type CasePrices, type CaseRules, type Spot, unionKey } from './case.ts';
import type { BankLot, CombLot, Looked, LossPoint, Place, ProvisionColony, ProvisionInput } from './input.ts';
import { PROVISION_RANGES } from './limits.ts';
import { lossCurve } from './loss-curve.ts';

type Range = keyof typeof PROVISION_RANGES;
const SYRUP_TEMP_C = 20;
/** Two thirds sugar: the strength fed in autumn. */
export const AUTUMN_SYRUP_SUGAR_FRAC = 2 / 3;

/** Carries the first thing found wrong out of the reading; never leaves this file. */
class Refused {
  readonly error: BadInput;
  constructor(error: BadInput) {
    this.error = error;
  }
}

/** The case an input describes, or the first field that cannot be used. */
export function readProvisionInput(input: ProvisionInput): Result<Case> {
  try {
    return good(read(input));
  } catch (thrown) {
    if (thrown instanceof Refused) return bad(thrown.error);
    throw thrown;
  }
}

function read(input: ProvisionInput): Case {
  if (!Array.isArray(input.colonies) || input.colonies.length === 0) throw new Refused({ kind: 'missing', field: 'colonies' });
  number('colonies', input.colonies.length, 'colonies');
  const rules = input.rules ?? {};
  const certaintyFrac = number('rules.certaintyFrac', rules.certaintyFrac ?? parameters.certaintyFrac.value, 'certaintyFrac');
  const winterableBees = number('rules.winterableBees', rules.winterableBees ?? winterParameters.minBeesAlone.value, 'bees');
  const gluingOver = rules.gluingOver ?? false;
  const looks = lookReader(input);
  const colonies = input.colonies.map((colony, i) =>
    readColony(colony, `colonies[${i}]`, { certaintyFrac, winterableBees, gluingOver, looks }),
  );
  const bank = (input.bank ?? []).map((lot, i) => readLot(lot, `bank[${i}]`, looks));
  const shed = (input.shed ?? []).map((lot, i) => readLot(lot, `shed[${i}]`, looks));
  noneTwice([
    ...colonies.map((c, i) => [c.id, `colonies[${i}].id`] as const),
    ...bank.map((l, i) => [l.lot, `bank[${i}].lot`] as const),
    ...shed.map((l, i) => [l.lot, `shed[${i}].lot`] as const),
  ]);
  const yardRank = yardRanks(colonies);
  const days = number('daysToLastFeeding', input.daysToLastFeeding ?? 0, 'daysToLastFeeding');
  const ripeningDays = number('rules.ripeningDays', rules.ripeningDays ?? parameters.ripeningDays.value, 'ripeningDays');
  return {
    colonies: inOrder(colonies, (c) => [colonySignature(c), yardRank(c.yard)]),
    bank: inOrder(bank, (l) => [lotSignature(l), yardRank(l.yard)]),
    shed: inOrder(shed, (l) => [lotSignature(l), yardRank(l.yard)]),
    sugarKg: number('sugarKg', input.sugarKg ?? 0, 'sugarKg'),
    feeders: whole('feeders', input.feeders ?? 0, 'feeders'),
    feedingDays: Math.max(0, days - ripeningDays),
    unionNeedKg: readUnions(input, colonies),
    prices: readPrices(input),
    rules: readRules(input),
    todayAssumed: looks.assumed,
  };
}

function readRules(input: ProvisionInput): CaseRules {
  const rules = input.rules ?? {};
  const sugarFrac = number('rules.syrupSugarFrac', rules.syrupSugarFrac ?? AUTUMN_SYRUP_SUGAR_FRAC, 'syrupSugarFrac');
  return {
    allowLookSteps: rules.allowLookSteps ?? false,
    holdLightCombs: rules.holdLightCombs ?? false,
    crossYards: rules.crossYards ?? false,
    unite: rules.unite ?? true,
    needToleranceKg: number('rules.needToleranceKg', rules.needToleranceKg ?? parameters.needToleranceKg.value, 'needToleranceKg'),
    lossToleranceColonies: number(
      'rules.lossToleranceColonies',
      rules.lossToleranceColonies ?? parameters.lossToleranceColonies.value,
      'lossToleranceColonies',
    ),
    sugarKgPerL: (sucroseDensityKgPerM3(sugarFrac, SYRUP_TEMP_C) * sugarFrac) / 1000,
    storesPerSugar: storesPerSugarKg(sugarFrac).low,
    syrupStepL: number('rules.syrupStepL', rules.syrupStepL ?? parameters.syrupStepL.value, 'syrupStepL'),
    leastSyrupL: number('rules.leastSyrupL', rules.leastSyrupL ?? parameters.leastSyrupL.value, 'leastSyrupL'),
    buySugarUpToKg: number('rules.buySugarUpToKg', rules.buySugarUpToKg ?? 0, 'sugarKg'),
    pricePerColony: rules.pricePerColony === undefined ? null : number('rules.pricePerColony', rules.pricePerColony, 'price'),
    gapFrac: number('rules.gapFrac', rules.gapFrac ?? parameters.gapFrac.value, 'gapFrac'),
    nodes: whole('rules.nodes', rules.nodes ?? parameters.nodes.value, 'nodes'),
    brakeSeconds: number('rules.brakeSeconds', rules.brakeSeconds ?? parameters.brakeSeconds.value, 'brakeSeconds'),
  };
}

function readPrices(input: ProvisionInput): CasePrices {
  const prices = input.prices ?? {};
  return {
    sugarPerKg: number('prices.sugarPerKg', prices.sugarPerKg ?? parameters.sugarPerKg.value, 'price'),
    workPerHour: number('prices.workPerHour', prices.workPerHour ?? parameters.workPerHour.value, 'price'),
    honeyPerKg: number('prices.honeyPerKg', prices.honeyPerKg ?? 0, 'price'),
    opening: number('prices.opening', prices.opening ?? parameters.openingPrice.value, 'price'),
  };
}

interface ColonyContext {
  readonly certaintyFrac: number;
  readonly winterableBees: number;
  readonly gluingOver: boolean;
  readonly looks: LookReader;
}

function readColony(colony: ProvisionColony, field: string, context: ColonyContext): CaseColony {
  const hasKg = number(`${field}.hasKg`, colony.hasKg, 'hasKg');
  const hasSdKg = number(`${field}.hasSdKg`, colony.hasSdKg, 'hasSdKg');
  const needKg = number(`${field}.needKg`, colony.needKg, 'needKg');
  const bees = number(`${field}.bees`, colony.bees, 'bees');
  const byBees = (parameters.uptakeLPer1000BeesPerDay.value * bees) / 1000;
  const flag =
    colony.flag === true ? 'set aside' : colony.flag === false || colony.flag === undefined || colony.flag === '' ? null : colony.flag;
  return {
    id: text(`${field}.id`, colony.id),
    yard: text(`${field}.yard`, colony.yard),
    bees,
    hasKg,
    needKg,
    shortKg: needKg - hasKg,
    looked: context.looks.fresh(colony.looked, `${field}.looked`),
    flag,
    capped: readLots(colony.capped ?? [], `${field}.capped`),
    emptyCombs: readLots(colony.emptyCombs ?? [], `${field}.emptyCombs`),
    spot: spotOf(colony.at ?? null),
    curve:
      colony.lossCurve === undefined
        ? lossCurve(needKg, hasSdKg, context.certaintyFrac)
        : readCurve(colony.lossCurve, `${field}.lossCurve`),
    rimKg: number(`${field}.candyRimKg`, colony.candyRimKg ?? parameters.candyRimKg.value, 'candyRimKg'),
    uptakeLPerDay: number(
      `${field}.uptakeLPerDay`,
      colony.uptakeLPerDay ?? Math.min(parameters.uptakeLPerDay.value, byBees),
      'uptakeLPerDay',
    ),
    refusesSyrup: colony.refusesSyrup ?? false,
    openingWeight: (colony.gluingOver ?? context.gluingOver) ? parameters.openingWeightAfterGluing.value : 1,
    mayGive: colony.mayGive ?? true,
    mayUnite: colony.mayUnite ?? true,
    small: colony.tooSmall ?? bees < context.winterableBees,
    queenKnown: colony.queen === 'seen',
  };
}

function readLots(lots: readonly CombLot[], field: string): readonly CombLot[] {
  return lots.map((lot, i) => ({
    frame: text(`${field}[${i}].frame`, lot.frame),
    count: whole(`${field}[${i}].count`, lot.count, 'count'),
    massKg: number(`${field}[${i}].massKg`, lot.massKg, 'massKg'),
    massSdKg: number(`${field}[${i}].massSdKg`, lot.massSdKg ?? 0, 'massSdKg'),
    pollenLast: lot.pollenLast ?? false,
  }));
}

function readLot(lot: BankLot, field: string, looks: LookReader): CaseLot {
  return {
    lot: text(`${field}.lot`, lot.lot),
    yard: text(`${field}.yard`, lot.yard),
    frame: text(`${field}.frame`, lot.frame),
    count: whole(`${field}.count`, lot.count, 'count'),
    massKg: number(`${field}.massKg`, lot.massKg, 'massKg'),
    massSdKg: number(`${field}.massSdKg`, lot.massSdKg ?? 0, 'massSdKg'),
    looked: looks.dated(lot.looked, `${field}.looked`),
    inHand: lot.inHand ?? false,
  };
}

/** Points in order, from (0, 0), with what is lost at no shortage taken off. */
function readCurve(points: readonly LossPoint[], field: string): readonly LossPoint[] {
  const read = points.map((p, i) => ({
    shortKg: number(`${field}[${i}].shortKg`, p.shortKg, 'shortKg'),
    lossFrac: number(`${field}[${i}].lossFrac`, p.lossFrac, 'frac'),
  }));
  const base = read[0]?.shortKg === 0 ? read[0].lossFrac : 0;
  const above = read[0]?.shortKg === 0 ? read.slice(1) : read;
  let before: LossPoint = { shortKg: 0, lossFrac: base };
  above.forEach((p, i) => {
    if (!(p.shortKg > before.shortKg && p.lossFrac >= before.lossFrac)) {
      throw new Refused({ kind: 'conflict', fields: [`${field}[${i}]`], why: 'points-out-of-order' });
    }
    before = p;
  });
  return [{ shortKg: 0, lossFrac: 0 }, ...above.map((p) => ({ shortKg: p.shortKg, lossFrac: p.lossFrac - base }))];
}

function readUnions(input: ProvisionInput, colonies: readonly CaseColony[]): ReadonlyMap<string, number> {
  const needs = new Map<string, number>();
  const ids = new Set(colonies.map((c) => c.id));
  (input.unions ?? []).forEach((union, i) => {
    for (const side of ['from', 'into'] as const) {
      if (!ids.has(union[side]))
        throw new Refused({ kind: 'unknown-choice', field: `unions[${i}].${side}`, value: String(union[side]), choices: [...ids] });
    }
    needs.set(unionKey(union.from, union.into), number(`unions[${i}].needKg`, union.needKg, 'needKg'));
  });
  return needs;
}

interface LookReader {
  readonly assumed: string | null;
  /** A look recent enough for a comb to leave. */
  fresh(looked: Looked | undefined, field: string): boolean;
  /** A look at the time the combs were taken, whenever that was. */
  dated(looked: Looked | undefined, field: string): boolean;
}

/** Without `rules.today` the newest look stands in for today, which is said in the answer. */
function lookReader(input: ProvisionInput): LookReader {
  const lookDays = number('rules.lookDays', input.rules?.lookDays ?? parameters.lookDays.value, 'lookDays');
  const dayOf = (looked: string, field: string): number => {
    const day = epochDayOf(looked);
    if (day === null) throw new Refused({ kind: 'not-a-date', field, value: looked });
    return day;
  };
  const said = input.rules?.today;
  const dates = [...input.colonies, ...(input.bank ?? []), ...(input.shed ?? [])].flatMap((x) =>
    typeof x.looked === 'string' ? [epochDayOf(x.looked) ?? 0] : [],
  );
  const today = said === undefined ? dates.reduce((a, b) => Math.max(a, b), Number.NEGATIVE_INFINITY) : dayOf(said, 'rules.today');
  const agoOf = (looked: string, field: string): number => {
    const ago = today - dayOf(looked, field);
    if (ago < 0) throw new Refused({ kind: 'date-order', field: 'rules.today', value: said ?? '', notBefore: looked });
    return ago;
  };
  return {
    assumed: said === undefined && dates.length > 0 ? isoDateOf(today) : null,
    fresh: (looked, field) => (typeof looked === 'string' ? agoOf(looked, field) <= lookDays : looked === true),
    dated: (looked, field) => (typeof looked === 'string' ? agoOf(looked, field) >= 0 : looked === true),
  };
}

/** A row and a place along it. A label such as B12 is row B, place 12. */
function spotOf(at: Place | null): Spot {
  if (at === null) return { row: '', along: 0 };
  if (typeof at === 'number') return { row: '', along: at };
  if (typeof at === 'string') {
    const match = /^(.*?)(\d*)$/.exec(at);
    return { row: match?.[1] ?? at, along: Number(match?.[2] ?? 0) };
  }
  if ('row' in at) return { row: at.row, along: at.place };
  return { row: String(at[1]), along: at[0] };
}

/** Figures without names, so that renaming and re-ordering leave the model as it is. */
function colonySignature(c: CaseColony): string {
  const { id, yard, ...rest } = c;
  return JSON.stringify([rest.hasKg, rest.needKg, rest.bees, rest]);
}
function lotSignature(l: CaseLot): string {
  const { lot, yard, ...rest } = l;
  return JSON.stringify(rest);
}
function inOrder<T>(items: readonly T[], signature: (item: T) => readonly string[]): readonly T[] {
  const keyed = items.map((item) => ({ item, key: signature(item).join('\u0000') }));
  keyed.sort((a, b) => (a.key < b.key ? -1 : a.key > b.key ? 1 : 0));
  return keyed.map((k) => k.item);
}

/** Yards told apart by what stands in them, so that like lots of two yards have an order without names. */
function yardRanks(colonies: readonly CaseColony[]): (yard: string) => string {
  const inside = new Map<string, string[]>();
  for (const c of colonies) inside.set(c.yard, [...(inside.get(c.yard) ?? []), colonySignature(c)]);
  const ranks = new Map([...inside].map(([yard, signatures]) => [yard, signatures.sort().join()]));
  return (yard) => ranks.get(yard) ?? '';
}

function noneTwice(named: readonly (readonly [string, string])[]): void {
  const seen = new Map<string, string>();
  for (const [id, field] of named) {
    const first = seen.get(id);
    if (first !== undefined) throw new Refused({ kind: 'conflict', fields: [first, field], why: 'same-name' });
    seen.set(id, field);
  }
}

function number(field: string, value: unknown, range: Range): number {
  const result = inRange(field, value, PROVISION_RANGES[range]);
  if (!result.ok) throw new Refused(result.error);
  return result.value;
}

function whole(field: string, value: unknown, range: Range): number {
  const result = number(field, value, range);
  if (!Number.isInteger(result))
    throw new Refused({ kind: 'implausible', field, value: result, unit: PROVISION_RANGES[range].unit, why: 'not-whole' });
  return result;
}

function text(field: string, value: unknown): string {
  if (value === undefined || value === null || value === '') throw new Refused({ kind: 'missing', field });
  if (typeof value !== 'string' || value.length > 200)
    throw new Refused({
      kind: 'implausible',
      field,
      value: String(value).length,
      unit: 'characters',
      why: 'text-too-long',
    });
  return value;
}
