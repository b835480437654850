import type { Hive, Holding, WatchLine } from '@winterheft/core';
import type { UnitFormat } from '@winterheft/words';
import { coreWords, words } from '../app/words.ts';
import { shownMass } from './mass.ts';

/** What to do at a hive, in the order of the hands; at most two stand on a row, for the third is never the first. */
export function orderOf({ acts }: WatchLine): string {
  const { orders } = words.watch;
  const last = ['clear-opening', 'read-frost'];
  return [...acts.filter((act) => !last.includes(act)), ...acts.filter((act) => last.includes(act))]
    .slice(0, 2)
    .map((act) => orders[act])
    .join('; ');
}

/** Why, with what it holds: the two weightiest reasons. */
export function reasonOf(line: WatchLine, units: UnitFormat): string {
  const reasons = line.reasons.slice(0, 2).map((reason) => coreWords.watchReason(reason, units));
  const left = line.update === null ? [] : [words.watch.left(shownMass(line.update.leftKg.mean, line.update.leftKg.sd, units))];
  return [...reasons, ...left].join('; ');
}

/** In walking order: the rows of stands, and the places in them. */
export function inWalkOrder(lines: readonly WatchLine[], holding: Holding): readonly WatchLine[] {
  const placeOf = (hive: Hive | undefined): readonly [string, number] => {
    const stand = hive?.stand == null ? undefined : holding.stands.get(hive.stand);
    return [`${hive?.yard ?? ''} ${stand?.row ?? ''}`, stand?.place ?? 0];
  };
  return [...lines].sort((a, b) => {
    const [rowA, placeA] = placeOf(holding.hives.get(a.hive));
    const [rowB, placeB] = placeOf(holding.hives.get(b.hive));
    return rowA < rowB ? -1 : rowA > rowB ? 1 : placeA - placeB || (a.label < b.label ? -1 : 1);
  });
}
