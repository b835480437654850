import { useEffect, useState } from 'react';
import { report } from '../app/session.ts';
import { words } from '../app/words.ts';
import { askPersistenceOnce, type Persistence } from '../keep/persistence.ts';

/** The round is closed: the browser is asked once to keep the journal, and its answer shown. */
export function RoundDone() {
  const { round, keep } = words;
  const [answer, setAnswer] = useState<Persistence | null>(null);
  useEffect(() => {
    askPersistenceOnce().then(setAnswer).catch(report);
  }, []);
  return (
    <div className="round-done">
      <p>
        <b>{round.allDone}</b>
      </p>
      {answer === null ? null : (
        <p className="note">
          {keep.persistTitle} {keep.persist[answer]}
        </p>
      )}
    </div>
  );
}
