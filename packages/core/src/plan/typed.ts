import type { Fact, Hive, Holding, Weighing } from '../holding/index.ts';
import type { Bodies } from '../journal/index.ts';
import { type BadInput, bad, good, type Result } from '../result/index.ts';
import { grossRangeOf } from '../stores/index.ts';
import { type KgRange, plausibleEdgeRange, plausibleGrossRange, tenfoldCandidatesKg } from '../weigh/index.ts';
import type { PreparedColony } from '../winter/index.ts';
import { colonyLine } from './colony-line.ts';
import { evidenceOf } from './evidence.ts';
import { waysOf } from './gross.ts';
import { type OpenPlan, readyColony } from './prepare.ts';
import type { ColonyOutlook } from './types.ts';

/** What is being entered for one hive, before it is a record. */
export interface TypedEntry {
  readonly frontKg?: number | undefined;
  readonly rearKg?: number | undefined;
  readonly word?: 'heavy' | 'fair' | 'light' | undefined;
  readonly stepKg?: number | undefined;
  readonly look?: Omit<Bodies['look'], 'colony'> | undefined;
}

/** An edge reading that no hive of this build gives, and the tenfold figures that one would. */
export interface RefusedReading {
  readonly edge: 'front' | 'rear';
  readonly readingKg: number;
  readonly range: KgRange;
  readonly insteadKg: readonly number[];
}

export interface EntryJudgement {
  /** The colony's line with the entry in it; the entry's refused readings are left out of it. */
  readonly line: ColonyOutlook;
  readonly ranges: { readonly front: KgRange; readonly rear: KgRange };
  readonly refused: readonly RefusedReading[];
  /** Why the two readings together cannot be. */
  readonly fault: BadInput | null;
  /** The curve it was judged by, to be kept for the next digit. */
  readonly curve: readonly [string, PreparedColony];
}

/**
 * The line of one colony as it would be with what is being typed: nothing is recorded, no other colony is touched.
 *
 * Fast enough for every digit while the bees stay as they were; an entry of bees runs the model once for this colony.
 *
 * errors   BadInput: no such hive, no living colony in it
 */
export function judgeEntry(
  prepared: Omit<OpenPlan, 'evidence'>,
  of: { holding: Holding; hive: string; entry: TypedEntry },
): Result<EntryJudgement> {
  const { holding, entry } = of;
  const hive = holding.hives.get(of.hive);
  const colonyId = hive?.colonies.at(-1);
  const colony = colonyId === undefined ? undefined : holding.colonies.get(colonyId);
  if (hive === undefined || colony === undefined) return bad({ kind: 'missing', field: 'hive (with a living colony)' });
  const build = evidenceOf(colony, { hive, holding, ways: prepared.ways, today: prepared.today }).build;
  const range = grossRangeOf(build);
  const gross = range.ok ? range.value : plausibleGrossRange();
  const ranges = {
    front: plausibleEdgeRange('front', prepared.ways.geometry, gross),
    rear: plausibleEdgeRange('rear', prepared.ways.geometry, gross),
  };
  const refused = (['front', 'rear'] as const).flatMap((edge) => {
    const readingKg = edge === 'front' ? entry.frontKg : entry.rearKg;
    if (readingKg === undefined || (readingKg >= ranges[edge].lowKg && readingKg <= ranges[edge].highKg)) return [];
    return [{ edge, readingKg, range: ranges[edge], insteadKg: tenfoldCandidatesKg(readingKg, ranges[edge]) }];
  });
  const kept = {
    ...entry,
    ...(refused.some(({ edge }) => edge === 'front') ? { frontKg: undefined } : {}),
    ...(refused.some(({ edge }) => edge === 'rear') ? { rearKg: undefined } : {}),
  };
  const entered = withEntry(holding, { hive, colony: colony.id, entry: kept, today: prepared.today });
  const ways = waysOf(entered);
  const plan = { ...prepared, ways };
  const evidence = evidenceOf(entered.colonies.get(colony.id)!, {
    hive: entered.hives.get(hive.id)!,
    holding: entered,
    ways,
    today: prepared.today,
  });
  const ready = readyColony(plan, evidence);
  const line = colonyLine(ready.colony, { plan, holding: entered, run: null });
  return good({ line, ranges, refused, fault: evidence.refused[0] ?? null, curve: [ready.key, ready.colony.prepared] });
}

/** The holding as it would be with the entry recorded on the plan's day, after everything else. */
function withEntry(holding: Holding, of: { hive: Hive; colony: string; entry: TypedEntry; today: number }): Holding {
  const { hive, entry, today } = of;
  const happening = { record: 'typed', at: { date: '' }, day: today, minute: Number.POSITIVE_INFINITY };
  const { frontKg, rearKg, word, stepKg } = entry;
  const weighed = frontKg !== undefined || rearKg !== undefined || word !== undefined;
  const weighing: Weighing = {
    ...happening,
    ...(frontKg === undefined ? {} : { frontKg }),
    ...(rearKg === undefined ? {} : { rearKg }),
    ...(word === undefined ? {} : { word }),
    ...(stepKg === undefined ? {} : { stepKg }),
    colonies: hive.colonies,
    parts: hive.builds.at(-1)?.parts ?? null,
    top: hive.top,
  };
  const hives = weighed ? new Map(holding.hives).set(hive.id, { ...hive, weighings: [...hive.weighings, weighing] }) : holding.hives;
  if (entry.look === undefined) return { ...holding, hives };
  const colony = holding.colonies.get(of.colony)!;
  const look: Fact<'look'> = { ...happening, ...entry.look, colony: of.colony };
  const signs = look.brood === 'signs';
  const colonies = new Map(holding.colonies).set(of.colony, {
    ...colony,
    looks: [...colony.looks, look],
    ...(signs ? { flag: 'signs' as const, cleanLook: null } : look.brood === 'clean' ? { flag: null, cleanLook: happening } : {}),
  });
  return { ...holding, hives, colonies };
}
