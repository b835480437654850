import { type Bodies, epochDayOf, type Holding, type JournalRecord } from '@winterheft/core';
import { useMemo, useRef, useState } from 'react';
import { append, drafts, report, store, strike } from '../app/session.ts';
import { planDay } from '../app/today.ts';
import { coreWords } from '../app/words.ts';
import type { NewRecord } from '../store/journal-store.ts';
import { useDraft } from '../ui/use-draft.ts';
import { type Entry, entryOf, finished, isBegun } from '../weighing/entry.ts';
import { nextHive, openingHive, type WalkHive, type WalkYard, walkOf } from '../weighing/walk.ts';

const DRAFT = 'round:';
export const draftKey = (hive: string) => DRAFT + hive;

/** A hive that was closed, with what it wrote, so that it can be taken back. */
interface Closed {
  readonly hive: string;
  readonly entry: Entry;
  readonly records: readonly JournalRecord[];
}

/** Where the round stands: kept on this device, so that undo survives closing. */
interface Trail {
  readonly hive: string | null;
  readonly closed: readonly Closed[];
}

/** More hives than a round has. */
const LONGEST_TRAIL = 500;

function trailOf(stored: unknown): Trail | null {
  if (typeof stored !== 'object' || stored === null) return null;
  const { hive, closed } = stored as Record<string, unknown>;
  if (!Array.isArray(closed)) return null;
  const read = closed.flatMap((one: Partial<Closed> | null): Closed[] => {
    const entry = entryOf(one?.entry);
    return entry === null || typeof one?.hive !== 'string' || !Array.isArray(one.records)
      ? []
      : [{ hive: one.hive, entry, records: one.records }];
  });
  return { hive: typeof hive === 'string' ? hive : null, closed: read };
}

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
  readonly close: (entry: Entry, bodies: { readonly weighing: Bodies['weighing'] | null; readonly look: Bodies['look'] | null }) => void;
  readonly goBack: () => void;
}

/** The walk through the hives: which one is open, closing it with its records, and going back. */
export function useRound(holding: Holding, asked: string | undefined): Round {
  const [trail, setTrail] = useDraft<Trail>('round', { hive: null, closed: [] }, trailOf);
  const latest = useRef(trail);
  const [turn, setTurn] = useState(0);
  const [refused, setRefused] = useState<{ readonly hive: string; readonly says: string } | null>(null);
  /** Records on their way to the disk: going back waits for them. */
  const pending = useRef<Promise<unknown>>(Promise.resolve());
  const begun = [...drafts.all()]
    .filter(([key, draft]) => key.startsWith(DRAFT) && isOpen(draft.value))
    .map(([key]) => key.slice(DRAFT.length))
    .sort()
    .join(' ');
  const today = epochDayOf(planDay()) ?? 0;
  const walk = useMemo(() => walkOf(holding, today, new Set(begun.split(' '))), [holding, today, begun]);
  const current = openingHive(walk, asked, trail.hive);
  const next = current === null ? null : nextHive(walk, current.hive);

  const change = (part: Partial<Trail>) => {
    latest.current = { ...latest.current, ...part };
    setTrail(latest.current);
    if (part.hive !== undefined) setTurn((n) => n + 1);
  };
  const write = async (here: WalkHive, entry: Entry, records: readonly NewRecord[], before: Promise<unknown>) => {
    const sent: SentEntry = { ...entry, sent: true };
    void drafts.set(draftKey(here.hive), sent);
    await before;
    const written = await append(records);
    if (!written.ok) {
      void drafts.set(draftKey(here.hive), entry);
      setRefused({ hive: here.hive, says: coreWords.faultSentence(written.error) });
      change({ hive: here.hive });
      return;
    }
    const closed = { hive: here.hive, entry: finished(entry), records: written.value };
    if (store.trouble === null && drafts.get(draftKey(here.hive))?.value === sent) await drafts.clear(draftKey(here.hive));
    change({ closed: [...latest.current.closed, closed].slice(-LONGEST_TRAIL) });
  };
  const takeBack = async () => {
    await pending.current;
    const last = latest.current.closed.at(-1);
    if (last === undefined) return;
    void drafts.set(draftKey(last.hive), last.entry);
    change({ hive: last.hive, closed: latest.current.closed.slice(0, -1) });
    await strike(last.records);
  };
  return {
    walk,
    current,
    next,
    turn,
    refused: refused !== null && refused.hive === current?.hive ? refused.says : null,
    canGoBack: trail.closed.length > 0,
    goTo: (hive) => change({ hive }),
    close: (entry, { weighing, look }) => {
      if (current === null) return;
      const { yard } = current;
      const records: NewRecord[] = [
        ...(weighing === null ? [] : [{ yard, kind: 'weighing' as const, body: weighing }]),
        ...(look === null ? [] : [{ yard, kind: 'look' as const, body: look }]),
      ];
      setRefused(null);
      if (records.length > 0) {
        const before = pending.current;
        // The draft is marked as sent at once, the records follow those of the hive before.
        pending.current = write(current, entry, records, before).catch(report);
      }
      change({ hive: (next ?? current).hive });
    },
    goBack: () => {
      pending.current = takeBack().catch(report);
    },
  };
}

/** An entry whose records are on their way: when the page dies in between, the next opening finds both or only this. */
type SentEntry = Entry & { readonly sent: true };

export function isSent(stored: unknown): stored is SentEntry {
  return typeof stored === 'object' && stored !== null && (stored as { readonly sent?: unknown }).sent === true;
}

function isOpen(stored: unknown): boolean {
  const entry = isSent(stored) ? null : entryOf(stored);
  return entry !== null && isBegun(entry);
}
