import { bad, good, type Result } from '@winterheft/core';
import type * as z from 'zod';
import type { Answer, Command, Failure, Options, View } from './command.ts';
import type { Io } from './io.ts';
import { jsonOf, textOf } from './json-input.ts';
import { checked } from './schema-faults.ts';

/** The text of FILE or of standard input. */
export async function inputText(
  file: string | undefined,
  io: Io,
): Promise<Result<{ readonly text: string; readonly name: string }, Failure>> {
  if (file === undefined && io.stdinIsTerminal) return bad({ kind: 'no-input' });
  const bytes = await io.read(file ?? '-');
  if (!bytes.ok) return bytes;
  const name = file === undefined || file === '-' ? 'standard input' : file;
  const text = textOf(bytes.value, name);
  return text.ok ? good({ text: text.value, name }) : text;
}

/** A command whose input is one JSON object: read, checked against its schema, handed to the core, printed. */
export function objectCommand<I extends z.ZodType, O extends z.ZodType>(parts: {
  readonly name: string;
  readonly summary: string;
  readonly contract: { readonly input: I; readonly output: O; readonly example: z.input<I> };
  readonly options?: Command['options'];
  readonly answer: (
    input: z.output<I>,
    options: Options,
  ) => Result<z.output<O> | Answer, Failure> | Promise<Result<z.output<O> | Answer, Failure>>;
  readonly table: (answer: z.output<O>, view: View & { readonly input: z.output<I> }) => string;
}): Command {
  const { name, summary, contract } = parts;
  return {
    name,
    summary,
    input: contract.input,
    output: contract.output,
    example: `echo '${JSON.stringify(contract.example)}' | npx winterheft ${name} -`,
    ...(parts.options === undefined ? {} : { options: parts.options }),
    async run(file, options, io) {
      const text = await inputText(file, io);
      if (!text.ok) return text;
      const json = jsonOf(text.value.text, text.value.name);
      if (!json.ok) return json;
      const input = checked(contract.input, json.value);
      if (!input.ok) return input;
      const answer = await parts.answer(input.value, options);
      if (!answer.ok) return answer;
      if (isText(answer.value)) return good(answer.value);
      const value = answer.value as z.output<O>;
      return good({ json: value, table: (view) => parts.table(value, { ...view, input: input.value }) });
    },
  };
}

function isText(value: unknown): value is { readonly text: string } {
  return typeof value === 'object' && value !== null && 'text' in value && Object.keys(value).length === 1;
}
