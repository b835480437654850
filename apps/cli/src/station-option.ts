import { bad, good, type Result, readStation, type StationOptions, type StationRecord } from '@winterheft/core';
import { english, type Fault } from '@winterheft/words';
import type { Options } from './command.ts';
import type { Io } from './io.ts';

/** The options of every command that takes a station's daily record. */
export const STATION_OPTIONS = [
  ['--file <file>', 'daily record of a weather station (GHCN, daily summaries, Environment Canada, DWD, EPW, or a table)'],
  ['--unit <unit>', 'C or F, where the file does not say it'],
  ['--dates <order>', 'day-first or month-first, where the dates fit both'],
] as const;

/** The record named by `--file`, or undefined without one. Letters that are no UTF-8, as in older files, are passed over. */
export async function stationOption(options: Options, io: Io): Promise<Result<StationRecord | undefined, Fault>> {
  const { file, unit, dates } = options;
  if (unit !== undefined && unit !== 'C' && unit !== 'F') {
    return bad({ kind: 'unknown-choice', field: '--unit', value: unit, choices: ['C', 'F'] });
  }
  if (dates !== undefined && dates !== 'day-first' && dates !== 'month-first') {
    return bad({ kind: 'unknown-choice', field: '--dates', value: dates, choices: ['day-first', 'month-first'] });
  }
  if (file === undefined) return good(undefined);
  const bytes = await io.read(file);
  if (!bytes.ok) return bytes;
  const asked: StationOptions = { unit, dateOrder: dates };
  const record = readStation(new TextDecoder('utf-8').decode(bytes.value), asked);
  return record.ok ? record : bad({ kind: 'rule', field: '--file', value: file, says: english.stationFault(record.error) });
}
