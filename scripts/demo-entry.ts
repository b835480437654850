export { keyOf, normalAt, uniformAt } from '../packages/core/src/chance/index.ts';
export { newStampClock, readJournal, stampOnWrite, uuidv7, writeJournal } from '../packages/core/src/journal/index.ts';
