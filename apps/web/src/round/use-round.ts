import { epochDayOf, type Holding } from '@winterheft/core';
import type { Units } from '@winterheft/words';
import { useEffect, useMemo, useRef, useState } from 'react';
import { append, drafts, report, store, strike } from '../app/session.ts';
import { planDay } from '../app/today.ts';
import { coreWords } from '../app/words.ts';
import type { NewRecord } from '../store/journal-store.ts';
import { useDraft } from '../ui/use-draft.ts';
import { type Entry, entryOf, finished } from '../weighing/entry.ts';
import { movedRecords, recordsOfEntry } from '../weighing/records.ts';
import {
  begunEntries,
  draftKey,
  forgetRecorded,
  NEW_TRAIL,
  type SentEntry,
  type Step,
  TRAIL,
  type Trail,
  trailOf,
  withStep,
} from '../weighing/trail.ts';
import { nextHive, openingHive, type WalkHive, type WalkYard, walkOf } from '../weighing/walk.ts';

export interface Round {
  readonly walk: readonly WalkYard[];
  readonly current: WalkHive | null;
  readonly next: WalkHive | null;
  /** Changes whenever the fields of a hive have to be read afresh. */
  readonly turn: number;
  /** Why the records of the hive on the screen were refused. */
  readonly refused: string | null;
  readonly canGoBack: boolean;
  readonly goTo: (hive: string) => void;
  /** Done with the hive: its records are written, and the next one comes; without any it is passed over. */
  readonly close: (entry: Entry) => void;
  readonly goBack: () => void;
  /** What was typed or weighed at the hive on the screen belongs to another one: it moves there, and so does the round. */
  readonly moveTo: (hive: string) => void;
}

/** The walk through the hives: which one is open, closing it with its records, and going back. */
export function useRound(holding: Holding, units: Units, asked: string | undefined): Round {
  const [trail, setTrail] = useDraft<Trail>(TRAIL, NEW_TRAIL, trailOf);
  const latest = useRef(trail);
  const [turn, setTurn] = useState(0);
  const [refused, setRefused] = useState<{ readonly hive: string; readonly says: string } | null>(null);
  /** Records on their way to the disk: what comes after waits for them. */
  const pending = useRef<Promise<unknown>>(Promise.resolve());
  const begun = begunEntries({ holding, units })
    .map(({ hive }) => hive)
    .sort()
    .join(' ');
  const today = epochDayOf(planDay()) ?? 0;
  const walk = useMemo(() => walkOf(holding, today, new Set(begun.split(' '))), [holding, today, begun]);
  const current = openingHive(walk, asked, trail.hive);
  const next = current === null ? null : nextHive(walk, current.hive);
  useEffect(() => {
    if (store.trouble === null) forgetRecorded({ holding, units });
  }, [holding, units]);

  const change = (trail: Trail) => {
    latest.current = trail;
    setTrail(trail);
  };
  const goTo = (hive: string) => {
    change({ ...latest.current, hive });
    setTurn((n) => n + 1);
  };
  const push = (step: Step) => change(withStep(latest.current, step));
  const after = (run: () => Promise<void> | void) => {
    pending.current = pending.current.then(run).catch(report);
  };
  const writeEntry = async (hive: string, entry: Entry, sent: SentEntry, records: readonly NewRecord[]) => {
    const key = draftKey(hive);
    const written = await append(records);
    if (!written.ok) {
      void drafts.set(key, entry);
      setRefused({ hive, says: coreWords.faultSentence(written.error) });
      goTo(hive);
      return;
    }
    if (store.trouble === null && drafts.get(key)?.value === sent) await drafts.clear(key);
    push({ hive, fields: { [hive]: finished(entry) }, records: written.value });
  };
  const takeBack = async () => {
    const { steps } = latest.current;
    const last = steps.at(-1);
    if (last === undefined) return;
    for (const [hive, entry] of Object.entries(last.fields)) {
      if (entry === null) void drafts.clear(draftKey(hive));
      else void drafts.set(draftKey(hive), entry);
    }
    change({ ...latest.current, steps: steps.slice(0, -1) });
    goTo(last.hive);
    if (last.records.length > 0) await strike(last.records);
  };
  const moveRecords = async (from: WalkHive, to: string) => {
    const [source, target] = [holding.hives.get(from.hive), holding.hives.get(to)];
    if (source === undefined || target === undefined) return;
    const written = await append(movedRecords(holding, source, target));
    if (written.ok) push({ hive: from.hive, fields: {}, records: written.value });
    else setRefused({ hive: to, says: coreWords.faultSentence(written.error) });
  };
  return {
    walk,
    current,
    next,
    turn,
    refused: refused !== null && refused.hive === current?.hive ? refused.says : null,
    canGoBack: trail.steps.length > 0,
    goTo: (hive) => {
      if (current !== null && hive !== current.hive) after(() => push({ hive: current.hive, fields: {}, records: [] }));
      goTo(hive);
    },
    close: (entry) => {
      const hive = current === null ? undefined : holding.hives.get(current.hive);
      if (hive === undefined) return;
      const records = recordsOfEntry(entry, { hive, holding, units });
      setRefused(null);
      if (records.length === 0) after(() => push({ hive: hive.id, fields: {}, records: [] }));
      else {
        // The draft is marked as sent at once, the records follow those of the hive before.
        const sent: SentEntry = { ...entry, sent: true };
        void drafts.set(draftKey(hive.id), sent);
        after(() => writeEntry(hive.id, entry, sent, records));
      }
      goTo((next ?? current)?.hive ?? hive.id);
    },
    goBack: () => after(takeBack),
    moveTo: (hive) => {
      if (current === null || hive === current.hive) return;
      setRefused(null);
      const entry = entryOf(drafts.get(draftKey(current.hive))?.value);
      if (current.stop === 'begun' && entry !== null) {
        void drafts.set(draftKey(hive), entry);
        void drafts.clear(draftKey(current.hive));
        after(() => push({ hive: current.hive, fields: { [current.hive]: entry, [hive]: null }, records: [] }));
      } else after(() => moveRecords(current, hive));
      goTo(hive);
    },
  };
}
