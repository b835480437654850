import type { ClimateNote } from '@winterheft/core';

export const weather = {
  place: 'place',
  days: 'days of daily record',
  missing: (days: number, missing: number) => (days === 0 ? 'none: monthly normals only' : `${days}, ${missing} missing`),
  winters: 'whole winters in it',
  rejected: (line: number, why: string) => `line ${line} was not used: ${why}`,
  month: 'month',
  mean: 'mean',
  between: 'between years ±',
  lastFrost: 'last frost in spring',
  firstFrost: 'first frost in autumn',
  inYears: (p5: string, p50: string, p95: string) => `${p5} in 1 year of 20, ${p50} in half, ${p95} in 19 of 20`,
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
  }
}
