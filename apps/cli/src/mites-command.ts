import { good, mites } from '@winterheft/core';
import * as contract from './contracts/mites.ts';
import { journalCommand, leftOut } from './journal-command.ts';
import { mitesTable } from './print/mites.ts';

export const mitesCommand = journalCommand({
  name: 'mites',
  summary: 'a journal becomes: mites against the level of the season, where they lead, what is due, what may begin when',
  contract,
  answer: (asked) => {
    const answer = mites(asked.holding, asked.setting);
    return answer.ok ? good({ ...answer.value, ...leftOut(asked) }) : answer;
  },
  table: mitesTable,
});
