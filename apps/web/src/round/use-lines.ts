import type { ColonyOutlook } from '@winterheft/core';
import { useMemo } from 'react';
import { useOutlooks } from '../plan/use-plan.ts';

/** Lines of all colonies by colony. Only where all are shown: each record makes them anew. */
export function useLines(): ReadonlyMap<string, ColonyOutlook> {
  const { outlooks } = useOutlooks();
  return useMemo(() => new Map((outlooks?.lines ?? []).map((line) => [line.colony, line])), [outlooks]);
}
