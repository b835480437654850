import { air, candy, heft, outlook, syrup, wash } from './answers.ts';
import { cautions } from './cautions.ts';
import { faultSentence, whyUnread } from './faults.ts';
import { changeFault, unreadLine } from './journal.ts';
import { kit } from './kit.ts';
import { lossRange, miteBlocker, miteCaution, miteDue, mitesPer100, mitesWords, recordRemark } from './mites.ts';
import { clashSentence, planWords, stateNote, taskSentence } from './plan.ts';
import { program } from './program.ts';
import { provisionQuality, provisionWords, reasonSentence, stepSentence } from './provision.ts';
import { season } from './season.ts';
import { springWords } from './spring.ts';
import { chanceShort, chanceWords, stateWords } from './states.ts';
import { measurements, stores } from './stores.ts';
import { top, tops } from './top.ts';
import { refusedWeighing, watchReason, watchWords } from './watch.ts';
import { climateNote, stationFault, weather } from './weather.ts';

/** What the app says as well; the rest stays out of the script it starts with. */
export const shared = {
  top,
  kit,
  outlook,
  stores,
  measurements,
  season,
  mites: mitesWords,
  mitesPer100,
  miteDue,
  miteBlocker,
  miteCaution,
  recordRemark,
  lossRange,
  spring: springWords,
  watch: watchWords,
  watchReason,
  refusedWeighing,
  provisionQuality,
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

/** Every sentence of the product in English. Another language is another object of this shape. */
export const english = {
  ...shared,
  program,
  heft,
  syrup,
  candy,
  wash,
  air,
  tops,
  weather,
  stationFault,
  climateNote,
  plan: planWords,
  provision: provisionWords,
  stepSentence,
};
