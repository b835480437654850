import { keyOf, stratifiedNormals, stratifiedUniforms } from '../chance/index.ts';
import { epochDayOfParts, partsOf } from '../units/index.ts';
import type { ColonyDraws } from './kernel.ts';
import { drawWinter, type WinterName } from './parameters.ts';

export type Pins = Partial<Record<WinterName, number>>;

export interface DrawInput {
  readonly seed: number;
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

/** The draw that gives the middle of a distribution. */
const MIDDLE = 0.5;
/** Whose luck the cases hold: every colony's, see `drawColony`. */
const EVERY_COLONY = 'colony';

/**
 * What is drawn for one colony: its bees, deaths and brood, by member.
 *
 * Every colony is judged on the same list of cases: in case 17 each one has the same luck. So equal colonies have equal needs, a
 * difference between two colonies is one of bees, hive and stores, never of luck, and no colony's figures hang on another's. What
 * the list does not tell is how the luck of two colonies goes together; nothing here counts several colonies in one case.
 */
export function drawColony(input: DrawInput, freeze: Freeze = {}): ColonyDraws {
  const { members, pins, seed } = input;
  const traits = (name: WinterName): Float64Array => {
    if (freeze.appetite || pins[name] !== undefined) return new Float64Array(members).fill(drawWinter(name, MIDDLE, pins[name]));
    return stratifiedUniforms(keyOf(seed, name, EVERY_COLONY), members).map((u) => drawWinter(name, u));
  };
  const beesLogSd = Math.sqrt(Math.log(1 + input.beesSdFrac ** 2));
  const bees = new Float64Array(members).fill(input.bees * Math.exp(freeze.bees ? 0 : -(beesLogSd ** 2) / 2));
  if (!freeze.bees && beesLogSd > 0) {
    const z = stratifiedNormals(keyOf(seed, 'bees', EVERY_COLONY), members);
    for (let i = 0; i < members; i++) bees[i]! *= Math.exp(beesLogSd * z[i]!);
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
  const { members, pins, seed } = input;
  const factors = new Float64Array(members).fill((pins.level ?? level.median) * drawWinter('appetite', MIDDLE, pins.appetite));
  if (freeze.appetite) return factors;
  if (pins.level === undefined && level.logSd > 0) {
    const shared = stratifiedNormals(keyOf(seed, 'level', 'keeper'), members);
    for (let i = 0; i < members; i++) factors[i]! *= Math.exp(level.logSd * shared[i]!);
  }
  if (pins.appetite === undefined) {
    const own = stratifiedUniforms(keyOf(seed, 'appetite', EVERY_COLONY), members);
    const middle = drawWinter('appetite', MIDDLE);
    for (let i = 0; i < members; i++) factors[i]! *= drawWinter('appetite', own[i]!) / middle;
  }
  return factors;
}
