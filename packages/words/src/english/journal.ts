import type { ChangeFault, UnreadLine } from '@winterheft/core';
import { listed } from '../text.ts';
import { faultSentence, whyUnread } from './faults.ts';

/** One line of a journal that was kept but not read. */
export function unreadLine(line: Pick<UnreadLine, 'line' | 'why'>): string {
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
