import type { StoresAnswer } from '@winterheft/core';
import { dayMonth, decimals } from '@winterheft/words';
import type { View } from '../command.ts';
import { facts, paragraph } from './layout.ts';

export function storesTable(answer: StoresAnswer, { words, units }: View): string {
  const w = words.stores;
  const next = answer.measureNext;
  const errors = (Object.keys(w.parts) as (keyof StoresAnswer['errorParts'])[])
    .map((part) => ({ part, kg: answer.errorParts[part] }))
    .filter(({ kg }) => kg > 0.005)
    .sort((a, b) => b.kg - a.kg);
  return [
    facts([
      [w.stores, units.mass(answer.storesKg, answer.sdKg)],
      ...(answer.byWeight === null ? [] : [[w.byWeight, units.mass(answer.byWeight.kg, answer.byWeight.sdKg)] as const]),
      ...(answer.byCount === null ? [] : [[w.byCount, units.mass(answer.byCount.kg, answer.byCount.sdKg)] as const]),
      [
        w.empty,
        `${units.mass(answer.tare.massKg, Math.hypot(answer.tare.sharedSdKg, answer.tare.ownSdKg))} (${w.basis[answer.tare.basis]})`,
      ],
      [w.bees, w.beesOf(decimals(answer.bees.count, 0), units.mass(answer.bees.massKg, answer.bees.sdKg))],
      ...(answer.contact === null ? [] : [[w.contact, units.mass(answer.contact.kg, answer.contact.sdKg)] as const]),
      [w.error, errors.map(({ part, kg }) => `${w.parts[part]} ±${decimals(units.massOf(kg), 1)}`).join(', ')],
      [
        w.measureNext,
        next === null
          ? w.nothing
          : w.worth(
              `${words.measurements[next.what]}${next.afterDays > 0 ? `, ${w.afterDays(next.afterDays)}` : ''}`,
              `±${decimals(units.massOf(next.sdKg), 1)} ${units.massUnit}`,
            ),
      ],
      ...(answer.provisional === null ? [] : [[w.provisional, w.weighAgain(dayMonth(answer.provisional.weighAgainOn))] as const]),
    ]),
    ...answer.notes.map((note) => paragraph(w.notes[note])),
    ...(answer.weightOnly ? [paragraph(w.weightOnly)] : []),
  ].join('\n');
}
