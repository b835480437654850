import { fact, setFact } from '../app/session.ts';

export type Persistence = 'granted' | 'refused' | 'unasked' | 'unknown';

/** What the browser has said about keeping the journal, without asking it. */
export async function persistence(): Promise<Persistence> {
  if (typeof navigator.storage?.persisted !== 'function') return 'unknown';
  if (await navigator.storage.persisted()) return 'granted';
  return (await fact('persistence')) === 'refused' ? 'refused' : 'unasked';
}

/** Asks the browser not to clear the journal by itself. */
export async function askPersistence(): Promise<Persistence> {
  if (typeof navigator.storage?.persist !== 'function') return 'unknown';
  const answer: Persistence = (await navigator.storage.persist()) ? 'granted' : 'refused';
  await setFact('persistence', answer);
  return answer;
}

/** To be called when the first round is closed: asks once, and never again by itself. */
export async function askPersistenceOnce(): Promise<Persistence> {
  const known = await persistence();
  return known === 'unasked' ? askPersistence() : known;
}
