import type { Holding } from '../holding/index.ts';
import type { HeatBeliefs } from '../phenology/index.ts';
import { type Climate, winterYearOf } from '../weather/index.ts';
import { beliefsOf, type OwnSeason, ownSeason } from './own-days.ts';
import { drawYears } from './site-dates.ts';

/** What the keeper's own dates and blooms say of a winter in one yard. */
export interface YardSpring extends OwnSeason {
  /** First year of the winter. */
  readonly year: number;
  readonly beliefs: HeatBeliefs | undefined;
  readonly ownLowByDayOfYear: number | undefined;
  /** Changes when any of it does. */
  readonly key: string;
}

/** Years drawn to see what heat a bloom's day has gathered: its mean and scatter need no more. */
const BELIEF_MEMBERS = 200;

/** Own dates of the winter a day lies in, and heat sums as earlier springs have moved them. The members of a forecast change nothing. */
export function yardSpring(
  holding: Holding,
  of: { readonly yard: { readonly id: string }; readonly climate: Climate; readonly today: number; readonly seed: number },
): YardSpring {
  const year = winterYearOf(of.today);
  const yard = of.yard.id;
  const own = ownSeason(holding, { yard, year });
  const hasBlooms = holding.blooms.some((bloom) => bloom.yard === yard);
  const years = hasBlooms ? drawYears(of.climate, { seed: of.seed, year, members: BELIEF_MEMBERS, entity: yard }) : null;
  const beliefs = years === null ? undefined : beliefsOf(holding, { yard, year, years, record: of.climate.own });
  const sums = beliefs === undefined ? [] : [beliefs.firstPollen, beliefs.firstForage].flatMap(({ meanCd, sdCd }) => [meanCd, sdCd]);
  const key = [year, ...Object.entries(own.days).flat(), ...sums.map((sum) => sum.toFixed(3))].join(' ');
  return { ...own, year, beliefs, ownLowByDayOfYear: holding.settings.mitesLowByDayOfYear, key };
}
