import { type Hive, type Holding, heft, type WeighingWays, weighParameters } from '@winterheft/core';

/** A whole weight that is far from the one before, with nothing written down that would explain it. */
export interface Jump {
  /** Id of the later weighing's record. */
  readonly record: string;
  /** What the hive weighs more than then; negative: less [kg]. */
  readonly changeKg: number;
  /** ISO date of the earlier weighing. */
  readonly since: string;
}

type Ways = Pick<WeighingWays, 'geometry' | 'share'>;
type Weighing = Hive['weighings'][number];

/**
 * Whether the last weighing of a hive has to be asked about; null where it has not.
 *
 * Asked only between weighings of the same boxes, colony and season, and where neither a feed nor a comb was recorded in between.
 */
export function jumpOf(hive: Hive, holding: Holding, ways: Ways): Jump | null {
  const weighed = hive.weighings.filter(({ frontKg, rearKg }) => frontKg !== undefined || rearKg !== undefined);
  const [before, last] = weighed.slice(-2);
  if (before === undefined || last === undefined || last.day - before.day > weighParameters.jumpAskedDays.value) return null;
  if (!isSame(before.parts, last.parts) || !isSame(before.colonies, last.colonies)) return null;
  const isBetween = ({ minute }: { readonly minute: number }) => minute >= before.minute && minute <= last.minute;
  const colonies = last.colonies.flatMap((id) => holding.colonies.get(id) ?? []);
  if (colonies.some(({ feeds, moves }) => feeds.some(isBetween) || moves.some(isBetween))) return null;
  const [fromKg, toKg] = [totalKg(before, ways), totalKg(last, ways)];
  if (fromKg === null || toKg === null || Math.abs(toKg - fromKg) <= weighParameters.jumpAskedKg.value) return null;
  return { record: last.record, changeKg: toKg - fromKg, since: before.at.date };
}

/** The whole weight out of edge readings [kg]; null where none was read, or none that can be. */
export function totalKg({ frontKg, rearKg }: Pick<Weighing, 'frontKg' | 'rearKg'>, { geometry, share }: Ways): number | null {
  if (frontKg === undefined && rearKg === undefined) return null;
  const weighed = heft({ ...geometry, frontKg, rearKg, frontShareFrac: share.frontShareFrac, frontShareSdFrac: share.sdFrac });
  return weighed.ok ? weighed.value.totalKg : null;
}

function isSame(a: unknown, b: unknown): boolean {
  return JSON.stringify(a) === JSON.stringify(b);
}
