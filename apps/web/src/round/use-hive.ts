import { type Hive, type Holding, plausibleEdgeRange, syrup, type TypedEntry, type WeighingWays } from '@winterheft/core';
import type { Units } from '@winterheft/words';
import { useState } from 'react';
import { planDay } from '../app/today.ts';
import { useKnownDates } from '../plan/use-plan.ts';
import { type Advice, adviceOf } from '../weighing/advice.ts';
import { type Basis, basisOf } from '../weighing/basis.ts';
import { type BigKey, bigKeyOf, isSettled, type Question, questionOf, type Spans } from '../weighing/check.ts';
import { type Edge, isBegun } from '../weighing/entry.ts';
import { type HiveFacts, hiveFacts } from '../weighing/hive-facts.ts';
import { lookOf, type Readings, readingsOf, scaleOf } from '../weighing/records.ts';
import { looksSwapped } from '../weighing/suspicion.ts';
import { type Judged, useJudgement } from '../weighing/use-judgement.ts';
import type { WalkHive } from '../weighing/walk.ts';
import { type EntryState, useEntry } from './use-entry.ts';

export type Pane = 'keys' | 'seen' | 'word';

export interface HiveState extends EntryState {
  readonly hive: Hive;
  readonly facts: HiveFacts;
  readonly judged: Judged | null;
  /** What each edge of this hive can read. */
  readonly spans: Spans;
  /** The answer on the screen is for what stands in the fields now. */
  readonly isAnswered: boolean;
  readonly basis: Basis;
  /** The readings the answer rests on: those typed, or where none are, those recorded last. */
  readonly readings: Readings;
  readonly advice: Advice | null;
  readonly question: Question | null;
  readonly swapped: boolean;
  readonly begun: boolean;
  readonly bigKey: BigKey;
  /** Asks about the edge that is being left, where its figure cannot stand; true where there is nothing to ask. */
  readonly leave: (edge: Edge) => boolean;
}

interface Of {
  readonly here: WalkHive;
  readonly holding: Holding;
  readonly records: number;
  readonly ways: WeighingWays;
  readonly units: Units;
  readonly pane: Pane;
}

/** Sugar for one kilogram of stores at the lowest yield, as thick autumn syrup [kg]. */
function sugarPerStores(): number {
  const made = syrup({ ratio: '2:1', basis: 'mass', sugarKg: 1 });
  if (!made.ok) throw new Error(`sugarPerStores: ${made.error.kind}`);
  return 1 / made.value.storesKg.low;
}

/** Everything one hive of the round shows and can do, from its fields and from the answer to them. */
export function useHive({ here, holding, records, ways, units, pane }: Of): HiveState {
  const hive = holding.hives.get(here.hive) as Hive;
  const facts = hiveFacts(hive);
  const state = useEntry(here.hive, holding, units);
  const { entry } = state;
  const [leaving, setLeaving] = useState<{ readonly edge: Edge; readonly text: string } | null>(null);
  const typed = (spans: Spans | null): TypedEntry => {
    const { frontKg, rearKg, word } = readingsOf(entry, units);
    const counts = (edge: Edge) => spans !== null && isSettled(entry, edge, spans, units);
    return {
      ...(frontKg !== undefined && counts('front') ? { frontKg } : {}),
      ...(rearKg !== undefined && counts('rear') ? { rearKg } : {}),
      ...(word === undefined ? {} : { word }),
      stepKg: scaleOf(holding).stepKg,
      look: lookOf(entry.seen, facts) ?? undefined,
    };
  };
  const [spans, setSpans] = useState<Spans>(() => ({ front: plausibleEdgeRange('front'), rear: plausibleEdgeRange('rear') }));
  const input = typed(spans);
  const judged = useJudgement(here.hive, input, records);
  const ranges = judged?.judgement?.ranges;
  if (ranges !== undefined && !isSameSpans(ranges, spans)) setSpans(ranges);

  const begun = isBegun(entry);
  const isWeighed = input.frontKg !== undefined || input.rearKg !== undefined || input.word !== undefined;
  const isAnswered = judged !== null && judged.of === JSON.stringify(input) && (isWeighed || !begun || input.look !== undefined);
  const basis = basisOf(input, holding, here.hive);
  const line = judged?.judgement?.line ?? null;
  const feedUntil = useKnownDates()?.find(({ yard }) => yard === here.yard)?.dates['lastFeedingDay']?.p50 ?? null;
  return {
    ...state,
    hive,
    facts,
    judged,
    spans,
    isAnswered,
    basis,
    readings: isWeighed ? input : (hive.weighings.at(-1) ?? {}),
    advice:
      line === null
        ? null
        : adviceOf({
            line,
            basis,
            cappedFrameKg: facts.cappedFrameKg,
            sugarPerStores: sugarPerStores(),
            feedUntil,
            today: planDay(),
          }),
    question: questionOf(entry, { spans, units, leaving: leaving !== null && entry[leaving.edge] === leaving.text ? leaving.edge : null }),
    swapped: input.frontKg !== undefined && input.rearKg !== undefined && looksSwapped(input.frontKg, input.rearKg, ways),
    begun,
    bigKey: bigKeyOf(entry, { pane, begun }),
    leave: (edge) => {
      setLeaving({ edge, text: entry[edge] });
      return questionOf(entry, { spans, units, leaving: edge }) === null;
    },
  };
}

function isSameSpans(a: Spans, b: Spans): boolean {
  return (['front', 'rear'] as const).every((edge) => a[edge].lowKg === b[edge].lowKg && a[edge].highKg === b[edge].highKg);
}
