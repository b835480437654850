import type { Holding } from '@winterheft/core';
import { type Units, unitFormat } from '@winterheft/words';
import { drafts } from '../app/session.ts';
import { entryOf, NEW_ENTRY } from '../weighing/entry.ts';
import { draftKey } from '../weighing/trail.ts';
import { markOf, textOfKg } from '../weighing/typing.ts';
import { typedWords } from '../weighing/unkept.ts';
import type { WalkHive } from '../weighing/walk.ts';

interface Of {
  readonly holding: Holding;
  readonly units: Units;
  readonly language: string;
}

/** What was typed or weighed in this round and can be said to belong to another hive, in words; null where there is nothing. */
export function movableWords(here: WalkHive, { holding, units, language }: Of): string | null {
  const last = holding.hives.get(here.hive)?.weighings.at(-1);
  const text = (kg: number | undefined) => (kg === undefined ? '' : textOfKg(kg, units));
  const entry =
    here.stop === 'begun'
      ? entryOf(drafts.get(draftKey(here.hive))?.value)
      : here.stop === 'done' && last !== undefined
        ? { ...NEW_ENTRY, front: text(last.frontKg), rear: text(last.rearKg), word: last.word ?? null }
        : null;
  return entry === null ? null : typedWords({ entry }, unitFormat(units).massUnit, markOf(language));
}
