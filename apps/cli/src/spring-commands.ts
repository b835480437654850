import { good, learn, spring } from '@winterheft/core';
import * as learnContract from './contracts/learn.ts';
import * as springContract from './contracts/spring.ts';
import { journalCommand, leftOut } from './journal-command.ts';
import { learnTable, springTable } from './print/spring.ts';

export const springCommand = journalCommand({
  name: 'spring',
  summary: 'a journal becomes the count of spring: who came through, what was said of them, what the dead hives tell',
  contract: springContract,
  answer: (asked) => {
    const answer = spring(asked.journal.records, asked.setting, asked.journal.unread);
    return answer.ok ? good({ ...answer.value, ...leftOut(asked) }) : answer;
  },
  table: springTable,
});

export const learnCommand = journalCommand({
  name: 'learn',
  summary: "a journal becomes the keeper's own factors, before and after what was seen",
  contract: learnContract,
  answer: (asked) => {
    const answer = learn(asked.journal.records, asked.setting, asked.journal.unread);
    return answer.ok ? good({ ...answer.value, ...leftOut(asked) }) : answer;
  },
  table: learnTable,
});
