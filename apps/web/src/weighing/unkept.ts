import type { Holding } from '@winterheft/core';
import type { Units } from '@winterheft/words';
import { append, drafts, store } from '../app/session.ts';
import { atNow } from '../app/today.ts';
import { coreWords, words } from '../app/words.ts';
import { judgeHive } from '../plan/use-plan.ts';
import { questionOf } from './check.ts';
import { finished, hasSeen } from './entry.ts';
import { recordsOfEntry } from './records.ts';
import { type BegunEntry, begunEntries, draftKey, NEW_TRAIL, TRAIL, trailOf, withStep } from './trail.ts';
import { shownText } from './typing.ts';
import { walkOf } from './walk.ts';

/** Something typed at a hive that is no record, so that no plan knows of it. */
export interface Unkept extends BegunEntry {
  readonly label: string;
}

interface Of {
  readonly holding: Holding;
  readonly units: Units;
}

/** In walking order; hives that are gone or stand empty are passed over. */
export function unkeptEntries(of: Of): readonly Unkept[] {
  const begun = new Map(begunEntries(of).map((one) => [one.hive, one]));
  return walkOf(of.holding, 0, new Set(begun.keys())).flatMap(({ hives }) =>
    hives.flatMap(({ hive, label }) => {
      const one = begun.get(hive);
      return one === undefined ? [] : [{ ...one, label }];
    }),
  );
}

/** Whether the readings can stand as they are: nothing would be asked about them at the hive. */
export async function canBeKept({ hive, entry }: Unkept, units: Units): Promise<boolean> {
  const judged = await judgeHive(hive, {});
  return judged.ok && questionOf(entry, { spans: judged.value.ranges, units, leaving: entry.edge }) === null;
}

/**
 * Writes what was typed as records of the time it was typed, and lets the round take it back.
 *
 * Gives why it was refused as a sentence, or null.
 */
export async function keep({ hive, entry, atMs }: Unkept, { holding, units }: Of): Promise<string | null> {
  const of = holding.hives.get(hive);
  if (of === undefined) return null;
  const written = await append(recordsOfEntry(entry, { hive: of, holding, units, at: atNow(new Date(atMs)) }));
  if (!written.ok) return coreWords.faultSentence(written.error);
  if (store.trouble === null) await drafts.clear(draftKey(hive));
  else void drafts.set(draftKey(hive), { ...entry, sent: true });
  const trail = trailOf(drafts.get(TRAIL)?.value) ?? NEW_TRAIL;
  await drafts.set(TRAIL, withStep(trail, { hive, fields: { [hive]: finished(entry) }, records: written.value }));
  return null;
}

/** `front 51.5, rear 54 lb`, `lifted by hand: fair`, `seen inside`. */
export function typedWords({ entry: { front, rear, word, seen } }: Pick<Unkept, 'entry'>, unit: string, mark: string): string {
  const { round } = words;
  const readings = round.oldDraftHas(shownText(front, mark), shownText(rear, mark));
  return [
    readings === '' ? '' : `${readings} ${unit}`,
    word === null ? '' : round.unkept.word(round.words[word]),
    hasSeen(seen) ? round.unkept.seen : '',
  ]
    .filter(Boolean)
    .join(', ');
}
