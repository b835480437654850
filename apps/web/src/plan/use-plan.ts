import type { BadInput, ColonyDetail, Plan, Result, TypedEntry } from '@winterheft/core';
import type { Remote } from 'comlink';
import wasmUrl from 'highs/runtime?url';
import { useCallback, useEffect, useSyncExternalStore } from 'react';
import { Held, useHeld } from '../app/held.ts';
import { report, session, useSession } from '../app/session.ts';
import { caughtUp } from './client.ts';
import type { Judgement, Outlooks, Planner, SoFar } from './planner.ts';

export type { Judgement, Outlooks, SoFar } from './planner.ts';

interface Answer<T> {
  readonly value: T | null;
  readonly busy: boolean;
  readonly fault: BadInput | null;
  /** Records of the journal the value was made from. */
  readonly records: number;
}

const nothing = { value: null, busy: false, fault: null, records: -1 } as const;
const outlooksHeld = new Held<Answer<Outlooks>>(nothing);
const planHeld = new Held<Answer<Plan>>(nothing);

/**
 * Asks for something the planner computes, one question at a time: what was asked meanwhile is asked once more at the end.
 * What stood before stays until the new answer is there.
 */
function asker<T>(held: Held<Answer<T>>, ask: () => Promise<Result<T | null>>): () => void {
  let running = false;
  let again = false;
  return () => {
    if (running) {
      again = true;
      return;
    }
    running = true;
    held.set({ busy: true });
    void (async () => {
      do {
        again = false;
        const records = session.get().snapshot?.records ?? 0;
        try {
          const answer = await ask();
          if (!answer.ok) held.set({ value: null, fault: answer.error, records });
          else if (answer.value !== null) held.set({ value: answer.value, fault: null, records });
          else held.set({ records });
        } catch (error) {
          report(error);
        }
      } while (again);
      running = false;
      held.set({ busy: false });
    })();
  };
}

const soFarHeld = new Held<{ readonly now: SoFar | null }>({ now: null });
/** The first look at a long computation, and the next ones [ms]: a look takes its time as well. */
const FIRST_LOOK_MS = 2500;
const NEXT_LOOK_MS = 3000;

const askOutlooks = asker(outlooksHeld, async () => {
  const planner = await caughtUp();
  const first = await lookedAt(planner, outlooksHeld.get().value === null);
  if (!first.ok) return first;
  if (first.value === null || first.value.settled) return { ok: true, value: first.value?.outlooks ?? null };
  outlooksHeld.set({ value: first.value.outlooks, fault: null });
  await planner.settle();
  const all = await lookedAt(planner, false);
  return all.ok ? { ok: true, value: all.value?.outlooks ?? null } : all;
});

/** The outlooks, and while they are being made how far they are. */
async function lookedAt(planner: Remote<Planner>, withLines: boolean): ReturnType<Planner['outlooks']> {
  let done = false;
  const look = async () => {
    const now = await planner.soFar(withLines);
    if (done) return;
    soFarHeld.set({ now });
    timer = setTimeout(look, NEXT_LOOK_MS);
  };
  soFarHeld.set({ now: null });
  let timer = setTimeout(look, FIRST_LOOK_MS);
  try {
    return await planner.outlooks();
  } finally {
    done = true;
    clearTimeout(timer);
  }
}

/** An outlook that takes its time: how far it is. */
export function useSoFar(): SoFar | null {
  const { now } = useHeld(soFarHeld);
  const { busy } = useHeld(outlooksHeld);
  return busy ? now : null;
}

const askPlan = asker(planHeld, async () => (await caughtUp()).solve(typeof WebAssembly === 'undefined' ? null : wasmUrl));

/** Every colony's line, in the order of risk; follows the journal. Shares of doubt are null here: ask for one colony. */
export function useOutlooks(): { readonly outlooks: Outlooks | null; readonly busy: boolean; readonly fault: BadInput | null } {
  const { snapshot } = useSession();
  const { value, busy, fault, records } = useHeld(outlooksHeld);
  useEffect(() => {
    if (snapshot !== null && snapshot.records !== records) askOutlooks();
  }, [snapshot, records]);
  return { outlooks: value, busy, fault };
}

/** Dates of the yards as they were made last; asks for nothing, so that it costs nothing between two digits of a round. */
export function useKnownDates(): Outlooks['dates'] | null {
  return useHeld(outlooksHeld).value?.dates ?? null;
}

/**
 * The whole plan with its provision. Solved when a screen first asks and when `again` is called; not at every record, for a plan in
 * use must not change under the hand.
 */
export function useProvision(): {
  readonly plan: Plan | null;
  readonly busy: boolean;
  readonly fault: BadInput | null;
  readonly again: () => void;
  /** Records were written since it was made. */
  readonly stale: boolean;
} {
  const { snapshot } = useSession();
  const { value, busy, fault, records } = useHeld(planHeld);
  useEffect(() => {
    if (snapshot !== null && planHeld.get().value === null && planHeld.get().fault === null) askPlan();
  }, [snapshot]);
  const again = useCallback(() => askPlan(), []);
  return { plan: value, busy, fault, again, stale: value !== null && snapshot !== null && snapshot.records !== records };
}

const details = new Held<{ readonly byColony: ReadonlyMap<string, { readonly records: number; readonly detail: ColonyDetail | null }> }>({
  byColony: new Map(),
});
const asked = new Map<string, string>();

/** One colony looked at closely: shares of its doubt and the course of its stores. */
export function useColonyDetail(colony: string): { readonly detail: ColonyDetail | null } {
  const { snapshot } = useSession();
  const { byColony } = useSyncExternalStore(details.follow, details.get);
  // Asked again once the outlooks rest on all cases, so that both show the same figures.
  const members = useHeld(outlooksHeld).value?.made.members ?? 0;
  const records = snapshot?.records ?? null;
  useEffect(() => {
    const question = `${records} ${members}`;
    if (records === null || asked.get(colony) === question) return;
    asked.set(colony, question);
    askDetail(colony, records).catch(report);
  }, [colony, records, members]);
  return { detail: byColony.get(colony)?.detail ?? null };
}

async function askDetail(colony: string, records: number): Promise<void> {
  const planner = await caughtUp();
  const answer = await planner.detail(colony);
  if (answer.ok) details.set({ byColony: new Map(details.get().byColony).set(colony, { records, detail: answer.value }) });
}

/** One hive judged with what is being typed; nothing is recorded. */
export async function judgeHive(hive: string, entry: TypedEntry): Promise<Result<Judgement>> {
  return (await caughtUp()).judge(hive, entry);
}

/** Curves of all colonies, in the background, from all cases: to be called when a round opens, so that every digit only subtracts. */
export function prepareAhead(): void {
  askOutlooks();
}
