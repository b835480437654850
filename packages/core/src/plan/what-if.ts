import type { Holding } from '../holding/index.ts';
import {
  levelPrior,
  type PreparedColony,
  storesErrors,
  WHAT_IF_MEMBERS,
  type WhatIfAnswer,
  type WhatIfChanges,
  type WhatIfRun,
  whatIfJudged,
  whatIfRun,
} from '../winter/index.ts';
import { doubtOf } from './evidence.ts';
import type { PreparedPlan } from './prepare.ts';
import type { ColonyOutlook } from './types.ts';

/** What is asked of a whole outlook. */
export interface WhatIfAsked extends Omit<WhatIfChanges, 'level'> {
  /** False: as if the keeper's own rule and record had not been told. Left out or true: as it is. */
  readonly ownRule?: boolean | undefined;
  /** How many of the members answer; left out: 200, fast enough for a slider. Ask for all of them where it comes to rest. */
  readonly members?: number | undefined;
}

export interface WhatIfLine extends WhatIfAnswer {
  readonly colony: string;
  /** Need with the changes minus need without, on the same members [kg]. */
  readonly needMoreKg: number;
  /** Has minus need with the changes [kg]; null where nothing is known of what it has. */
  readonly aboveNeedKg: number | null;
}

/**
 * Every colony's need and chance with something changed. `lines` are those of the outlook the plan stands with; nothing is recorded.
 *
 * Colonies with the same curve share its run.
 */
export function whatIf(
  prepared: PreparedPlan,
  of: { holding: Holding; lines: readonly ColonyOutlook[] },
  asked: WhatIfAsked,
): WhatIfLine[] {
  const { members = WHAT_IF_MEMBERS, ownRule = true, ...rest } = asked;
  const changes: WhatIfChanges = ownRule ? rest : { ...rest, level: levelPrior() };
  const certaintyFrac = of.holding.settings.certaintyFrac ?? 0.95;
  const lineOf = new Map(of.lines.map((line) => [line.colony, line]));
  const runs = new Map<PreparedColony, { asIs: WhatIfRun; changed: WhatIfRun }>();
  return prepared.colonies.flatMap(({ evidence, prepared: curve }) => {
    const line = lineOf.get(evidence.colony.id);
    if (line === undefined) return [];
    const run = runs.get(curve) ?? { asIs: whatIfRun(curve, members), changed: whatIfRun(curve, members, changes) };
    runs.set(curve, run);
    const errors = storesErrors(doubtOf(evidence), { seed: curve.draw.seed, beesOff: curve.beesOff });
    const setting = { storesKg: line.hasKg, errors, certaintyFrac };
    const asIs = whatIfJudged(run.asIs, setting);
    const changed = whatIfJudged(run.changed, setting);
    return [
      {
        ...changed,
        colony: line.colony,
        needMoreKg: changed.needKg - asIs.needKg,
        aboveNeedKg: line.hasKg === null ? null : line.hasKg - changed.needKg,
      },
    ];
  });
}
