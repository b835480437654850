import type { Holding } from '../holding/index.ts';
import type { ProvisionAnswer } from '../provision/index.ts';
import type { ColonyOutlook, Task } from './types.ts';

/** What is to be done, in the order in which it has to be, each with the last day on which it does its work. */
export function tasksOf(
  outlooks: readonly ColonyOutlook[],
  of: { provision: ProvisionAnswer | null; lastFeeding: string | null; holding: Holding },
): Task[] {
  const { provision, lastFeeding } = of;
  const tasks: Task[] = [];
  const add = (code: Task['code'], colonies: readonly string[], by: string | null = null) => {
    if (colonies.length > 0) tasks.push({ code, colonies: [...new Set(colonies)], by });
  };
  const noted = (code: string) => outlooks.filter((line) => line.notes.some((note) => note.code === code)).map((line) => line.colony);
  add('weigh', noted('not-weighed'));
  add('weigh-empty-hive', noted('spare-on-weight-alone'));
  for (const line of outlooks) {
    const again = line.notes.find((note) => note.code === 'provisional');
    if (again?.code === 'provisional') add('weigh-again', [line.colony], again.weighAgainOn);
  }
  if (provision === null) return tasks;
  add(
    'look',
    provision.looks.map((look) => look.colony),
    lastFeeding,
  );
  add(
    'swap',
    provision.moves.map((move) => move.to),
  );
  add(
    'feed-syrup',
    provision.syrup.map((gift) => gift.to),
    lastFeeding,
  );
  add(
    'unite',
    provision.unite.map((union) => union.from),
    lastFeeding,
  );
  add(
    'feed-candy',
    provision.candy.map((gift) => gift.to),
  );
  return tasks;
}
