import { type Copied, fact, markCopied, setFact } from '../app/session.ts';

/** A file that was handed out, of which nobody has seen yet that it is there: the browser does not tell. */
export interface Handed extends Copied {
  readonly name: string;
  readonly way: 'saved' | 'sent';
}

const KEY = 'handed';

export async function lastHanded(): Promise<Handed | null> {
  return ((await fact(KEY)) as Handed | null | undefined) ?? null;
}

export async function keepHanded(handed: Handed | null): Promise<void> {
  await setFact(KEY, handed);
}

/** Somebody has seen the file, or it was read back. */
export async function countAsCopied({ n, date }: Copied): Promise<void> {
  await markCopied({ n, date });
  await keepHanded(null);
}
