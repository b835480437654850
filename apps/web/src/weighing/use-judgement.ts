import type { BadInput, TypedEntry } from '@winterheft/core';
import { useEffect, useRef, useState } from 'react';
import { report } from '../app/session.ts';
import { type Judgement, judgeHive } from '../plan/use-plan.ts';

export interface Judged {
  /** What it was judged on, as text: the answer on the screen belongs to these digits. */
  readonly of: string;
  readonly judgement: Judgement | null;
  readonly fault: BadInput | null;
}

/**
 * One hive judged on what is typed. The computing is done elsewhere; the newest question wins, and an older answer that comes late is dropped.
 *
 * typed     null: nothing to be judged, the last answer stays
 * records   records of the journal, so that the answer follows them
 */
export function useJudgement(hive: string, typed: TypedEntry | null, records: number): Judged | null {
  const [judged, setJudged] = useState<Judged | null>(null);
  const asked = useRef(0);
  const text = typed === null ? null : JSON.stringify(typed);
  // biome-ignore lint/correctness/useExhaustiveDependencies: records is no input of the question but of the answer
  useEffect(() => {
    if (text === null) return;
    const turn = ++asked.current;
    judgeHive(hive, JSON.parse(text) as TypedEntry)
      .then((answer) => {
        if (turn !== asked.current) return;
        setJudged({ of: text, judgement: answer.ok ? answer.value : null, fault: answer.ok ? null : answer.error });
      })
      .catch(report);
  }, [hive, text, records]);
  return judged;
}
