import { bad, foldHolding, good, mites } from '@winterheft/core';
import type { Command } from './command.ts';
import * as contract from './contracts/mites.ts';
import { journalOf } from './journal-input.ts';
import { membersOption, seedOption, todayOption } from './option-values.ts';
import { mitesTable } from './print/mites.ts';

export const mitesCommand: Command = {
  name: 'mites',
  summary: 'a journal becomes: mites against the level of the season, where they lead, what is due, what may begin when',
  input: contract.input,
  output: contract.output,
  example: contract.example,
  options: [
    ['--today <date>', "the day it is asked for (left out: this machine's date)"],
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
    const answer = mites(holding, { today: today.value, seed: seed.value, members: members.value, place: options.place });
    if (!answer.ok) return answer;
    const json = {
      ...answer.value,
      unread: {
        lines: holding.unread.lines,
        byWhy: holding.unread.byWhy,
        first: unread.slice(0, SHOWN).map(({ line, why }) => ({ line, why })),
      },
      later: holding.later.length,
    };
    return good({ json, table: (view) => mitesTable(json, view) });
  },
};

/** So many unread lines are named. */
const SHOWN = 10;
