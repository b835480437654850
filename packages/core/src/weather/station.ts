import { bad, good, type Result } from '../result/index.ts';
import { weatherParameters } from '../tables/parameters-weather.gen.ts';
import { epochDayOfParts, partsOf } from '../units/index.ts';
import { winterYearOf } from './calendar.ts';
import { readColumns } from './layout-columns.ts';
import { isEpw, readEpw } from './layout-epw.ts';
import { isGhcnDly, isGhcnLong, isNoaaWide, readGhcnDly, readGhcnLong, readNoaaWide } from './layout-ghcn.ts';
import { meansByMonth } from './record-months.ts';
import type { RawDay, RawStation, RejectedLine, StationFault, StationOptions, StationRecord, StationUnit } from './station-types.ts';
import { toCelsius, unitOfStation } from './station-unit.ts';

/** Daily extremes that are taken; beyond them no thermometer in air has been north of the equator. See station-unit.ts. */
const POSSIBLE_C = { low: -75, high: 57 } as const;
/** Days of both extremes in each month that make a mean range of it. */
const RANGE_DAYS = 20;

/**
 * A station's daily record from the text of its file, whatever its layout and the ending of its name.
 *
 * Reads GHCN-Daily (fixed width, long and by station), exports of daily summaries, Environment Canada with and without preamble, the
 * German weather service, typical years (EPW) and any table with a date and a mean, or a minimum and a maximum. A day's mean is the one
 * given, else the middle of its extremes. Values that cannot be are left out and told by line; gaps up to `gapBridgeDays` are bridged
 * by a straight line, longer ones stay open.
 *
 * text      the whole file, decoded; a byte-order mark is taken off
 * returns   see StationRecord
 * errors    StationFault: no text, no known layout, a question to be answered first, too short, southern
 * checked   station-files.test.ts: a published sample line of each layout
 */
export function readStation(text: string, options: StationOptions = {}): Result<StationRecord, StationFault> {
  if (looksBinary(text)) return bad({ kind: 'not-text' });
  const lines = text.replace(/^\uFEFF/, '').split(/\r\n|\n|\r/);
  while (lines.length > 1 && lines[0]!.trim() === '') lines.shift();
  const raw = rawStation(lines, options);
  if (!raw.ok) return raw;
  const { layout, place, days } = raw.value;
  if ((place.latDeg ?? 0) < 0) return bad({ kind: 'southern-hemisphere' });
  if (days.size === 0) return bad(noDays(raw.value.rejected));
  const leastDays = weatherParameters.leastRecordDays.value;
  if (days.size < leastDays) return bad({ kind: 'too-short', days: days.size, leastDays });
  const unit = unitOfStation(raw.value, options.unit);
  if (!unit.ok) return unit;
  const rejected = [...raw.value.rejected];
  const inC = [...days.values()].flatMap((day) => plausible(day, unit.value.unit, rejected)).sort((a, b) => a.day - b.day);
  if (inC.length < leastDays) return bad({ kind: 'too-short', days: inC.length, leastDays });
  const series = seriesOf(inC);
  const months = meansByMonth(series);
  const empty = months.findIndex((month) => month.years.length === 0);
  if (empty >= 0) return bad({ kind: 'month-without-days', month: empty + 1 });
  if (months[0]!.meanC > months[6]!.meanC) return bad({ kind: 'southern-hemisphere' });
  const typical = layout === 'epw';
  return good({
    layout,
    place,
    unit: unit.value.unit,
    unitByValues: unit.value.byValues,
    typical,
    ...series,
    winters: typical ? [] : wholeWinters(series),
    rangeC: rangesOf(inC),
    rejected: rejected.sort((a, b) => a.line - b.line),
  });
}

function looksBinary(text: string): boolean {
  const head = text.slice(0, 4000);
  // biome-ignore lint/suspicious/noControlCharactersInRegex: control characters are what a binary file is told by
  const strange = head.match(/[\u0000-\u0008\u000e-\u001f]/g)?.length ?? 0;
  return head.trim() === '' || text.includes('\u0000') || strange > head.length / 100;
}

function rawStation(lines: readonly string[], options: StationOptions): Result<RawStation, StationFault> {
  if (isEpw(lines)) return good(readEpw(lines));
  if (isGhcnDly(lines)) return good(readGhcnDly(lines));
  if (isGhcnLong(lines)) return good(readGhcnLong(lines));
  if (isNoaaWide(lines)) return good(readNoaaWide(lines));
  return readColumns(lines, options);
}

function noDays(rejected: readonly RejectedLine[]): StationFault {
  return { kind: 'no-days', rejected: rejected.length, firstWhy: rejected[0]?.why ?? null };
}

interface DayInC {
  readonly day: number;
  readonly meanC: number;
  /** Maximum minus minimum; null where one is missing. */
  readonly rangeC: number | null;
}

/** A day in degrees Celsius without the values that cannot be; nothing where no mean is left. */
function plausible(raw: RawDay, unit: StationUnit, rejected: RejectedLine[]): DayInC[] {
  const read = (value: number | undefined): number | undefined => {
    if (value === undefined) return undefined;
    const inC = toCelsius(value, unit);
    if (inC >= POSSIBLE_C.low && inC <= POSSIBLE_C.high) return inC;
    rejected.push({ line: raw.line, why: 'out-of-range' });
    return undefined;
  };
  const [mean, max, min] = [read(raw.mean), read(raw.max), read(raw.min)];
  if (max !== undefined && min !== undefined && max < min) {
    rejected.push({ line: raw.line, why: 'max-below-min' });
    return mean === undefined ? [] : [{ day: raw.day, meanC: mean, rangeC: null }];
  }
  const both = max !== undefined && min !== undefined;
  const meanC = mean ?? (both ? (max + min) / 2 : undefined);
  return meanC === undefined ? [] : [{ day: raw.day, meanC, rangeC: both ? max - min : null }];
}

type Series = Pick<StationRecord, 'fromDay' | 'toDay' | 'meanC' | 'readDays' | 'bridgedDays' | 'missingDays'>;

function seriesOf(days: readonly DayInC[]): Series {
  const latest = days.at(-1)!.day;
  const earliest = latest - Math.round(365.25 * weatherParameters.recordYears.value) + 1;
  const kept = days.filter(({ day }) => day >= earliest);
  const fromDay = kept[0]!.day;
  const meanC = new Float64Array(latest - fromDay + 1).fill(Number.NaN);
  for (const { day, meanC: mean } of kept) meanC[day - fromDay] = mean;
  const bridgedDays = bridge(meanC, weatherParameters.gapBridgeDays.value);
  return { fromDay, toDay: latest, meanC, readDays: kept.length, bridgedDays, missingDays: meanC.filter(Number.isNaN).length };
}

/** Fills gaps of at most `longest` days by straight lines between their neighbours; tells how many days it filled. */
function bridge(meanC: Float64Array, longest: number): number {
  let filled = 0;
  let before = 0;
  for (let d = 1; d < meanC.length; d++) {
    if (Number.isNaN(meanC[d]!)) continue;
    const gap = d - before - 1;
    if (gap > 0 && gap <= longest) {
      for (let k = 1; k <= gap; k++) meanC[before + k] = meanC[before]! + ((meanC[d]! - meanC[before]!) * k) / (gap + 1);
      filled += gap;
    }
    before = d;
  }
  return filled;
}

function wholeWinters({ fromDay, toDay, meanC }: Series): number[] {
  const whole: number[] = [];
  for (let year = winterYearOf(fromDay); year <= winterYearOf(toDay); year++) {
    const [first, last] = [epochDayOfParts(year, 9, 1), epochDayOfParts(year + 1, 6, 30)];
    if (first < fromDay || last > toDay) continue;
    if (!meanC.subarray(first - fromDay, last - fromDay + 1).some(Number.isNaN)) whole.push(year);
  }
  return whole;
}

function rangesOf(days: readonly DayInC[]): readonly number[] | null {
  const sums = Array.from({ length: 12 }, () => ({ n: 0, sum: 0 }));
  for (const { day, rangeC } of days) {
    if (rangeC === null) continue;
    const month = sums[partsOf(day).month - 1]!;
    month.n++;
    month.sum += rangeC;
  }
  return sums.every(({ n }) => n >= RANGE_DAYS) ? sums.map(({ n, sum }) => sum / n) : null;
}
