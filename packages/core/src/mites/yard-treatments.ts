import type { MiteTreatment } from '../tables/mites.ts';
import { mitesParameters } from '../tables/parameters-mites.gen.ts';
import { isoDateOf } from '../units/index.ts';
import type { YardTreatment } from './answer-types.ts';
import type { YardSeasonOfMites } from './standing.ts';
import { broodOn } from './standing.ts';
import { startChances, type YardDays } from './starts.ts';
import { effectRange, labelDiffers, limitsOf, type TreatmentLabel, treatmentRows } from './treatments.ts';

/** Every form of every active ingredient in one yard: limits, chances by day, what stands against it. Nothing is ranked or advised. */
export function yardTreatments(
  season: YardSeasonOfMites,
  of: { readonly days: YardDays; readonly labels: readonly TreatmentLabel[]; readonly supersOn: boolean },
): YardTreatment[] {
  return treatmentRows().map((row) => treatmentIn(row, season, of));
}

function treatmentIn(
  row: MiteTreatment,
  season: YardSeasonOfMites,
  of: { days: YardDays; labels: readonly TreatmentLabel[]; supersOn: boolean },
): YardTreatment {
  const { today, window } = season;
  const label = of.labels.filter(({ key }) => key === row.key).at(-1);
  const limits = limitsOf(row, label);
  const chances = limits === null ? null : startChances(of.days, limits);
  const even = chances === null ? [] : [...chances.keys()].filter((d) => chances[d]! >= mitesParameters.startChanceFrac.value);
  const dayOf = (d: number | undefined) => (d === undefined ? null : isoDateOf(of.days.fromDay + d));
  const latestDay = limits?.durationDays == null || limits.broodless ? null : window.lowByDay - limits.durationDays;
  const atLatest = latestDay === null || latestDay < today ? null : (chances?.[latestDay - of.days.fromDay] ?? null);
  const effect = effectRange(row, { broodless: row.brood === 'broodless' || broodOn(season, today) === 'little' });
  return {
    key: row.key,
    active: row.active,
    form: row.form,
    use: row.use,
    limits,
    blockers: [
      ...(limits === null ? (['label-needed'] as const) : []),
      ...(of.supersOn && limits?.supersOff === true ? (['supers-on'] as const) : []),
      ...(of.supersOn && limits !== null && limits.supersOff === null ? (['supers-by-label'] as const) : []),
      ...(latestDay !== null && latestDay < today && today <= window.toDay ? (['too-late-for-window'] as const) : []),
      ...(row.resistance === 'widespread' ? (['resistance-test'] as const) : []),
    ],
    startChances:
      chances === null ? null : { from: isoDateOf(of.days.fromDay), frac: [...chances].map((share) => Math.round(share * 1000) / 1000) },
    firstStart: dayOf(even[0]),
    lastStart: dayOf(even.at(-1)),
    latestStart: latestDay === null ? null : isoDateOf(latestDay),
    latestStartChanceFrac: atLatest,
    effect: { lowFrac: effect.low, highFrac: effect.high, known: effect.known, source: row.effectSource, mark: row.effectMark },
    resistance: row.resistance,
    leastBroodFrames: row.leastBroodFrames,
    differs: label === undefined ? [] : labelDiffers(row, label),
    cautions: row.cautions,
    country: row.country,
    note: row.note,
    source: row.source,
    mark: row.mark,
  };
}
