import type { BadInput, WatchAnswer } from '@winterheft/core';
import { useEffect } from 'react';
import { Held, useHeld } from '../app/held.ts';
import { report, useSession } from '../app/session.ts';
import { caughtUp } from './client.ts';

interface WatchHeld {
  readonly answer: WatchAnswer | null;
  readonly fault: BadInput | null;
}

const held = new Held<WatchHeld>({ answer: null, fault: null });
let asked = '';

/** Whom to see this week; follows the journal. The course on the scale comes for one colony at a time. */
export function useWatch(courseOf: string | null = null): WatchHeld {
  const { snapshot } = useSession();
  const wanted = snapshot === null ? null : `${snapshot.records} ${courseOf ?? ''}`;
  useEffect(() => {
    if (wanted === null || wanted === asked) return;
    asked = wanted;
    ask(wanted, courseOf).catch(report);
  }, [wanted, courseOf]);
  return useHeld(held);
}

async function ask(wanted: string, courseOf: string | null): Promise<void> {
  const answer = await (await caughtUp()).watch(courseOf);
  if (wanted !== asked) return;
  held.set(answer.ok ? { answer: answer.value, fault: null } : { answer: null, fault: answer.error });
}
