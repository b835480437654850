import { FROST_YEAR, WEATHER_RANGES } from '@winterheft/core';
import * as z from 'zod';

const range = (name: keyof typeof WEATHER_RANGES) => z.number().int().min(WEATHER_RANGES[name].low).max(WEATHER_RANGES[name].high);
const frost = z.strictObject({
  p5: z.iso.date().nullable().describe('date that one year in twenty has at the latest; null when that share has none'),
  p50: z.iso.date().nullable().describe('the same for half of the years'),
  p95: z.iso.date().nullable().describe('the same for nineteen years in twenty'),
});

const coldest = z.strictObject({
  p5: z.number().describe('one year in twenty is as cold'),
  p50: z.number().describe('half of the years are as cold'),
  p95: z.number().describe('nineteen years in twenty are as cold'),
});

export const input = z.strictObject({
  place: z
    .string()
    .min(1)
    .optional()
    .describe(
      'a place listed by `winterheft weather --places`, or the beginning or a part of one name; beside a file it stands for what the file does not tell',
    ),
  year: range('year').default(FROST_YEAR).describe('year the frost dates are written in; they are the odds of all years'),
  members: range('members').default(1000).describe('years drawn for the frost dates'),
  seed: range('seed').default(1).describe('same seed, same answer'),
});

export const output = z.strictObject({
  station: z.string().describe('the place'),
  days: z.number().int().describe('days of the daily record; 0 for a place of the table, which holds normals only'),
  missingDays: z.number().int().describe('days missing in it'),
  rejected: z
    .array(z.strictObject({ line: z.number().int().describe('line of the file'), why: z.string().describe('code of the reason') }))
    .describe('lines of the record that were not used'),
  file: z
    .strictObject({
      from: z.iso.date().describe('first day read'),
      to: z.iso.date().describe('last day read'),
      layout: z.string().describe('layout the file was read by'),
      unit: z.enum(['C', 'F', 'tenths-C']).describe('unit of its temperatures'),
      unitByValues: z.boolean().describe('true where the values told the unit'),
      bridgedDays: z.number().int().describe('missing days bridged by a straight line'),
    })
    .nullable()
    .describe('the daily record; null for a place of the table'),
  monthlyMeanC: z
    .array(z.number())
    .length(12)
    .describe('mean of the daily means by month, from January [°C]; older normals brought to 1991-2020'),
  monthlySdC: z.array(z.number()).length(12).describe('standard deviation of the monthly mean between years, from January [°C]'),
  lastFrost: frost.describe('last day of spring with a daily minimum at or below 0 °C'),
  firstFrost: frost.describe('first day of autumn with a daily minimum at or below 0 °C'),
  coldestDayC: coldest.describe('lowest daily mean of a year [°C]'),
  coldestNightC: coldest.describe('lowest night minimum of a year [°C], an estimate from the lowest daily mean'),
  winters: z.number().int().describe('whole winters of the daily record; 0 for a place of the table'),
  sources: z
    .array(
      z.strictObject({
        place: z.string().describe('row of the table'),
        period: z.string().describe('years of the normals'),
        source: z.string().describe('key of the source'),
        mark: z.string().describe('READ or COMPUTED'),
        distanceKm: z.number().nullable().describe('distance from the yard [km]; null where the place was named'),
        heightM: z.number().nullable().describe('height above the yard [m]; null where the place was named'),
      }),
    )
    .describe('where the means come from'),
  notes: z
    .array(z.looseObject({ code: z.string().describe('what has to be said of the figures') }))
    .describe('warmed, own-spread, class-spread, range-of-country, extreme-site, own-winters, own-correction, typical-year, own-days'),
});

/** One line of `winterheft weather --places`. */
export const placeLine = z.strictObject({
  place: z.string().describe('name as `place` takes it'),
  country: z.string().describe('ISO code'),
  period: z.string().describe('years of the normals'),
  source: z.string().describe('key of the source'),
  mark: z.string().describe('READ or COMPUTED'),
  latDeg: z.number().describe('latitude [°]'),
  lonDeg: z.number().describe('longitude [°], east positive'),
  elevM: z.number().describe('height above the sea [m]'),
  extreme: z.boolean().describe('left out of the search by distance'),
});
export const placesOutput = z.strictObject({ places: z.array(placeLine).describe('every place of the table') });

export const example = { place: 'The Pas MB' };
