import { FROST_YEAR, SEASON_DATES, WEATHER_RANGES } from '@winterheft/core';
import * as z from 'zod';

const range = (name: keyof typeof WEATHER_RANGES) => z.number().int().min(WEATHER_RANGES[name].low).max(WEATHER_RANGES[name].high);
const odds = (what: string) =>
  z
    .strictObject({
      p10: z.iso.date().nullable().describe('date one year in ten has at the latest; null when that share has none'),
      p50: z.iso.date().nullable().describe('the same for half of the years'),
      p90: z.iso.date().nullable().describe('the same for nine years in ten'),
    })
    .describe(what);

export const input = z.strictObject({
  place: z.string().min(1).optional().describe('a place listed by `winterheft weather --places`'),
  lat: z.number().min(0).max(90).optional().describe('latitude [°]; needed with monthlyMeanC'),
  lon: z.number().min(-180).max(180).optional().describe('longitude, east [°]; left out: that of the place, or no sunrise'),
  monthlyMeanC: z.array(z.number()).length(12).optional().describe('own monthly means from January instead of a place [°C]'),
  own: z
    .partialRecord(z.enum(SEASON_DATES), z.iso.date())
    .optional()
    .describe("the keeper's own dates by name, of this winter; they overrule"),
  year: range('year')
    .optional()
    .describe(`first year of the winter; left out: ${FROST_YEAR}, whose dates are those of any year, or the winter a daily record ends in`),
  members: range('members').default(1000).describe('years drawn'),
  seed: range('seed').default(1).describe('same seed, same answer'),
});

export const output = z.strictObject({
  lastFeedingDay: odds('last day of autumn warm enough to take syrup'),
  lastGluingDay: odds('last day of autumn warm enough to work propolis (20 °C)'),
  clusterDay: odds('first day of the cluster'),
  broodlessFrom: odds('first day without brood'),
  broodlessTo: odds('last day without brood'),
  firstFlight: odds('first day warm enough to fly'),
  firstPollen: odds('first pollen'),
  firstForage: odds('first dependable forage'),
  winterBeesFrom: odds('first day on which winter bees are reared'),
  winterBeesTo: odds('last day on which winter bees are reared'),
  lastFrost: odds('last frost of the spring after the winter'),
  firstFrost: odds('first frost of autumn'),
  guardDay: odds('first of three nights at 4 °C or less'),
  lastFrameDay: odds('last day of autumn warm enough to lift frames'),
  lastFlight: odds('last flying day of autumn'),
  coldDay: odds('first of three days with a mean below -10 °C'),
  cleansingFlight: odds('first day of the new year warm enough for a cleansing flight (limit from memory)'),
  mitesLow: odds('day by which mites have to be low'),
  requeenBy: odds('last day to put in a mated queen whose brood becomes winter bees'),
  ownQueenBy: odds('last day to let a colony raise its own queen for that'),
  year: z.number().int().describe('first year of the winter told'),
  climate: z
    .strictObject({ name: z.string(), notes: z.array(z.looseObject({ code: z.string() })) })
    .describe('the climate the dates come from, and what has to be said of it'),
  sun: z
    .array(
      z.strictObject({
        date: z.iso.date(),
        riseUtc: z.string().nullable().describe('sunrise, hours and minutes UTC; null: none that day, or longitude not known'),
        setUtc: z.string().nullable().describe('sunset'),
        dayHours: z.number().min(0).max(24).describe('from sunrise to sunset [h]'),
      }),
    )
    .describe('sun on the turns of the year'),
  notes: z
    .array(z.enum(['no-frost', 'no-winter', 'window-extrapolated', 'polar-circle']))
    .describe('some years have no frost or no cluster; winter-bee dates of the nearest latitude read; beyond the polar circle'),
});

export const example = { place: 'The Pas MB' };
