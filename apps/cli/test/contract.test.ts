import { describe, expect, test } from 'vitest';
import * as z from 'zod';
import { commands } from '../src/commands.ts';
import { placesOutput } from '../src/contracts/weather.ts';
import { FIELDS } from './contract-fields.ts';
import { runCommand } from './run-command.ts';

interface Schema {
  readonly properties?: Readonly<Record<string, Schema>>;
  readonly required?: readonly string[];
  readonly anyOf?: readonly Schema[];
  readonly default?: unknown;
  readonly description?: string;
}

/** Properties of an object schema, also where null may stand for it. */
const propertiesOf = (schema: Schema | undefined): Readonly<Record<string, Schema>> =>
  schema?.properties ?? schema?.anyOf?.find((one) => one.properties !== undefined)?.properties ?? {};

test('every command of the published table is there, and nothing else', () => {
  expect(commands.map((command) => command.name).sort()).toEqual(Object.keys(FIELDS).sort());
});

describe.each(Object.entries(FIELDS))('%s', (name, fields) => {
  const command = () => commands.find((one) => one.name === name)!;
  const schema = async () => JSON.parse((await runCommand(['schema', name])).out) as { input: Schema; output: Schema };

  test('the schema names every published field of input and output', async () => {
    const { input, output } = await schema();
    for (const field of fields.input) expect(Object.keys(propertiesOf(input)), 'input').toContain(field);
    for (const field of [...fields.required, ...(fields.optional ?? [])])
      expect(Object.keys(propertiesOf(output)), 'output').toContain(field);
    for (const field of fields.required) expect(output.required, 'required output').toContain(field);
    for (const [field, inner] of Object.entries(fields.inside ?? {})) {
      for (const one of inner) expect(Object.keys(propertiesOf(propertiesOf(output)[field])), field).toContain(one);
    }
  });

  test('what is not published in the input is optional', async () => {
    const { input } = await schema();
    const extra = (input.required ?? []).filter((field) => fields.input.length > 0 && !fields.input.includes(field));
    expect(extra).toEqual([]);
  });

  test('every field of the schema says what it is', async () => {
    const { input, output } = await schema();
    for (const side of [input, output]) {
      for (const [field, property] of Object.entries(propertiesOf(side))) expect(property.description, field).toBeTruthy();
    }
  });

  test('the example of the help runs as printed and its answer fits the schema', async () => {
    const help = (await runCommand([name, '--help'])).out;
    const line = help.split('\n').find((text) => /^ {2}(echo|npx)/.test(text));
    expect(line?.trim()).toBe(command().example.trim());
    const ran = await runExample(command().example, ['--json']);
    expect(ran.err).toBe('');
    expect(ran.code).toBe(0);
    const answer: unknown = JSON.parse(ran.out);
    expect(command().output.parse(answer)).toEqual(answer);
    for (const field of fields.required) expect(answer).toHaveProperty(field);
  }, 120_000);

  test('the example gives the same bytes twice, and a table that fits 110 columns in all units', async () => {
    const first = await runExample(command().example, ['--json']);
    expect((await runExample(command().example, ['--json'])).out).toBe(first.out);
    for (const units of ['metric', 'us', 'ca']) {
      const { out, code } = await runExample(command().example, ['--units', units]);
      expect(code).toBe(0);
      for (const row of out.split('\n')) expect([...row].length, row).toBeLessThanOrEqual(110);
      expect(out).not.toMatch(/NaN|undefined|null|\[object/);
    }
  }, 240_000);
});

/** What a shell does with the printed example, inside this process. */
async function runExample(example: string, more: readonly string[]) {
  const piped = /^echo '(.*)' \| npx winterheft (.*)$/.exec(example);
  const words = (text: string) => [...text.matchAll(/'([^']*)'|(\S+)/g)].map((match) => match[1] ?? match[2] ?? '');
  if (piped) return runCommand([...words(piped[2] ?? ''), ...more], piped[1] ?? '');
  return runCommand([...words(example.replace(/^npx winterheft /, '')), ...more]);
}

test('defaults stand in the schema of the input', () => {
  for (const command of commands.filter((one) => ['heft', 'wash', 'air', 'syrup'].includes(one.name))) {
    const schema = z.toJSONSchema(command.input, { io: 'input' }) as Schema;
    expect(
      Object.values(schema.properties ?? {}).some((property) => property.default !== undefined),
      command.name,
    ).toBe(true);
  }
});

test('the list of places is what its schema says, and every name on it is taken', async () => {
  const { code, out } = await runCommand(['weather', '--places', '--json']);
  expect(code).toBe(0);
  const { places } = placesOutput.parse(JSON.parse(out));
  expect(places.length).toBeGreaterThan(100);
  for (const { place } of [places[0]!, places[places.length >> 1]!, places.at(-1)!]) {
    expect((await runCommand(['weather', '--place', place, '--json'])).code, place).toBe(0);
  }
});
