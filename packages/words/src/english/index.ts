import { air, candy, heft, outlook, syrup, wash } from './answers.ts';
import { cautions } from './cautions.ts';
import { faultSentence, whyUnread } from './faults.ts';
import { changeFault, unreadLine } from './journal.ts';
import { clashSentence, planWords, stateNote, taskSentence } from './plan.ts';
import { program } from './program.ts';
import { provisionQuality, provisionWords, reasonSentence, stepSentence } from './provision.ts';
import { chanceShort, chanceWords, stateWords } from './states.ts';
import { measurements, stores } from './stores.ts';
import { climateNote, weather } from './weather.ts';

/** Every sentence of the product in English. Another language is another object of this shape. */
export const english = {
  program,
  heft,
  syrup,
  candy,
  wash,
  air,
  outlook,
  stores,
  measurements,
  weather,
  climateNote,
  plan: planWords,
  provision: provisionWords,
  provisionQuality,
  stepSentence,
  reasonSentence,
  stateNote,
  taskSentence,
  clashSentence,
  cautions,
  faultSentence,
  stateWords,
  whyUnread,
  unreadLine,
  changeFault,
  chanceWords,
  chanceShort,
};
