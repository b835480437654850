import type { BadInput, LearnAnswer, SpringAnswer } from '@winterheft/core';
import { useEffect } from 'react';
import { Held, useHeld } from '../app/held.ts';
import { report, useSession } from '../app/session.ts';
import { caughtUp } from './client.ts';

interface SpringHeld {
  readonly answer: { readonly spring: SpringAnswer; readonly learn: LearnAnswer } | null;
  readonly fault: BadInput | null;
}

const held = new Held<SpringHeld>({ answer: null, fault: null });
let asked = -1;

/** The count of spring; follows the journal. */
export function useSpring(): SpringHeld {
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
  const answer = await (await caughtUp()).spring();
  if (records !== asked) return;
  held.set(answer.ok ? { answer: answer.value, fault: null } : { answer: null, fault: answer.error });
}
