import type { Colony } from '../holding/index.ts';
import { seasonParameters } from '../tables/parameters-season.gen.ts';
import { winterParameters } from '../tables/parameters-winter.gen.ts';
import { sizeRows } from '../tables/sizes.gen.ts';
import type { Mark } from '../tables/types.ts';

/** One rule of the trade against this colony's size. */
interface SizeRule {
  readonly where: string;
  readonly lowFrames: number;
  readonly highFrames: number;
  /** `below` its range, within it, or above. */
  readonly stands: 'below' | 'within' | 'above';
  readonly source: string;
  readonly mark: Mark;
}

export interface SizeAnswer {
  readonly frames: number;
  readonly queen: 'there' | 'absent' | 'unknown';
  /**
   * unite: too small for our own limit and below every rule but one, or without a queen and under the size that holds until spring;
   * doubtful: inside the range in which the rules differ; alone: big enough.
   */
  readonly verdict: 'alone' | 'doubtful' | 'unite';
  /** Least bees to winter alone, with the ends of what is said of it. */
  readonly leastBees: { readonly value: number; readonly low: number; readonly high: number };
  readonly rules: readonly SizeRule[];
}

/** Last word on the queen: there when seen, laying or introduced, absent when looked for and missing. */
export function queenOf(colony: Colony): SizeAnswer['queen'] {
  const last = colony.queens.at(-1)?.state;
  if (last === undefined || last === 'unknown') return 'unknown';
  return last === 'absent' ? 'absent' : 'there';
}

/** The year the living queen was born, where it is known: the last record that says so, if she was not lost since. */
export function queenBornYear(colony: Colony): number | null {
  const lost = colony.queens.map(({ state }) => state).lastIndexOf('absent');
  return (
    colony.queens
      .slice(lost + 1)
      .filter(({ bornYear }) => bornYear !== undefined)
      .at(-1)?.bornYear ?? null
  );
}

/**
 * A colony's size against what the trade says is enough to winter alone.
 *
 * The rules come from very different winters and differ by a factor of two: they are shown as ranges, and only their agreement decides.
 *
 * bees       bees of the colony
 * returns    frames of bees as the trade counts them, every rule, and what follows
 * source     data/sizes.csv, a source a row; our own limit [minaud-2024]
 */
export function sizeOf(bees: number, queen: SizeAnswer['queen']): SizeAnswer {
  if (!(bees >= 0)) throw new RangeError(`sizeOf: bees is ${bees}, must be 0 or more`);
  const frames = bees / seasonParameters.beesPerFrame.value;
  const rules = sizeRows
    .filter((row) => row.queen === 'any' || row.queen === queen)
    .map((row): SizeRule => {
      const [lowFrames, highFrames] = [row.lowFrames!, row.highFrames!];
      const stands = frames < lowFrames ? 'below' : frames >= highFrames ? 'above' : 'within';
      return { where: row.where, lowFrames, highFrames, stands, source: row.source, mark: row.mark };
    });
  const { value, low, high } = winterParameters.minBeesAlone;
  const below = rules.filter(({ stands }) => stands === 'below').length;
  const holdsQueenless = rules.find(({ where }) => where === 'queenless')?.stands !== 'below';
  const verdict =
    (queen === 'absent' && !holdsQueenless) || (bees < value && below >= rules.length - 1)
      ? 'unite'
      : queen !== 'absent' && bees >= high && below <= 1
        ? 'alone'
        : 'doubtful';
  return { frames: Math.round(frames * 10) / 10, queen, verdict, leastBees: { value, low, high }, rules };
}
