import { journalDigest, plan } from '@winterheft/core';
import * as contract from './contracts/plan.ts';
import { journalCommand } from './journal-command.ts';
import { planTable } from './print/plan.ts';
import { loadedSolver } from './solver.ts';

export const planCommand = journalCommand({
  name: 'plan',
  summary: 'a journal becomes a winter plan: what each colony has and needs, and who gets what from where',
  contract,
  answer: async ({ holding, journal: { records, unread }, setting }) =>
    plan(holding, setting, { solve: await loadedSolver(), journalDigest: journalDigest(records), unread }),
  table: planTable,
});
