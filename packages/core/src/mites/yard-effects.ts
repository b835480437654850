import type { Colony } from '../holding/index.ts';
import { isoDateOf } from '../units/index.ts';
import type { TreatmentEffect } from './answer-types.ts';
import { type WashGroup, washGroups } from './counts.ts';
import { treatmentEffect } from './efficacy.ts';
import { rowOfActive } from './treatments.ts';

interface Pair {
  readonly colony: string;
  readonly before: WashGroup;
  readonly after: WashGroup;
}

/** What each active ingredient did in a yard: the colonies washed before and after it added up, for one colony's counts say too little. */
export function yardEffects(colonies: readonly Colony[], today: number): TreatmentEffect[] {
  const pairs = new Map<string, Pair[]>();
  for (const colony of colonies) {
    const { groups } = washGroups(colony, today);
    for (const one of colony.treatments) {
      if (one.in === null || one.out === null) continue;
      const [from, to] = [one.in.day, one.out.day];
      const before = groups.filter((group) => group.day <= from).at(-1);
      const after = groups.find((group) => group.day >= to);
      const mixed = colony.treatments.some(
        (two) =>
          two !== one &&
          two.in !== null &&
          after !== undefined &&
          two.in.day < after.day &&
          (two.out?.day ?? today) > (before?.day ?? from),
      );
      if (before === undefined || after === undefined || mixed) continue;
      pairs.set(one.active, [...(pairs.get(one.active) ?? []), { colony: colony.id, before, after }]);
    }
  }
  return [...pairs].flatMap(([active, of]) => {
    const before = summed(
      of.map((pair) => pair.before),
      Math.min,
    );
    const after = summed(
      of.map((pair) => pair.after),
      Math.max,
    );
    const nature = rowOfActive(active)?.nature === 'synthetic' ? 'synthetic' : 'organic';
    const answer = treatmentEffect({ before, after, nature });
    return answer.ok ? [{ ...answer.value, active, colonies: of.map(({ colony }) => colony), before, after }] : [];
  });
}

function summed(groups: readonly WashGroup[], pick: (...days: number[]) => number) {
  const sum = (of: (group: WashGroup) => number) => groups.reduce((total, group) => total + of(group), 0);
  return {
    mites: sum((g) => g.mites),
    bees: Math.round(sum((g) => g.countedBees)),
    date: isoDateOf(pick(...groups.map(({ day }) => day))),
  };
}
