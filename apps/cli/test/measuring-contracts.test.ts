import { air, candy, heft, type Result, stores, syrup, wash } from '@winterheft/core';
import { describe, expect, test } from 'vitest';
import * as z from 'zod';
import * as airContract from '../src/contracts/air.ts';
import * as candyContract from '../src/contracts/candy.ts';
import * as heftContract from '../src/contracts/heft.ts';
import * as storesContract from '../src/contracts/stores.ts';
import * as syrupContract from '../src/contracts/syrup.ts';
import * as washContract from '../src/contracts/wash.ts';

interface Contract {
  readonly input: z.ZodType;
  readonly output: z.ZodType;
  readonly example: unknown;
}

const CONTRACTS: readonly (readonly [string, Contract, (input: never) => Result<unknown>])[] = [
  ['heft', heftContract, heft],
  ['syrup', syrupContract, syrup],
  ['candy', candyContract, candy],
  ['wash', washContract, wash],
  ['air', airContract, air],
];

describe.each(CONTRACTS)('%s', (_name, contract, answer) => {
  test('the example runs, and its answer is the output the contract names, field for field', () => {
    const result = answer(contract.input.parse(contract.example) as never);
    if (!result.ok) throw new Error(JSON.stringify(result.error));
    expect(contract.output.parse(result.value)).toEqual(result.value);
  });

  test('both sides have a JSON Schema in which every field says what it is', () => {
    for (const side of ['input', 'output'] as const) {
      const schema = z.toJSONSchema(contract[side]) as { properties: Record<string, { description?: string }> };
      for (const [field, property] of Object.entries(schema.properties)) expect(property.description, `${side}.${field}`).toBeTruthy();
    }
  });

  test('an unknown field is refused', () => {
    expect(contract.input.safeParse({ ...(contract.example as object), colour: 'green' }).success).toBe(false);
  });
});

test('stores takes seams of bees as a look records them', () => {
  const { framesOfBees, ...rest } = storesContract.example;
  const answer = stores(storesContract.input.parse({ ...rest, seamsOfBees: framesOfBees }));
  expect(answer).toEqual(stores(storesContract.input.parse(storesContract.example)));
});

test('what the contracts fill in is what the core takes where nothing is given', () => {
  const bare = { frontKg: 20, rearKg: 21 };
  expect(heft(heftContract.input.parse(bare))).toEqual(heft(bare));
  expect(wash(washContract.input.parse({ bees: 300, mites: 4 }))).toEqual(wash({ bees: 300, mites: 4 }));
  expect(air(airContract.input.parse({ tempC: 3, rhFrac: 0.9 }))).toEqual(air({ tempC: 3, rhFrac: 0.9 }));
  expect(syrup(syrupContract.input.parse({ sugarKg: 2, waterKg: 1 }))).toEqual(syrup({ sugarKg: 2, waterKg: 1 }));
});
