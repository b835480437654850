import { type Colony, foldHolding, type Holding } from '../holding/index.ts';
import type { JournalRecord, UnreadLine } from '../journal/index.ts';
import { learnParameters } from '../learn/index.ts';
import { jeffreys } from '../mites/index.ts';
import { bad, good, type Result } from '../result/index.ts';
import { epochDayOf, epochDayOfParts, isoDateOf } from '../units/index.ts';
import { type ProbableCause, probableCause } from '../watch/index.ts';
import { winterYearOf } from '../weather/index.ts';
import { takenSugarKg } from './evidence.ts';
import type { PlanSetting } from './types.ts';
import { watch } from './watch.ts';
import type { WatchLine } from './watch-types.ts';

/** Colonies of which about the same was said, and what came of them. */
export interface SaidGroup {
  readonly fromFrac: number;
  readonly toFrac: number;
  readonly colonies: number;
  /** Deaths by hunger that were expected of them, and 5 and 95 % of the number. */
  readonly expected: number;
  readonly low: number;
  readonly high: number;
  readonly died: number;
  /** Twenty numbers of deaths by hunger, each one case in twenty. */
  readonly cases: readonly number[];
}

export interface SpringAnswer {
  readonly today: string;
  readonly winter: number;
  /** Colonies alive on 1 November; united or sold since are left out. */
  readonly colonies: number;
  readonly survivors: number;
  /** Not yet seen this spring. */
  readonly notCounted: readonly string[];
  readonly loss: { readonly frac: number; readonly lowFrac: number; readonly highFrac: number } | null;
  readonly region: { readonly lossFrac: number; readonly lowFrac: number; readonly highFrac: number; readonly source: string };
  readonly said: readonly SaidGroup[];
  /** Stores at the spring count against what was said in autumn [kg]. */
  readonly stores: readonly {
    readonly label: string;
    readonly saidKg: { readonly p5: number; readonly p50: number; readonly p95: number };
    readonly seenKg: number;
  }[];
  readonly deadouts: readonly ({
    readonly colony: string;
    readonly label: string;
    readonly on: string;
    readonly found: readonly string[];
  } & ProbableCause)[];
  /** Sugar fed since the autumn round, in all and for each survivor [kg]; money where a price is set. */
  readonly sugarKg: number;
  readonly sugarPerSurvivorKg: number | null;
  readonly moneyPerSurvivor: number | null;
  readonly made: { readonly seed: number; readonly members: number };
}

const CASES = 20;
/** What was said, in three groups: with few colonies more would hold one each. */
const BOUNDS = [0, 0.75, 0.95, 1] as const;

/**
 * The count of spring: who came through, what was said of them in autumn, what the dead hives tell.
 *
 * records   of a journal; what is dated after `today` is not used
 * setting   today, from 1 March to 31 August: the winter before it is counted
 * errors    BadInput: a day that is none or outside spring, no colony in that winter
 */
export function spring(records: readonly JournalRecord[], setting: PlanSetting, unread: readonly UnreadLine[] = []): Result<SpringAnswer> {
  const today = epochDayOf(setting.today);
  if (today === null) return bad({ kind: 'not-a-date', field: 'today', value: setting.today });
  const month = Number(setting.today.slice(5, 7));
  const winter = winterYearOf(today) - (month >= 6 ? 1 : 0);
  const first = epochDayOfParts(winter + 1, 3, 1);
  if (month < 3 || month > 8)
    return bad({
      kind: 'date-order',
      field: 'today',
      value: setting.today,
      notBefore: isoDateOf(first),
      notAfter: isoDateOf(epochDayOfParts(winter + 1, 8, 31)),
    });
  const holding = foldHolding(records, { unread, until: setting.today });
  const wintered = [...holding.colonies.values()].filter((colony) => isOfWinter(colony, winter));
  if (wintered.length === 0) return bad({ kind: 'missing', field: 'journal (a colony of that winter)' });
  const dead = wintered.filter(({ ended }) => ended !== null);
  const counted = wintered.filter(({ ended, springCounts }) => ended !== null || springCounts.some(({ day }) => day >= first));
  const survivors = counted.length - dead.length;
  const said = saidInAutumn(records, { setting, winter });
  const price = holding.settings.prices as { readonly sugarPerKg?: number } | undefined;
  const sugarKg = sugarSince(holding, epochDayOfParts(winter, 8, 15), today);
  const interval = counted.length === 0 ? null : jeffreys(dead.length, counted.length, 0.95);
  const region = learnParameters.regionalLossFrac;
  return good({
    today: setting.today,
    winter,
    colonies: wintered.length,
    survivors,
    notCounted: wintered.filter((colony) => !counted.includes(colony)).map((colony) => labelOf(colony, holding)),
    loss: interval === null ? null : { frac: dead.length / counted.length, lowFrac: interval.low, highFrac: interval.high },
    region: { lossFrac: region.value, lowFrac: region.low, highFrac: region.high, source: region.source },
    said: groupsOf(counted, said),
    stores: storesOf(counted, { said, holding, first }),
    deadouts: dead.map((colony) => {
      const count = colony.springCounts.at(-1);
      const found = count?.found ?? [];
      return { colony: colony.id, label: labelOf(colony, holding), on: isoDateOf(colony.ended!.day), found, ...probableCause(found) };
    }),
    sugarKg,
    sugarPerSurvivorKg: survivors === 0 ? null : sugarKg / survivors,
    moneyPerSurvivor: survivors === 0 || price?.sugarPerKg === undefined ? null : (sugarKg * price.sugarPerKg) / survivors,
    made: { seed: setting.seed, members: setting.members },
  });
}

/** Alive on 1 November of that winter; one that was united or sold afterwards is neither lost nor kept. */
function isOfWinter({ begun, ended }: Colony, winter: number): boolean {
  const november = epochDayOfParts(winter, 11, 1);
  const born = begun === null || begun.day <= november;
  if (ended === null) return born;
  return born && ended.day > november && ended.how === 'died' && ended.day < epochDayOfParts(winter + 1, 6, 1);
}

function labelOf(colony: Colony, holding: Holding): string {
  const lived = colony.hive ?? colony.stays.at(-1)?.hive;
  return (lived === undefined ? null : holding.hives.get(lived)?.label) ?? colony.id;
}

/** What was said when the autumn round was over: what came later may not make it wiser. */
interface Said {
  readonly holdFrac: ReadonlyMap<string, number>;
  /** What a colony would hold on a day [kg]; null where nothing was said of it. */
  leftKg(colony: string, day: number): { readonly p5: number; readonly p50: number; readonly p95: number } | null;
}

function saidInAutumn(records: readonly JournalRecord[], of: { setting: PlanSetting; winter: number }): Said {
  const november = isoDateOf(epochDayOfParts(of.winter, 11, 30));
  const then = records.filter(({ at }) => at.date <= november);
  const days = new Map<string, ReadonlyMap<string, WatchLine>>();
  const linesOn = (day: string) => {
    const known = days.get(day);
    if (known !== undefined) return known;
    const watched = watch(then, { ...of.setting, today: day });
    const lines = new Map(watched.ok ? watched.value.answer.lines.map((line) => [line.colony, line]) : []);
    days.set(day, lines);
    return lines;
  };
  const holdFrac = new Map<string, number>();
  for (const [colony, { update }] of linesOn(november)) if (update !== null) holdFrac.set(colony, update.holdFrac);
  return { holdFrac, leftKg: (colony, day) => linesOn(isoDateOf(day)).get(colony)?.update?.leftKg ?? null };
}

function groupsOf(counted: readonly Colony[], { holdFrac }: Said): SaidGroup[] {
  return BOUNDS.slice(1).flatMap((toFrac, i) => {
    const fromFrac = BOUNDS[i]!;
    const here = counted.flatMap((colony) => {
      const one = holdFrac.get(colony.id);
      if (one === undefined) return [];
      const inside = one >= fromFrac && (one < toFrac || toFrac === 1);
      return inside ? [{ lossFrac: 1 - one, died: colony.ended !== null }] : [];
    });
    if (here.length === 0) return [];
    const chances = countOdds(here.map(({ lossFrac }) => lossFrac));
    return [
      {
        fromFrac,
        toFrac,
        colonies: here.length,
        expected: here.reduce((sum, { lossFrac }) => sum + lossFrac, 0),
        low: quantileOf(chances, 0.05),
        high: quantileOf(chances, 0.95),
        died: here.filter(({ died }) => died).length,
        cases: Array.from({ length: CASES }, (_, k) => quantileOf(chances, (k + 0.5) / CASES)),
      },
    ];
  });
}

/** Chance of each number of losses among colonies that are lost with these chances: convolution, one colony after another. */
export function countOdds(lossFracs: readonly number[]): number[] {
  let odds = [1];
  for (const loss of lossFracs)
    odds = Array.from({ length: odds.length + 1 }, (_, k) => (odds[k] ?? 0) * (1 - loss) + (odds[k - 1] ?? 0) * loss);
  return odds;
}

function quantileOf(odds: readonly number[], frac: number): number {
  let sum = 0;
  for (const [k, chance] of odds.entries()) {
    sum += chance;
    if (sum >= frac - 1e-12) return k;
  }
  return odds.length - 1;
}

function storesOf(counted: readonly Colony[], of: { said: Said; holding: Holding; first: number }): SpringAnswer['stores'] {
  return counted.flatMap((colony) => {
    const count = colony.springCounts.find(({ day, storesKg }) => day >= of.first && storesKg !== undefined);
    const saidKg = count === undefined ? null : of.said.leftKg(colony.id, count.day);
    return saidKg === null
      ? []
      : [{ label: labelOf(colony, of.holding), saidKg: { p5: saidKg.p5, p50: saidKg.p50, p95: saidKg.p95 }, seenKg: count!.storesKg! }];
  });
}

function sugarSince(holding: Holding, from: number, to: number): number {
  let kg = 0;
  for (const { feeds } of holding.colonies.values())
    for (const feed of feeds) if (feed.day >= from && feed.day <= to) kg += takenSugarKg(feed);
  return kg;
}
