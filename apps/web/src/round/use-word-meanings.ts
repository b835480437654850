import type { WeighingWays } from '@winterheft/core';
import type { UnitFormat } from '@winterheft/words';
import { useEffect, useState } from 'react';
import { report } from '../app/session.ts';
import { words } from '../app/words.ts';
import { judgeHive } from '../plan/use-plan.ts';
import type { HeftWord } from '../weighing/entry.ts';
import { figure } from '../weighing/figures.ts';

type Spreads = Readonly<Partial<Record<HeftWord, { readonly kg: number; readonly sdKg: number }>>>;
const WORDS: readonly HeftWord[] = ['heavy', 'fair', 'light'];

/** What each word means in this hive, as a sentence, with the liftings it was learnt from; `hive` null: nobody looks. */
export function useWordMeanings(hive: string | null, units: UnitFormat, ways: WeighingWays): Readonly<Record<HeftWord, string>> {
  const [spreads, setSpreads] = useState<Spreads>({});
  useEffect(() => {
    if (hive === null) return;
    let isCurrent = true;
    const ask = async () => {
      const found: Record<string, { kg: number; sdKg: number }> = {};
      for (const word of WORDS) {
        const answer = await judgeHive(hive, { word });
        const line = answer.ok ? answer.value.line : null;
        if (line !== null && line.hasKg !== null && line.hasSdKg !== null) found[word] = { kg: line.hasKg, sdKg: line.hasSdKg };
      }
      if (isCurrent) setSpreads(found);
    };
    ask().catch(report);
    return () => {
      isCurrent = false;
    };
  }, [hive]);
  const meaning = (word: HeftWord): string => {
    const { round } = words;
    const spread = spreads[word];
    if (spread === undefined) return round.wordUnknown;
    const low = figure(units, Math.max(0, spread.kg - spread.sdKg));
    const high = figure(units, spread.kg + spread.sdKg);
    return round.wordMeans(low, high, units.massUnit, ways.words.filter((one) => one.word === word).length);
  };
  return { heavy: meaning('heavy'), fair: meaning('fair'), light: meaning('light') };
}
