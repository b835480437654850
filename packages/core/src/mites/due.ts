import type { Colony } from '../holding/index.ts';
import { mitesParameters } from '../tables/parameters-mites.gen.ts';
import { isoDateOf } from '../units/index.ts';
import { dayOfYearIn, yearOf } from './levels.ts';
import { levelsOnDay, shareAbove } from './project.ts';
import { levelOnDayOf, type MiteStanding, type YardSeasonOfMites } from './standing.ts';

export type DueWhat = 'treat' | 'wash-again' | 'wash-more-bees' | 'wash' | 'wash-after-treatment' | 'treatment-in';

/** What is due at a colony, and by when. */
export interface MiteDue {
  readonly what: DueWhat;
  readonly by: string | null;
  readonly reason:
    | 'above-level'
    | 'near-level'
    | 'never-level'
    | 'few-bees'
    | 'never-washed'
    | 'washed-long-ago'
    | 'treated-since'
    | 'autumn'
    | 'growth'
    | 'still-in';
}

/**
 * What is due at one colony, the most urgent first.
 *
 * From 8 chances in 10 above the level, now or in the winter-bee weeks, treating is due; from 4 in 10 a second wash, or treating as
 * if above. A level never accepted does not wait for a second wash. After a treatment its effect is washed for two weeks after its
 * end; every colony is washed once more in September, whatever August said.
 */
export function dueAt(colony: Colony, standing: MiteStanding, season: YardSeasonOfMites): MiteDue[] {
  const p = mitesParameters;
  const { today, window } = season;
  const last = standing.groups.at(-1);
  const due: MiteDue[] = [];
  const by = (day: number) => isoDateOf(Math.max(day, today));
  const isIn = colony.treatments.some((one) => one.in !== null && one.out === null);
  if (isIn) due.push({ what: 'treatment-in', by: null, reason: 'still-in' });
  const out = Math.max(...colony.treatments.map((one) => one.out?.day ?? Number.NEGATIVE_INFINITY));
  const treatedSince = last !== undefined && out > last.day;
  const chance = Math.max(standing.chanceAboveNowFrac ?? 0, today <= window.toDay ? (standing.chanceAboveWindowFrac ?? 0) : 0);
  const decides = last !== undefined && last.bees >= p.leastBees.value && !treatedSince && !isIn;
  const never = levelOnDayOf(season, last?.day ?? today)?.never ?? null;
  if (last !== undefined && last.bees < p.leastBees.value) due.push({ what: 'wash-more-bees', by: by(today), reason: 'few-bees' });
  else if (decides && never !== null && last.mites / last.countedBees >= never)
    due.push({ what: 'treat', by: by(window.lowByDay), reason: 'never-level' });
  else if (decides && chance >= p.treatChanceFrac.value) due.push({ what: 'treat', by: by(window.lowByDay), reason: 'above-level' });
  else if (decides && chance >= p.washAgainChanceFrac.value)
    due.push({ what: 'wash-again', by: by(window.lowByDay), reason: 'near-level' });
  // Once brood has surely ended it is too cold to wash bees.
  if (levelOnDayOf(season, today) === null || today > season.broodEnd.day + 2 * season.broodEnd.sdDays) return due;
  if (last === undefined && !isIn) due.push({ what: 'wash', by: by(today), reason: 'never-washed' });
  else if (treatedSince)
    due.push({ what: 'wash-after-treatment', by: by(out + Math.round(p.rewashAfterDays.value)), reason: 'treated-since' });
  else if (last !== undefined && due.length === 0) due.push(...nextWash(standing, season, { lastDay: last.day, by }));
  return due;
}

/** The earliest of: the day growth may have carried it near the level, a month after the last wash, the wash of September. */
function nextWash(standing: MiteStanding, season: YardSeasonOfMites, of: { lastDay: number; by: (day: number) => string }): MiteDue[] {
  const p = mitesParameters;
  const broodEndDay = Math.round(season.broodEnd.day);
  const september = dayOfYearIn(yearOf(season.window.lowByDay), p.septemberWashDayOfYear.value);
  const dates: { day: number; reason: MiteDue['reason'] }[] = [
    { day: of.lastDay + Math.round(p.washGoodDays.value), reason: 'washed-long-ago' },
  ];
  if (of.lastDay < september - p.rewashAfterDays.value) dates.push({ day: september, reason: 'autumn' });
  const { projection } = standing;
  if (projection !== null) {
    for (let day = season.today + 1; day < projection.fromDay + projection.days; day++) {
      const level = levelOnDayOf(season, day);
      if (level === null || shareAbove(levelsOnDay(projection, day), level.treat) < p.washAgainChanceFrac.value) continue;
      dates.push({ day, reason: 'growth' });
      break;
    }
  }
  const open = dates.filter(({ day }) => day <= Math.max(broodEndDay, september));
  if (open.length === 0) return [];
  const first = open.reduce((a, b) => (b.day < a.day ? b : a));
  return [{ what: 'wash', by: of.by(first.day), reason: first.reason }];
}
