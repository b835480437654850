import type { Holding } from '../holding/index.ts';
import { fanOf, makeRun, type StoresFan } from '../winter/index.ts';
import { colonyLine } from './colony-line.ts';
import { doubtOf } from './evidence.ts';
import type { PreparedPlan } from './prepare.ts';
import type { ColonyOutlook } from './types.ts';

export interface ColonyDetail {
  /** With the shares of doubt. */
  readonly line: ColonyOutlook;
  /** Course of the stores; null where nothing is known of them. */
  readonly fan: StoresFan | null;
}

/** One colony looked at closely: the shares of its doubt, which take three runs of the model, and the course of its stores. */
export function colonyDetail(prepared: PreparedPlan, of: { holding: Holding; colony: string }): ColonyDetail | null {
  const ready = prepared.colonies.find(({ evidence }) => evidence.colony.id === of.colony);
  if (ready === undefined) return null;
  const line = colonyLine(ready, { plan: prepared, holding: of.holding, run: makeRun(ready.prepared.season) });
  const fan = line.hasKg === null ? null : fanOf(ready.prepared, { kg: line.hasKg, doubt: doubtOf(ready.evidence) });
  return { line, fan };
}
