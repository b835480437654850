import type { Holding } from '@winterheft/core';
import { dayInWords } from '../app/today.ts';
import { language, words } from '../app/words.ts';
import { frameOf } from '../walk/frames.ts';
import type { Stop } from '../walk/stop.ts';
import type { WalkStop } from '../walk/walk.ts';

/** Combs that leave a colony only if the look at it is clean. */
export function combsBehind(colony: string | null, stops: readonly Stop[]): number {
  let count = 0;
  for (const stop of stops) {
    if (stop.colony !== colony) continue;
    for (const { from, out, ...combs } of stop.flows) {
      if (out !== undefined) count += out.count;
      if ('colony' in from && !frameOf(combs).isLight) count += combs.count;
    }
  }
  return count;
}

export function lastLookOf(colony: string | null, holding: Holding): string | null {
  const look = colony === null ? null : (holding.colonies.get(colony)?.cleanLook ?? null);
  return look === null ? null : dayInWords(look.at.date, language);
}

/** The answer of a look that is done: it was recorded in the same act, so the ids begin alike. */
export function lookSays({ stop, done }: WalkStop, holding: Holding): string {
  const { looked } = words.provision;
  const look = holding.colonies.get(stop.colony ?? '')?.looks.find(({ record }) => record.slice(0, 13) === done?.record.slice(0, 13));
  return looked[look?.brood ?? 'none'];
}
