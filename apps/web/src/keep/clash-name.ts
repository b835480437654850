import type { Clash, Holding } from '@winterheft/core';

/** What the clash is about, by the label people know it by where it has one. */
export function nameIn(clash: Clash, holding: Pick<Holding, 'hives' | 'colonies'> | null): string {
  if ('label' in clash) return clash.label;
  const hiveName = (hive: string) => holding?.hives.get(hive)?.label ?? hive;
  if ('hive' in clash) return hiveName(clash.hive);
  if ('colony' in clash) {
    const hive = holding?.colonies.get(clash.colony)?.hive;
    return hive == null ? clash.colony : hiveName(hive);
  }
  if ('name' in clash) return clash.name;
  if ('lot' in clash) return clash.lot;
  if ('item' in clash) return clash.item;
  return 'from' in clash ? clash.from : '';
}
