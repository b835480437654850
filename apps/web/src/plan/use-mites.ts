import type { BadInput, MitesAnswer } from '@winterheft/core';
import { useEffect } from 'react';
import { Held, useHeld } from '../app/held.ts';
import { report, useSession } from '../app/session.ts';
import { caughtUp } from './client.ts';

interface MitesHeld {
  readonly answer: MitesAnswer | null;
  readonly fault: BadInput | null;
}

const held = new Held<MitesHeld>({ answer: null, fault: null });
let asked = -1;

/** Mites of every yard and colony; follows the journal. What stood before stays until the new answer is there. */
export function useMites(): MitesHeld {
  const { snapshot } = useSession();
  const records = snapshot?.records ?? null;
  useEffect(() => {
    if (records === null || records === asked) return;
    asked = records;
    ask(records).catch(report);
  }, [records]);
  return useHeld(held);
}

async function ask(records: number): Promise<void> {
  const answer = await (await caughtUp()).mites();
  if (records !== asked) return;
  held.set(answer.ok ? { answer: answer.value, fault: null } : { answer: null, fault: answer.error });
}
