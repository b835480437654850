import { keyOf, normalAt } from '../chance/index.ts';
import { phenologyParameters } from '../tables/parameters-phenology.gen.ts';
import { epochDayOfParts } from '../units/index.ts';
import { monthOfIndex, winterYearOf, yearIndexOf } from '../weather/index.ts';

/** Daily means of one or more members over the same days, row after row. */
export interface MemberTemps {
  /** [degC] rows x days. */
  readonly tempsC: Float64Array;
  /** Epoch day of the first column. */
  readonly fromDay: number;
  readonly days: number;
}

/** Epoch day of 1 January of the spring a winter leads to; a series that begins in January to May is in that winter. */
export function springStartDay(fromDay: number): number {
  return epochDayOfParts(winterYearOf(fromDay) + 1, 1, 1);
}

/** Whose heat sums are drawn; `belief` left out: the published mean and spread. */
export interface SumDraw {
  readonly seed: number;
  readonly entity: string;
  readonly members: number;
  readonly belief?: { readonly meanCd: number; readonly sdCd: number } | undefined;
}

/**
 * Heat sum to first dependable forage, one draw per member and yard.
 *
 * returns     [degC d] members; more than 0
 * source      [NEWA-APPLE] first blossom, mean and standard deviation between sites and years
 */
export function drawForageSums(of: SumDraw): Float64Array {
  const { forageSumCd, forageSumSdCd } = phenologyParameters;
  return drawSums(of, 'forage-sum', { meanCd: forageSumCd.value, sdCd: forageSumSdCd.value });
}

/** Heat sum to first pollen [degC d] by member: red maple's first bloom, its spread that between the first trees with pollen [OSU-MAPLE]. */
export function drawPollenSums(of: SumDraw): Float64Array {
  const { pollenSumCd, pollenSumSdCd } = phenologyParameters;
  return drawSums(of, 'pollen-sum', { meanCd: pollenSumCd.value, sdCd: pollenSumSdCd.value });
}

function drawSums(of: SumDraw, stream: string, published: { readonly meanCd: number; readonly sdCd: number }): Float64Array {
  const key = keyOf(of.seed, stream, of.entity);
  const { meanCd, sdCd } = of.belief ?? published;
  return Float64Array.from({ length: of.members }, (_, member) => Math.max(1, meanCd + sdCd * normalAt(key, member, 0)));
}

/**
 * First day of dependable forage by member: the day the heat sum since 1 January reaches the member's own.
 *
 * A series that begins after 1 January counts from its first day, so the date is late rather than early.
 *
 * temps       one row for all members, or one per member
 * sumsCd      [degC d] members, from `drawForageSums`, or all alike to hold the forage date apart from the weather
 * returns     epoch days by member; Infinity where the series ends first
 */
export function firstForageDays(temps: MemberTemps, sumsCd: Float64Array): Float64Array {
  const base = phenologyParameters.forageBaseC.value;
  return heatSumDays(temps, { baseC: base, sumsCd });
}

/** First day on which each member's degree days above a base since 1 January reach its sum. Rows as in `firstForageDays`. */
function heatSumDays(temps: MemberTemps, rule: { readonly baseC: number; readonly sumsCd: Float64Array }): Float64Array {
  const { tempsC, fromDay, days } = temps;
  const members = rule.sumsCd.length;
  const rows = rowsOf(temps, members, 'heatSumDays');
  const start = Math.max(0, springStartDay(fromDay) - fromDay);
  const found = new Float64Array(members).fill(Number.POSITIVE_INFINITY);
  for (let member = 0; member < members; member++) {
    const row = rows === 1 ? 0 : member * days;
    const wanted = rule.sumsCd[member]!;
    let sum = 0;
    for (let d = start; d < days; d++) {
      const above = tempsC[row + d]! - rule.baseC;
      if (above <= 0) continue;
      sum += above;
      if (sum >= wanted) {
        found[member] = fromDay + d;
        break;
      }
    }
  }
  return found;
}

/**
 * First day of late winter or spring warm enough to fly, by row of the series.
 *
 * rangeC      [degC] mean daily maximum minus minimum by month, from January
 * returns     epoch days by row; Infinity where none comes
 * equation    daily mean + range/2 >= 10 degC, from 1 February on
 * source      [FLIGHT-KOVAC]
 */
export function firstFlightDays(temps: MemberTemps, rangeC: readonly number[]): Float64Array {
  const { tempsC, fromDay, days } = temps;
  const rows = rowsOf(temps, tempsC.length / days, 'firstFlightDays');
  const { flightMaxC, flightFromDayOfYear } = phenologyParameters;
  const start = Math.max(0, springStartDay(fromDay) + Math.round(flightFromDayOfYear.value) - 1 - fromDay);
  const needC = Float64Array.from({ length: days }, (_, d) => flightMaxC.value - rangeC[monthOfIndex(yearIndexOf(fromDay + d))]! / 2);
  const found = new Float64Array(rows).fill(Number.POSITIVE_INFINITY);
  for (let r = 0; r < rows; r++) {
    for (let d = start; d < days; d++) {
      if (tempsC[r * days + d]! < needC[d]!) continue;
      found[r] = fromDay + d;
      break;
    }
  }
  return found;
}

function rowsOf(temps: MemberTemps, members: number, who: string): number {
  const rows = temps.tempsC.length / temps.days;
  if (rows !== 1 && rows !== members) {
    throw new RangeError(`${who}: tempsC has ${temps.tempsC.length} values, must be ${temps.days} or ${temps.days * members}`);
  }
  return rows;
}
