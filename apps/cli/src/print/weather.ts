import type { PlaceLine, WeatherAnswer } from '@winterheft/core';
import { dayMonth, decimals, monthName, type Words } from '@winterheft/words';
import type { View } from '../command.ts';
import { facts, paragraph, table } from './layout.ts';

/** So many refused lines are named. */
const SHOWN = 10;

function fileFacts({ file, winters }: WeatherAnswer, w: Words['weather']): (readonly [string, string])[] {
  if (file === null) return [];
  return [
    [w.span, `${file.from}, ${file.to}`],
    [w.file, `${file.layout}, ${w.unit[file.unit]}${file.unitByValues ? ` (${w.byValues})` : ''}`],
    [w.winters, String(winters)],
  ];
}

export function weatherTable(answer: WeatherAnswer, { words, units }: View): string {
  const w = words.weather;
  const day = (iso: string | null) => (iso === null ? w.none : dayMonth(iso));
  const odds = (of: WeatherAnswer['lastFrost']) => w.inYears(day(of.p5), day(of.p50), day(of.p95));
  const degrees = (tempC: number) => `${decimals(units.tempOf(tempC), 0)} ${units.tempUnit}`;
  const cold = (of: WeatherAnswer['coldestDayC']) => w.inYears(degrees(of.p5), degrees(of.p50), degrees(of.p95));
  const spread = (tempC: number) => decimals(units.tempOf(tempC) - units.tempOf(0), 1);
  return [
    facts([
      [w.place, answer.station],
      [w.days, w.missing(answer.days, answer.missingDays) + (answer.file === null ? '' : `, ${w.bridged(answer.file.bridgedDays)}`)],
      ...fileFacts(answer, w),
      [w.lastFrost, odds(answer.lastFrost)],
      [w.firstFrost, odds(answer.firstFrost)],
      [w.coldestDay, cold(answer.coldestDayC)],
      [w.coldestNight, cold(answer.coldestNightC)],
      ...answer.sources.map(
        (from) =>
          [
            w.source,
            w.sourceLine(from.place, from.period, from.source, from.mark) +
              (from.distanceKm === null ? '' : w.away(decimals(from.distanceKm, 0), decimals(from.heightM ?? 0, 0))),
          ] as const,
      ),
    ]),
    '',
    table(
      [
        { head: w.month },
        { head: `${w.mean}\n(${units.tempUnit})`, align: 'right' },
        { head: `${w.between}\n(${units.tempUnit})`, align: 'right' },
      ],
      answer.monthlyMeanC.map((mean, i) => [monthName(i + 1), decimals(units.tempOf(mean), 1), spread(answer.monthlySdC[i] ?? 0)]),
    ),
    '',
    ...answer.rejected.slice(0, SHOWN).map(({ line, why }) => paragraph(w.rejected(line, why))),
    ...(answer.rejected.length > SHOWN ? [paragraph(w.moreRejected(answer.rejected.length - SHOWN))] : []),
    ...answer.notes.map((note) => paragraph(words.climateNote(note))),
  ].join('\n');
}

export function placesTable(places: readonly PlaceLine[], { words }: View): string {
  const w = words.weather;
  return table(
    [
      { head: w.place, max: 40 },
      { head: w.country },
      { head: w.latitude, align: 'right' },
      { head: w.longitude, align: 'right' },
      { head: w.height, align: 'right' },
      { head: w.period },
      { head: w.mark },
    ],
    places.map((row) => [
      row.place,
      row.country,
      decimals(row.latDeg, 2),
      decimals(row.lonDeg, 2),
      decimals(row.elevM, 0),
      row.period,
      row.mark,
    ]),
  );
}
