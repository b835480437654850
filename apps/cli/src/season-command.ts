import { bad, good, type Result, season } from '@winterheft/core';
import { dateEvents, english, type Fault } from '@winterheft/words';
import { CALENDAR_OPTIONS, calendarText } from './calendar-options.ts';
import type { Command, Options } from './command.ts';
import * as contract from './contracts/season.ts';
import { objectInput } from './object-command.ts';
import { todayOption } from './option-values.ts';
import { seasonTable } from './print/season.ts';
import { checked, explained } from './schema-faults.ts';
import { STATION_OPTIONS, stationOption } from './station-option.ts';

/** The place comes by options or in a JSON object, never by both; a daily record by `--file`, alone or beside it. */
export const seasonCommand: Command = {
  name: 'season',
  summary: 'dates of the season at a place: feeding, cluster, brood, flight, pollen, forage, frost, queens, sun',
  input: contract.input,
  output: contract.output,
  example: `npx winterheft season --place '${contract.example.place}'`,
  options: [
    ['--place <place>', 'a name that weather --places lists, or the beginning or a part of one'],
    ['--lat <deg>', "latitude, north; with --place: instead of the place's"],
    ['--lon <deg>', 'longitude, east'],
    ['--year <year>', 'first year of the winter'],
    ...STATION_OPTIONS,
    ...CALENDAR_OPTIONS,
  ],
  async run(file, options, io) {
    const record = await stationOption(options, io);
    if (!record.ok) return record;
    const given = givenBy(options);
    const input =
      given === null ? await objectInput(contract.input, file, io) : file === undefined ? checked(contract.input, given) : bothGiven();
    if (!input.ok) return input;
    const answer = season({ ...input.value, record: record.value });
    if (!answer.ok) return bad(explained(answer.error, contract.input, input.value));
    const { value } = answer;
    const today = todayOption(undefined, io.now());
    if (!today.ok) return today;
    const { name } = value.climate;
    const calendar = calendarText(options, {
      name,
      day: today.value,
      events: () => dateEvents(value, { id: name.toLowerCase().replace(/[^a-z0-9]+/g, '-'), year: value.year }, english),
    });
    if (!calendar.ok) return calendar;
    return good(calendar.value === null ? { json: value, table: (view) => seasonTable(value, view) } : { text: calendar.value });
  },
};

const bothGiven = (): Result<never, Fault> => bad({ kind: 'conflict', fields: ['FILE', '--place'], why: 'give-one' });

/** The input that options make, numbers as numbers where they are; null without any. */
function givenBy(options: Options): Readonly<Record<string, unknown>> | null {
  const { place, lat, lon, year, file } = options;
  if ([place, lat, lon, year, file].every((one) => one === undefined)) return null;
  const number = (text: string) => (text.trim() !== '' && Number.isFinite(Number(text)) ? Number(text) : text);
  return {
    ...(place === undefined ? {} : { place }),
    ...(lat === undefined ? {} : { lat: number(lat) }),
    ...(lon === undefined ? {} : { lon: number(lon) }),
    ...(year === undefined ? {} : { year: number(year) }),
  };
}
