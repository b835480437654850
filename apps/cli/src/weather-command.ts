import { good, places, weather } from '@winterheft/core';
import type { Command } from './command.ts';
import * as contract from './contracts/weather.ts';
import { objectInput } from './object-command.ts';
import { placesTable, weatherTable } from './print/weather.ts';
import { checked } from './schema-faults.ts';

/** The place comes by `--place` or in a JSON object; `--places` lists what there is. */
export const weatherCommand: Command = {
  name: 'weather',
  summary: 'monthly means, their spread and frost dates of a place',
  input: contract.input,
  output: contract.output,
  example: `npx winterheft weather --place '${contract.example.place}'`,
  options: [
    ['--place <place>', 'a name that --places lists, or the beginning or a part of one'],
    ['--places', 'list every place'],
  ],
  async run(file, options, io) {
    if (options.places === true) {
      const list = places();
      return good({ json: { places: list }, table: (view) => placesTable(list, view) });
    }
    const input =
      options.place === undefined ? await objectInput(contract.input, file, io) : checked(contract.input, { place: options.place });
    if (!input.ok) return input;
    const answer = weather(input.value);
    return answer.ok ? good({ json: answer.value, table: (view) => weatherTable(answer.value, view) }) : answer;
  },
};
