import { type DrawInput, drawAppetite, drawColony, type Freeze, type LevelBelief } from './draws.ts';
import { type StoresDoubt, storesErrors } from './judge.ts';
import type { ColonyRun } from './kernel.ts';
import { outcomeOf } from './outcome.ts';
import type { WinterValues } from './parameters.ts';
import { varianceOf } from './quantiles.ts';
import type { YardSeason } from './season.ts';
import { prepareSeason } from './season.ts';

export interface DoubtShares {
  readonly weather: number;
  readonly appetite: number;
  readonly bees: number;
  readonly tare: number;
  readonly scale: number;
  readonly forage: number;
}

export const doubtCauses = ['weather', 'appetite', 'bees', 'tare', 'scale', 'forage'] as const;

export interface DoubtInput {
  readonly season: YardSeason;
  readonly draw: DrawInput;
  readonly level: LevelBelief;
  readonly hiveWPerK: number;
  readonly values: WinterValues;
  readonly stores: StoresDoubt;
}

/**
 * The variance of (stores minus what is eaten until forage) [kg²], with nothing or one cause held at its centre.
 *
 * 'weather' gives every member the mean of all members' weather and leaves their forage days; 'forage' gives every member the median
 * forage day and leaves the weather; 'tare' and 'scale' take the error out; 'scale' stands for everything measured on the hive itself.
 */
function marginVariance(input: DoubtInput, frozen: (typeof doubtCauses)[number] | null, run: ColonyRun): number {
  const { season, draw } = input;
  const freeze: Freeze = { bees: frozen === 'bees', appetite: frozen === 'appetite' };
  const colony = drawColony(draw, freeze);
  const outcome = outcomeOf(
    frozen === 'weather' ? meanSeason(season, input.values) : season,
    colony,
    { hiveWPerK: input.hiveWPerK, values: input.values },
    run,
  );
  const factor = drawAppetite(draw, input.level, freeze);
  const used = frozen === 'forage' ? outcome.toMedianForageKg : outcome.toForageKg;
  const errors = storesErrors(
    input.stores,
    { seed: draw.seed, beesOff: colony.bees.map((n) => n - draw.bees) },
    { tare: frozen === 'tare', scale: frozen === 'scale' },
  );
  return varianceOf(errors.map((error, i) => error - factor[i]! * used[i]!));
}

/**
 * How much of the doubt about a colony each cause makes: what freezing it takes off the variance, as shares that add up to one.
 *
 * All shares are 0 when there is no doubt at all. A cause whose freezing takes nothing off (sampling can make it slightly negative) counts 0.
 */
export function doubtShares(input: DoubtInput, run: ColonyRun): DoubtShares {
  const all = marginVariance(input, null, run);
  const shares = { weather: 0, appetite: 0, bees: 0, tare: 0, scale: 0, forage: 0 };
  if (!(all > 1e-12)) return shares;
  const sameWeather = input.season.rows === 1;
  let sum = 0;
  for (const cause of doubtCauses) {
    if (cause === 'weather' && sameWeather) continue;
    shares[cause] = Math.max(0, all - marginVariance(input, cause, run));
    sum += shares[cause];
  }
  for (const cause of doubtCauses) shares[cause] /= sum;
  return shares;
}

/** The same yard with every member's weather replaced by the mean of all; dates stay each member's own, the first flight its median. */
function meanSeason(season: YardSeason, values: WinterValues): YardSeason {
  const { days, rows, tempC } = season;
  const mean = new Float64Array(days);
  for (let d = 0; d < days; d++) {
    let sum = 0;
    for (let r = 0; r < rows; r++) sum += tempC[r * days + d]!;
    mean[d] = sum / rows;
  }
  const flight = Int32Array.from(season.flightIndex).sort()[season.members >> 1]!;
  return prepareSeason({ ...season, tempC: mean, flightIndex: new Int32Array(season.members).fill(flight) }, values);
}
