import type { Result } from '@winterheft/core';
import type { Fault, UnitFormat, Words } from '@winterheft/words';
import type * as z from 'zod';
import type { Io } from './io.ts';
import type { SchemaFault } from './schema-faults.ts';

/** Options of the command line that single commands add to the common ones. */
export interface Options {
  readonly json?: boolean;
  readonly units: 'metric' | 'us' | 'ca';
  readonly lp?: boolean;
  readonly rank?: string;
  readonly file?: string;
  readonly place?: string;
  readonly places?: boolean;
  readonly today?: string;
  readonly seed?: string;
  readonly members?: string;
  readonly unit?: string;
  readonly dates?: string;
  readonly lat?: string;
  readonly lon?: string;
  readonly year?: string;
  readonly ics?: boolean;
  readonly alarm?: string;
}

export interface View {
  readonly words: Words;
  readonly units: UnitFormat;
}

/** What a command gives back: an object for `--json` with its table, or a text that is the answer itself (`--lp`). */
export type Answer = { readonly json: unknown; readonly table: (view: View) => string } | { readonly text: string };

export type Failure = Fault | SchemaFault;

/** One command of the command line. */
export interface Command {
  readonly name: string;
  readonly summary: string;
  readonly input: z.ZodType;
  readonly output: z.ZodType;
  /** Shell lines that run as printed in the checkout. */
  readonly example: string;
  /** Options beyond FILE, --json and --units, as commander declares them. */
  readonly options?: readonly (readonly [flags: string, text: string])[];
  run(file: string | undefined, options: Options, io: Io): Promise<Result<Answer, Failure>>;
}
