import type { ClimateNote, RejectedWhy, StationFault } from '@winterheft/core';
import { decimals, monthName } from '../units.ts';

export const weather = {
  place: 'place',
  days: 'days of daily record',
  missing: (days: number, missing: number) => (days === 0 ? 'none: monthly normals only' : `${days}, ${missing} missing`),
  winters: 'whole winters in it',
  rejected: (line: number, why: RejectedWhy) => `Line ${line} was not used: ${REJECTED[why]}.`,
  moreRejected: (n: number) => `${n} more lines were not used; --json names them all.`,
  bridged: (days: number) => `${days} more were bridged`,
  span: 'from and to',
  file: 'layout and unit',
  unit: { C: '°C', F: '°F', 'tenths-C': 'tenths of °C' },
  byValues: 'told by its values',
  month: 'month',
  mean: 'mean',
  between: 'between years ±',
  lastFrost: 'last frost in spring',
  firstFrost: 'first frost in autumn',
  inYears: (p5: string, p50: string, p95: string) => `${p5} in 1 year of 20, ${p50} in half, ${p95} in 19 of 20`,
  coldestDay: 'coldest day of a year, daily mean',
  coldestNight: 'coldest night of a year, minimum (±5 °C)',
  none: 'none',
  source: 'normals from',
  sourceLine: (place: string, period: string, source: string, mark: string) => `${place}, ${period} (${source}, ${mark})`,
  away: (km: string, m: string) => `; ${km} km away, ${m} m above the yard`,
  country: 'country',
  period: 'period',
  latitude: 'lat',
  longitude: 'lon',
  height: 'height (m)',
  mark: 'mark',
} as const;

const REJECTED: Record<RejectedWhy, string> = {
  'not-a-date': 'its date does not exist',
  'not-a-number': 'a temperature is no number',
  'out-of-range': 'a temperature is outside -75 to 57 °C',
  'max-below-min': 'its maximum lies below its minimum',
  'repeated-day': 'the day stands there twice; the first is used',
  'quality-flag': 'the station’s own check failed',
  'line-too-short': 'the line ends before the temperatures',
};

/** What is allowed instead of a station file that was refused. */
export function stationFault(fault: StationFault): string {
  switch (fault.kind) {
    case 'not-text':
      return 'a text file of daily temperatures; this one is empty or not text (save a table as CSV in UTF-8)';
    case 'no-layout':
      return `daily temperatures of a weather station, or a table with a date and temperatures; this one begins "${fault.firstLine}"`;
    case 'no-columns':
      return `a table with columns named date and mean, or date, min and max; this one has ${fault.columns.join(', ')}`;
    case 'which-unit':
      return `a file whose unit is known: are its temperatures (${fault.low} to ${fault.high}) °F or °C? Say so with --unit F or --unit C`;
    case 'wrong-unit':
      return `temperatures that can be °${fault.unit}; ${fault.low} to ${fault.high} cannot: try --unit ${fault.unit === 'C' ? 'F' : 'C'}`;
    case 'which-date-order':
      return `dates that can be read one way only: is ${fault.example} day first or month first? Say so with --dates day-first or --dates month-first`;
    case 'no-days':
      return `days with a mean, or with a minimum and a maximum; none was found${fault.firstWhy === null ? '' : ` (${fault.rejected} lines not used: ${REJECTED[fault.firstWhy]})`}`;
    case 'too-short':
      return `${fault.leastDays} days or more; this one holds ${fault.days}`;
    case 'month-without-days':
      return `days in every month of the year; ${monthName(fault.month)} has none`;
    case 'southern-hemisphere':
      return 'a place north of the equator, whose January is colder than its July';
  }
}

/** What has to be said of where a climate's figures come from. */
export function climateNote(note: ClimateNote): string {
  switch (note.code) {
    case 'warmed':
      return `The normals of ${note.place} (${note.period}) are older and were brought to today's warmth.`;
    case 'own-spread':
      return `The spread between days and years is that of ${note.place} itself.`;
    case 'class-spread':
      return 'The spread between days and years is that of places with a January like this one.';
    case 'range-of-country':
      return `The range between night and day is that of the country round ${note.place}.`;
    case 'extreme-site':
      return `${note.place} is a site where nearly nobody keeps bees.`;
    case 'far':
      return `The nearest place of the table, ${note.place}, is ${Math.round(note.distanceKm)} km away: its error is larger.`;
    case 'steep':
      return `${note.place} lies ${Math.abs(Math.round(note.heightM))} m ${note.heightM > 0 ? 'above' : 'below'} the yard: its error is larger.`;
    case 'entered-means':
      return 'The monthly means were entered by hand.';
    case 'no-spread':
      return 'The weather is taken without any spread.';
    case 'own-winters':
      return `The ${note.winters} whole winters of the record (${note.from} to ${note.to}) are the winters of the forecast.`;
    case 'own-correction':
      return `The record holds ${note.winters} whole ${note.winters === 1 ? 'winter' : 'winters'}; from ${note.needed} on they become the forecast. So far they move the winters of the tables by ${decimals(note.shiftC, 1)} °C.`;
    case 'typical-year':
      return 'The file holds a typical year put together from different ones: its monthly means are used, not its days.';
    case 'own-days':
      return `What the record says of this winter, until ${note.until}, is taken as it happened.`;
  }
}
