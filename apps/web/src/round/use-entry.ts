import type { Holding } from '@winterheft/core';
import type { Units } from '@winterheft/words';
import { useState } from 'react';
import { drafts } from '../app/session.ts';
import { useDraft } from '../ui/use-draft.ts';
import { type Action, type Entry, entryAfter, entryOf, isBegun, NEW_ENTRY, undone } from '../weighing/entry.ts';
import { draftKey, isRecorded } from '../weighing/trail.ts';

/** An entry left this long ago is offered and not gone on with by itself [ms]. */
const OFFERED_AFTER_MS = 12 * 3_600_000;

export interface EntryState {
  readonly entry: Entry;
  /** Something older than half a day lies here: the keeper says whether to go on with it. */
  readonly offered: { readonly entry: Entry; readonly atMs: number } | null;
  /** It was typed before the page was loaded, and nothing has been done to it since. */
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
    isRecorded(stored, hive, { holding, units }) ? null : entryOf(stored),
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
    cameBack: atMs !== null && atMs < performance.timeOrigin && !isOld && isBegun(entry),
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
