import { basalWPerKg, warmWPerKg } from './cluster.ts';
import type { WinterValues } from './parameters.ts';

/** Weather and dates of one yard, drawn once and shared by all its colonies. Rows are members, or one row for all. */
export interface YardSeason {
  readonly fromDay: number;
  readonly days: number;
  readonly members: number;
  /** 1 when every member has the same weather, else `members`. */
  readonly rows: number;
  /** [degC] rows x days, daily means. */
  readonly tempC: Float64Array;
  /** [W/kg] rows x days. */
  readonly basalWPerKg: Float64Array;
  readonly warmWPerKg: Float64Array;
  /** Index of the first flight day by member; `days` when there is none. */
  readonly flightIndex: Int32Array;
  /** Index of the first day of dependable forage by member; `days` when there is none. */
  readonly forageIndex: Int32Array;
  /** First day and length of the longest run at or below spellTempC, by member. */
  readonly spellStart: Int32Array;
  readonly spellDays: Int32Array;
  /** Share of all days colder than single hives have been weighed at. */
  readonly unweighedColdFrac: number;
}

/** Published weights of single hives end at about this daily mean [degC]. */
const WEIGHED_DOWN_TO_C = -10;

export interface SeasonInput {
  readonly fromDay: number;
  readonly days: number;
  readonly members: number;
  readonly tempC: Float64Array;
  readonly flightIndex: Int32Array;
  readonly forageIndex: Int32Array;
}

/** Everything about the yard's winter that does not depend on the colony, so that it is computed once. */
export function prepareSeason(input: SeasonInput, p: WinterValues): YardSeason {
  const { days, members, tempC } = input;
  const rows = tempC.length / days;
  if (rows !== 1 && rows !== members)
    throw new RangeError(`prepareSeason: tempC has ${tempC.length} values, must be ${days} or ${days * members}`);
  const basal = new Float64Array(tempC.length);
  const warm = new Float64Array(tempC.length);
  let colder = 0;
  for (let i = 0; i < tempC.length; i++) {
    basal[i] = basalWPerKg(tempC[i]!, p);
    warm[i] = warmWPerKg(tempC[i]!, p);
    if (tempC[i]! < WEIGHED_DOWN_TO_C) colder++;
  }
  const spellStart = new Int32Array(members);
  const spellDays = new Int32Array(members);
  for (let m = 0; m < members; m++) {
    const at = rows === 1 ? 0 : m * days;
    let run = 0;
    for (let d = 0; d < days; d++) {
      run = tempC[at + d]! <= p.spellTempC ? run + 1 : 0;
      if (run > spellDays[m]!) {
        spellDays[m] = run;
        spellStart[m] = d - run + 1;
      }
    }
  }
  const unweighedColdFrac = colder / tempC.length;
  return { ...input, rows, basalWPerKg: basal, warmWPerKg: warm, spellStart, spellDays, unweighedColdFrac };
}
