import { bad, good, type Result } from '../result/index.ts';
import { partsOf } from '../units/index.ts';
import type { RawDay, RawStation, StationFault, StationUnit } from './station-types.ts';

/** No thermometer in air has shown more than this; WMO archive of extremes: 56.7 °C, Death Valley 1913, and -67.8 °C north of the equator. */
const HIGHEST_C = 57;
/** A place whose summers never reach this has no bees. Ivalo, Yakutsk and Fairbanks all pass 25 °C every year. */
const LEAST_SUMMER_C = 14;
/** So many summer days say whether a summer is one. */
const SUMMER_DAYS = 30;
/** More than this share of figures beyond what is possible is another unit, not a slip. */
const SLIPS_FRAC = 0.01;

const celsius = (fahrenheit: number) => ((fahrenheit - 32) * 5) / 9;

interface Extent {
  readonly low: number;
  readonly high: number;
  readonly n: number;
  readonly beyondC: number;
  /** Highest figure of June to August; null where too few of its days are there. */
  readonly summerHigh: number | null;
}

function extentOf(days: Iterable<RawDay>): Extent {
  let [low, high, n, beyondC, summerHigh, summerDays] = [
    Number.POSITIVE_INFINITY,
    Number.NEGATIVE_INFINITY,
    0,
    0,
    Number.NEGATIVE_INFINITY,
    0,
  ];
  for (const one of days) {
    const { month } = partsOf(one.day);
    const summer = month >= 6 && month <= 8;
    if (summer) summerDays++;
    for (const value of [one.mean, one.max, one.min]) {
      if (value === undefined) continue;
      n++;
      low = Math.min(low, value);
      high = Math.max(high, value);
      if (value > HIGHEST_C) beyondC++;
      if (summer) summerHigh = Math.max(summerHigh, value);
    }
  }
  return { low, high, n, beyondC, summerHigh: summerDays >= SUMMER_DAYS ? summerHigh : null };
}

/**
 * The unit of a file's temperatures, or the question which one it is.
 *
 * The keeper's word, then what the file says. Where neither says it the values do: above 57 they are no degrees Celsius, and a summer
 * that stays below 57 °F is none of a place with bees. Where both units are possible the file is refused with the question; a unit
 * that was said and cannot be is refused too.
 */
export function unitOfStation(
  { days, unit }: Pick<RawStation, 'days' | 'unit'>,
  said: 'C' | 'F' | undefined,
): Result<{ readonly unit: StationUnit; readonly byValues: boolean }, StationFault> {
  if (unit === 'tenths-C') return good({ unit, byValues: false });
  const { low, high, n, beyondC, summerHigh } = extentOf(days.values());
  const couldBeC = beyondC <= SLIPS_FRAC * n;
  const couldBeF = summerHigh === null || celsius(summerHigh) >= LEAST_SUMMER_C;
  const asked = said ?? unit;
  if (asked !== null) {
    const possible = asked === 'C' ? couldBeC : couldBeF;
    return possible ? good({ unit: asked, byValues: false }) : bad({ kind: 'wrong-unit', unit: asked, low, high });
  }
  if (couldBeC && couldBeF) return bad({ kind: 'which-unit', low, high });
  return good({ unit: couldBeC ? 'C' : 'F', byValues: true });
}

export function toCelsius(value: number, unit: StationUnit): number {
  if (unit === 'tenths-C') return value / 10;
  return unit === 'F' ? celsius(value) : value;
}
