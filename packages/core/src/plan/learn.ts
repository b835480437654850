import { foldHolding, type Holding } from '../holding/index.ts';
import type { JournalRecord, UnreadLine } from '../journal/index.ts';
import { type AppetiteLearnt, type Evidence, type Factor, learnAppetite, learnFactor, learnParameters } from '../learn/index.ts';
import { storesPerSugarKg } from '../matter/index.ts';
import { bad, good, type Result } from '../result/index.ts';
import { storesParameters } from '../tables/parameters-stores.gen.ts';
import { epochDayOf, epochDayOfParts, isoDateOf } from '../units/index.ts';
import { winterYearOf } from '../weather/index.ts';
import { levelPrior } from '../winter/index.ts';
import { takenSugarKg } from './evidence.ts';
import { grossOf, type WeighingWays, waysOf } from './gross.ts';
import type { PlanSetting } from './types.ts';
import { watch } from './watch.ts';

export interface LearnAnswer {
  readonly today: string;
  readonly appetite: AppetiteLearnt & { readonly labels: Readonly<Record<string, string>> };
  /** Stores that one kilogram of sugar becomes [kg]. */
  readonly syrupYield: { readonly before: Factor; readonly after: Factor; readonly feeds: number };
  /** Share of a hive's weight on its front edge. */
  readonly frontShare: { readonly frontShareFrac: number; readonly sdFrac: number; readonly hives: number };
  /** Empty hives weighed, by what they are made of. */
  readonly tares: readonly { readonly parts: number; readonly massKg: number; readonly on: string }[];
  readonly made: { readonly seed: number; readonly members: number; readonly winters: readonly number[] };
}

/**
 * The keeper's own factors from what was expected and what was seen, in all winters that are over and the one that is not.
 *
 * Appetite comes from the watch of each winter: what the surest of its lifts said of every colony, the forecast's own prior left out.
 *
 * records   of a journal; what is dated after `today` is not used
 * errors    BadInput: a day that is none. No data is no error: everything stands as before
 */
export function learn(records: readonly JournalRecord[], setting: PlanSetting, unread: readonly UnreadLine[] = []): Result<LearnAnswer> {
  const today = epochDayOf(setting.today);
  if (today === null) return bad({ kind: 'not-a-date', field: 'today', value: setting.today });
  const holding = foldHolding(records, { unread, until: setting.today });
  const evidence: Evidence[] = [];
  const winters = wintersOf(holding, today);
  for (const winter of winters) {
    const end = Math.min(today, epochDayOfParts(winter + 1, 5, 31));
    const watched = watch(records, { ...setting, today: isoDateOf(end) }, { withEnded: true });
    if (!watched.ok) continue;
    for (const { colony, update } of watched.value.answer.lines)
      if (update?.appetiteSeen != null) evidence.push({ colony, winter, ...update.appetiteSeen });
  }
  const ways = waysOf(holding);
  const prior = levelPrior();
  const labels = [...holding.colonies.values()].map(({ id, hive, stays }) => {
    const lived = hive ?? stays.at(-1)?.hive;
    return [id, (lived === undefined ? null : holding.hives.get(lived)?.label) ?? id] as const;
  });
  return good({
    today: setting.today,
    appetite: { ...learnAppetite(prior, evidence), labels: Object.fromEntries(labels) },
    syrupYield: yieldOf(holding, ways, today),
    frontShare: { ...ways.share, hives: weighedBothEdges(holding) },
    tares: holding.partWeights.map(({ parts, massKg, day }) => ({ parts: parts.length, massKg, on: isoDateOf(day) })),
    made: { seed: setting.seed, members: setting.members, winters },
  });
}

/** Winters in which anything was weighed. */
function wintersOf(holding: Holding, today: number): number[] {
  const winters = new Set<number>();
  for (const hive of holding.hives.values()) for (const { day } of hive.weighings) if (day <= today) winters.add(winterYearOf(day));
  return [...winters].sort((a, b) => a - b);
}

function weighedBothEdges(holding: Holding): number {
  return [...holding.hives.values()].filter(({ weighings }) => {
    const last = weighings.at(-1);
    return last?.frontKg !== undefined && last.rearKg !== undefined;
  }).length;
}

/** What feeds became, from two weighings of a hive with nothing but feed between them. */
function yieldOf(holding: Holding, ways: WeighingWays, today: number): LearnAnswer['syrupYield'] {
  const published = storesPerSugarKg(storesParameters.syrupSugarFrac.value);
  const before = { median: published.mid, logSd: learnParameters.yieldLogSd.value };
  const seen: { ratio: number; logSd: number }[] = [];
  for (const hive of holding.hives.values()) {
    const colony = [...holding.colonies.values()].find(({ hive: lives }) => lives === hive.id);
    if (colony === undefined) continue;
    for (let i = 1; i < hive.weighings.length; i++) {
      const [a, b] = [hive.weighings[i - 1]!, hive.weighings[i]!];
      const within = ({ day }: { readonly day: number }) => day >= a.day && day < b.day;
      const sugarKg = colony.feeds
        .filter((feed) => within(feed) && feed.what === 'syrup')
        .reduce((sum, feed) => sum + takenSugarKg(feed), 0);
      if (b.day > today || b.day - a.day > learnParameters.feedSpanDays.value || sugarKg < LEAST_SUGAR_KG) continue;
      if (colony.moves.some(within) || hive.builds.some(within)) continue;
      const [first, last] = [grossOf(a, ways), grossOf(b, ways)];
      if (!first.ok || !last.ok || first.value === null || last.value === null) continue;
      const gainKg = last.value.kg - first.value.kg + USE_KG_PER_DAY * (b.day - a.day);
      if (gainKg <= 0) continue;
      const sdKg = Math.hypot(first.value.ownSdKg, last.value.ownSdKg, learnParameters.yieldReadingSdKg.value);
      seen.push({ ratio: gainKg / sugarKg, logSd: sdKg / gainKg });
    }
  }
  return { before, after: learnFactor(before, seen), feeds: seen.length };
}

/** Less sugar than this is lost in the errors of two weighings [kg]. */
const LEAST_SUGAR_KG = 3;
/** What a colony eats in early autumn between the two weighings [kg/day]; a small part of what is weighed. */
const USE_KG_PER_DAY = 0.06;
