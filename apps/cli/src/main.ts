import { english, type Fault, UNITS, unitFormat } from '@winterheft/words';
import { Command as Commander, CommanderError, Option } from 'commander';
import * as z from 'zod';
import type { Command, Failure, Options } from './command.ts';
import { commands } from './commands.ts';
import { endQuietlyOnBrokenPipe, type Io, nodeIo } from './io.ts';
import { WIDTH } from './print/layout.ts';

const words = english;

/** Bad input is told in one line on standard error, and nothing goes to standard output. */
class BadInputError extends Error {}

function sentenceOf(failure: Failure): string {
  return 'fault' in failure ? words.faultSentence(failure.fault, failure.allowed) : words.faultSentence(failure);
}

/** One JSON object; a figure that is no number is our own mistake and never printed as null. */
export function jsonText(value: unknown): string {
  return JSON.stringify(value, (key, item: unknown) => {
    if (typeof item === 'number' && !Number.isFinite(item)) throw new Error(`the answer's ${key} is ${item}`);
    return item;
  });
}

async function answer(command: Command, file: string | undefined, options: Options, io: Io): Promise<void> {
  const result = await command.run(file, options, io);
  if (!result.ok) throw new BadInputError(sentenceOf(result.error));
  if ('text' in result.value) io.out(result.value.text);
  else if (options.json) io.out(`${jsonText(result.value.json)}\n`);
  else io.out(`${result.value.table({ words, units: unitFormat(options.units) })}\n`);
}

function schemaText(command: Command): string {
  const side = (schema: z.ZodType, io: 'input' | 'output') => z.toJSONSchema(schema, { io, unrepresentable: 'any' });
  return `${JSON.stringify({ input: side(command.input, 'input'), output: side(command.output, 'output') }, null, 2)}\n`;
}

function programFor(io: Io): Commander {
  const program = new Commander('winterheft')
    .description(words.program.description)
    .helpOption('-h, --help', words.program.help)
    .helpCommand('help [command]', words.program.help)
    .addHelpText('after', `\n${words.program.after}`);
  for (const command of commands) {
    const sub = program.command(command.name).description(command.summary).argument('[file]', words.program.file);
    sub.option('--json', words.program.json);
    sub.addOption(new Option('--units <units>', words.program.units).choices(UNITS).default('metric'));
    for (const [flags, text] of command.options ?? []) sub.option(flags, text);
    sub.addHelpText('after', `\n${words.program.example}\n  ${command.example.replaceAll('\n', '\n  ')}\n`);
    sub.action((file: string | undefined, options: Options) => answer(command, file, options, io));
  }
  program
    .command('schema')
    .description(words.program.schema)
    .argument('<command>', words.program.schemaCommand)
    .action((name: string) => {
      const command = commands.find((one) => one.name === name);
      if (command === undefined) {
        const fault: Fault = { kind: 'unknown-choice', field: 'command', value: name, choices: commands.map((one) => one.name) };
        throw new BadInputError(words.faultSentence(fault));
      }
      io.out(schemaText(command));
    });
  for (const one of [program, ...program.commands]) {
    one
      .exitOverride()
      .showSuggestionAfterError(false)
      .configureOutput({ writeOut: io.out, writeErr: () => {}, getOutHelpWidth: () => WIDTH });
  }
  return program;
}

/** What the option parser found wrong, with what would be right where it does not say so itself. */
function optionFault(error: CommanderError): Fault {
  const says = error.message.replace(/^error: /, '');
  if (error.code === 'commander.unknownCommand') {
    return {
      kind: 'unknown-choice',
      field: 'command',
      value: /'(.*)'/s.exec(says)?.[1] ?? '',
      choices: [...commands.map((one) => one.name), 'schema'],
    };
  }
  return { kind: 'option', says: /allowed/i.test(says) ? says : `${says}; ${words.program.seeHelp}` };
}

/** Runs one command line and gives the exit code: 0 done, 2 bad input, 1 anything else. */
export async function run(argv: readonly string[], io: Io = nodeIo): Promise<number> {
  if (io === nodeIo) endQuietlyOnBrokenPipe();
  try {
    await programFor(io).parseAsync(argv.length === 0 ? ['--help'] : [...argv], { from: 'user' });
    return 0;
  } catch (error) {
    if (error instanceof CommanderError && error.exitCode === 0) return 0;
    if (error instanceof CommanderError) {
      io.err(`winterheft: ${words.faultSentence(optionFault(error))}\n`);
      return 2;
    }
    if (error instanceof BadInputError) {
      io.err(`winterheft: ${error.message}\n`);
      return 2;
    }
    io.err(`winterheft: ${words.program.ownMistake}\n${error instanceof Error ? (error.stack ?? error.message) : String(error)}\n`);
    return 1;
  }
}
