import type { JournalRecord } from '@winterheft/core';
import { useState } from 'react';
import { append, report, strike } from '../app/session.ts';
import { coreWords, words } from '../app/words.ts';
import type { NewRecord } from '../store/journal-store.ts';

interface Told {
  readonly says: string;
  readonly records: readonly JournalRecord[];
  readonly refused: boolean;
}

export interface Writing {
  readonly told: Told | null;
  /** Writes records and says so; gives true where they were taken. */
  readonly write: (records: readonly NewRecord[], says: string) => Promise<boolean>;
  readonly undo: () => void;
}

/** Records written at once, with a line that takes them back. */
export function useWriting(): Writing {
  const [told, setTold] = useState<Told | null>(null);
  const write = async (records: readonly NewRecord[], says: string) => {
    const written = await append(records);
    setTold(
      written.ok
        ? { says, records: written.value, refused: false }
        : { says: coreWords.faultSentence(written.error), records: [], refused: true },
    );
    return written.ok;
  };
  const undo = () => {
    if (told === null) return;
    strike(told.records)
      .then(() => setTold({ says: words.yard.undone, records: [], refused: false }))
      .catch(report);
  };
  return { told, write, undo };
}

/** What was just written, with its undo; always in the same place. */
export function WrittenLine({ told, undo }: Pick<Writing, 'told' | 'undo'>) {
  return (
    <div className="written" role="status">
      {told === null ? null : (
        <>
          <p className={told.refused ? 'error' : undefined}>{told.says}</p>
          {told.records.length === 0 ? null : (
            <button type="button" className="key" onClick={undo}>
              {words.yard.undo}
            </button>
          )}
        </>
      )}
    </div>
  );
}
