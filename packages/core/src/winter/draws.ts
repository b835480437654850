import { keyOf, normalAt } from '../chance/index.ts';
import { epochDayOfParts, partsOf } from '../units/index.ts';
import type { ColonyDraws } from './kernel.ts';
import { drawWinter, type WinterName } from './parameters.ts';

export type Pins = Partial<Record<WinterName, number>>;

export interface DrawInput {
  readonly seed: number;
  /** Names the colony's own random numbers. Never its label: renaming must change nothing. */
  readonly colony: string;
  readonly members: number;
  readonly fromDay: number;
  readonly bees: number;
  /** sd of the count of bees as a share of it. */
  readonly beesSdFrac: number;
  /** Epoch day; null: no brood at all; undefined: drawn. */
  readonly broodFromDay?: number | null;
  readonly pins: Pins;
}

/** Which causes of doubt are held at their central value, to see what they add. */
export interface Freeze {
  readonly bees?: boolean;
  readonly appetite?: boolean;
}

/**
 * What is drawn for one colony. Bees, deaths and brood are the colony's own; every number hangs on (seed, stream, member, colony) alone.
 */
export function drawColony(input: DrawInput, freeze: Freeze = {}): ColonyDraws {
  const { members, pins } = input;
  const of = (stream: string) => keyOf(input.seed, stream, input.colony);
  const traits = (name: WinterName): Float64Array => {
    const key = of(name);
    const values = new Float64Array(members);
    for (let i = 0; i < members; i++) values[i] = drawWinter(name, freeze.appetite ? 0 : normalAt(key, i, 0), pins[name]);
    return values;
  };
  const beesLogSd = Math.sqrt(Math.log(1 + input.beesSdFrac ** 2));
  const beesKey = of('bees');
  const bees = new Float64Array(members);
  for (let i = 0; i < members; i++) {
    bees[i] = input.bees * Math.exp(freeze.bees ? 0 : beesLogSd * normalAt(beesKey, i, 0) - beesLogSd ** 2 / 2);
  }
  const broodStart = new Float64Array(members);
  if (input.broodFromDay === null) broodStart.fill(Number.POSITIVE_INFINITY);
  else if (input.broodFromDay !== undefined) broodStart.fill(input.broodFromDay - input.fromDay);
  else {
    const newYear = yearOfBrood(input.fromDay);
    const dayOfYear = traits('broodStartDayOfYear');
    for (let i = 0; i < members; i++) broodStart[i] = newYear + Math.round(dayOfYear[i]!) - 1 - input.fromDay;
  }
  return {
    bees,
    winterDeath: traits('winterDeathFracPerDay'),
    springDeath: traits('springDeathFracPerDay'),
    broodStart,
    broodScale: traits('broodScale'),
  };
}

/** Epoch day of 1 January of the spring that the run leads into: this year's until June, else the next one's. */
function yearOfBrood(fromDay: number): number {
  const { year, month } = partsOf(fromDay);
  return epochDayOfParts(month <= 6 ? year : year + 1, 1, 1);
}

/** Log-normal factor on the use of all the keeper's colonies: the median and the sd of its logarithm. */
export interface LevelBelief {
  readonly median: number;
  readonly logSd: number;
}

/**
 * What a colony eats against the model, by member: the keeper's level, shared by all colonies, times the colony's own appetite.
 */
export function drawAppetite(input: DrawInput, level: LevelBelief, freeze: Freeze = {}): Float64Array {
  const own = keyOf(input.seed, 'appetite', input.colony);
  const shared = keyOf(input.seed, 'level', 'keeper');
  const factors = new Float64Array(input.members);
  for (let i = 0; i < input.members; i++) {
    const levelOf = input.pins.level ?? level.median * Math.exp(freeze.appetite ? 0 : level.logSd * normalAt(shared, i, 0));
    factors[i] = levelOf * drawWinter('appetite', freeze.appetite ? 0 : normalAt(own, i, 0), input.pins.appetite);
  }
  return factors;
}
