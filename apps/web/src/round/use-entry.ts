import type { Holding } from '@winterheft/core';
import type { Units } from '@winterheft/words';
import { useState } from 'react';
import { drafts } from '../app/session.ts';
import { useDraft } from '../ui/use-draft.ts';
import { type Action, type Entry, entryAfter, entryOf, isBegun, NEW_ENTRY, undone } from '../weighing/entry.ts';
import { readingsOf } from '../weighing/records.ts';
import { draftKey, isSent } from './use-round.ts';

/** An entry left this long ago is offered and not gone on with by itself [ms]. */
export const OFFERED_AFTER_MS = 12 * 3_600_000;

export interface EntryState {
  readonly entry: Entry;
  /** Something older than half a day lies here: the keeper says whether to go on with it. */
  readonly offered: { readonly entry: Entry; readonly atMs: number } | null;
  /** It came back from the disk and nothing has been done to it since. */
  readonly cameBack: boolean;
  readonly act: (action: Action) => void;
  /** One step back; false where this hive has nothing to take back. */
  readonly undo: () => boolean;
  readonly takeOffered: (goOn: boolean) => void;
}

/** The fields of one hive, on disk with every key. */
export function useEntry(hive: string, holding: Holding, units: Units): EntryState {
  const key = draftKey(hive);
  const [entry, setEntry] = useDraft<Entry>(key, NEW_ENTRY, (stored) =>
    isRecorded(stored, { hive, holding, units }) ? null : entryOf(stored),
  );
  const [atMs, setAtMs] = useState(() => drafts.get(key)?.atMs ?? null);
  const isOld = atMs !== null && isBegun(entry) && Date.now() - atMs > OFFERED_AFTER_MS;
  const set = (next: Entry) => {
    setAtMs(null);
    setEntry(next);
  };
  return {
    entry: isOld ? NEW_ENTRY : entry,
    offered: isOld && atMs !== null ? { entry, atMs } : null,
    cameBack: atMs !== null && !isOld && isBegun(entry),
    act: (action) => {
      const next = entryAfter(entry, action);
      if (next !== entry) set(next);
    },
    undo: () => {
      const before = undone(entry);
      if (before === null) return false;
      set(before);
      return true;
    },
    takeOffered: (goOn) => {
      const { past: _past, ...fields } = entry;
      set(goOn ? entry : { ...NEW_ENTRY, past: [{ stride: 'other', fields }] });
    },
  };
}

/** The page died after the record was on disk and before the draft was gone. */
function isRecorded(stored: unknown, { hive, holding, units }: { hive: string; holding: Holding; units: Units }): boolean {
  const entry = isSent(stored) ? entryOf(stored) : null;
  const last = holding.hives.get(hive)?.weighings.at(-1);
  if (entry === null || last === undefined) return false;
  const { frontKg, rearKg, word } = readingsOf(entry, units);
  return frontKg === last.frontKg && rearKg === last.rearKg && word === last.word;
}
