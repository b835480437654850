import type { ChangeFault, UnreadLine, Why } from '@winterheft/core';
import { listed, shortened } from '../text.ts';
import { faultSentence } from './faults.ts';

/** Why a line of a journal was not read. */
export function whyUnread(why: Why): string {
  switch (why.kind) {
    case 'torn':
      return 'the last line is cut off in the middle';
    case 'not-json':
      return 'not JSON';
    case 'not-a-record':
      return faultSentence(why.error.field === '' ? { ...why.error, field: 'the line' } : why.error);
    case 'newer':
      return `written by a newer version (${why.version}; this one reads up to ${why.readUpTo})`;
    case 'unknown-kind':
      return `the kind "${shortened(why.name, 40)}" is not known here; it may come from a newer version`;
  }
}

/** One line of a journal that was kept but not read. */
export function unreadLine(line: UnreadLine): string {
  return `line ${line.line}: ${whyUnread(line.why)}`;
}

/** What is wrong among corrections and withdrawals. */
export function changeFault(fault: ChangeFault): string {
  const records = listed(fault.records, 'and', 4);
  switch (fault.kind) {
    case 'same-id':
      return `${fault.contents} different records carry the id ${records}; settle which one is right`;
    case 'strike-circle':
      return `withdrawals of each other in a circle, none of them counts: ${records}`;
    case 'correction-of-change':
      return `a correction of a correction or withdrawal does not count: ${records}`;
    case 'correction-unfit':
      return `a correction does not fit its record and does not count: ${records}: ${faultSentence(fault.error)}`;
  }
}
