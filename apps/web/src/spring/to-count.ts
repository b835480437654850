import { epochDayOf, type Holding, type SpringAnswer } from '@winterheft/core';

/** Colonies not counted yet, in the order of rows and places; those counted since the answer was made are left out. */
export function toCount(holding: Holding, answer: SpringAnswer): readonly { readonly colony: string; readonly label: string }[] {
  const open = new Set(answer.notCounted);
  const first = epochDayOf(`${answer.winter + 1}-03-01`) ?? 0;
  return [...holding.colonies.values()]
    .flatMap((colony) => {
      const hive = holding.hives.get(colony.hive ?? '');
      const label = hive?.label ?? colony.id;
      if (!open.has(label) || colony.ended !== null || colony.springCounts.some(({ day }) => day >= first)) return [];
      const stand = hive?.stand == null ? undefined : holding.stands.get(hive.stand);
      return [{ colony: colony.id, label, at: `${hive?.yard ?? ''} ${stand?.row ?? ''} ${String(stand?.place ?? 0).padStart(5, '0')}` }];
    })
    .sort((a, b) => (a.at < b.at ? -1 : a.at > b.at ? 1 : 0));
}
