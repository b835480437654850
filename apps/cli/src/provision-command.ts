import { type BadInput, bad, good, type ProvisionInput, provision, provisionLp, type Result } from '@winterheft/core';
import { shortened } from '@winterheft/words';
import type { Command, Failure, View } from './command.ts';
import * as contract from './contracts/provision.ts';
import { exampleOf, objectInput } from './object-command.ts';
import { wholeOption } from './option-values.ts';
import { provisionLines } from './print/provision.ts';
import { explained } from './schema-faults.ts';
import { loadedSolver } from './solver.ts';

const MOST_RANKS = 3;

/** The model of one rank as text; ranks above the first need the earlier ones solved. */
async function modelText(input: ProvisionInput, rankText: string | undefined): Promise<Result<string, Failure>> {
  const rank = rankText === undefined ? good(1) : wholeOption('--rank', rankText, { low: 1, high: MOST_RANKS });
  if (!rank.ok) return rank;
  const text: Result<string, BadInput> = rank.value === 1 ? provisionLp(input, 1) : provisionLp(input, rank.value, await loadedSolver());
  return text;
}

export const provisionCommand: Command = {
  name: 'provision',
  summary: 'who gives what to whom: frames, syrup, candy, uniting',
  input: contract.input,
  output: contract.output,
  example: exampleOf('provision', contract.example),
  options: [
    ['--lp', 'print the model of the first rank in CPLEX LP format instead of solving it'],
    ['--rank <n>', 'with --lp: the model of rank n, earlier ranks as constraints'],
  ],
  async run(file, options, io) {
    if (options.rank !== undefined && options.lp !== true) return bad({ kind: 'conflict', fields: ['--rank'], why: 'rank-needs-lp' });
    const input = await objectInput(contract.input, file, io);
    if (!input.ok) return input;
    if (options.lp === true) {
      const text = await modelText(input.value, options.rank);
      return text.ok ? good({ text: text.value }) : text;
    }
    const answer = provision(input.value, { solve: await loadedSolver() });
    if (!answer.ok) return bad(explained(answer.error, contract.input, input.value));
    const table = (view: View) =>
      provisionLines(answer.value, view, { units: view.units, colony: (id) => shortened(id, 16), lot: (id) => shortened(id, 16) });
    return good({ json: answer.value, table });
  },
};
