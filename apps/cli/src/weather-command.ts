import { good, places, weather } from '@winterheft/core';
import type { Command } from './command.ts';
import * as contract from './contracts/weather.ts';
import { objectInput } from './object-command.ts';
import { placesTable, weatherTable } from './print/weather.ts';
import { checked } from './schema-faults.ts';
import { STATION_OPTIONS, stationOption } from './station-option.ts';

/** The place comes by `--place` or in a JSON object, a daily record by `--file`; `--places` lists what there is. */
export const weatherCommand: Command = {
  name: 'weather',
  summary: 'monthly means, their spread and frost dates of a place or of a daily record',
  input: contract.input,
  output: contract.output,
  example: `npx winterheft weather --place '${contract.example.place}'`,
  options: [
    ['--place <place>', 'a name that --places lists, or the beginning or a part of one'],
    ...STATION_OPTIONS,
    ['--places', 'list every place'],
  ],
  async run(file, options, io) {
    if (options.places === true) {
      const list = places();
      return good({ json: { places: list }, table: (view) => placesTable(list, view) });
    }
    const record = await stationOption(options, io);
    if (!record.ok) return record;
    const byOptions = options.place !== undefined || (options.file !== undefined && file === undefined);
    const input = byOptions ? checked(contract.input, { place: options.place }) : await objectInput(contract.input, file, io);
    if (!input.ok) return input;
    const answer = weather({ ...input.value, record: record.value });
    return answer.ok ? good({ json: answer.value, table: (view) => weatherTable(answer.value, view) }) : answer;
  },
};
