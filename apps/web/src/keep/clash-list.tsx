import type { Clash } from '@winterheft/core';
import { useHolding } from '../app/session.ts';
import { words } from '../app/words.ts';
import { nameIn } from './clash-name.ts';

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
