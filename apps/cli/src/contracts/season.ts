import { FROST_YEAR, WEATHER_RANGES } from '@winterheft/core';
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
  lat: z.number().min(0).max(90).optional().describe('latitude [°], south of the polar circle; needed with monthlyMeanC'),
  monthlyMeanC: z.array(z.number()).length(12).optional().describe('own monthly means from January instead of a place [°C]'),
  year: range('year').default(FROST_YEAR).describe('first year of the winter'),
  members: range('members').default(1000).describe('years drawn'),
  seed: range('seed').default(1).describe('same seed, same answer'),
});

export const output = z.strictObject({
  lastFeedingDay: odds('last day of autumn warm enough to take syrup'),
  lastGluingDay: odds('last day of autumn warm enough to work propolis (limit from memory)'),
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
  notes: z
    .array(z.enum(['no-frost', 'window-extrapolated']))
    .describe('some years have no frost; winter-bee dates are those of the nearest latitude read'),
});

export const example = { place: 'The Pas MB' };
