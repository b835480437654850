import type { Clash, Holding } from '@winterheft/core';
import { useHolding } from '../app/session.ts';
import { words } from '../app/words.ts';

interface ClashListProps {
  readonly clashes: readonly Clash[];
  /** How many there are in all; the list may hold the first of them only. */
  readonly of: number;
}

/** What does not fit together, one sentence each. */
export function ClashList({ clashes, of }: ClashListProps) {
  const holding = useHolding();
  const { keep } = words;
  return (
    <ul className="keep-list">
      {clashes.map((clash) => (
        <li key={JSON.stringify(clash)}>
          {keep.clash(keep.clashKinds[clash.kind] ?? keep.clashOther, nameIn(clash, holding), clash.records.length)}
        </li>
      ))}
      {of > clashes.length ? <li>{keep.clashMore(of - clashes.length)}</li> : null}
    </ul>
  );
}

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
