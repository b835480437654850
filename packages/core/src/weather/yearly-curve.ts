import { MONTH_STARTS, YEAR_DAYS } from './calendar.ts';

/**
 * Smooth yearly course of daily means whose average over each month is the value given for that month.
 *
 * Six harmonics have as many coefficients as a year has months, so the averages are met exactly; a curve drawn
 * through the middles of the months would cut the coldest month short by some tenths of a degree.
 *
 * monthly     twelve monthly averages, from January
 * returns     365 daily values, 1 January first
 * equation    y(d) = sum a_k cos(k w d) + b_k sin(k w d), k = 0..6 (b_6 = 0), averages over real month lengths
 * source      [EPSTEIN-1991], there for months of equal length
 * checked     weather.test.ts: all places, averages within 1e-9; checks/weather.ts
 */
export function yearlyCurve(monthly: readonly number[]): Float64Array {
  const inverse = inverseAverages();
  const curve = new Float64Array(YEAR_DAYS);
  for (let term = 0; term < 12; term++) {
    let weight = 0;
    for (let month = 0; month < 12; month++) weight += inverse[term]![month]! * monthly[month]!;
    for (let day = 0; day < YEAR_DAYS; day++) curve[day]! += weight * harmonic(term, day);
  }
  return curve;
}

/**
 * Term 0 is 1; 1, 3, .. 11 are cosines of harmonics 1 to 6; 2, 4, .. 10 are sines of 1 to 5. The angle starts in the middle
 * of January: counted from the 1st, the last cosine would average to nothing over every month.
 */
function harmonic(term: number, day: number): number {
  const angle = (2 * Math.PI * Math.ceil(term / 2) * (day + 0.5 - YEAR_DAYS / 24)) / YEAR_DAYS;
  return term === 0 || term % 2 === 1 ? Math.cos(angle) : Math.sin(angle);
}

let kept: number[][] | undefined;

/** Inverse of the matrix that takes the twelve coefficients to the twelve averages; a constant of the calendar, made once. */
function inverseAverages(): number[][] {
  kept ??= invert(
    Array.from({ length: 12 }, (_, month) =>
      Array.from({ length: 12 }, (_, term) => {
        let sum = 0;
        for (let day = MONTH_STARTS[month]!; day < MONTH_STARTS[month + 1]!; day++) sum += harmonic(term, day);
        return sum / (MONTH_STARTS[month + 1]! - MONTH_STARTS[month]!);
      }),
    ),
  );
  return kept;
}

/** Gauss-Jordan with partial pivoting. */
function invert(matrix: number[][]): number[][] {
  const n = matrix.length;
  const rows = matrix.map((row, i) => [...row, ...Array.from({ length: n }, (_, j) => (i === j ? 1 : 0))]);
  for (let column = 0; column < n; column++) {
    let pivot = column;
    for (let r = column + 1; r < n; r++) if (Math.abs(rows[r]![column]!) > Math.abs(rows[pivot]![column]!)) pivot = r;
    [rows[column], rows[pivot]] = [rows[pivot]!, rows[column]!];
    const top = rows[column]!;
    const scale = top[column]!;
    for (let k = 0; k < 2 * n; k++) top[k]! /= scale;
    for (let r = 0; r < n; r++) {
      if (r === column) continue;
      const factor = rows[r]![column]!;
      for (let k = 0; k < 2 * n; k++) rows[r]![k]! -= factor * top[k]!;
    }
  }
  return rows.map((row) => row.slice(n));
}

/**
 * Month values spread over the days: level in the middle of each month, with a smooth step of 20 days round its ends.
 *
 * For the amplitudes and correlations of the generator, where each month has to keep its own value; the step is
 * cubic (3x^2 - 2x^3), so it neither overshoots nor leaves the range of its two months.
 */
export function blendedMonths(monthly: readonly number[]): Float64Array {
  const halfDays = 10;
  const days = new Float64Array(YEAR_DAYS);
  for (let month = 0; month < 12; month++) {
    const [from, to] = [MONTH_STARTS[month]!, MONTH_STARTS[month + 1]!];
    for (let day = from; day < to; day++) {
      const [before, after] = [day + 0.5 - from, to - day - 0.5];
      const neighbour = before < after ? (month + 11) % 12 : (month + 1) % 12;
      const x = 0.5 + Math.min(before, after, halfDays) / (2 * halfDays);
      const own = x * x * (3 - 2 * x);
      days[day] = own * monthly[month]! + (1 - own) * monthly[neighbour]!;
    }
  }
  return days;
}
