import { SEASON_DATES, type SeasonAnswer } from '@winterheft/core';
import { dayMonth, decimals } from '@winterheft/words';
import type { View } from '../command.ts';
import { facts, paragraph } from './layout.ts';

export function seasonTable(answer: SeasonAnswer, { words }: View): string {
  const w = words.season;
  const day = (iso: string | null) => (iso === null ? w.none : dayMonth(iso));
  return [
    facts([
      [w.date, `${w.early} / ${w.half} / ${w.late}`],
      ...SEASON_DATES.map((name) => {
        const { p10, p50, p90 } = answer[name];
        return [w.names[name], `${day(p10)} / ${day(p50)} / ${day(p90)}`] as const;
      }),
      ...answer.sun.map(({ date, riseUtc, setUtc, dayHours }) => {
        const hours = decimals(dayHours, 1);
        return [
          `${w.sun} ${dayMonth(date)}`,
          riseUtc === null || setUtc === null ? w.dayLength(hours) : w.sunUp(riseUtc, setUtc, hours),
        ] as const;
      }),
    ]),
    ...answer.climate.notes.map((note) => paragraph(words.climateNote(note))),
    ...answer.notes.map((note) => paragraph(w.notes[note])),
  ].join('\n');
}
