import type { Hive, Holding, Stand } from '@winterheft/core';

const natural = new Intl.Collator('en', { numeric: true });

/** Hives of a yard that stand, in walking order: rows by name, places along the row; those without a stand last, by label. */
export function hivesInOrder(holding: Pick<Holding, 'hives' | 'stands'>, yard: string): readonly Hive[] {
  const standOf = (hive: Hive): Stand | undefined => (hive.stand === null ? undefined : holding.stands.get(hive.stand));
  return [...holding.hives.values()]
    .filter((hive) => hive.yard === yard && !hive.gone)
    .sort((a, b) => {
      const [left, right] = [standOf(a), standOf(b)];
      if ((left === undefined) !== (right === undefined)) return left === undefined ? 1 : -1;
      const byStand = left && right ? natural.compare(left.row, right.row) || left.place - right.place : 0;
      return byStand || natural.compare(labelOf(a), labelOf(b));
    });
}

/** What stands on it, or its own name where no record has given it one. */
export function labelOf(hive: Pick<Hive, 'id' | 'label'>): string {
  return hive.label ?? hive.id;
}
