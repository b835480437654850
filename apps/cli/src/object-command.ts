import { bad, good, type Result } from '@winterheft/core';
import type { Fault } from '@winterheft/words';
import type * as z from 'zod';
import type { Command, Failure, View } from './command.ts';
import type { Io } from './io.ts';
import { jsonOf, textOf } from './json-input.ts';
import { checked, explained } from './schema-faults.ts';

/** The text of FILE or of standard input. */
async function inputText(file: string | undefined, io: Io): Promise<Result<{ readonly text: string; readonly name: string }, Failure>> {
  if (file === undefined && io.stdinIsTerminal) return bad({ kind: 'no-input' });
  const bytes = await io.read(file ?? '-');
  if (!bytes.ok) return bytes;
  const name = file === undefined || file === '-' ? 'standard input' : file;
  const text = textOf(bytes.value, name);
  return text.ok ? good({ text: text.value, name }) : text;
}

/** A command whose input is one JSON object: read, checked against its schema, handed to the core, printed. That answers fit `output` is tested. */
export function objectCommand<I extends z.ZodType, A extends object>(parts: {
  readonly name: string;
  readonly summary: string;
  readonly contract: { readonly input: I; readonly output: z.ZodType; readonly example: z.input<I> };
  readonly options?: Command['options'];
  readonly answer: (input: z.output<I>) => Result<A, Fault>;
  readonly table: (answer: A, view: View & { readonly input: z.output<I> }) => string;
}): Command {
  const { name, summary, contract } = parts;
  return {
    name,
    summary,
    input: contract.input,
    output: contract.output,
    example: exampleOf(name, contract.example),
    ...(parts.options === undefined ? {} : { options: parts.options }),
    async run(file, _options, io) {
      const input = await objectInput(contract.input, file, io);
      if (!input.ok) return input;
      const answer = parts.answer(input.value);
      if (!answer.ok) return bad(explained(answer.error, contract.input, input.value));
      return good({ json: answer.value, table: (view) => parts.table(answer.value, { ...view, input: input.value }) });
    },
  };
}

/** The shell line that feeds an example to its command. */
export function exampleOf(name: string, example: unknown): string {
  return `echo '${JSON.stringify(example)}' | npx winterheft ${name} -`;
}

/** The JSON object of FILE or standard input with its defaults, or the first fault. */
export async function objectInput<I extends z.ZodType>(schema: I, file: string | undefined, io: Io): Promise<Result<z.output<I>, Failure>> {
  const text = await inputText(file, io);
  if (!text.ok) return text;
  const json = jsonOf(text.value.text, text.value.name);
  return json.ok ? checked(schema, json.value) : json;
}
