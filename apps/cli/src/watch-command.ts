import { good, watch } from '@winterheft/core';
import * as contract from './contracts/watch.ts';
import { journalCommand, leftOut } from './journal-command.ts';
import { watchTable } from './print/watch.ts';

export const watchCommand = journalCommand({
  name: 'watch',
  summary: 'a journal becomes the list of this week: which hives to lift, tap or feed without opening, and why',
  contract,
  answer: (asked) => {
    const answer = watch(asked.journal.records, asked.setting, { unread: asked.journal.unread });
    return answer.ok ? good({ ...answer.value.answer, ...leftOut(asked) }) : answer;
  },
  table: watchTable,
});
