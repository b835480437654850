import { bad, good, outlook } from '@winterheft/core';
import type { Command } from './command.ts';
import * as contract from './contracts/outlook.ts';
import { exampleOf, objectInput } from './object-command.ts';
import { outlookTable } from './print/outlook.ts';
import { explained } from './schema-faults.ts';
import { STATION_OPTIONS, stationOption } from './station-option.ts';

/** The colony comes as a JSON object; its weather by a place or means in it, by a daily record named by `--file`, or by both. */
export const outlookCommand: Command = {
  name: 'outlook',
  summary: 'what a colony eats until forage, what it needs, and when its stores would end',
  input: contract.input,
  output: contract.output,
  example: exampleOf('outlook', contract.example),
  options: STATION_OPTIONS,
  async run(file, options, io) {
    const record = await stationOption(options, io);
    if (!record.ok) return record;
    const input = await objectInput(contract.input, file, io);
    if (!input.ok) return input;
    const answer = outlook({ ...input.value, record: record.value });
    if (!answer.ok) return bad(explained(answer.error, contract.input, input.value));
    return good({ json: answer.value, table: (view) => outlookTable(answer.value, { ...view, input: input.value }) });
  },
};
