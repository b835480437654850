import { bad, foldHolding, good, journalDigest, plan } from '@winterheft/core';
import type { Command } from './command.ts';
import * as contract from './contracts/plan.ts';
import { journalOf } from './journal-input.ts';
import { membersOption, seedOption, todayOption } from './option-values.ts';
import { planTable } from './print/plan.ts';
import { loadedSolver } from './solver.ts';

export const planCommand: Command = {
  name: 'plan',
  summary: 'a journal becomes a winter plan: what each colony has and needs, and who gets what from where',
  input: contract.input,
  output: contract.output,
  example: contract.example,
  options: [
    ['--today <date>', "the day the plan is made for (left out: this machine's date)"],
    ['--seed <n>', 'seed of the random numbers (left out: 1)'],
    ['--place <place>', "climate of this place for every yard, instead of the yards' own"],
    ['--members <n>', 'cases drawn (left out: 1000)'],
  ],
  async run(file, options, io) {
    const today = todayOption(options.today, io.now());
    if (!today.ok) return today;
    const seed = seedOption(options.seed);
    if (!seed.ok) return seed;
    const members = membersOption(options.members);
    if (!members.ok) return members;
    if (file === undefined && io.stdinIsTerminal) return bad({ kind: 'no-input' });
    const bytes = await io.read(file ?? '-');
    if (!bytes.ok) return bytes;
    const journal = journalOf(bytes.value, file === undefined || file === '-' ? 'standard input' : file);
    if (!journal.ok) return journal;
    const { records, unread } = journal.value;
    const holding = foldHolding(records, { unread, until: today.value });
    const setting = { today: today.value, seed: seed.value, members: members.value, place: options.place };
    const answer = plan(holding, setting, { solve: await loadedSolver(), journalDigest: journalDigest(records), unread });
    return answer.ok ? good({ json: answer.value, table: (view) => planTable(answer.value, view) }) : answer;
  },
};
