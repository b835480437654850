import { bad, good, type Journal, type Result, readJournal } from '@winterheft/core';
import type { Fault } from '@winterheft/words';

/** Text of a journal. A file cut off inside a letter keeps every whole line; anything else that is not UTF-8 is no journal. */
function journalText(bytes: Uint8Array, name: string): Result<string, Fault> {
  const decoder = new TextDecoder('utf-8', { fatal: true });
  let text: string;
  try {
    text = decoder.decode(bytes);
  } catch {
    const lastLine = bytes.lastIndexOf(10) + 1;
    try {
      text = decoder.decode(bytes.subarray(0, lastLine)) + new TextDecoder('utf-8').decode(bytes.subarray(lastLine));
    } catch {
      return bad({ kind: 'not-text', name });
    }
  }
  if (text.includes('\u0000')) return bad({ kind: 'not-text', name });
  return text.trim() === '' ? bad({ kind: 'empty', name }) : good(text);
}

/** The journal in a file: what can be read is read, the rest is counted. Where nothing can be read it is no journal. */
export function journalOf(bytes: Uint8Array, name: string): Result<Journal, Fault> {
  const text = journalText(bytes, name);
  if (!text.ok) return text;
  const journal = readJournal(text.value);
  if (journal.records.length > 0) return good(journal);
  const first = journal.unread.reduce((a, b) => (a.line <= b.line ? a : b));
  return bad({ kind: 'not-a-journal', name, lines: journal.unread.length, first });
}
