import type { Colony, Holding, Yard } from '../holding/index.ts';
import { bad, good, inRange, type Result } from '../result/index.ts';
import { MITE_LEVELS } from '../tables/mite-levels.gen.ts';
import { epochDayOf, epochDayOfParts, isoDateOf, partsOf } from '../units/index.ts';
import { type Climate, climateForPlace, climateFromMonthly, climateNear, drawWeather } from '../weather/index.ts';
import type { ColonyMites, MitesAnswer, MitesSetting, YardMites } from './answer-types.ts';
import { colonyMites, rangeOfGrid, startsOf } from './colony-mites.ts';
import { supersOn } from './counts.ts';
import { levelStair } from './levels.ts';
import { labelOf, treatmentRecords } from './records.ts';
import { levelOnDayOf, type YardSeasonOfMites, yardSeasonOfMites } from './standing.ts';
import { checkedLabel, rowOfActive } from './treatments.ts';
import { yardEffects } from './yard-effects.ts';
import { yardTreatments } from './yard-treatments.ts';

export const MITES_MEMBERS = { low: 20, high: 20000, unit: 'cases' } as const;
/** Chance of the tenth year: normal quantile of 0.9. */
const TENTH_Z = 1.2816;
/** Days drawn past the end of the year, for a treatment that begins at its end. */
const SPARE_DAYS = 61;

/**
 * Mites in every yard and colony: what the washes say against the level of the season, where they lead in the weeks in which the winter
 * bees are reared, what is due, what may begin when.
 *
 * A pure function of the holding, the day and the seed. No product is recommended and no dose given: the label in hand decides.
 *
 * errors   BadInput: today is no date, members out of range, a place not known, a level or label of the settings that cannot be, no
 *          living colony
 */
export function mites(holding: Holding, setting: MitesSetting): Result<MitesAnswer> {
  const today = epochDayOf(setting.today);
  if (today === null) return bad({ kind: 'not-a-date', field: 'today', value: setting.today });
  const members = inRange('members', setting.members, MITES_MEMBERS);
  if (!members.ok) return members;
  const settings = checkedSettings(holding);
  if (!settings.ok) return settings;
  const living = [...holding.colonies.values()].filter(
    (colony) => colony.ended === null && colony.hive !== null && holding.yards.has(colony.yard),
  );
  if (living.length === 0) return bad({ kind: 'missing', field: 'journal (a living colony)' });
  const yards: YardMites[] = [];
  const colonies: ColonyMites[] = [];
  for (const yard of holding.yards.values()) {
    const here = living.filter((colony) => colony.yard === yard.id);
    if (here.length === 0) continue;
    const climate = climateOf(yard, setting.place);
    if (!climate.ok) return climate;
    const season = yardSeasonOfMites(yard, { holding, today, seed: setting.seed, members: setting.members });
    const one = yardMites(yard, { holding, here, climate: climate.value, season });
    yards.push(one.yard);
    colonies.push(...one.colonies);
  }
  return good({
    yards,
    colonies,
    records: treatmentRecords(holding, { today, isKnown: (active) => rowOfActive(active) !== null }),
    made: { today: setting.today, seed: setting.seed, members: setting.members },
  });
}

function checkedSettings(holding: Holding): Result<true> {
  for (const [i, level] of (holding.settings.miteLevels ?? []).entries()) {
    const field = `settings.miteLevels.${i}`;
    const row = MITE_LEVELS.find(({ key }) => key === level.key);
    if (row === undefined)
      return bad({ kind: 'unknown-choice', field: `${field}.key`, value: level.key, choices: MITE_LEVELS.map(({ key }) => key) });
    if ((level.warn ?? row.warn ?? 0) > (level.treat ?? row.treat))
      return bad({ kind: 'conflict', fields: [`${field}.warn`, `${field}.treat`], why: 'low-below-high' });
    if (row.method !== 'wash') continue;
    for (const name of ['warn', 'treat', 'never'] as const) {
      if (level[name] === undefined) continue;
      const value = inRange(`${field}.${name}`, level[name], { low: 0.0001, high: 0.5, unit: 'mites/bee' });
      if (!value.ok) return value;
    }
  }
  for (const [i, label] of (holding.settings.labels ?? []).entries()) {
    const checked = checkedLabel(label, `settings.labels.${i}`);
    if (!checked.ok) return checked;
  }
  return good(true);
}

function climateOf(yard: Yard, place: string | undefined): Result<Climate> {
  if (place !== undefined) return climateForPlace(place);
  if (yard.monthlyMeanC !== undefined) return climateFromMonthly(yard.monthlyMeanC, { latDeg: yard.latDeg });
  if (yard.climatePlace !== undefined) return climateForPlace(yard.climatePlace);
  return climateNear(yard.latDeg, yard.lonDeg, yard.elevM);
}

function yardMites(
  yard: Yard,
  of: { holding: Holding; here: readonly Colony[]; climate: Climate; season: YardSeasonOfMites },
): { readonly yard: YardMites; readonly colonies: readonly ColonyMites[] } {
  const { holding, here, climate, season } = of;
  const { window, today } = season;
  const starts = startsOf(here, today);
  const colonies = here
    .map((colony) =>
      colonyMites(colony, { season, holding, label: labelOf(holding, colony), start: starts.byColony.get(colony.id) ?? starts.other }),
    )
    .sort(
      (a, b) =>
        (b.chanceAboveWindowFrac ?? -1) - (a.chanceAboveWindowFrac ?? -1) ||
        (a.label < b.label ? -1 : a.label > b.label ? 1 : a.colony < b.colony ? -1 : 1),
    );
  const worth = (line: ColonyMites) =>
    (line.chanceAboveWindowFrac ?? 0.5) * (1 - (line.chanceAboveWindowFrac ?? 0.5)) + (line.basis === 'own' ? 0 : 0.1);
  const { year } = partsOf(window.lowByDay);
  const yearEnd = epochDayOfParts(year, 12, 31);
  return {
    yard: {
      yard: yard.id,
      yardName: yard.name,
      climate: { name: climate.name, notes: climate.notes },
      lowBy: isoDateOf(window.lowByDay),
      winterBees: { from: isoDateOf(window.fromDay), to: isoDateOf(window.toDay) },
      projectedTo: isoDateOf(season.projectDay),
      windowExtrapolated: window.extrapolated,
      broodEnds: {
        p10: isoDateOf(Math.round(season.broodEnd.day - TENTH_Z * season.broodEnd.sdDays)),
        p50: isoDateOf(Math.round(season.broodEnd.day)),
        p90: isoDateOf(Math.round(season.broodEnd.day + TENTH_Z * season.broodEnd.sdDays)),
      },
      level: levelOnDayOf(season, today),
      levelAtWindow: levelOnDayOf(season, season.projectDay),
      stair: levelStair({ fromDay: epochDayOfParts(year, 4, 1), toDay: yearEnd }, { broodEndDay: season.broodEnd.day, own: season.own }),
      mean: starts.mean === null ? null : rangeOfGrid(starts.mean),
      notWashed: starts.other === undefined ? null : rangeOfGrid(starts.other.grid),
      washed: colonies.filter(({ basis }) => basis === 'own').length,
      colonies: colonies.length,
      washNext: [...colonies].sort((a, b) => worth(b) - worth(a) || (a.label < b.label ? -1 : 1)).map(({ colony }) => colony),
      treatments: treatmentsOf(yard, { climate, season, yearEnd, holding, supersOn: here.some((colony) => supersOn(holding, colony)) }),
      effects: yardEffects(here, today),
      broodlessTreatmentFrom: isoDateOf(Math.round(season.broodEnd.day)),
    },
    colonies,
  };
}

function treatmentsOf(
  yard: Yard,
  of: { climate: Climate; season: YardSeasonOfMites; yearEnd: number; holding: Holding; supersOn: boolean },
) {
  const { climate, season, yearEnd, holding } = of;
  const fromDay = season.today;
  const toDay = Math.max(yearEnd, fromDay) + SPARE_DAYS;
  const { seed, members } = season;
  const tempsC = drawWeather(climate, { seed, entity: yard.id, fromDay, toDay, members });
  const days = { tempsC, fromDay, days: toDay - fromDay + 1, members, rangeC: climate.rangeC, broodEndDays: season.broodEndDays };
  return yardTreatments(season, { days, labels: holding.settings.labels ?? [], supersOn: of.supersOn });
}
