import { cautions } from './cautions.ts';
import { faultSentence } from './faults.ts';
import { changeFault, unreadLine, whyUnread } from './journal.ts';
import { program } from './program.ts';
import { chanceShort, chanceWords, stateWords } from './states.ts';

/** Every sentence of the product in English. Another language is another object of this shape. */
export const english = {
  program,
  cautions,
  faultSentence,
  stateWords,
  whyUnread,
  unreadLine,
  changeFault,
  chanceWords,
  chanceShort,
};
