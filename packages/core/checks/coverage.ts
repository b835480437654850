import { epochDayOf } from '../src/units/dates.ts';
import { climateForPlace } from '../src/weather/index.ts';
import { type ColonySetting, judgeColony, prepareColony } from '../src/winter/colony.ts';
import { makeRun } from '../src/winter/outcome.ts';
import { levelPrior } from '../src/winter/own-rule.ts';
import { winterValues } from '../src/winter/parameters.ts';
import { quantileOfSorted, sorted } from '../src/winter/quantiles.ts';
import { drawSeason } from '../src/winter/yard-season.ts';

/** One kind of colony in one climate. */
export interface CoverageCase {
  readonly place: string;
  readonly bees: number;
}

export interface Coverage extends CoverageCase {
  readonly truths: number;
  /** Share of the truths whose use until forage lies in the forecast's 90 % band. */
  readonly inBandFrac: number;
  /** Share of the truths that hold until forage with exactly the need for 19 in 20. */
  readonly heldFrac: number;
}

const FROM = '2026-10-01';
const TO = '2027-06-30';

/**
 * How often the forecast's band holds a truth that was drawn from the model itself, under seeds the forecast never saw.
 *
 * A share far from 90 % would be a mistake of the code (a draw used twice, a quantile off by one, an error left out). It says nothing about bees.
 */
export function coverageOfModel(of: CoverageCase, size: { readonly members: number; readonly truths: number }): Coverage {
  const forecast = colonyOf(of, { seed: 1, members: size.members });
  const truth = colonyOf(of, { seed: 20260901, members: size.truths });
  const used = sorted(usedKg(forecast));
  const [low, high] = [quantileOfSorted(used, 0.05), quantileOfSorted(used, 0.95)];
  const none = { tare: { key: 'b', sdKg: 0 }, scale: { key: 's', sdKg: 0 }, own: { sdKg: 0 }, beeKg: 0 };
  const { needKg } = judgeColony(forecast, { kg: null, doubt: none }, 0.95);
  const eaten = usedKg(truth);
  const share = (is: (kg: number) => boolean) => eaten.filter(is).length / eaten.length;
  return {
    ...of,
    truths: size.truths,
    inBandFrac: share((kg) => kg > low && kg <= high),
    heldFrac: share((kg) => kg + forecast.values.reserveKg <= needKg),
  };
}

function usedKg({ factor, outcome }: ReturnType<typeof prepareColony>): Float64Array {
  return factor.map((k, i) => k * outcome.toForageKg[i]!);
}

function colonyOf({ place, bees }: CoverageCase, { seed, members }: { seed: number; members: number }) {
  const climate = climateForPlace(place);
  if (!climate.ok) throw new Error(`coverageOfModel: no climate for ${place}`);
  const fromDay = epochDayOf(FROM)!;
  const days = epochDayOf(TO)! - fromDay + 1;
  const values = winterValues();
  const season = drawSeason(climate.value, { seed, entity: 'yard', fromDay, days, members, values });
  const draw = { seed, members, fromDay, bees, beesSdFrac: values.beesSdFrac, pins: {} };
  const setting: ColonySetting = { season, draw, level: levelPrior(), hiveWPerK: 1.2, values };
  return prepareColony(setting, makeRun(season));
}

export const coverageCases: readonly CoverageCase[] = ['Halifax NS', 'The Pas MB', 'Fairbanks AK'].flatMap((place) =>
  [7_500, 16_000, 30_000].map((bees) => ({ place, bees })),
);
