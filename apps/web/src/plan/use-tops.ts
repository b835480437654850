import type { BadInput } from '@winterheft/core';
import { useEffect } from 'react';
import { Held, useHeld } from '../app/held.ts';
import { report, useSession } from '../app/session.ts';
import { caughtUp } from './client.ts';
import type { TopsOutlook } from './tops.ts';

export type { TopsOutlook } from './tops.ts';

interface Tops {
  readonly tops: TopsOutlook | null;
  readonly busy: boolean;
  readonly fault: BadInput | null;
  readonly records: number;
}

const held = new Held<Tops>({ tops: null, busy: false, fault: null, records: -1 });

async function ask(records: number): Promise<void> {
  held.set({ busy: true, records });
  try {
    const answer = await (await caughtUp()).tops();
    held.set(answer.ok ? { tops: answer.value, fault: null } : { tops: null, fault: answer.error });
  } catch (error) {
    report(error);
  } finally {
    held.set({ busy: false });
  }
}

/** The shipped tops over the winter of the first yard; run again when the journal has grown. What stood before stays meanwhile. */
export function useTops(): Omit<Tops, 'records'> {
  const { snapshot } = useSession();
  const { tops, busy, fault, records } = useHeld(held);
  useEffect(() => {
    if (snapshot !== null && !busy && snapshot.records !== records) void ask(snapshot.records);
  }, [snapshot, busy, records]);
  return { tops, busy, fault };
}
